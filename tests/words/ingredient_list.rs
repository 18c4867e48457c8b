//! The list of ingredients of a label, by law.

use brimwright::book::{Allergen, Book, Drink, Edit, Ingredient, IngredientId, Record, Settings};
use brimwright::drink::label::{Law, Listed, ListedAs};
use brimwright::foundation::measure::{Exact, Mass, Share, System};

use crate::support::speaker;
use brimwright::words::{self, Run};

const FOOD: IngredientId = IngredientId::from_random(1);

fn book_of(food: Ingredient) -> Book {
    let mut book = Book::new(Settings::new("My book"));
    book.apply(&Edit::Put(Record::Ingredient(food))).expect("an ingredient holds");
    book
}

fn food(name: &str, allergens: &[Allergen]) -> Ingredient {
    Ingredient { allergens: Some(allergens.to_vec()), ..Ingredient::named(FOOD, name) }
}

fn drink(name: &str) -> Drink {
    Drink { name: name.into(), ..crate::support::drink(1, "1 L", []) }
}

fn listed(what: ListedAs, thousandths: i64) -> Listed {
    Listed { what, mass: Mass::from_grams(Exact::ONE), share: Share::from_fraction(Exact::new(thousandths, 3)) }
}

/// A list with what stands out in brackets.
fn shown(runs: Vec<Run>) -> String {
    runs.into_iter().map(|run| if run.stands_out { format!("[{}]", run.text) } else { run.text }).collect()
}

/// The list of a drink that is all of this.
fn of(what: ListedAs, food: Ingredient, law: Law) -> String {
    let list = [listed(what, 1000)];
    let speaker = speaker(System::UsCustomary);
    shown(words::ingredient_list(&list, &drink("Rosy Field"), &book_of(food), law, &speaker))
}

fn european(food: Ingredient) -> String {
    of(ListedAs::Food(FOOD), food, Law::European)
}

/// Regulation (EU) No 1169/2011, Art. 21(1)(b), text: the name as in Annex II is "emphasised
/// through a typeset that clearly distinguishes it from the rest of the list of ingredients". The
/// names that do not say it: Food Standards Agency, Food allergen labelling technical guidance,
/// part 1, 29 and 30, text ("spelt (wheat)", "barley malt extract"); whey, cod and prawns are
/// worked the same way.
#[test]
fn an_allergen_stands_out_where_the_name_says_it_or_beside_it() {
    use Allergen::{Celery, Crustaceans, Fish, Milk, OtherGluten, Peanuts, Soybeans, Sulphites, TreeNuts, Wheat};
    for (name, allergens, expected) in [
        ("Whole milk", &[Milk][..], "Whole [MILK]"),
        ("Peanut butter", &[Peanuts], "[PEANUT] butter"),
        ("Rolled oats", &[OtherGluten], "Rolled [OATS]"),
        ("Barley malt extract", &[OtherGluten], "[BARLEY] malt extract"),
        ("Spelt flakes", &[Wheat], "Spelt flakes ([WHEAT])"),
        ("Whey powder", &[Milk], "Whey powder ([MILK])"),
        ("Tofu", &[Soybeans], "Tofu ([SOYA])"),
        ("Cod", &[Fish], "Cod ([FISH])"),
        ("Prawns", &[Crustaceans], "Prawns ([CRUSTACEANS])"),
        ("Granola", &[OtherGluten, Milk], "Granola ([CEREAL WITH GLUTEN], [MILK])"),
        ("Dried apricots", &[Sulphites], "Dried apricots ([SULPHITES])"),
        ("Apricots with sulphur dioxide", &[Sulphites], "Apricots with [SULPHUR DIOXIDE]"),
        ("Celery", &[Celery], "[CELERY]"),
        ("Almond butter", &[TreeNuts], "[ALMOND] butter"),
        ("Trail mix", &[TreeNuts], "Trail mix ([NUTS])"),
        // What it does not hold is not emphasised, whatever it is called.
        ("Coconut milk", &[], "Coconut milk"),
        ("Almond milk", &[TreeNuts], "[ALMOND] milk"),
        ("Milkshake mix, eggplant", &[Milk, Allergen::Eggs], "Milkshake mix, eggplant ([EGG], [MILK])"),
    ] {
        let mut allergens = allergens.to_vec();
        allergens.sort();
        assert_eq!(european(food(name, &allergens)), expected);
    }
    // Each of the fourteen is said, whatever the name; nuts by their kind.
    for allergen in Allergen::ALL {
        let said = european(food("X", &[*allergen]));
        assert!(said.starts_with("X ([") && said.ends_with("])"), "{said}");
    }
}

#[test]
fn each_nut_is_named() {
    let with = |name: &str, nuts: &str| Ingredient { nuts: nuts.into(), ..food(name, &[Allergen::TreeNuts]) };
    assert_eq!(european(with("Almond butter", "almonds")), "[ALMOND] butter");
    assert_eq!(european(with("Almond butter", "almonds, cashews")), "[ALMOND] butter ([CASHEWS])");
    assert_eq!(european(with("Nut milk", "brazil nuts / hazelnuts")), "[NUT] milk ([BRAZIL NUTS], [HAZELNUTS])");
    assert_eq!(european(with("Pesto with pine nuts", "pine nuts")), "Pesto with [PINE NUTS]");
}

/// "Names of the ingredients in parentheses": 21 CFR 101.4(b)(2), text.
#[test]
fn parts_stand_in_parentheses() {
    let parts = |parts: &str, allergens| Ingredient { parts: Some(parts.into()), ..food("Granola", allergens) };
    let granola = || parts("oats, almonds, honey", &[Allergen::OtherGluten, Allergen::Milk, Allergen::TreeNuts]);
    assert_eq!(european(granola()), "Granola ([OATS], [ALMONDS], honey) ([MILK])");
    let plain = of(ListedAs::Food(FOOD), granola(), Law::UnitedStates);
    assert_eq!(plain, "Granola (oats, almonds, honey)", "the United States say it by Contains");
    assert_eq!(european(parts("  ", &[])), "Granola", "parts that nobody knows are not guessed");
}

#[test]
fn names_are_as_sold() {
    let sold_as = |sold_as: &str| Ingredient { sold_as: sold_as.into(), ..food("Apples, 40 lb", &[]) };
    let us = |what, food| of(what, food, Law::UnitedStates);
    assert_eq!(us(ListedAs::Food(FOOD), sold_as("")), "Apples, 40 lb");
    assert_eq!(us(ListedAs::Food(FOOD), sold_as("apple")), "apple");
    assert_eq!(us(ListedAs::Juice(FOOD), sold_as("apple")), "apple juice");
    assert_eq!(us(ListedAs::Juice(FOOD), sold_as("cloudy apple juice")), "cloudy apple juice");
    assert_eq!(us(ListedAs::Juice(FOOD), sold_as(" ")), "juice of Apples, 40 lb");
    assert_eq!(us(ListedAs::Water, sold_as("apple")), "water");
}

/// Regulation (EU) No 1169/2011, Art. 22: the quantity of an ingredient that "appears in the name of
/// the food", second-hand.
#[test]
fn what_the_drinks_name_names_has_its_percentage() {
    let food = Ingredient { sold_as: "strawberries".into(), ..food("Erdbeeren", &[]) };
    let list = [listed(ListedAs::Food(FOOD), 394), listed(ListedAs::Water, 606)];
    let said = |name, law| {
        let speaker = speaker(System::UsCustomary);
        shown(words::ingredient_list(&list, &drink(name), &book_of(food.clone()), law, &speaker))
    };
    assert_eq!(said("Strawberry Field", Law::European), "strawberries 39.4%, water");
    assert_eq!(said("Rosy Field", Law::European), "strawberries, water");
    assert_eq!(said("Strawberry Field", Law::UnitedStates), "strawberries, water");
}
