//! What the starter list brings, and where it is from, to the letter.

use brimwright::book::{Basis, Figure, Ingredient, IngredientId};
use brimwright::buying::starter::vessels::usual;
use brimwright::buying::starter::{List, Row};
use brimwright::foundation::measure::System;
use brimwright::words::{self, starting};

use crate::support::{grams, share, speaker};

fn row(key: &str) -> Row {
    let list = List::read(include_str!("../../public/starter/ingredients.txt")).expect("the list reads");
    list.row(key).unwrap_or_else(|| panic!("no row {key}")).clone()
}

fn plain(text: String) -> String {
    text.replace('\u{a0}', " ")
}

fn brings(key: &str, units: System) -> String {
    plain(words::brings(&row(key), units, &speaker(units)))
}

#[test]
fn a_row_says_what_it_brings() {
    let us = |key| brings(key, System::UsCustomary);
    assert_eq!(us("carrot"), "trim yield 89%, juice yield 52.5%, 68.5 g per piece");
    assert_eq!(us("orange"), "trim yield 73%, juice yield 67.5%, 179.5 g per piece");
    // 1.0313 g/mL * 236.5882365 mL / 28.349523125 g, by hand.
    assert_eq!(us("milk_whole"), "8.61 oz per cup");
    assert_eq!(brings("milk_whole", System::Metric), "1.0313 g/mL");
    assert_eq!(us("matcha"), "name only");
}

#[test]
fn a_figure_says_where_it_is_from() {
    assert_eq!(starting::basis(Basis::Sr28, Some("11124")), "From USDA SR28 (2015), food 11124.");
    assert_eq!(starting::basis(Basis::Sr28, None), "From USDA SR28 (2015).");
    assert_eq!(starting::basis(Basis::Sr28, Some("")), "From USDA SR28 (2015).");
    assert_eq!(starting::basis(Basis::Assumed, Some("11124")), "Assumed: usual for ingredients like this.");
    let memory = "Rule of thumb, no published source. Weigh your own.";
    assert_eq!(starting::basis(Basis::Memory, None), memory);
}

#[test]
fn a_figure_is_said_as_its_field_shows_it() {
    let carrot = row("carrot");
    let said = |units| {
        let value = |figure| plain(starting::value(figure, units, &speaker(units)));
        carrot.figures().into_iter().map(value).collect::<Vec<_>>()
    };
    assert_eq!(said(System::Metric), ["89.0%", "52.5%", "1 g/mL", "1.04 g/mL", "68.5 g"]);
    assert_eq!(starting::figure(Figure::Density, System::UsCustomary), "Weight per cup");
    assert_eq!(starting::figure(Figure::Density, System::Metric), "Density in drinks");
}

#[test]
fn allergens_are_offered_and_never_certain_without_the_label() {
    let said = |key| starting::offered_allergens(&row(key));
    assert_eq!(said("milk_whole"), ["Usually contains: Milk. Read the label."]);
    assert_eq!(said("protein_whey"), ["Usually contains: Milk. Read the label.", "Can contain: Soy. Read the label."]);
    assert_eq!(said("wheatgrass"), ["Can contain: Wheat. Read the label."]);
    assert!(said("carrot").is_empty());
}

#[test]
fn figures_at_odds_say_both() {
    let apple = row("apple");
    let apples = apple.ingredient(IngredientId::from_random(1), "en-US");
    let said = |ingredient: &Ingredient| {
        let found = apple.at_odds(ingredient).expect("they do not go together");
        plain(starting::at_odds(found, System::Metric, &speaker(System::Metric)))
    };
    let peeled = Ingredient { trim_yield: share("0.7"), ..apples.clone() };
    assert_eq!(said(&peeled), "This piece weight goes with a trim yield of 90.0%. Yours is 70.0%. Weigh a few pieces.");
    let trimmed = Ingredient { piece_weight: Some(grams("182")), ..apples };
    assert_eq!(said(&trimmed), "A piece usually weighs 202.2 g as purchased. Did you weigh 182 g after trimming?");
}

#[test]
fn a_vessel_is_named_by_its_size() {
    let names = |units: System| {
        let name = |vessel| plain(words::vessel(&vessel, &speaker(units)));
        usual(units).map(name).collect::<Vec<_>>()
    };
    let us = names(System::UsCustomary);
    assert_eq!((us.len(), us[3].as_str(), us[7].as_str()), (19, "16 oz bottle", "16 oz cup"));
    assert_eq!(names(System::Metric)[1], "330 mL bottle");
}
