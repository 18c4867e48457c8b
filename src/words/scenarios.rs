//! What is said of scenarios beside today's menu.

use super::texts::Number;
use super::{Decisions, Speaker, overflow};
use crate::book::{Book, Key, Offer, OfferId};
use crate::drink::ledger::Ledger;
use crate::drink::price::Hands;
use crate::foundation::measure::Exact;
use crate::say;
use crate::sizes::scenario::{Menu, is_other};

/// A book's names and numbers, for its scenarios.
pub struct Scenarios<'a> {
    /// The book, for names.
    pub book: &'a Book,
    /// Says its numbers.
    pub speaker: &'a Speaker,
}

impl Scenarios<'_> {
    /// How long opening stock lasts, also where nothing of it is used.
    pub fn cover(&self, weeks: Option<Exact>) -> String {
        weeks.map_or(say!(decide::no_sales_yet).to_string(), |weeks| {
            say!(decide::weeks, weeks = self.speaker.counted(weeks.rounded(1)))
        })
    }

    /// Profit a week today, in a scenario, and the difference.
    pub fn now_and_then(&self, today: &Menu, then: &Menu) -> [String; 3] {
        Decisions { book: self.book, speaker: self.speaker }.now_and_then(today.profit, then.profit)
    }

    /// What a scenario brings against today's menu, as the difference of the two figures says it.
    pub fn against_today(&self, today: &Menu, then: &Menu) -> String {
        let [_, _, difference] = self.now_and_then(today, then);
        match then.profit.minus(today.profit) {
            Ok(more) if more.is_positive() => say!(decide::scenario_earns_more, profit = without_sign(&difference)),
            Ok(more) if more.is_negative() => say!(decide::scenario_earns_less, profit = without_sign(&difference)),
            Ok(_) => say!(decide::scenario_earns_same).to_string(),
            Err(error) => overflow(error),
        }
    }

    /// What does not count in the figures of a menu. Returns an empty text if all of it does.
    pub fn uncounted(&self, menu: &Menu) -> String {
        let some = |count: usize| (count > 0).then(|| Number::from(count));
        let said = [
            some(menu.without_number).map(|sizes| say!(decide::no_sales_uncounted, sizes = sizes)),
            some(menu.without_price).map(|sizes| say!(decide::no_price_uncounted, sizes = sizes)),
            some(menu.stuck).map(|sizes| say!(decide::incomplete_uncounted, sizes = sizes)),
        ];
        said.into_iter().flatten().collect::<Vec<_>>().join(" ")
    }

    /// One offer of a scenario beside today's, either of them perhaps not there.
    pub fn offer_beside(
        &self,
        id: OfferId,
        (today, was): (&Ledger, Option<&Offer>),
        (then, is): (&Ledger, Option<&Offer>),
    ) -> String {
        let size = self.book.name(Key::Container(id.container));
        let other = is_other((today, was), (then, is));
        match (was, is) {
            (Some(_), Some(is)) if !other => {
                say!(decide::size_as_today, size = size, facts = self.facts(then, is))
            }
            (Some(was), Some(is)) => {
                let (facts, today) = (self.facts(then, is), self.facts(today, was));
                say!(decide::size_changed, size = size, facts = facts, today = today)
            }
            (None, Some(is)) => say!(decide::size_added, size = size, facts = self.facts(then, is)),
            (Some(was), None) => say!(decide::size_dropped, size = size, today = self.facts(today, was)),
            (None, None) => say!(decide::size_not_sold, size = size),
        }
    }

    /// An offer's price, weekly number and what it brings in a week: "$5.00, 30 per week, $87.00 profit".
    fn facts(&self, ledger: &Ledger, offer: &Offer) -> String {
        let price = offer.price.map_or(say!(decide::fact_no_price).to_string(), |price| self.speaker.money(price));
        let sold = offer.weekly.map_or(say!(decide::fact_no_sales).to_string(), |weekly| {
            say!(decide::fact_sold, drinks = self.speaker.number(weekly))
        });
        let profit = match ledger.get(offer.id()) {
            Some(Err(_)) => Some(say!(decide::fact_incomplete).to_string()),
            Some(Ok(priced)) => {
                let each = priced.profit_that_changes(Hands::Counted).ok().flatten();
                let all = each.zip(offer.weekly).and_then(|(each, weekly)| each.times(weekly).ok());
                all.map(|profit| say!(decide::fact_profit, profit = self.speaker.money(profit)))
            }
            None => None,
        };
        [price, sold].into_iter().chain(profit).collect::<Vec<_>>().join(", ")
    }
}

/// A difference as a sentence says it that has its own word for more and less.
pub fn without_sign(difference: &str) -> &str {
    difference.trim_start_matches(['+', '-', '\u{2212}'])
}
