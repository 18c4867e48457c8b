use super::*;
use crate::book::{
    Bought, Conditions, Drink, Edit, Filled, Goods, Key, Labour, Record, ScenarioId, Service, Settings, Sold, Week,
};
use crate::drink::fill::fill;
use crate::sizes::side_by_side::{Change, NotOurs};
use crate::support::{
    amount, book_of_one_drink, container, container_id, day, drink_id, exact, ingredient_id, millilitres, money, offer,
    offer_id, pack_id, seconds, settings, share,
};

/// Drink 1 at 3.00 and a cost of 1, and overhead of 0.40 that no number of drinks changes; 14 sold a week.
fn bar() -> Book {
    let mut book = book_of_one_drink(Settings { overhead: money("0.40"), ..settings() }, "1", Some("3"));
    for record in [Record::Offer(sold(1, "3", "14")), Record::Container(container(2, "500 mL"))] {
        book.apply(&Edit::Put(record)).unwrap();
    }
    book
}

fn sold(container: u64, price: &str, weekly: &str) -> Offer {
    Offer { weekly: Some(exact(weekly)), ..offer(1, container, Some(price)) }
}

fn scenario(offers: Vec<Offer>) -> Scenario {
    Scenario { id: ScenarioId::from_random(1), name: "Invented".into(), offers, conditions: KeptConditions::default() }
}

fn both(book: &Book, scenario: &Scenario) -> (Menu, Menu) {
    let ledger = Ledger::of(book);
    let weekly = WeeklyToday::of(book, &ledger, day("2026-11-27")).unwrap();
    let offers: Vec<Offer> = book.offers().cloned().collect();
    let today = Menu::of(book, &ledger, &offers, &weekly, Exact::ONE).unwrap();
    let then = drafted(book, scenario).unwrap();
    (today, Menu::of(&then.book, &then.ledger, &scenario.offers, &weekly, Exact::ONE).unwrap())
}

/// 14 * 2 and 14 * 2.5, by hand; with a week of 20 written down, 20 of each.
#[test]
fn both_sides_count_the_same_sales_without_overhead() {
    let mut book = bar();
    let scenario = scenario(vec![sold(1, "3.50", "14")]);
    let (today, then) = both(&book, &scenario);
    assert_eq!((today.profit, then.profit), (money("28"), money("35")));
    let line = Sold {
        drink: drink_id(1),
        container: container_id(1),
        units: exact("20"),
        contribution: money("1.6"),
        overhead: None,
    };
    book.apply(&Edit::Put(Record::Week(Week { monday: day("2026-11-16"), sold: vec![line] }))).unwrap();
    let (today, then) = both(&book, &scenario);
    assert_eq!((today.units, then.units), (exact("20"), exact("20")));
    assert_eq!((today.profit, then.profit), (money("40"), money("50")));
    // A number of its own is counted as it is: 10 * 2.5.
    let (_, then) = both(&book, &self::scenario(vec![sold(1, "3.50", "10")]));
    assert_eq!(then.profit, money("25"));
}

#[test]
fn what_a_menu_lacks_is_counted() {
    let book = bar();
    let (_, then) = both(&book, &scenario(vec![sold(1, "3", "14"), offer(1, 2, None)]));
    assert_eq!((then.sizes, then.cards, then.without_price, then.without_number), (2, 2, 1, 1));
    assert_eq!((then.units, then.profit), (exact("14"), money("28")));
}

/// How a drink is served was noted after the scenario was made: adopting it changes the price alone.
#[test]
fn what_a_scenario_says_nothing_of_stays() {
    let mut book = bar();
    let kept = scenario(vec![sold(1, "3.50", "14")]);
    let served = Offer { service: Some(Service::PackagedAhead), ..sold(1, "3", "14") };
    book.apply(&Edit::Put(Record::Offer(served.clone()))).unwrap();
    let dearer = Offer { price: Some(money("3.50")), ..served.clone() };
    assert_eq!(changes(&book, &kept), [(Some(served.clone()), Some(dearer.clone()))]);
    book.apply(&kept.adopted(&book, day("2026-11-30"))).unwrap();
    assert_eq!(book.offer(served.id()), Some(&dearer));
}

/// Adopting it makes what the list says, no more, and the scenario stays.
#[test]
fn the_changes_are_those_that_adopting_makes() {
    let mut book = bar();
    let kept = scenario(vec![sold(2, "5", "6")]);
    book.apply(&Edit::Put(Record::Scenario(kept.clone()))).unwrap();
    let (was, new) = (book.offer(offer_id(1, 1)).cloned(), kept.offers.first().cloned());
    assert_eq!(changes(&book, &kept), [(was, None), (None, new)]);
    let applied = book.apply(&kept.adopted(&book, day("2026-11-30"))).unwrap();
    assert!(book.offers().eq(kept.offers.iter()));
    assert_eq!(changes(&book, &kept), []);
    assert!(book.contains(Key::Scenario(kept.id)), "it is kept");
    book.apply(&applied.inverse).unwrap();
    assert!(book.offer(offer_id(1, 1)).is_some());
}

/// 18.00 an hour and half a minute a drink: 0.15 each. At 21.00 it is 0.175, ingredients of 1.00 cost a tenth more.
fn conditions() -> Conditions {
    Conditions {
        ingredients: share("0.1"),
        wage: Some(money("21")),
        fills: vec![Filled { container: container_id(2), fill: amount("400 mL") }],
        ..Conditions::default()
    }
}

fn with_hands() -> Book {
    let mut book = bar();
    let wage = Settings { wage: money("18"), ..book.settings().clone() };
    let labour = Labour { per_drink: seconds("30"), ..Labour::default() };
    let drink = Drink { labour, ..book.drink(drink_id(1)).unwrap().clone() };
    for record in [Record::Settings(Box::new(wage)), Record::Drink(drink)] {
        book.apply(&Edit::Put(record)).unwrap();
    }
    book
}

/// 14 * (3 - 1 - 0.15) = 25.90 today, 14 * (3 - 1.1 - 0.175) = 24.15 then, and 14 * (2 - 0.175) = 25.55 without what
/// the supplier might ask.
#[test]
fn costs_that_are_taken_to_be_other_count() {
    let book = with_hands();
    let kept = Scenario { conditions: KeptConditions::of(&conditions()), ..scenario(vec![sold(1, "3", "14")]) };
    let (today, then) = both(&book, &kept);
    assert_eq!((today.profit, then.profit), (money("25.9"), money("24.15")));
    assert_eq!(both(&book, &ours(&kept)).1.profit, money("25.55"));
    let uses = uses(&book, &kept);
    let (from, to) = (Some(millilitres("500")), millilitres("400"));
    let fill = Change::Fill { container: container_id(2), from, to, drinks: 0 };
    assert_eq!(uses.changes, [fill, Change::Wage(money("18"), money("21"))]);
    assert_eq!(uses.not_ours, [NotOurs::Ingredients(share("0.1"))]);
}

#[test]
fn an_offer_is_other_where_its_price_its_number_or_its_cost_is() {
    let book = with_hands();
    let (today, same) = (Ledger::of(&book), sold(1, "3", "14"));
    let under = |conditions: &Conditions| {
        drafted(&book, &Scenario { conditions: KeptConditions::of(conditions), ..scenario(vec![same.clone()]) })
            .unwrap()
    };
    let (as_today, wage) = (under(&Conditions::default()), under(&conditions()));
    let other = |then: &Ledger, is: Option<&Offer>| is_other((&today, Some(&same)), (then, is));
    assert!(!other(&as_today.ledger, Some(&same)));
    assert!(other(&wage.ledger, Some(&same)));
    assert!(other(&as_today.ledger, Some(&sold(1, "3", "15"))));
    assert!(other(&as_today.ledger, Some(&sold(1, "3.1", "14"))));
    assert!(other(&as_today.ledger, None));
}

/// What the owner decides is in the book, what suppliers ask is not; then nothing more of it is a change.
#[test]
fn adopting_puts_in_force_what_the_owner_decides() {
    let mut book = with_hands();
    let kept = Scenario { conditions: KeptConditions::of(&conditions()), ..scenario(vec![sold(1, "3", "9")]) };
    let before = book.clone();
    let applied = book.apply(&adopted(&book, &kept, day("2026-11-27")).unwrap()).unwrap();
    assert_eq!(book.settings().wage, money("21"));
    let poured = fill(book.container(container_id(2)).unwrap()).unwrap().volume;
    assert_eq!(poured.millilitres().rounded(4), exact("400"));
    assert_eq!(book.ingredients().collect::<Vec<_>>(), before.ingredients().collect::<Vec<_>>());
    let offer = book.offer(offer_id(1, 1)).unwrap();
    assert_eq!((offer.weekly, offer.weekly_from), (Some(exact("9")), Some(day("2026-11-30"))));
    assert_eq!((uses(&book, &kept).changes, changes(&book, &kept)), (Vec::new(), Vec::new()));
    book.apply(&applied.inverse).unwrap();
    assert_eq!(book, before);
}

/// 20 a week were written down, 9 are expected: the menu then brings what the scenario said.
#[test]
fn what_was_promised_is_what_counts_after_adopting() {
    let mut book = bar();
    let line = crate::support::sold(1, 1, "20", "1.6");
    book.apply(&Edit::Put(Record::Week(Week { monday: day("2026-11-16"), sold: vec![line] }))).unwrap();
    let kept = scenario(vec![sold(1, "3", "9")]);
    let (_, then) = both(&book, &kept);
    book.apply(&adopted(&book, &kept, day("2026-11-27")).unwrap()).unwrap();
    let (today, still) = both(&book, &kept);
    assert_eq!((then.units, today.units, still.units), (exact("9"), exact("9"), exact("9")));
    assert_eq!((then.profit, today.profit), (money("18"), money("18")));
}

#[test]
fn what_is_gone_counts_for_nothing_and_what_cannot_be_is_said() {
    let book = bar();
    let gone = Conditions {
        bought: vec![Bought { goods: Goods::Ingredient(ingredient_id(1)), pack: pack_id(9), price: None }],
        fills: vec![Filled { container: container_id(9), fill: amount("1 mL") }],
        ..Conditions::default()
    };
    let of = |conditions: &Conditions| {
        let conditions = KeptConditions::of(conditions);
        Scenario { conditions, ..scenario(vec![sold(1, "3", "14")]) }
    };
    assert_eq!(both(&book, &of(&gone)), both(&book, &of(&Conditions::default())));
    assert_eq!(uses(&book, &of(&gone)), Uses::default());
    let over = Conditions {
        fills: vec![Filled { container: container_id(2), fill: amount("501 mL") }],
        ..Conditions::default()
    };
    assert_eq!(drafted(&book, &of(&over)), Err(WhatIfError::OverTheRim(millilitres("500"))));
}
