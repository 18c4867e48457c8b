//! The words of the page before the app is here: the source names keys, the build puts texts in.

use brimwright::words::texts::keys::LANGUAGES;
use brimwright::words::texts::{KEYS, Table};

use crate::run::Outcome;

/// The language that stands in the page itself.
const IN_THE_PAGE: &str = "en-US";

/// Where the tags of the languages belong.
const TAGS: &str = "{{languages}}";

/// What names the key of an element's text.
const KEY: &str = "data-text=\"";

/// Puts English into the elements that name a key (`data-text="first::tagline"`), with the line of the
/// key in the first table (`data-line="12"`, from 0 on) for other languages, and in place of a key in
/// double braces (`{{first::tagline}}`). The tags of the languages go in place of `{{languages}}`.
///
/// # Errors
/// A key that there is not.
pub fn put_in(page: &str) -> Outcome<String> {
    let mut filled = String::new();
    let page = page.replace(TAGS, &LANGUAGES.join(" "));
    let mut rest = page.as_str();
    while let Some((before, after)) = rest.split_once(KEY) {
        let (key, after) = after.split_once('"').ok_or("The page has a key without an end.")?;
        let (tag, after) = after.split_once('>').ok_or("The page has an element without an end.")?;
        let line = KEYS.iter().position(|it| *it == key).unwrap_or_default();
        filled.push_str(&format!("{before}data-line=\"{line}\"{tag}>{}", english(key)?));
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

/// A first table as it is published: in the language of the page without those texts that only the
/// page says. Their lines are empty, so that the others keep their places.
pub fn beside_the_page(language: &str, part: &str, table: &str) -> String {
    if (language, part) != (IN_THE_PAGE, "first") {
        return table.to_string();
    }
    let of_the_page = |place: usize| {
        place.checked_sub(1).and_then(|line| KEYS.get(line)).is_some_and(|key| key.starts_with("start::"))
    };
    let line = |(place, line)| format!("{}\n", if of_the_page(place) { "" } else { line });
    table.lines().enumerate().map(line).collect()
}

fn english(key: &str) -> Outcome<&'static str> {
    Table::built_in(IN_THE_PAGE)
        .by_key(key)
        .ok_or_else(|| format!("The page names the key {key}, which is none. Mend it in public/index.html."))
}

#[cfg(test)]
mod tests {
    use brimwright::words::texts::TABLES;

    use super::*;

    #[test]
    fn keys_become_texts() {
        let page = "<p class=\"a\" data-text=\"first::cancel\" id=\"b\"></p><meta content=\"{{first::cancel}}\">";
        let line = KEYS.iter().position(|key| *key == "first::cancel").unwrap();
        let filled = format!("<p class=\"a\" data-line=\"{line}\" id=\"b\">Cancel</p><meta content=\"Cancel\">");
        assert_eq!(put_in(page), Ok(filled));
        assert!(put_in("{{first::no_such_key}}").is_err());
    }

    #[test]
    fn texts_of_the_page_are_published_once() {
        let (.., table) = TABLES.iter().find(|(tag, part, ..)| (*tag, *part) == (IN_THE_PAGE, "first")).unwrap();
        let published = beside_the_page(IN_THE_PAGE, "first", table);
        assert_eq!(published.lines().count(), table.lines().count());
        let (page, app) = (english("start::reload").unwrap(), english("first::tagline").unwrap());
        assert!(table.contains(page) && !published.lines().any(|line| line == page) && published.contains(app));
        assert_eq!(beside_the_page("es-US", "first", table), **table);
    }

    /// What is asked for before the first words are painted is in their way, and Lighthouse counts it.
    #[test]
    fn the_app_is_asked_for_after_the_first_words() {
        let page = include_str!("../../public/index.html");
        let (before, rest) = page.split_once("<template id=\"app\">").unwrap();
        let (app, after) = rest.split_once("</template>").unwrap();
        for of_the_app in ["preload", "./start.js", "./brimwright_bg.wasm", "./brimwright.js"] {
            assert!(app.contains(of_the_app), "{of_the_app}");
            assert!(!before.contains(of_the_app) && !after.contains(of_the_app), "{of_the_app}");
        }
        assert!(include_str!("../../public/first.js").contains("getElementById(\"app\")"));
    }

    #[test]
    fn the_languages_are_listed() {
        assert_eq!(
            put_in("<html data-languages=\"{{languages}}\">"),
            Ok("<html data-languages=\"en-US es-US\">".into())
        );
    }
}
