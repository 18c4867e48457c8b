//! The words of the page before the app is here: the source names keys, the build puts texts in.

use std::collections::BTreeMap;

use brimwright::words::texts::Table;
use brimwright::words::texts::keys::LANGUAGES;

use crate::run::Outcome;

/// The language that stands in the page itself.
const IN_THE_PAGE: &str = "en-US";

/// What names the key of an element's text.
const KEY: &str = "data-text=\"";

/// Puts English into the elements that name a key (`data-text="first::tagline"`), and in place of a
/// key in double braces (`{{first::tagline}}`).
///
/// # Errors
/// A key that there is not.
pub fn put_in(page: &str) -> Outcome<String> {
    let mut filled = String::new();
    let mut rest = page;
    while let Some((before, after)) = rest.split_once(KEY) {
        let (key, after) = after.split_once('"').ok_or("The page has a key without an end.")?;
        let (tag, after) = after.split_once('>').ok_or("The page has an element without an end.")?;
        filled.push_str(&[before, KEY, key, "\"", tag, ">", english(key)?].concat());
        rest = after;
    }
    filled.push_str(rest);
    let mut pieces = filled.split("{{");
    let mut whole = pieces.next().unwrap_or_default().to_string();
    for piece in pieces {
        let (key, after) = piece.split_once("}}").ok_or("The page has a key without an end.")?;
        whole.push_str(english(key)?);
        whole.push_str(after);
    }
    Ok(whole)
}

fn english(key: &str) -> Outcome<&'static str> {
    Ok(Table::built_in(IN_THE_PAGE)
        .by_key(key)
        .ok_or_else(|| format!("The page names the key {key}, which is none."))?)
}

/// The constants in front of the script of the first words: the tags of the languages, and the words
/// of the page in each of them but English.
///
/// # Errors
/// What JSON cannot hold; there is nothing such.
pub fn of_the_page(page: &str) -> Outcome<String> {
    let keys: Vec<&str> = page.split(KEY).skip(1).filter_map(|part| part.split('"').next()).collect();
    let mut words: BTreeMap<&str, BTreeMap<&str, &str>> = BTreeMap::new();
    for language in LANGUAGES.iter().filter(|tag| **tag != IN_THE_PAGE) {
        let table = Table::built_in(language);
        words.insert(language, keys.iter().filter_map(|key| Some((*key, table.by_key(key)?))).collect());
    }
    let languages = serde_json::to_string(LANGUAGES).map_err(|error| error.to_string())?;
    let words = serde_json::to_string(&words).map_err(|error| error.to_string())?;
    Ok(format!("const LANGUAGES={languages},WORDS={words};\n"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn keys_become_texts() {
        let page = "<p class=\"a\" data-text=\"common::cancel\" id=\"b\"></p><meta content=\"{{common::cancel}}\">";
        let filled = "<p class=\"a\" data-text=\"common::cancel\" id=\"b\">Cancel</p><meta content=\"Cancel\">";
        assert_eq!(put_in(page), Ok(filled.to_string()));
        assert!(put_in("{{common::no_such_key}}").is_err());
    }

    #[test]
    fn the_words_of_the_page_are_listed_for_other_languages() {
        let words = of_the_page("<p data-text=\"common::cancel\">Cancel</p>").unwrap();
        assert!(words.starts_with("const LANGUAGES=[\"en-US\"") && words.ends_with("};\n"), "{words}");
    }
}
