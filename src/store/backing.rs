//! The storage below the shelf.

use std::future::Future;

use super::{BookEntry, Drawer, Fault, Row, Slip};
use crate::book::BookId;

/// The storage below the shelf: texts in, texts out. It does not read them, so that a damaged text
/// is returned as it is.
pub trait Backing: Clone + 'static {
    /// The entry of every book, by id.
    ///
    /// # Errors
    /// Any [`Fault`] of the storage itself.
    fn entries(&self) -> impl Future<Output = Result<Vec<String>, Fault>>;

    /// A book's entry and its rows later than revision `after`, or all its rows if that is 0. Both
    /// are read in one transaction, so that they belong together.
    ///
    /// # Errors
    /// Any [`Fault`] of the storage itself.
    fn book(&self, id: BookId, after: u64) -> impl Future<Output = Result<StoredBook, Fault>>;

    /// Writes all of `commit` or nothing, in one transaction. Returns when it is written, and tells
    /// the other tabs.
    ///
    /// # Errors
    /// [`Fault::Behind`] if the stored revision is not the expected one; any [`Fault`] of the
    /// storage itself.
    fn commit(&self, commit: &Commit) -> impl Future<Output = Result<(), Fault>>;

    /// Deletes a book with the slips that go with it, even if it is damaged, and writes `slips`: all
    /// of that or nothing. Tells the other tabs.
    ///
    /// # Errors
    /// Any [`Fault`] of the storage itself.
    fn delete(&self, id: BookId, slips: &[Slip]) -> impl Future<Output = Result<(), Fault>>;

    /// The slips in a drawer, of one book or of all, ordered by book and id.
    ///
    /// # Errors
    /// Any [`Fault`] of the storage itself.
    fn slips(&self, drawer: Drawer, book: Option<BookId>) -> impl Future<Output = Result<Vec<Slip>, Fault>>;

    /// The text of one slip, or `None` if there is no such slip.
    ///
    /// # Errors
    /// Any [`Fault`] of the storage itself.
    fn slip(&self, drawer: Drawer, book: BookId, id: &str) -> impl Future<Output = Result<Option<String>, Fault>>;

    /// Writes slips, and deletes those without a text: all or none. They are on the disk when this
    /// returns.
    ///
    /// # Errors
    /// Any [`Fault`] of the storage itself.
    fn file(&self, slips: &[Slip]) -> impl Future<Output = Result<(), Fault>>;

    /// Writes at once, before it returns, what this tab has not saved of a book, in place of its
    /// earlier journal. Returns the journal's name, or `None` if there is no room for it. As long as
    /// the tab is open, [`Backing::orphaned_journals`] does not list it.
    fn write_journal(&self, book: BookId, texts: &[String]) -> Option<String>;

    /// The journals on a book whose tabs are gone.
    fn orphaned_journals(&self, book: BookId) -> impl Future<Output = Vec<Journal>>;

    /// Deletes journals. [`Backing::delete`] deletes those of its book too.
    fn delete_journals(&self, names: &[String]);

    /// Runs `work` on its own, without waiting for it.
    fn spawn(&self, work: impl Future<Output = ()> + 'static);
}

/// What is stored of a book, as texts.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct StoredBook {
    /// Its entry in the list of books, if there is one.
    pub entry: Option<String>,
    /// Its rows.
    pub rows: Vec<String>,
}

/// What a tab that is gone had not saved of a book.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Journal {
    /// Its name.
    pub name: String,
    /// Its texts.
    pub texts: Vec<String>,
}

/// What one transaction writes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Commit {
    /// The revision that must be stored now, or 0 if the book must not exist yet.
    pub expected: u64,
    /// The book's entry from now on, with its new revision.
    pub entry: BookEntry,
    /// The rows to write.
    pub rows: Vec<Row>,
    /// The slips to write or delete in the same transaction.
    pub slips: Vec<Slip>,
    /// When it counts as written.
    pub durability: Durability,
}

/// When something counts as written.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Durability {
    /// Handed to the operating system: survives a killed browser. For single edits.
    #[default]
    Relaxed,
    /// On the disk: survives a power failure. For whole books, imports and restores.
    Strict,
}
