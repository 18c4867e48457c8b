//! Currency digits against ISO 4217 list one (2026-01-01), see `data/iso4217_minor_units.csv`.

use brimwright::foundation::measure::{Currency, Money};

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
