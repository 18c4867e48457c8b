//! Why a book file cannot be taken in.

use super::number;
use super::refusals::{problem_at, the_quoted, with_article};
use crate::book::{Key, Refusal};
use crate::exchange::{BookFileError, Counts, Fault, Place, Preview};

/// The sentence for a book file that cannot be taken in.
pub fn book_file_error(error: &BookFileError) -> String {
    match error {
        BookFileError::TooLarge { .. } => {
            "The file is larger than 10 MB, more than any book needs. Choose another.".to_string()
        }
        BookFileError::Empty => "The file is empty. Choose another.".to_string(),
        BookFileError::NotText => "The file is not text. Choose a book file saved by Brimwright.".to_string(),
        BookFileError::NotJson { line, column } => format!(
            "The file is not in order at line {line}, column {column}. It may have been changed by hand; choose another copy."
        ),
        BookFileError::CutShort { line } => {
            format!("The file stops in the middle, at line {line}. It may be half a download; fetch it again.")
        }
        BookFileError::Foreign { format: Some(format) } => {
            format!("The file is a “{format}”, not a Brimwright book. Choose a book file.")
        }
        BookFileError::Foreign { format: None } => {
            "The file is something else, not a Brimwright book. Choose a book file.".to_string()
        }
        BookFileError::NoVersion => "The file does not say which version it is. Choose another copy.".to_string(),
        BookFileError::Newer { version } => {
            format!("The file is of version {version}, newer than this Brimwright knows. Update Brimwright first.")
        }
        BookFileError::Value { place, fault } => format!("{}: {}", at(place), value(fault)),
        BookFileError::Twice { key, name, line } => {
            format!("Line {line}: {} is in the file twice under one id. Keep one of them.", the_quoted(*key, name))
        }
        BookFileError::Refused { key, name, line, refusal } => {
            format!("Line {line}: {}", refused(*key, name, refusal))
        }
    }
}

fn refused(key: Key, name: &str, refusal: &Refusal) -> String {
    match refusal {
        Refusal::Missing { key: needed, .. } => format!(
            "{} needs {} that is not in the file. Add it to the file, or choose another copy.",
            the_quoted(key, name),
            with_article(*needed)
        ),
        Refusal::Field { field, problem, .. } => {
            format!("{} cannot be taken in. {}", the_quoted(key, name), problem_at(*field, *problem))
        }
        Refusal::InUse { .. } => format!("{} does not fit the rest. Choose another copy.", the_quoted(key, name)),
    }
}

/// The line and the way to a value: "Line 12, ingredient “Apples”, pack 2, price".
fn at(place: &Place) -> String {
    let mut said = format!("Line {}", place.line);
    for (step, name) in place.path.split('.').zip(std::iter::once(place.name.as_str()).chain(std::iter::repeat(""))) {
        let (field, position) = step.split_once('[').unwrap_or((step, ""));
        let position = position.split(']').next().and_then(|position| position.parse().ok());
        let called = match position.map(|position: usize| position.saturating_add(1)) {
            _ if field.is_empty() => continue,
            None => field.replace('-', " "),
            Some(_) if !name.is_empty() => format!("{} “{name}”", one_of(field)),
            Some(position) => format!("{} {position}", one_of(field)),
        };
        said.push_str(", ");
        said.push_str(&called);
    }
    said
}

/// What one entry of a list of the file is called.
fn one_of(list: &str) -> String {
    match list {
        "offers" => "size".to_string(),
        "seen-prices" => "price seen elsewhere".to_string(),
        "batches" => "batch".to_string(),
        "earlier" => "earlier price".to_string(),
        "sold" | "makes" => "line".to_string(),
        "set" | "uses" => "packaging".to_string(),
        "shared" => "packaging set".to_string(),
        list => list.trim_end_matches('s').replace('-', " "),
    }
}

fn value(fault: &Fault) -> String {
    match fault {
        Fault::UnknownField(name) => format!("“{name}” is not a field that belongs here. Remove it."),
        Fault::MissingField(name) => format!("“{name}” is missing. Add it, or choose another copy."),
        Fault::RepeatedField(name) => format!("“{name}” is here twice. Keep one of them."),
        Fault::TooMany(most) => {
            let most = number(*most);
            format!("the list goes on after {most} entries, more than a book can hold. Choose another copy.")
        }
        Fault::TooLarge(bytes) => {
            let megabytes = bytes.checked_div(1_000_000).unwrap_or_default();
            format!("this part alone is larger than {megabytes} MB, more than any book needs. Choose another copy.")
        }
        Fault::Unreadable(reason) => expected(reason),
    }
}

/// What is wanted in the place of a value, with an example. The reader says it in the words of
/// programs, which nobody else should have to read.
fn expected(reason: &str) -> String {
    let found = reason.split_once('"').and_then(|(_, rest)| rest.rsplit_once("\" is not "));
    let found = found.map_or_else(|| "This is not".to_string(), |(found, _)| format!("“{found}” is not"));
    let kinds = [
        ("is not an amount", "an amount. Type a number and a unit, such as \"40 lb\" or \"16 fl oz\"."),
        ("is not a length", "a length. Type a number and a unit, such as \"90 mm\" or \"3.5 in\"."),
        ("is not a day", "a day. Type year, month and day, such as \"2026-11-23\"."),
        ("is not a currency", "a currency known here. Type its code, such as \"USD\"."),
        ("is not a plain decimal", "a number. Type up to 9 digits, a point and up to 8 more, such as \"25.80\"."),
        ("is not an id", "an id. Type 1 to 16 of the signs 0 to 9 and a to f, such as \"1a\"."),
    ];
    if let Some((_, kind)) = kinds.iter().find(|(mark, _)| reason.contains(mark)) {
        return format!("{found} {kind}");
    }
    let mut quoted = reason.split('`').skip(1).step_by(2);
    if reason.starts_with("unknown variant") {
        let found = quoted.next().unwrap_or_default();
        let choices: Vec<String> = quoted.take(3).map(|choice| format!("\"{choice}\"")).collect();
        return format!("“{found}” is not a choice here. Type one such as {}.", choices.join(", "));
    }
    let wanted = reason.rsplit_once(", expected ").map(|(_, wanted)| wanted);
    match (wanted.or_else(|| reason.strip_prefix("expected ")), quoted.next()) {
        (Some("a string"), Some(bare)) => {
            format!("{bare} stands without quotation marks. Type \"{bare}\".")
        }
        (Some("a string"), None) => "text in quotation marks belongs here, such as \"25.80\".".to_string(),
        (Some("a sequence"), _) => "a list in square brackets belongs here, such as [].".to_string(),
        (Some("a boolean"), _) => "true or false belongs here, such as false.".to_string(),
        (Some(wanted), _) if wanted.starts_with("a volume") || wanted.contains("cup or bottle") => {
            "a volume belongs here, such as \"16 fl oz\".".to_string()
        }
        (Some(_), _) => "a group in braces belongs here, such as {\"share\": \"0.05\"}.".to_string(),
        (None, _) => "this value cannot be read. Type it anew, or choose another copy.".to_string(),
    }
}

/// What an import would do, a line for each kind of record.
pub fn import_changes(preview: &Preview) -> Vec<String> {
    if preview.changes_nothing() {
        return vec!["Nothing differs from the open book.".to_string()];
    }
    let line = |name: &str, counts: Counts| {
        let Counts { added, changed, removed } = counts;
        (counts != Counts::default()).then(|| format!("{name}: {added} new, {changed} changed, {removed} taken out"))
    };
    let kinds = [
        line("Drinks", preview.drinks),
        line("Sizes sold", preview.offers),
        line("Ingredients", preview.ingredients),
        line("Packaging", preview.packagings),
        line("Packaging sets", preview.packaging_sets),
        line("Containers", preview.containers),
        line("Weeks of sales", preview.weeks),
        line("Prices seen elsewhere", preview.seen_prices),
        line("Trials", preview.trials),
        line("Scenarios", preview.scenarios),
        line("Batches", preview.batches),
        preview.buying_list_changes.then(|| "Buying list: changed".to_string()),
        preview.settings_change.then(|| "Settings: changed".to_string()),
    ];
    kinds.into_iter().flatten().collect()
}
