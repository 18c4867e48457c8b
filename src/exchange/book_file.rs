//! The book file: a whole book as one JSON object, documented by the JSON Schema beside the app.

use serde::Serialize;

use super::reading::{Reading, text};
use super::{BookFileError, TakenIn};
use crate::book::Book;

/// What the file says it is.
pub const FORMAT: &str = "brimwright-book";

/// The version written, and the newest that is read.
pub const VERSION: u64 = 4;

/// Largest file that is read, in bytes.
pub const MAX_BYTES: usize = 10_000_000;

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
    let taken = take_in(bytes)?;
    if taken.left_out.is_empty() { Ok(taken.book) } else { Err(BookFileError::Foreign { format: None }) }
}

/// Reads a book file, or the lines of a stored book that did not open, as far as they are whole.
///
/// # Errors
/// As [`read`]: of what is stored at least one row must be whole.
pub fn take_in(bytes: impl AsRef<[u8]>) -> Result<TakenIn, BookFileError> {
    Reading::of(text(bytes.as_ref())?)?.finish()
}
