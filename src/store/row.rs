//! Rows: a record with its revision, as it is stored.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use crate::book::{Book, BookId, Edit, Key, Record, from_json};

/// A record of a book as of its last change.
///
/// It is written as JSON. A removed record leaves a row without one (a tombstone), so that other tabs
/// learn of it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "Stored", into = "Stored")]
pub struct Row {
    /// The book.
    pub book: BookId,
    /// The key of the record.
    pub key: Key,
    /// The book's revision that wrote this row; at least 1.
    pub revision: u64,
    /// The revision of the row before this one, or 0 if this is the first.
    pub grew_from: u64,
    /// The record, or `None` if it was removed.
    pub record: Option<Record>,
}

impl Row {
    /// Reads what [`Row::text`] writes.
    ///
    /// # Errors
    /// If the text is not such a row: what is wrong with it, for whoever repairs it.
    pub fn from_text(text: &str) -> Result<Row, String> {
        from_json(text).map_err(|error| error.to_string())
    }

    /// The row as JSON.
    ///
    /// # Errors
    /// An error of the JSON writer. No row that can be built causes one.
    pub fn text(&self) -> Result<String, serde_json::Error> {
        serde_json::to_string(self)
    }
}

/// The edit that brings the rows that another tab saved into `book`.
pub fn remote_edit(book: &Book, rows: &[Row]) -> Edit {
    let mut records = BTreeMap::new();
    records.extend(rows.iter().map(|row| (row.key, row.record.clone())));
    Edit::records(book, &records)
}

#[derive(Clone, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
struct Stored {
    book: BookId,
    key: String,
    revision: u64,
    grew_from: u64,
    record: Option<Record>,
}

impl From<Row> for Stored {
    fn from(row: Row) -> Stored {
        let Row { book, key, revision, grew_from, record } = row;
        Stored { book, key: key.to_string(), revision, grew_from, record }
    }
}

impl TryFrom<Stored> for Row {
    type Error = String;

    fn try_from(stored: Stored) -> Result<Row, String> {
        let Stored { book, key, revision, grew_from, record } = stored;
        let key = Key::from_text(&key).ok_or_else(|| format!("{key:?} is not a key"))?;
        if let Some(other) = record.as_ref().map(Record::key).filter(|other| *other != key) {
            return Err(format!("{other} is stored at {key}"));
        }
        if grew_from >= revision {
            return Err(format!("revision {revision} cannot have grown from {grew_from}"));
        }
        Ok(Row { book, key, revision, grew_from, record })
    }
}
