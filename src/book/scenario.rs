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
    /// The edits that put these offers in place of the book's own.
    pub fn applied(&self, book: &Book) -> Vec<Edit> {
        let mut stays = BTreeSet::new();
        stays.extend(self.offers.iter().map(|offer| Key::Offer(offer.id())));
        let gone = book
            .offers()
            .filter(|offer| !stays.contains(&Key::Offer(offer.id())))
            .map(|offer| Edit::Remove(Key::Offer(offer.id())));
        gone.chain(self.offers.iter().map(|offer| Edit::Put(Record::Offer(offer.clone())))).collect()
    }

    /// The edit that puts these offers in place of the book's own and removes the scenario.
    pub fn adopted(&self, book: &Book) -> Edit {
        let mut edits = self.applied(book);
        edits.push(Edit::Remove(Key::Scenario(self.id)));
        Edit::Together(edits)
    }
}
