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

/// What stands in for a placeholder, and the plural form it asks for, if it is a number.
pub type Value<'a> = (&'a str, &'a str);

/// A text without placeholders.
pub fn plain(place: u16) -> &'static str {
    voice::here().texts.line(place)
}

/// A text with its placeholders filled.
pub fn filled(place: u16, values: &[Value<'_>]) -> String {
    fill(plain(place), values)
}

/// A line with its placeholders filled and its choices made.
fn fill(line: &str, values: &[Value<'_>]) -> String {
    let mut text = String::new();
    let mut special = false;
    for piece in line.split(SPECIAL) {
        match piece.split_once(WAY) {
            _ if !special => text.push_str(piece),
            None => text.push_str(value(piece, values).0),
            Some((place, ways)) => fill_way(chosen(ways, value(place, values)), values, &mut text),
        }
        special = !special;
    }
    text
}

fn fill_way(way: &str, values: &[Value<'_>], text: &mut String) {
    let mut within = false;
    for piece in way.split(WITHIN) {
        text.push_str(if within { value(piece, values).0 } else { piece });
        within = !within;
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
    use super::fill;

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
}
