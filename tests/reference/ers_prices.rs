//! Cost of an edible cup of 153 fruits and vegetables: USDA Economic Research Service, Fruit and
//! Vegetable Prices 2020 (public domain), see `data/ers_prices_2020.csv`.

use brimwright::book::{Ingredient, Pack, Stage};
use brimwright::drink::cost::usable_cost;
use brimwright::foundation::measure::{Exact, Money, Share};

use crate::csv::{Row, rows};
use crate::support::{exact, ingredient, measure, money, pack, share};

/// What we say that the row's cup costs, bought at the row's price.
fn cup_cost(row: &Row) -> Money {
    let (contents, cup) = match (row["retail_unit"].as_str(), row["cup_equiv_unit"].as_str()) {
        ("per pound", "pounds") => ("1 lb", "lb"),
        ("per pint", "fluid ounces") => ("1 pt", "fl oz"),
        other => panic!("no such units: {other:?}"),
    };
    let bought: Pack = pack(1, contents, &row["retail_price"]);
    let usable = share(&row["yield"]);
    // A yield above 1 is what dried beans and leaves take up: soaked or cooked, not trimmed.
    let (goods, stage) = if usable > Share::WHOLE {
        (Ingredient { soak_yield: Some(usable), ..ingredient(1, [bought.clone()]) }, Stage::SoakedOrBrewed)
    } else {
        (Ingredient { trim_yield: usable, ..ingredient(1, [bought.clone()]) }, Stage::Trimmed)
    };
    let cup = measure(&format!("{} {cup}", row["cup_equiv_size"]));
    usable_cost(&goods, &bought, stage, cup).unwrap_or_else(|error| panic!("{row:?}: {error:?}"))
}

#[test]
fn an_edible_cup_costs_what_is_printed() {
    let allowed = exact("0.0005");
    let mut checked = 0;
    let mut soaked = 0;
    for row in rows(include_str!("data/ers_prices_2020.csv")) {
        let ours = cup_cost(&row).major();
        let off = ours.minus(exact(&row["cup_equiv_price"])).unwrap();
        assert!(off <= allowed && off >= allowed.negated(), "{row:?}: {ours}");
        checked += 1;
        soaked += usize::from(exact(&row["yield"]) > Exact::ONE);
    }
    assert_eq!(checked, 153);
    assert_eq!(soaked, 13);
}

#[test]
fn orange_juice_by_the_cup() {
    // The same source, also printed as W32: 0.9842 a pint, 8 fl oz.
    assert_eq!(crate::example("W32").0, "$0.4921");
    let juice = pack(1, "1 pt", "0.9842");
    let cost = usable_cost(&ingredient(1, [juice.clone()]), &juice, Stage::AsBought, measure("8 fl oz"));
    assert_eq!(cost, Ok(money("0.4921")));
}
