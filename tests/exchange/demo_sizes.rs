//! What the demo book shows of sizes: the rules of thumb of the trade, and a comparison of its
//! cups worked out apart.

use brimwright::book::{Book, Conditions, DrinkKind, Edit, Offer, Record, Scope};
use brimwright::drink::ledger::Ledger;
use brimwright::foundation::measure::{Exact, Share};
use brimwright::sizes::side_by_side::{Draft, SideBySide, Weights, WhatIf, side_by_side, sold_in, sold_together};

use super::demo;
use crate::support::{container_id, drink_id, exact, share};

fn compared(book: &Book, scope: Scope) -> SideBySide {
    let ledger = Ledger::of(book);
    let sizes = match scope {
        Scope::Drink(_) => sold_in(book, scope),
        _ => sold_together(book, &ledger, scope),
    };
    side_by_side(book, &ledger, scope, &sizes).unwrap()
}

/// Common practice, no source: the smaller the size, the lower its price and the higher its price
/// per ounce; a larger size costs more to make, and less per ounce.
#[test]
fn a_smaller_size_asks_less_and_more_per_ounce() {
    let book = demo();
    let drinks = book.drinks().map(|drink| Scope::Drink(drink.id));
    let kinds = DrinkKind::ALL.iter().map(|kind| Scope::Kind(*kind));
    for scope in drinks.chain(kinds).chain([Scope::Menu]) {
        let rows = compared(&book, scope).sizes;
        assert!(rows.len() > 1, "{scope:?}");
        for pair in rows.windows(2) {
            let [small, large] = pair else { unreachable!("two at a time") };
            assert!(small.fill < large.fill && small.cost < large.cost, "{scope:?}");
            assert!(small.cost_per_volume > large.cost_per_volume, "{scope:?}");
            let (Some(small), Some(large)) = (small.sold, large.sold) else { continue };
            assert!(small.price < large.price, "{scope:?}");
            assert!(small.price_per_volume > large.price_per_volume, "{scope:?}");
            assert!(large.against_smallest < Share::WHOLE, "{scope:?}");
        }
    }
}

/// The parts of each size are those of its drinks, and together its cost, to the last digit.
#[test]
fn parts_sum_to_the_cost() {
    let book = demo();
    for scope in [Scope::Menu, Scope::Kind(DrinkKind::Pressed), Scope::Drink(drink_id(1))] {
        for row in compared(&book, scope).sizes {
            let sum = row.parts.iter().map(|part| part.major()).fold(Exact::ZERO, |sum, part| sum.plus(part).unwrap());
            assert_eq!(sum, row.cost.major(), "{scope:?}");
        }
    }
}

/// Six drinks are sold in all three cups; their prices, added up from the book's file by hand. All
/// drinks count alike: whatever sales the book has are taken out.
#[test]
fn the_menu_begins_with_the_cups() {
    let mut book = demo();
    let offers: Vec<Offer> = book.offers().cloned().collect();
    for offer in offers {
        book.apply(&Edit::Put(Record::Offer(Offer { weekly: None, ..offer }))).unwrap();
    }
    let side = compared(&book, Scope::Menu);
    let cups = [7, 8, 9].map(container_id);
    assert_eq!(side.sizes.iter().map(|row| row.container).collect::<Vec<_>>(), cups);
    assert_eq!((side.drinks.len(), side.weights), (6, Weights::Equal));
    // 5.50 + 5.25 + 5.50 + 5.50 + 3.75 + 3.50; 6.95 + 6.50 + 6.95 + 6.95 + 4.75 + 4.25; 8.50 + 8.25
    // + 9.50 + 8.75 + 5.95 + 5.25.
    for (row, sum) in side.sizes.iter().zip(["29", "36.35", "46.2"]) {
        let mean = exact(sum).over(Exact::from(6)).unwrap().rounded(12);
        assert_eq!(row.sold.unwrap().price.major(), mean);
    }
}

/// A fifth more for ingredients moves the ingredients of every cup by a fifth, within what a price
/// is kept to, and lets no other part but what is thrown away move.
#[test]
fn dearer_ingredients_over_the_menu() {
    let book = demo();
    let now = compared(&book, Scope::Menu);
    let cups = [7, 8, 9].map(container_id);
    let conditions = Conditions { ingredients: share("0.2"), ..Conditions::default() };
    let dearer = WhatIf { conditions, ..WhatIf::default() };
    let draft = Draft::of(&book, &Ledger::of(&book), Scope::Menu, &cups).with(&dearer).unwrap();
    let then = side_by_side(&draft.book, &draft.ledger, Scope::Menu, &cups).unwrap();
    for (now, then) in now.sizes.iter().zip(&then.sizes) {
        let fifth = then.parts[0].major().minus(now.parts[0].major().times(exact("1.2")).unwrap()).unwrap();
        assert!(fifth.abs() < exact("0.000001"), "{fifth}");
        assert_eq!(now.parts[1..5], then.parts[1..5]);
        assert!(then.parts[5] > now.parts[5]);
    }
}
