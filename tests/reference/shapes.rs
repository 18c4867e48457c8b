//! What cups and bottles hold, against textbook frustums (named in `data/worked_examples.csv`)
//! and the library whose rule of interpolation is ours (`data/pchip.csv`, made by `pchip.py`).

use brimwright::foundation::measure::Exact;
use brimwright::foundation::shape::{Frustum, Inside, Pouring, Pourings, level};

use crate::csv::rows;
use crate::example;
use crate::support::{exact, millilitres, millimetres};

/// A cup with its diameters and height in millimetres.
fn cup(base: &str, rim: &str, height: &str) -> Frustum {
    Frustum { base: millimetres(base), rim: millimetres(rim), height: millimetres(height) }
}

/// Fails unless `found` is within `allowed` of `wanted`.
fn assert_near(found: Exact, wanted: &str, allowed: &str) {
    let off = found.minus(exact(wanted)).unwrap().abs();
    assert!(off <= exact(allowed), "{found} is {off} off {wanted}");
}

/// A cup with the volume computed and the volume printed; the latter took 22/7 for pi, which is
/// 0.04 % more.
fn holds(cup: Frustum, computed: &str, printed: &str) {
    let volume = cup.volume().unwrap().millilitres();
    assert_near(volume, computed, "0.000001");
    let as_printed = volume.over(Exact::PI).unwrap().times(exact("22").over(exact("7")).unwrap()).unwrap();
    assert_near(as_printed, printed, "0.000000001");
    assert!(volume.over(exact(printed)).unwrap().minus(Exact::ONE).unwrap().abs() <= exact("0.001"));
}

#[test]
fn a_drinking_glass() {
    // NCERT Mathematics Class X, Exercise 13.4 Q1: 4 and 2 cm across, 14 cm high.
    assert_eq!(example("W26"), ("308/3 = 102 2/3 cm3".into(), "102.6253600 with true pi".into()));
    holds(cup("20", "40", "140"), "102.62536", "102.666666666667");
}

#[test]
fn a_bucket() {
    // CBSE mathematics, named in the row: 6 and 4 cm across, 21 cm high.
    assert_eq!(example("W28"), ("418 cm3".into(), "417.8318229 with true pi".into()));
    holds(cup("60", "40", "210"), "417.8318229", "418");
}

#[test]
fn a_tank_filled_in_part() {
    // CE board exam notes, named in the row: bottom radius 4 m, top 7 m, 3 m deep, filled to 2 m.
    // A thousandth of its size: millimetres for metres, so microlitres for cubic metres.
    assert_eq!(example("W30"), ("r = 6 m at y = 2".into(), "159.1740278 m3 (full 292.1681168)".into()));
    let tank = cup("8", "14", "3");
    assert_eq!(tank.diameter_at(millimetres("2")), Ok(millimetres("12")));
    let filled = tank.volume_at(millimetres("2")).unwrap();
    let microlitres = |volume: Exact| volume.times(exact("1000")).unwrap();
    assert_near(microlitres(filled.millilitres()), "159.1740278", "0.000001");
    assert_near(microlitres(tank.volume().unwrap().millilitres()), "292.1681168", "0.000001");
    assert_eq!(level(&tank, filled), Ok(millimetres("2")));
}

#[test]
fn the_curve_through_pourings_is_the_librarys() {
    let rows = rows(include_str!("data/pchip.csv"));
    for row in &rows {
        let reading = |text: &str| {
            let (height, volume) = text.split_once(':').expect("height and volume");
            Pouring { height: millimetres(height), volume: millilitres(volume) }
        };
        let readings: Vec<_> = row["readings"].split(' ').map(reading).collect();
        let volume = Pourings::new(&readings).unwrap().volume_at(millimetres(&row["height_mm"])).unwrap();
        // Binary fractions of the library: 16 digits, ten decimals written.
        assert_near(volume.millilitres(), &row["volume_ml"], "0.0000000002");
    }
    assert!(rows.len() > 100, "every shape is there");
}
