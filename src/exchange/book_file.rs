//! The book file: a whole book as one JSON object, documented by the JSON Schema beside the app.

use std::collections::BTreeSet;

use serde::de::IgnoredAny;
use serde::{Deserialize, Serialize};
use serde_json::error::Category;

use super::header::{Header, Said};
use super::salvage::salvage;
use super::{BookFileError, TakenIn, place};
use crate::book::{
    Batch, Book, BuyingList, Container, Drink, Ingredient, Key, Offer, Packaging, PackagingSet, Record, Refusal,
    Scenario, SeenPrice, Settings, Trial, Week, from_json,
};

/// What the file says it is.
pub const FORMAT: &str = "brimwright-book";

/// The version written, and the newest that is read.
pub const VERSION: u64 = 3;

/// Largest file that is read, in bytes.
pub const MAX_BYTES: usize = 10_000_000;

/// The newest version as it is read. Versions 1 and 2 are the same with less in them.
#[derive(Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
struct Lists {
    #[serde(rename = "format")]
    _format: IgnoredAny,
    #[serde(rename = "version")]
    _version: IgnoredAny,
    settings: Settings,
    ingredients: Vec<Ingredient>,
    packagings: Vec<Packaging>,
    #[serde(default)]
    packaging_sets: Vec<PackagingSet>,
    containers: Vec<Container>,
    drinks: Vec<Drink>,
    offers: Vec<Offer>,
    #[serde(default)]
    weeks: Vec<Week>,
    #[serde(default)]
    seen_prices: Vec<SeenPrice>,
    #[serde(default)]
    trials: Vec<Trial>,
    #[serde(default)]
    scenarios: Vec<Scenario>,
    #[serde(default)]
    batches: Vec<Batch>,
    #[serde(default)]
    buying_list: Option<BuyingList>,
}

/// The book as a file: JSON with each record on a line of its own, in the order of their keys,
/// and a closing line end. The same book gives the same bytes.
pub fn write(book: &Book) -> String {
    let mut text = format!("{{\n\"format\": \"{FORMAT}\",\n\"version\": {VERSION},\n\"settings\": ");
    text.push_str(&line(book.settings()));
    list(&mut text, "ingredients", book.ingredients().map(line).collect());
    list(&mut text, "packagings", book.packagings().map(line).collect());
    list(&mut text, "packaging-sets", book.packaging_sets().map(line).collect());
    list(&mut text, "containers", book.containers().map(line).collect());
    list(&mut text, "drinks", book.drinks().map(line).collect());
    list(&mut text, "offers", book.offers().map(line).collect());
    list(&mut text, "weeks", book.weeks().map(line).collect());
    list(&mut text, "seen-prices", book.seen_prices().map(line).collect());
    list(&mut text, "trials", book.trials().map(line).collect());
    list(&mut text, "scenarios", book.scenarios().map(line).collect());
    list(&mut text, "batches", book.batches().map(line).collect());
    if let Some(buying_list) = book.buying_list() {
        text.push_str(",\n\"buying-list\": ");
        text.push_str(&line(buying_list));
    }
    text.push_str("\n}\n");
    text
}

/// A record on one line.
fn line<T: Serialize>(record: &T) -> String {
    // Writing to memory fails only for maps whose keys are not text, and records have none.
    serde_json::to_string(record).unwrap_or_default()
}

fn list(text: &mut String, name: &str, lines: Vec<String>) {
    text.push_str(&format!(",\n\"{name}\": ["));
    if !lines.is_empty() {
        text.push('\n');
        text.push_str(&lines.join(",\n"));
        text.push('\n');
    }
    text.push(']');
}

/// Reads a book file.
///
/// # Errors
/// A [`BookFileError`] that says what is wrong and where; never a panic, whatever the bytes.
pub fn read(bytes: impl AsRef<[u8]>) -> Result<Book, BookFileError> {
    read_text(text(bytes.as_ref())?)
}

/// Reads a book file, or the lines of a stored book that did not open, as far as they are whole.
///
/// # Errors
/// As [`read`]: of what is stored at least one row must be whole.
pub fn take_in(bytes: impl AsRef<[u8]>) -> Result<TakenIn, BookFileError> {
    let text = text(bytes.as_ref())?;
    match salvage(text) {
        Some(taken) => Ok(taken),
        None => Ok(TakenIn { book: read_text(text)?, left_out: Vec::new() }),
    }
}

/// The text of a file that is not too large.
fn text(bytes: &[u8]) -> Result<&str, BookFileError> {
    if bytes.len() > MAX_BYTES {
        return Err(BookFileError::TooLarge { bytes: bytes.len() });
    }
    let text = std::str::from_utf8(bytes).map_err(|_| BookFileError::NotText)?;
    Ok(text.strip_prefix('\u{feff}').unwrap_or(text))
}

fn read_text(text: &str) -> Result<Book, BookFileError> {
    let first = text.trim_start().chars().next().ok_or(BookFileError::Empty)?;
    let header = header(text);
    if first != '{' && !matches!(header, Err(BookFileError::NotJson { .. } | BookFileError::CutShort { .. })) {
        return Err(BookFileError::Foreign { format: None });
    }
    let header = header?;
    match header.format {
        Said::Text(format) if format == FORMAT => {}
        Said::Text(format) => return Err(BookFileError::foreign(&format)),
        Said::Nothing | Said::Number(_) | Said::Other => return Err(BookFileError::Foreign { format: None }),
    }
    match header.version {
        Said::Number(1..=VERSION) => book(read_lists(text)?),
        Said::Number(version) if version > VERSION => Err(BookFileError::Newer { version }),
        Said::Number(_) | Said::Text(_) | Said::Nothing | Said::Other => Err(BookFileError::NoVersion),
    }
}

/// Goes through the whole text, so that what is read after it is known to be JSON.
fn header(text: &str) -> Result<Header, BookFileError> {
    serde_json::from_str(text).map_err(|error| match error.classify() {
        Category::Data => place::unreadable(text, &error),
        Category::Eof => BookFileError::CutShort { line: error.line() },
        Category::Syntax | Category::Io => BookFileError::NotJson { line: error.line(), column: error.column() },
    })
}

fn read_lists(text: &str) -> Result<Vec<Record>, BookFileError> {
    let file: Lists = from_json(text).map_err(|error| place::unreadable(text, &error))?;
    let mut records = vec![Record::Settings(Box::new(file.settings))];
    records.extend(file.ingredients.into_iter().map(Record::Ingredient));
    records.extend(file.packagings.into_iter().map(Record::Packaging));
    records.extend(file.packaging_sets.into_iter().map(Record::PackagingSet));
    records.extend(file.containers.into_iter().map(Record::Container));
    records.extend(file.drinks.into_iter().map(Record::Drink));
    records.extend(file.offers.into_iter().map(Record::Offer));
    records.extend(file.weeks.into_iter().map(Record::Week));
    records.extend(file.seen_prices.into_iter().map(Record::SeenPrice));
    records.extend(file.trials.into_iter().map(Record::Trial));
    records.extend(file.scenarios.into_iter().map(Record::Scenario));
    records.extend(file.batches.into_iter().map(Record::Batch));
    records.extend(file.buying_list.map(Record::BuyingList));
    Ok(records)
}

/// Puts the records in a book: no id twice, and each by the checks of an edit.
fn book(records: Vec<Record>) -> Result<Book, BookFileError> {
    let mut keys = BTreeSet::new();
    if let Some(key) = records.iter().map(Record::key).find(|key| !keys.insert(*key)) {
        return Err(BookFileError::Twice { key, name: name(&records, key) });
    }
    Book::from_records(records.iter().cloned()).map_err(|refusal| {
        let key = match &refusal {
            Refusal::Missing { key, needed_by } => needed_by.unwrap_or(*key),
            Refusal::InUse { key, .. } | Refusal::Field { key, .. } => *key,
        };
        BookFileError::Refused { key, name: name(&records, key), refusal }
    })
}

/// The name of the record at `key`; an offer's is its drink's and container's.
fn name(records: &[Record], key: Key) -> String {
    let own = records.iter().find(|record| record.key() == key).map(|record| match record {
        Record::Offer(offer) => {
            let parts = [Key::Drink(offer.drink), Key::Container(offer.container)].map(|part| name(records, part));
            parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(", ")
        }
        record => record.name().to_string(),
    });
    own.map(|name| super::book_file_error::shortened(&name)).unwrap_or_default()
}
