//! The shelf: every book in this browser.

use serde::Deserialize;

use super::sync::{Known, Queue, Replayed, replay};
use super::{
    Backing, BookEntry, BookSync, Change, Commit, Drawer, Durability, Fault, Hooks, Journal, Row, Slip, damage,
};
use crate::book::{Book, BookId, from_json};

/// Every book in this browser.
#[derive(Clone, Debug)]
pub struct Shelf<B> {
    backing: B,
}

/// A book in the list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Listed {
    /// A book whose entry reads.
    Book(BookEntry),
    /// A damaged entry.
    Damaged {
        /// The book's id, if that much can be read.
        id: Option<BookId>,
        /// The entry as it is stored.
        text: String,
    },
}

/// A book just opened, whose changes are not saved yet.
#[derive(Debug)]
pub struct Opened<B> {
    backing: B,
    known: Known,
    steps: Vec<Slip>,
    /// The journals of tabs that are gone, until they are replayed.
    orphaned: Vec<Journal>,
    /// What was replayed of them, and their names.
    queue: Queue,
    journals: Vec<String>,
}

impl<B: Backing> Shelf<B> {
    /// A shelf on this storage.
    pub fn new(backing: B) -> Shelf<B> {
        Shelf { backing }
    }

    /// The storage below it.
    pub fn backing(&self) -> &B {
        &self.backing
    }

    /// The books, by id.
    ///
    /// # Errors
    /// Any [`Fault`] of the storage itself.
    pub async fn books(&self) -> Result<Vec<Listed>, Fault> {
        let entries = self.backing.entries().await?;
        Ok(entries.into_iter().map(Listed::from_text).collect())
    }

    /// Puts a new book on the shelf. `at` is the moment, in milliseconds since 1970. The book is on
    /// the disk when this returns.
    ///
    /// # Errors
    /// [`Fault::Behind`] if the id is taken; any [`Fault`] of the storage itself.
    pub async fn create(&self, id: BookId, book: &Book, at: u64) -> Result<(), Fault> {
        let row = |record: crate::book::Record| Row {
            book: id,
            key: record.key(),
            revision: 1,
            grew_from: 0,
            record: Some(record),
        };
        let commit = Commit {
            expected: 0,
            entry: BookEntry::new(id, book, at),
            rows: book.records().map(row).collect(),
            slips: Vec::new(),
            durability: Durability::Strict,
        };
        self.backing.commit(&commit).await
    }

    /// Opens a book as it is stored, with the steps that are kept beside it. If these cannot be
    /// read, it opens without them. What is in the journals of tabs that are gone comes with
    /// [`Opened::replay`].
    ///
    /// # Errors
    /// [`Fault::Gone`] if there is no such book; [`Fault::Damaged`], with everything that is stored
    /// of it, if it does not read; any [`Fault`] of the storage itself.
    pub async fn open(&self, id: BookId) -> Result<(Book, Opened<B>), Fault> {
        let orphaned = self.backing.orphaned_journals(id).await;
        // The steps first: another tab's change in between is then in the book without its step,
        // and never a step without its change.
        let steps = self.backing.slips(Drawer::Steps, Some(id)).await.unwrap_or_default();
        let stored = self.backing.book(id, 0).await?;
        let (entry, rows, book) = damage::open(id, stored)?;
        let (backing, known) = (self.backing.clone(), Known::new(entry, &rows));
        Ok((book, Opened { backing, known, steps, orphaned, queue: Queue::default(), journals: Vec::new() }))
    }
}

impl<B: Backing> Opened<B> {
    /// Its entry in the list of books, as stored.
    pub fn entry(&self) -> &BookEntry {
        self.known.entry()
    }

    /// The steps that are kept beside it, ordered by id.
    pub fn steps(&self) -> &[Slip] {
        &self.steps
    }

    /// Replays on `book`, which is as it is stored, the journals of tabs that are gone. It returns the
    /// book for the screen; what was replayed is saved after [`Opened::keep`].
    pub fn replay(&mut self, book: Book) -> Book {
        let id = self.known.entry().id;
        let replayed = replay(id, book, &mut self.steps, std::mem::take(&mut self.orphaned));
        let Replayed { book, queue, journals } = replayed;
        (self.queue, self.journals) = (queue, journals);
        book
    }

    /// Whether a journal was replayed. It is deleted once everything is saved.
    pub fn has_journals(&self) -> bool {
        !self.journals.is_empty()
    }

    /// The replayed changes that are to be saved.
    pub fn replayed(&self) -> impl Iterator<Item = &Change> {
        self.queue.not_saved()
    }

    /// Saves the book's changes from now on.
    pub fn keep(self, hooks: Hooks) -> BookSync<B> {
        BookSync::new(self.backing, self.known, self.queue, self.journals, hooks)
    }
}

/// The part of an entry that is needed to delete its book.
#[derive(Deserialize)]
struct Identified {
    id: BookId,
}

impl Listed {
    /// The book's id, if that much can be read.
    pub fn id(&self) -> Option<BookId> {
        match self {
            Listed::Book(entry) => Some(entry.id),
            Listed::Damaged { id, .. } => *id,
        }
    }

    fn from_text(text: String) -> Listed {
        if let Ok(entry) = BookEntry::from_text(&text) {
            Listed::Book(entry)
        } else {
            let id = from_json(&text).ok().map(|Identified { id }| id);
            Listed::Damaged { id, text }
        }
    }
}
