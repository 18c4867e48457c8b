//! What of a stored book could not be taken in again.

use super::kinds::named;
use super::number;
use super::refusals::problem_at;
use crate::book::{Key, Refusal};
use crate::drink::label::Law;
use crate::exchange::{LeftOut, WhyLeftOut};
use crate::foundation::measure::System;
use crate::say;

/// Why something of a stored book was left out, and what to do.
pub fn not_taken(out: &LeftOut) -> String {
    let about = if says_all(out) { None } else { out.key };
    let why = why(out);
    match (out.line, about) {
        (None, _) => why,
        (Some(line), None) => say!(book::at_line, line = line.to_string(), problem = why),
        (Some(line), Some(key)) => {
            say!(book::at_place, line = line.to_string(), place = named(key, &out.name), problem = why)
        }
    }
}

/// What stands behind those that are told one by one.
pub fn further_not_taken(count: usize) -> String {
    say!(book::and_more, more = number(count))
}

/// Whether the reason names what it is about.
fn says_all(out: &LeftOut) -> bool {
    let lost = matches!(out.why, WhyLeftOut::Damaged | WhyLeftOut::NotThere | WhyLeftOut::TooLong);
    (lost && out.key == Some(Key::Settings)) || out.why == WhyLeftOut::Entry
}

fn why(out: &LeftOut) -> String {
    let settings = out.key == Some(Key::Settings);
    let sentence = match &out.why {
        WhyLeftOut::Damaged | WhyLeftOut::NotThere if settings => say!(book::settings_lost),
        WhyLeftOut::Damaged | WhyLeftOut::NotThere if out.key.is_none() => say!(book::record_lost),
        WhyLeftOut::Damaged | WhyLeftOut::NotThere => say!(book::entry_damaged),
        WhyLeftOut::TooLong if settings => say!(book::settings_too_large),
        WhyLeftOut::TooLong if out.key.is_none() => say!(book::record_too_large),
        WhyLeftOut::TooLong => say!(book::entry_too_large),
        WhyLeftOut::Entry => say!(book::title_damaged),
        WhyLeftOut::Older => say!(book::entry_twice),
        WhyLeftOut::Needs(needed, lost) => return say!(book::entry_needs_lost, lost = named(*needed, lost)),
        WhyLeftOut::Lines(count) => return say!(book::entry_without_lines, lines = *count),
        WhyLeftOut::Refused(Refusal::Field { field, problem, .. }) => {
            return [say!(book::left_out), &*problem_at(*field, *problem, System::Metric, Law::UnitedStates)].join(" ");
        }
        WhyLeftOut::Refused(Refusal::Missing { .. } | Refusal::InUse { .. }) => say!(book::entry_does_not_fit),
        WhyLeftOut::Further(count) => return further_not_taken(*count),
    };
    sentence.to_string()
}
