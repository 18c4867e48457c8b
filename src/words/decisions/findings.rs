//! What the numbers of a book say, each in a sentence and a small line.

use super::{Decisions, people, turns_to};
use crate::book::OfferId;
use crate::foundation::measure::{Exact, Money, Share};
use crate::say;
use crate::sizes::decision::{Customer, Decision, EarnsMore, Finding, Plan, Question, Says, Verdict};
use crate::words::{number, overflow, price_points};

impl Decisions<'_> {
    /// What the numbers say: the sentence, and a small line under it. Where the owner's own answer turns it, the
    /// sentence says so, and what the sales of today say stands under it.
    pub fn finding(&self, finding: &Finding) -> (String, String) {
        let (said, about) = self.without_guess(&finding.says);
        let Some(guess) = finding.guess else { return (said, about) };
        let said = match (&finding.says, guess.pays()) {
            (Says::CannotDrop(decision), true) => {
                say!(decide::finding_guess_drop_yes, size = self.size_that_goes(decision))
            }
            (Says::DropPays(decision), false) => {
                say!(decide::finding_guess_drop_no, size = self.size_that_goes(decision))
            }
            (Says::OnlyPays { plan, .. }, false) => {
                let size = plan.sizes.first().map(|size| self.size(*size)).unwrap_or_default();
                say!(decide::finding_guess_only_no, size = size)
            }
            _ => said,
        };
        (said, [self.guess(&guess), about].join(" "))
    }

    fn without_guess(&self, says: &Says) -> (String, String) {
        match says {
            Says::CannotDrop(decision) => {
                let said = say!(decide::finding_cannot_drop, size = self.size_that_goes(decision));
                (said, self.at_best(decision))
            }
            Says::DropPays(decision) => (self.drop_pays(decision), self.drop_about(decision)),
            Says::OnlyPays { plan, cards_now } => {
                let size = plan.sizes.first().map(|size| self.size(*size)).unwrap_or_default();
                let leaves = plan.turning.iter().any(|turned| !turned.can_stay);
                let said = match plan.verdict {
                    Verdict::AtLeast { at } if leaves => {
                        say!(decide::finding_only_can, size = size, stay = self.at_least(at))
                    }
                    Verdict::AtLeast { at } => say!(decide::finding_only, size = size, stay = self.at_least(at)),
                    _ => say!(decide::finding_only_always, size = size),
                };
                let about = say!(
                    decide::finding_only_about,
                    share = self.speaker.short_percent(plan.evidence, 0),
                    now = number(*cards_now),
                    then = number(plan.cards)
                );
                let gain = plan.turned(Share::WHOLE).map(|(now, then)| self.only_more(plan, now, then));
                (said, [gain.unwrap_or_else(overflow), about].join(" "))
            }
            Says::TurnsOnPrice { most, earns_more, .. } => {
                let about = match earns_more {
                    None => say!(decide::finding_turns_unknown),
                    Some(EarnsMore::Larger) => say!(decide::finding_turns_larger),
                    Some(EarnsMore::Smaller) => say!(decide::finding_turns_smaller),
                };
                (say!(decide::finding_turns, lost = self.about(*most)), about.to_string())
            }
            Says::NotUnder { price, cannot, of, nearest } => {
                let all = number(*of);
                let said = say!(decide::finding_not_under, cannot = *cannot, drinks = all, price = self.money(*price));
                let about = nearest.map(|row| self.needs(row.offer, row.needs));
                (said, about.unwrap_or_default())
            }
        }
    }

    /// What is earned more a week with one size if all stay who can, and how many leave.
    fn only_more(&self, plan: &Plan, now: Money, then: Money) -> String {
        let of = |can: bool| {
            let these = plan.turning.iter().filter(|turned| turned.can_stay == can);
            these.map(|turned| people(turned.buyers)).collect::<Vec<_>>()
        };
        let (can, cannot, profit) = (of(true), of(false), self.difference(now, then));
        if cannot.is_empty() {
            return say!(decide::only_more, buyers = self.in_all(can.into_iter()), profit = profit);
        }
        self.who_can_stay(can, cannot, profit, self.gain_shown(now, then))
    }

    fn size_that_goes(&self, decision: &Decision) -> String {
        match &decision.question {
            Question::Drop { size } | Question::Switch { from: size, .. } => self.size(*size),
            Question::Add { .. } | Question::Keep { .. } => String::new(),
        }
    }

    fn drop_pays(&self, decision: &Decision) -> String {
        let size = self.size_that_goes(decision);
        match (decision.verdict, turns_to(decision)) {
            (Verdict::AtLeast { at }, Some(other)) => {
                say!(decide::finding_drop_to, size = size, stay = self.at_least(at), other = self.size(other))
            }
            (Verdict::AtLeast { at }, None) if decision.movers < decision.buyers => {
                say!(decide::finding_drop_can, size = size, stay = self.at_least(at))
            }
            (Verdict::AtLeast { at }, None) => say!(decide::finding_drop, size = size, stay = self.at_least(at)),
            _ => say!(decide::finding_drop_always, size = size),
        }
    }

    /// What it brings at best, and what its buyers face; where they face several things, what most of them do.
    fn drop_about(&self, decision: &Decision) -> String {
        let mut groups: Vec<(String, Customer, Exact)> = Vec::new();
        for row in &decision.rows {
            let Some(customer) = row.customer else { continue };
            let (said, count) = (self.faced(&customer), people(row.weekly.count()));
            match groups.iter_mut().find(|(known, ..)| *known == said) {
                Some((.., sum)) => *sum = sum.plus(count).unwrap_or(*sum),
                None => groups.push((said, customer, count)),
            }
        }
        let several = groups.len() > 1 || decision.movers < decision.buyers;
        let most = groups.into_iter().reduce(|most, group| if group.2 > most.2 { group } else { most });
        let faced = most.map(|(said, customer, count)| if several { self.some_face(count, &customer) } else { said });
        let range = self.pay_range(decision);
        [self.at_best(decision)].into_iter().chain(faced).chain(range).collect::<Vec<_>>().join(" ")
    }

    /// The price that a drink in a size needs to be on target.
    pub fn needs(&self, offer: OfferId, price: Money) -> String {
        say!(decide::nearest_needs, drink = self.offer(offer), price = price_points::up(price, self.speaker))
    }
}
