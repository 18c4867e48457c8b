//! The density of water, against another formula and a published table.

use brimwright::foundation::measure::{Exact, Scale, Temperature, WARMEST, water_density};

use crate::csv::rows;
use crate::support::exact;

fn density(celsius: &str) -> Option<Exact> {
    water_density(exact(celsius)).unwrap().map(|density| density.grams_per_millilitre())
}

#[test]
fn water_is_as_dense_as_by_another_formula() {
    // IAPWS-95 and the metrologists' table agree to two millionths here.
    let rows = rows(include_str!("data/water.csv"));
    for row in &rows {
        let off = density(&row["celsius"]).unwrap().minus(exact(&row["grams_per_millilitre"])).unwrap();
        assert!(off.abs() <= exact("0.000002"), "{row:?}: {off}");
    }
    assert_eq!(rows.len(), 21);
}

#[test]
fn water_is_as_dense_as_published() {
    // IAPWS-95: 998.207 kg/m³ at 20 °C. Tanaka and others, Metrologia 38 (2001), 301: 999.974950 at
    // 3.983035 °C, where it is densest.
    assert_eq!(density("20"), Some(exact("0.998207")));
    assert_eq!(density("3.983035"), Some(exact("0.999975")));
    let at_40_fahrenheit = Temperature::new(exact("40"), Scale::Fahrenheit).celsius().unwrap();
    assert_eq!(water_density(at_40_fahrenheit).unwrap().unwrap().grams_per_millilitre(), exact("0.999973"));
}

#[test]
fn the_table_says_nothing_beyond_its_ends() {
    assert_eq!(WARMEST, exact("40"));
    assert!(["0", "40"].map(density).iter().all(Option::is_some));
    assert_eq!(["-0.000001", "40.000001"].map(density), [None, None]);
}
