//! Nouns of allergens and of juice, in the languages that people name their ingredients in.
//!
//! English: as Regulation (EU) No 1169/2011, Annex II, names them, in the singular: not "spelt", "whey" or "cod",
//! which need "wheat", "milk" and "fish" beside them (the first of these: Food Standards Agency, Food allergen
//! labelling technical guidance, part 1, 29, text). German, Spanish and French: from memory, with the plurals that
//! are not made by an s.

use crate::book::Allergen;

/// Nouns that say an allergen.
pub const fn nouns(allergen: Allergen) -> &'static [&'static str] {
    match allergen {
        Allergen::Wheat => &["wheat", "weizen", "trigo", "blé"],
        Allergen::OtherGluten => &[
            "rye", "barley", "oat", "roggen", "gerste", "hafer", "centeno", "cebada", "avena", "seigle", "orge",
            "avoine",
        ],
        Allergen::Crustaceans => &["crustacean", "krebstier", "krebstiere", "crustáceo", "crustacé"],
        Allergen::Eggs => &["egg", "eier", "vollei", "eigelb", "huevo", "œuf", "oeuf"],
        Allergen::Fish => &["fish", "fisch", "fische", "pescado", "poisson"],
        Allergen::Peanuts => {
            &["peanut", "erdnuss", "erdnüsse", "erdnuß", "cacahuete", "cacahuate", "maní", "arachide", "cacahuète"]
        }
        Allergen::Soybeans => &["soybean", "soya", "soy", "soja", "sojabohne", "sojabohnen"],
        Allergen::Milk => &["milk", "milch", "leche", "lait"],
        Allergen::TreeNuts => &[
            "almond",
            "hazelnut",
            "walnut",
            "cashew",
            "pecan",
            "brazil nut",
            "pistachio",
            "macadamia",
            "nut",
            "mandel",
            "mandeln",
            "haselnuss",
            "haselnüsse",
            "walnuss",
            "walnüsse",
            "cashewnuss",
            "cashewkerne",
            "pekannuss",
            "pekannüsse",
            "paranuss",
            "paranüsse",
            "pistazie",
            "pistazien",
            "nuss",
            "nüsse",
            "almendra",
            "avellana",
            "nuez",
            "nueces",
            "anacardo",
            "marañón",
            "pistacho",
            "pacana",
            "amande",
            "noisette",
            "noix",
            "cajou",
            "pistache",
        ],
        Allergen::Celery => &["celery", "sellerie", "apio", "céleri"],
        Allergen::Mustard => &["mustard", "senf", "mostaza", "moutarde"],
        Allergen::Sesame => &["sesame", "sesam", "sésamo", "ajonjolí", "sésame"],
        Allergen::Sulphites => &["sulphite", "sulfite", "sulphur dioxide", "sulfit", "sulfito"],
        Allergen::Lupin => &["lupin", "lupine", "lupinen", "altramuz", "altramuces"],
        Allergen::Molluscs => &["mollusc", "mollusk", "weichtier", "weichtiere", "molusco", "mollusque"],
    }
}

/// What plant milks are made from, before the noun ("oat milk") or behind it ("leche de avena").
pub const PLANTS_OF_MILK: &[&str] = &[
    "almond",
    "cashew",
    "coconut",
    "hazelnut",
    "hemp",
    "macadamia",
    "oat",
    "pea",
    "pistachio",
    "rice",
    "soy",
    "soya",
    "almendra",
    "anacardo",
    "arroz",
    "avellana",
    "avena",
    "cáñamo",
    "coco",
    "guisante",
    "pistacho",
    "soja",
    "amande",
    "avoine",
    "cajou",
    "chanvre",
    "noisette",
    "pistache",
    "riz",
];

/// Between a milk and its plant: "de", and "d" of "lait d’avoine".
pub const OF: &[&str] = &["de", "d"];

/// What has a noun of nuts in it and is none.
pub const NO_NUTS: &[&str] = &["noix de coco", "noix de muscade", "nuez moscada"];

/// Nouns of juice, alone.
const JUICE: &[&str] = &["juice", "saft", "säfte", "jugo", "zumo", "jus"];

/// The end of a word that is a juice in German: "Orangensaft".
const ENDS_OF_JUICE: &[&str] = &["saft", "säfte"];

/// Whether a word says juice.
pub fn is_juice(word: &str) -> bool {
    let small = word.to_lowercase();
    let plural = |noun: &&str| small.strip_suffix('s') == Some(noun);
    JUICE.iter().any(|noun| small == *noun || plural(noun)) || ENDS_OF_JUICE.iter().any(|end| small.ends_with(end))
}

/// Words that say nothing of what is in a drink.
pub const OF_NO_FOOD: &[&str] = &[
    "and",
    "the",
    "with",
    "for",
    "drink",
    "beverage",
    "fresh",
    "frozen",
    "und",
    "mit",
    "der",
    "die",
    "das",
    "frisch",
    "gefroren",
    "con",
    "los",
    "las",
    "del",
    "para",
    "bebida",
    "fresco",
    "fresca",
    "congelado",
    "congelada",
    "avec",
    "les",
    "des",
    "boisson",
    "frais",
    "fraîche",
    "surgelé",
];
