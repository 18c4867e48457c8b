//! Why something could not be kept or read.

use super::Damage;

/// Why something could not be kept or read. Nothing stored was changed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fault {
    /// The browser gives this page no storage, as in some private windows.
    NoStorage,
    /// The books do not answer.
    NoAnswer,
    /// Another tab holds the books open with an older version of the app.
    HeldByOlder,
    /// The books were written by a newer version of the app than this one.
    NewerSchema,
    /// A newer version of the app opened the books; this tab may only read.
    NewerVersionOpen,
    /// The connection to the books was closed, and opening it again did not help.
    Closed,
    /// The device has no room left.
    Full,
    /// The book is not there: never was, or the browser threw it away.
    Gone,
    /// Another tab deleted the book.
    Deleted,
    /// The stored book has another revision than expected. A [`BookSync`](super::BookSync) catches
    /// up on this by itself; who creates a book learns that the id is taken.
    Behind,
    /// The stored book does not read.
    Damaged(Box<Damage>),
    /// Anything else that the browser says.
    Browser {
        /// The kind of error, such as `UnknownError`.
        name: String,
        /// The browser's own words.
        message: String,
    },
}
