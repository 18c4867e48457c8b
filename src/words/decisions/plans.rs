//! Plans of sizes: when each pays, and how tried it is.

use super::{Decisions, of_100, sizes, up_to_one};
use crate::book::ContainerId;
use crate::say;
use crate::sizes::decision::{Guess, Plan, PlanToday, Verdict};

impl Decisions<'_> {
    /// A plan by its sizes: "12 oz + 16 oz".
    pub fn plan_name(&self, sizes: &[ContainerId]) -> String {
        sizes.iter().map(|id| self.size(*id)).collect::<Vec<_>>().join(" + ")
    }

    /// When a plan pays, in one sentence.
    pub fn plan_pays(&self, plan: &Plan) -> String {
        let name = self.plan_name(&plan.sizes);
        match plan.verdict {
            Verdict::AtLeast { at } => say!(decide::plan_pays_if, plan = name, stay = self.at_least(at)),
            _ => say!(decide::plan_pays_always, plan = name),
        }
    }

    /// What today's sizes earn.
    pub fn plan_today(&self, today: &PlanToday) -> String {
        let sizes = sizes(today.sizes.len()).to_lowercase();
        say!(decide::plan_today, sizes = sizes, profit = self.money(today.profit))
    }

    /// Of so many sizes, the plan that stands first: how many choose it already, what it needs, and what the owner's
    /// answer says of it. What cannot pay with the buyers of today does not say so where his answer has it pay.
    pub fn of_count(&self, plan: &Plan, guess: Option<&Guess>) -> String {
        let (name, share) = (self.plan_name(&plan.sizes), self.speaker.short_percent(plan.evidence, 0));
        let needs = match plan.verdict {
            Verdict::AtLeast { at } => say!(decide::needs_stay, stay = self.at_least(at)),
            Verdict::EvenIfAllLeave => say!(decide::needs_none).to_string(),
            _ => say!(decide::needs_more).to_string(),
        };
        let turned = guess.is_some_and(|guess| guess.pays() && !plan.verdict.can_pay());
        let needs = Some(needs).filter(|_| !turned).into_iter().chain(guess.map(|guess| self.guess(guess)));
        let needs = needs.collect::<Vec<_>>().join(" ");
        match plan.sizes.len() {
            1 => say!(decide::one_size_most_tried, plan = name, share = share, needs = needs),
            2 => say!(decide::two_sizes_most_tried, plan = name, share = share, needs = needs),
            _ => say!(decide::three_sizes_most_tried, plan = name, share = share, needs = needs),
        }
    }

    /// How tried a plan is, and what it takes to train.
    pub fn plan_about(&self, plan: &Plan) -> String {
        say!(decide::plan_chosen, share = self.speaker.short_percent(plan.evidence, 0), cards = plan.cards)
    }

    /// How many of a hundred must stay for a plan to pay, in short.
    pub fn plan_needs(&self, plan: &Plan) -> String {
        match plan.verdict {
            Verdict::AtLeast { at } => say!(decide::stay_short, stay = of_100(up_to_one(at), self.speaker)),
            Verdict::EvenIfAllLeave => say!(decide::stay_none).to_string(),
            _ => say!(decide::stay_over).to_string(),
        }
    }
}
