use super::*;
use crate::book::{Edit, Key, Record, ScenarioId, Service, Settings, Sold, Week};
use crate::support::{
    book_of_one_drink, container, container_id, day, drink_id, exact, money, offer, offer_id, settings,
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
    Scenario { id: ScenarioId::from_random(1), name: "Invented".into(), offers }
}

fn both(book: &Book, scenario: &Scenario) -> (Menu, Menu) {
    let ledger = Ledger::of(book);
    let weekly = WeeklyToday::of(book, &ledger, day("2026-11-27")).unwrap();
    let offers: Vec<Offer> = book.offers().cloned().collect();
    let today = Menu::of(book, &ledger, &offers, &weekly, Exact::ONE).unwrap();
    let then = scenario_ledger(book, scenario);
    (today, Menu::of(book, &then, &scenario.offers, &weekly, Exact::ONE).unwrap())
}

/// 14 * 2 and 14 * 2.5, by hand; with a week of 20 written down, 20 of each.
#[test]
fn both_sides_count_the_same_sales_without_overhead() {
    let mut book = bar();
    let scenario = scenario(vec![sold(1, "3.50", "14")]);
    let (today, then) = both(&book, &scenario);
    assert_eq!((today.profit, then.profit), (money("28"), money("35")));
    let line = Sold { drink: drink_id(1), container: container_id(1), units: exact("20"), contribution: money("1.6") };
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
    book.apply(&kept.adopted(&book)).unwrap();
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
    let applied = book.apply(&kept.adopted(&book)).unwrap();
    assert!(book.offers().eq(kept.offers.iter()));
    assert_eq!(changes(&book, &kept), []);
    assert!(book.contains(Key::Scenario(kept.id)), "it is kept");
    book.apply(&applied.inverse).unwrap();
    assert!(book.offer(offer_id(1, 1)).is_some());
}
