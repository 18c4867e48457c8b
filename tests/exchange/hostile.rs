//! The demo's file and one with every field, spoilt in thousands of ways: never a panic, and either a book that goes
//! round or an error with its place. T12 and T20 are the faults of that name; how many of each are
//! tried says `BRIMWRIGHT_COUNT`.

use std::cell::RefCell;
use std::sync::LazyLock;

use brimwright::book::{Book, Key, TillColumns};
use brimwright::drink::ledger::Ledger;
use brimwright::exchange::{BookFileError, Fault, Till, preview, read, read_table, take, take_in, write};
use brimwright::foundation::measure::NumberStyle;
use brimwright::words;
use proptest::prelude::*;
use proptest::sample::Index;
use proptest::test_runner::TestRunner;
use serde_json::Value;

use super::fields::EVERY;
use super::{DEMO, FILE, demo, schema};
use crate::cases::cases;
use crate::support::day;
use crate::support::runs::Runs;

/// One way to spoil a file. Our files have one value a line.
#[derive(Clone, Debug)]
enum Spoil {
    Flip(Index, u8),
    CutAt(Index),
    RepeatLine(Index),
    DropLine(Index),
    SwapValues(Index, Index),
    SwapLike(Index, Index),
    SetValue(Index, String),
}

fn spoil() -> impl Strategy<Value = Spoil> {
    let odd = [
        "null",
        "true",
        "[]",
        "{}",
        "0",
        "-1",
        "1e999",
        "\"\"",
        "\"-0\"",
        "\"-1\"",
        "\"1e3\"",
        "\"0\"",
        "\"1\"",
        "\"NaN\"",
        "\"999999999.999999\"",
        "\"0.00000001\"",
        "\"999999999 gal\"",
        "\"0.000001 ea\"",
        "\"ffffffffffffffff\"",
        "\"\\u0000\"",
        "\"\\ud800\"",
        "\"=1+1\"",
        "[\"0\", \"0\"]",
        "\"1 mm\"",
        "\"999999999 in\"",
        "\"0.1 ea\"",
        "\"top-up\"",
        "{\"stepped\": \"0.5 ea\"}",
        "{\"height\": \"1 mm\"}",
        "{\"poured\": []}",
        "{\"tapered\": {\"base\": \"1 in\", \"rim\": \"1 mm\", \"height\": \"999999999 cm\"}}",
        "{\"share\": \"0\", \"volume\": \"1 mL\"}",
    ];
    let value = prop_oneof![
        4 => prop::sample::select(odd.to_vec()).prop_map(str::to_string),
        1 => (1..2000usize).prop_map(|deep| format!("{}{}", "[".repeat(deep), "]".repeat(deep))),
        1 => (1..2000usize).prop_map(|deep| format!("{}1{}", "{\"a\":".repeat(deep), "}".repeat(deep))),
        1 => (1..2000usize).prop_map(|long| format!("\"{}\"", "9".repeat(long))),
        1 => (1..2000usize).prop_map(|long| "9".repeat(long)),
        1 => any::<String>().prop_map(|text| Value::String(text).to_string()),
    ];
    prop_oneof![
        1 => (any::<Index>(), any::<u8>()).prop_map(|(at, byte)| Spoil::Flip(at, byte)),
        2 => (any::<Index>(), 0x20..0x7f_u8).prop_map(|(at, byte)| Spoil::Flip(at, byte)),
        1 => any::<Index>().prop_map(Spoil::CutAt),
        1 => any::<Index>().prop_map(Spoil::RepeatLine),
        1 => any::<Index>().prop_map(Spoil::DropLine),
        2 => (any::<Index>(), any::<Index>()).prop_map(|(one, other)| Spoil::SwapValues(one, other)),
        4 => (any::<Index>(), any::<Index>()).prop_map(|(one, other)| Spoil::SwapLike(one, other)),
        4 => (any::<Index>(), value).prop_map(|(at, value)| Spoil::SetValue(at, value)),
    ]
}

/// Either file, each value on a line of its own.
fn file() -> impl Strategy<Value = &'static str> {
    prop::sample::select(vec![DEMO.as_str(), EVERY.as_str()])
}

/// The part of a line that is its value, where it has one of its own.
fn value_of(line: &str) -> Option<(&str, &str, &str)> {
    let start = line.find(": ").map_or(line.len() - line.trim_start().len(), |colon| colon + 2);
    let end = line.trim_end_matches(',').len();
    let value = line.get(start..end)?;
    (!value.is_empty() && !matches!(value, "{" | "[" | "}" | "]" | "{}" | "[]")).then_some((
        &line[..start],
        value,
        &line[end..],
    ))
}

/// The lines of `text` with a value, by number.
fn valued(lines: &[String]) -> Vec<usize> {
    (0..lines.len()).filter(|number| value_of(&lines[*number]).is_some()).collect()
}

fn set_value(line: &mut String, value: &str) {
    let Some((before, _, after)) = value_of(line) else { return };
    *line = format!("{before}{value}{after}");
}

fn swap(lines: &mut [String], one: usize, other: usize) {
    let taken = [one, other].map(|number| value_of(&lines[number]).unwrap().1.to_string());
    set_value(&mut lines[one], &taken[1]);
    set_value(&mut lines[other], &taken[0]);
}

impl Spoil {
    fn apply(&self, bytes: Vec<u8>) -> Vec<u8> {
        match self {
            Spoil::Flip(at, byte) => {
                let mut bytes = bytes;
                if !bytes.is_empty() {
                    let at = at.index(bytes.len());
                    bytes[at] = *byte;
                }
                bytes
            }
            Spoil::CutAt(at) => bytes[..at.index(bytes.len() + 1)].to_vec(),
            _ => match String::from_utf8(bytes) {
                Ok(text) => self.apply_to_lines(text.split('\n').map(str::to_string).collect()).join("\n").into_bytes(),
                Err(error) => error.into_bytes(),
            },
        }
    }

    fn apply_to_lines(&self, mut lines: Vec<String>) -> Vec<String> {
        let values = valued(&lines);
        match self {
            Spoil::RepeatLine(at) => {
                let at = at.index(lines.len());
                lines.insert(at, lines[at].clone());
            }
            Spoil::DropLine(at) => {
                lines.remove(at.index(lines.len()));
            }
            Spoil::SwapValues(one, other) if !values.is_empty() => {
                swap(&mut lines, *one.get(&values), *other.get(&values));
            }
            Spoil::SwapLike(one, other) if !values.is_empty() => {
                let one = *one.get(&values);
                let field = value_of(&lines[one]).unwrap().0.trim_start().to_string();
                let like = |line: &str| value_of(line).unwrap().0.trim_start() == field;
                let alike: Vec<usize> = values.into_iter().filter(|number| like(&lines[*number])).collect();
                swap(&mut lines, one, *other.get(&alike));
            }
            Spoil::SetValue(at, value) if !values.is_empty() => set_value(&mut lines[*at.get(&values)], value),
            // A file without a value has none to swap; bytes have been dealt with.
            Spoil::SwapValues(..) | Spoil::SwapLike(..) | Spoil::SetValue(..) | Spoil::Flip(..) | Spoil::CutAt(_) => {}
        }
        lines
    }
}

proptest! {
    #![proptest_config(cases(2000))]

    #[test]
    fn a_spoilt_file_is_read_or_refused(file in file(), spoils in prop::collection::vec(spoil(), 1..=3)) {
        let bytes = spoils.iter().fold(file.as_bytes().to_vec(), |bytes, spoil| spoil.apply(bytes));
        match read(&bytes) {
            Ok(book) => {
                let written = write(&book);
                prop_assert_eq!(read(&written), Ok(book.clone()));
                prop_assert!(schema::takes(&written));
                let mut open = demo();
                let applied = open.apply(&preview(&open, &book).edit).unwrap();
                prop_assert_eq!(&open, &book);
                open.apply(&applied.inverse).unwrap();
                prop_assert_eq!(write(&open), FILE);
            }
            Err(BookFileError::Value { place, fault }) => {
                let lines = bytes.split(|byte| *byte == b'\n').count();
                prop_assert!((1..=lines).contains(&place.line) && place.column >= 1);
                prop_assert!(place.path.chars().count() <= 61 && place.name.chars().count() <= 61);
                match &fault {
                    Fault::UnknownField(text) | Fault::MissingField(text) | Fault::RepeatedField(text) => {
                        prop_assert!(text.chars().count() <= 61);
                    }
                    Fault::Unreadable(reason) => prop_assert!((1..=121).contains(&reason.chars().count())),
                    Fault::TooMany(_) | Fault::TooLarge(_) => prop_assert!(false, "the file is small"),
                }
            }
            Err(BookFileError::NotJson { line, .. } | BookFileError::CutShort { line }) => prop_assert!(line >= 1),
            Err(_) => {}
        }
    }

}

proptest! {
    #![proptest_config(cases(500))]

    /// Whichever value is spoilt, the error leads to it: its line, its column, and a path that
    /// the JSON library follows to the very value.
    #[test]
    fn the_error_leads_to_the_value(file in file(), at in any::<Index>(), odd in prop::sample::select(vec!["{\"spoilt\": 1}", "[\"spoilt\"]", "7.25", "null"])) {
        let mut lines: Vec<String> = file.split('\n').map(str::to_string).collect();
        let values = valued(&lines);
        let number = values[2 + at.index(values.len() - 2)];
        prop_assume!(!lines[number].contains("\"invented\""));
        set_value(&mut lines[number], odd);
        let column = lines[number].find(odd).unwrap() + 1;
        let text = lines.join("\n");
        let found = read(&text);
        if odd == "null" && matches!(found, Ok(_) | Err(BookFileError::Refused { .. })) {
            // No value is the same as no field, where the field may be missing; the record may miss it.
            return Ok(());
        }
        let Err(BookFileError::Value { place, fault: Fault::Unreadable(_) }) = found else {
            return Err(TestCaseError::fail(format!("{found:?}")));
        };
        prop_assert_eq!((place.line, place.column), (number + 1, column));
        let pointer = format!("/{}", place.path.replace(['.', '['], "/").replace(']', ""));
        let value: Value = serde_json::from_str(&text).unwrap();
        let odd: Value = serde_json::from_str(odd).unwrap();
        prop_assert_eq!(value.pointer(&pointer), Some(&odd), "{}", pointer);
    }
}

/// Every size of the demo, sold once, as a till lists it.
static LIST: LazyLock<String> = LazyLock::new(|| {
    let book = demo();
    let row = |(number, offer): (usize, &brimwright::book::Offer)| {
        let name = book.name(Key::Offer(offer.id()));
        format!("2026-11-{:02},\"{name}\",{}\n", number % 30 + 1, number % 9 + 1)
    };
    let priced = book.offers().filter(|offer| offer.price.is_some());
    std::iter::once("Day,Item,Sold\n".to_string()).chain((0..).zip(priced).map(row)).collect()
});

/// What of a list would be taken in.
fn sold(book: &Book, bytes: &[u8]) -> Option<brimwright::exchange::Taken> {
    let table = read_table(bytes).ok()?;
    let columns = TillColumns { item: "Item".into(), size: None, units: "Sold".into(), day: Some("Day".into()) };
    let style = NumberStyle::english("$");
    let till = Till { columns, order: None, week: day("2026-11-23"), style: &style, fold: &str::to_lowercase };
    take(book, &Ledger::of(book), &table, &till).expect("the sums are small")
}

/// Tries a fault as often as is asked for, and counts how often what must hold did.
fn tried<S: Strategy>(fault: &'static str, few: u32, input: &S, holds: impl Fn(S::Value) -> Result<(), TestCaseError>) {
    let runs = RefCell::new(Runs::of(fault));
    let config = ProptestConfig { cases: Runs::asked_for(few), failure_persistence: None, ..ProptestConfig::default() };
    let tried = TestRunner::new(config).run(input, |value| {
        runs.borrow_mut().begin();
        holds(value)?;
        runs.borrow_mut().held();
        Ok(())
    });
    if let Err(error) = tried {
        panic!("{error}");
    }
}

fn spoilt(file: &str, spoils: &[Spoil]) -> Vec<u8> {
    spoils.iter().fold(file.as_bytes().to_vec(), |bytes, spoil| spoil.apply(bytes))
}

/// A rejected import changes nothing; an accepted one says what it does, and is undone.
#[test]
fn t12_a_spoilt_import_is_refused_or_can_be_undone() {
    let spoils = || prop::collection::vec(spoil(), 1..=3);
    tried("T12", 50, &(file(), spoils(), spoils()), |(file, spoils, list_spoils)| {
        let mut open = demo();
        match take_in(spoilt(file, &spoils)) {
            Ok(taken) => {
                let shown = preview(&open, &taken.book);
                prop_assert_eq!(shown.changes_nothing(), open == taken.book);
                prop_assert!(!words::import_changes(&shown).is_empty());
                let applied = open.apply(&shown.edit).unwrap();
                prop_assert_eq!(&open, &taken.book);
                open.apply(&applied.inverse).unwrap();
            }
            Err(error) => {
                let sentence = words::book_file_error(&error);
                prop_assert!(sentence.ends_with('.') && sentence.chars().count() < 400, "{}", sentence);
                for word in [
                    "invalid type",
                    "invalid value",
                    "unknown variant",
                    "missing field",
                    "Err(",
                    "expected",
                    "EOF",
                    "struct ",
                    ", column",
                ] {
                    prop_assert!(!sentence.contains(word), "{}", sentence);
                }
            }
        }
        if let Some(taken) = sold(&open, &spoilt(&LIST, &list_spoils)) {
            let applied = open.apply(&taken.edit).unwrap();
            open.apply(&applied.inverse).unwrap();
        }
        prop_assert_eq!(write(&open), FILE);
        Ok(())
    });
}

/// Bad rows, with a drink's name to be put in, and the end of the sentence that names each.
const BAD_ROWS: [(&str, &str); 6] = [
    ("2026-11-31,\"{}\",3", "“2026-11-31” is not a date. Use dates such as 2026-11-23."),
    ("2026-11-23,\"{}\",three", "“three” is not a number. Type digits, such as 12."),
    ("2026-11-23,\"{}\"", "This row is missing columns. Fill in the row, or delete the row."),
    (
        "2026-11-23,Invented lemonade,3",
        "No drink on the menu is called “Invented lemonade”. Use the name on your menu.",
    ),
    (",\"{}\",3", "This row has no date. Use dates such as 2026-11-23."),
    ("2026-11-23,,3", "This row names no drink. Type the name on your menu."),
];

/// One bad row among good ones: these come in, and it is named with its line and why.
#[test]
fn t20_one_bad_row_is_left_out_and_named() {
    let bad = prop::sample::select(BAD_ROWS.to_vec());
    tried("T20", 30, &(any::<Index>(), bad), |(place, (bad, why))| {
        let mut lines: Vec<String> = LIST.lines().map(str::to_string).collect();
        let (rows, place) = (lines.len() - 1, place.index(lines.len() - 1) + 1);
        let name = lines[place].split('"').nth(1).unwrap().to_string();
        lines[place] = bad.replace("{}", &name);
        let mut book = demo();
        let taken = sold(&book, lines.join("\n").as_bytes()).unwrap();
        prop_assert_eq!((taken.good, taken.bad.len(), taken.bad[0].line), (rows - 1, 1, place + 1));
        let said = words::bad_row(&taken.bad[0], &book);
        prop_assert!(said.starts_with(&format!("Line {}: “", place + 1)) && said.ends_with(why), "{}", said);
        let told = words::to_take_in(taken.good, taken.bad.len());
        prop_assert_eq!(told, format!("{} rows are ready to import. 1 row will be skipped:", rows - 1));
        let units = |book: &Book| book.weeks().map(|week| week.sold.len()).sum::<usize>();
        let before = units(&book);
        book.apply(&taken.edit).unwrap();
        prop_assert!(units(&book) >= before && units(&book) > 0);
        Ok(())
    });
}
