//! The records of a book, by kind.

use std::sync::Arc;

use super::{
    Batch, Book, BuyingList, Container, ContainerId, Drink, DrinkId, Goods, Ingredient, IngredientId, Key, Offer,
    OfferId, OnHand, Pack, Packaging, PackagingId, PackagingSet, PackagingSetId, PackagingUse, Record, Scenario,
    ScenarioId, Scope, SeenPrice, SeenPriceId, Trial, TrialId, Week,
};
use crate::foundation::measure::{Date, Exact};

/// How many of these offers sell in a usual week, as far as it is known.
pub fn units<'a>(offers: impl Iterator<Item = &'a Offer>) -> Exact {
    let known = offers.filter_map(|offer| offer.weekly);
    known.fold(Exact::ZERO, |sum, units| sum.plus(units).unwrap_or(sum))
}

impl Book {
    /// An ingredient.
    pub fn ingredient(&self, id: IngredientId) -> Option<&Ingredient> {
        self.kept_at(&Key::Ingredient(id)).and_then(Record::ingredient)
    }

    /// Every ingredient, by id.
    pub fn ingredients(&self) -> impl Iterator<Item = &Ingredient> {
        self.between(Key::Ingredient(IngredientId::FIRST), Key::Ingredient(IngredientId::LAST))
            .filter_map(Record::ingredient)
    }

    /// One kind of packaging.
    pub fn packaging(&self, id: PackagingId) -> Option<&Packaging> {
        self.kept_at(&Key::Packaging(id)).and_then(Record::packaging)
    }

    /// All packaging, by id.
    pub fn packagings(&self) -> impl Iterator<Item = &Packaging> {
        self.between(Key::Packaging(PackagingId::FIRST), Key::Packaging(PackagingId::LAST))
            .filter_map(Record::packaging)
    }

    /// A set of packaging that containers share.
    pub fn packaging_set(&self, id: PackagingSetId) -> Option<&PackagingSet> {
        self.kept_at(&Key::PackagingSet(id)).and_then(Record::packaging_set)
    }

    /// Every set of packaging, by id.
    pub fn packaging_sets(&self) -> impl Iterator<Item = &PackagingSet> {
        self.between(Key::PackagingSet(PackagingSetId::FIRST), Key::PackagingSet(PackagingSetId::LAST))
            .filter_map(Record::packaging_set)
    }

    /// A container.
    pub fn container(&self, id: ContainerId) -> Option<&Container> {
        self.kept_at(&Key::Container(id)).and_then(Record::container)
    }

    /// Every container, by id.
    pub fn containers(&self) -> impl Iterator<Item = &Container> {
        self.between(Key::Container(ContainerId::FIRST), Key::Container(ContainerId::LAST))
            .filter_map(Record::container)
    }

    /// A drink.
    pub fn drink(&self, id: DrinkId) -> Option<&Drink> {
        self.kept_at(&Key::Drink(id)).and_then(Record::drink)
    }

    /// Every drink, by id.
    pub fn drinks(&self) -> impl Iterator<Item = &Drink> {
        self.between(Key::Drink(DrinkId::FIRST), Key::Drink(DrinkId::LAST)).filter_map(Record::drink)
    }

    /// An offer.
    pub fn offer(&self, id: OfferId) -> Option<&Offer> {
        self.kept_at(&Key::Offer(id)).and_then(Record::offer)
    }

    /// Every offer, by drink and container.
    pub fn offers(&self) -> impl Iterator<Item = &Offer> {
        let first = OfferId { drink: DrinkId::FIRST, container: ContainerId::FIRST };
        let last = OfferId { drink: DrinkId::LAST, container: ContainerId::LAST };
        self.between(Key::Offer(first), Key::Offer(last)).filter_map(Record::offer)
    }

    /// How many drinks are sold in a usual week, as far as it is known; in a part that is cut out of a book
    /// whose overhead goes by the week, how many the whole book sells.
    pub fn sold_weekly(&self) -> Exact {
        self.whole_sells.unwrap_or_else(|| units(self.offers()))
    }

    /// The offers of one drink.
    pub fn offers_of(&self, drink: DrinkId) -> impl Iterator<Item = &Offer> {
        let key = |container| Key::Offer(OfferId { drink, container });
        self.between(key(ContainerId::FIRST), key(ContainerId::LAST)).filter_map(Record::offer)
    }

    /// The sales of the week that begins on `monday`.
    pub fn week(&self, monday: Date) -> Option<&Week> {
        self.kept_at(&Key::Week(monday)).and_then(Record::week)
    }

    /// Every week that was written down, the earliest first.
    pub fn weeks(&self) -> impl DoubleEndedIterator<Item = &Week> {
        self.between(Key::Week(Date::FIRST), Key::Week(Date::LAST)).filter_map(Record::week)
    }

    /// A price seen elsewhere.
    pub fn seen_price(&self, id: SeenPriceId) -> Option<&SeenPrice> {
        self.kept_at(&Key::SeenPrice(id)).and_then(Record::seen_price)
    }

    /// Every price seen elsewhere, by id.
    pub fn seen_prices(&self) -> impl Iterator<Item = &SeenPrice> {
        self.between(Key::SeenPrice(SeenPriceId::FIRST), Key::SeenPrice(SeenPriceId::LAST))
            .filter_map(Record::seen_price)
    }

    /// A trial.
    pub fn trial(&self, id: TrialId) -> Option<&Trial> {
        self.kept_at(&Key::Trial(id)).and_then(Record::trial)
    }

    /// Every trial, by id.
    pub fn trials(&self) -> impl Iterator<Item = &Trial> {
        self.between(Key::Trial(TrialId::FIRST), Key::Trial(TrialId::LAST)).filter_map(Record::trial)
    }

    /// A scenario.
    pub fn scenario(&self, id: ScenarioId) -> Option<&Scenario> {
        self.kept_at(&Key::Scenario(id)).and_then(Record::scenario)
    }

    /// Every scenario, by id.
    pub fn scenarios(&self) -> impl Iterator<Item = &Scenario> {
        self.between(Key::Scenario(ScenarioId::FIRST), Key::Scenario(ScenarioId::LAST)).filter_map(Record::scenario)
    }

    /// The batch of a day.
    pub fn batch(&self, day: Date) -> Option<&Batch> {
        self.kept_at(&Key::Batch(day)).and_then(Record::batch)
    }

    /// Every batch, the earliest first.
    pub fn batches(&self) -> impl DoubleEndedIterator<Item = &Batch> {
        self.between(Key::Batch(Date::FIRST), Key::Batch(Date::LAST)).filter_map(Record::batch)
    }

    /// The buying list, if one was made.
    pub fn buying_list(&self) -> Option<&BuyingList> {
        self.kept_at(&Key::BuyingList).and_then(Record::buying_list)
    }

    /// The record at `key`, other than the settings.
    pub(super) fn kept_at(&self, key: &Key) -> Option<&Record> {
        self.records.get(key).map(Arc::as_ref)
    }

    pub(super) fn between(&self, first: Key, last: Key) -> impl DoubleEndedIterator<Item = &Record> {
        self.records.range(first..=last).map(|(_, record)| record.as_ref())
    }

    /// All the packaging of a container: its own, then that of the sets that it shares with others.
    pub fn set_of<'a>(&'a self, container: &'a Container) -> impl Iterator<Item = &'a PackagingUse> {
        let shared = container.shared.iter().filter_map(|id| self.packaging_set(*id));
        container.set.iter().chain(shared.flat_map(|set| &set.uses))
    }

    /// The last count of goods. Returns `None` if nobody counted them.
    pub fn on_hand(&self, goods: Goods) -> Option<OnHand> {
        match goods {
            Goods::Ingredient(id) => self.ingredient(id)?.on_hand,
            Goods::Packaging(id) => self.packaging(id)?.on_hand,
        }
    }

    /// The packs in which goods are quoted. The first is the one that is bought now.
    pub fn packs(&self, goods: Goods) -> &[Pack] {
        match goods {
            Goods::Ingredient(id) => self.ingredient(id).map(|ingredient| ingredient.packs.as_slice()),
            Goods::Packaging(id) => self.packaging(id).map(|packaging| packaging.packs.as_slice()),
        }
        .unwrap_or_default()
    }

    /// Whether a drink belongs to a part of the menu.
    pub fn belongs(&self, drink: DrinkId, scope: Scope) -> bool {
        match scope {
            Scope::Menu => true,
            Scope::Kind(kind) => self.drink(drink).is_some_and(|drink| drink.kind == kind),
            Scope::Drink(id) => id == drink,
        }
    }
}
