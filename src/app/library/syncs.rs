//! The sync of the open book, as far as its library uses it.

use crate::store::{Backing, BookSync, Change, Fault, Saving};

/// The sync of the open book. The library knows it by this trait alone: [`super::Library::seat`] brings the
/// implementation, so that opening and listing books does without its code.
pub trait SyncsBook {
    /// Saves a change, after those that wait.
    fn save(&self, change: Change);
    /// Tells that another tab saved the book as `revision`.
    fn remote_saved(&self, revision: u64);
    /// Tells that another tab deleted the book.
    fn remote_deleted(&self);
    /// Stops saving for this reason, until the next change or [`SyncsBook::retry`].
    fn halt(&self, fault: Fault);
    /// Tries again what waits.
    fn retry(&self);
    /// Writes to a journal what is not saved, since this tab may go at any moment.
    fn write_journal(&self);
    /// Deletes the journals: what is not saved is given up.
    fn delete_journals(&self);
    /// Whether the book is saved.
    fn saving(&self) -> Saving;
    /// Resolves the conflict at this place, from 0, for this tab.
    fn keep_mine(&self, place: usize);
    /// Resolves the conflict at this place, from 0, for the other tab.
    fn take_theirs(&self, place: usize);
}

impl<B: Backing> SyncsBook for BookSync<B> {
    fn save(&self, change: Change) {
        BookSync::save(self, change);
    }

    fn remote_saved(&self, revision: u64) {
        BookSync::remote_saved(self, revision);
    }

    fn remote_deleted(&self) {
        BookSync::remote_deleted(self);
    }

    fn halt(&self, fault: Fault) {
        BookSync::halt(self, fault);
    }

    fn retry(&self) {
        BookSync::retry(self);
    }

    fn write_journal(&self) {
        BookSync::write_journal(self);
    }

    fn delete_journals(&self) {
        BookSync::delete_journals(self);
    }

    fn saving(&self) -> Saving {
        BookSync::saving(self)
    }

    fn keep_mine(&self, place: usize) {
        BookSync::keep_mine(self, place);
    }

    fn take_theirs(&self, place: usize) {
        BookSync::take_theirs(self, place);
    }
}
