//! Scenarios: other menus than today's, to be compared with it.

use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};

use super::{Book, Edit, Key, Offer, Record, ScenarioId};

/// A named copy of a book's offers with other sizes, prices and sales. It is compared with today's, and then
/// adopted or dropped.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Scenario {
    /// Its id.
    pub id: ScenarioId,
    /// Its name.
    pub name: String,
    /// Every offer that there would be: each drink in a size once.
    pub offers: Vec<Offer>,
}

impl Scenario {
    /// Its offers as they would stand in the book: a price and a weekly number are the scenario's own; what
    /// else is noted of an offer, such as how it is filled and served, is the book's where it has the offer.
    pub fn offers_in(&self, book: &Book) -> Vec<Offer> {
        let stands = |own: &Offer| match book.offer(own.id()) {
            Some(today) => Offer { price: own.price, weekly: own.weekly, ..today.clone() },
            None => own.clone(),
        };
        self.offers.iter().map(stands).collect()
    }

    /// The edit that puts these offers in place of the book's own. The scenario stays.
    pub fn adopted(&self, book: &Book) -> Edit {
        let mut stays = BTreeSet::new();
        stays.extend(self.offers.iter().map(|offer| Key::Offer(offer.id())));
        let gone = book
            .offers()
            .filter(|offer| !stays.contains(&Key::Offer(offer.id())))
            .map(|offer| Edit::Remove(Key::Offer(offer.id())));
        let puts = self.offers_in(book).into_iter().map(|offer| Edit::Put(Record::Offer(offer)));
        Edit::Together(gone.chain(puts).collect())
    }
}
