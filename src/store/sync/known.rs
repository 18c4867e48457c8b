//! The stored revisions that a tab knows.

use std::collections::BTreeMap;

use super::Change;
use crate::book::{Key, Record};
use crate::store::{BookEntry, Commit, Row};

/// The entry and the revision of each row, as this tab last read or wrote them.
#[derive(Debug)]
pub(in crate::store) struct Known {
    entry: BookEntry,
    revisions: BTreeMap<Key, u64>,
}

impl Known {
    pub(in crate::store) fn new(entry: BookEntry, rows: &[Row]) -> Known {
        let mut revisions = BTreeMap::new();
        revisions.extend(rows.iter().map(|row| (row.key, row.revision)));
        Known { entry, revisions }
    }

    pub(in crate::store) fn entry(&self) -> &BookEntry {
        &self.entry
    }

    pub(super) fn take(&mut self, entry: BookEntry, rows: &[Row]) {
        self.entry = entry;
        self.revisions.extend(rows.iter().map(|row| (row.key, row.revision)));
    }

    /// The transaction that stores `change` on top of what is known.
    pub(super) fn commit(&self, change: &Change) -> Commit {
        let mut entry = self.entry.clone();
        entry.revision = entry.revision.saturating_add(1);
        entry.changed = Some(change.at);
        entry.drinks = Some(change.drinks);
        if let Some(Some(Record::Settings(settings))) = change.is.get(&Key::Settings) {
            entry.name.clone_from(&settings.name);
            entry.invented = settings.invented;
        }
        let row = |(key, record): (&Key, &Option<Record>)| Row {
            book: entry.id,
            key: *key,
            revision: entry.revision,
            grew_from: self.revisions.get(key).copied().unwrap_or(0),
            record: record.clone(),
        };
        let rows = change.is.iter().map(row).collect();
        let slips = change.slips.clone();
        Commit { expected: self.entry.revision, rows, slips, durability: change.durability, entry }
    }
}
