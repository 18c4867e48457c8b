//! What is said of sizes side by side.

use brimwright::book::{Book, DrinkKind, Field, Key, Offer, Problem, Record, Refusal, Scope};
use brimwright::drink::ledger::Ledger;
use brimwright::foundation::measure::{Overflow, System};
use brimwright::sizes::side_by_side::{LeftOut, SideBySide, Step, WhatIfError, side_by_side};
use brimwright::words;

use crate::support::{
    book, container, container_id, drink, drink_id, exact, ingredient, line, millilitres, money, offer, offer_id, pack,
    settings, share, speaker,
};

/// Five drinks of 4.00 a litre at 2.00 and 3.00, in 250 and 500 mL; sold so often in a week.
fn menu(weekly: Option<&str>) -> Book {
    let drinks = (1..=5).flat_map(|id| {
        let sold = |container, price| Offer { weekly: weekly.map(exact), ..offer(id, container, Some(price)) };
        [
            Record::Drink(drink(id, "250 mL", [line(1, 1, "250 mL")])),
            Record::Offer(sold(1, "2")),
            Record::Offer(sold(2, "3")),
        ]
    });
    let goods = [
        Record::Ingredient(ingredient(1, [pack(1, "1 L", "4")])),
        Record::Container(container(1, "250 mL")),
        Record::Container(container(2, "500 mL")),
    ];
    book(brimwright::book::Settings { units: System::Metric, ..settings() }, goods.into_iter().chain(drinks))
}

/// With plain blanks between numbers and units.
fn plain(said: String) -> String {
    said.replace('\u{a0}', " ")
}

fn compared(book: &Book, scope: Scope) -> SideBySide {
    side_by_side(book, &Ledger::of(book), scope, &[container_id(1), container_id(2)]).unwrap()
}

#[test]
fn a_part_of_the_menu() {
    let book = menu(None);
    let said = |scope| words::scope(scope, &book);
    assert_eq!(said(Scope::Menu), "The whole menu");
    assert_eq!(said(Scope::Kind(DrinkKind::OverIce)), "Over ice");
    assert_eq!(said(Scope::Drink(drink_id(2))), "Invented drink 2");
}

#[test]
fn what_is_compared() {
    let none = SideBySide::default();
    assert_eq!(words::compared(&none), "No drink is sold in all of these sizes: leave one out.");
    let one = SideBySide { drinks: vec![(drink_id(1), exact("1"))], ..none };
    assert_eq!(words::compared(&one), "1 drink is sold in all of these sizes. The figures are its own.");
    assert_eq!(
        words::compared(&compared(&menu(None), Scope::Menu)),
        "5 drinks are sold in all of these sizes. The figures are their means, all alike: no weekly sales are entered for them."
    );
    assert_eq!(
        words::compared(&compared(&menu(Some("3")), Scope::Menu)),
        "5 drinks are sold in all of these sizes. The figures are their means, by what is sold of each in a week, in all these sizes together."
    );
}

#[test]
fn why_a_drink_is_left_out() {
    let book = menu(None);
    let said = |why| words::left_out(why, &book);
    assert_eq!(said(LeftOut::NotSoldIn(container_id(1))), "not sold in Invented 250 mL 1");
    assert_eq!(said(LeftOut::CannotCompute(container_id(1))), "cannot be computed in Invented 250 mL 1");
    assert_eq!(said(LeftOut::WithoutPrice(container_id(2))), "no price yet in Invented 500 mL 2");
    assert_eq!(said(LeftOut::WithoutSales), "no weekly sales entered");
}

#[test]
fn how_a_mean_came_about() {
    let said = |book: &Book, scope| {
        let side = compared(book, scope);
        words::mean_price(&side, &side.sizes[1], book, &Ledger::of(book), &speaker(System::Metric))
    };
    let rest = ", and so for each part of the cost and what is left. The margin is what the covered costs leave of all these prices without tax, over these.";
    // Three a week in each of two sizes: six of each drink.
    assert_eq!(
        said(&menu(Some("3")), Scope::Menu),
        format!("The price in Invented 500 mL 2: (6 × $3.00 + 6 × $3.00 + 6 × $3.00 + 2 more) / 30 = $3.00{rest}")
    );
    assert_eq!(
        said(&menu(None), Scope::Menu),
        format!("The price in Invented 500 mL 2: ($3.00 + $3.00 + $3.00 + 2 more) / 5 = $3.00{rest}")
    );
    assert_eq!(said(&menu(None), Scope::Drink(drink_id(1))), "");
}

#[test]
fn what_a_step_brings() {
    let book = menu(None);
    let said = |price, cost, kept: Option<&str>| {
        let step = Step { extra_price: money(price), extra_cost: money(cost), kept: kept.map(share) };
        plain(words::size_step(container_id(1), container_id(2), &step, &book, &speaker(System::Metric)))
    };
    let from = "From Invented 250 mL 1 to Invented 500 mL 2";
    assert_eq!(
        said("1.50", "0.92", Some("0.3866")),
        format!("{from} the price rises by $1.50, the cost rises by $0.92: 38.7 % of the extra price is kept.")
    );
    assert_eq!(
        said("0.50", "0.50", Some("0")),
        format!("{from} the price rises by $0.50, the cost rises by $0.50: nothing of the extra price is kept.")
    );
    assert_eq!(
        said("0.50", "0.92", Some("-0.84")),
        format!("{from} the price rises by $0.50, the cost rises by $0.92: nothing of the extra price is kept.")
    );
    assert_eq!(
        said("0", "0.92", None),
        format!("{from} the price stays the same, the cost rises by $0.92: there is no extra price to keep.")
    );
    assert_eq!(
        said("-1", "-0.10", None),
        format!("{from} the price falls by $1.00, the cost falls by $0.10: there is no extra price to keep.")
    );
}

#[test]
fn the_largest_part() {
    let book = menu(None);
    let sizes = compared(&book, Scope::Menu).sizes;
    assert_eq!(
        plain(words::largest_part(&sizes, &book, &speaker(System::Metric))),
        "Largest part of the cost: Ingredients, 100.0 % in Invented 250 mL 1, 100.0 % in Invented 500 mL 2."
    );
    assert_eq!(
        plain(words::largest_part(&sizes[..1], &book, &speaker(System::Metric))),
        "Largest part of the cost: Ingredients, 100.0 % in Invented 250 mL 1."
    );
    let mut free = sizes;
    for row in &mut free {
        row.parts = Default::default();
    }
    assert_eq!(words::largest_part(&free, &book, &speaker(System::Metric)), "Nothing is paid for.");
    assert_eq!(words::largest_part(&[], &book, &speaker(System::Metric)), "");
}

#[test]
fn what_cannot_be_tried() {
    let book = menu(None);
    let said = |error| plain(words::what_if_error(&error, &book, &speaker(System::Metric)));
    let price = Refusal::Field { key: Key::Offer(offer_id(1, 1)), field: Field::Price, problem: Problem::NotPositive };
    assert_eq!(said(WhatIfError::Refused(price)), "The menu price must be more than zero.");
    let over = WhatIfError::OverTheRim(millilitres("270"));
    assert_eq!(said(over), "The container holds 270 mL to the rim. Type less.");
    assert_eq!(said(WhatIfError::NothingPoured), "Something must be poured. Type more than zero.");
    assert_eq!(
        said(WhatIfError::Arithmetic(Overflow::TooLarge)),
        "The numbers are too large to compute with. Check for a digit too many."
    );
}
