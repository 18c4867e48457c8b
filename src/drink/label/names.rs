//! Words in the names that people type, in the singular and in plurals made by an s.

use std::ops::Range;

use super::nouns::{NO_NUTS, OF, OF_NO_FOOD, PLANTS_OF_MILK, is_juice, nouns};
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

/// Whether a text says an allergen: by one of its nouns; milk not by that of a plant ("oat milk", "leche de
/// coco"), nuts not by "noix de coco".
pub fn says(text: &str, allergen: Allergen) -> bool {
    let found = nouns(allergen).iter().flat_map(|noun| places_of(noun, text));
    let no_nuts: Vec<Range<usize>> = NO_NUTS.iter().flat_map(|name| places_of(name, text)).collect();
    found.into_iter().any(|place| match allergen {
        Allergen::Milk => !of_a_plant(text, &place),
        Allergen::TreeNuts => !no_nuts.iter().any(|other| other.contains(&place.start)),
        _ => true,
    })
}

/// Whether the milk at a place is one of a plant.
fn of_a_plant(text: &str, milk: &Range<usize>) -> bool {
    let plant = |word: Option<&(Range<usize>, &str)>| {
        word.is_some_and(|(_, word)| PLANTS_OF_MILK.iter().any(|plant| singular(word) == *plant))
    };
    let words = words(text);
    let before = words.iter().rev().find(|(place, _)| place.end <= milk.start);
    let mut behind = words.iter().filter(|(place, _)| place.start >= milk.end);
    let is_of = behind.next().is_some_and(|(_, word)| OF.iter().any(|of| word.eq_ignore_ascii_case(of)));
    plant(before) || (is_of && plant(behind.next()))
}

/// Whether a name says juice: "Orange juice", "Orangensaft", "jugo de naranja".
pub fn says_juice(name: &str) -> bool {
    words(name).iter().any(|(_, word)| is_juice(word))
}

/// Whether the name of a drink names this ingredient: by a word that both have, in the singular or
/// the plural.
pub fn names_it(drink: &str, ingredient: &str) -> bool {
    let of_food = |name| words(name).into_iter().map(|(_, word)| singular(word)).filter(|word| tells(word));
    let in_drink: Vec<String> = of_food(drink).collect();
    of_food(ingredient).any(|word| in_drink.contains(&word))
}

fn tells(word: &str) -> bool {
    word.chars().nth(2).is_some() && !OF_NO_FOOD.contains(&word) && !is_juice(word)
}

/// A word in small letters, without the ending of the plural: "berry" of "Berries".
fn singular(word: &str) -> String {
    let small = word.to_lowercase();
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
            ("Sesam, geröstet", Allergen::Sesame),
            ("semillas de ajonjolí", Allergen::Sesame),
            ("graines de sésame", Allergen::Sesame),
            ("Milch, Zucker", Allergen::Milk),
            ("leche entera", Allergen::Milk),
            ("lait entier, lait d’avoine", Allergen::Milk),
            ("Haselnüsse, Erdnüsse", Allergen::TreeNuts),
            ("Haselnüsse, Erdnüsse", Allergen::Peanuts),
            ("nueces", Allergen::TreeNuts),
            ("noix de coco, noix de cajou", Allergen::TreeNuts),
            ("lait d’amande", Allergen::TreeNuts),
            ("SOJA", Allergen::Soybeans),
        ] {
            assert!(says(text, allergen), "{text}");
        }
        for (text, allergen) in [
            ("coconut milk, water", Allergen::Milk),
            ("Almond milk", Allergen::Milk),
            ("buckwheat", Allergen::Wheat),
            ("coconut", Allergen::TreeNuts),
            ("leche de coco", Allergen::Milk),
            ("lait d’avoine", Allergen::Milk),
            ("Hafermilch", Allergen::Milk),
            ("noix de coco", Allergen::TreeNuts),
            ("nuez moscada", Allergen::TreeNuts),
            ("Eis", Allergen::Eggs),
            ("", Allergen::Eggs),
        ] {
            assert!(!says(text, allergen), "{text}");
        }
    }

    #[test]
    fn juice_is_said_in_each_language() {
        for name in ["Orange juice", "JUICES", "Orangensaft", "Säfte", "jugo de naranja", "Zumo", "jus de pomme"] {
            assert!(says_juice(name), "{name}");
        }
        for name in ["Oranges", "Juicy", "Safran", "just peas", ""] {
            assert!(!says_juice(name), "{name}");
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
        for (drink, ingredient) in [
            ("Rosy Field", "Strawberries"),
            ("Orange Juice", "Apple juice"),
            ("Milk and Honey", "and"),
            ("Apfelsaft und Minze", "und"),
            ("", ""),
        ] {
            assert!(!names_it(drink, ingredient), "{drink}");
        }
    }
}
