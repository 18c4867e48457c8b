//! From a line of a table to what is read.

use crate::words::voice;

/// Around what is not plain text.
const SPECIAL: char = '\u{1}';
/// Before each way of a choice.
const WAY: char = '\u{2}';
/// Between the name of a way and its text.
const NAMED: char = '\u{3}';
/// Around a placeholder within a way.
const WITHIN: char = '\u{4}';

/// Around what keeps its own direction in a sentence from right to left, by its first letter (Unicode, UAX #9).
const ISOLATE: [char; 2] = ['\u{2068}', '\u{2069}'];

/// What stands in for a placeholder, and the plural form it asks for, if it is a number.
pub type Value<'a> = (&'a str, &'a str);

/// A text without placeholders.
pub fn plain(place: u16) -> &'static str {
    voice::here().texts.line(place)
}

/// A text with its placeholders filled.
pub fn filled(place: u16, values: &[Value<'_>]) -> String {
    fill(plain(place), values, voice::is_mirrored())
}

/// A line with its placeholders filled and its choices made.
fn fill(line: &str, values: &[Value<'_>], mirrored: bool) -> String {
    let mut text = String::new();
    let mut special = false;
    for piece in line.split(SPECIAL) {
        match piece.split_once(WAY) {
            _ if !special => text.push_str(piece),
            None => put(value(piece, values), mirrored, &mut text),
            Some((place, ways)) => fill_way(chosen(ways, value(place, values)), values, mirrored, &mut text),
        }
        special = !special;
    }
    text
}

fn fill_way(way: &str, values: &[Value<'_>], mirrored: bool, text: &mut String) {
    let mut within = false;
    for piece in way.split(WITHIN) {
        if within {
            put(value(piece, values), mirrored, text);
        } else {
            text.push_str(piece);
        }
        within = !within;
    }
}

/// A name or an amount, apart from the direction of the sentence around it.
fn put((shown, _): Value<'_>, mirrored: bool, text: &mut String) {
    let [begin, end] = ISOLATE;
    if mirrored {
        text.push(begin);
    }
    text.push_str(shown);
    if mirrored {
        text.push(end);
    }
}

/// The way that is named by the value, or by its plural form, or the last one.
fn chosen<'a>(ways: &'a str, (shown, form): Value<'_>) -> &'a str {
    let named = |name: &str| {
        ways.split(WAY).filter_map(|way| way.split_once(NAMED)).find(|(it, _)| *it == name).map(|(_, text)| text)
    };
    let last = || ways.rsplit(NAMED).next().unwrap_or_default();
    named(shown).or_else(|| named(form)).unwrap_or_else(last)
}

fn value<'a>(place: &str, values: &[Value<'a>]) -> Value<'a> {
    let place = place.chars().next().and_then(|digit| digit.to_digit(36));
    place.and_then(|place| values.get(usize::try_from(place).ok()?)).copied().unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::{Value, fill as fill_in};

    fn fill(line: &str, values: &[Value<'_>]) -> String {
        fill_in(line, values, false)
    }

    #[test]
    fn placeholders_are_filled_and_choices_made() {
        assert_eq!(fill("Set \u{1}0\u{1} to \u{1}1\u{1}.", &[("it", ""), ("$5", "")]), "Set it to $5.");
        let drinks = "\u{1}0\u{2}0\u{3}No drink\u{2}one\u{3}1 drink\u{2}other\u{3}\u{4}0\u{4} drinks\u{1} sold.";
        assert_eq!(fill(drinks, &[("0", "other")]), "No drink sold.");
        assert_eq!(fill(drinks, &[("1", "one")]), "1 drink sold.");
        assert_eq!(fill(drinks, &[("1,200", "other")]), "1,200 drinks sold.");
        assert_eq!(fill(drinks, &[("2", "dual")]), "2 drinks sold.");
    }

    #[test]
    fn what_is_filled_in_is_not_filled_itself() {
        assert_eq!(fill("\u{1}0\u{1}, \u{1}1\u{1}", &[("\u{1}1\u{1}", ""), ("b", "")]), "\u{1}1\u{1}, b");
    }

    #[test]
    fn what_is_filled_in_keeps_its_direction_where_letters_run_from_right_to_left() {
        let mirrored = |line, values: &[Value<'_>]| fill_in(line, values, true);
        assert_eq!(mirrored("Set \u{1}0\u{1}.", &[("Kale 2", "")]), "Set \u{2068}Kale 2\u{2069}.");
        let drinks = "\u{1}0\u{2}0\u{3}No drink\u{2}other\u{3}\u{4}0\u{4} drinks\u{1} sold.";
        assert_eq!(mirrored(drinks, &[("0", "other")]), "No drink sold.");
        assert_eq!(mirrored(drinks, &[("12", "other")]), "\u{2068}12\u{2069} drinks sold.");
        assert_eq!(mirrored("Plain.", &[]), "Plain.");
    }
}
