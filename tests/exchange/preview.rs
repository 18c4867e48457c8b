//! What an import would do, and that it can be taken back.

use brimwright::book::{Book, Edit, Key, Record, Settings};
use brimwright::exchange::{Counts, preview, read, write};
use brimwright::words::import_changes;

use super::{demo, demo_with};
use crate::support::buying_list;

fn counts(added: usize, changed: usize, removed: usize) -> Counts {
    Counts { added, changed, removed }
}

/// The edit does what the preview says, and its inverse takes it back byte for byte.
fn there_and_back(open: &Book, incoming: &Book) {
    let mut book = open.clone();
    let applied = book.apply(&preview(open, incoming).edit).unwrap();
    assert_eq!(write(&book), write(incoming));
    book.apply(&applied.inverse).unwrap();
    assert_eq!(write(&book), write(open));
}

#[test]
fn an_empty_book_takes_everything() {
    let (open, incoming) = (Book::new(Settings::new("New")), demo());
    let seen = preview(&open, &incoming);
    assert_eq!(seen.name, "Marrowgate Juice Hall");
    assert!(seen.invented && seen.settings_change && !seen.changes_nothing());
    assert_eq!(seen.ingredients, counts(45, 0, 0));
    assert_eq!(seen.packagings, counts(19, 0, 0));
    assert_eq!(seen.packaging_sets, counts(2, 0, 0));
    assert_eq!(seen.containers, counts(9, 0, 0));
    assert_eq!(seen.drinks, counts(14, 0, 0));
    assert_eq!(seen.offers, counts(39, 0, 0));
    assert_eq!([seen.weeks, seen.seen_prices], [counts(8, 0, 0), counts(10, 0, 0)]);
    assert_eq!([seen.trials, seen.scenarios], [counts(1, 0, 0); 2]);
    there_and_back(&open, &incoming);
}

#[test]
fn a_full_book_loses_what_the_incoming_one_lacks() {
    let (open, incoming) = (demo(), Book::new(Settings::new("New")));
    let seen = preview(&open, &incoming);
    assert!(!seen.invented && seen.settings_change);
    assert_eq!(seen.ingredients, counts(0, 0, 45));
    assert_eq!(seen.packaging_sets, counts(0, 0, 2));
    assert_eq!(seen.offers, counts(0, 0, 39));
    assert_eq!([seen.weeks, seen.seen_prices], [counts(0, 0, 8), counts(0, 0, 10)]);
    assert_eq!([seen.trials, seen.scenarios], [counts(0, 0, 1); 2]);
    there_and_back(&open, &incoming);
}

#[test]
fn the_same_book_changes_nothing() {
    let open = demo();
    let seen = preview(&open, &open);
    assert!(seen.changes_nothing());
    assert_eq!(seen.edit, Edit::Together(Vec::new()));
}

#[test]
fn each_kind_is_counted_apart() {
    let open = demo();
    let mut incoming = read(demo_with("\"price\": \"38\"", "\"price\": \"46\"")).unwrap();
    let mut set = incoming.packaging_sets().next().unwrap().clone();
    set.uses.pop();
    incoming.apply(&Edit::Put(Record::PackagingSet(set))).unwrap();
    for text in ["offer:1-6", "drink:9"] {
        let key = Key::from_text(text).unwrap();
        incoming.apply(&Edit::remove_with_offers(&incoming, key)).unwrap();
    }
    let seen = preview(&open, &incoming);
    assert!(!seen.settings_change);
    assert_eq!(seen.ingredients, counts(0, 1, 0));
    assert_eq!(seen.packagings, counts(0, 0, 0));
    assert_eq!(seen.packaging_sets, counts(0, 1, 0));
    assert_eq!(seen.containers, counts(0, 0, 0));
    assert_eq!(seen.drinks, counts(0, 0, 1));
    assert_eq!(seen.offers, counts(0, 0, 3));
    let back = preview(&incoming, &open);
    assert_eq!((back.drinks, back.offers), (counts(1, 0, 0), counts(3, 0, 0)));
    there_and_back(&open, &incoming);
    there_and_back(&incoming, &open);
}

/// A drink goes with what was sold of it and what was planned; a price seen is corrected.
#[test]
fn sales_prices_seen_trials_and_scenarios_are_counted() {
    let open = demo();
    let mut incoming = demo();
    let drink = Key::from_text("drink:5").unwrap();
    incoming.apply(&Edit::remove_with_offers(&incoming, drink)).unwrap();
    let mut seen = incoming.seen_prices().next().unwrap().clone();
    seen.place.push('!');
    incoming.apply(&Edit::Put(Record::SeenPrice(seen))).unwrap();
    incoming.apply(&Edit::Remove(Key::from_text("seen-price:2").unwrap())).unwrap();
    incoming.apply(&Edit::Remove(Key::from_text("trial:1").unwrap())).unwrap();
    let seen = preview(&open, &incoming);
    assert_eq!((seen.weeks, seen.scenarios), (counts(0, 8, 0), counts(0, 1, 0)));
    assert_eq!((seen.seen_prices, seen.trials), (counts(0, 1, 1), counts(0, 0, 1)));
    let lines = [
        "Drinks: 0 new, 0 changed, 1 removed",
        "Sizes: 0 new, 0 changed, 3 removed",
        "Weeks of sales: 0 new, 8 changed, 0 removed",
        "Local prices: 0 new, 1 changed, 1 removed",
        "Trials: 0 new, 0 changed, 1 removed",
        "Scenarios: 0 new, 1 changed, 0 removed",
    ];
    assert_eq!(import_changes(&seen), lines);
    assert_eq!(import_changes(&preview(&open, &open)), ["Same as the open book."]);
    there_and_back(&open, &incoming);
    there_and_back(&incoming, &open);
}

#[test]
fn batches_and_the_buying_list_are_counted() {
    let open = demo();
    let mut incoming = demo();
    incoming.apply(&Edit::Remove(Key::from_text("batch:2026-11-26").unwrap())).unwrap();
    incoming.apply(&Edit::Put(Record::BuyingList(buying_list(&[(1, 1, "3")])))).unwrap();
    let seen = preview(&open, &incoming);
    assert_eq!((seen.batches, seen.buying_list_changes), (counts(0, 0, 1), true));
    assert_eq!(import_changes(&seen), ["Batches: 0 new, 0 changed, 1 removed", "Buying list: changed"]);
    there_and_back(&open, &incoming);
    there_and_back(&incoming, &open);
}
