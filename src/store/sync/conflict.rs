//! A change that does not hold upon what another tab saved, until the person decides.

use std::collections::BTreeSet;

use super::change::{Change, ConflictReason};
use crate::book::{Book, Edit, Key, Patch, Refusal};

/// A change of the person's that does not hold upon what another tab saved.
///
/// Where it can be put over what the other tab did, the screen goes on showing it so, though it
/// is not saved. Where it cannot, the screen shows what is stored.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Conflict {
    /// Why it does not hold.
    pub why: ConflictReason,
    /// Whether it can be put over what the other tab did.
    pub can_be_kept: bool,
    /// The records that it is about, with what they need, as the person last saw them.
    pub seen: Book,
    /// Those of [`Conflict::seen`] that are stored no more.
    pub gone: Vec<Key>,
    /// The records that the person made in it: nobody deleted those.
    made: BTreeSet<Key>,
    /// One change after the other; a single one where it can be kept.
    steps: Vec<Change>,
    /// The same as the person did it, not put over anything: what a tab leaves when it goes.
    done: Vec<Change>,
    /// Before which of the steps, from 0, what waited until now and came before them goes.
    earlier: usize,
}

impl Conflict {
    /// A change that does not hold for this reason; `screen` is the book as the person sees it.
    pub(super) fn new(change: Change, why: ConflictReason, screen: &Book) -> Conflict {
        // What the person deleted is named as it was.
        let mut screen = screen.clone();
        for record in change.was.values().flatten().filter(|record| change.is.get(&record.key()) == Some(&None)) {
            // What it needs may be gone as well; its name is then not known.
            let _ = screen.apply(&Edit::Put(record.clone()));
        }
        let about = change.about();
        let users = about.iter().flat_map(|key| screen.needed_by(*key).into_iter().map(|user| (*key, user)));
        // What belongs to a thing goes and comes back with it.
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

    /// What was done, in words.
    pub fn name(&self) -> &str {
        self.steps.last().map_or("", |step| step.name.as_str())
    }

    /// What it changes, field by field: from what is stored to what the person wants where it can
    /// be kept.
    pub fn patch(&self) -> Patch {
        self.steps.last().map(Change::patch).unwrap_or_default()
    }

    pub(in crate::store) fn steps(&self) -> &[Change] {
        &self.steps
    }

    /// What it is without what other tabs saved: it is at odds with that wherever it is done.
    pub(super) fn done(&self) -> &[Change] {
        &self.done
    }

    /// Whether a later change is a part of this one: it changes the same values, or what only
    /// this one would bring.
    pub(super) fn takes(&self, change: &Change) -> bool {
        self.can_be_kept && self.steps.iter().any(|step| step.patch().meets(&change.patch()))
    }

    /// Whether a change that does not hold hangs on this one.
    pub(super) fn holds_up(&self, change: &Change) -> bool {
        let about = change.about();
        self.can_be_kept && self.steps.iter().any(|step| step.is.keys().any(|key| about.contains(key)))
    }

    /// What waits is carried over anew, from the first.
    pub(super) fn rewind(&mut self) {
        self.earlier = 0;
    }

    /// Takes in a change that waited until now: it came before those that are at odds already, and
    /// after those that were taken in so before it.
    pub(super) fn join_earlier(&mut self, change: Change) {
        self.join_at(self.earlier, change);
        self.earlier = self.earlier.saturating_add(1);
    }

    /// Takes in a change that came last.
    pub(super) fn join(&mut self, change: Change) {
        self.join_at(usize::MAX, change);
    }

    fn join_at(&mut self, place: usize, change: Change) {
        self.made.extend(change.was.iter().filter(|(_, was)| was.is_none()).map(|(key, _)| *key));
        self.done.insert(place.min(self.done.len()), change.clone());
        self.steps.insert(place.min(self.steps.len()), change);
    }

    /// Puts it over `book`, whatever was changed there since; `book` stays as it is where that
    /// does not hold. Gives the change that it then is, none where the book is already so.
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

    /// The edit that puts back a record that is gone, with what it needs and what belongs to it.
    fn put_back(&self, key: Key, book: &Book) -> Edit {
        let parts = self.seen.needed_by(key).into_iter().filter(|user| belongs(key, *user));
        let wanted = self.seen.cut(parts.chain([key]));
        Edit::Together(wanted.records().filter(|record| !book.contains(record.key())).map(Edit::Put).collect())
    }
}

/// Whether a record goes and comes back with the one that it needs: the sizes of a drink.
fn belongs(key: Key, user: Key) -> bool {
    matches!((key, user), (Key::Drink(_), Key::Offer(_) | Key::Trial(_)) | (Key::Container(_), Key::Offer(_)))
}
