//! Scenarios: other menus than today's, to be compared with it.

use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};

use super::{Book, ContainerId, Edit, Goods, Key, Offer, PackId, Record, Refusal, ScenarioId, Scope, check, from_json};
use crate::foundation::measure::{Amount, Date, Money, Share};

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
    /// What is taken to be other than in the book beside them.
    #[serde(default, skip_serializing_if = "KeptConditions::are_todays")]
    pub conditions: KeptConditions,
}

/// [`Conditions`] as their JSON text, empty where all is as in the book. Nothing reads them before a scenario is looked
/// at, so a book opens without the code for it.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(transparent)]
pub struct KeptConditions(String);

impl KeptConditions {
    /// The conditions as they are kept.
    pub fn of(conditions: &Conditions) -> KeptConditions {
        let kept = || serde_json::to_string(conditions).unwrap_or_default();
        KeptConditions(if conditions.are_todays() { String::new() } else { kept() })
    }

    /// The conditions.
    ///
    /// # Errors
    /// The JSON reader's error if the text is not that of conditions.
    pub fn read(&self) -> Result<Conditions, serde_json::Error> {
        if self.are_todays() { Ok(Conditions::default()) } else { from_json(&self.0) }
    }

    /// Whether all is as in the book.
    pub fn are_todays(&self) -> bool {
        self.0.is_empty()
    }
}

/// Costs, fees and fills that are taken to be other than in the book. What names goods, a pack or a container that
/// is not there any more counts for nothing.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", default, deny_unknown_fields)]
pub struct Conditions {
    /// The part of the menu that target and waste hold for.
    pub part: Scope,
    /// How much more all ingredients cost, as a share of what they cost now; below zero, how much less; at least
    /// -1. Those with a price of their own in [`Conditions::bought`] cost that.
    #[serde(skip_serializing_if = "Share::is_zero")]
    pub ingredients: Share,
    /// Goods that are bought in another pack, or at another price; each once.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub bought: Vec<Bought>,
    /// Another target margin, in [0, 1).
    #[serde(skip_serializing_if = "Option::is_none")]
    pub target: Option<Share>,
    /// Another share that is thrown away, in [0, 1).
    #[serde(skip_serializing_if = "Option::is_none")]
    pub waste: Option<Share>,
    /// Another hourly wage.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub wage: Option<Money>,
    /// Another share that the payment provider takes, in [0, 1).
    #[serde(skip_serializing_if = "Option::is_none")]
    pub card_fee: Option<Share>,
    /// Another commission, in [0, 1).
    #[serde(skip_serializing_if = "Option::is_none")]
    pub commission: Option<Share>,
    /// Containers poured up to another volume; each once.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub fills: Vec<Filled>,
}

/// How goods are bought.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Bought {
    /// The goods.
    pub goods: Goods,
    /// The pack that is bought.
    pub pack: PackId,
    /// Its price, or `None` for the one that its supplier quotes.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub price: Option<Money>,
}

/// A container poured up to a volume.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Filled {
    /// The container.
    pub container: ContainerId,
    /// What is poured: a volume above 0.
    pub fill: Amount,
}

impl Conditions {
    /// Whether all is as in the book.
    pub fn are_todays(&self) -> bool {
        *self == Conditions { part: self.part, ..Conditions::default() }
    }
}

impl Scenario {
    /// Its conditions; those of today where the text does not read, which a book file with such a text is refused for.
    pub fn conditions(&self) -> Conditions {
        self.conditions.read().unwrap_or_default()
    }

    /// Checks the values of its conditions. The book itself does not: it does not read them.
    ///
    /// # Errors
    /// [`Refusal::Field`] at the first value that does not hold.
    pub fn check_conditions(&self) -> Result<(), Refusal> {
        let key = Key::Scenario(self.id);
        check::conditions(&self.conditions()).map_err(|(field, problem)| Refusal::Field { key, field, problem })
    }

    /// Its offers as they would stand in the book: a price and a weekly number are the scenario's own; what
    /// else is noted of an offer, such as how it is filled and served, is the book's where it has the offer.
    pub fn offers_in(&self, book: &Book) -> Vec<Offer> {
        let stands = |own: &Offer| match book.offer(own.id()) {
            Some(today) => Offer { price: own.price, weekly: own.weekly, ..today.clone() },
            None => own.clone(),
        };
        self.offers.iter().map(stands).collect()
    }

    /// The edit that puts these offers in place of the book's own. Written weeks tell what they sell from the Monday
    /// `from` on where another number is expected than before. The scenario stays.
    pub fn adopted(&self, book: &Book, from: Date) -> Edit {
        let mut stays = BTreeSet::new();
        stays.extend(self.offers.iter().map(|offer| Key::Offer(offer.id())));
        let gone = book
            .offers()
            .filter(|offer| !stays.contains(&Key::Offer(offer.id())))
            .map(|offer| Edit::Remove(Key::Offer(offer.id())));
        let puts = self.offers_in(book).into_iter();
        let puts = puts.map(|offer| Edit::Put(Record::Offer(offer.expected_from(book.offer(offer.id()), from))));
        Edit::Together(gone.chain(puts).collect())
    }
}
