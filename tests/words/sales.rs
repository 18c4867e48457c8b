//! The sentences of sales, prices seen, trials and scenarios.

use brimwright::book::{Book, Edit, Field, Key, Offer, Problem, Record, Refusal, Scope, Week};
use brimwright::drink::ledger::{Ledger, OfferError};
use brimwright::drink::sales::{Average, Unknown, average, sold_in, weekly_contribution};
use brimwright::exchange::{BadRow, TillError, Why};
use brimwright::foundation::measure::{Overflow, ReadError, System};
use brimwright::sizes::side_by_side::Rise;

use crate::support::speaker;
use brimwright::words;

use super::support::{book_of_one_drink, container, container_id, day, exact, money, offer, settings, week};

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
    assert_eq!(week(Field::Monday, Problem::NotAMonday), "Week: must begin on a Monday. Choose the Monday.");
    assert_eq!(week(Field::Units, Problem::Negative), "Drinks sold: cannot be below zero. Leave out the minus sign.");
    assert_eq!(week(Field::Units, Problem::Twice), "Drinks sold: the same thing is listed twice. Keep one.");
    assert_eq!(
        week(Field::Contribution, Problem::TooLarge),
        "Profit per drink: too many digits to compute with. Check for an extra digit."
    );
    let trial = |field, problem| at("trial:1", field, problem);
    assert_eq!(
        trial(Field::Start, Problem::NotAfter),
        "Change starts: must come after the weeks before. Choose a later week."
    );
    assert_eq!(
        trial(Field::Last, Problem::NotAfter),
        "Last week: must come after the weeks before. Choose a later week."
    );
    let seen = |field, problem| at("seen-price:1", field, problem);
    assert_eq!(seen(Field::Place, Problem::Empty), "Place: nothing typed. Type at least one letter.");
    assert_eq!(seen(Field::Place, Problem::TooLong), "Place: over 80 letters. Shorten the text.");
    assert_eq!(seen(Field::Size, Problem::NotAVolume), "Size: must be a volume, such as 16 fl oz or 500 mL.");
    assert_eq!(at("scenario:1", Field::Offers, Problem::Twice), "Sizes: the same thing is listed twice. Keep one.");
    assert_eq!(
        at("settings", Field::TillColumn, Problem::Empty),
        "Register column: nothing typed. Type at least one letter."
    );
    let missing =
        |key: &str| words::refusal(&Refusal::Missing { key: Key::from_text(key).unwrap(), needed_by: None }, &bar());
    for (key, kind) in
        [("week:2026-11-23", "week"), ("seen-price:1", "local price"), ("trial:1", "trial"), ("scenario:1", "scenario")]
    {
        let sentence = format!("No longer in your book: {kind}. Undo the removal, or go back.");
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
        "Invented 500 mL 2 is used in Invented drink 1, Invented 500 mL 2; Week of Nov 23, 2026. Replace or remove Invented 500 mL 2 there first."
    );
}

#[test]
fn days_and_weeks() {
    assert_eq!(words::day(day("2026-11-23")), "Nov 23, 2026");
    assert_eq!(words::day(day("0999-01-01")), "Jan 1, 999");
    assert_eq!(words::week(day("2026-11-23")), "Week of Nov 23, 2026");
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
    assert_eq!(working, "No drinks counted yet.");
    assert_eq!(
        not_counted,
        "Not counted: Invented drink 1, Invented 250 mL 1 (no weekly sales); Invented drink 1, Invented 500 mL 2 (no price yet)."
    );
    let first = book.offers().next().unwrap().clone();
    book.apply(&Edit::Put(Record::Offer(Offer { weekly: Some(exact("14")), ..first }))).unwrap();
    let (working, not_counted) = said(&book);
    assert_eq!(working, "Drinks sold × profit per drink, added up: 14 × $2.00 = $28.00.");
    assert_eq!(not_counted, "Not counted: Invented drink 1, Invented 500 mL 2 (no price yet).");
}

#[test]
fn prices_that_change_alike() {
    let (book, speaker) = (bar(), speaker(System::UsCustomary));
    let said = |by, drinks| {
        words::what_if::Trials { book: &book, speaker: &speaker }.rise(&Rise {
            container: container_id(1),
            by: money(by),
            drinks,
        })
    };
    assert_eq!(said("0.5", 12), "Invented 250 mL 1: 12 prices, each $0.50 more.");
    assert_eq!(said("-1", 2), "Invented 250 mL 1: 2 prices, each $1.00 less.");
}

/// 3 * 2 - 4 * 0.5 + 0 = 4, by hand.
#[test]
fn a_week_that_was_written_down() {
    let said = |week: &Week| words::week_working(week, sold_in(week).unwrap().1, &speaker(System::UsCustomary));
    assert_eq!(said(&week("2026-11-23", &[])), "No sales entered yet.");
    let sold = week("2026-11-23", &[(1, "3", "2"), (2, "4", "-0.5"), (3, "0", "9")]);
    assert_eq!(
        said(&sold),
        "Drinks sold × profit per drink at the time of entry, added up: 3 × $2.00 + 4 × −$0.50 + 1 more = $4.00."
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
        "The average covers 2 weeks: Nov 2, 2026, Nov 16, 2026. 1 size gets a new number. A size missing from one week counts \
         as zero that week. A size missing from every week keeps its number. The week of Nov 9, 2026 has no entries, so the \
         average skips that week."
    );
    let average = |weeks: &[&str], missing: &[&str], offers| {
        let days = |days: &[&str]| days.iter().map(|monday| day(monday)).collect();
        words::weeks_averaged(&Average {
            weeks: days(weeks),
            missing: days(missing),
            offers,
            edit: Edit::Together(vec![]),
        })
    };
    assert_eq!(
        average(&["2026-11-16"], &[], 2),
        "The average covers the week of Nov 16, 2026. 2 sizes get a new number. A size missing from one week counts as zero \
         that week. A size missing from every week keeps its number."
    );
    let two_missing = average(&["2026-11-23"], &["2026-11-02", "2026-11-09"], 1);
    let skipped = "The weeks of Nov 2, 2026, Nov 9, 2026 have no entries, so the average skips them.";
    assert!(two_missing.ends_with(skipped), "{two_missing}");
}

#[test]
fn why_something_does_not_count() {
    let said = |unknown| words::unknown_sales(unknown, &bar());
    assert_eq!(said(Unknown::NoPrice), "This size has no price yet. Set a menu price first.");
    assert_eq!(said(Unknown::NotOffered), "This size is not on the menu. Add the size to the drink first.");
    assert_eq!(said(Unknown::NoWeekly), "This size has no weekly sales. Type how many you sell, such as 24.");
    assert_eq!(
        said(Unknown::Stuck(OfferError::Arithmetic(Overflow::TooLarge))),
        "Profit per drink is not known yet. These numbers are too large. Check for an extra digit."
    );
}

#[test]
fn what_is_no_list() {
    let said = words::till_error;
    assert_eq!(said(TillError::TooLarge), "This file is larger than 10 MB. Export fewer weeks at a time.");
    assert_eq!(said(TillError::Empty), "This file is empty. Choose another file.");
    assert_eq!(
        said(TillError::NotText),
        "This file is not plain text. Save the list as CSV (UTF-8), then choose the file again."
    );
    assert_eq!(
        said(TillError::NoColumns),
        "This file has no columns. Save the list as CSV, such as: Drink, Size, Quantity, Date."
    );
    assert_eq!(
        said(TillError::TooManyColumns),
        "This file has more than 200 columns. Keep only drink, size, quantity and date."
    );
    assert_eq!(said(TillError::OnlyHeads), "This file has column names, but no sales below them. Choose another file.");
    assert_eq!(
        said(TillError::OpenQuote { line: 7 }),
        "The row at line 7 has a quotation mark that never closes. Save the list as CSV again."
    );
}

#[test]
fn rows_left_out() {
    let said = |text: &str, why| words::bad_row(&BadRow { line: 3, text: text.into(), why }, &bar());
    let why = |why| said("x | 2", why).strip_prefix("Line 3: “x | 2”. ").unwrap().to_string();
    assert_eq!(why(Why::TooShort), "This row is missing columns. Fill in the row, or delete the row.");
    assert_eq!(why(Why::UnknownItem("Tea".into())), "No drink on the menu is called “Tea”. Use the name on your menu.");
    assert_eq!(why(Why::UnknownItem(String::new())), "This row names no drink. Type the name on your menu.");
    let size = |size: &str| Why::UnknownSize { drink: "Tea".into(), size: size.into() };
    assert_eq!(why(size("Bucket")), "Tea is not sold in “Bucket”. Use a size on your menu.");
    assert_eq!(why(size("")), "This row does not say which size of Tea. Type a size on your menu.");
    assert_eq!(
        why(Why::SeveralItems("Tea, Cup".into())),
        "Two or more sizes are called “Tea, Cup”. Rename one of them."
    );
    assert_eq!(
        why(Why::Units(ReadError::Negative)),
        "The quantity is below zero. Subtract returns from sales in your file."
    );
    assert_eq!(
        why(Why::Units(ReadError::NotANumber { text: "two".into() })),
        "“two” is not a number. Type digits, such as 12."
    );
    assert_eq!(why(Why::Day("31.11.2026".into())), "“31.11.2026” is not a date. Use dates such as 2026-11-23.");
    assert_eq!(why(Why::Day(String::new())), "This row has no date. Use dates such as 2026-11-23.");
    assert_eq!(why(Why::DayOpen("03/04/2026".into())), "“03/04/2026” could be two dates. Choose the date order above.");
    assert_eq!(why(Why::Unknown(Unknown::NoPrice)), "This size has no price yet. Set a menu price first.");
    assert_eq!(why(Why::TooLarge), "The week’s total has more than nine digits. Check for an extra digit.");
    let long = said(&"é".repeat(61), Why::TooShort);
    assert_eq!(
        long,
        format!("Line 3: “{}…”. This row is missing columns. Fill in the row, or delete the row.", "é".repeat(60))
    );
}

#[test]
fn rows_counted() {
    assert_eq!(words::to_take_in(1, 0), "1 row is ready to import.");
    assert_eq!(words::to_take_in(3, 1), "3 rows are ready to import. 1 row will be skipped:");
    assert_eq!(words::to_take_in(0, 2), "No row can be imported. 2 rows will be skipped:");
    assert_eq!(words::taken_in(3, 0), "3 rows imported. Undo removes these sales again.");
    assert_eq!(words::taken_in(1, 2), "1 row imported. 2 rows skipped. Undo removes these sales again.");
}
