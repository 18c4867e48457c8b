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
    /// When it was changed last, in milliseconds since 1970; none where that was before books
    /// noted it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub changed: Option<u64>,
    /// How many drinks it has; none as above.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub drinks: Option<usize>,
}

impl BookEntry {
    /// The entry of a new book, put on the shelf at this moment, in milliseconds since 1970.
    pub fn new(id: BookId, book: &Book, at: u64) -> BookEntry {
        let settings = book.settings();
        BookEntry {
            id,
            name: settings.name.clone(),
            invented: settings.invented,
            revision: 1,
            changed: Some(at),
            drinks: Some(book.drinks().count()),
        }
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
