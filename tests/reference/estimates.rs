//! Estimates from few numbers, against other people's statistics.

use brimwright::book::{Record, SeenPrice};
use brimwright::foundation::measure::{Amount, Exact, Unit, Volume};
use brimwright::foundation::statistics::{Interval, Spread, student_t, welch};
use brimwright::sizes::market::market;

use crate::csv::rows;
use crate::support::{book, day, exact, seen_price, settings};

fn near(one: Exact, other: &str) -> bool {
    one.minus(exact(other)).unwrap().abs() < exact("0.000002")
}

#[test]
fn quantiles_are_those_of_the_library() {
    let rows = rows(include_str!("data/student_t.csv"));
    for row in &rows {
        let quantile = student_t(row["degrees"].parse().unwrap()).unwrap();
        assert!(near(Exact::from_estimate(quantile).unwrap(), &row["quantile"]), "{row:?}: {quantile}");
    }
    assert_eq!(rows.len(), 25);
}

#[test]
fn quantiles_are_those_of_the_handbook() {
    // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, upper critical values at 0.975
    // (second-hand: a reprint of the table that names it).
    let published = [
        (1.0, "12.706"),
        (2.0, "4.303"),
        (3.0, "3.182"),
        (4.0, "2.776"),
        (5.0, "2.571"),
        (6.0, "2.447"),
        (7.0, "2.365"),
        (8.0, "2.306"),
        (9.0, "2.262"),
        (10.0, "2.228"),
        (15.0, "2.131"),
        (20.0, "2.086"),
        (30.0, "2.042"),
        (40.0, "2.021"),
        (60.0, "2.000"),
        (100.0, "1.984"),
    ];
    for (degrees, quantile) in published {
        let ours = Exact::from_estimate(student_t(degrees).unwrap()).unwrap();
        assert_eq!(ours.rounded(3), exact(quantile), "{degrees}");
    }
}

#[test]
fn intervals_are_those_of_the_library() {
    let rows = rows(include_str!("data/welch.csv"));
    for row in &rows {
        let spread = |name: &str| {
            let numbers: Vec<Exact> = row[name].split(' ').map(exact).collect();
            Spread::of(&numbers).unwrap().unwrap()
        };
        let interval = welch(&spread("before"), &spread("after")).unwrap();
        let Interval::Range { difference, low, high, degrees } = interval else { panic!("a range: {row:?}") };
        for (ours, name) in [(difference, "difference"), (low, "low"), (high, "high"), (degrees, "degrees")] {
            assert!(near(ours, &row[name]), "{name} of {row:?}: {ours}");
        }
        assert_eq!(interval.spans_zero(), row["p_value"].parse::<f64>().unwrap() > 0.05, "{row:?}");
    }
    assert_eq!(rows.len(), 10);
}

#[test]
fn curves_are_those_of_the_library() {
    let rows = rows(include_str!("data/curves.csv"));
    for row in &rows {
        let seen = |(id, seen): (u64, &str)| {
            let (size, price) = seen.split_once(':').unwrap();
            let size = Amount::new(exact(size), Unit::Millilitre);
            Record::SeenPrice(SeenPrice { size, ..seen_price(id, "1 mL", price) })
        };
        let book = book(settings(), (1..).zip(row["prices"].split(' ')).map(seen));
        let curve = market(&book, None, day("2026-11-26")).unwrap().curve.unwrap();
        let at = |size: &str| curve.price_at(Volume::from_millilitres(exact(size))).unwrap().major();
        assert!(near(at("1"), &row["factor"]) && near(at("450"), &row["at_450"]), "{row:?}");
        assert!(near(curve.exponent, &row["exponent"]), "{row:?}");
        assert!(near(curve.explained.unwrap().fraction(), &row["r_squared"]), "{row:?}");
    }
    assert_eq!(rows.len(), 6);
}
