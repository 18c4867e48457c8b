//! Plans of sizes: when each pays, and how tried it is.

use super::{Decisions, HUNDRED, of_100, of_hundred, sizes, up_to_one};
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

    /// What a plan earns more by the owner's answer, in one sentence.
    pub fn plan_guess(&self, plan: &Plan, guess: &Guess) -> String {
        say!(decide::plan_pays_guess, plan = self.plan_name(&plan.sizes), profit = self.money(guess.gain))
    }

    /// How many stay by the owner's answer, or come where the price is lower, and what a week then brings against
    /// today. Up where it pays and down where it does not, so that it stands on the same side of what is needed.
    /// Returns an empty text if nobody turns.
    pub fn guess(&self, guess: &Guess) -> String {
        let Some(stay) = guess.stay.map(of_hundred) else { return String::new() };
        let (stay, profit) = (if guess.pays() { stay.ceiling() } else { stay.floor() }, self.without_sign(guess.gain));
        if stay > HUNDRED {
            let come = self.speaker.counted(stay.minus(HUNDRED).unwrap_or_default());
            return if guess.pays() {
                say!(decide::guess_comes_more, buyers = come, profit = profit)
            } else {
                say!(decide::guess_comes_less, buyers = come, profit = profit)
            };
        }
        let stay = self.speaker.counted(stay);
        if guess.pays() {
            say!(decide::guess_stays_more, buyers = stay, profit = profit)
        } else {
            say!(decide::guess_stays_less, buyers = stay, profit = profit)
        }
    }

    /// What today's sizes earn.
    pub fn plan_today(&self, today: &PlanToday) -> String {
        let sizes = sizes(today.sizes.len()).to_lowercase();
        say!(decide::plan_today, sizes = sizes, profit = self.money(today.profit))
    }

    /// Of so many sizes, the plan that most buyers choose already.
    pub fn of_count(&self, plan: &Plan) -> String {
        let (name, share) = (self.plan_name(&plan.sizes), self.speaker.short_percent(plan.evidence, 0));
        let needs = match plan.verdict {
            Verdict::AtLeast { at } => say!(decide::needs_stay, stay = self.at_least(at)),
            Verdict::EvenIfAllLeave => say!(decide::needs_none).to_string(),
            _ => say!(decide::needs_more).to_string(),
        };
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
