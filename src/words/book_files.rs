//! Why a book file cannot be taken in.

use super::kinds::{kind, kind_in_file, named};
use super::number;
use super::refusals::problem_at;
use crate::book::Refusal;
use crate::drink::label::Law;
use crate::exchange::{BookFileError, Counts, Fault, Place, Preview};
use crate::foundation::measure::System;
use crate::say;

/// The sentence for a book file that cannot be taken in.
pub fn book_file_error(error: &BookFileError) -> String {
    match error {
        BookFileError::TooLarge { .. } => say!(book::file_too_large).to_string(),
        BookFileError::Empty => say!(book::file_empty).to_string(),
        BookFileError::NotText => say!(book::file_not_text).to_string(),
        BookFileError::NotJson { line, .. } => say!(book::file_damaged, line = line.to_string()),
        BookFileError::CutShort { line } => say!(book::file_cut_short, line = line.to_string()),
        BookFileError::Foreign { format: Some(format) } => say!(book::file_foreign_named, format = format),
        BookFileError::Foreign { format: None } => say!(book::file_foreign).to_string(),
        BookFileError::NoVersion => say!(book::file_no_version).to_string(),
        BookFileError::Newer { version } => say!(book::file_newer, version = version.to_string()),
        BookFileError::Value { place, fault } => at(place.line, &way(place), value(fault)),
        BookFileError::Twice { key, name, line } => {
            at(*line, &named(*key, name), say!(book::in_file_twice).to_string())
        }
        BookFileError::Refused { key, name, line, refusal } => at(*line, &named(*key, name), refused(refusal)),
    }
}

/// What is wrong at a place, which may be the whole file.
fn at(line: usize, place: &str, problem: String) -> String {
    let line = line.to_string();
    if place.is_empty() {
        say!(book::at_line, line = line, problem = problem)
    } else {
        say!(book::at_place, line = line, place = place, problem = problem)
    }
}

fn refused(refusal: &Refusal) -> String {
    match refusal {
        Refusal::Missing { key: needed, .. } => say!(book::not_in_file, kind = kind(*needed)),
        Refusal::Field { field, problem, .. } => {
            [say!(book::not_imported), &*problem_at(*field, *problem, System::Metric, Law::UnitedStates)].join(" ")
        }
        Refusal::InUse { .. } => say!(book::does_not_fit_file).to_string(),
    }
}

/// The way to a value: "ingredient “Apples”, field “packs 2 price”". The names of fields are the
/// file's own.
fn way(place: &Place) -> String {
    let mut steps = place.path.split('.').filter(|step| !step.is_empty()).map(parted);
    let record = steps.next().map(|(list, position)| match (kind_in_file(list), position) {
        (Some(kind), Some(_)) if !place.name.is_empty() => say!(book::kind_named, kind = kind, name = &place.name),
        (Some(kind), Some(position)) => say!(book::kind_numbered, kind = kind, number = position),
        (Some(kind), None) if list == "settings" => kind.to_string(),
        (_, position) => say!(book::file_field, field = in_file(list, position)),
    });
    let field: Vec<String> = steps.map(|(field, position)| in_file(field, position)).collect();
    let field = (!field.is_empty()).then(|| say!(book::file_field, field = field.join(" ")));
    record.into_iter().chain(field).collect::<Vec<_>>().join(", ")
}

/// A step of a path: the field, and its place in a list, from 1.
fn parted(step: &str) -> (&str, Option<String>) {
    let (field, position) = step.split_once('[').unwrap_or((step, ""));
    let position = position.split(']').next().and_then(|position| position.parse().ok());
    (field, position.map(|position: usize| position.saturating_add(1).to_string()))
}

fn in_file(field: &str, position: Option<String>) -> String {
    match position {
        Some(position) => format!("{field} {position}"),
        None => field.to_string(),
    }
}

fn value(fault: &Fault) -> String {
    match fault {
        Fault::UnknownField(name) => say!(book::field_unknown, field = name),
        Fault::MissingField(name) => say!(book::field_missing, field = name),
        Fault::RepeatedField(name) => say!(book::field_twice, field = name),
        Fault::TooMany(most) => say!(book::list_too_long, most = number(*most)),
        Fault::TooLarge(bytes) => {
            say!(book::part_too_large, megabytes = number(bytes.checked_div(1_000_000).unwrap_or_default()))
        }
        Fault::Unreadable(reason) => expected(reason),
    }
}

/// What to type in the place of a value. The reader says it in the words of programs, which nobody
/// else should have to read.
fn expected(reason: &str) -> String {
    let kinds = [
        ("is not an amount", say!(book::type_amount)),
        ("is not a length", say!(book::type_length)),
        ("is not a temperature", say!(book::type_temperature)),
        ("is not a day", say!(book::type_day)),
        ("is not a currency", say!(book::type_currency)),
        ("is not a plain decimal", say!(book::type_decimal)),
        ("is not an id", say!(book::type_id)),
    ];
    if let Some((_, instead)) = kinds.iter().find(|(mark, _)| reason.contains(mark)) {
        let found = reason.split_once('"').and_then(|(_, rest)| rest.rsplit_once("\" is not "));
        return match found {
            Some((found, _)) => [&*say!(book::value_wrong, found = as_typed(found)), instead].join(" "),
            None => (*instead).to_string(),
        };
    }
    // A mark of the reader's own may stand in what was found, not in the choices after it.
    let variant = reason.strip_prefix("unknown variant").and_then(|rest| rest.rsplit_once(", expected "));
    if let Some((found, wanted)) = variant {
        let choices = wanted.split('`').skip(1).step_by(2).take(3).map(|choice| format!("\"{choice}\""));
        let choices = choices.collect::<Vec<String>>().join(", ");
        let found = found.strip_prefix(" `").and_then(|rest| rest.strip_suffix('`')).unwrap_or(found);
        return [say!(book::value_wrong, found = found), say!(book::type_choice, choices = choices)].join(" ");
    }
    let mut quoted = reason.split('`').skip(1).step_by(2);
    let wanted = reason.rsplit_once(", expected ").map(|(_, wanted)| wanted);
    let wanted = wanted.or_else(|| reason.strip_prefix("expected "));
    let is_number = !reason.starts_with("invalid type: boolean");
    let instead = match (wanted, quoted.next()) {
        (Some("a string"), Some(bare)) if is_number => return say!(book::type_in_quotes, bare = bare),
        (Some("a string"), _) => say!(book::type_text),
        (Some("a sequence"), _) => say!(book::type_list),
        (Some("a boolean"), _) => say!(book::type_yes_no),
        (Some(wanted), _) if wanted.starts_with("a volume") || wanted.contains("cup or bottle") => {
            say!(book::type_volume)
        }
        (Some("value"), _) => say!(book::type_one_field),
        (Some(_), _) => say!(book::type_group),
        (None, _) => say!(book::type_anew),
    };
    instead.to_string()
}

/// A text as the file has it: the reader puts a backslash before quotation marks and backslashes.
fn as_typed(found: &str) -> String {
    let mut typed = String::new();
    let mut letters = found.chars();
    while let Some(letter) = letters.next() {
        let escaped = (letter == '\\').then(|| letters.next()).flatten();
        typed.push(escaped.unwrap_or(letter));
    }
    typed
}

/// What an import would do, a line for each kind of record.
pub fn import_changes(preview: &Preview) -> Vec<String> {
    if preview.changes_nothing() {
        return vec![say!(book::same_as_open).to_string()];
    }
    let line = |kind: &str, counts: Counts| {
        let Counts { added, changed, removed } = counts;
        let [added, changed, removed] = [added, changed, removed].map(number);
        (counts != Counts::default())
            .then(|| say!(book::import_counts, kind = kind, added = added, changed = changed, removed = removed))
    };
    let kinds = [
        line(say!(first::drinks), preview.drinks),
        line(say!(first::sizes), preview.offers),
        line(say!(drinks::ingredients), preview.ingredients),
        line(say!(common::packaging), preview.packagings),
        line(say!(goods::packaging_kits), preview.packaging_sets),
        line(say!(first::containers), preview.containers),
        line(say!(market::weeks_of_sales), preview.weeks),
        line(say!(decide::local_prices), preview.seen_prices),
        line(say!(sales::trials), preview.trials),
        line(say!(sales::scenarios), preview.scenarios),
        line(say!(counter::batches), preview.batches),
        preview.buying_list_changes.then(|| say!(book::buying_list_changed).to_string()),
        preview.settings_change.then(|| say!(book::settings_changed).to_string()),
    ];
    kinds.into_iter().flatten().collect()
}
