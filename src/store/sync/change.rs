//! What one step changed, on its way to the store.

use std::collections::{BTreeMap, BTreeSet};

use crate::book::{Applied, Book, Clash, Edit, Key, Patch, Record, Refusal};
use crate::store::{Durability, Slip};

/// What one step changed, on its way to the store.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Change {
    /// What was done, in words.
    pub name: String,
    /// When, in milliseconds since 1970.
    pub at: u64,
    /// What is kept beside the book in the same transaction.
    pub(super) slips: Vec<Slip>,
    /// How hard to press.
    pub(super) durability: Durability,
    /// The records that it changed, as they were; none is a record that was not there.
    pub(in crate::store) was: BTreeMap<Key, Option<Record>>,
    /// The same records, as it left them.
    pub(in crate::store) is: BTreeMap<Key, Option<Record>>,
    /// How many drinks the book then had.
    pub(super) drinks: usize,
}

/// Why a change does not hold upon what another tab saved.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ConflictReason {
    /// Both changed the same values.
    Changed(Vec<Clash>),
    /// The book would not hold together.
    Refused(Refusal),
    /// The values of this record do not hold beside each other.
    NoRecord(Key),
}

impl Change {
    /// What `applied` did to `book`, which stands as it left it; named in words, at a moment in
    /// milliseconds since 1970.
    pub fn new(name: &str, at: u64, book: &Book, applied: &Applied) -> Change {
        let keys = &applied.touched;
        let mut needs: BTreeSet<Key> = keys.clone();
        add_needs(&applied.inverse, &mut needs);
        let mut before = book.cut(needs.into_iter());
        // What was just applied can be taken back.
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

    /// With what is kept beside the book in the same transaction, and how hard to press.
    #[must_use]
    pub fn beside(self, slips: Vec<Slip>, durability: Durability) -> Change {
        Change { slips, durability, ..self }
    }

    /// The records that it changed, as they were; none is a record that was not there.
    pub fn was(&self) -> &BTreeMap<Key, Option<Record>> {
        &self.was
    }

    /// Whether it changes nothing.
    pub(super) fn is_void(&self) -> bool {
        self.was == self.is
    }

    /// Whether there is nothing to write: no change, and no step.
    pub(super) fn is_empty(&self) -> bool {
        self.is_void() && self.slips.is_empty()
    }

    /// What it changed, field by field.
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

    /// The same between other forms of the book.
    pub(super) fn between(&self, before: &Book, after: &Book, keys: &BTreeSet<Key>) -> Change {
        let (was, is) = (before.at(keys), after.at(keys));
        Change { was, is, drinks: after.drinks().count(), ..self.clone() }
    }

    /// Does it to a book that moved on in the meantime, field by field.
    pub(super) fn rebased_on(&self, book: &mut Book) -> Result<Change, ConflictReason> {
        let edit = self.patch().edit(book).map_err(ConflictReason::Changed)?;
        let before = book.clone();
        let applied = book.apply(&edit).map_err(ConflictReason::Refused)?;
        Ok(self.between(&before, book, &applied.touched))
    }

    /// This and what came after it as one; the name is that of the last.
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

/// Adds what the records need that an edit puts.
fn add_needs(edit: &Edit, needs: &mut BTreeSet<Key>) {
    match edit {
        Edit::Put(record) => needs.extend(record.needs()),
        Edit::Together(edits) => edits.iter().for_each(|edit| add_needs(edit, needs)),
        Edit::Remove(_) | Edit::SetPackPrice { .. } | Edit::SetPrice { .. } => {}
    }
}
