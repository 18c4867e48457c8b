//! Changes that wait to be saved.

use std::collections::{BTreeMap, VecDeque};

use super::change::{Change, ConflictReason};
use super::conflict::Conflict;
use crate::book::{Book, Edit, Key, Record, Refusal};

/// What happens once what waits is carried over.
#[derive(Debug)]
pub(super) enum Then {
    /// Nothing else.
    Nothing,
    /// This change came last, and is on the screen too.
    Later(Box<Change>),
    /// The person keeps the change at odds at this place, from 0.
    Keep(usize),
    /// The person drops it.
    Drop(usize),
}

/// Changes that wait to be saved, the oldest first; and those that wait for the person to decide.
///
/// The book on the screen is the stored one with the waiting changes on it, and then those at
/// odds that can be kept.
#[derive(Debug, Default)]
pub(in crate::store) struct Queue {
    waiting: VecDeque<Change>,
    /// How many of those that wait, from the first, were sent off in one transaction of which it is
    /// not known yet whether it was written.
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

    /// Sends off what waits, as one change. What was sent off before, and may be written, first
    /// goes once more as it was.
    pub(super) fn send(&mut self) -> Option<Change> {
        if self.in_flight == 0 {
            self.in_flight = self.waiting.len();
        }
        self.in_flight()
    }

    /// What was sent off, as one change.
    pub(super) fn in_flight(&self) -> Option<Change> {
        self.waiting.iter().take(self.in_flight).cloned().reduce(Change::with)
    }

    /// What was sent off is written.
    pub(super) fn written(&mut self) {
        self.waiting.drain(..self.in_flight.min(self.waiting.len()));
        self.in_flight = 0;
    }

    /// What was sent off is not written.
    pub(super) fn not_written(&mut self) {
        self.in_flight = 0;
    }

    /// Takes up what tabs that are gone left of `stored`, which the person saw as `screen`. Gives
    /// the book for the screen.
    pub(super) fn replay(&mut self, changes: Vec<Change>, stored: Book, screen: &Book) -> Book {
        self.waiting.extend(changes);
        self.rebase(stored, screen, Then::Nothing)
    }

    /// Everything that is not saved, as it was done and in that order.
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

    /// The book as it is stored: `screen` without what waits, and without `later`, which came last.
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

    /// Carries what waits over to `stored`, change by change; what does not hold there is then at
    /// odds. Gives the book for the screen.
    pub(super) fn rebase(&mut self, stored: Book, screen: &Book, then: Then) -> Book {
        let mut book = stored;
        let mut conflicts = std::mem::take(&mut self.conflicts);
        conflicts.iter_mut().for_each(Conflict::rewind);
        let mut waiting = std::mem::take(&mut self.waiting);
        while let Some(change) = waiting.pop_front() {
            match change.rebased_on(&mut book) {
                Ok(carried) => self.take_in(carried),
                Err(why) => {
                    // On the way something may not hold that all of it together does.
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

    /// Every record that what waits is about.
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

/// Sets a change aside that does not hold, in an item that it is a part of, where it is told to
/// `join`, or in one of its own.
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

/// The edit that brings `book` to these records: of those that are otherwise there.
pub(super) fn differences(book: &Book, mut records: BTreeMap<Key, Option<Record>>) -> Edit {
    records.retain(|key, record| book.record(*key) != *record);
    Edit::records(book, &records)
}
