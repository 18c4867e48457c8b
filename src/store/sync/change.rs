//! A change to a book, on its way to the storage.

use std::collections::{BTreeMap, BTreeSet};

use crate::book::{Applied, Book, Clash, Edit, Key, Patch, Record, Refusal};
use crate::store::{Durability, Slip};

/// A change to a book, on its way to the storage.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Change {
    /// What the person did, in words.
    pub name: String,
    /// When, in milliseconds since 1970.
    pub at: u64,
    /// The slips that are written in the same transaction.
    pub(super) slips: Vec<Slip>,
    /// When it counts as written.
    pub(super) durability: Durability,
    /// The records that it changed, as they were before; `None` for one that it added.
    pub(in crate::store) was: BTreeMap<Key, Option<Record>>,
    /// The same records, as they are after it; `None` for one that it removed.
    pub(in crate::store) is: BTreeMap<Key, Option<Record>>,
    /// How many drinks the book has after it.
    pub(super) drinks: usize,
}

/// Why a change cannot be rebased on what another tab saved.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ConflictReason {
    /// Both changed the same fields.
    Changed(Vec<Clash>),
    /// Both changes together would not be a valid book.
    Refused(Refusal),
    /// Both changes together would not be a valid record.
    NoRecord(Key),
}

impl Change {
    /// What `applied` did to `book`, which is as it is after that. `name` says it in words; `at` is the
    /// moment, in milliseconds since 1970.
    pub fn new(name: &str, at: u64, book: &Book, applied: &Applied) -> Change {
        let keys = &applied.touched;
        let mut needs: BTreeSet<Key> = keys.clone();
        add_needs(&applied.inverse, &mut needs);
        let mut before = book.cut(needs.into_iter());
        // The inverse of what was just applied cannot be refused.
        let _ = before.apply(&applied.inverse);
        Change {
            name: name.to_string(),
            at,
            slips: Vec::new(),
            durability: Durability::Relaxed,
            was: before.at(keys),
            is: book.at(keys),
            drinks: book.drinks().count(),
        }
    }

    /// The same change with slips to write in the same transaction, and when it counts as written.
    #[must_use]
    pub fn beside(self, slips: Vec<Slip>, durability: Durability) -> Change {
        Change { slips, durability, ..self }
    }

    /// The records that it changed, as they were before; `None` for one that it added.
    pub fn was(&self) -> &BTreeMap<Key, Option<Record>> {
        &self.was
    }

    /// Whether it changes no record.
    pub(super) fn is_void(&self) -> bool {
        self.was == self.is
    }

    /// Whether there is nothing to write: neither records nor slips.
    pub(super) fn is_empty(&self) -> bool {
        self.is_void() && self.slips.is_empty()
    }

    /// The change field by field.
    pub(super) fn patch(&self) -> Patch {
        let records = self.was.iter().zip(self.is.values());
        Patch::of_records(records.map(|((key, was), is)| (*key, was.clone(), is.clone())))
    }

    /// The records that it is about: those that it changed, and those that they need.
    pub(super) fn about(&self) -> BTreeSet<Key> {
        let mut keys: BTreeSet<Key> = BTreeSet::new();
        for (key, record) in self.is.iter().chain(&self.was) {
            keys.insert(*key);
            keys.extend(record.iter().flat_map(Record::needs));
        }
        keys
    }

    /// The same change, as what differs between two books in the records of these keys.
    pub(super) fn between(&self, before: &Book, after: &Book, keys: &BTreeSet<Key>) -> Change {
        let (was, is) = (before.at(keys), after.at(keys));
        Change { was, is, drinks: after.drinks().count(), ..self.clone() }
    }

    /// Applies it, field by field, to a book that has other changes in the meantime. Returns the change
    /// that it then is.
    ///
    /// # Errors
    /// The [`ConflictReason`]; `book` is then as it was.
    pub(super) fn rebased_on(&self, book: &mut Book) -> Result<Change, ConflictReason> {
        let edit = self.patch().edit(book).map_err(ConflictReason::Changed)?;
        let before = book.clone();
        let applied = book.apply(&edit).map_err(ConflictReason::Refused)?;
        Ok(self.between(&before, book, &applied.touched))
    }

    /// This change and the `later` one as one, with the later one's name and moment.
    pub(super) fn with(mut self, later: Change) -> Change {
        for (key, was) in later.was {
            self.was.entry(key).or_insert(was);
        }
        self.is.extend(later.is);
        self.slips.extend(later.slips);
        if later.durability == Durability::Strict {
            self.durability = Durability::Strict;
        }
        Change { name: later.name, at: later.at, drinks: later.drinks, ..self }
    }
}

/// Adds the keys that the records need which an edit puts.
fn add_needs(edit: &Edit, needs: &mut BTreeSet<Key>) {
    match edit {
        Edit::Put(record) => needs.extend(record.needs()),
        Edit::Together(edits) => edits.iter().for_each(|edit| add_needs(edit, needs)),
        Edit::Remove(_) | Edit::SetPackPrice { .. } | Edit::SetPrice { .. } => {}
    }
}
