//! Currency digits against ISO 4217 list one (2026-01-01), see `data/iso4217_minor_units.csv`.

use brimwright::book::{Settings, TaxPlace};
use brimwright::foundation::measure::{Currency, Money, System};

use crate::csv::rows;
use crate::support::exact;

#[test]
fn every_currency_has_its_digits() {
    let mut checked = Vec::new();
    for row in rows(include_str!("data/iso4217_minor_units.csv")) {
        let code = row["code"].as_str();
        if row["name"].contains("is not a valid Currency") {
            assert_eq!(Currency::from_code(code), None, "{code} is no currency any more");
            continue;
        }
        let currency = Currency::from_code(code).unwrap_or_else(|| panic!("{code} is not known"));
        let digits: u32 = row["iso_minor_units"].parse().expect("a number of digits");
        assert_eq!(currency.digits(), digits, "{code}");
        let smallest = exact("10").times(currency.minor_unit().major()).unwrap();
        let expected = ["10", "1", "0.1", "0.01"][digits as usize];
        assert_eq!(Money::from_major(smallest), Money::from_major(exact(expected)), "{code}");
        checked.push(code.to_string());
    }
    assert_eq!(checked.len(), 56);
    let beyond: Vec<&str> =
        Currency::all().map(Currency::code).filter(|code| !checked.iter().any(|seen| seen == code)).collect();
    assert!(beyond.is_empty(), "without a source: {beyond:?}");
}

/// Against the Unicode CLDR, see `data/country_currencies.csv`: whatever is said is so; of 151
/// countries 76 have money of another country's code, and start with US dollars.
#[test]
fn a_country_has_its_money() {
    let rows = rows(include_str!("data/country_currencies.csv"));
    let mut known = 0;
    for row in &rows {
        let (country, money) = (row["country"].as_str(), row["currency"].as_str());
        if let Some(currency) = Currency::of_country(country) {
            assert_eq!(currency.code(), money, "{country}");
            known += 1;
        }
    }
    assert_eq!((rows.len(), known), (151, 75));
}

/// Common practice, no source: units on labels and menus, and whether prices include tax.
#[test]
fn a_new_book_is_as_in_its_country() {
    let of = |country| {
        let settings = Settings::in_country("Corner bar", country);
        (settings.currency.code(), settings.units, settings.tax.place, settings.endings.len())
    };
    assert_eq!(of("US"), ("USD", System::UsCustomary, TaxPlace::AddedAtTheTill, 4));
    assert_eq!(of("PR"), ("USD", System::UsCustomary, TaxPlace::AddedAtTheTill, 4));
    assert_eq!(of("CA"), ("CAD", System::Metric, TaxPlace::AddedAtTheTill, 4));
    assert_eq!(of("DE"), ("EUR", System::Metric, TaxPlace::InThePrice, 4));
    assert_eq!(of("GB"), ("GBP", System::Metric, TaxPlace::InThePrice, 4));
    assert_eq!(of("JP"), ("JPY", System::Metric, TaxPlace::InThePrice, 0));
    assert_eq!(of("KW"), ("KWD", System::Metric, TaxPlace::InThePrice, 0));
    assert_eq!(of(""), ("USD", System::Metric, TaxPlace::InThePrice, 4));
}
