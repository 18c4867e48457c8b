use super::vessels::{Vessel, VesselKind, usual};
use super::{AtOdds, List, Spoilt, confirmed};
use crate::book::{Allergen, Basis, Brimful, Container, ContainerId, Figure, Ingredient, IngredientId, Weighing};
use crate::drink::fill::fill;
use crate::foundation::measure::{Mass, Share, System, Unit};
use crate::support::{amount, day, exact, share};

const FILE: &str = include_str!("../../../public/starter/ingredients.txt");

fn list() -> List {
    List::read(FILE).expect("the list reads")
}

fn keys(letters: &str, language: &str) -> Vec<String> {
    list().search(letters, language).iter().map(|row| row.key.clone()).collect()
}

fn first(letters: &str, language: &str) -> String {
    keys(letters, language).first().cloned().unwrap_or_default()
}

fn new(key: &str) -> Ingredient {
    list().row(key).expect("a row").ingredient(IngredientId::from_random(1), "en-US")
}

/// A weighing of which nothing was cut away.
fn weighed_whole() -> Weighing {
    let all = amount("100 g");
    Weighing { day: day("2026-11-20"), bought: all, trimmed: Some(all), pressed: None }
}

fn stands(ingredient: &Ingredient) -> Vec<(Figure, String, Basis)> {
    ingredient.starting_figures().map(|it| (it.figure, it.value.to_string(), it.basis)).collect()
}

#[test]
fn a_few_letters_find_what_is_meant() {
    assert_eq!(first("car", "en-US"), "carrot");
    assert_eq!(first("CARROT", "en-US"), "carrot");
    assert_eq!(first("gin", "en-US"), "ginger");
    assert_eq!(first("  green   app", "en-US"), "apple_green");
    assert_eq!(keys("app", "en-US")[..3], ["apple", "apple_juice", "applesauce"]);
    assert_eq!(first("milk", "en-US"), "milk_whole");
    assert_eq!(keys("", "en-US").len(), 253);
    assert!(keys("qqq", "en-US").is_empty());
}

#[test]
fn accents_and_case_do_not_count() {
    assert_eq!(first("platano", "es-US"), "banana");
    assert_eq!(first("PIÑA", "es-US"), "pineapple");
    assert_eq!(first("pina", "es"), "pineapple");
    // n with a tilde of its own behind it.
    assert_eq!(first("pin\u{303}a", "es"), "pineapple");
    assert_eq!(first("weisskohl", "de"), "cabbage_green");
    assert_eq!(first("apfel", "de"), "apple");
    assert_eq!(first("jalapeno", "en-US"), "jalapeno");
    assert_eq!(first("boisson a l'avoine", "fr"), "oat_milk");
}

#[test]
fn another_language_is_the_second_choice() {
    // "Pommes" is French; "Pomegranates" is the name on an English screen.
    assert_eq!(keys("pom", "en-US")[..2], ["pomegranate", "pomegranate_juice"]);
    assert!(keys("pom", "en-US").contains(&"apple".to_string()));
    assert_eq!(first("zanahoria", "en-US"), "carrot");
    // Within a word of another language nothing is found.
    assert!(keys("anahor", "en-US").is_empty() && !keys("anahor", "es").is_empty());
    // On a Spanish screen "car" begins Carambola, then Carrots in English; it stands within "azúcar" too.
    let of_car = keys("car", "es-US");
    let place = |key: &str| of_car.iter().position(|it| it == key).unwrap();
    assert!(place("star_fruit") < place("carrot") && place("carrot") < place("sugar"));
    // A language that it does not have is read by all that it has.
    assert_eq!(first("carr", "pt-BR"), "carrot");
    assert_eq!(list().row("carrot").unwrap().name("pt-BR"), "Carrots");
    assert_eq!(list().row("carrot").unwrap().name("es-US"), "Zanahoria");
}

#[test]
fn a_new_ingredient_has_all_that_its_row_brings() {
    // By hand from the table: trim 0.89, juice (0.45 + 0.60) / 2 = 0.525, 68.5 g a piece.
    let carrots = new("carrot");
    assert_eq!((carrots.name.as_str(), carrots.sold_as.as_str()), ("Carrots", "carrot"));
    // A label in the United States is in English, whatever language the owner reads.
    let label =
        |key: &str, language| list().row(key).unwrap().ingredient(IngredientId::from_random(1), language).sold_as;
    assert_eq!((label("carrot", "es-US"), label("carrot", "de-DE")), ("carrot".into(), String::new()));
    assert_eq!((label("milk_whole", "en-US"), label("milk_whole", "es-US")), (String::new(), "whole milk".into()));
    assert_eq!(
        stands(&carrots),
        [
            (Figure::TrimYield, "0.89".into(), Basis::Sr28),
            (Figure::PressYield, "0.525".into(), Basis::Memory),
            (Figure::Density, "1".into(), Basis::Assumed),
            (Figure::JuiceDensity, "1.04".into(), Basis::Assumed),
            (Figure::PieceWeight, "68.5".into(), Basis::Sr28),
        ]
    );
    assert_eq!((carrots.allergens, carrots.packs), (None, Vec::new()));
    // Strawberries can be pressed, but a recipe usually means them trimmed.
    let strawberries: Vec<Figure> = new("strawberry").starting_figures().map(|it| it.figure).collect();
    assert_eq!(strawberries, [Figure::TrimYield, Figure::Density, Figure::PieceWeight]);
    // Milk is bought as it is poured, and nobody says that it holds milk but its owner.
    let milk = new("milk_whole");
    assert_eq!(stands(&milk), [(Figure::Density, "1.0313".into(), Basis::Sr28)]);
    assert_eq!(milk.allergens, None);
    let row = list();
    let row = row.row("milk_whole").unwrap();
    assert_eq!(row.certain_allergens(), [Allergen::Milk]);
}

/// A cup of powder is far lighter than a cup of purée, so the figure of purée is not offered for it.
#[test]
fn powders_are_known() {
    let list = list();
    for key in ["protein_whey", "protein_pea", "cocoa_powder", "spirulina"] {
        assert!(list.row(key).unwrap().is_powder(), "{key}");
    }
    for key in ["carrot", "orange"] {
        assert!(!list.row(key).unwrap().is_powder(), "{key}");
    }
}

#[test]
fn a_spoon_weight_is_no_density_in_the_drink() {
    for row in list().rows() {
        let ingredient = row.ingredient(IngredientId::from_random(1), "en");
        if row.spoon_density().is_some() {
            assert_eq!(ingredient.density, None, "{}", row.key);
        }
    }
    let whey = list();
    let (density, basis) = whey.row("protein_whey").unwrap().spoon_density().unwrap();
    assert_eq!((density.grams_per_millilitre(), basis), (exact("0.4099"), Basis::Sr28));
    // Only if the owner says so, and then it is marked.
    let taken = whey.row("protein_whey").unwrap().measured_by_spoon(&new("protein_whey")).unwrap();
    assert_eq!(stands(&taken), [(Figure::Density, "0.4099".into(), Basis::Sr28)]);
    assert_eq!(whey.row("protein_whey").unwrap().measured_by_spoon(&taken), None);
    assert_eq!(whey.row("carrot").unwrap().measured_by_spoon(&new("carrot")), None);
}

#[test]
fn nothing_that_was_typed_is_overwritten() {
    let id = IngredientId::from_random(1);
    let typed = Ingredient {
        trim_yield: share("0.8"),
        piece_weight: Some(Mass::from_grams(exact("100"))),
        sold_as: "orange roots".into(),
        ..Ingredient::named(id, "My carrots")
    };
    let list = list();
    let row = list.row("carrot").unwrap();
    let filled = row.filled(&typed, "en-US").expect("juice and densities are empty");
    assert_eq!((filled.trim_yield, filled.piece_weight), (typed.trim_yield, typed.piece_weight));
    assert_eq!((filled.name.as_str(), filled.sold_as.as_str()), ("My carrots", "orange roots"));
    let brought: Vec<Figure> = filled.starting_figures().map(|it| it.figure).collect();
    assert_eq!(brought, [Figure::PressYield, Figure::Density, Figure::JuiceDensity]);
    // Once more brings nothing more.
    assert_eq!(row.filled(&filled, "en-US"), None);
    // A yield of 1 that stands beside weighings was weighed.
    let weighed = Ingredient { weighings: vec![weighed_whole()], ..Ingredient::named(id, "Carrots") };
    assert_eq!(row.filled(&weighed, "en-US").unwrap().trim_yield, Share::WHOLE);
    // Figures of one row do not mix with those of another.
    assert_eq!(list.row("apple").unwrap().filled(&filled, "en-US"), None);
}

#[test]
fn a_mark_ends_by_typing_and_by_confirming() {
    let carrots = new("carrot");
    let typed = Ingredient { press_yield: Some(share("0.6")), ..carrots.clone() };
    assert!(typed.starting_figures().all(|it| it.figure != Figure::PressYield));
    let confirmed = confirmed(&carrots, Figure::TrimYield);
    assert_eq!(confirmed.trim_yield, carrots.trim_yield);
    assert!(confirmed.starting_figures().all(|it| it.figure != Figure::TrimYield));
    assert_eq!(confirmed.starting_figures().count(), 4);
    // What was confirmed stays so when the row is picked again.
    let list = list();
    assert_eq!(list.row("carrot").unwrap().filled(&confirmed, "en-US"), None);
}

#[test]
fn figures_that_do_not_go_together_are_found() {
    let list = list();
    let apple = list.row("apple").unwrap();
    let apples = new("apple");
    assert_eq!(apple.at_odds(&apples), None);
    // 202.2 g as bought stands on 182 g edible and 90 %.
    let peeled = Ingredient { trim_yield: share("0.7"), ..apples.clone() };
    assert_eq!(apple.at_odds(&peeled), Some(AtOdds::OtherTrimYield { list: share("0.90"), own: share("0.7") }));
    let nearly = Ingredient { trim_yield: share("0.88"), ..apples.clone() };
    assert_eq!(apple.at_odds(&nearly), None);
    // By hand: 202.2 * 0.9 = 181.98 g: who types 182 g weighed it trimmed.
    let trimmed = Ingredient { piece_weight: Some(Mass::from_grams(exact("182"))), ..apples.clone() };
    let [list, own] = ["202.2", "182"].map(|grams| Mass::from_grams(exact(grams)));
    assert_eq!(apple.at_odds(&trimmed), Some(AtOdds::TrimmedPiece { list, own }));
    let small = Ingredient { piece_weight: Some(Mass::from_grams(exact("150"))), ..apples };
    assert_eq!(apple.at_odds(&small), None);
}

#[test]
fn a_case_is_suggested_where_the_trade_names_one() {
    let list = list();
    let contents = |key: &str| list.row(key).unwrap().contents(System::UsCustomary);
    for (key, is) in [
        ("carrot", "50 lb"),
        ("milk_whole", "4 gal"),
        ("strawberry", "8 lb"),
        ("avocado_hass", "25 lb"),
        ("mango", "4 kg"),
        ("spinach_baby", "10 lb"),
        ("cucumber", "24 ea"),
        ("oat_milk", "384 fl oz"),
        ("ice_cream_vanilla", "3 gal"),
    ] {
        assert_eq!(contents(key), Some(amount(is)), "{key}");
    }
    for none in ["pineapple", "kale", "pumpkin_puree", "simple_syrup", "water"] {
        assert_eq!(contents(none), None, "{none}");
    }
    assert_eq!(list.row("carrot").unwrap().contents(System::Metric), None);
}

#[test]
fn a_list_that_is_cut_or_spoilt_is_none() {
    assert_eq!(List::read(""), Err(Spoilt::OtherFile));
    assert_eq!(List::read("<!doctype html>\n<p>Not found</p>\n"), Err(Spoilt::OtherFile));
    assert_eq!(List::read(&FILE.replacen("starter 1 ", "starter 2 ", 1)), Err(Spoilt::OtherFile));
    assert_eq!(List::read(&format!("{FILE}{}", " ".repeat(200_000))), Err(Spoilt::OtherFile));
    for end in [FILE.len() - 1, FILE.len() / 2, 30] {
        let end = (0..=end).rev().find(|at| FILE.is_char_boundary(*at)).unwrap();
        assert_eq!(List::read(&FILE[..end]), Err(Spoilt::Cut), "{end}");
    }
    let cut_at_a_line = FILE.lines().take(100).map(|line| format!("{line}\n")).collect::<String>();
    assert_eq!(List::read(&cut_at_a_line), Err(Spoilt::Cut));
}

#[test]
fn a_line_that_cannot_be_spoils_the_list() {
    let spoilt = |from: &str, to: &str| {
        let changed = FILE.replacen(from, to, 1);
        assert_ne!(changed, FILE, "{from} is there");
        List::read(&changed)
    };
    for (from, to) in [
        ("\t0.90 sr28\t202.2 sr28\t", "\t1.90 sr28\t202.2 sr28\t"),
        ("\t0.90 sr28\t202.2 sr28\t", "\t0 sr28\t202.2 sr28\t"),
        ("\t0.90 sr28\t202.2 sr28\t", "\t-0.90 sr28\t202.2 sr28\t"),
        ("\t0.90 sr28\t202.2 sr28\t", "\t0.90\t202.2 sr28\t"),
        ("\t0.90 sr28\t202.2 sr28\t", "\t0.90 hearsay\t202.2 sr28\t"),
        ("\t0.90 sr28\t202.2 sr28\t", "\t\t202.2 sr28\t"),
        ("\t0.90 sr28\t202.2 sr28\t", "\t0.90 sr28\t0 sr28\t"),
        ("\t09003\t", "\t\t"),
        ("\t09003\t", "\t9003\t"),
        ("\t1.04 assumed\t", "\t10.4 assumed\t"),
        ("\t1.04 assumed\t", "\t\t"),
        ("\t0.65 0.75 from-memory\t", "\t0.75 0.65 from-memory\t"),
        ("apple\tApples\t", "apple\t\t"),
        ("apple\tApples\t", "apple\tAp\u{7}ples\t"),
        ("apple\tApples\t", "Apple\tApples\t"),
        ("\tapple\traw", "\tapple\tcooked"),
        ("\tpressed\n", "\tsqueezed\n"),
        ("\tpressed\n", "\tpressed\tmore\n"),
    ] {
        assert_eq!(spoilt(from, to), Err(Spoilt::Line(1)), "{to}");
    }
    // The second line is what is there already.
    for taken in ["apple_green\tApples\t", "apple\tGreen apples\t"] {
        assert_eq!(spoilt("apple\tApples\t", taken), Err(Spoilt::Line(2)), "{taken}");
    }
    assert!(matches!(spoilt("\tsoybeans?;milk\t", "\tmilk;soybeans?\t"), Err(Spoilt::Line(_))));
    assert!(matches!(spoilt("\ttree-nuts (almonds)\t", "\ttree-nuts (almonds\t"), Err(Spoilt::Line(_))));
    assert!(matches!(spoilt(" liquid\t", " gas\t"), Err(Spoilt::Line(_))));
}

#[test]
fn a_usual_bottle_is_filled_to_the_size_that_it_goes_by() {
    let all: Vec<Vessel> = usual(System::UsCustomary).collect();
    let sizes = |kind, unit| {
        let of = all.iter().filter(|it| it.kind == kind && it.labeled.unit == unit);
        of.map(|it| it.labeled.number.to_string()).collect::<Vec<_>>()
    };
    assert_eq!(sizes(VesselKind::Bottle, Unit::UsFluidOunce), ["2", "8", "12", "16", "32", "64"]);
    assert_eq!(sizes(VesselKind::Cup, Unit::UsFluidOunce), ["12", "16", "20", "24"]);
    assert_eq!(sizes(VesselKind::Bottle, Unit::Millilitre), ["250", "330", "500", "750"]);
    assert_eq!(sizes(VesselKind::Bottle, Unit::Litre), ["1"]);
    assert_eq!(sizes(VesselKind::Cup, Unit::Millilitre), ["200", "300", "400", "500"]);
    for vessel in &all {
        let container = vessel.container(ContainerId::from_random(1), "A bottle".into());
        let filled = fill(&container).unwrap();
        assert_eq!(Some(filled.volume), vessel.labeled.volume().unwrap());
        assert!(container.is_starting() && filled.brimful > filled.volume);
        assert_eq!(container.declared, Some(vessel.labeled));
        // Weighed, it is the owner's.
        let weighed = Container { brimful: Brimful::Weighed(amount("500 mL")), ..container };
        assert!(!weighed.is_starting());
    }
    let first = |system| usual(system).next().unwrap().labeled;
    assert_eq!((first(System::UsCustomary), first(System::Metric)), (amount("2 fl oz"), amount("250 mL")));
    assert_eq!(first(System::Imperial), amount("250 mL"));
}
