//! What keeps the rows.

use std::future::Future;

use super::{BookEntry, Drawer, Fault, Row, Slip};
use crate::book::BookId;

/// What keeps the rows: texts in, texts out. What they mean is for others to say, so that a text
/// that no longer reads is handed on as it is.
pub trait Backing: Clone + 'static {
    /// The entry of every book.
    ///
    /// # Errors
    /// Any [`Fault`] of the storage itself.
    fn entries(&self) -> impl Future<Output = Result<Vec<String>, Fault>>;

    /// A book's entry and its rows later than revision `after`; every row for 0. Read as one, so
    /// that they belong together.
    ///
    /// # Errors
    /// Any [`Fault`] of the storage itself.
    fn book(&self, id: BookId, after: u64) -> impl Future<Output = Result<StoredBook, Fault>>;

    /// Writes all of `commit` or nothing, and returns when it is written. Tells the other tabs.
    ///
    /// # Errors
    /// [`Fault::Behind`] where the stored revision is not the expected one; any [`Fault`] of the
    /// storage itself.
    fn commit(&self, commit: &Commit) -> impl Future<Output = Result<(), Fault>>;

    /// Deletes a book with its steps and notes, whether it reads or not, and keeps `slips` of it: both or
    /// neither. Tells the other tabs.
    ///
    /// # Errors
    /// Any [`Fault`] of the storage itself.
    fn delete(&self, id: BookId, slips: &[Slip]) -> impl Future<Output = Result<(), Fault>>;

    /// The slips in a drawer, of one book or of all, by book and id.
    ///
    /// # Errors
    /// Any [`Fault`] of the storage itself.
    fn slips(&self, drawer: Drawer, book: Option<BookId>) -> impl Future<Output = Result<Vec<Slip>, Fault>>;

    /// The text of one slip; none where there is none.
    ///
    /// # Errors
    /// Any [`Fault`] of the storage itself.
    fn slip(&self, drawer: Drawer, book: BookId, id: &str) -> impl Future<Output = Result<Option<String>, Fault>>;

    /// Writes slips, and throws away those without a text: all or none. On the disk when this
    /// returns.
    ///
    /// # Errors
    /// Any [`Fault`] of the storage itself.
    fn file(&self, slips: &[Slip]) -> impl Future<Output = Result<(), Fault>>;

    /// Writes down at once what this tab has not saved of a book, in place of what it wrote down
    /// before. Gives the name of the note, none where there is no room for it. While the tab is
    /// there the note is its own: [`Backing::orphaned_journals`] does not list it.
    fn write_journal(&self, book: BookId, texts: &[String]) -> Option<String>;

    /// The notes on a book of tabs that are gone.
    fn orphaned_journals(&self, book: BookId) -> impl Future<Output = Vec<Journal>>;

    /// Throws notes away. Those on a book go with it too.
    fn delete_journals(&self, names: &[String]);

    /// Does `work` in its own time.
    fn spawn(&self, work: impl Future<Output = ()> + 'static);
}

/// What is stored of a book, unread.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct StoredBook {
    /// Its entry in the list of books.
    pub entry: Option<String>,
    /// Its rows.
    pub rows: Vec<String>,
}

/// What a tab that is gone had not saved of a book.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Journal {
    /// The name of the note.
    pub name: String,
    /// The texts that it wrote down.
    pub texts: Vec<String>,
}

/// What one transaction writes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Commit {
    /// The revision that must be stored now; 0 where the book must not be there.
    pub expected: u64,
    /// The book's entry from now on, with its new revision.
    pub entry: BookEntry,
    /// The rows to write.
    pub rows: Vec<Row>,
    /// The slips to write or to throw away with them.
    pub slips: Vec<Slip>,
    /// How hard to press.
    pub durability: Durability,
}

/// When something counts as written.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Durability {
    /// Handed to the operating system: survives a killed browser. For single edits.
    #[default]
    Relaxed,
    /// On the disk: survives a lost battery. For whole books, imports and restores.
    Strict,
}
