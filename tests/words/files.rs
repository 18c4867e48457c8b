//! What is wrong in a file, with line, record, the file's own field, what to type there and an
//! example. No word of the reader's and no id is in it.

use brimwright::exchange::read;
use brimwright::words;

/// Each value on a line of its own.
const FILE: &str = r#"{
"format": "brimwright-book", "version": 3,
"settings": {"name": "Invented bar", "currency": "USD", "units": "us-customary",
"tax": {"rate": "0", "place": "added-at-the-till"},
"payment-fee": {}, "wage": "18", "target": "0.65", "covers": "goods",
"endings": ["0.25", "0.75"]},
"ingredients": [{"id": "1", "name": "Apples", "trim-yield": "0.9",
"packs": [{"id": "1", "contents": "40 lb", "price": "25.80",
"day": "2026-11-02"}]}],
"packagings": [],
"containers": [{"id": "1", "name": "Bottle", "brimful": "16.5 fl oz",
"headspace": {"share": "0.05"}, "set": []}],
"drinks": [{"id": "1", "name": "Orchard", "kind": "pressed", "reference": "16 fl oz", "labour": {},
"lines": [{"id": "1", "ingredient": "1", "stage": "pressed", "amount": "16 fl oz", "scaling": "in-proportion"}]}],
"offers": [{"drink": "1", "container": "1",
"price": "8"}]
}"#;

fn said(old: &str, new: &str) -> String {
    assert!(FILE.contains(old), "{old}");
    words::book_file_error(&read(FILE.replacen(old, new, 1)).unwrap_err())
}

#[test]
fn the_file_itself_is_taken() {
    assert_eq!(read(FILE).err(), None);
}

#[test]
fn what_cannot_be_read() {
    let cases = [
        (
            "\"40 lb\"",
            "\"40 lbs\"",
            "Line 8, ingredient “Apples”, field “packs 1 contents”: “40 lbs” does not work here. Type a number and a unit, such as \"40 lb\" or \"16 fl oz\".",
        ),
        (
            "\"25.80\"",
            "\"25,80\"",
            "Line 8, ingredient “Apples”, field “packs 1 price”: “25,80” does not work here. Type up to 9 digits, a point and up to 8 more, such as \"25.80\".",
        ),
        (
            "\"25.80\"",
            "25.80",
            "Line 8, ingredient “Apples”, field “packs 1 price”: 25.8 needs quotation marks. Type \"25.8\".",
        ),
        (
            "\"25.80\"",
            "null",
            "Line 8, ingredient “Apples”, field “packs 1 price”: Type text in quotation marks, such as \"Apples\" or \"25.80\".",
        ),
        (
            "\"2026-11-02\"",
            "\"2.11.2026\"",
            "Line 9, ingredient “Apples”, field “packs 1 day”: “2.11.2026” does not work here. Type the year, month and day, such as \"2026-11-23\".",
        ),
        (
            "\"USD\"",
            "\"dollars\"",
            "Line 3, settings, field “currency”: “dollars” does not work here. Type a currency code, such as \"USD\".",
        ),
        (
            "\"0.25\"",
            "\"x\"",
            "Line 6, settings, field “endings 1”: “x” does not work here. Type up to 9 digits, a point and up to 8 more, such as \"25.80\".",
        ),
        (
            "\"ingredient\": \"1\"",
            "\"ingredient\": \"A1\"",
            "Line 14, drink “Orchard”, field “lines 1 ingredient”: “A1” does not work here. Type 1 to 16 characters from 0 to 9 and a to f, such as \"1a\".",
        ),
        (
            "\"kind\": \"pressed\"",
            "\"kind\": \"stirred\"",
            "Line 13, drink “Orchard”, field “kind”: “stirred” does not work here. Type a known value, such as \"pressed\", \"blended\", \"over-ice\".",
        ),
        (
            "[{\"id\": \"1\", \"contents\": \"40 lb\", \"price\": \"25.80\",\n\"day\": \"2026-11-02\"}]",
            "7",
            "Line 8, ingredient “Apples”, field “packs”: Type a list in square brackets, such as [].",
        ),
        (
            "\"packagings\": []",
            "\"packagings\": {}",
            "Line 10, field “packagings”: Type a list in square brackets, such as [].",
        ),
        (
            "{\"share\": \"0.05\"}",
            "[]",
            "Line 12, container “Bottle”, field “headspace”: Type one field in braces, such as {\"share\": \"0.05\"}.",
        ),
        (
            "{\"share\": \"0.05\"}",
            "{\"share\": \"0.05\", \"height\": \"3 mm\"}",
            "Line 12, container “Bottle”, field “headspace share”: Type one field in braces, such as {\"share\": \"0.05\"}.",
        ),
        (
            "\"labour\": {}",
            "\"labour\": 7",
            "Line 13, drink “Orchard”, field “labour”: Type fields in braces, such as {\"name\": \"Apples\"}.",
        ),
        (
            "\"25.80\"",
            "true",
            "Line 8, ingredient “Apples”, field “packs 1 price”: Type text in quotation marks, such as \"Apples\" or \"25.80\".",
        ),
        (
            "\"40 lb\"",
            "\"40 \\\"lb\\\"\"",
            "Line 8, ingredient “Apples”, field “packs 1 contents”: “40 \"lb\"” does not work here. Type a number and a unit, such as \"40 lb\" or \"16 fl oz\".",
        ),
        (
            "\"price\": \"8\"",
            "\"price\": \"8\", \"filling\": {\"measured-at\": \"warm\"}",
            "Line 16, size “Orchard, Bottle”, field “filling measured-at”: “warm” does not work here. Type a number and F or C, such as \"40 F\" or \"4 C\".",
        ),
        ("\"16.5 fl oz\"", "7", "Line 11, container “Bottle”, field “brimful”: Type a volume, such as \"16 fl oz\"."),
        (
            "\"price\": \"8\"",
            "\"price\": \"8 USD\"",
            "Line 16, size “Orchard, Bottle”, field “price”: “8 USD” does not work here. Type up to 9 digits, a point and up to 8 more, such as \"25.80\".",
        ),
    ];
    for (old, new, sentence) in cases {
        assert_eq!(said(old, new), sentence, "{new}");
    }
}

/// The reader sets what it found and what it knows between the same marks.
#[test]
fn the_reader_s_own_mark_in_a_value() {
    let sentence = "Line 13, drink “Orchard”, field “kind”: “a `b` c” does not work here. Type a known value, such as \"pressed\", \"blended\", \"over-ice\".";
    assert_eq!(said("\"kind\": \"pressed\"", "\"kind\": \"a `b` c\""), sentence);
}

#[test]
fn signs_that_are_none() {
    let sentence =
        "Line 7, ingredient 1, field “name”: This value cannot be read. Type a new value, or choose another copy.";
    assert_eq!(said("\"Apples\"", "\"\\ud800\""), sentence);
}

#[test]
fn whether_a_book_is_invented() {
    let invented = FILE.replace("\"name\": \"Invented bar\"", "\"name\": \"Invented bar\", \"invented\": \"yes\"");
    assert_eq!(
        words::book_file_error(&read(invented).unwrap_err()),
        "Line 3, settings, field “invented”: Type true or false."
    );
}

#[test]
fn fields_that_are_not_those_of_the_file() {
    assert_eq!(
        said("\"trim-yield\"", "\"trimyield\""),
        "Line 7, ingredient “Apples”: “trimyield” does not belong here. Remove that field."
    );
    assert_eq!(
        said(", \"trim-yield\": \"0.9\"", ""),
        "Line 7, ingredient “Apples”: “trim-yield” is missing. Add that field, or choose another copy."
    );
    assert_eq!(
        said("\"packagings\": [],", ""),
        "Line 1: “packagings” is missing. Add that field, or choose another copy."
    );
    assert_eq!(
        said("\"price\": \"8\"", "\"price\": \"8\", \"price\": \"9\""),
        "Line 16, size “Orchard, Bottle”: “price” appears twice. Keep one."
    );
}

#[test]
fn what_the_book_refuses() {
    assert_eq!(
        said("\"trim-yield\": \"0.9\"", "\"trim-yield\": \"1.4\""),
        "Line 7, ingredient “Apples”: Not imported. Trim yield: must be above 0% and at most 100%. Type 90 if 90% is left."
    );
    assert_eq!(
        said("\"ingredient\": \"1\"", "\"ingredient\": \"99\""),
        "Line 13, drink “Orchard”: Missing from the file: ingredient. Add that, or choose another copy."
    );
    assert_eq!(
        said("\"drink\": \"1\", \"container\": \"1\"", "\"drink\": \"1\", \"container\": \"7\""),
        "Line 15, size “Orchard”: Missing from the file: container. Add that, or choose another copy."
    );
    assert_eq!(
        said("\"packagings\": [],", "\"packagings\": [], \"weeks\": [{\"monday\": \"2026-11-24\", \"sold\": []}],"),
        "Line 10, week of Nov 24, 2026: Not imported. Week: must begin on a Monday. Choose the Monday."
    );
    let offer = "{\"drink\": \"1\", \"container\": \"1\",\n\"price\": \"8\"}";
    assert_eq!(
        said(offer, &format!("{offer},\n{offer}")),
        "Line 17, size “Orchard, Bottle”: Listed twice in the file. Keep one."
    );
    let nameless = said("\"Apples\"", "\"\\u200b\"");
    assert_eq!(nameless, "Line 7, ingredient “\u{200b}”: Not imported. Name: nothing typed. Type at least one letter.");
}

#[test]
fn what_is_too_much() {
    let packaging = "{\"id\": \"1\", \"name\": \"A\", \"part\": \"vessel\"},\n".repeat(20_001);
    assert_eq!(
        said("\"packagings\": []", &format!("\"packagings\": [{}]", packaging.trim_end_matches(",\n"))),
        "Line 20010, packaging 20001: This list has more than 20,000 entries. No book needs more. Choose another copy."
    );
    assert_eq!(
        said("\"Apples\"", &format!("\"{}\"", "A".repeat(1_000_000))),
        "Line 7, ingredient 1: This part is larger than 1 MB. No book needs more. Choose another copy."
    );
}

/// Of a file that is none, cut off, or damaged: what to choose instead.
#[test]
fn what_is_no_book() {
    let said = |text: &str| words::book_file_error(&read(text).unwrap_err());
    assert_eq!(said(""), "This file is empty. Choose another file.");
    assert_eq!(said("<!DOCTYPE html>"), "This file is not a Brimwright book. Choose a book file.");
    assert_eq!(
        said("{\n\"format\": \"brimwright-book\", oops}"),
        "This file is damaged at line 2. Choose another copy."
    );
    assert_eq!(said(&FILE[..200]), "This file stops early, at line 5. Download the file again.");
    assert_eq!(said("[]"), "This file is not a Brimwright book. Choose a book file.");
}

#[test]
fn what_is_repeated_of_a_file_is_short() {
    let long = "9".repeat(5_000);
    assert_eq!(
        said("\"25.80\"", &format!("\"{long}\"")),
        format!(
            "Line 8, ingredient “Apples”, field “packs 1 price”: “{}…” does not work here. Type up to 9 digits, a point and up to 8 more, such as \"25.80\".",
            "9".repeat(60)
        )
    );
    assert_eq!(
        said("brimwright-book", &long),
        format!("This file is a “{}…”, not a Brimwright book. Choose a book file.", "9".repeat(60))
    );
}
