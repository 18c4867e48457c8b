//! Edits that wait to be saved.

use std::collections::{BTreeMap, VecDeque};

use crate::book::{Applied, Book, Key, Record};
use crate::store::{Durability, Slip};

/// What one edit touched, as it stood after it (none where the edit removed it), and the slips to
/// write with it.
#[derive(Clone, Debug)]
pub(super) struct Change {
    pub(super) records: BTreeMap<Key, Option<Record>>,
    pub(super) slips: Vec<Slip>,
    pub(super) durability: Durability,
}

impl Change {
    pub(super) fn new(book: &Book, applied: &Applied, slips: Vec<Slip>, durability: Durability) -> Change {
        let mut records = BTreeMap::new();
        records.extend(applied.touched.iter().map(|key| (*key, book.record(*key))));
        Change { records, slips, durability }
    }
}

/// Edits that wait to be saved, the oldest first.
#[derive(Debug, Default)]
pub(super) struct Queue(VecDeque<Change>);

impl Queue {
    pub(super) fn push(&mut self, change: Change) {
        self.0.push_back(change);
    }

    pub(super) fn first(&self) -> Option<&Change> {
        self.0.front()
    }

    pub(super) fn pop(&mut self) {
        self.0.pop_front();
    }

    pub(super) fn len(&self) -> usize {
        self.0.len()
    }

    pub(super) fn touches(&self, key: Key) -> bool {
        self.0.iter().any(|change| change.records.contains_key(&key))
    }

    /// Everything that waits as one change; none where nothing does.
    pub(super) fn as_one(&self) -> Option<Change> {
        let mut changes = self.0.iter().cloned();
        let first = changes.next()?;
        Some(changes.fold(first, |mut one, next| {
            one.records.extend(next.records);
            // Written in this order, so that of two with one id the later stays.
            one.slips.extend(next.slips);
            if next.durability == Durability::Strict {
                one.durability = Durability::Strict;
            }
            one
        }))
    }

    /// Makes one change of everything that waits. Once another tab's edits have come in between,
    /// only the book that they all lead to is known to hold, not the steps on the way.
    pub(super) fn join(&mut self) {
        if let Some(one) = self.as_one() {
            self.0 = VecDeque::from([one]);
        }
    }
}
