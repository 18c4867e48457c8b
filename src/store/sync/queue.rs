//! Changes that wait to be saved.

use std::collections::{BTreeMap, VecDeque};

use super::change::{Change, ConflictReason};
use super::conflict::Conflict;
use crate::book::{Book, Edit, Key, Record, Refusal};

/// What is done at the end of a rebase.
#[derive(Debug)]
pub(super) enum Then {
    /// Nothing else.
    Nothing,
    /// This change, the latest, is added. It is on the screen already.
    Later(Box<Change>),
    /// The conflict at this place, counted from 0, is resolved for this tab.
    Keep(usize),
    /// The conflict at this place, counted from 0, is resolved for the other tab.
    Drop(usize),
}

/// The write queue: the changes that wait to be saved, the oldest first, and the conflicts that wait
/// for the person to decide.
///
/// The book on the screen is the stored one with the waiting changes applied, and after them the
/// conflicts that can be kept.
#[derive(Debug, Default)]
pub(in crate::store) struct Queue {
    waiting: VecDeque<Change>,
    /// How many of the waiting changes, from the first, are in a transaction of which it is not known
    /// yet whether it was written.
    in_flight: usize,
    conflicts: Vec<Conflict>,
}

impl Queue {
    pub(super) fn push(&mut self, change: Change) {
        self.waiting.push_back(change);
    }

    pub(super) fn is_waiting(&self) -> bool {
        !self.waiting.is_empty()
    }

    /// The next transaction: everything that waits, as one change. A transaction that is in flight is
    /// repeated as it was.
    pub(super) fn send(&mut self) -> Option<Change> {
        if self.in_flight == 0 {
            self.in_flight = self.waiting.len();
        }
        self.in_flight()
    }

    /// The transaction in flight, as one change.
    pub(super) fn in_flight(&self) -> Option<Change> {
        self.waiting.iter().take(self.in_flight).cloned().reduce(Change::with)
    }

    /// Tells that the transaction in flight was written.
    pub(super) fn written(&mut self) {
        self.waiting.drain(..self.in_flight.min(self.waiting.len()));
        self.in_flight = 0;
    }

    /// Tells that the transaction in flight was not written.
    pub(super) fn not_written(&mut self) {
        self.in_flight = 0;
    }

    /// Adds the changes from the journals of tabs that are gone, and rebases them on `stored`. `screen`
    /// is the book as the person last saw it. Returns the book for the screen.
    pub(super) fn replay(&mut self, changes: Vec<Change>, stored: Book, screen: &Book) -> Book {
        self.waiting.extend(changes);
        self.rebase(stored, screen, Then::Nothing)
    }

    /// Every change that is not saved, as the person made it: those that wait, then those in conflict.
    pub(in crate::store) fn not_saved(&self) -> impl Iterator<Item = &Change> {
        self.waiting.iter().chain(self.conflicts.iter().flat_map(Conflict::done))
    }

    /// How many changes are not saved.
    pub(super) fn len(&self) -> usize {
        self.waiting.len().saturating_add(self.conflicts.len())
    }

    pub(super) fn conflicts(&self) -> &[Conflict] {
        &self.conflicts
    }

    fn on_screen(&self) -> impl Iterator<Item = &Change> {
        let kept = self.conflicts.iter().filter(|item| item.can_be_kept);
        self.waiting.iter().chain(kept.flat_map(Conflict::steps))
    }

    /// The book as it is stored: `screen` without the changes that wait, and without `later`, which
    /// came after them.
    ///
    /// # Errors
    /// The [`Refusal`] if that is not a valid book.
    pub(super) fn stored(&self, screen: &Book, later: Option<&Change>) -> Result<Book, Refusal> {
        let mut was: BTreeMap<Key, Option<Record>> = BTreeMap::new();
        for change in self.on_screen().chain(later) {
            for (key, record) in &change.was {
                was.entry(*key).or_insert_with(|| record.clone());
            }
        }
        let mut stored = screen.clone();
        let back = differences(&stored, was);
        stored.apply(&back)?;
        Ok(stored)
    }

    /// Rebases what waits on `stored`, change by change, and then does `then`. A change that cannot be
    /// rebased is a conflict. Returns the book for the screen.
    pub(super) fn rebase(&mut self, stored: Book, screen: &Book, then: Then) -> Book {
        let mut book = stored;
        let mut conflicts = std::mem::take(&mut self.conflicts);
        conflicts.iter_mut().for_each(Conflict::rewind);
        let mut waiting = std::mem::take(&mut self.waiting);
        while let Some(change) = waiting.pop_front() {
            match change.rebased_on(&mut book) {
                Ok(carried) => self.take_in(carried),
                Err(why) => {
                    // A change may be impossible by itself, but possible with those after it.
                    let all = waiting.iter().cloned().fold(change.clone(), Change::with);
                    match all.rebased_on(&mut book) {
                        Ok(carried) => {
                            self.take_in(carried);
                            waiting.clear();
                        }
                        Err(_) => set_aside(&mut conflicts, change, why, screen, Conflict::join_earlier),
                    }
                }
            }
        }
        match then {
            Then::Nothing => {}
            Then::Later(change) => match conflicts.iter_mut().find(|item| item.takes(&change)) {
                Some(item) => item.join(*change),
                None => match change.rebased_on(&mut book) {
                    Ok(carried) => self.take_in(carried),
                    Err(why) => set_aside(&mut conflicts, *change, why, screen, Conflict::join),
                },
            },
            Then::Keep(place) if place < conflicts.len() => {
                let mut item = conflicts.remove(place);
                match item.overwrite(&mut book) {
                    Some(change) if item.can_be_kept => self.push(change),
                    Some(_) => conflicts.insert(place, item),
                    None => {}
                }
            }
            Then::Drop(place) if place < conflicts.len() => drop(conflicts.remove(place)),
            Then::Keep(_) | Then::Drop(_) => {}
        }
        for mut item in conflicts {
            if item.overwrite(&mut book).is_some() {
                self.conflicts.push(item);
            }
        }
        book
    }

    /// Every record that a change in the queue is about.
    pub(super) fn keys(&self) -> impl Iterator<Item = Key> {
        let conflicts = self.conflicts.iter().flat_map(Conflict::steps);
        self.waiting.iter().chain(conflicts).flat_map(|change| change.is.keys().copied())
    }

    fn take_in(&mut self, change: Change) {
        if !change.is_empty() {
            self.push(change);
        }
    }
}

/// Sets aside a change that cannot be rebased: it joins the conflict that it is a part of, by `join`,
/// or becomes one of its own.
fn set_aside(
    conflicts: &mut Vec<Conflict>,
    change: Change,
    why: ConflictReason,
    screen: &Book,
    join: fn(&mut Conflict, Change),
) {
    match conflicts.iter_mut().find(|item| item.takes(&change) || item.holds_up(&change)) {
        Some(item) => join(item, change),
        None => conflicts.push(Conflict::new(change, why, screen)),
    }
}

/// The edit that brings to `book` those of the records that differ from it.
pub(super) fn differences(book: &Book, mut records: BTreeMap<Key, Option<Record>>) -> Edit {
    records.retain(|key, record| book.record(*key) != *record);
    Edit::records(book, &records)
}
