//! Tolerances beside a declared size, against the tables of legal metrology: the texts are named
//! in `data/fill_tolerances.csv`, row by row.

use brimwright::drink::fill::{Rule, Tolerance, tolerance};
use brimwright::foundation::measure::{Exact, Volume};

use crate::csv::{Row, rows};
use crate::support::{exact, millilitres};

fn table() -> Vec<Row> {
    rows(include_str!("data/fill_tolerances.csv"))
}

fn ours(name: &str) -> Option<Rule> {
    match name {
        "TNE 76/211/EEC" => Some(Rule::Package),
        "MPE 75/107/EEC bottle (nominal or brim)" => Some(Rule::Bottle),
        "R138 transfer measure line" => Some(Rule::TransferMeasureToLine),
        "R138 transfer measure brim" => Some(Rule::TransferMeasureToBrim),
        "R138 drinking measure line" => Some(Rule::DrinkingMeasureToLine),
        "R138 drinking measure brim" => Some(Rule::DrinkingMeasureToBrim),
        _ => None,
    }
}

fn number(row: &Row, column: &str) -> Option<Exact> {
    (!row[column].is_empty()).then(|| exact(&row[column]))
}

/// What the row says for a size: its percentage (a sum where it has both), rounded up to 0.1 mL
/// for packages as Annex I of the directive has it.
fn by_table(row: &Row, size: Exact) -> Tolerance {
    let percentage = number(row, "percent").map_or(Exact::ZERO, |percent| {
        let error = size.times(percent).unwrap().times(exact("0.01")).unwrap();
        if row["rule"] != "TNE 76/211/EEC" {
            return error;
        }
        let down = Exact::new(1, 1).times(error.times(exact("10")).unwrap().floor()).unwrap();
        if down == error { error } else { down.plus(exact("0.1")).unwrap() }
    });
    let fixed = number(row, "fixed_ml").unwrap_or(Exact::ZERO);
    let error = Volume::from_millilitres(percentage.plus(fixed).unwrap());
    match row["sign"].as_str() {
        "minus" => Tolerance { below: error, above: Volume::ZERO },
        "plus/minus" | "plus/minus (sum)" => Tolerance { below: error, above: error },
        "-0/+" | "-0/+ (sum)" => Tolerance { below: Volume::ZERO, above: error },
        sign => panic!("{sign:?}"),
    }
}

/// Sizes from the row's first up to its last or, where it has none, to four times the first.
fn sizes(row: &Row) -> impl Iterator<Item = Exact> {
    let from = exact(&row["from_ml"]);
    let to = number(row, "to_ml").unwrap_or_else(|| from.times(exact("4")).unwrap());
    let step = to.minus(from).unwrap().over(exact("64")).unwrap();
    (0..=64_u32).map(move |steps| from.plus(step.times(Exact::from(steps)).unwrap()).unwrap())
}

fn of(rule: Rule, size: Exact) -> Option<Tolerance> {
    tolerance(rule, Volume::from_millilitres(size)).unwrap()
}

/// The two measures to pour from: 2 and 4 mL below 100 mL, 3 and 6 % from there on.
fn steps_at_100(rule: Rule) -> bool {
    matches!(rule, Rule::TransferMeasureToLine | Rule::TransferMeasureToBrim)
}

#[test]
fn every_row_is_the_tables() {
    let (mut checked, mut left_out) = (0, 0);
    for row in table() {
        let Some(rule) = ours(&row["rule"]) else {
            // Above 10 L, from memory only: we say nothing there.
            assert_eq!(row["status"], "FROM MEMORY");
            assert!(sizes(&row).skip(1).all(|size| of(Rule::Package, size).is_none()));
            left_out += 1;
            continue;
        };
        assert!(row["status"].starts_with("VERIFIED"), "{row:?}");
        let last = number(&row, "to_ml");
        for size in sizes(&row).filter(|size| size.is_positive()) {
            // Where a table steps, the step belongs to the row that it opens.
            if steps_at_100(rule) && Some(size) == last {
                continue;
            }
            assert_eq!(of(rule, size), Some(by_table(&row, size)), "{rule:?} of {size} mL");
        }
        checked += 1;
    }
    assert_eq!((checked, left_out), (21, 2));
}

#[test]
fn tables_are_continuous_where_rows_meet() {
    let table = table();
    let mut met = 0;
    for (below, above) in table.iter().zip(table.iter().skip(1)) {
        let Some(rule) = ours(&below["rule"]).filter(|_| below["rule"] == above["rule"]) else { continue };
        let boundary = exact(&above["from_ml"]);
        assert_eq!(number(below, "to_ml"), Some(boundary));
        let just_below = of(rule, boundary.minus(exact("0.000001")).unwrap()).unwrap();
        let at = of(rule, boundary).unwrap();
        assert_eq!(at, by_table(above, boundary));
        met += 1;
        if steps_at_100(rule) {
            assert_eq!(just_below, by_table(below, boundary));
            assert_ne!(just_below, at);
            continue;
        }
        assert_eq!(at, by_table(below, boundary), "{rule:?} at {boundary} mL");
        for (one, other) in [(just_below.below, at.below), (just_below.above, at.above)] {
            assert!(other.minus(one).unwrap().millilitres().abs() < exact("0.000001"), "{rule:?} at {boundary} mL");
        }
    }
    assert_eq!(met, 6 + 5 + 4);
}

#[test]
fn a_percentage_of_a_package_is_rounded_up() {
    // Directive 76/211/EEC, Annex I, 2.4: 3 % of 355 mL are 10.65, so 10.7 mL; of 330 mL 9.9
    // as they are; 4.5 % of 187 mL are 8.415, so 8.5 mL; 1.5 % of 1001 mL 15.015, so 15.1 mL.
    for (size, below) in [("355", "10.7"), ("330", "9.9"), ("187", "8.5"), ("1001", "15.1"), ("5", "0.5")] {
        let expected = Tolerance { below: millilitres(below), above: Volume::ZERO };
        assert_eq!(of(Rule::Package, exact(size)), Some(expected), "{size} mL");
    }
    // Nothing is rounded for bottles and measures: 2 % of 355.5 mL.
    let bottle = of(Rule::Bottle, exact("355.5")).unwrap();
    assert_eq!((bottle.below, bottle.above), (millilitres("7.11"), millilitres("7.11")));
}
