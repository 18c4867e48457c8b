//! The lists of allergens against the laws.

use brimwright::book::Allergen;
use brimwright::words::{allergen_in_european_union, allergen_in_united_states};

#[test]
fn the_united_states_name_nine() {
    // U.S. Food and Drug Administration, "What is a 'major food allergen'?" (fda.gov, FDA Basics
    // for Industry), after 21 U.S.C. 321(qq): FALCPA 2004, with sesame by the FASTER Act 2021. In
    // the order of the page.
    let law = ["Milk", "Egg", "Fish", "Crustacean shellfish", "Tree nuts", "Wheat", "Peanuts", "Soybeans", "Sesame"];
    let ours: Vec<&str> = Allergen::ALL.iter().filter_map(|allergen| allergen_in_united_states(*allergen)).collect();
    assert_eq!(ours.len(), 9);
    for name in law {
        assert!(ours.contains(&name), "{name}");
    }
    for allergen in Allergen::ALL {
        assert_eq!(allergen.in_united_states(), allergen_in_united_states(*allergen).is_some(), "{allergen:?}");
    }
}

#[test]
fn the_european_union_names_fourteen() {
    // Regulation (EU) No 1169/2011, Annex II, as printed by the University of Reading, Food
    // Labelling in the UK, "Substances causing allergies or intolerances"; items 9 to 14 in the
    // order of the Annex from further lists of restaurants and airlines.
    let law = [
        "Cereals containing gluten",
        "Crustaceans",
        "Eggs",
        "Fish",
        "Peanuts",
        "Soybeans",
        "Milk",
        "Nuts",
        "Celery",
        "Mustard",
        "Sesame seeds",
        "Sulphur dioxide and sulphites",
        "Lupin",
        "Molluscs",
    ];
    let ours: Vec<&str> = Allergen::ALL.iter().map(|allergen| allergen_in_european_union(*allergen)).collect();
    // "... namely: wheat ..., rye, barley, oats": the one item that we keep in two. All stand in
    // the order of the Annex.
    assert_eq!(ours[..2], ["Cereals containing gluten (wheat)", "Cereals containing gluten (other than wheat)"]);
    assert!(ours[1].starts_with(law[0]));
    assert_eq!(ours[2..], law[1..]);
}
