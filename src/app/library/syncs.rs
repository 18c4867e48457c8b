//! What keeps the open book, as far as its library asks it.

use crate::store::{Backing, BookSync, Change, Fault, Saving};

/// What keeps the open book. The library knows it by this trait alone: whoever seats a book brings
/// the keeper along, so that opening and listing books does without it.
pub trait SyncsBook {
    /// Saves a change, after those that wait.
    fn save(&self, change: Change);
    /// Another tab saved the book as of `revision`.
    fn remote_saved(&self, revision: u64);
    /// Another tab deleted the book.
    fn remote_deleted(&self);
    /// Nothing is saved any more, for this reason, until it is tried again.
    fn halt(&self, fault: Fault);
    /// Tries again what waits.
    fn retry(&self);
    /// This tab may go at any moment: writes down what is not saved.
    fn write_journal(&self);
    /// What is not saved is given up.
    fn delete_journals(&self);
    /// Whether the book is saved.
    fn saving(&self) -> Saving;
    /// Puts the change at odds that stands at this place over what the other tab did.
    fn keep_mine(&self, place: usize);
    /// Drops the change at odds that stands at this place for what the other tab did.
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
