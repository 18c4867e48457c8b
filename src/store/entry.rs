//! The list of books.

use serde::{Deserialize, Serialize};

use crate::book::{Book, BookId, from_json};

/// A book in the list, as it is known without opening it.
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
    /// When it was last changed, in milliseconds since 1970. `None` if that was before entries had
    /// this field.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub changed: Option<u64>,
    /// How many drinks it has. `None` as for `changed`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub drinks: Option<usize>,
}

impl BookEntry {
    /// The entry of a new book. `at` is the moment, in milliseconds since 1970.
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
    /// If the text is not such an entry: what is wrong with it, for whoever repairs it.
    pub fn from_text(text: &str) -> Result<BookEntry, String> {
        from_json(text).map_err(|error| error.to_string())
    }

    /// The entry as JSON.
    ///
    /// # Errors
    /// An error of the JSON writer. No entry that can be built causes one.
    pub fn text(&self) -> Result<String, serde_json::Error> {
        serde_json::to_string(self)
    }
}
