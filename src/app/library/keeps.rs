//! What keeps the open book, as far as its library asks it.

use crate::store::{Backing, Change, Fault, Keeper, Saving};

/// What keeps the open book. The library knows it by this trait alone: whoever seats a book brings
/// the keeper along, so that opening and listing books does without it.
pub trait Keeps {
    /// Saves a change, after those that wait.
    fn save(&self, change: Change);
    /// Another tab saved the book as of `revision`.
    fn heard(&self, revision: u64);
    /// Another tab deleted the book.
    fn heard_deleted(&self);
    /// Nothing is saved any more, for this reason, until it is tried again.
    fn halt(&self, fault: Fault);
    /// Tries again what waits.
    fn retry(&self);
    /// This tab may go at any moment: writes down what is not saved.
    fn leave_note(&self);
    /// What is not saved is given up.
    fn throw_notes_away(&self);
    /// Whether the book is saved.
    fn saving(&self) -> Saving;
    /// Puts the change at odds that stands at this place over what the other tab did.
    fn keep_mine(&self, place: usize);
    /// Drops the change at odds that stands at this place for what the other tab did.
    fn take_theirs(&self, place: usize);
}

impl<B: Backing> Keeps for Keeper<B> {
    fn save(&self, change: Change) {
        Keeper::save(self, change);
    }

    fn heard(&self, revision: u64) {
        Keeper::heard(self, revision);
    }

    fn heard_deleted(&self) {
        Keeper::heard_deleted(self);
    }

    fn halt(&self, fault: Fault) {
        Keeper::halt(self, fault);
    }

    fn retry(&self) {
        Keeper::retry(self);
    }

    fn leave_note(&self) {
        Keeper::leave_note(self);
    }

    fn throw_notes_away(&self) {
        Keeper::throw_notes_away(self);
    }

    fn saving(&self) -> Saving {
        Keeper::saving(self)
    }

    fn keep_mine(&self, place: usize) {
        Keeper::keep_mine(self, place);
    }

    fn take_theirs(&self, place: usize) {
        Keeper::take_theirs(self, place);
    }
}
