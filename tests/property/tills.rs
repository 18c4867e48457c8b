//! A till's list, whatever is in it: never a panic, every row accounted for, and what is taken in
//! can be taken back.

use brimwright::book::{Book, TillColumns};
use brimwright::drink::ledger::Ledger;
use brimwright::exchange::{DayOrder, Till, TillError, read_table, take};
use brimwright::foundation::measure::{Exact, NumberStyle};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::select;

use crate::books::book;
use crate::cases::cases;
use crate::support::day;

/// A cell as RFC 4180 writes it: in quotes where it must be, and now and then where it need not.
fn written(cell: &str, separator: char, quote: bool) -> String {
    let must = cell.contains([separator, '"', '\r', '\n']);
    if must || quote { format!("\"{}\"", cell.replace('"', "\"\"")) } else { cell.to_string() }
}

fn cell() -> impl Strategy<Value = String> {
    prop_oneof![4 => "[a-zé 0-9]{1,6}", 1 => "[,;\t\"\r\n x]{1,5}x"]
}

/// A list of heads and rows as wide.
fn list() -> impl Strategy<Value = (Vec<String>, Vec<Vec<String>>)> {
    (2..5_usize).prop_flat_map(|width| {
        let heads = (0..width).map(|place| format!("head {place}")).collect::<Vec<_>>();
        (Just(heads), vec(vec(cell(), width), 1..6))
    })
}

/// A row of a list: a drink and size of the book or nearly, a number or nearly, a day or nearly.
fn row(names: Vec<String>) -> impl Strategy<Value = [String; 3]> {
    let item = prop_oneof![
        6 => select(names).prop_map(|name| name.to_uppercase()),
        1 => any::<String>(),
        1 => Just(String::new()),
    ];
    let units = prop_oneof![
        6 => (0..90_000_i64).prop_map(|tenths| Exact::new(tenths, 1).to_string()),
        1 => select(vec!["-3", "1,000", "two", "", "999999999", "1/3", "0.0000001"]).prop_map(str::to_string),
        1 => any::<String>(),
    ];
    let day = prop_oneof![
        4 => (0..40_i32).prop_map(|days| day("2026-10-26").plus_days(days).to_string()),
        2 => (1..14_u8, 1..14_u8).prop_map(|(one, two)| format!("{one}/{two}/2026")),
        1 => select(vec!["31.11.2026", "23.11.2026 09:00", "9999-12-31", "0000-01-01", ""]).prop_map(str::to_string),
        1 => any::<String>(),
    ];
    (item, units, day).prop_map(|(item, units, day)| [item, units, day])
}

/// A book and a list that names what it sells.
fn sold() -> impl Strategy<Value = (Book, Vec<[String; 3]>)> {
    book().prop_flat_map(|book| {
        let mut names: Vec<String> =
            book.offers().map(|offer| book.name(brimwright::book::Key::Offer(offer.id()))).collect();
        names.push("Nothing, none".to_string());
        (Just(book), vec(row(names), 1..12))
    })
}

proptest! {
    #[test]
    fn what_is_written_by_the_rules_is_read(
        (heads, rows) in list(),
        separator in select(vec![',', ';', '\t']),
        end in select(vec!["\r\n", "\n"]),
        quote in any::<bool>(),
        mark in any::<bool>(),
    ) {
        let line = |cells: &Vec<String>| {
            cells.iter().map(|cell| written(cell, separator, quote)).collect::<Vec<_>>().join(&separator.to_string())
        };
        let lines: Vec<String> = std::iter::once(&heads).chain(&rows).map(line).collect();
        let text = format!("{}{}", if mark { "\u{feff}" } else { "" }, lines.join(end));
        let shows = |row: &Vec<String>| row.iter().any(|cell| !cell.trim().is_empty());
        let expected: Vec<Vec<String>> = rows.into_iter().filter(shows).collect();
        if expected.is_empty() {
            prop_assert_eq!(read_table(text.as_bytes()), Err(TillError::OnlyHeads));
            return Ok(());
        }
        let table = read_table(text.as_bytes()).unwrap();
        prop_assert_eq!(table.heads, heads);
        prop_assert_eq!(table.rows.into_iter().map(|row| row.cells).collect::<Vec<_>>(), expected);
    }
}

proptest! {
    #![proptest_config(cases(2000))]

    #[test]
    fn any_bytes_are_read_or_refused(bytes in vec(prop_oneof![select(b",;\t\"\r\nab1 ".to_vec()), any::<u8>()], 0..80)) {
        if let Ok(table) = read_table(&bytes) {
            let mut heads = table.heads.clone();
            heads.sort();
            heads.dedup();
            prop_assert_eq!(heads.len(), table.heads.len(), "a head stands once");
            prop_assert!(table.heads.len() >= 2 && table.heads.iter().all(|head| !head.trim().is_empty()));
            let lines = bytes.iter().filter(|byte| matches!(byte, b'\r' | b'\n')).count() + 1;
            prop_assert!(!table.rows.is_empty());
            prop_assert!(table.rows.iter().all(|row| (2..=lines).contains(&row.line)));
            prop_assert!(table.rows.is_sorted_by_key(|row| row.line));
        }
    }
}

proptest! {
    #[test]
    fn rows_are_taken_in_or_named(
        (book, rows) in sold(),
        with_days in any::<bool>(),
        order in option::of(select(vec![DayOrder::DayFirst, DayOrder::MonthFirst])),
    ) {
        let line = |cells: &[String; 3]| cells.each_ref().map(|cell| written(cell, ',', true)).join(",");
        let text = format!("item,units,day\r\n{}", rows.iter().map(line).collect::<Vec<_>>().join("\r\n"));
        let Ok(table) = read_table(text.as_bytes()) else {
            prop_assert!(text.contains('\0'));
            return Ok(());
        };
        let style = NumberStyle::english("$");
        let columns = TillColumns {
            item: "item".into(),
            size: None,
            units: "units".into(),
            day: with_days.then(|| "day".to_string()),
        };
        let ledger = Ledger::of(&book);
        let till = Till { columns, order, week: day("2026-11-23"), style: &style, fold: &str::to_lowercase };
        let taken = take(&book, &ledger, &table, &till).unwrap().unwrap();
        prop_assert_eq!(taken.good + taken.bad.len(), table.rows.len());
        prop_assert_eq!(taken.weeks.is_empty(), taken.good == 0);

        let mut changed = book.clone();
        let applied = changed.apply(&taken.edit).unwrap();
        for week in &taken.weeks {
            prop_assert_eq!(week.known, book.week(week.monday).is_some());
            let written = changed.week(week.monday).unwrap();
            let units = written.sold.iter().map(|sold| sold.units).fold(Exact::ZERO, |sum, one| sum.plus(one).unwrap());
            prop_assert!(units >= week.units, "what is taken in is written down");
        }
        changed.apply(&applied.inverse).unwrap();
        prop_assert_eq!(changed, book);
    }
}
