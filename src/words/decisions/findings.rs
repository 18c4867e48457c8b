//! What the numbers of a book say, each in a sentence and a small line.

use super::{Decisions, turns_to};
use crate::book::OfferId;
use crate::foundation::measure::Money;
use crate::say;
use crate::sizes::decision::{Decision, EarnsMore, Finding, Question, Says, Verdict};
use crate::words::{number, price_points};

impl Decisions<'_> {
    /// What the numbers say: the sentence, and a small line under it.
    pub fn finding(&self, finding: &Finding) -> (String, String) {
        match &finding.says {
            Says::CannotDrop(decision) => {
                let said = say!(decide::finding_cannot_drop, size = self.size_that_goes(decision));
                (said, self.at_best(decision))
            }
            Says::DropPays(decision) => (self.drop_pays(decision), self.drop_about(decision)),
            Says::OnlyPays { plan, cards_now } => {
                let size = plan.sizes.first().map(|size| self.size(*size)).unwrap_or_default();
                let said = match plan.verdict {
                    Verdict::AtLeast { at } => say!(decide::finding_only, size = size, stay = self.at_least(at)),
                    _ => say!(decide::finding_only_always, size = size),
                };
                let about = say!(
                    decide::finding_only_about,
                    share = self.speaker.short_percent(plan.evidence, 0),
                    now = number(*cards_now),
                    then = number(plan.cards)
                );
                (said, about)
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
            (Verdict::AtLeast { at }, None) => say!(decide::finding_drop, size = size, stay = self.at_least(at)),
            _ => say!(decide::finding_drop_always, size = size),
        }
    }

    fn drop_about(&self, decision: &Decision) -> String {
        let faced = decision.customer().map(|customer| self.faced(&customer));
        let buyers = say!(decide::buyers_a_week, buyers = self.drinks(decision.buyers));
        faced.into_iter().chain([buyers]).collect::<Vec<_>>().join(" ")
    }

    /// The price that a drink in a size needs to be on target.
    pub fn needs(&self, offer: OfferId, price: Money) -> String {
        say!(decide::nearest_needs, drink = self.offer(offer), price = price_points::up(price, self.speaker))
    }
}
