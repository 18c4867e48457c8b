//! What stands in a book, by its kind and name: for lists of what a file, or another tab, has.

use super::day;
use crate::book::Key;
use crate::say;

/// What kind of thing a key is of.
pub(super) fn kind(key: Key) -> &'static str {
    match key {
        Key::Settings => say!(book::kind_settings),
        Key::Ingredient(_) => say!(book::kind_ingredient),
        Key::Packaging(_) => say!(book::kind_packaging),
        Key::PackagingSet(_) => say!(book::kind_kit),
        Key::Container(_) => say!(book::kind_container),
        Key::Drink(_) => say!(book::kind_drink),
        Key::Offer(_) => say!(book::kind_size),
        Key::Week(_) => say!(book::kind_week),
        Key::SeenPrice(_) => say!(book::kind_local_price),
        Key::Trial(_) => say!(book::kind_trial),
        Key::Scenario(_) => say!(book::kind_scenario),
        Key::Batch(_) => say!(book::kind_batch),
        Key::BuyingList => say!(book::kind_buying_list),
    }
}

/// The same of a list in a book file, by its name there. Returns `None` if it is none of them.
pub(super) fn kind_in_file(list: &str) -> Option<&'static str> {
    Some(match list {
        "settings" => say!(book::kind_settings),
        "ingredients" => say!(book::kind_ingredient),
        "packagings" => say!(book::kind_packaging),
        "packaging-sets" => say!(book::kind_kit),
        "containers" => say!(book::kind_container),
        "drinks" => say!(book::kind_drink),
        "offers" => say!(book::kind_size),
        "weeks" => say!(book::kind_week),
        "seen-prices" => say!(book::kind_local_price),
        "trials" => say!(book::kind_trial),
        "scenarios" => say!(book::kind_scenario),
        "batches" => say!(book::kind_batch),
        "buying-list" => say!(book::kind_buying_list),
        _ => return None,
    })
}

/// A thing by its kind and name: "ingredient “Apples”", "week of Nov 23, 2026".
pub(super) fn named(key: Key, name: &str) -> String {
    match key {
        Key::Week(monday) => say!(book::kind_week_of, day = day(monday)),
        Key::Batch(on) => say!(book::kind_batch_of, day = day(on)),
        Key::Settings | Key::BuyingList => kind(key).to_string(),
        key if name.is_empty() => kind(key).to_string(),
        key => say!(book::kind_named, kind = kind(key), name = name),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::{day, ingredient_id};

    #[test]
    fn what_has_no_name_of_its_own_is_named_once() {
        let said = |key| named(key, "Kale");
        assert_eq!(said(Key::Ingredient(ingredient_id(1))), "ingredient “Kale”");
        assert_eq!(said(Key::Week(day("2026-11-23"))), "week of Nov 23, 2026");
        assert_eq!(said(Key::Batch(day("2026-11-26"))), "batch of Nov 26, 2026");
        assert_eq!(said(Key::BuyingList), "buying list");
        assert_eq!(named(Key::Ingredient(ingredient_id(1)), ""), "ingredient");
    }
}
