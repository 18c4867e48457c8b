//! T18: numbers as the world writes them are right by the locale, or asked about; never guessed.

use std::cell::RefCell;

use brimwright::foundation::measure::{Exact, NumberStyle, ReadError, read_number, read_time, show_number};
use brimwright::words;
use proptest::prelude::*;
use proptest::sample::select;
use proptest::test_runner::{Config, TestRunner};

use crate::number;
use crate::support::exact;
use crate::support::runs::Runs;

/// French: narrow hard blank between thousands, comma for decimals (CLDR 46, fr).
fn french() -> NumberStyle {
    NumberStyle { group: '\u{202f}', ..NumberStyle::continental("\u{a0}€") }
}

/// The styles of the table below, in its order.
fn styles() -> [NumberStyle; 3] {
    [NumberStyle::english("$"), NumberStyle::continental("\u{a0}€"), french()]
}

/// What a text means in English, continental and French writing; "?" where it could mean two numbers and is asked.
/// Signs between thousands and decimals by CLDR 46 (en, de, fr, ar, fa); digits by Unicode (Nd).
const TEXTS: [(&str, [&str; 3]); 16] = [
    ("12,5", ["12.5", "12.5", "12.5"]),
    ("12.5", ["12.5", "12.5", "12.5"]),
    ("1,234", ["1234", "1.234", "1.234"]),
    ("1.234", ["1.234", "1234", "?"]),
    ("1.234,5", ["1234.5", "1234.5", "1234.5"]),
    ("1,234.5", ["1234.5", "1234.5", "1234.5"]),
    ("1\u{a0}234,5", ["1234.5", "1234.5", "1234.5"]),
    ("1\u{202f}234,5", ["1234.5", "1234.5", "1234.5"]),
    ("\u{a0}12,5\u{a0}", ["12.5", "12.5", "12.5"]),
    ("1\u{2019}234", ["1234", "1234", "1234"]),
    ("٣٤", ["34", "34", "34"]),
    ("٣٬٤٥٦", ["3456", "3456", "3456"]),
    ("۳۴", ["34", "34", "34"]),
    ("１２", ["12", "12", "12"]),
    ("１２.５", ["12.5", "12.5", "12.5"]),
    ("1,234,567", ["1234567", "1234567", "1234567"]),
];

#[test]
fn t18_numbers_are_right_by_the_locale_or_asked_about() {
    let mut runs = Runs::of("T18");
    for (text, meanings) in TEXTS {
        for (style, meaning) in styles().iter().zip(meanings) {
            runs.begin();
            match (read_number(text, style), meaning) {
                (Err(ReadError::Ambiguous { .. }), "?") => {}
                (read, meaning) => assert_eq!(read, Ok(exact(meaning)), "{text:?} in {style:?}"),
            }
            runs.held();
        }
    }
}

/// Fractions are the same everywhere; what is none is refused, and never guessed.
#[test]
fn t18_fractions_are_read_in_every_writing_or_refused() {
    let mut runs = Runs::of("T18");
    for style in styles() {
        for (text, meaning) in [
            ("1/2", Some("0.5")),
            ("1 1/2", Some("1.5")),
            ("½", Some("0.5")),
            ("1½", Some("1.5")),
            ("1\u{a0}½", Some("1.5")),
            ("1\u{202f}1/2", Some("1.5")),
            ("٣/٤", Some("0.75")),
            ("１ １⁄２", Some("1.5")),
            ("1/2/3", None),
            ("1/0", None),
            ("1,5/2", None),
            ("1.5 1/2", None),
            ("½½", None),
            ("1/-2", None),
        ] {
            runs.begin();
            let read = read_number(text, &style).ok();
            assert_eq!(read, meaning.map(exact), "{text:?} in {style:?}");
            runs.held();
        }
    }
}

/// Minutes and seconds, with the decimal sign of the place; a colon never splits what is no time.
#[test]
fn t18_times_are_right_by_the_locale_or_refused() {
    let mut runs = Runs::of("T18");
    for (text, meanings) in [
        ("1:30", ["90", "90", "90"]),
        ("1\u{ff1a}30", ["90", "90", "90"]),
        ("٠:٤٥", ["45", "45", "45"]),
        ("0:07.5", ["7.5", "7.5", "7.5"]),
        ("0:07,5", ["7.5", "7.5", "7.5"]),
        ("90", ["90", "90", "90"]),
        ("1.500", ["1.5", "1500", "?"]),
        ("1.500 s", ["1.5", "1500", "?"]),
        ("1:5", ["?", "?", "?"]),
        ("1:90", ["?", "?", "?"]),
        ("1:30:00", ["?", "?", "?"]),
        ("1.5:30", ["?", "?", "?"]),
    ] {
        for (style, meaning) in styles().iter().zip(meanings) {
            runs.begin();
            let read = read_time(text, style).ok().map(|time| time.seconds());
            assert_eq!(read, (meaning != "?").then(|| exact(meaning)), "{text:?} in {style:?}");
            runs.held();
        }
    }
}

#[test]
fn t18_what_could_mean_two_numbers_names_both() {
    let error = read_number("1.234", &french()).unwrap_err();
    assert_eq!(words::read_error(&error, "38,50"), "“1.234” could mean two numbers. Type 1234 or 1,234.");
}

/// The digits of a script, from its zero.
fn in_script(text: &str, zero: char) -> String {
    let digit = |digit: char| digit.to_digit(10).and_then(|value| char::from_u32(zero as u32 + value));
    text.chars().map(|sign| digit(sign).unwrap_or(sign)).collect()
}

#[test]
fn t18_what_is_shown_reads_back_in_every_script_and_with_hard_blanks() {
    let runs = RefCell::new(Runs::of("T18"));
    let numbers = (0..=9_u32, 0..=6_u32).prop_flat_map(|(digits, places)| number(10_i64.pow(digits), places));
    let scripts = select(vec!['0', '٠', '۰', '０']);
    let mut runner = TestRunner::new(Config { cases: Runs::asked_for(200), ..Config::default() });
    let outcome = runner.run(&(numbers, select(styles().to_vec()), scripts), |(number, style, zero): (Exact, _, _)| {
        runs.borrow_mut().begin();
        let text = format!("\u{a0}{}\u{a0}", in_script(&show_number(number, 0, &style), zero));
        prop_assert_eq!(read_number(&text, &style), Ok(number), "{:?}", text);
        runs.borrow_mut().held();
        Ok(())
    });
    outcome.unwrap_or_else(|failure| panic!("{failure}"));
}
