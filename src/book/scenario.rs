//! A menu to play with beside today's.

use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};

use super::{Book, Edit, Key, Offer, Record, ScenarioId};

/// A named copy of a book's offers: other sizes, prices and sales than today's, compared with
/// them and then adopted or dropped.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Scenario {
    /// Its id.
    pub id: ScenarioId,
    /// Its name.
    pub name: String,
    /// Every offer that there would be, each drink and size once.
    pub offers: Vec<Offer>,
}

impl Scenario {
    /// The book with these offers in place of its own.
    pub fn applied(&self, book: &Book) -> Vec<Edit> {
        let mut stays = BTreeSet::new();
        stays.extend(self.offers.iter().map(|offer| Key::Offer(offer.id())));
        let gone = book
            .offers()
            .filter(|offer| !stays.contains(&Key::Offer(offer.id())))
            .map(|offer| Edit::Remove(Key::Offer(offer.id())));
        gone.chain(self.offers.iter().map(|offer| Edit::Put(Record::Offer(offer.clone())))).collect()
    }

    /// The one edit that makes these the book's offers and ends the scenario.
    pub fn adopted(&self, book: &Book) -> Edit {
        let mut edits = self.applied(book);
        edits.push(Edit::Remove(Key::Scenario(self.id)));
        Edit::Together(edits)
    }
}
