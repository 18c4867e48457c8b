//! Edible shares and weights of measures against the USDA National Nutrient Database for Standard
//! Reference, Release 28 (2015), in `data/sr28_edible_yield.csv` and `data/sr28_portions.csv`.
//! Its gram weights are of the edible portion.

use brimwright::book::{Ingredient, Stage};
use brimwright::drink::cost::usable_cost;
use brimwright::drink::yields::{bought_for, mass_at, volume_in_drink};
use brimwright::foundation::measure::{Density, Dimension, Exact, Mass, Measure, Unit, Volume};

use crate::csv::{Row, rows};
use crate::support::{exact, ingredient, measure, pack, share};

fn portions() -> Vec<Row> {
    rows(include_str!("data/sr28_portions.csv"))
}

fn edible_yields() -> Vec<Row> {
    rows(include_str!("data/sr28_edible_yield.csv"))
}

/// Grams of one such measure of an ingredient of SR28.
fn grams_of(key: &str, of: &str) -> Exact {
    let row = portions().into_iter().find(|row| row["key"] == key && row["measure"] == of);
    let row = row.unwrap_or_else(|| panic!("no {of} of {key}"));
    grams_per_unit(&row)
}

/// Grams of one unit of a row; an amount below one is written ".5" there.
fn grams_per_unit(row: &Row) -> Exact {
    let amount = exact(&format!("0{}", row["amount"]));
    exact(&row["grams"]).over(amount).unwrap()
}

/// Density of what fills a US cup (236.5882365 mL) with this many grams.
fn density_of_a_cup(grams: Exact) -> Density {
    Density::from_grams_per_millilitre(grams.over(Unit::UsCup.size()).unwrap())
}

/// The density of a poured juice, from the weight of its cup, to the eight decimals that a book
/// keeps.
pub fn juice_density(key: &str) -> Density {
    let density = density_of_a_cup(grams_of(key, "cup"));
    Density::from_grams_per_millilitre(density.grams_per_millilitre().rounded(8))
}

/// An ingredient of which this percentage of the bought weight is edible, in a pack of 1 kg at
/// 10.00.
fn edible(percent: &str) -> Ingredient {
    let trim_yield = share(&exact(percent).over(exact("100")).unwrap().to_string());
    Ingredient { trim_yield, ..ingredient(1, [pack(1, "1 kg", "10")]) }
}

#[test]
fn edible_is_bought_less_refuse() {
    let rows = edible_yields();
    assert_eq!(rows.len(), 104);
    for row in rows {
        let (refuse, percent) = (exact(&row["refuse_pct"]), &row["ep_pct"]);
        assert_eq!(refuse.plus(exact(percent)), Ok(exact("100")), "{}", row["key"]);
        let produce = edible(percent);
        // 100 g edible are bought as 100 / share: bought times percentage is ten thousand.
        let bought = bought_for(&produce, Stage::Trimmed, measure("100 g"), Dimension::Mass).unwrap();
        let grams = bought.dividend.over(bought.divisor).unwrap();
        assert_eq!(grams.times(exact(percent)).unwrap().rounded(9), exact("10000"), "{}", row["key"]);
        // A pack of 1 kg holds ten times the percentage in edible grams, and they cost all of it.
        let edible_grams = Measure::Mass(Mass::from_grams(exact(percent).times(exact("10")).unwrap()));
        let cost = usable_cost(&produce, &produce.packs[0], Stage::Trimmed, edible_grams);
        assert_eq!(cost, Ok(crate::support::money("10")), "{}", row["key"]);
    }
}

#[test]
fn an_edible_gram_costs_more_than_a_bought_one() {
    // 0.01 a gram bought; by hand over the shares printed in SR28: apple 90 %, pineapple 51 %,
    // banana 64 %, spearmint 41 %.
    for (key, costs) in [
        ("apple", "0.011111111111"),
        ("pineapple", "0.019607843137"),
        ("banana", "0.015625"),
        ("spearmint", "0.024390243902"),
    ] {
        let row = edible_yields().into_iter().find(|row| row["key"] == key).expect("the row is there");
        let produce = edible(&row["ep_pct"]);
        let cost = usable_cost(&produce, &produce.packs[0], Stage::Trimmed, measure("1 g"));
        assert_eq!(cost, Ok(crate::support::money(costs)), "{key}");
    }
}

#[test]
fn an_apple_bought_weighs_more_than_an_apple_eaten() {
    // A medium apple is 182 g edible, edible share 0.90, so 202.2 g bought.
    let eaten = Mass::from_grams(grams_of("apple", "medium (3 dia)"));
    assert_eq!(eaten.grams(), exact("182"));
    let apple = edible("90");
    let bought = bought_for(&apple, Stage::Trimmed, Measure::Mass(eaten), Dimension::Mass).unwrap();
    let grams = bought.dividend.over(bought.divisor).unwrap();
    assert_eq!(grams.rounded(1), exact("202.2"));
    let by_the_piece = Ingredient { piece_weight: Some(Mass::from_grams(grams)), ..apple };
    assert_eq!(mass_at(&by_the_piece, Stage::Trimmed, measure("1 ea")).map(Mass::as_part), Ok(eaten));
}

/// What a cup measure of something loose takes in the drink, once puréed.
fn pureed(key: &str, loose: &str, smooth: &str) -> Volume {
    let density = Some(density_of_a_cup(grams_of(key, smooth)));
    let fruit = Ingredient { density, ..ingredient(1, []) };
    let cup = Measure::Mass(Mass::from_grams(grams_of(key, loose)));
    volume_in_drink(&fruit, Stage::Trimmed, cup).unwrap()
}

#[test]
fn a_cup_of_pieces_is_less_than_a_cup_of_drink() {
    // Grams loose over grams puréed, of 236.5882365 mL: strawberries 166/232, 152/232 and
    // 144/232, banana 150/225, avocado 150/230 and 146/230.
    for (key, loose, smooth, millilitres) in [
        ("strawberry", "cup, sliced", "cup, pureed", "169.3"),
        ("strawberry", "cup, halves", "cup, pureed", "155.0"),
        ("strawberry", "cup, whole", "cup, pureed", "146.8"),
        ("banana", "cup, sliced", "cup, mashed", "157.7"),
        ("avocado", "cup, cubes", "cup, pureed", "154.3"),
        ("avocado", "cup, sliced", "cup, pureed", "150.2"),
    ] {
        let volume = pureed(key, loose, smooth);
        assert_eq!(volume.millilitres().rounded(1), exact(millilitres), "{loose} of {key}");
    }
    // And the purée of a cup is a cup.
    let cup = pureed("strawberry", "cup, pureed", "cup, pureed");
    assert_eq!(cup.as_part(), Volume::from_millilitres(Unit::UsCup.size()));
}

#[test]
fn every_measure_of_volume_has_the_density_of_its_row() {
    // The column derived_g_per_ml was computed beside the data, not by this engine.
    let unit_of = |measure: &str| match measure.split([',', ' ']).next() {
        Some("cup") => Some(Unit::UsCup),
        Some("quart") => Some(Unit::UsQuart),
        Some("liter") => Some(Unit::Litre),
        Some("ml") => Some(Unit::Millilitre),
        Some("tbsp" | "tablespoon") => Some(Unit::UsTablespoon),
        Some("tsp") => Some(Unit::UsTeaspoon),
        Some("fl") => Some(Unit::UsFluidOunce),
        _ => None,
    };
    let (mut checked, mut others) = (0, Vec::new());
    for row in portions() {
        if row["derived_g_per_ml"].is_empty() {
            continue;
        }
        let Some(unit) = unit_of(&row["measure"]) else {
            others.push(row["measure"].clone());
            continue;
        };
        let per_unit = grams_per_unit(&row);
        assert_eq!(per_unit.rounded(3), exact(&row["grams_per_unit"]), "{}: {}", row["key"], row["measure"]);
        let density = per_unit.over(unit.size()).unwrap();
        assert_eq!(density.rounded(4), exact(&row["derived_g_per_ml"]), "{}: {}", row["key"], row["measure"]);
        checked += 1;
    }
    assert_eq!(checked, 362);
    assert_eq!(others, ["serving 1/2 cup", "serving 1/4 cup", "serving 8 fl oz", "serving 1 tbsp"]);
}
