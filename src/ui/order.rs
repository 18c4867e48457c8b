//! The few orders in which lists are shown. Each key is put at its place: a sort of the standard
//! library is 1 kB to load for each kind of thing that is sorted.

use js_sys::JsString;

use crate::book::{Book, DrinkId, Key, OfferId, ScenarioId};
use crate::drink::fill::fill;
use crate::drink::ledger::Ledger;
use crate::foundation::in_order;
use crate::foundation::measure::{Share, Volume};

/// In lower case, by the browser's tables: our own would be 10 kB more to load.
pub fn lower_case(text: &str) -> String {
    JsString::from(text).to_lower_case().into()
}

/// Keys by name, whatever the case of its letters; numbers in it count as such.
fn by_name(names: impl Iterator<Item = (String, Key)>) -> Vec<Key> {
    ordered(names.map(|(name, key)| (in_order::name_with_numbers(&lower_case(&name)), key)))
}

/// Keys by fill, smallest first; those without a fill before them.
fn by_fill(fills: impl Iterator<Item = (Option<Volume>, Key)>) -> Vec<Key> {
    ordered(fills)
}

/// Keys by what each is ordered by, then by themselves.
fn ordered<T: Ord>(items: impl Iterator<Item = (T, Key)>) -> Vec<Key> {
    let mut ordered = Vec::new();
    for item in items {
        in_order::insert(&mut ordered, item, |other, item| other < item);
    }
    ordered.into_iter().map(|(_, key)| key).collect()
}

/// Every drink, by name.
pub fn drinks(book: &Book) -> Vec<Key> {
    by_name(book.drinks().map(|drink| (drink.name.clone(), Key::Drink(drink.id))))
}

/// Drinks by the lowest margin among their sizes, lowest first; those without one behind them.
pub fn worst_first(book: &Book, ledger: &Ledger, drinks: Vec<Key>) -> Vec<Key> {
    let lowest = |key: &Key| {
        let Key::Drink(id) = key else { return None };
        book.offers_of(*id).filter_map(|offer| ledger.get(offer.id())?.as_ref().ok()?.margin()).min()
    };
    let mut ordered: Vec<(Option<Share>, Key)> = Vec::new();
    for key in drinks {
        let item = (lowest(&key), key);
        in_order::insert(&mut ordered, item, |(other, _), (this, _)| match (other, this) {
            (Some(other), Some(this)) => other <= this,
            (other, this) => other.is_some() || this.is_none(),
        });
    }
    ordered.into_iter().map(|(_, key)| key).collect()
}

/// The drinks that are sold in any size, by name.
pub fn sold_drinks(book: &Book) -> Vec<Key> {
    let sold = |key: &Key| matches!(key, Key::Drink(id) if book.offers_of(*id).next().is_some());
    drinks(book).into_iter().filter(sold).collect()
}

/// Every ingredient, by name.
pub fn ingredients(book: &Book) -> Vec<Key> {
    by_name(book.ingredients().map(|ingredient| (ingredient.name.clone(), Key::Ingredient(ingredient.id))))
}

/// All packaging, by name.
pub fn packagings(book: &Book) -> Vec<Key> {
    by_name(book.packagings().map(|packaging| (packaging.name.clone(), Key::Packaging(packaging.id))))
}

/// Every set of packaging that containers share, by name.
pub fn packaging_sets(book: &Book) -> Vec<Key> {
    by_name(book.packaging_sets().map(|set| (set.name.clone(), Key::PackagingSet(set.id))))
}

/// Every container, smallest fill first.
pub fn containers(book: &Book) -> Vec<Key> {
    let fill_of = |container| fill(container).map(|fill| fill.volume).ok();
    by_fill(book.containers().map(|container| (fill_of(container), Key::Container(container.id))))
}

/// The offers of a drink, smallest fill first.
pub fn offers(book: &Book, drink: DrinkId) -> Vec<Key> {
    by_fill_of(book, book.offers_of(drink).map(|offer| offer.id()))
}

/// Every drink in each of its sizes, by the name of the drink, then smallest fill first.
pub fn cards(book: &Book) -> Vec<Key> {
    let sizes = |key| if let Key::Drink(id) = key { offers(book, id) } else { Vec::new() };
    drinks(book).into_iter().flat_map(sizes).collect()
}

/// The same, as ids.
pub fn offers_on_cards(book: &Book) -> impl Iterator<Item = OfferId> {
    cards(book).into_iter().filter_map(|key| if let Key::Offer(id) = key { Some(id) } else { None })
}

/// Every scenario, by name.
pub fn scenarios(book: &Book) -> Vec<Key> {
    by_name(book.scenarios().map(|scenario| (scenario.name.clone(), Key::Scenario(scenario.id))))
}

/// The offers of a drink in a scenario, smallest fill first.
pub fn scenario_offers(book: &Book, id: ScenarioId, drink: DrinkId) -> Vec<Key> {
    let offers = book.scenario(id).map(|scenario| scenario.offers.as_slice()).unwrap_or_default();
    by_fill_of(book, offers.iter().map(|offer| offer.id()).filter(|offer| offer.drink == drink))
}

/// The offers of a drink in a scenario or today, smallest fill first.
pub fn offers_beside(book: &Book, id: ScenarioId, drink: DrinkId) -> Vec<Key> {
    let mut keys = scenario_offers(book, id, drink);
    for offer in book.offers_of(drink) {
        let key = Key::Offer(offer.id());
        if !keys.contains(&key) {
            keys.push(key);
        }
    }
    let ids = keys.into_iter().filter_map(|key| if let Key::Offer(offer) = key { Some(offer) } else { None });
    by_fill_of(book, ids)
}

fn by_fill_of(book: &Book, offers: impl Iterator<Item = OfferId>) -> Vec<Key> {
    by_fill(offers.map(|offer| {
        let fill = book.container(offer.container).and_then(|container| fill(container).ok());
        (fill.map(|fill| fill.volume), Key::Offer(offer))
    }))
}

/// Records as options to choose from: their ids and names.
pub fn options(book: &Book, keys: Vec<Key>) -> Vec<(String, String)> {
    keys.into_iter().map(|key| (key.to_string(), book.name(key))).collect()
}
