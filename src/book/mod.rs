//! The book: what the owner keeps, and the one way to change it.
//!
//! A [`Book`] is read through its getters and changed only by [`Book::apply`].
//!
//! Which records refer to one and which prices depend on it are two questions: [`Book::needed_by`]
//! forbids a removal, and counts weeks, scenarios, batches and lists; [`Book::repriced_by`] is the
//! menu alone, and is asked at each keystroke.

mod allergen;
mod batch;
mod brimful;
mod by_name;
mod check;
mod container;
mod cost;
mod drink;
mod edit;
mod filling;
mod getters;
mod id;
mod ingredient;
mod instead;
mod market;
mod pack;
mod patch;
mod record;
mod references;
mod refusal;
mod sales;
mod scenario;
mod season;
mod settings;
mod starting;
mod stock;

use std::collections::BTreeMap;
use std::sync::Arc;

use crate::foundation::measure::Exact;
use edit::put_back;

pub use allergen::Allergen;
pub use batch::{Batch, Make, Ready};
pub use brimful::{Brimful, Reading, Tapered};
pub use by_name::from_json;
pub use container::{Container, Headspace, Packaging, PackagingPart, PackagingSet, PackagingUse};
pub use cost::{CostBasis, Entered, FlatCost, Part};
pub use drink::{Drink, DrinkKind, Ice, IcePlace, Labour, Line, Offer, Scaling, Service};
pub use edit::{Applied, Edit};
pub use filling::{Accepted, FillRule, Filling};
pub use getters::units;
pub use id::{
    BookId, ContainerId, DrinkId, IngredientId, LineId, OfferId, PackId, PackagingId, PackagingSetId, ScenarioId,
    SeenPriceId, TrialId,
};
pub use ingredient::{Ingredient, Produce, Stage};
pub use market::SeenPrice;
pub use pack::{DayError, Goods, Pack, Quoted, Tier};
pub use patch::{Change, Clash, Found, Patch, Step, Tree};
pub use record::{Key, Record};
pub use refusal::{Field, Problem, Refusal};
pub use sales::{Scope, Sold, Trial, Week};
pub use scenario::{Bought, Conditions, Filled, KeptConditions, Scenario};
pub use season::Season;
pub use settings::{
    CommissionBase, KindRate, OverheadPer, PaymentFee, Reductions, Settings, Tax, TaxPlace, TillColumns,
};
pub use starting::{ASSUMED, Basis, Figure, Starting, StartingFigure};
pub use stock::{BuyingList, OnHand, ToBuy, Weighing};

/// Everything that one owner keeps.
///
/// Its references always hold: an edit that would break one is refused.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Book {
    settings: Settings,
    /// Every other record, at its own key; shared with the books that are tried beside this one.
    records: BTreeMap<Key, Arc<Record>>,
    /// What the whole book sells in a week, where this one is cut out of it and overhead goes by the week.
    whole_sells: Option<Exact>,
    month: season::InForce,
}

impl Book {
    /// A book with settings and nothing else.
    pub fn new(settings: Settings) -> Book {
        Book { settings, records: BTreeMap::new(), whole_sells: None, month: season::InForce::default() }
    }

    /// A book from its records, in any order.
    ///
    /// # Errors
    /// The first [`Refusal`]: if a record's values do not hold, if one that it needs is missing, or if there
    /// are no settings.
    pub fn from_records(records: impl IntoIterator<Item = Record>) -> Result<Book, Refusal> {
        let mut ordered = BTreeMap::new();
        for record in records {
            // As the book itself keeps them: a map of another kind is more to load.
            ordered.insert(record.key(), Arc::new(record));
        }
        let mut book = Book::new(Settings::new(""));
        for record in ordered.into_values() {
            book.apply(&put_back(record))?;
        }
        if book.settings.name.is_empty() {
            return Err(Refusal::Missing { key: Key::Settings, needed_by: None });
        }
        Ok(book)
    }

    /// Every record, ordered by key.
    pub fn records(&self) -> impl Iterator<Item = Record> {
        std::iter::once(Record::Settings(Box::new(self.settings.clone())))
            .chain(self.records.values().map(|record| record.as_ref().clone()))
    }

    /// The keys of every record, in order.
    pub fn keys(&self) -> impl Iterator<Item = Key> {
        std::iter::once(Key::Settings).chain(self.records.keys().copied())
    }

    /// Whether both books have the same record at `key`, or neither has one.
    pub fn agrees(&self, other: &Book, key: Key) -> bool {
        match key {
            Key::Settings => self.settings == other.settings,
            key => self.records.get(&key) == other.records.get(&key),
        }
    }

    /// The record at `key`.
    pub fn record(&self, key: Key) -> Option<Record> {
        match key {
            Key::Settings => Some(Record::Settings(Box::new(self.settings.clone()))),
            key => self.kept_at(&key).cloned(),
        }
    }

    /// Whether there is a record at `key`.
    pub fn contains(&self, key: Key) -> bool {
        key == Key::Settings || self.records.contains_key(&key)
    }

    /// What holds for the whole book.
    pub fn settings(&self) -> &Settings {
        &self.settings
    }

    /// The name of the record at `key`, or an empty text if there is none. That of an offer is made of its
    /// drink's and its container's.
    pub fn name(&self, key: Key) -> String {
        match key {
            Key::Settings => self.settings.name.clone(),
            Key::Offer(id) => {
                format!("{}, {}", self.name(Key::Drink(id.drink)), self.name(Key::Container(id.container)))
            }
            Key::Week(day) | Key::Batch(day) => day.to_string(),
            Key::BuyingList => String::new(),
            key => self.kept_at(&key).map(|record| record.name().to_string()).unwrap_or_default(),
        }
    }
}
