//! Words in the names that people type, in the singular and the plural of English.

use std::ops::Range;

use crate::book::Allergen;

/// The words of a name, each with the bytes that it takes: letters and digits without a gap.
pub fn words(name: &str) -> Vec<(Range<usize>, &str)> {
    let mut words = Vec::new();
    let mut begin = None;
    let ends = name.char_indices().map(|(at, letter)| (at, letter.is_alphanumeric()));
    for (at, of_a_word) in ends.chain([(name.len(), false)]) {
        match (begin, of_a_word) {
            (None, true) => begin = Some(at),
            (Some(from), false) => {
                words.extend(name.get(from..at).map(|word| (from..at, word)));
                begin = None;
            }
            _ => {}
        }
    }
    words
}

/// Whether a word is this name, which is in the singular: "carrots", "Mangoes" and "lemon" are.
pub fn is(word: &str, name: &str) -> bool {
    let end = word.get(name.len()..);
    let begins = word.get(..name.len()).is_some_and(|beginning| beginning.eq_ignore_ascii_case(name));
    begins && end.is_some_and(|end| ["", "s", "es"].iter().any(|plural| end.eq_ignore_ascii_case(plural)))
}

/// Where these words, which follow each other, stand in a name, in the singular or the plural.
pub fn places_of(phrase: &str, name: &str) -> Vec<Range<usize>> {
    let in_order = |name| words(name).into_iter().map(|(place, word)| (place, singular(word)));
    let (phrase, name): (Vec<_>, Vec<_>) = (in_order(phrase).collect(), in_order(name).collect());
    let is_here =
        |some: &&[(Range<usize>, String)]| some.iter().zip(&phrase).all(|((_, one), (_, other))| one == other);
    let place = |some: &[(Range<usize>, String)]| Some(some.first()?.0.start..some.last()?.0.end);
    name.windows(phrase.len().max(1)).filter(|_| !phrase.is_empty()).filter(is_here).filter_map(place).collect()
}

/// Nouns that say an allergen as Regulation (EU) No 1169/2011, Annex II, names it, in the singular:
/// not "spelt", "whey" or "cod", which need "wheat", "milk" and "fish" beside them (the first of
/// these: Food Standards Agency, Food allergen labelling technical guidance, part 1, 29, text).
pub const fn nouns(allergen: Allergen) -> &'static [&'static str] {
    match allergen {
        Allergen::Wheat => &["wheat"],
        Allergen::OtherGluten => &["rye", "barley", "oat"],
        Allergen::Crustaceans => &["crustacean"],
        Allergen::Eggs => &["egg"],
        Allergen::Fish => &["fish"],
        Allergen::Peanuts => &["peanut"],
        Allergen::Soybeans => &["soybean", "soya", "soy"],
        Allergen::Milk => &["milk"],
        Allergen::TreeNuts => {
            &["almond", "hazelnut", "walnut", "cashew", "pecan", "brazil nut", "pistachio", "macadamia", "nut"]
        }
        Allergen::Celery => &["celery"],
        Allergen::Mustard => &["mustard"],
        Allergen::Sesame => &["sesame"],
        Allergen::Sulphites => &["sulphite", "sulfite", "sulphur dioxide"],
        Allergen::Lupin => &["lupin"],
        Allergen::Molluscs => &["mollusc", "mollusk"],
    }
}

/// Whether a text says an allergen: by one of its nouns; milk not by that of a plant ("oat milk").
pub fn says(text: &str, allergen: Allergen) -> bool {
    let found = nouns(allergen).iter().flat_map(|noun| places_of(noun, text));
    let before = |at: usize| text.get(..at).and_then(|before| words(before).last().map(|(_, word)| word.to_string()));
    let of_a_plant = |at: usize| before(at).is_some_and(|word| PLANTS_OF_MILK.iter().any(|plant| is(&word, plant)));
    found.into_iter().any(|place| allergen != Allergen::Milk || !of_a_plant(place.start))
}

/// What plant milks are made from.
const PLANTS_OF_MILK: &[&str] =
    &["almond", "cashew", "coconut", "hazelnut", "hemp", "macadamia", "oat", "pea", "pistachio", "rice", "soy", "soya"];

/// Words that say nothing of what is in a drink.
const OF_NO_FOOD: &[&str] = &["and", "the", "with", "for", "juice", "drink", "beverage", "fresh", "frozen"];

/// Whether the name of a drink names this ingredient: by a word that both have, in the singular or
/// the plural.
pub fn names_it(drink: &str, ingredient: &str) -> bool {
    let of_food = |name| words(name).into_iter().map(|(_, word)| singular(word)).filter(|word| tells(word));
    let in_drink: Vec<String> = of_food(drink).collect();
    of_food(ingredient).any(|word| in_drink.contains(&word))
}

fn tells(word: &str) -> bool {
    word.chars().nth(2).is_some() && !OF_NO_FOOD.contains(&word)
}

/// A word in small letters, without the ending of the plural: "berry" of "Berries".
fn singular(word: &str) -> String {
    let small = word.to_ascii_lowercase();
    let without = |ending| small.strip_suffix(ending);
    match (without("ies"), without("oes"), without("ss"), without("s")) {
        (Some(beginning), ..) => format!("{beginning}y"),
        (_, Some(beginning), ..) => format!("{beginning}o"),
        (_, _, None, Some(beginning)) => beginning.to_string(),
        _ => small,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_are_letters_and_digits_without_a_gap() {
        let of = |name| words(name).into_iter().map(|(_, word)| word.to_string()).collect::<Vec<_>>();
        assert_eq!(of("Açaí purée, 2 kg (frozen)"), ["Açaí", "purée", "2", "kg", "frozen"]);
        assert_eq!((of(""), of(" ,")), (Vec::new(), Vec::new()));
        let name = "é nut";
        assert!(words(name).iter().all(|(place, word)| name.get(place.clone()) == Some(*word)));
    }

    #[test]
    fn a_plural_is_the_same_name() {
        for (word, name) in [("carrots", "carrot"), ("Mangoes", "mango"), ("LEMON", "lemon")] {
            assert!(is(word, name), "{word}");
        }
        for (word, name) in [("Carrotene", "carrot"), ("é", "ca"), ("nut", "peanut"), ("peanut", "nut")] {
            assert!(!is(word, name), "{word}");
        }
    }

    #[test]
    fn a_phrase_is_found_by_its_words() {
        let of = |phrase, name: &'static str| -> Vec<&str> {
            places_of(phrase, name).into_iter().filter_map(|place| name.get(place)).collect()
        };
        assert_eq!(of("brazil nut", "Nuts (Brazil nuts, Brazil)"), ["Brazil nuts"]);
        assert_eq!(of("nut", "Nuts, peanut and a NUT"), ["Nuts", "NUT"]);
        assert_eq!((of("nut", "Peanut butter"), of("", "Nuts"), of("nut", "")), (vec![], vec![], vec![]));
    }

    #[test]
    fn a_text_says_an_allergen_by_its_noun() {
        for (text, allergen) in [
            ("oats, peanuts, MILK powder", Allergen::Peanuts),
            ("oats, peanuts, MILK powder", Allergen::OtherGluten),
            ("whole milk", Allergen::Milk),
            ("oat milk, skimmed milk", Allergen::Milk),
            ("wheat flour", Allergen::Wheat),
        ] {
            assert!(says(text, allergen), "{text}");
        }
        for (text, allergen) in [
            ("coconut milk, water", Allergen::Milk),
            ("Almond milk", Allergen::Milk),
            ("buckwheat", Allergen::Wheat),
            ("coconut", Allergen::TreeNuts),
            ("", Allergen::Eggs),
        ] {
            assert!(!says(text, allergen), "{text}");
        }
    }

    #[test]
    fn a_drink_names_what_it_shares_a_word_with() {
        for (drink, ingredient) in [
            ("Strawberry Field", "Strawberries, frozen"),
            ("Mango Lassi", "Mangoes"),
            ("Carrot, Apple and Ginger", "Ginger root"),
            ("Watercress Sting", "Watercress"),
        ] {
            assert!(names_it(drink, ingredient), "{drink}");
        }
        for (drink, ingredient) in
            [("Rosy Field", "Strawberries"), ("Orange Juice", "Apple juice"), ("Milk and Honey", "and"), ("", "")]
        {
            assert!(!names_it(drink, ingredient), "{drink}");
        }
    }
}
