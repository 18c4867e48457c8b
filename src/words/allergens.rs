//! Allergens in the words of two laws, and in plain ones.

use crate::book::{Allergen, Book, IngredientId, Key};
use crate::drink::label::{Allergens, Law, UsedAround};

/// A plain name, for the card behind the counter, as it is spelled where this law holds.
pub const fn allergen(allergen: Allergen, law: Law) -> &'static str {
    match allergen {
        Allergen::Sulphites if matches!(law, Law::UnitedStates) => "Sulfites",
        Allergen::Molluscs if matches!(law, Law::UnitedStates) => "Mollusks",
        Allergen::Wheat => "Wheat",
        Allergen::OtherGluten => "Gluten other than wheat",
        Allergen::Crustaceans => "Crustaceans",
        Allergen::Eggs => "Eggs",
        Allergen::Fish => "Fish",
        Allergen::Peanuts => "Peanuts",
        Allergen::Soybeans => "Soy",
        Allergen::Milk => "Milk",
        Allergen::TreeNuts => "Tree nuts",
        Allergen::Celery => "Celery",
        Allergen::Mustard => "Mustard",
        Allergen::Sesame => "Sesame",
        Allergen::Sulphites => "Sulphites",
        Allergen::Lupin => "Lupin",
        Allergen::Molluscs => "Molluscs",
    }
}

/// A plain name where an ingredient is marked with it. Sulfites count from 10 ppm on in the United
/// States (21 CFR 101.100(a)(4), text), above 10 mg/kg or 10 mg/L in the European Union (Regulation
/// (EU) No 1169/2011, Annex II, point 12).
pub const fn allergen_to_mark(found: Allergen, law: Law) -> &'static str {
    match (found, law) {
        (Allergen::Sulphites, Law::UnitedStates) => "Sulfites, 10 ppm or more",
        (Allergen::Sulphites, Law::European) => "Sulphites, over 10 mg/kg",
        _ => allergen(found, law),
    }
}

/// What is declared besides the nine in the United States (21 CFR 101.100(a)(4), text): sulfites,
/// from 10 ppm of the drink on. Returns an empty text if no ingredient is marked with them.
pub fn also_declare(allergens: &Allergens, book: &Book) -> String {
    let sulfites = allergens.present.iter().find(|(found, _)| *found == Allergen::Sulphites);
    match sulfites {
        Some((_, ids)) => {
            let names: Vec<String> = ids.iter().map(|id| book.name(Key::Ingredient(*id))).collect();
            format!("sulfites, from 10 ppm in the drink (21 CFR 101.100(a)(4)): {}", names.join(", "))
        }
        None => String::new(),
    }
}

/// Its name among the nine of the United States (21 U.S.C. 321(qq)), where it is one of them.
pub const fn allergen_in_united_states(allergen: Allergen) -> Option<&'static str> {
    match allergen {
        Allergen::Wheat => Some("Wheat"),
        Allergen::Crustaceans => Some("Crustacean shellfish"),
        Allergen::Eggs => Some("Egg"),
        Allergen::Fish => Some("Fish"),
        Allergen::Peanuts => Some("Peanuts"),
        Allergen::Soybeans => Some("Soybeans"),
        Allergen::Milk => Some("Milk"),
        Allergen::TreeNuts => Some("Tree nuts"),
        Allergen::Sesame => Some("Sesame"),
        Allergen::OtherGluten
        | Allergen::Celery
        | Allergen::Mustard
        | Allergen::Sulphites
        | Allergen::Lupin
        | Allergen::Molluscs => None,
    }
}

/// Its name among the fourteen of the European Union (Regulation (EU) No 1169/2011, Annex II).
pub const fn allergen_in_european_union(allergen: Allergen) -> &'static str {
    match allergen {
        Allergen::Wheat => "Cereals containing gluten (wheat)",
        Allergen::OtherGluten => "Cereals containing gluten (other than wheat)",
        Allergen::Crustaceans => "Crustaceans",
        Allergen::Eggs => "Eggs",
        Allergen::Fish => "Fish",
        Allergen::Peanuts => "Peanuts",
        Allergen::Soybeans => "Soybeans",
        Allergen::Milk => "Milk",
        Allergen::TreeNuts => "Nuts",
        Allergen::Celery => "Celery",
        Allergen::Mustard => "Mustard",
        Allergen::Sesame => "Sesame seeds",
        Allergen::Sulphites => "Sulphur dioxide and sulphites",
        Allergen::Lupin => "Lupin",
        Allergen::Molluscs => "Molluscs",
    }
}

/// The name of an allergen, tree nuts with their kinds: "Tree nuts: almonds, cashews".
fn with_nuts(name: &str, found: Allergen, allergens: &Allergens) -> String {
    if found == Allergen::TreeNuts && !allergens.nuts.is_empty() {
        format!("{name}: {}", allergens.nuts.join(", "))
    } else {
        name.to_string()
    }
}

/// The allergens of a drink as a law lists them: "Milk, Tree nuts (almonds)"; never "none" while an
/// ingredient is not stated.
pub fn allergens_by_law(allergens: &Allergens, law: Law) -> String {
    let name = |found: Allergen| {
        let name = match law {
            Law::UnitedStates => allergen_in_united_states(found)?,
            Law::European => allergen_in_european_union(found),
        };
        let is_known = found == Allergen::TreeNuts && !allergens.nuts.is_empty();
        Some(if is_known { format!("{name} ({})", allergens.nuts.join(", ")) } else { name.to_string() })
    };
    let names: Vec<String> = allergens.present.iter().filter_map(|(found, _)| name(*found)).collect();
    let said = match (names.is_empty(), allergens.are_all_known()) {
        (false, _) => names.join(", "),
        (true, true) => "none".to_string(),
        (true, false) => "none stated so far".to_string(),
    };
    match used_around(&allergens.used_around, law) {
        around if around.is_empty() => said,
        around => format!("{said}. {around}"),
    }
}

/// What counts as a tree nut, by law and year. United States: FDA guidance of January 2025, twelve
/// nuts (how many, and what is in and out: second-hand; the twelve from memory). European Union:
/// Regulation (EU) No 1169/2011, Annex II, point 8, exhaustive by notice 2017/C 428/01 (text).
pub const TREE_NUTS: &str = "United States (FDA, January 2025), 12 nuts: almond, black walnut, Brazil nut, California walnut, cashew, hazelnut, heartnut, macadamia, pecan, pine nut, pistachio, walnut. Coconut, chestnut and shea no longer count. European Union (2017/C 428), 8 nuts and no others: almond, hazelnut, walnut, cashew, pecan, Brazil nut, pistachio, macadamia. Pine nuts do not count there.";

/// What else is used where a drink is made, beside every list of allergens: "Made where peanuts,
/// milk and tree nuts are used." Returns an empty text if the whole book holds none of them.
pub fn used_around(around: &UsedAround, law: Law) -> String {
    let names: Vec<String> = around.held.iter().map(|it| allergen(*it, law).to_ascii_lowercase()).collect();
    let used = match names.as_slice() {
        [] => String::new(),
        [one] if one.ends_with('s') => format!("Made where {one} are used."),
        [one] => format!("Made where {one} is used."),
        [before @ .., last] => format!("Made where {} and {last} are used.", before.join(", ")),
    };
    match (used.is_empty(), around.not_all_stated) {
        (_, false) => used,
        (true, true) => NOT_ALL_CHECKED.to_string(),
        (false, true) => format!("{used} {NOT_ALL_CHECKED}"),
    }
}

/// Stands where a recipe is empty: "none" would be a guess.
const NOTHING_IN_IT: &str = "Nothing is in the recipe yet.";

const NOT_ALL_CHECKED: &str = "Other ingredients here are not checked yet.";

/// What a drink holds, for the card: never "none" while an ingredient is not stated.
pub fn allergens(allergens: &Allergens, book: &Book) -> String {
    let law = Law::of(book.settings());
    if allergens.nothing_in_it {
        return NOTHING_IN_IT.to_string();
    }
    if allergens.are_none() {
        let none = "None of the allergens that must be named, as far as the book states.";
        return match used_around(&allergens.used_around, law) {
            around if around.is_empty() => none.to_string(),
            around => format!("{none} {around}"),
        };
    }
    let names = |ids: &[IngredientId]| {
        let names: Vec<String> = ids.iter().map(|id| book.name(Key::Ingredient(*id))).collect();
        names.join(", ")
    };
    let present = allergens.present.iter();
    let present: Vec<String> = present
        .map(|(found, ids)| format!("{} ({})", with_nuts(allergen(*found, law), *found, allergens), names(ids)))
        .collect();
    let mut sentences = Vec::new();
    if !present.is_empty() {
        sentences.push(format!("Contains {}.", present.join("; ")));
    }
    if !allergens.parts_not_known.is_empty() {
        let mixed = names(&allergens.parts_not_known);
        sentences.push(format!("Parts not known, so more may be in it: {mixed}. Read its label, and enter its parts."));
    }
    if !allergens.parts_name_more.is_empty() {
        let more = names(&allergens.parts_name_more);
        sentences.push(format!("{PARTS_NAME_MORE}: {more}. Mark what they name."));
    }
    if !allergens.not_stated.is_empty() {
        let open = names(&allergens.not_stated);
        sentences.push(format!("Not stated yet, so it may hold any: {open}. Check the label of each, and enter it."));
    }
    // Whoever must not have peanuts asks also where milk is named.
    sentences.extend(Some(used_around(&allergens.used_around, law)).filter(|around| !around.is_empty()));
    sentences.join(" ")
}

/// Stands beside ingredients whose parts name an allergen that is not marked.
pub const PARTS_NAME_MORE: &str = "Parts name an allergen that is not marked";

/// What is in it and not among the nine of the United States. Returns an empty text if nothing is.
/// Sulfites are declared beside the nine.
pub fn besides_the_nine(allergens: &Allergens) -> String {
    let besides = allergens.present.iter().map(|(found, _)| *found);
    let besides = besides.filter(|it| allergen_in_united_states(*it).is_none() && *it != Allergen::Sulphites);
    let names: Vec<String> = besides.map(|it| allergen(it, Law::UnitedStates).to_ascii_lowercase()).collect();
    names.join(", ")
}
