//! Allergens in the words of two laws, and in plain ones.

use crate::book::{Allergen, Book, IngredientId, Key};
use crate::drink::label::{Allergens, Law, UsedAround};
use crate::say;

/// A plain name, for the card behind the counter.
pub fn allergen(allergen: Allergen) -> &'static str {
    match allergen {
        Allergen::Sulphites => say!(labels::sulfites),
        Allergen::Molluscs => say!(labels::mollusks),
        Allergen::Wheat => say!(labels::wheat),
        Allergen::OtherGluten => say!(labels::other_gluten),
        Allergen::Crustaceans => say!(labels::crustaceans),
        Allergen::Eggs => say!(labels::eggs),
        Allergen::Fish => say!(labels::fish),
        Allergen::Peanuts => say!(labels::peanuts),
        Allergen::Soybeans => say!(labels::soy),
        Allergen::Milk => say!(labels::milk),
        Allergen::TreeNuts => say!(labels::tree_nuts),
        Allergen::Celery => say!(labels::celery),
        Allergen::Mustard => say!(labels::mustard),
        Allergen::Sesame => say!(labels::sesame),
        Allergen::Lupin => say!(labels::lupin),
    }
}

/// A plain name where an ingredient is marked with it. Sulfites count from 10 ppm on in the United
/// States (21 CFR 101.100(a)(4), text), above 10 mg/kg or 10 mg/L in the European Union (Regulation
/// (EU) No 1169/2011, Annex II, point 12).
pub fn allergen_to_mark(found: Allergen, law: Law) -> &'static str {
    match (found, law) {
        (Allergen::Sulphites, Law::UnitedStates) => say!(labels::sulfites_to_mark),
        (Allergen::Sulphites, Law::European) => say!(labels::sulfites_to_mark_european),
        _ => allergen(found),
    }
}

/// What is declared besides the nine in the United States (21 CFR 101.100(a)(4), text): sulfites,
/// from 10 ppm of the drink on. Returns an empty text if no ingredient is marked with them.
pub fn also_declare(allergens: &Allergens, book: &Book) -> String {
    let sulfites = allergens.present.iter().find(|(found, _)| *found == Allergen::Sulphites);
    match sulfites {
        Some((_, ids)) => {
            let names: Vec<String> = ids.iter().map(|id| book.name(Key::Ingredient(*id))).collect();
            say!(labels::sulfites_to_declare, names = names.join(", "))
        }
        None => String::new(),
    }
}

/// Its name among the nine of the United States (21 U.S.C. 321(qq)), where it is one of them.
pub fn allergen_in_united_states(allergen: Allergen) -> Option<&'static str> {
    match allergen {
        Allergen::Wheat => Some(say!(labels::nine_wheat)),
        Allergen::Crustaceans => Some(say!(labels::nine_crustaceans)),
        Allergen::Eggs => Some(say!(labels::nine_eggs)),
        Allergen::Fish => Some(say!(labels::nine_fish)),
        Allergen::Peanuts => Some(say!(labels::nine_peanuts)),
        Allergen::Soybeans => Some(say!(labels::nine_soybeans)),
        Allergen::Milk => Some(say!(labels::nine_milk)),
        Allergen::TreeNuts => Some(say!(labels::nine_tree_nuts)),
        Allergen::Sesame => Some(say!(labels::nine_sesame)),
        Allergen::OtherGluten
        | Allergen::Celery
        | Allergen::Mustard
        | Allergen::Sulphites
        | Allergen::Lupin
        | Allergen::Molluscs => None,
    }
}

/// Whether a label must say it by this law: in the United States the nine, and sulfites (21 CFR
/// 101.100(a)(4), text).
pub fn of_law(found: Allergen, law: Law) -> bool {
    match law {
        Law::UnitedStates => found.in_united_states() || found == Allergen::Sulphites,
        Law::European => true,
    }
}

/// Its name among the fourteen of the European Union (Regulation (EU) No 1169/2011, Annex II).
pub fn allergen_in_european_union(allergen: Allergen) -> &'static str {
    match allergen {
        Allergen::Wheat => say!(labels::fourteen_wheat),
        Allergen::OtherGluten => say!(labels::fourteen_other_gluten),
        Allergen::Crustaceans => say!(labels::fourteen_crustaceans),
        Allergen::Eggs => say!(labels::fourteen_eggs),
        Allergen::Fish => say!(labels::fourteen_fish),
        Allergen::Peanuts => say!(labels::fourteen_peanuts),
        Allergen::Soybeans => say!(labels::fourteen_soybeans),
        Allergen::Milk => say!(labels::fourteen_milk),
        Allergen::TreeNuts => say!(labels::fourteen_tree_nuts),
        Allergen::Celery => say!(labels::fourteen_celery),
        Allergen::Mustard => say!(labels::fourteen_mustard),
        Allergen::Sesame => say!(labels::fourteen_sesame),
        Allergen::Sulphites => say!(labels::fourteen_sulfites),
        Allergen::Lupin => say!(labels::fourteen_lupin),
        Allergen::Molluscs => say!(labels::fourteen_mollusks),
    }
}

/// The name of an allergen, tree nuts with their kinds: "Tree nuts: almonds, cashews".
fn with_nuts(name: &str, found: Allergen, allergens: &Allergens) -> String {
    if found == Allergen::TreeNuts && !allergens.nuts.is_empty() {
        say!(labels::allergen_with_nuts, allergen = name, nuts = allergens.nuts.join(", "))
    } else {
        name.to_string()
    }
}

/// The allergens of a drink as a law lists them: "Milk, Tree nuts (almonds)"; never "none" while an
/// ingredient is not stated.
pub fn allergens_by_law(allergens: &Allergens, law: Law) -> String {
    let said = allergens_in_it(allergens, law);
    match used_around(&allergens.used_around) {
        around if around.is_empty() => said,
        shared => say!(labels::allergens_and_shared, allergens = said, shared = shared),
    }
}

/// The same without those that are only used around the drink.
fn allergens_in_it(allergens: &Allergens, law: Law) -> String {
    let name = |found: Allergen| {
        let name = match law {
            Law::UnitedStates => allergen_in_united_states(found)?,
            Law::European => allergen_in_european_union(found),
        };
        let is_known = found == Allergen::TreeNuts && !allergens.nuts.is_empty();
        Some(if is_known {
            say!(labels::allergen_with_nuts_on_label, allergen = name, nuts = allergens.nuts.join(", "))
        } else {
            name.to_string()
        })
    };
    or_none(allergens.present.iter().filter_map(|(found, _)| name(*found)).collect(), allergens)
}

/// What is marked in a drink, also what the law of the book does not name: "Celery, Milk". While an ingredient is not
/// stated it says so: "Not checked", "Milk · 3 not checked".
pub fn allergens_marked(allergens: &Allergens) -> String {
    or_none(allergens.present.iter().map(|(found, _)| allergen(*found).to_string()).collect(), allergens)
}

fn or_none(names: Vec<String>, allergens: &Allergens) -> String {
    match (names.is_empty(), allergens.open().count()) {
        (true, _) if allergens.nothing_in_it => say!(labels::none_marked_so_far).to_string(),
        (true, 0) => say!(labels::none).to_string(),
        (true, _) => say!(labels::not_checked).to_string(),
        (false, 0) => names.join(", "),
        (false, open) => say!(labels::marked_and_not_checked, allergens = names.join(", "), ingredients = open),
    }
}

/// What counts as a tree nut, by law and year. United States: FDA guidance of January 2025, twelve
/// nuts (how many, and what is in and out: second-hand; the twelve from memory). European Union:
/// Regulation (EU) No 1169/2011, Annex II, point 8, exhaustive by notice 2017/C 428/01 (text).
pub fn tree_nuts(law: Law) -> &'static str {
    match law {
        Law::UnitedStates => say!(labels::tree_nuts_united_states),
        Law::European => say!(labels::tree_nuts_european),
    }
}

/// What else is used where a drink is made, beside every list of allergens: "Made where these are
/// used: Peanuts, Milk." Returns an empty text if the whole book holds none of them.
pub fn used_around(around: &UsedAround) -> String {
    let names: Vec<&str> = around.held.iter().map(|it| allergen(*it)).collect();
    let used =
        if names.is_empty() { String::new() } else { say!(labels::made_where_used, allergens = names.join(", ")) };
    match (used.is_empty(), around.not_all_stated) {
        (_, false) => used,
        (true, true) => say!(labels::others_not_checked).to_string(),
        (false, true) => [&used, say!(labels::others_not_checked)].join(" "),
    }
}

/// What a drink holds, for the card: never "none" while an ingredient is not stated.
pub fn allergens(allergens: &Allergens, book: &Book) -> String {
    let law = Law::of(book.settings());
    if allergens.nothing_in_it {
        return say!(labels::recipe_is_empty).to_string();
    }
    if allergens.are_none() {
        let none = say!(labels::no_allergens);
        return match used_around(&allergens.used_around) {
            around if around.is_empty() => none.to_string(),
            around => [none, &around].join(" "),
        };
    }
    let names = |ids: &[IngredientId]| {
        let names: Vec<String> = ids.iter().map(|id| book.name(Key::Ingredient(*id))).collect();
        names.join(", ")
    };
    let listed = |of_the_law: bool| {
        let present = allergens.present.iter().filter(|(found, _)| of_law(*found, law) == of_the_law);
        let present = present.map(|(found, ids)| {
            let allergen = with_nuts(allergen(*found), *found, allergens);
            // Celery in celery is said once.
            match names(ids) {
                same if same.to_lowercase() == allergen.to_lowercase() => allergen,
                names => say!(labels::allergen_with_ingredients, allergen = allergen, names = names),
            }
        });
        present.collect::<Vec<String>>().join("; ")
    };
    // What nobody knows stands before what is known.
    let mut sentences = Vec::new();
    if !allergens.not_stated.is_empty() {
        sentences.push(say!(labels::allergens_not_checked_sentence, names = names(&allergens.not_stated)));
    }
    if !allergens.parts_not_known.is_empty() {
        sentences.push(say!(labels::parts_not_known_sentence, names = names(&allergens.parts_not_known)));
    }
    if !allergens.parts_name_more.is_empty() {
        sentences.push(say!(labels::allergen_not_marked_sentence, names = names(&allergens.parts_name_more)));
    }
    let (named, besides) = (listed(true), listed(false));
    if !named.is_empty() {
        sentences.push(say!(labels::contains, allergens = named));
    }
    // What the law does not name stands after what it names; it is in the drink all the same.
    if !besides.is_empty() {
        sentences.push(say!(labels::contains_unlisted, allergens = besides));
    }
    // Whoever must not have peanuts asks also where milk is named.
    sentences.extend(Some(used_around(&allergens.used_around)).filter(|around| !around.is_empty()));
    sentences.join(" ")
}

/// What is in it and not among the nine of the United States. Returns an empty text if nothing is.
/// Sulfites are declared beside the nine.
pub fn besides_the_nine(allergens: &Allergens) -> String {
    let besides = allergens.present.iter().map(|(found, _)| *found);
    let besides = besides.filter(|it| allergen_in_united_states(*it).is_none() && *it != Allergen::Sulphites);
    let names: Vec<&str> = besides.map(allergen).collect();
    names.join(", ")
}
