//! What of a stored book could not be taken in again.

use super::refusals::{problem_at, the_quoted, with_article};
use super::sales::{batch, week};
use super::{capital, number};
use crate::book::{Key, Refusal};
use crate::exchange::{LeftOut, WhyLeftOut};

/// Why something of a stored book was left out, and what to do.
pub fn not_taken(out: &LeftOut) -> String {
    match out.line {
        Some(line) => format!("Line {line}: {}", sentence(out)),
        None => capital(&sentence(out)),
    }
}

/// What stands behind those that are told one by one.
pub fn further_not_taken(count: usize) -> String {
    format!("And {} more.", number(count))
}

fn sentence(out: &LeftOut) -> String {
    let name = out.key.map_or_else(|| "something".to_string(), |key| named(key, &out.name));
    match &out.why {
        WhyLeftOut::Damaged | WhyLeftOut::NotThere if out.key == Some(Key::Settings) => {
            "the settings are lost. Check currency, units, tax, wage and target in Settings.".to_string()
        }
        WhyLeftOut::Damaged | WhyLeftOut::NotThere if out.key.is_none() => {
            "a record is damaged and nothing tells which. Compare this book with your last copy.".to_string()
        }
        WhyLeftOut::Damaged | WhyLeftOut::NotThere => format!("{name} is damaged. Add it again."),
        WhyLeftOut::TooLong if out.key == Some(Key::Settings) => {
            "the settings are larger than 1 MB. Check currency, units, tax, wage and target in Settings.".to_string()
        }
        WhyLeftOut::TooLong if out.key.is_none() => {
            "a record is larger than 1 MB, more than any record needs. Compare this book with your last copy."
                .to_string()
        }
        WhyLeftOut::TooLong => format!("{name} is larger than 1 MB, more than any record needs. Add it again."),
        WhyLeftOut::Entry => "the title of the book is damaged. Nothing else is lost with it.".to_string(),
        WhyLeftOut::Older => format!("{name} is here twice. The newer one was taken."),
        WhyLeftOut::Needs(needed, lost) => {
            let lost = if lost.is_empty() { with_article(*needed).clone() } else { named(*needed, lost) };
            format!("{name} needs {lost}, which is lost. Add that first, then this.")
        }
        WhyLeftOut::Lines(1) => format!("{name} was taken without 1 line, because what it names is lost."),
        WhyLeftOut::Lines(count) => format!("{name} was taken without {count} lines, because what they name is lost."),
        WhyLeftOut::Refused(Refusal::Field { field, problem, .. }) => {
            format!("{name} was left out. {}", problem_at(*field, *problem))
        }
        WhyLeftOut::Refused(Refusal::Missing { .. } | Refusal::InUse { .. }) => {
            format!("{name} was left out, because it does not fit the rest. Add it again.")
        }
        WhyLeftOut::Further(count) => further_not_taken(*count),
    }
}

/// A record as a person would call it: "the ingredient “Apples”"; "an ingredient" without a name.
fn named(key: Key, name: &str) -> String {
    match key {
        Key::Week(monday) => week(monday),
        Key::Batch(day) => batch(day),
        key if name.is_empty() => with_article(key),
        Key::Settings => the_quoted(key, ""),
        key => the_quoted(key, name),
    }
}
