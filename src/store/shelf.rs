//! The shelf: every book of this browser.

use serde::Deserialize;

use super::sync::{Known, Queue, Replayed, replay};
use super::{
    Backing, BookEntry, BookSync, Change, Commit, Drawer, Durability, Fault, Hooks, Journal, Row, Slip, damage,
};
use crate::book::{Book, BookId, from_json};

/// Every book of this browser.
#[derive(Clone, Debug)]
pub struct Shelf<B> {
    backing: B,
}

/// A book in the list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Listed {
    /// A book.
    Book(BookEntry),
    /// An entry that does not read.
    Damaged {
        /// The book's id, where that much can be read.
        id: Option<BookId>,
        /// The entry as it is stored.
        text: String,
    },
}

/// A book just opened, not yet kept.
#[derive(Debug)]
pub struct Opened<B> {
    backing: B,
    known: Known,
    steps: Vec<Slip>,
    /// What tabs that are gone left, until it is taken up.
    orphaned: Vec<Journal>,
    /// What was taken up of it, and the notes that it stood in.
    queue: Queue,
    journals: Vec<String>,
}

impl<B: Backing> Shelf<B> {
    /// A shelf on what keeps the rows.
    pub fn new(backing: B) -> Shelf<B> {
        Shelf { backing }
    }

    /// What keeps the rows.
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

    /// Puts a new book on the shelf, at this moment in milliseconds since 1970. On the disk when
    /// this returns.
    ///
    /// # Errors
    /// [`Fault::Behind`] where the id is taken; any [`Fault`] of the storage itself.
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

    /// Opens a book, with the steps that are kept beside it: none where those cannot be had. What
    /// a tab had not saved when it went is not in it before [`Opened::replay`].
    ///
    /// # Errors
    /// [`Fault::Gone`] where there is none; [`Fault::Damaged`], with everything that is stored,
    /// where it does not read; any [`Fault`] of the storage itself.
    pub async fn open(&self, id: BookId) -> Result<(Book, Opened<B>), Fault> {
        let orphaned = self.backing.orphaned_journals(id).await;
        // The steps first: of those that another tab does in between, the book alone knows.
        let steps = self.backing.slips(Drawer::Steps, Some(id)).await.unwrap_or_default();
        let stored = self.backing.book(id, 0).await?;
        let (entry, rows, book) = damage::open(id, stored)?;
        let (backing, known) = (self.backing.clone(), Known::new(entry, &rows));
        Ok((book, Opened { backing, known, steps, orphaned, queue: Queue::default(), journals: Vec::new() }))
    }

    /// Deletes a book, whether it reads or not.
    ///
    /// # Errors
    /// Any [`Fault`] of the storage itself; the book is then still there.
    pub async fn delete(&self, id: BookId) -> Result<(), Fault> {
        self.backing.delete(id, &[]).await
    }
}

impl<B: Backing> Opened<B> {
    /// The book's id, name and revision.
    pub fn entry(&self) -> &BookEntry {
        self.known.entry()
    }

    /// The steps that are kept beside it, in their order.
    pub fn steps(&self) -> &[Slip] {
        &self.steps
    }

    /// Does to `book`, as it is stored, what tabs that are gone left of it: saved once it is kept.
    pub fn replay(&mut self, book: Book) -> Book {
        let id = self.known.entry().id;
        let replayed = replay(id, book, &mut self.steps, std::mem::take(&mut self.orphaned));
        let Replayed { book, queue, journals } = replayed;
        (self.queue, self.journals) = (queue, journals);
        book
    }

    /// Whether there is a note of a tab that is gone: it goes once all is saved.
    pub fn has_journals(&self) -> bool {
        !self.journals.is_empty()
    }

    /// What a tab that is gone left, and is to be saved.
    pub fn replayed(&self) -> impl Iterator<Item = &Change> {
        self.queue.not_saved()
    }

    /// Keeps the book from now on.
    pub fn keep(self, hooks: Hooks) -> BookSync<B> {
        BookSync::new(self.backing, self.known, self.queue, self.journals, hooks)
    }
}

/// As much of an entry as it takes to delete its book.
#[derive(Deserialize)]
struct Identified {
    id: BookId,
}

impl Listed {
    /// The book's id, where that much can be read.
    pub fn id(&self) -> Option<BookId> {
        match self {
            Listed::Book(entry) => Some(entry.id),
            Listed::Damaged { id, .. } => *id,
        }
    }

    fn from_text(text: String) -> Listed {
        match BookEntry::from_text(&text) {
            Ok(entry) => Listed::Book(entry),
            Err(_) => {
                let id = from_json(&text).ok().map(|Identified { id }| id);
                Listed::Damaged { id, text }
            }
        }
    }
}
