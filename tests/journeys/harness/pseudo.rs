//! A language that nobody speaks, made of the English texts: every letter bears a mark, so that a text from elsewhere
//! is seen, and every text is two fifths longer, as texts are in other languages.

use std::collections::BTreeSet;
use std::fs;

use brimwright::foundation::measure::{LengthUnit, Unit};
use brimwright::words::texts::{Part, TABLES, Table};
use brimwright::words::voice::{self, Voice};
use serde_json::Value;

use super::{DEMO, Publisher};

/// The language whose place it takes.
const TAG: &str = "en-US";

/// Around what is not plain text, before each way of a choice, and between its name and its text, as in the tables.
const SPECIAL: char = '\u{1}';
const WAY: char = '\u{2}';
const NAMED: char = '\u{3}';
const WITHIN: char = '\u{4}';

/// Letters and what stands for them.
const PLAIN: &str = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz";
const MARKED: &str = "ÀĆÇÐÉĜĞĤÎĴĶĻṀÑÖÞĢŔŠŢÛṼŴẌÝŽàćçðéƒğĥîĵķļṁñöþģŕšţûṽŵẍýž";

/// What the browser writes in days, times and temperatures.
const OF_THE_BROWSER: [&str; 27] = [
    "Jan",
    "Feb",
    "Mar",
    "Apr",
    "May",
    "Jun",
    "Jul",
    "Aug",
    "Sep",
    "Oct",
    "Nov",
    "Dec",
    "AM",
    "PM",
    "F",
    "C",
    "January",
    "February",
    "March",
    "April",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
];

/// What makes a text longer, and how many of them stand in a row.
const FILL: char = '·';
const IN_A_ROW: usize = 6;

/// Puts the language in the place of English: in what is published, and in what this journey looks for.
pub fn speak(publisher: &Publisher) {
    let mut texts = Table::empty();
    for (part, name) in [(Part::First, "first"), (Part::Rest, "rest")] {
        let found = TABLES.iter().find(|(tag, of, ..)| (*tag, *of) == (TAG, name));
        let (.., text) = found.expect("a table of English");
        texts = texts.with(TAG, part, table(text).leak()).expect("a table");
        let begin = format!("words-{TAG}-{name}-");
        let published = String::from_utf8(publisher.read(&begin)).expect("a text");
        publisher.replace(&begin, &table(&published));
    }
    voice::set(Voice { texts, ..voice::here().clone() });
}

/// Adds the language to what is published, under a tag of its own.
pub fn add(publisher: &Publisher, tag: &str) {
    let tables = ["first", "rest"].map(|part| {
        let published = String::from_utf8(publisher.read(&format!("words-{TAG}-{part}-"))).expect("a text");
        table(&published).replacen(TAG, tag, 1)
    });
    publisher.add_language(tag, [&tables[0], &tables[1]]);
}

/// A text in this language.
pub fn said(text: &str) -> String {
    line(text)
}

/// What stands on screens without a mark: the names in the demo book, as they are and in capitals, units, and what the
/// browser makes of days and times.
pub fn unmarked() -> BTreeSet<String> {
    let book: Value = serde_json::from_slice(&fs::read(DEMO).expect("the demo's file")).expect("JSON");
    let symbols = Unit::ALL.iter().map(|unit| unit.symbol()).chain(LengthUnit::ALL.iter().map(|unit| unit.symbol()));
    let mut names: BTreeSet<String> =
        symbols.chain(OF_THE_BROWSER).flat_map(|name| name.split([' ', '/'])).map(str::to_owned).collect();
    let mut values = vec![&book];
    while let Some(value) = values.pop() {
        match value {
            Value::String(name) => {
                names.insert(name.to_uppercase());
                names.insert(name.clone());
            }
            Value::Array(list) => values.extend(list),
            Value::Object(fields) => values.extend(fields.values()),
            _ => {}
        }
    }
    names
}

/// A table of this language. The line that says of what it is stays.
fn table(text: &str) -> String {
    let mut lines = text.lines();
    let head = lines.next().expect("the line that says of what it is");
    [head.to_owned()].into_iter().chain(lines.map(line)).map(|line| line + "\n").collect()
}

/// A text of this language; placeholders and choices stay.
fn line(text: &str) -> String {
    let mut said = String::new();
    let mut letters = 0;
    for (place, piece) in text.split(SPECIAL).enumerate() {
        if place % 2 == 0 {
            said.push_str(&marked(piece));
            letters += piece.chars().count();
            continue;
        }
        let ways = piece.split(WAY).map(|way| match way.split_once(NAMED) {
            Some((name, text)) => {
                let pieces = text.split(WITHIN).enumerate();
                let text =
                    pieces.map(|(at, it)| if at % 2 == 0 { marked(it) } else { format!("{WITHIN}{it}{WITHIN}") });
                format!("{WAY}{name}{NAMED}{}", text.collect::<String>())
            }
            None => way.to_owned(),
        });
        said.push_str(&format!("{SPECIAL}{}{SPECIAL}", ways.collect::<String>()));
        letters += piece.rsplit(NAMED).next().filter(|_| piece.contains(NAMED)).map_or(0, |way| way.chars().count());
    }
    let more = (2 * letters).div_ceil(5).saturating_sub(2);
    let mut fill: Vec<String> = Vec::new();
    for from in (0..more).step_by(IN_A_ROW) {
        fill.push(FILL.to_string().repeat(IN_A_ROW.min(more - from)));
    }
    // What is one word grows as a word.
    let between = if text.contains(' ') && more > 0 { " " } else { "" };
    format!("[{said}{between}{}]", fill.join(" "))
}

fn marked(text: &str) -> String {
    let mark = |letter: char| PLAIN.find(letter).and_then(|place| MARKED.chars().nth(place)).unwrap_or(letter);
    text.chars().map(mark).collect()
}

#[cfg(test)]
mod tests {
    use super::{MARKED, PLAIN, line};

    #[test]
    fn each_letter_has_a_mark() {
        assert_eq!(MARKED.chars().count(), PLAIN.len());
        assert!(!MARKED.contains(|letter: char| letter.is_ascii()));
    }

    #[test]
    fn a_text_is_marked_and_longer_and_keeps_what_is_filled_in() {
        assert_eq!(line("Drinks"), "[Ðŕîñķš·]");
        assert_eq!(line("Set \u{1}0\u{1} to \u{1}1\u{1}."), "[Šéţ \u{1}0\u{1} ţö \u{1}1\u{1}. ··]");
        let choice = "\u{1}0\u{2}one\u{3}1 drink\u{2}other\u{3}\u{4}0\u{4} drinks\u{1} sold";
        let said = "[\u{1}0\u{2}one\u{3}1 ðŕîñķ\u{2}other\u{3}\u{4}0\u{4} ðŕîñķš\u{1} šöļð ····]";
        assert_eq!(line(choice), said);
        assert_eq!(line("Kept on this phone only"), "[Ķéþţ öñ ţĥîš þĥöñé öñļý ······ ··]");
    }
}
