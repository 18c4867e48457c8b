//! The starter list against the table that it was taken from, `data/starter_ingredients.csv`, and that table against
//! the USDA National Nutrient Database for Standard Reference, Release 28 (2015), in `data/sr28_edible_yield.csv`
//! and `data/sr28_portions.csv`. What the table calls assumed or from memory has no source; that it says so is
//! checked here.

use std::collections::{BTreeMap, BTreeSet};

use brimwright::book::{Allergen, Basis, Figure, IngredientId, Produce};
use brimwright::buying::starter::{Has, List, Row as Kept};
use brimwright::foundation::measure::{Exact, Unit};

use crate::csv::{Row, rows};
use crate::support::exact;

const LIST: &str = include_str!("../../public/starter/ingredients.txt");

fn list() -> List {
    List::read(LIST).expect("the list reads")
}

fn table() -> Vec<Row> {
    rows(include_str!("data/starter_ingredients.csv"))
}

/// The basis of a figure, as the table words it.
fn basis(text: &str) -> Basis {
    match text {
        "SR28" | "computed: SR28 edible weight / trim_yield" | "computed: SR28 weight of the measure" => Basis::Sr28,
        "assumed, bought trimmed" => Basis::Assumed,
        "assumed, from memory" | "rule of thumb, from memory, no published source" => Basis::Memory,
        other => panic!("no basis {other:?}"),
    }
}

/// A figure of the table with its basis; an empty one has none.
fn figure(row: &Row, column: &str, of_basis: &str) -> Option<(Exact, Basis)> {
    (!row[column].is_empty()).then(|| (exact(&row[column]), basis(&row[of_basis])))
}

#[test]
fn every_figure_is_that_of_the_table_and_keeps_its_basis() {
    let (list, table) = (list(), table());
    assert_eq!((list.rows().len(), table.len()), (253, 253));
    let mut figures = 0;
    for (kept, row) in list.rows().iter().zip(&table) {
        let key = &row["key"];
        assert_eq!(&kept.key, key);
        assert_eq!((&kept.ndb_no, &kept.names[0]), (&row["ndb_no"], &row["name_en"]), "{key}");
        let trim = kept.trim_yield.map(|(share, basis)| (share.fraction(), basis));
        assert_eq!(trim, figure(row, "trim_yield", "trim_basis"), "{key}");
        let piece = kept.piece_weight.map(|(mass, basis)| (mass.grams(), basis));
        assert_eq!(piece, figure(row, "piece_weight_g_as_purchased", "piece_basis"), "{key}");
        let density = kept.density.map(|(density, basis, _)| (density.grams_per_millilitre(), basis));
        assert_eq!(density, figure(row, "density_g_per_ml", "density_basis"), "{key}");
        let has = match kept.density.map(|(_, _, has)| has) {
            Some(Has::Liquid) => "liquid",
            Some(Has::Puree) => "puree",
            Some(Has::Bulk) => "powder bulk",
            None => "none",
        };
        assert_eq!(has, row["density_kind"], "{key}");
        let press = kept.press_yield.map(|(low, high, basis)| [(low.fraction(), basis), (high.fraction(), basis)]);
        let of_table = ["press_yield_low", "press_yield_high"].map(|column| figure(row, column, "press_basis"));
        assert_eq!(press.map_or([None; 2], |both| both.map(Some)), of_table, "{key}");
        let juice = kept.juice_density.map(|(density, basis)| (density.grams_per_millilitre(), basis));
        let assumed = |text: &String| (!text.is_empty()).then(|| (exact(text), Basis::Assumed));
        assert_eq!(juice, assumed(&row["juice_density_assumed"]), "{key}");
        assert_eq!(kept.case, row["us_case"].replace("; from memory", ""), "{key}");
        figures += kept.figures().len();
    }
    // What picking each row brings, all rows together: a figure that is lost or doubled changes this.
    assert_eq!(figures, 462);
}

#[test]
fn what_is_brought_is_a_figure_of_the_table_or_the_shared_assumption() {
    for (kept, row) in list().rows().iter().zip(&table()) {
        let ingredient = kept.ingredient(IngredientId::from_random(1), "en-US");
        for brought in ingredient.starting_figures() {
            let value = brought.value;
            let of_table = match brought.figure {
                Figure::TrimYield => exact(&row["trim_yield"]),
                Figure::PieceWeight => exact(&row["piece_weight_g_as_purchased"]),
                Figure::JuiceDensity => exact("1.04"),
                Figure::PressYield => {
                    let [low, high] = ["press_yield_low", "press_yield_high"].map(|column| exact(&row[column]));
                    low.plus(high).unwrap().over(exact("2")).unwrap()
                }
                Figure::Density if row["density_kind"] == "none" => exact("1"),
                Figure::Density => exact(&row["density_g_per_ml"]),
            };
            assert_eq!(value, of_table, "{} {:?}", kept.key, brought.figure);
            let of_a_heap = row["density_kind"] == "powder bulk" && brought.figure == Figure::Density;
            assert!(!of_a_heap, "{}", kept.key);
        }
    }
}

/// Each allergen of the table, by the words of either law, with whether it is certain.
fn allergens_of(row: &Row) -> BTreeMap<Allergen, bool> {
    let mut all = BTreeMap::new();
    for text in [&row["allergens_us"], &row["allergens_eu"]].into_iter().flat_map(|list| list.split("; ")) {
        let is_certain = !text.ends_with('?');
        let name = text.trim_end_matches('?').split(" (").next().unwrap();
        let allergen = match name {
            "" => continue,
            "tree nuts" | "nuts" => Allergen::TreeNuts,
            "gluten" if text.contains("(wheat)") => Allergen::Wheat,
            "gluten" => Allergen::OtherGluten,
            other => *Allergen::ALL.iter().find(|it| it.stored_name() == other).expect("an allergen"),
        };
        all.insert(allergen, is_certain);
    }
    all
}

#[test]
fn allergens_are_those_of_the_table_under_both_laws() {
    let mut with = 0;
    for (kept, row) in list().rows().iter().zip(&table()) {
        let offered: BTreeMap<Allergen, bool> = kept.allergens.iter().map(|it| (it.allergen, it.is_certain)).collect();
        assert_eq!(offered, allergens_of(row), "{}", kept.key);
        with += usize::from(!offered.is_empty());
        // What only one law names is in the list of that law alone.
        let of_us = kept.allergens.iter().any(|it| it.allergen.in_united_states());
        assert_eq!(of_us, !row["allergens_us"].is_empty(), "{}", kept.key);
    }
    assert_eq!(with, 71);
}

#[test]
fn names_stand_in_four_languages_and_fresh_produce_is_raw() {
    let list = list();
    for (kept, row) in list.rows().iter().zip(&table()) {
        assert!(kept.names.iter().all(|name| !name.is_empty()), "{}", kept.key);
        let fresh = ["fruit", "vegetable", "leaf", "root", "herb", "frozen"].contains(&row["group"].as_str());
        let canned = row["description"].contains("canned");
        match kept.produce {
            Some(Produce::Raw) => assert!((fresh && !canned) || kept.key == "orange_juice_fresh", "{}", kept.key),
            Some(Produce::Treated) => assert!(canned, "{}", kept.key),
            Some(Produce::Neither) | None => assert!(!fresh, "{}", kept.key),
        }
    }
    let names = |key: &str| list.row(key).unwrap().names.clone();
    // From memory of the trade: a kitchen in the United States, Germany, France.
    assert_eq!(names("beet"), ["Beets", "Betabel", "Rote Bete", "Betteraves"]);
    assert_eq!(names("tea_hibiscus"), ["Hibiscus tea, brewed", "Té de jamaica", "Hibiskustee", "Infusion d’hibiscus"]);
}

// The table against SR28.

/// SR28's foods: percent of refuse, its description, and grams of one of each measure.
struct Sr28 {
    refuse: BTreeMap<String, (String, String)>,
    grams: BTreeMap<(String, String), Vec<(bool, Exact)>>,
}

impl Sr28 {
    fn read() -> Sr28 {
        let (mut refuse, mut grams) = (BTreeMap::new(), BTreeMap::<_, Vec<_>>::new());
        for row in rows(include_str!("data/sr28_portions.csv")) {
            let of_food = (row["refuse_pct"].clone(), row["refuse_description"].clone());
            refuse.insert(row["ndb_no"].clone(), of_food);
            let each = exact(&row["grams"]).over(exact(&format!("0{}", row["amount"]))).unwrap();
            let measure = (row["ndb_no"].clone(), row["measure"].clone());
            grams.entry(measure).or_default().push((row["amount"] == "1", each));
        }
        Sr28 { refuse, grams }
    }

    /// Grams of one such measure; where SR28 has it twice, the row of amount 1 counts.
    fn one(&self, ndb_no: &str, measure: &str) -> Exact {
        let all = &self.grams[&(ndb_no.to_string(), measure.to_string())];
        let of_one: Vec<Exact> = all.iter().filter(|(one, _)| *one).map(|(_, each)| *each).collect();
        let all = if of_one.is_empty() { all.iter().map(|(_, each)| *each).collect() } else { of_one };
        let different: BTreeSet<Exact> = all.into_iter().collect();
        assert_eq!(different.len(), 1, "{ndb_no} {measure}");
        *different.first().unwrap()
    }
}

/// Millilitres of one such measure; `None` if it is no volume.
fn millilitres(measure: &str) -> Option<Exact> {
    let measure = measure.trim_start_matches("serving ");
    let (times, of) = match measure.split_once(' ') {
        Some((times, of)) if times.starts_with(|sign: char| sign.is_ascii_digit()) => (times, of),
        _ => ("1", measure),
    };
    let times = match times.split_once('/') {
        Some((above, below)) => exact(above).over(exact(below)).unwrap(),
        None => exact(times),
    };
    let unit = match of.split([' ', ',']).next().unwrap() {
        "cup" => Unit::UsCup,
        "fl" => Unit::UsFluidOunce,
        "tbsp" | "tablespoon" => Unit::UsTablespoon,
        "tsp" | "teaspoon" => Unit::UsTeaspoon,
        "quart" => Unit::UsQuart,
        "liter" => Unit::Litre,
        "ml" => Unit::Millilitre,
        _ => return None,
    };
    times.times(unit.size()).ok()
}

/// Rows of SR28 that contradict themselves or physics (the table's notes say why): never a source of a density.
const NOT_TO_USE: [&str; 13] = [
    "19912", "14091", "12118", "14278", "09160", "11655", "02050", "14090", "09214", "11578", "14284", "16055", "09043",
];

#[test]
fn figures_from_sr28_follow_from_its_rows() {
    let sr28 = Sr28::read();
    let (mut trims, mut pieces, mut densities) = (0, 0, 0);
    for row in table() {
        let (key, ndb_no) = (&row["key"], row["ndb_no"].as_str());
        assert!(!NOT_TO_USE.contains(&ndb_no), "{key}");
        if row["trim_basis"] == "SR28" {
            let (refuse, of_what) = &sr28.refuse[ndb_no];
            let left = exact("1").minus(exact(refuse).over(exact("100")).unwrap()).unwrap();
            assert_eq!((exact(&row["trim_yield"]), &row["refuse_description"]), (left, of_what), "{key}");
            trims += 1;
        }
        if !row["piece_measure"].is_empty() {
            assert_eq!(millilitres(&row["piece_measure"]), None, "{key}");
            let bought = sr28.one(ndb_no, &row["piece_measure"]).over(exact(&row["trim_yield"])).unwrap();
            assert_eq!(exact(&row["piece_weight_g_as_purchased"]), bought.rounded(1), "{key}");
            pieces += 1;
        }
        if !row["density_measure"].is_empty() {
            let volume = millilitres(&row["density_measure"]).unwrap_or_else(|| panic!("{key}: no volume"));
            let density = sr28.one(ndb_no, &row["density_measure"]).over(volume).unwrap();
            assert_eq!(exact(&row["density_g_per_ml"]), density.rounded(4), "{key}");
            densities += 1;
        }
    }
    assert_eq!((trims, pieces, densities), (206, 70, 95));
}

#[test]
fn the_table_says_of_each_figure_where_it_is_from() {
    let mut keys = BTreeSet::new();
    for row in table() {
        let key = &row["key"];
        assert!(keys.insert(key.clone()), "{key} stands twice");
        for (value, of_basis) in [
            ("trim_yield", "trim_basis"),
            ("piece_weight_g_as_purchased", "piece_basis"),
            ("density_g_per_ml", "density_basis"),
            ("press_yield_low", "press_basis"),
            ("press_yield_high", "press_basis"),
        ] {
            assert_eq!(row[value].is_empty(), row[of_basis].is_empty(), "{key} {value}");
        }
        assert!(row["us_case"].is_empty() || row["us_case"].ends_with("; from memory"), "{key}");
        assert_eq!(row["press_yield_low"].is_empty(), row["juice_density_assumed"].is_empty(), "{key}");
        assert!(row["typical_stage"] != "pressed" || !row["press_yield_low"].is_empty(), "{key}");
    }
}

/// Bounds by hand: what a buyer would call right, wide enough for season and size.
const RIGHT: [(&str, Figure, &str, &str); 24] = [
    ("apple", Figure::PieceWeight, "150", "230"),
    ("orange", Figure::PieceWeight, "120", "200"),
    ("lemon", Figure::PieceWeight, "90", "140"),
    ("lime", Figure::PieceWeight, "60", "100"),
    ("grapefruit", Figure::PieceWeight, "350", "600"),
    ("banana", Figure::PieceWeight, "150", "210"),
    ("mango", Figure::PieceWeight, "250", "550"),
    ("pineapple", Figure::PieceWeight, "1200", "2300"),
    ("cucumber", Figure::PieceWeight, "200", "400"),
    ("carrot", Figure::PieceWeight, "55", "150"),
    ("apple", Figure::TrimYield, "0.85", "0.95"),
    ("orange", Figure::TrimYield, "0.65", "0.78"),
    ("banana", Figure::TrimYield, "0.60", "0.70"),
    ("pineapple", Figure::TrimYield, "0.45", "0.60"),
    ("carrot", Figure::TrimYield, "0.80", "0.95"),
    ("celery", Figure::TrimYield, "0.70", "0.95"),
    ("kale", Figure::TrimYield, "0.60", "0.80"),
    ("watermelon", Figure::TrimYield, "0.50", "0.70"),
    ("milk_whole", Figure::Density, "1.02", "1.04"),
    ("honey", Figure::Density, "1.38", "1.45"),
    ("water", Figure::Density, "0.995", "1.002"),
    ("coconut_water", Figure::Density, "1.005", "1.03"),
    ("strawberry", Figure::Density, "0.9", "1.1"),
    ("olive_oil", Figure::Density, "0.90", "0.93"),
];

#[test]
fn what_is_brought_is_what_a_buyer_would_call_right() {
    let list = list();
    for (key, figure, low, high) in RIGHT {
        let row: &Kept = list.row(key).unwrap_or_else(|| panic!("no row {key}"));
        let brought = row.figures().into_iter().find(|it| it.figure == figure);
        let value = brought.unwrap_or_else(|| panic!("{key} has no {figure:?}")).value;
        assert!(exact(low) <= value && value <= exact(high), "{key} {figure:?}: {value}");
    }
}
