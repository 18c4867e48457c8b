//! The sentences of sales, prices seen, trials and scenarios.

use brimwright::book::{Book, Edit, Field, Key, Offer, Problem, Record, Refusal, Scope, Week};
use brimwright::drink::ledger::{Ledger, OfferError};
use brimwright::drink::sales::{Unknown, average, sold_in, weekly_contribution};
use brimwright::exchange::{BadRow, TillError, Why};
use brimwright::foundation::measure::{Overflow, ReadError, System};

use crate::support::speaker;
use brimwright::words;

use super::support::{book_of_one_drink, container, day, exact, offer, settings, week};

/// Invented drink 1 in two containers, at a contribution of 2 and without a price.
fn bar() -> Book {
    let mut book = book_of_one_drink(settings(), "1", Some("3"));
    for record in [Record::Container(container(2, "500 mL")), Record::Offer(offer(1, 2, None))] {
        book.apply(&Edit::Put(record)).unwrap();
    }
    book
}

#[test]
fn refusals() {
    let at = |key: &str, field, problem| {
        let key = Key::from_text(key).unwrap();
        words::refusal(&Refusal::Field { key, field, problem }, &bar())
    };
    let week = |field, problem| at("week:2026-11-23", field, problem);
    assert_eq!(week(Field::Monday, Problem::NotAMonday), "A week begins on a Monday. Choose the Monday.");
    assert_eq!(week(Field::Units, Problem::Negative), "The number sold cannot be below zero.");
    assert_eq!(
        week(Field::Units, Problem::Twice),
        "The number sold: the same thing stands here twice. Keep one of them."
    );
    assert_eq!(
        week(Field::Contribution, Problem::TooLarge),
        "What one contributed has too many digits to compute with. Check for a digit too many."
    );
    let trial = |field, problem| at("trial:1", field, problem);
    assert_eq!(
        trial(Field::Start, Problem::NotAfter),
        "The first week of the change must come after the weeks before it. Choose a later one."
    );
    assert_eq!(
        trial(Field::Last, Problem::NotAfter),
        "The last week must come after the weeks before it. Choose a later one."
    );
    let seen = |field, problem| at("seen-price:1", field, problem);
    assert_eq!(seen(Field::Place, Problem::Empty), "The place is empty. Type at least one letter.");
    assert_eq!(seen(Field::Place, Problem::TooLong), "The place is longer than 80 letters. Shorten it.");
    assert_eq!(seen(Field::Size, Problem::NotAVolume), "The size must be a volume, such as 16 fl oz or 500 mL.");
    assert_eq!(
        at("scenario:1", Field::Offers, Problem::Twice),
        "The sizes: the same thing stands here twice. Keep one of them."
    );
    assert_eq!(
        at("settings", Field::TillColumn, Problem::Empty),
        "The name of a column is empty. Type at least one letter."
    );
    let missing =
        |key: &str| words::refusal(&Refusal::Missing { key: Key::from_text(key).unwrap(), needed_by: None }, &bar());
    for (key, kind) in [
        ("week:2026-11-23", "week"),
        ("seen-price:1", "price seen elsewhere"),
        ("trial:1", "trial"),
        ("scenario:1", "scenario"),
    ] {
        let sentence = format!("This {kind} is not in the book any more. Undo its removal, or go back.");
        assert_eq!(missing(key), sentence);
    }
}

#[test]
fn a_drink_in_use_by_a_week_is_named() {
    let mut book = bar();
    book.apply(&Edit::Put(Record::Week(week("2026-11-23", &[(2, "4", "1")])))).unwrap();
    let refused = book.apply(&Edit::Remove(Key::from_text("container:2").unwrap())).unwrap_err();
    assert_eq!(
        words::refusal(&refused, &book),
        "Invented 500 mL 2 is used in Invented drink 1, Invented 500 mL 2; Week of 23 Nov 2026. Replace or remove it there first."
    );
}

#[test]
fn days_and_weeks() {
    assert_eq!(words::day(day("2026-11-23")), "23 Nov 2026");
    assert_eq!(words::day(day("0999-01-01")), "1 Jan 999");
    assert_eq!(words::week(day("2026-11-23")), "Week of 23 Nov 2026");
}

/// 14 * 2 by hand.
#[test]
fn a_usual_week() {
    let mut book = bar();
    let speaker = speaker(System::UsCustomary);
    let said = |book: &Book| {
        let ledger = Ledger::of(book);
        let weekly = weekly_contribution(book, &ledger, Scope::Menu).unwrap();
        (words::weekly_working(book, &ledger, &weekly, &speaker), words::not_counted(&weekly, book))
    };
    let (working, not_counted) = said(&book);
    assert_eq!(working, "Nothing is counted yet.");
    assert_eq!(
        not_counted,
        "Not counted: Invented drink 1, Invented 250 mL 1 (number not known); Invented drink 1, Invented 500 mL 2 (no price yet)."
    );
    let first = book.offers().next().unwrap().clone();
    book.apply(&Edit::Put(Record::Offer(Offer { weekly: Some(exact("14")), ..first }))).unwrap();
    let (working, not_counted) = said(&book);
    assert_eq!(working, "The number sold times what one contributes, added up: 14 × $2.00 = $28.00.");
    assert_eq!(not_counted, "Not counted: Invented drink 1, Invented 500 mL 2 (no price yet).");
}

/// 3 * 2 - 4 * 0.5 + 0 = 4, by hand.
#[test]
fn a_week_that_was_written_down() {
    let said = |week: &Week| words::week_working(week, sold_in(week).unwrap().1, &speaker(System::UsCustomary));
    assert_eq!(said(&week("2026-11-23", &[])), "Nothing is written down yet.");
    let sold = week("2026-11-23", &[(1, "3", "2"), (2, "4", "-0.5"), (3, "0", "9")]);
    assert_eq!(
        said(&sold),
        "The number sold times what one contributed when it was written down: 3 × $2.00 + 4 × −$0.50 + 1 more = $4.00."
    );
}

#[test]
fn an_average_names_its_weeks() {
    let mut book = bar();
    let mut put = |monday| book.apply(&Edit::Put(Record::Week(week(monday, &[(1, "12", "2")])))).map(|_| ()).unwrap();
    put("2026-11-16");
    let said = |book: &Book| words::weeks_averaged(&average(book, day("2026-11-30")).unwrap().unwrap());
    put("2026-11-02");
    assert_eq!(
        said(&book),
        "The average of the 2 weeks of 2 Nov 2026, 16 Nov 2026 sets 1 size. One that is missing in a week counts as none \
         sold there; one that is in none of them stays as it is. Nobody wrote down the week of 9 Nov 2026: it does not count."
    );
}

#[test]
fn why_something_does_not_count() {
    let said = |unknown| words::unknown_sales(unknown, &bar());
    assert_eq!(
        said(Unknown::NoPrice),
        "This size has no price yet, so nobody knows what one brings. Give it a menu price first."
    );
    assert_eq!(said(Unknown::NotOffered), "This size is not on the menu. Add it to the drink first.");
    assert_eq!(said(Unknown::NoWeekly), "How many are usually sold is not known. Type it.");
    assert_eq!(
        said(Unknown::Stuck(OfferError::Arithmetic(Overflow::TooLarge))),
        "What one brings cannot be computed. The numbers are too large to compute with. Check for a digit too many."
    );
}

#[test]
fn what_is_no_list() {
    let said = words::till_error;
    assert_eq!(said(TillError::TooLarge), "The file is larger than 10 MB. Save fewer weeks at a time.");
    assert_eq!(said(TillError::Empty), "The file is empty. Choose another.");
    assert_eq!(
        said(TillError::NotText),
        "The file is not text in UTF-8. Save it from the till or a spreadsheet as CSV in UTF-8."
    );
    assert_eq!(
        said(TillError::NoColumns),
        "The file has no columns: no comma, semicolon or tab stands in its first line. Save the list as CSV."
    );
    assert_eq!(said(TillError::OnlyHeads), "The file has the heads of columns and nothing under them. Choose another.");
    assert_eq!(
        said(TillError::OpenQuote { line: 7 }),
        "A quotation mark in the row that begins on line 7 is never closed. Save the list as CSV anew."
    );
}

#[test]
fn rows_left_out() {
    let said = |text: &str, why| words::bad_row(&BadRow { line: 3, text: text.into(), why }, &bar());
    let why = |why| said("x | 2", why).strip_prefix("Line 3: “x | 2”. ").unwrap().to_string();
    assert_eq!(why(Why::TooShort), "It has fewer cells than there are columns.");
    assert_eq!(why(Why::UnknownItem("Tea".into())), "No drink on the menu is called “Tea”.");
    assert_eq!(why(Why::UnknownItem(String::new())), "It names no drink.");
    let size = |size: &str| Why::UnknownSize { drink: "Tea".into(), size: size.into() };
    assert_eq!(why(size("Bucket")), "Tea is not sold in “Bucket”.");
    assert_eq!(why(size("")), "It does not say which size of Tea.");
    assert_eq!(
        why(Why::SeveralItems("Tea, Cup".into())),
        "More than one drink and size is called “Tea, Cup”. Give one another name."
    );
    assert_eq!(
        why(Why::Units(ReadError::Negative)),
        "The number is below zero, as for returns. Take returns off what was sold, in the list."
    );
    assert_eq!(
        why(Why::Units(ReadError::NotANumber { text: "two".into() })),
        "“two” is not a number. Type digits, such as 12."
    );
    assert_eq!(why(Why::Day("31.11.2026".into())), "“31.11.2026” is no day of the calendar, such as 2026-11-23.");
    assert_eq!(why(Why::Day(String::new())), "It has no day.");
    assert_eq!(
        why(Why::DayOpen("03/04/2026".into())),
        "“03/04/2026” could be two days. Choose which number is the day."
    );
    assert_eq!(
        why(Why::Unknown(Unknown::NoPrice)),
        "This size has no price yet, so nobody knows what one brings. Give it a menu price first."
    );
    assert_eq!(why(Why::TooLarge), "The week's number has more than nine digits. Check for a digit too many.");
    let long = said(&"é".repeat(61), Why::TooShort);
    assert_eq!(long, format!("Line 3: “{}…”. It has fewer cells than there are columns.", "é".repeat(60)));
}

#[test]
fn rows_counted() {
    assert_eq!(words::to_take_in(1, 0), "1 row can be taken in");
    assert_eq!(words::to_take_in(3, 1), "3 rows can be taken in; 1 row will be left out:");
    assert_eq!(words::to_take_in(0, 2), "No row can be taken in; 2 rows cannot:");
    assert_eq!(words::taken_in(3, 0), "3 rows taken in. Undo takes them out again.");
    assert_eq!(words::taken_in(1, 2), "1 row taken in. 2 rows left out. Undo takes them out again.");
}
