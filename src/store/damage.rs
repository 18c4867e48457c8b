//! Reading a stored book, and what is known of a damaged one.

use super::{BookEntry, Fault, Row, StoredBook};
use crate::book::{Book, BookId, Refusal};

/// A stored book that does not read, with everything that is stored of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Damage {
    /// The book.
    pub book: BookId,
    /// What was stored.
    pub stored: StoredBook,
    /// What is wrong with it; at least one thing.
    pub causes: Vec<Cause>,
}

/// One thing that is wrong with a stored book.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Cause {
    /// Its entry in the list of books does not read.
    Entry {
        /// What is wrong, for whoever repairs it.
        why: String,
    },
    /// A row does not read.
    Row {
        /// Which of the rows, from 0.
        index: usize,
        /// What is wrong, for whoever repairs it.
        why: String,
    },
    /// Each row reads, but together they are not a valid book.
    Book(Refusal),
    /// The entry and the rows have different revisions.
    Revisions {
        /// The entry's revision.
        entry: u64,
        /// The latest revision of a row.
        rows: u64,
    },
}

impl Damage {
    /// Everything that is stored of the book, to be downloaded: one line for its entry, one for each
    /// row.
    pub fn text(&self) -> String {
        let lines = self.stored.entry.iter().chain(&self.stored.rows);
        lines.flat_map(|line| [line.as_str(), "\n"]).collect()
    }
}

/// Reads an entry and its rows, be it all of them or only the latest.
pub(super) fn read(book: BookId, stored: StoredBook) -> Result<(BookEntry, Vec<Row>), Fault> {
    let mut causes = Vec::new();
    let entry = match stored.entry.as_deref().map(BookEntry::from_text) {
        None if stored.rows.is_empty() => return Err(Fault::Gone),
        None => Err("not there".to_string()),
        Some(entry) => entry,
    };
    let entry = entry.map_err(|why| causes.push(Cause::Entry { why })).ok();
    let mut rows = Vec::with_capacity(stored.rows.len());
    for (index, text) in stored.rows.iter().enumerate() {
        match Row::from_text(text) {
            Ok(row) if row.book != book => {
                causes.push(Cause::Row { index, why: format!("it is of book {}", row.book) });
            }
            Ok(row) => rows.push(row),
            Err(why) => causes.push(Cause::Row { index, why }),
        }
    }
    let last = rows.iter().map(|row| row.revision).max();
    match (entry, last) {
        (Some(entry), Some(last)) if causes.is_empty() && entry.revision != last => {
            causes.push(Cause::Revisions { entry: entry.revision, rows: last });
        }
        (Some(entry), _) if causes.is_empty() => return Ok((entry, rows)),
        _ => {}
    }
    Err(Fault::Damaged(Box::new(Damage { book, stored, causes })))
}

/// Reads a whole stored book.
pub(super) fn open(id: BookId, stored: StoredBook) -> Result<(BookEntry, Vec<Row>, Book), Fault> {
    let (entry, rows) = read(id, stored.clone())?;
    match Book::from_records(rows.iter().filter_map(|row| row.record.clone())) {
        Ok(book) => Ok((entry, rows, book)),
        Err(refusal) => Err(Fault::Damaged(Box::new(Damage { book: id, stored, causes: vec![Cause::Book(refusal)] }))),
    }
}
