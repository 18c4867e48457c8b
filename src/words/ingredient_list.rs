//! The list of ingredients as a label has it.

use std::ops::Range;

use super::Speaker;
use crate::book::{Allergen, Book, Drink, Ingredient, Key};
use crate::drink::label::{Law, Listed, ListedAs, names_it, nouns, places_of, says_juice};
use crate::foundation::measure::is_seen;
use crate::say;

/// A piece of a list of ingredients.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Run {
    /// Its text; in capitals where it is an allergen that stands out, so that a copy without bold
    /// letters has it too.
    pub text: String,
    /// Whether it is an allergen that stands out.
    pub stands_out: bool,
}

impl Run {
    fn usual(text: &str) -> Run {
        Run { text: text.to_string(), stands_out: false }
    }

    /// No letters but those of English are put in capitals: the names of allergens have no others.
    fn standing_out(text: &str) -> Run {
        Run { text: text.to_ascii_uppercase(), stands_out: true }
    }
}

/// The list of ingredients: names as sold, most by weight first, the parts of a mixture in
/// parentheses (21 CFR 101.4(a)(1) and (b)(2), text).
///
/// In the European Union and the United Kingdom each allergen stands out in the list (Regulation
/// (EU) No 1169/2011, Art. 21(1)(b), text): where a name says it, there; where none does, after
/// the name in parentheses. What the drink's name names has its percentage by weight (Art. 22,
/// second-hand). In the United States "Contains" says the allergens, and the list is plain.
pub fn ingredient_list(listed: &[Listed], drink: &Drink, book: &Book, law: Law, speaker: &Speaker) -> Vec<Run> {
    let mut runs = Vec::new();
    for (place, listed) in listed.iter().enumerate() {
        if place > 0 {
            runs.push(Run::usual(", "));
        }
        let food = match listed.what {
            ListedAs::Food(id) | ListedAs::Juice(id) => book.ingredient(id),
            ListedAs::Water => None,
        };
        let name = listed_name(listed.what, book);
        let parts = food.and_then(|food| food.parts.as_ref()).filter(|parts| is_seen(parts));
        let parts = parts.map(|parts| format!(" ({parts})")).unwrap_or_default();
        match (law, food) {
            (Law::UnitedStates, _) | (Law::European, None) => runs.push(Run::usual(&format!("{name}{parts}"))),
            (Law::European, Some(food)) => {
                let named = names_it(&drink.name, &food.name) || names_it(&drink.name, &name);
                let percent = if named { format!(" {}", speaker.percent(listed.share)) } else { String::new() };
                runs.extend(european(food, &format!("{name}{percent}{parts}")));
            }
        }
    }
    runs
}

/// What the list of a label calls it: the name that the owner gave it for labels, else its name.
pub fn listed_name(what: ListedAs, book: &Book) -> String {
    let food = |id| book.ingredient(id).filter(|food| is_seen(&food.sold_as));
    match what {
        ListedAs::Water => say!(labels::water).to_string(),
        ListedAs::Food(id) => food(id).map_or_else(|| book.name(Key::Ingredient(id)), |food| food.sold_as.clone()),
        ListedAs::Juice(id) => match food(id).map(|food| food.sold_as.as_str()) {
            Some(juice) if says_juice(juice) => juice.to_string(),
            Some(fruit) => say!(labels::fruit_juice, fruit = fruit),
            None => say!(labels::juice_of, name = book.name(Key::Ingredient(id))),
        },
    }
}

/// A name with its parts, each allergen of it standing out.
fn european(food: &Ingredient, text: &str) -> Vec<Run> {
    let mut places: Vec<Range<usize>> = Vec::new();
    let mut unsaid: Vec<&str> = Vec::new();
    for allergen in food.allergens.iter().flatten() {
        let said = nouns(*allergen).iter().flat_map(|noun| places_of(noun, text));
        let before = places.len();
        places.extend(said);
        let is_said = places.len() > before;
        if *allergen == Allergen::TreeNuts && is_seen(&food.nuts) {
            for nut in food.nuts.split([',', ';', '/']).map(str::trim).filter(|nut| is_seen(nut)) {
                match places_of(nut, text) {
                    nowhere if nowhere.is_empty() => unsaid.push(nut),
                    found => places.extend(found),
                }
            }
        } else if !is_said {
            unsaid.push(to_name(*allergen));
        }
    }
    let mut runs = standing_out(text, &places);
    for (place, allergen) in unsaid.iter().enumerate() {
        runs.push(Run::usual(if place == 0 { " (" } else { ", " }));
        runs.push(Run::standing_out(allergen));
    }
    if !unsaid.is_empty() {
        runs.push(Run::usual(")"));
    }
    runs
}

/// A text whose bytes in these places stand out.
fn standing_out(text: &str, places: &[Range<usize>]) -> Vec<Run> {
    let stands_out = |at: usize| places.iter().any(|place| place.contains(&at));
    let mut runs: Vec<(String, bool)> = Vec::new();
    for (at, letter) in text.char_indices() {
        match runs.last_mut() {
            Some((run, out)) if *out == stands_out(at) => run.push(letter),
            _ => runs.push((letter.to_string(), stands_out(at))),
        }
    }
    runs.into_iter().map(|(run, out)| if out { Run::standing_out(&run) } else { Run::usual(&run) }).collect()
}

/// What is put beside a name that does not say the allergen.
fn to_name(allergen: Allergen) -> &'static str {
    match allergen {
        Allergen::Wheat => say!(labels::beside_wheat),
        Allergen::OtherGluten => say!(labels::beside_other_gluten),
        Allergen::Crustaceans => say!(labels::beside_crustaceans),
        Allergen::Eggs => say!(labels::beside_eggs),
        Allergen::Fish => say!(labels::beside_fish),
        Allergen::Peanuts => say!(labels::beside_peanuts),
        Allergen::Soybeans => say!(labels::beside_soybeans),
        Allergen::Milk => say!(labels::beside_milk),
        Allergen::TreeNuts => say!(labels::beside_tree_nuts),
        Allergen::Celery => say!(labels::beside_celery),
        Allergen::Mustard => say!(labels::beside_mustard),
        Allergen::Sesame => say!(labels::beside_sesame),
        Allergen::Sulphites => say!(labels::beside_sulfites),
        Allergen::Lupin => say!(labels::beside_lupin),
        Allergen::Molluscs => say!(labels::beside_mollusks),
    }
}
