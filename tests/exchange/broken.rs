//! Files that are not a book, or not quite: each is told apart, with its place.

use brimwright::book::{Field, Key, Problem, Refusal};
use brimwright::exchange::{BookFileError, Fault, MAX_BYTES, Place, read, write};

use super::{DEMO, FILE, demo, demo_with, name_at};

fn error(bytes: impl AsRef<[u8]>) -> BookFileError {
    read(bytes).map(|_| ()).unwrap_err()
}

/// Line (from 1) and column (bytes, from 1) of the first `text` in `file`.
fn at(file: &str, text: &str, path: &str) -> Place {
    let before = &file[..file.find(text).unwrap()];
    let line = before.matches('\n').count() + 1;
    let column = before.len() - before.rfind('\n').map_or(0, |end| end + 1) + 1;
    Place { line, column, path: path.to_string(), name: name_at(file, path) }
}

/// The line, from 1, on which the first `text` in `file` begins.
fn line_of(file: &str, text: &str) -> usize {
    at(file, text, "").line
}

fn value(place: Place, fault: Fault) -> BookFileError {
    BookFileError::Value { place, fault }
}

#[test]
fn what_is_no_book_is_told_apart() {
    assert_eq!(error(""), BookFileError::Empty);
    assert_eq!(error(" \r\n\t"), BookFileError::Empty);
    assert_eq!(error([0x89, b'P', b'N', b'G']), BookFileError::NotText);
    assert_eq!(error("{\n  \"format\": \"brimwright-book\",\n  oops"), BookFileError::NotJson { line: 3, column: 3 });
    let foreign = |format: Option<&str>| BookFileError::Foreign { format: format.map(str::to_string) };
    for text in
        ["[]", "null", "12", "\"brimwright-book\"", "{}", "{\"version\": 1}", "{\"format\": 1}", "{\"format\": {}}"]
    {
        assert_eq!(error(text), foreign(None), "{text}");
    }
    assert_eq!(error("[\"brimwright-book\", 1]"), foreign(None));
    for text in ["<!DOCTYPE html>", "Drink,Size,Sold\r\nOrchard Green,12 oz,40\r\n", "{} {}", "Dear Marrowgate,"] {
        assert_eq!(error(text), foreign(None), "{text}");
    }
    assert_eq!(error("{\"format\": \"recipes\", \"version\": 1}"), foreign(Some("recipes")));
    let long = format!("{{\"format\": \"{}\"}}", "é".repeat(500));
    assert_eq!(error(long), foreign(Some(&format!("{}…", "é".repeat(60)))));
}

#[test]
fn a_file_that_is_too_large_is_not_read() {
    let mut bytes = vec![b' '; MAX_BYTES];
    assert_eq!(error(&bytes), BookFileError::Empty);
    bytes.push(b' ');
    assert_eq!(error(&bytes), BookFileError::TooLarge { bytes: 10_000_001 });
}

#[test]
fn half_a_file_is_cut_short() {
    let half = &DEMO[..DEMO.len() / 2];
    assert_eq!(error(half), BookFileError::CutShort { line: half.matches('\n').count() + 1 });
    assert_eq!(error("{"), BookFileError::CutShort { line: 1 });
}

#[test]
fn the_version_decides() {
    assert_eq!(error(demo_with("\"version\": 4", "\"version\": 5")), BookFileError::Newer { version: 5 });
    // What a newer version holds is not judged by this one.
    let newer = r#"{"version": 18446744073709551615, "format": "brimwright-book", "more": [1]}"#;
    assert_eq!(error(newer), BookFileError::Newer { version: u64::MAX });
    for version in ["0", "-1", "1.5", "\"1\"", "null", "[1]"] {
        let text = demo_with("\"version\": 4", &format!("\"version\": {version}"));
        assert_eq!(error(text), BookFileError::NoVersion, "{version}");
    }
    assert_eq!(error(demo_with("  \"version\": 4,\n", "")), BookFileError::NoVersion);
}

#[test]
fn fields_are_those_of_the_format() {
    let text = demo_with("\"trim-yield\": \"0.9\"", "\"trimyield\": \"0.9\"");
    let place = at(&text, "\"trimyield\"", "ingredients[0]");
    assert_eq!(error(&text), value(place, Fault::UnknownField("trimyield".to_string())));

    let text = demo_with("      \"trim-yield\": \"0.9\",\n", "");
    let place = at(&text, "{\n      \"id\": \"1\",\n      \"name\": \"Apples\"", "ingredients[0]");
    assert_eq!(error(&text), value(place, Fault::MissingField("trim-yield".to_string())));

    let text = demo_with("\"trim-yield\": \"0.9\"", "\"trim-yield\": \"0.9\", \"trim-yield\": \"0.8\"");
    let place = at(&text, "\"trim-yield\": \"0.8\"", "ingredients[0]");
    assert_eq!(error(&text), value(place, Fault::RepeatedField("trim-yield".to_string())));

    let text = demo_with("\"version\": 4,", "\"version\": 4, \"version\": 1,");
    let place = at(&text, "\"version\": 1,\n", "");
    assert_eq!(error(&text), value(place, Fault::RepeatedField("version".to_string())));

    let text = demo_with("\"drinks\": [", "\"beverages\": [");
    let place = at(&text, "\"beverages\"", "");
    assert_eq!(error(&text), value(place, Fault::UnknownField("beverages".to_string())));

    let file = "{\"format\": \"brimwright-book\", \"version\": 1}";
    assert_eq!(error(file), value(at(file, "{", ""), Fault::MissingField("settings".to_string())));
}

#[test]
fn values_are_shown_with_their_place() {
    let cases = [
        (
            "\"contents\": \"40 lb\"",
            "\"contents\": \"40 lbs\"",
            "\"40 lbs\"",
            "ingredients[0].packs[0].contents",
            "\"40 lbs\" is not an amount such as \"40 lb\" or \"16 fl oz\"",
        ),
        (
            "\"price\": \"34.5\",\n          \"day\": \"2026-10-05\"",
            "\"price\": \"34,5\",\n          \"day\": \"2026-10-05\"",
            "\"34,5\"",
            "ingredients[1].packs[1].price",
            "\"34,5\" is not a plain decimal of at most 9 digits before the point and 8 after it",
        ),
        (
            "\"price\": \"25.8\"\n",
            "\"price\": 25.8\n",
            "25.8\n",
            "ingredients[26].packs[0].price",
            "invalid type: floating point `25.8`, expected a string",
        ),
        ("\"0.75\",", "{\"at\": 0},", "{\"at\"", "settings.endings[3]", "invalid type: map, expected a string"),
        (
            "\"share\": \"0.06\"",
            "\"share\": \"six\"",
            "\"six\"",
            "containers[6].headspace.share",
            "\"six\" is not a plain decimal of at most 9 digits before the point and 8 after it",
        ),
        (
            "\"kind\": \"blended\"",
            "\"kind\": \"stirred\"",
            "\"stirred\"",
            "drinks[4].kind",
            "unknown variant `stirred`, expected one of `pressed`, `blended`, `over-ice`, `shot`",
        ),
        (
            "\"name\": \"Apples\"",
            "\"name\": \"\\ud800\"",
            "\"\\ud800\"",
            "ingredients[0].name",
            "unexpected end of hex escape",
        ),
    ];
    for (old, new, bad, path, reason) in cases {
        let text = demo_with(old, new);
        let fault = Fault::Unreadable(reason.to_string());
        assert_eq!(error(&text), value(at(&text, bad, path), fault), "{new}");
    }
}

#[test]
fn an_id_stands_once() {
    let text = demo_with("\"id\": \"2\",\n      \"name\": \"Oranges\"", "\"id\": \"1\",\n      \"name\": \"Oranges\"");
    let key = Key::from_text("ingredient:1").unwrap();
    let line = line_of(&text, "\"id\": \"1\",\n      \"name\": \"Oranges\"") - 1;
    assert_eq!(error(text), BookFileError::Twice { key, name: "Apples".to_string(), line });

    let offer = "    {\n      \"drink\": \"1\",\n      \"container\": \"2\",\n      \"price\": \"4.95\",\n      \"weekly\": \"22\",\n      \"service\": \"packaged-ahead\"\n    },\n";
    let text = demo_with(offer, &offer.repeat(2));
    let line = line_of(&text, offer) + offer.matches('\n').count();
    let key = Key::from_text("offer:1-2").unwrap();
    assert_eq!(error(text), BookFileError::Twice { key, name: "Orchard Green, 8 oz bottle".to_string(), line });
}

#[test]
fn what_the_book_refuses_is_named() {
    let refused = |key: &str, name: &str, line, field, problem| {
        let key = Key::from_text(key).unwrap();
        BookFileError::Refused { key, name: name.to_string(), line, refusal: Refusal::Field { key, field, problem } }
    };
    let first = |list: &str| line_of(&DEMO, &format!("\"{list}\": [")) + 1;
    let cases = [
        (
            demo_with("\"trim-yield\": \"0.9\"", "\"trim-yield\": \"1.4\""),
            refused("ingredient:1", "Apples", first("ingredients"), Field::TrimYield, Problem::NotAYield),
        ),
        (
            demo_with("\"name\": \"Marrowgate Juice Hall\"", "\"name\": \"\""),
            refused("settings", "", line_of(&DEMO, "\"settings\""), Field::Name, Problem::Empty),
        ),
        (
            demo_with("\"declared\": \"2 fl oz\"", "\"declared\": \"3 fl oz\""),
            refused("container:1", "2 oz shot", first("containers"), Field::Declared, Problem::MoreThanBrimful),
        ),
        (
            demo_with("\"price\": \"4.95\"", "\"price\": \"0.00\""),
            refused("offer:1-2", "Orchard Green, 8 oz bottle", first("offers"), Field::Price, Problem::NotPositive),
        ),
    ];
    for (text, expected) in cases {
        assert_eq!(error(text), expected);
    }
    let text = demo_with("\"ingredient\": \"1\"", "\"ingredient\": \"fff\"");
    let drink = Key::from_text("drink:1").unwrap();
    let missing = Key::from_text("ingredient:fff").unwrap();
    let refusal = Refusal::Missing { key: missing, needed_by: Some(drink) };
    let (name, line) = ("Orchard Green".to_string(), first("drinks"));
    assert_eq!(error(text), BookFileError::Refused { key: drink, name, line, refusal });
}

#[test]
fn what_an_editor_leaves_does_no_harm() {
    let book = demo();
    assert_eq!(read(format!("\u{feff}{FILE}")).unwrap(), book);
    assert_eq!(read(DEMO.replace('\n', "\r\n")).unwrap(), book);
    let compact = serde_json::to_string(&serde_json::from_str::<serde_json::Value>(FILE).unwrap()).unwrap();
    assert_eq!(write(&read(compact).unwrap()), FILE);
}

/// A record may hold longer lists than a file may hold records.
#[test]
fn the_place_of_a_value_is_right_far_down_a_list_of_a_record() {
    let endings = "\"0.5\", ".repeat(22_000);
    let text = demo_with("\"endings\": [", &format!("\"endings\": [{endings}{{\"odd\": 1}}, "));
    let BookFileError::Value { place, .. } = error(&text) else { panic!("{:?}", error(&text)) };
    assert_eq!(place.path, "settings.endings[22000]");
    let before = &text[..text.find("{\"odd\"").unwrap()];
    assert_eq!(place.line, before.lines().count());
}

#[test]
fn deep_nesting_is_refused_without_a_fall() {
    let deep = |open: &str, close: &str| format!("{}{}", open.repeat(1_000_000), close.repeat(1_000_000));
    let lists = deep("[", "]");
    assert_eq!(error(&lists), BookFileError::Foreign { format: None });
    assert_eq!(error(format!("{{\"format\": {lists}}}")), BookFileError::Foreign { format: None });
    assert!(matches!(
        error(demo_with("\"offers\": [", &format!("\"offers\": [{lists},"))),
        BookFileError::Value { .. }
    ));
    assert_eq!(error("[".repeat(1_000_000)), BookFileError::CutShort { line: 1 });
    let twice = format!("{{\"more\": {lists}, \"format\": 1, \"format\": 2}}");
    let place = at(&twice, "\"format\": 2", "");
    assert_eq!(error(&twice), value(place, Fault::RepeatedField("format".to_string())));
}
