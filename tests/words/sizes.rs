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
    assert_eq!(said(Scope::Menu), "Whole menu");
    assert_eq!(said(Scope::Kind(DrinkKind::OverIce)), "Over ice");
    assert_eq!(said(Scope::Drink(drink_id(2))), "Invented drink 2");
}

#[test]
fn what_is_compared() {
    let none = SideBySide::default();
    assert_eq!(words::compared(&none), "No drink comes in every size shown. Leave a size out.");
    let one = SideBySide { drinks: vec![(drink_id(1), exact("1"))], ..none };
    assert_eq!(words::compared(&one), "1 drink comes in every size shown. The figures are for that drink.");
    assert_eq!(
        words::compared(&compared(&menu(None), Scope::Menu)),
        "5 drinks come in every size shown. Figures are plain averages until you enter weekly sales."
    );
    assert_eq!(
        words::compared(&compared(&menu(Some("3")), Scope::Menu)),
        "5 drinks come in every size shown. Figures are averages, weighted by weekly sales."
    );
}

#[test]
fn why_a_drink_is_left_out() {
    let book = menu(None);
    let said = |why| words::left_out(drink_id(2), why, &book);
    assert_eq!(said(LeftOut::NotSoldIn(container_id(1))), "Invented drink 2: not sold in Invented 250 mL 1");
    assert_eq!(said(LeftOut::CannotCompute(container_id(1))), "Invented drink 2: needs details in Invented 250 mL 1");
    assert_eq!(said(LeftOut::WithoutPrice(container_id(2))), "Invented drink 2: no price yet in Invented 500 mL 2");
    assert_eq!(said(LeftOut::WithoutSales), "Invented drink 2: no weekly sales");
}

#[test]
fn how_a_mean_came_about() {
    let said = |book: &Book, scope| {
        let side = compared(book, scope);
        words::mean_price(&side, &side.sizes[1], book, &Ledger::of(book), &speaker(System::Metric))
    };
    let rest =
        ". Costs and profit average the same way. Margin is figured on the totals of all these drinks, before tax.";
    // Three a week in each of two sizes: six of each drink.
    assert_eq!(
        said(&menu(Some("3")), Scope::Menu),
        format!("Average price in Invented 500 mL 2: (6 × $3.00 + 6 × $3.00 + 6 × $3.00 + 2 more) ÷ 30 = $3.00{rest}")
    );
    assert_eq!(
        said(&menu(None), Scope::Menu),
        format!("Average price in Invented 500 mL 2: ($3.00 + $3.00 + $3.00 + 2 more) ÷ 5 = $3.00{rest}")
    );
    assert_eq!(said(&menu(None), Scope::Drink(drink_id(1))), "");
}

#[test]
fn what_a_step_brings() {
    let book = menu(None);
    let said = |price, cost, fees, kept: Option<&str>| {
        let (extra_price, extra_cost) = (money(price), money(cost));
        let step = Step {
            extra_price,
            extra_tax: money("0"),
            extra_cost,
            extra_fees: money(fees),
            extra_reductions: money("0"),
            extra_left: extra_price.minus(extra_cost).unwrap().minus(money(fees)).unwrap(),
            kept: kept.map(share),
        };
        plain(words::size_step(container_id(1), container_id(2), &step, &book, &speaker(System::Metric)))
    };
    let from = "From Invented 250 mL 1 to Invented 500 mL 2, the price";
    assert_eq!(
        said("1.50", "0.92", "0", Some("0.3866")),
        format!("{from} goes up $1.50. The cost goes up $0.92. You keep $0.58: 38.7% of the extra price before tax.")
    );
    assert_eq!(
        said("0.50", "0", "0.10", Some("0.8")),
        format!(
            "{from} goes up $0.50. The cost stays the same. Fees take $0.10 more. \
             You keep $0.40: 80.0% of the extra price before tax."
        )
    );
    assert_eq!(
        said("0.50", "0.50", "0", Some("0")),
        format!("{from} goes up $0.50. The cost goes up $0.50. You keep nothing of the extra price.")
    );
    assert_eq!(
        said("0.50", "0.92", "0", Some("-0.84")),
        format!("{from} goes up $0.50. The cost goes up $0.92. You keep nothing of the extra price.")
    );
    assert_eq!(said("0", "0.92", "0", None), format!("{from} stays the same. The cost goes up $0.92."));
    let taxed = Step {
        extra_price: money("2.2"),
        extra_tax: money("0.2"),
        extra_cost: money("1"),
        extra_fees: money("0"),
        extra_reductions: money("0"),
        extra_left: money("1"),
        kept: Some(share("0.5")),
    };
    assert_eq!(
        plain(words::size_step(container_id(1), container_id(2), &taxed, &book, &speaker(System::Metric))),
        format!(
            "{from} goes up $2.20. The cost goes up $1.00. Tax takes $0.20 more. \
             You keep $1.00: 50.0% of the extra price before tax."
        )
    );
    let down = format!("{from} goes down $1.00. The cost goes down $0.10. Fees take $0.03 less.");
    assert_eq!(said("-1", "-0.10", "-0.03", None), down);
}

#[test]
fn the_largest_part() {
    let book = menu(None);
    let sizes = compared(&book, Scope::Menu).sizes;
    assert_eq!(
        plain(words::largest_part(&sizes, &book, &speaker(System::Metric))),
        "Biggest cost: Ingredients, 100.0% in Invented 250 mL 1 and 100.0% in Invented 500 mL 2."
    );
    assert_eq!(
        plain(words::largest_part(&sizes[..1], &book, &speaker(System::Metric))),
        "Biggest cost: Ingredients, 100.0% in Invented 250 mL 1."
    );
    // In the smallest size labor is three of four.
    let mut labor = sizes.clone();
    (labor[0].parts[0], labor[0].parts[2], labor[0].cost) = (money("1"), money("3"), money("4"));
    assert_eq!(
        plain(words::largest_part(&labor, &book, &speaker(System::Metric))),
        "Biggest cost: Labor, 75.0% in Invented 250 mL 1. Biggest cost: Ingredients, 100.0% in Invented 500 mL 2."
    );
    let mut free = sizes;
    for row in &mut free {
        row.parts = Default::default();
    }
    assert_eq!(words::largest_part(&free, &book, &speaker(System::Metric)), "No costs yet.");
    assert_eq!(words::largest_part(&[], &book, &speaker(System::Metric)), "");
}

#[test]
fn what_cannot_be_tried() {
    let book = menu(None);
    let said = |error| plain(words::what_if_error(&error, &book, &speaker(System::Metric)));
    let price = Refusal::Field { key: Key::Offer(offer_id(1, 1)), field: Field::Price, problem: Problem::NotPositive };
    assert_eq!(said(WhatIfError::Refused(price)), "Menu price: must be more than zero. Type a number such as 12.");
    let over = WhatIfError::OverTheRim(millilitres("270"));
    assert_eq!(said(over), "Brimful capacity is 270 mL. Type a smaller fill.");
    assert_eq!(said(WhatIfError::NothingPoured), "The fill is zero. Type more than zero, such as 12.");
    assert_eq!(
        said(WhatIfError::Arithmetic(Overflow::TooLarge)),
        "These numbers are too large. Check for an extra digit."
    );
}
