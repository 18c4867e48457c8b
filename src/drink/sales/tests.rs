use super::*;
use crate::book::{Drink, Edit, Key, Record, Settings, Sold};
use crate::foundation::measure::{Date, Share};
use crate::support::{
    book_of_one_drink, container, container_id, day, drink_id, exact, money, offer, offer_id, settings,
};

/// Drink 1 at 3.00 and a cost of 1 (contribution 2) in container 1, and without a price in 2.
fn bar() -> Book {
    let mut book = book_of_one_drink(settings(), "1", Some("3"));
    for record in [Record::Container(container(2, "500 mL")), Record::Offer(offer(1, 2, None))] {
        book.apply(&Edit::Put(record)).unwrap();
    }
    book
}

fn sold(container: u64, units: &str, contribution: &str) -> Sold {
    let OfferId { drink, container } = offer_id(1, container);
    Sold { drink, container, units: exact(units), contribution: money(contribution), overhead: None }
}

fn put_week(book: &mut Book, monday: &str, sold: Vec<Sold>) {
    book.apply(&Edit::Put(Record::Week(Week { monday: day(monday), sold }))).unwrap();
}

fn write(book: &mut Book, monday: Date, container: u64, units: Option<&str>) -> Result<(), Unknown> {
    let ledger = Ledger::of(book);
    let edit = write_down(book, &ledger, monday, offer_id(1, container), units.map(exact))?;
    book.apply(&edit).unwrap();
    Ok(())
}

/// 3 - 1 by hand.
#[test]
fn one_contributes_its_price_less_its_cost() {
    let ledger = Ledger::of(&bar());
    assert_eq!(contribution_now(&ledger, offer_id(1, 1)), Ok(money("2")));
    assert_eq!(contribution_now(&ledger, offer_id(1, 2)), Err(Unknown::NoPrice));
    assert_eq!(contribution_now(&ledger, offer_id(9, 1)), Err(Unknown::NotOffered));
}

#[test]
fn what_a_book_cannot_compute_is_said() {
    let mut book = bar();
    let mut thirsty = book.ingredient(crate::support::ingredient_id(1)).unwrap().clone();
    thirsty.packs.clear();
    book.apply(&Edit::Put(Record::Ingredient(thirsty))).unwrap();
    let ledger = Ledger::of(&book);
    assert!(matches!(contribution_now(&ledger, offer_id(1, 1)), Err(Unknown::Stuck(OfferError::Cost(_)))));
}

/// A third of a unit of money: 3.00 with 1/7 unsold costs 1 / (6/7) = 7/6; 3 - 7/6 = 1.8333...,
/// kept to eight decimals.
#[test]
fn what_is_written_down_can_be_kept() {
    let mut book = bar();
    let unsold = Settings { unsold: Share::from_fraction(exact("0.142857")), ..book.settings().clone() };
    book.apply(&Edit::Put(Record::Settings(Box::new(unsold)))).unwrap();
    let one = contribution_now(&Ledger::of(&book), offer_id(1, 1)).unwrap();
    assert!(one.major().keeps(), "{one:?}");
    assert_eq!(one.major().rounded(4), exact("1.8333"));
    write(&mut book, day("2026-11-23"), 1, Some("4")).unwrap();
}

/// 14 sold at 2 each, by hand.
#[test]
fn the_usual_week_counts_what_is_known() {
    let mut book = bar();
    let weekly = |book: &Book| weekly_contribution(book, &Ledger::of(book), Scope::Menu).unwrap();
    let nothing = weekly(&book);
    assert_eq!((nothing.units, nothing.contribution), (Exact::ZERO, Money::ZERO));
    assert_eq!(nothing.unknown, [(offer_id(1, 1), Unknown::NoWeekly), (offer_id(1, 2), Unknown::NoPrice)]);

    for container in [1, 2] {
        let edit = usual_week(&book, offer_id(1, container), Some(exact("14"))).unwrap();
        book.apply(&edit).unwrap();
    }
    let known = weekly(&book);
    assert_eq!((known.units, known.contribution), (exact("14"), money("28")));
    assert_eq!(known.unknown, [(offer_id(1, 2), Unknown::NoPrice)]);
    let pressed = Scope::Kind(crate::book::DrinkKind::Pressed);
    let none = weekly_contribution(&book, &Ledger::of(&book), pressed).unwrap();
    assert_eq!((none.units, none.unknown), (Exact::ZERO, Vec::new()), "the drink is blended");
}

/// A line as it is written down in a book without overhead.
fn written(container: u64, units: &str, contribution: &str) -> Sold {
    Sold { overhead: Some(Money::ZERO), ..sold(container, units, contribution) }
}

/// 3.00 less a cost of 1.00 and overhead of 0.40.
#[test]
fn a_line_notes_the_overhead_that_it_bears() {
    let book = book_of_one_drink(Settings { overhead: money("0.40"), ..settings() }, "1", Some("3"));
    let line = line_now(&Ledger::of(&book), offer_id(1, 1)).unwrap();
    assert_eq!((line.contribution, line.overhead), (money("1.6"), Some(money("0.4"))));
}

#[test]
fn a_line_keeps_what_one_contributed_then() {
    let mut book = bar();
    let monday = day("2026-11-23");
    write(&mut book, monday, 1, Some("10")).unwrap();
    assert_eq!(book.week(monday).unwrap().sold, [written(1, "10", "2")]);
    book.apply(&Edit::SetPrice { offer: offer_id(1, 1), price: Some(money("3.5")) }).unwrap();
    write(&mut book, monday, 1, Some("12")).unwrap();
    assert_eq!(book.week(monday).unwrap().sold, [written(1, "12", "2")]);
    // Another week is of the new price.
    write(&mut book, monday.plus_weeks(1), 1, Some("8")).unwrap();
    assert_eq!(book.week(monday.plus_weeks(1)).unwrap().sold, [written(1, "8", "2.5")]);
    assert_eq!(sold_in(book.week(monday).unwrap()), Ok((exact("12"), money("24"))));
}

#[test]
fn a_size_that_is_gone_can_still_be_corrected() {
    let mut book = bar();
    let monday = day("2026-11-23");
    write(&mut book, monday, 1, Some("10")).unwrap();
    book.apply(&Edit::Remove(Key::Offer(offer_id(1, 1)))).unwrap();
    write(&mut book, monday, 1, Some("9")).unwrap();
    assert_eq!(book.week(monday).unwrap().sold, [written(1, "9", "2")]);
    assert_eq!(write(&mut book, monday.plus_weeks(1), 1, Some("9")), Err(Unknown::NotOffered));
    assert_eq!(write(&mut book, monday, 2, Some("1")), Err(Unknown::NoPrice));
}

#[test]
fn an_empty_line_goes_and_with_the_last_one_the_week() {
    let mut book = bar();
    let monday = day("2026-11-23");
    put_week(&mut book, "2026-11-23", vec![sold(1, "3", "2"), sold(2, "4", "1")]);
    write(&mut book, monday, 1, None).unwrap();
    assert_eq!(book.week(monday).unwrap().sold, [sold(2, "4", "1")]);
    write(&mut book, monday, 2, None).unwrap();
    assert_eq!(book.week(monday), None);
    let ledger = Ledger::of(&book);
    assert_eq!(write_down(&book, &ledger, monday, offer_id(1, 1), None), Ok(Edit::Together(Vec::new())));
    // None sold is not the same as not written down.
    write(&mut book, monday, 1, Some("0")).unwrap();
    assert_eq!(book.week(monday).unwrap().sold, [written(1, "0", "2")]);
}

/// (10 + 13 + 0) / 3 = 7.7 for the first size, by hand; the second stays.
#[test]
fn the_average_is_over_the_weeks_written_down_and_names_the_missing() {
    let mut book = bar();
    put_week(&mut book, "2026-10-12", vec![sold(1, "500", "2")]);
    put_week(&mut book, "2026-11-02", vec![sold(1, "10", "2")]);
    put_week(&mut book, "2026-11-16", vec![sold(1, "13", "2")]);
    put_week(&mut book, "2026-11-23", vec![]);
    // The running week does not count.
    put_week(&mut book, "2026-11-30", vec![sold(1, "900", "2")]);
    let found = average(&book, day("2026-11-30")).unwrap().unwrap();
    assert_eq!(found.weeks, [day("2026-11-02"), day("2026-11-16"), day("2026-11-23")]);
    assert_eq!((found.missing, found.offers), (vec![day("2026-11-09")], 1));
    let before = book.clone();
    let applied = book.apply(&found.edit).unwrap();
    assert_eq!(book.offer(offer_id(1, 1)).unwrap().weekly, Some(exact("7.7")));
    assert_eq!(book.offer(offer_id(1, 2)).unwrap().weekly, None);
    assert_eq!(book.offer(offer_id(1, 1)).unwrap().price, Some(money("3")));
    book.apply(&applied.inverse).unwrap();
    assert_eq!(book, before);
}

#[test]
fn weeks_before_the_first_are_not_missing() {
    let mut book = bar();
    assert_eq!(average(&book, day("2026-11-30")), Ok(None));
    put_week(&mut book, "2026-11-23", vec![sold(1, "13", "2")]);
    assert_eq!(average(&book, day("2026-11-23")), Ok(None), "it still runs");
    let found = average(&book, day("2026-11-30")).unwrap().unwrap();
    assert_eq!((found.weeks, found.missing), (vec![day("2026-11-23")], vec![]));
}

/// Drinks 1 (pressed) and 2 (a shot) in containers 1 and 2, sold so often in a week.
fn two_kinds(weekly: [[Option<&str>; 2]; 2]) -> Book {
    let mut book = book_of_one_drink(settings(), "1", None);
    let pressed = book.drink(drink_id(1)).unwrap().clone();
    let shot = Drink { id: drink_id(2), kind: DrinkKind::Shot, ..pressed.clone() };
    let pressed = Drink { kind: DrinkKind::Pressed, ..pressed };
    let records = [Record::Drink(pressed), Record::Drink(shot), Record::Container(container(2, "250 mL"))];
    let offers = (1..).zip(weekly).flat_map(|(drink, sizes)| {
        let sizes = (1..).zip(sizes);
        sizes.map(move |(size, weekly)| Offer { weekly: weekly.map(exact), ..offer(drink, size, None) })
    });
    for record in records.into_iter().chain(offers.map(Record::Offer)) {
        book.apply(&Edit::Put(record)).unwrap();
    }
    book
}

#[test]
fn the_kind_and_the_size_that_sell_most() {
    let book = two_kinds([[Some("9"), Some("8")], [Some("3"), Some("15")]]);
    assert_eq!(foremost_kind(&book), Some(DrinkKind::Shot), "18 against 17");
    let shots = Scope::Kind(DrinkKind::Shot);
    assert_eq!(foremost_size(&book, shots), Some(container_id(2)));
    assert_eq!(foremost_size(&book, Scope::Drink(drink_id(1))), Some(container_id(1)));
    assert_eq!(foremost_size(&book, Scope::Menu), Some(container_id(2)), "23 against 12");
}

#[test]
fn where_no_sales_are_known_the_first_kind_stands_for_all_and_no_size() {
    let book = two_kinds([[None; 2]; 2]);
    assert_eq!(foremost_kind(&book), Some(DrinkKind::Pressed));
    assert_eq!(foremost_size(&book, Scope::Menu), None);
    let none = Book::new(settings());
    assert_eq!((foremost_kind(&none), foremost_size(&none, Scope::Menu)), (None, None));
}
