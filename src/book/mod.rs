//! The book: what the owner keeps, and the one way to change it.
//!
//! A [`Book`] is read through its getters and changed only by [`Book::apply`].

mod check;
mod container;
mod drink;
mod edit;
mod id;
mod ingredient;
mod pack;
mod record;
mod refusal;
mod settings;

use std::collections::BTreeMap;

pub use container::{Container, Headspace, Packaging, PackagingPart, PackagingUse};
pub use drink::{Drink, DrinkKind, Labour, Line, Offer, Scaling};
pub use edit::{Applied, Edit};
pub use id::{BookId, ContainerId, DrinkId, IngredientId, LineId, OfferId, PackId, PackagingId};
pub use ingredient::{Ingredient, Stage};
pub use pack::{Goods, Pack};
pub use record::{Key, Record};
pub use refusal::{Field, Problem, Refusal};
pub use settings::{Covers, PaymentFee, Settings, Tax, TaxPlace};

/// Everything that one owner keeps.
///
/// What it refers to is always there: an edit that would break a reference is refused.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Book {
    settings: Settings,
    ingredients: BTreeMap<IngredientId, Ingredient>,
    packagings: BTreeMap<PackagingId, Packaging>,
    containers: BTreeMap<ContainerId, Container>,
    drinks: BTreeMap<DrinkId, Drink>,
    offers: BTreeMap<OfferId, Offer>,
}

impl Book {
    /// A book with settings and nothing else.
    pub fn new(settings: Settings) -> Book {
        Book {
            settings,
            ingredients: BTreeMap::new(),
            packagings: BTreeMap::new(),
            containers: BTreeMap::new(),
            drinks: BTreeMap::new(),
            offers: BTreeMap::new(),
        }
    }

    /// A book from its records, in any order.
    ///
    /// # Errors
    /// The first [`Refusal`] met while putting them in.
    pub fn from_records(records: impl IntoIterator<Item = Record>) -> Result<Book, Refusal> {
        let mut records: Vec<Record> = records.into_iter().collect();
        records.sort_unstable_by_key(Record::key);
        let mut book = Book::new(Settings::new(""));
        for record in records {
            book.apply(&Edit::Put(record))?;
        }
        match book.settings.name.is_empty() {
            true => Err(Refusal::Missing { key: Key::Settings, needed_by: None }),
            false => Ok(book),
        }
    }

    /// Every record, in the order of their keys.
    pub fn records(&self) -> impl Iterator<Item = Record> {
        std::iter::once(Record::Settings(Box::new(self.settings.clone())))
            .chain(self.ingredients.values().cloned().map(Record::Ingredient))
            .chain(self.packagings.values().cloned().map(Record::Packaging))
            .chain(self.containers.values().cloned().map(Record::Container))
            .chain(self.drinks.values().cloned().map(Record::Drink))
            .chain(self.offers.values().copied().map(Record::Offer))
    }

    /// The record at `key`.
    pub fn record(&self, key: Key) -> Option<Record> {
        match key {
            Key::Settings => Some(Record::Settings(Box::new(self.settings.clone()))),
            Key::Ingredient(id) => self.ingredients.get(&id).cloned().map(Record::Ingredient),
            Key::Packaging(id) => self.packagings.get(&id).cloned().map(Record::Packaging),
            Key::Container(id) => self.containers.get(&id).cloned().map(Record::Container),
            Key::Drink(id) => self.drinks.get(&id).cloned().map(Record::Drink),
            Key::Offer(id) => self.offers.get(&id).copied().map(Record::Offer),
        }
    }

    /// Whether there is a record at `key`.
    pub fn contains(&self, key: Key) -> bool {
        match key {
            Key::Settings => true,
            Key::Ingredient(id) => self.ingredients.contains_key(&id),
            Key::Packaging(id) => self.packagings.contains_key(&id),
            Key::Container(id) => self.containers.contains_key(&id),
            Key::Drink(id) => self.drinks.contains_key(&id),
            Key::Offer(id) => self.offers.contains_key(&id),
        }
    }

    /// What holds for the whole book.
    pub fn settings(&self) -> &Settings {
        &self.settings
    }

    /// An ingredient.
    pub fn ingredient(&self, id: IngredientId) -> Option<&Ingredient> {
        self.ingredients.get(&id)
    }

    /// Every ingredient, by id.
    pub fn ingredients(&self) -> impl Iterator<Item = &Ingredient> {
        self.ingredients.values()
    }

    /// Packaging.
    pub fn packaging(&self, id: PackagingId) -> Option<&Packaging> {
        self.packagings.get(&id)
    }

    /// All packaging, by id.
    pub fn packagings(&self) -> impl Iterator<Item = &Packaging> {
        self.packagings.values()
    }

    /// A container.
    pub fn container(&self, id: ContainerId) -> Option<&Container> {
        self.containers.get(&id)
    }

    /// Every container, by id.
    pub fn containers(&self) -> impl Iterator<Item = &Container> {
        self.containers.values()
    }

    /// A drink.
    pub fn drink(&self, id: DrinkId) -> Option<&Drink> {
        self.drinks.get(&id)
    }

    /// Every drink, by id.
    pub fn drinks(&self) -> impl Iterator<Item = &Drink> {
        self.drinks.values()
    }

    /// An offer.
    pub fn offer(&self, id: OfferId) -> Option<&Offer> {
        self.offers.get(&id)
    }

    /// Every offer, by drink and container.
    pub fn offers(&self) -> impl Iterator<Item = &Offer> {
        self.offers.values()
    }

    /// The offers of one drink.
    pub fn offers_of(&self, drink: DrinkId) -> impl Iterator<Item = &Offer> {
        let id = |container| OfferId { drink, container };
        self.offers.range(id(ContainerId::FIRST)..=id(ContainerId::LAST)).map(|(_, offer)| offer)
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
        let name = match key {
            Key::Settings => Some(self.settings.name.as_str()),
            Key::Ingredient(id) => self.ingredient(id).map(|record| record.name.as_str()),
            Key::Packaging(id) => self.packaging(id).map(|record| record.name.as_str()),
            Key::Container(id) => self.container(id).map(|record| record.name.as_str()),
            Key::Drink(id) => self.drink(id).map(|record| record.name.as_str()),
            Key::Offer(id) => {
                return format!("{}, {}", self.name(Key::Drink(id.drink)), self.name(Key::Container(id.container)));
            }
        };
        name.unwrap_or_default().to_string()
    }

    /// The records that need the one at `key`.
    pub fn users(&self, key: Key) -> Vec<Key> {
        match key {
            Key::Ingredient(id) => {
                let uses = |drink: &&Drink| drink.lines.iter().any(|line| line.ingredient == id);
                self.drinks().filter(uses).map(|drink| Key::Drink(drink.id)).collect()
            }
            Key::Packaging(id) => {
                let uses = |container: &&Container| container.set.iter().any(|used| used.packaging == id);
                self.containers().filter(uses).map(|container| Key::Container(container.id)).collect()
            }
            Key::Container(id) => {
                self.offers().filter(|offer| offer.container == id).map(|offer| Key::Offer(offer.id())).collect()
            }
            Key::Drink(id) => self.offers_of(id).map(|offer| Key::Offer(offer.id())).collect(),
            Key::Settings | Key::Offer(_) => Vec::new(),
        }
    }
}
