//! Why a book file cannot be taken in.

use super::refusals;
use crate::book::Book;
use crate::exchange::{BookFileError, Counts, Fault, Place, Preview};

/// The sentence for a book file that cannot be taken in. `open` is the book on the screen.
pub fn book_file_error(error: &BookFileError, open: &Book) -> String {
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
        BookFileError::Value { place, fault } => format!("{} {}", at(place), value(fault)),
        BookFileError::Twice { key, name } => {
            format!("“{name}” ({key}) is in the file twice under one id. Keep one of them.")
        }
        BookFileError::Refused { name, refusal, key } => {
            let name = if name.is_empty() { key.to_string() } else { format!("“{name}”") };
            format!("{name} in the file does not hold: {}", refusals::refusal(refusal, open))
        }
    }
}

fn at(place: &Place) -> String {
    match place.path.as_str() {
        "" => format!("Line {}:", place.line),
        path => format!("Line {} ({path}):", place.line),
    }
}

fn value(fault: &Fault) -> String {
    match fault {
        Fault::UnknownField(name) => format!("“{name}” is not known here. Take it out."),
        Fault::MissingField(name) => format!("“{name}” is missing. Put it in."),
        Fault::RepeatedField(name) => format!("“{name}” stands there twice. Keep one of them."),
        Fault::Unreadable(why) => format!("{why}."),
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
