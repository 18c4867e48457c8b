//! Why something could not be stored or read.

use super::Damage;

/// Why something could not be stored or read. Nothing stored was changed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fault {
    /// The browser gives this page no storage, as in some private windows.
    NoStorage,
    /// The database has not answered for long.
    NoAnswer,
    /// Another tab, with an older version of the app, holds the database open.
    HeldByOlder,
    /// The database was written by a newer version of the app than this one.
    NewerSchema,
    /// A newer version of the app opened the database; this tab may only read.
    NewerVersionOpen,
    /// The connection to the database was closed, and opening it again did not help.
    Closed,
    /// The device has no room left.
    Full,
    /// There is no such book: there never was, or the browser evicted it.
    Gone,
    /// Another tab deleted the book.
    Deleted,
    /// The stored book has another revision than expected. A [`BookSync`](super::BookSync) catches
    /// up by itself; for a new book it means that the id is taken.
    Behind,
    /// The stored book does not read.
    Damaged(Box<Damage>),
    /// Any other error of the browser.
    Browser {
        /// The kind of error, such as `UnknownError`.
        name: String,
        /// The browser's own words.
        message: String,
    },
}
