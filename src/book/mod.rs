//! The book: what the owner keeps, and the one way to change it.
//!
//! A [`Book`] is read through its getters and changed only by [`Book::apply`].

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
mod id;
mod ingredient;
mod instead;
mod market;
mod pack;
mod patch;
mod record;
mod refusal;
mod sales;
mod scenario;
mod settings;
mod stock;

use std::collections::BTreeMap;

use crate::foundation::measure::Date;

pub use allergen::Allergen;
pub use batch::{Batch, Make, Ready};
pub use brimful::{Brimful, Reading, Tapered};
pub use by_name::from_json;
pub use container::{Container, Headspace, Packaging, PackagingPart, PackagingSet, PackagingUse};
pub use cost::{CostBasis, Entered, FlatCost, Part};
pub use drink::{Drink, DrinkKind, Ice, IcePlace, Labour, Line, Offer, Scaling, Service};
pub use edit::{Applied, Edit};
pub use filling::{Accepted, FillRule, Filling};
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
pub use scenario::Scenario;
pub use settings::{PaymentFee, Settings, Tax, TaxPlace, TillColumns};
pub use stock::{BuyingList, OnHand, ToBuy, Weighing};

/// Everything that one owner keeps.
///
/// What it refers to is always there: an edit that would break a reference is refused.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Book {
    settings: Settings,
    /// Every other record, at its own key.
    records: BTreeMap<Key, Record>,
}

impl Book {
    /// A book with settings and nothing else.
    pub fn new(settings: Settings) -> Book {
        Book { settings, records: BTreeMap::new() }
    }

    /// A book from its records, in any order.
    ///
    /// # Errors
    /// The first [`Refusal`] met while putting them in.
    pub fn from_records(records: impl IntoIterator<Item = Record>) -> Result<Book, Refusal> {
        let mut ordered = BTreeMap::new();
        for record in records {
            ordered.insert(record.key(), record);
        }
        let mut book = Book::new(Settings::new(""));
        for record in ordered.into_values() {
            book.apply(&Edit::Put(record))?;
        }
        match book.settings.name.is_empty() {
            true => Err(Refusal::Missing { key: Key::Settings, needed_by: None }),
            false => Ok(book),
        }
    }

    /// Every record, in the order of their keys.
    pub fn records(&self) -> impl Iterator<Item = Record> {
        std::iter::once(Record::Settings(Box::new(self.settings.clone()))).chain(self.records.values().cloned())
    }

    /// The keys of every record, in their order.
    pub fn keys(&self) -> impl Iterator<Item = Key> {
        std::iter::once(Key::Settings).chain(self.records.keys().copied())
    }

    /// Whether the other book has the same at `key`, or neither has anything.
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
            key => self.records.get(&key).cloned(),
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

    /// An ingredient.
    pub fn ingredient(&self, id: IngredientId) -> Option<&Ingredient> {
        self.records.get(&Key::Ingredient(id)).and_then(Record::ingredient)
    }

    /// Every ingredient, by id.
    pub fn ingredients(&self) -> impl Iterator<Item = &Ingredient> {
        self.between(Key::Ingredient(IngredientId::FIRST), Key::Ingredient(IngredientId::LAST))
            .filter_map(Record::ingredient)
    }

    /// Packaging.
    pub fn packaging(&self, id: PackagingId) -> Option<&Packaging> {
        self.records.get(&Key::Packaging(id)).and_then(Record::packaging)
    }

    /// All packaging, by id.
    pub fn packagings(&self) -> impl Iterator<Item = &Packaging> {
        self.between(Key::Packaging(PackagingId::FIRST), Key::Packaging(PackagingId::LAST))
            .filter_map(Record::packaging)
    }

    /// A set of packaging that containers share.
    pub fn packaging_set(&self, id: PackagingSetId) -> Option<&PackagingSet> {
        self.records.get(&Key::PackagingSet(id)).and_then(Record::packaging_set)
    }

    /// Every set of packaging, by id.
    pub fn packaging_sets(&self) -> impl Iterator<Item = &PackagingSet> {
        self.between(Key::PackagingSet(PackagingSetId::FIRST), Key::PackagingSet(PackagingSetId::LAST))
            .filter_map(Record::packaging_set)
    }

    /// Everything that belongs to a container: its own packaging, then that of the sets that it
    /// shares with others.
    pub fn set_of<'a>(&'a self, container: &'a Container) -> impl Iterator<Item = &'a PackagingUse> {
        let shared = container.shared.iter().filter_map(|id| self.packaging_set(*id));
        container.set.iter().chain(shared.flat_map(|set| &set.uses))
    }

    /// A container.
    pub fn container(&self, id: ContainerId) -> Option<&Container> {
        self.records.get(&Key::Container(id)).and_then(Record::container)
    }

    /// Every container, by id.
    pub fn containers(&self) -> impl Iterator<Item = &Container> {
        self.between(Key::Container(ContainerId::FIRST), Key::Container(ContainerId::LAST))
            .filter_map(Record::container)
    }

    /// A drink.
    pub fn drink(&self, id: DrinkId) -> Option<&Drink> {
        self.records.get(&Key::Drink(id)).and_then(Record::drink)
    }

    /// Every drink, by id.
    pub fn drinks(&self) -> impl Iterator<Item = &Drink> {
        self.between(Key::Drink(DrinkId::FIRST), Key::Drink(DrinkId::LAST)).filter_map(Record::drink)
    }

    /// An offer.
    pub fn offer(&self, id: OfferId) -> Option<&Offer> {
        self.records.get(&Key::Offer(id)).and_then(Record::offer)
    }

    /// Every offer, by drink and container.
    pub fn offers(&self) -> impl Iterator<Item = &Offer> {
        let first = OfferId { drink: DrinkId::FIRST, container: ContainerId::FIRST };
        let last = OfferId { drink: DrinkId::LAST, container: ContainerId::LAST };
        self.between(Key::Offer(first), Key::Offer(last)).filter_map(Record::offer)
    }

    /// The offers of one drink.
    pub fn offers_of(&self, drink: DrinkId) -> impl Iterator<Item = &Offer> {
        let key = |container| Key::Offer(OfferId { drink, container });
        self.between(key(ContainerId::FIRST), key(ContainerId::LAST)).filter_map(Record::offer)
    }

    /// What was sold in the week that begins on `monday`.
    pub fn week(&self, monday: Date) -> Option<&Week> {
        self.records.get(&Key::Week(monday)).and_then(Record::week)
    }

    /// Every week that was written down, the earliest first.
    pub fn weeks(&self) -> impl DoubleEndedIterator<Item = &Week> {
        self.between(Key::Week(Date::FIRST), Key::Week(Date::LAST)).filter_map(Record::week)
    }

    /// A price seen elsewhere.
    pub fn seen_price(&self, id: SeenPriceId) -> Option<&SeenPrice> {
        self.records.get(&Key::SeenPrice(id)).and_then(Record::seen_price)
    }

    /// Every price seen elsewhere, by id.
    pub fn seen_prices(&self) -> impl Iterator<Item = &SeenPrice> {
        self.between(Key::SeenPrice(SeenPriceId::FIRST), Key::SeenPrice(SeenPriceId::LAST))
            .filter_map(Record::seen_price)
    }

    /// A trial.
    pub fn trial(&self, id: TrialId) -> Option<&Trial> {
        self.records.get(&Key::Trial(id)).and_then(Record::trial)
    }

    /// Every trial, by id.
    pub fn trials(&self) -> impl Iterator<Item = &Trial> {
        self.between(Key::Trial(TrialId::FIRST), Key::Trial(TrialId::LAST)).filter_map(Record::trial)
    }

    /// A scenario.
    pub fn scenario(&self, id: ScenarioId) -> Option<&Scenario> {
        self.records.get(&Key::Scenario(id)).and_then(Record::scenario)
    }

    /// Every scenario, by id.
    pub fn scenarios(&self) -> impl Iterator<Item = &Scenario> {
        self.between(Key::Scenario(ScenarioId::FIRST), Key::Scenario(ScenarioId::LAST)).filter_map(Record::scenario)
    }

    /// What is made on a day.
    pub fn batch(&self, day: Date) -> Option<&Batch> {
        self.records.get(&Key::Batch(day)).and_then(Record::batch)
    }

    /// Every day that something is made on, the earliest first.
    pub fn batches(&self) -> impl DoubleEndedIterator<Item = &Batch> {
        self.between(Key::Batch(Date::FIRST), Key::Batch(Date::LAST)).filter_map(Record::batch)
    }

    /// What is to be bought; none where no list was made.
    pub fn buying_list(&self) -> Option<&BuyingList> {
        self.records.get(&Key::BuyingList).and_then(Record::buying_list)
    }

    /// What is here of goods, when it was last counted.
    pub fn on_hand(&self, goods: Goods) -> Option<OnHand> {
        match goods {
            Goods::Ingredient(id) => self.ingredient(id)?.on_hand,
            Goods::Packaging(id) => self.packaging(id)?.on_hand,
        }
    }

    /// Whether a drink belongs to a part of the menu.
    pub fn belongs(&self, drink: DrinkId, scope: Scope) -> bool {
        match scope {
            Scope::Menu => true,
            Scope::Kind(kind) => self.drink(drink).is_some_and(|drink| drink.kind == kind),
            Scope::Drink(id) => id == drink,
        }
    }

    fn between(&self, first: Key, last: Key) -> impl DoubleEndedIterator<Item = &Record> {
        self.records.range(first..=last).map(|(_, record)| record)
    }

    /// The packs that goods are quoted in; the first is the one bought now.
    pub fn packs(&self, goods: Goods) -> &[Pack] {
        match goods {
            Goods::Ingredient(id) => self.ingredient(id).map(|ingredient| ingredient.packs.as_slice()),
            Goods::Packaging(id) => self.packaging(id).map(|packaging| packaging.packs.as_slice()),
        }
        .unwrap_or_default()
    }

    /// The name of what stands at `key`; an offer's is its drink's and container's.
    pub fn name(&self, key: Key) -> String {
        match key {
            Key::Settings => self.settings.name.clone(),
            Key::Offer(id) => {
                format!("{}, {}", self.name(Key::Drink(id.drink)), self.name(Key::Container(id.container)))
            }
            Key::Week(day) | Key::Batch(day) => day.to_string(),
            Key::BuyingList => String::new(),
            key => self.records.get(&key).map(|record| record.name().to_string()).unwrap_or_default(),
        }
    }

    /// A book of the same settings with the record at `key` and all that it needs, and nothing
    /// else: small enough to try things out on.
    pub fn only(&self, key: Key) -> Book {
        self.cut(std::iter::once(key))
    }

    /// The same of several records.
    pub fn cut(&self, keys: impl Iterator<Item = Key>) -> Book {
        let mut book = Book::new(self.settings.clone());
        let mut waiting: Vec<Key> = keys.collect();
        while let Some(key) = waiting.pop() {
            if book.records.contains_key(&key) {
                continue;
            }
            if let Some(record) = self.records.get(&key) {
                waiting.extend(record.needs());
                book.records.insert(key, record.clone());
            }
        }
        book
    }

    /// The weeks, scenarios and batches that need a drink or a container.
    fn planned_or_sold(&self, key: Key) -> impl Iterator<Item = Key> {
        let needs = move |user: &&Record| user.needs().contains(&key);
        let weeks = self.between(Key::Week(Date::FIRST), Key::Week(Date::LAST));
        let scenarios = self.between(Key::Scenario(ScenarioId::FIRST), Key::Scenario(ScenarioId::LAST));
        let batches = self.between(Key::Batch(Date::FIRST), Key::Batch(Date::LAST));
        weeks.chain(scenarios).chain(batches).filter(needs).map(Record::key)
    }

    /// The buying list, where it has the goods at `key`.
    fn listed(&self, key: Key) -> Option<Key> {
        let list = self.buying_list()?;
        list.lines.iter().any(|line| Key::from(line.goods) == key).then_some(Key::BuyingList)
    }

    /// The records whose cost changes with the one at `key`, at first hand: the drinks of an
    /// ingredient, the sets and containers of packaging, the containers of a set, the offers of a
    /// container or a drink. What was sold or is planned of it costs what it costs.
    pub fn repriced_by(&self, key: Key) -> Vec<Key> {
        match key {
            Key::Ingredient(id) => {
                let uses = |drink: &&Drink| drink.lines.iter().any(|line| line.ingredient == id);
                self.drinks().filter(uses).map(|drink| Key::Drink(drink.id)).collect()
            }
            Key::Packaging(id) => {
                let has = |uses: &[PackagingUse]| uses.iter().any(|used| used.packaging == id);
                let sets = self.packaging_sets().filter(|set| has(&set.uses)).map(|set| Key::PackagingSet(set.id));
                let containers = self.containers().filter(|container| has(&container.set));
                sets.chain(containers.map(|container| Key::Container(container.id))).collect()
            }
            Key::PackagingSet(id) => {
                let uses = |container: &&Container| container.shared.contains(&id);
                self.containers().filter(uses).map(|container| Key::Container(container.id)).collect()
            }
            Key::Container(id) => {
                let offers = self.offers().filter(|offer| offer.container == id);
                offers.map(|offer| Key::Offer(offer.id())).collect()
            }
            Key::Drink(id) => self.offers_of(id).map(|offer| Key::Offer(offer.id())).collect(),
            Key::Settings
            | Key::Offer(_)
            | Key::Week(_)
            | Key::SeenPrice(_)
            | Key::Trial(_)
            | Key::Scenario(_)
            | Key::Batch(_)
            | Key::BuyingList => Vec::new(),
        }
    }

    /// The records that need the one at `key`: it cannot be removed before them. First those that
    /// it re-prices.
    pub fn needed_by(&self, key: Key) -> Vec<Key> {
        let mut by = self.repriced_by(key);
        match key {
            Key::Ingredient(_) | Key::Packaging(_) => by.extend(self.listed(key)),
            Key::Container(_) => by.extend(self.planned_or_sold(key)),
            Key::Drink(id) => {
                by.extend(self.planned_or_sold(key));
                let trials = self.trials().filter(|trial| trial.scope == Scope::Drink(id));
                by.extend(trials.map(|trial| Key::Trial(trial.id)));
            }
            Key::Settings
            | Key::PackagingSet(_)
            | Key::Offer(_)
            | Key::Week(_)
            | Key::SeenPrice(_)
            | Key::Trial(_)
            | Key::Scenario(_)
            | Key::Batch(_)
            | Key::BuyingList => {}
        }
        by
    }
}
