//! A change in conflict with what another tab saved, until the person decides.

use std::collections::BTreeSet;

use super::change::{Change, ConflictReason};
use crate::book::{Book, Edit, Key, Patch, Refusal};

/// A change of the person's that cannot be rebased on what another tab saved.
///
/// If it can overwrite what the other tab did, the screen goes on showing it, though it is not saved.
/// Otherwise the screen shows what is stored.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Conflict {
    /// Why it cannot be rebased.
    pub why: ConflictReason,
    /// Whether it can overwrite what the other tab did.
    pub can_be_kept: bool,
    /// The records that it is about, with what they need, as the person last saw them.
    pub seen: Book,
    /// The keys of those of [`Conflict::seen`] that are no longer stored.
    pub gone: Vec<Key>,
    /// The records that the person added in it: if they are not stored, nobody deleted them.
    made: BTreeSet<Key>,
    /// Its changes in order; a single one if it can be kept.
    steps: Vec<Change>,
    /// The same changes as the person made them, for the journal.
    done: Vec<Change>,
    /// Where in `steps`, from 0, the next change goes that waited until now and is earlier than they.
    earlier: usize,
}

impl Conflict {
    /// A change that cannot be rebased for this reason. `screen` is the book as the person sees it.
    pub(super) fn new(change: Change, why: ConflictReason, screen: &Book) -> Conflict {
        // A record that the person deleted is named as it was.
        let mut screen = screen.clone();
        for record in change.was.values().flatten().filter(|record| change.is.get(&record.key()) == Some(&None)) {
            // If what it needs is gone too, it cannot be put back, and its name is not known.
            let _ = screen.apply(&Edit::Put(record.clone()));
        }
        let about = change.about();
        let users = about.iter().flat_map(|key| screen.needed_by(*key).into_iter().map(|user| (*key, user)));
        // What belongs to a record goes and comes back with it.
        let parts = users.filter(|(key, user)| belongs(*key, *user)).map(|(_, user)| user);
        let seen = screen.cut(about.iter().copied().chain(parts));
        let mut item = Conflict {
            why,
            can_be_kept: true,
            seen,
            gone: Vec::new(),
            made: BTreeSet::new(),
            steps: Vec::new(),
            done: Vec::new(),
            earlier: 0,
        };
        item.join_earlier(change);
        item
    }

    /// What the person did, in words.
    pub fn name(&self) -> &str {
        self.steps.last().map_or("", |step| step.name.as_str())
    }

    /// The change field by field. If it can be kept, this is from what is stored to what the person
    /// wants.
    pub fn patch(&self) -> Patch {
        self.steps.last().map(Change::patch).unwrap_or_default()
    }

    pub(in crate::store) fn steps(&self) -> &[Change] {
        &self.steps
    }

    /// Its changes as the person made them, for the journal: wherever they are replayed, they are in
    /// conflict again.
    pub(super) fn done(&self) -> &[Change] {
        &self.done
    }

    /// Whether a later change is a part of this conflict: it changes the same fields, or a record that
    /// only this conflict adds.
    pub(super) fn takes(&self, change: &Change) -> bool {
        self.can_be_kept && self.steps.iter().any(|step| step.patch().meets(&change.patch()))
    }

    /// Whether a change that cannot be rebased is about a record of this conflict.
    pub(super) fn holds_up(&self, change: &Change) -> bool {
        let about = change.about();
        self.can_be_kept && self.steps.iter().any(|step| step.is.keys().any(|key| about.contains(key)))
    }

    /// Tells that a rebase begins: changes that join by [`Conflict::join_earlier`] come from the first
    /// on.
    pub(super) fn rewind(&mut self) {
        self.earlier = 0;
    }

    /// Takes in a change that waited until now. It is earlier than those in conflict already, and later
    /// than those that joined by this method since the rebase began.
    pub(super) fn join_earlier(&mut self, change: Change) {
        self.join_at(self.earlier, change);
        self.earlier = self.earlier.saturating_add(1);
    }

    /// Takes in the latest change.
    pub(super) fn join(&mut self, change: Change) {
        self.join_at(usize::MAX, change);
    }

    fn join_at(&mut self, place: usize, change: Change) {
        self.made.extend(change.was.iter().filter(|(_, was)| was.is_none()).map(|(key, _)| *key));
        self.done.insert(place.min(self.done.len()), change.clone());
        self.steps.insert(place.min(self.steps.len()), change);
    }

    /// Applies it to `book`, overwriting whatever was changed there since. If that is not possible,
    /// `book` stays as it is, and the conflict cannot be kept. Returns the change, or `None` if the book
    /// is already so.
    pub(super) fn overwrite(&mut self, book: &mut Book) -> Option<Change> {
        let seen = self.seen.records().map(|record| record.key());
        self.gone = seen.filter(|key| !book.contains(*key) && !self.made.contains(key)).collect();
        let mut after = book.clone();
        let mut keys = BTreeSet::new();
        for step in &self.steps {
            if let Err(clashes) = step.patch().edit(&after) {
                self.why = ConflictReason::Changed(clashes);
            }
            if let Err(why) = self.step_over(step, &mut after, &mut keys) {
                self.can_be_kept = false;
                self.why = why;
                return self.steps.first().cloned();
            }
        }
        self.can_be_kept = true;
        let joined = self.steps.iter().cloned().reduce(Change::with)?;
        let change = joined.between(book, &after, &keys);
        if change.is_void() {
            return None;
        }
        *book = after;
        self.steps = vec![change.clone()];
        self.done = self.done.drain(..).reduce(Change::with).into_iter().collect();
        Some(change)
    }

    fn step_over(&self, step: &Change, book: &mut Book, keys: &mut BTreeSet<Key>) -> Result<(), ConflictReason> {
        loop {
            let edit = step.patch().over(book, &step.is).map_err(ConflictReason::NoRecord)?;
            match book.apply(&edit) {
                Ok(applied) => {
                    keys.extend(applied.touched);
                    return Ok(());
                }
                Err(Refusal::Missing { key, needed_by }) if self.seen.contains(key) && !book.contains(key) => {
                    let back = self.put_back(key, book);
                    let applied =
                        book.apply(&back).map_err(|_| ConflictReason::Refused(Refusal::Missing { key, needed_by }))?;
                    keys.extend(applied.touched);
                }
                Err(refusal) => return Err(ConflictReason::Refused(refusal)),
            }
        }
    }

    /// The edit that puts back a deleted record, with what it needs and what belongs to it.
    fn put_back(&self, key: Key, book: &Book) -> Edit {
        let parts = self.seen.needed_by(key).into_iter().filter(|user| belongs(key, *user));
        let wanted = self.seen.cut(parts.chain([key]));
        Edit::Together(wanted.records().filter(|record| !book.contains(record.key())).map(Edit::Put).collect())
    }
}

/// Whether a record is deleted and put back with the one that it needs, as an offer is with its drink.
fn belongs(key: Key, user: Key) -> bool {
    matches!((key, user), (Key::Drink(_), Key::Offer(_) | Key::Trial(_)) | (Key::Container(_), Key::Offer(_)))
}
