//! The JSON Schema against books, by a validator of draft 2020-12 from outside (`jsonschema`).

use std::sync::LazyLock;

use brimwright::book::{Book, Settings};
use brimwright::exchange::{read, write};
use brimwright::foundation::measure::{Currency, Unit};
use serde_json::Value;

use super::{DEMO, FILE, demo_with};

/// The schema of the version that is written.
pub const SCHEMA: &str = include_str!("../../public/schema/brimwright-book-4.schema.json");

static VALIDATOR: LazyLock<jsonschema::Validator> = LazyLock::new(|| {
    let schema: Value = serde_json::from_str(SCHEMA).unwrap();
    jsonschema::draft202012::meta::validate(&schema).unwrap();
    jsonschema::draft202012::new(&schema).unwrap()
});

/// Whether the schema takes this file.
pub fn takes(text: &str) -> bool {
    VALIDATOR.is_valid(&serde_json::from_str(text).unwrap())
}

/// Whether the schema takes the text of what a scenario takes to be other than in the book.
pub fn takes_conditions(text: &str) -> bool {
    let mut schema: Value = serde_json::from_str(SCHEMA).unwrap();
    schema = serde_json::json!({ "$ref": "#/$defs/conditions", "$defs": schema["$defs"].take() });
    jsonschema::draft202012::new(&schema).unwrap().is_valid(&serde_json::from_str(text).unwrap())
}

#[test]
fn it_takes_the_demo_and_a_new_book() {
    let demo: Value = serde_json::from_str(FILE).unwrap();
    let errors: Vec<String> = VALIDATOR.iter_errors(&demo).map(|error| error.to_string()).collect();
    assert_eq!(errors, Vec::<String>::new());
    assert!(takes(&write(&Book::new(Settings::new("New")))));
}

/// Each of these is refused by the schema and by the reader alike.
#[test]
fn it_refuses_what_the_reader_refuses() {
    let broken = [
        ("\"brimwright-book\"", "\"another\""),
        ("\"version\": 4", "\"version\": 5"),
        ("\"version\": 4,", ""),
        ("\"version\": 4", "\"version\": \"3\""),
        ("\"offers\": [", "\"offer\": ["),
        ("\"invented\": true", "\"invented\": \"true\""),
        ("\"USD\"", "\"XYZ\""),
        ("\"us-customary\"", "\"furlongs\""),
        ("\"rate\": \"0.065\"", "\"rate\": \"-0.065\""),
        ("\"rate\": \"0.065\"", "\"rate\": 0.065"),
        ("\"target\": \"0.68\"", "\"target\": \"1\""),
        ("\"wage\": \"19.5\"", "\"wage\": \"1e3\""),
        ("\"wage\": \"19.5\"", "\"wage\": \"1234567890\""),
        ("\"0.25\"", "\"0.125\""),
        ("\"0.25\"", "\"1\""),
        ("\"id\": \"1\"", "\"id\": \"01\""),
        ("\"id\": \"1\"", "\"id\": \"A1\""),
        ("\"name\": \"Apples\"", "\"name\": \"  \""),
        ("\"name\": \"Apples\",", ""),
        ("\"name\": \"Apples\"", "\"title\": \"Apples\""),
        ("\"trim-yield\": \"0.9\"", "\"trim-yield\": \"0\""),
        ("\"trim-yield\": \"0.9\"", "\"trim-yield\": \"1.4\""),
        ("\"press-yield\": \"0.65\"", "\"press-yield\": \"0.123456789\""),
        ("\"juice-density\": \"1.048\"", "\"juice-density\": \"0.0\""),
        ("\"40 lb\"", "\"0 lb\""),
        ("\"40 lb\"", "\"40 stone\""),
        ("\"40 lb\"", "\"0.000000001 lb\""),
        ("\"40 lb\"", "\"1000000000 lb\""),
        ("\"40 lb\"", "\"40lb\""),
        ("\"160 ea\"", "\"160 lb\""),
        ("\"vessel\"", "\"barrel\""),
        ("\"brimful\": \"2.2 fl oz\"", "\"brimful\": \"2.2 oz\""),
        ("\"volume\": \"0.15 fl oz\"", "\"volume\": \"-0.15 fl oz\""),
        ("\"volume\": \"0.15 fl oz\"", "\"depth\": \"0.15 fl oz\""),
        ("\"share\": \"0.06\"", "\"share\": \"1.06\""),
        ("\"count\": \"1\"", "\"count\": \"0\""),
        ("\"kind\": \"pressed\"", "\"kind\": \"stewed\""),
        ("\"amount\": \"6 fl oz\"", "\"amount\": \"-6 fl oz\""),
        ("\"stage\": \"pressed\"", "\"stage\": \"baked\""),
        ("\"in-proportion\"", "\"doubled\""),
        ("\"labour\": {", "\"labor\": {"),
        ("\"batch\": \"24\"", "\"batch\": \"0.5\""),
        ("\"price\": \"4.95\"", "\"price\": \"0\""),
    ];
    for (old, new) in broken {
        let text = demo_with(old, new);
        assert!(!takes(&text), "the schema takes {new}");
        assert!(read(&text).is_err(), "the reader takes {new}");
    }
}

#[test]
fn it_knows_the_units_and_currencies_of_the_engine() {
    for unit in Unit::ALL {
        let text = demo_with("\"amount\": \"6 fl oz\"", &format!("\"amount\": \"6 {unit}\""));
        assert!(takes(&text), "{unit}");
    }
    for currency in Currency::all() {
        let mut settings = Settings::new("New");
        settings.currency = currency;
        settings.endings = vec![currency.minor_unit()];
        let book = Book::from_records([brimwright::book::Record::Settings(Box::new(settings))]).unwrap();
        assert!(takes(&write(&book)), "{currency}");
    }
}

/// What may be left out, and numbers with as many digits as a book keeps.
#[test]
fn it_takes_what_the_reader_takes() {
    let labour = &DEMO[DEMO.find(",\n      \"labour\": {").unwrap()..DEMO.find(",\n      \"toll\"").unwrap()];
    let good = [
        (labour, ""),
        (",\n      \"toll\": \"0\"", ""),
        (",\n      \"process-loss\": \"0.03\"", ""),
        ("\n    \"commission\": \"0\",", ""),
        (",\n      \"price\": \"4.95\"", ""),
        ("\"batch\": \"24\"", "\"batch\": \"1\""),
        ("\"40 lb\"", "\"0.00000001 lb\""),
        ("\"40 lb\"", "\"999999999.99999999 lb\""),
        ("\"volume\": \"0.15 fl oz\"", "\"volume\": \"0 mL\""),
        ("\"price\": \"4.95\"", "\"price\": \"0.00000001\""),
        ("\"trim-yield\": \"0.9\"", "\"trim-yield\": \"1.0\""),
        ("\"wage\": \"19.5\"", "\"wage\": \"-0\""),
    ];
    for (old, new) in good {
        let text = demo_with(old, new);
        assert!(takes(&text), "the schema refuses {new} for {old}");
        assert_eq!(read(&text).err(), None, "the reader refuses {new} for {old}");
    }
}

/// Every field is described, by itself or by what it refers to.
#[test]
fn every_field_is_described() {
    let schema: Value = serde_json::from_str(SCHEMA).unwrap();
    let mut undescribed = Vec::new();
    let mut waiting = vec![(String::new(), &schema)];
    while let Some((path, value)) = waiting.pop() {
        let Some(object) = value.as_object() else { continue };
        for (name, field) in object.get("properties").and_then(Value::as_object).into_iter().flatten() {
            let condition =
                ["/allOf", "/contains"].iter().any(|part| path.contains(part)) || field.get("$ref").is_some();
            if field.get("description").is_none() && !condition {
                undescribed.push(format!("{path}/{name}"));
            }
        }
        for (name, inner) in object {
            match inner {
                Value::Object(_) => waiting.push((format!("{path}/{name}"), inner)),
                Value::Array(list) => {
                    waiting.extend(list.iter().map(|inner| (format!("{path}/{name}"), inner)));
                }
                _ => {}
            }
        }
    }
    assert_eq!(undescribed, Vec::<String>::new());
}
