//! Units against their definitions: NIST Handbook 44 Appendix C, NIST SP 811 Appendix B.8, UK
//! Weights and Measures Act 1985 Schedule 1 (see `data/units.csv`, row by row).

use brimwright::foundation::measure::{Dimension, Exact, Unit};

use crate::csv::rows;
use crate::support::exact;

/// Our unit of a row. A row without one is a value that must not be taken for one of ours.
fn ours(name: &str) -> Option<Unit> {
    match name {
        "US gallon" => Some(Unit::UsGallon),
        "US liquid quart" => Some(Unit::UsQuart),
        "US liquid pint" => Some(Unit::UsPint),
        "US cup (customary)" => Some(Unit::UsCup),
        "US fluid ounce" => Some(Unit::UsFluidOunce),
        "US tablespoon" => Some(Unit::UsTablespoon),
        "US teaspoon" => Some(Unit::UsTeaspoon),
        "imperial gallon" => Some(Unit::ImperialGallon),
        "imperial pint" => Some(Unit::ImperialPint),
        "imperial fluid ounce" => Some(Unit::ImperialFluidOunce),
        "avoirdupois pound" => Some(Unit::Pound),
        "avoirdupois ounce" => Some(Unit::Ounce),
        "NIST practical metric cup" => Some(Unit::MetricCup),
        _ => None,
    }
}

/// Our unit of the same name as one on a nutrition panel (21 CFR 101.9(b)(5)(viii)), which is
/// rounded there.
fn namesake(name: &str) -> Option<Unit> {
    match name {
        "FDA label fl oz" => Some(Unit::UsFluidOunce),
        "FDA label cup" => Some(Unit::UsCup),
        "FDA label tbsp" => Some(Unit::UsTablespoon),
        "FDA label tsp" => Some(Unit::UsTeaspoon),
        "FDA label oz (weight)" => Some(Unit::Ounce),
        _ => None,
    }
}

#[test]
fn every_unit_has_its_defined_size() {
    let (mut defined, mut on_panels, mut others) = (0, 0, Vec::new());
    for row in rows(include_str!("data/units.csv")) {
        let (name, value) = (row["unit"].as_str(), exact(&row["exact_value"]));
        let dimension = if row["si_unit"] == "g" { Dimension::Mass } else { Dimension::Volume };
        if let Some(unit) = ours(name) {
            assert_eq!((unit.size(), unit.dimension()), (value, dimension), "{name}");
            defined += 1;
        } else if let Some(unit) = namesake(name) {
            assert_ne!(unit.size(), value, "{name} is for nutrition panels, not for measuring");
            on_panels += 1;
        } else {
            others.push(name.to_string());
        }
    }
    assert_eq!((defined, on_panels), (13, 5));
    assert_eq!(others, ["cubic inch"], "a length cubed is no unit that people pour by");
}

#[test]
fn metric_units_are_decimal() {
    // SI Brochure 9th edition: litre = dm3, prefixes centi and milli, kilogram = 1000 g.
    // Metric spoons of 15 and 5 mL: NIST SP 1038 footnote 19, practical usage.
    for (unit, size) in [
        (Unit::Millilitre, 1),
        (Unit::Centilitre, 10),
        (Unit::Litre, 1000),
        (Unit::MetricTablespoon, 15),
        (Unit::MetricTeaspoon, 5),
        (Unit::Gram, 1),
        (Unit::Kilogram, 1000),
        (Unit::Piece, 1),
    ] {
        assert_eq!(unit.size(), Exact::from(size), "{unit}");
    }
}

#[test]
fn a_cubic_inch_makes_the_gallon() {
    // The gallon is 231 cubic inches (Handbook 44 Appendix C): the row that is no unit of ours
    // must give the one that is.
    let rows = rows(include_str!("data/units.csv"));
    let cubic_inch = rows.iter().find(|row| row["unit"] == "cubic inch").expect("the row is there");
    let gallon = exact(&cubic_inch["exact_value"]).times(Exact::from(231));
    assert_eq!(gallon, Ok(Unit::UsGallon.size()));
}
