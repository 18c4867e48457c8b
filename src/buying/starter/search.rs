//! Rows found by the letters that are typed of a name.

use super::{LANGUAGES, List, Row, base};
use crate::buying::quotes::{Found, find};

/// How a row was found, the best first: by the beginning of a word of its name in the language of the screen, by that
/// of its name in another, or within a word.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Match {
    Here(Found),
    Elsewhere(Found),
    Within,
}

impl List {
    /// The rows that these letters may mean, the likeliest first, and in the order of the list where they are as
    /// likely; `language` is the tag of the language of the screen. Accents and case are ignored. Without letters
    /// it is every row.
    pub fn search(&self, letters: &str, language: &str) -> Vec<&Row> {
        let letters = plain(letters);
        let mut found: Vec<(Match, usize, &Row)> = Vec::new();
        for (place, row) in self.rows.iter().enumerate() {
            found.extend(how(row, &letters, base(language)).map(|how| (how, place, row)));
        }
        found.sort_by_key(|(how, place, _)| (*how, *place));
        found.into_iter().map(|(_, _, row)| row).collect()
    }
}

fn how(row: &Row, letters: &str, language: &str) -> Option<Match> {
    let of = |name: &String| find(&plain(name), "", letters);
    let names = || LANGUAGES.iter().zip(&row.names);
    let begins = |found: &Found| *found < Found::InName;
    let here = names().find(|(tag, _)| **tag == language).and_then(|(_, name)| of(name));
    let elsewhere = || names().filter_map(|(_, name)| of(name)).filter(begins).min();
    let by_beginning = here.filter(begins).map(Match::Here).or_else(|| elsewhere().map(Match::Elsewhere));
    by_beginning.or(here.map(|_| Match::Within))
}

/// Small letters without accents, and one blank between words.
fn plain(text: &str) -> String {
    let mut plain = String::with_capacity(text.len());
    for letter in text.chars().flat_map(char::to_lowercase) {
        match without_accent(letter) {
            Some(letters) => plain.push_str(letters),
            // An accent that stands behind its letter.
            None if ('\u{300}'..='\u{36f}').contains(&letter) => {}
            None if letter.is_whitespace() => {
                if !plain.is_empty() && !plain.ends_with(' ') {
                    plain.push(' ');
                }
            }
            None => plain.push(letter),
        }
    }
    plain.truncate(plain.trim_end().len());
    plain
}

/// What stands for a letter with an accent in the languages of the list, and for two letters in one.
fn without_accent(letter: char) -> Option<&'static str> {
    Some(match letter {
        'á' | 'à' | 'â' | 'ä' | 'ã' | 'å' => "a",
        'é' | 'è' | 'ê' | 'ë' => "e",
        'í' | 'ì' | 'î' | 'ï' => "i",
        'ó' | 'ò' | 'ô' | 'ö' | 'õ' => "o",
        'ú' | 'ù' | 'û' | 'ü' => "u",
        'ñ' => "n",
        'ç' => "c",
        'ÿ' | 'ý' => "y",
        'ß' => "ss",
        'œ' => "oe",
        'æ' => "ae",
        '’' => "'",
        _ => return None,
    })
}
