//! The list of books.

use serde::{Deserialize, Serialize};

use crate::book::{Book, BookId, from_json};

/// A book as the shelf lists it, without opening it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct BookEntry {
    /// Its id.
    pub id: BookId,
    /// Its name, as in its settings.
    pub name: String,
    /// Whether its data is invented, as in its settings.
    pub invented: bool,
    /// How many times it was saved; at least 1.
    pub revision: u64,
}

impl BookEntry {
    /// The entry of `book` at `revision`.
    pub fn new(id: BookId, book: &Book, revision: u64) -> BookEntry {
        let settings = book.settings();
        BookEntry { id, name: settings.name.clone(), invented: settings.invented, revision }
    }

    /// Reads what [`BookEntry::text`] writes.
    ///
    /// # Errors
    /// What is wrong, for whoever mends it.
    pub fn from_text(text: &str) -> Result<BookEntry, String> {
        from_json(text).map_err(|error| error.to_string())
    }

    /// The entry as JSON.
    ///
    /// # Errors
    /// None for any entry that can be built; JSON's own error otherwise.
    pub fn text(&self) -> Result<String, serde_json::Error> {
        serde_json::to_string(self)
    }
}
