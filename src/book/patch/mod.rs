//! What a step did to a book, field by field: to take it back, to do it again or to carry it over
//! to a book that moved on in the meantime, without touching any other field.

mod changes;
#[cfg(test)]
mod tests;
mod tree;

use std::collections::BTreeMap;

use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

use super::{Book, Edit, Key, Record, from_json};

pub use changes::{Change, Step};
pub use tree::Tree;

/// What a step did to a book, field by field.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Patch(Vec<RecordPatch>);

/// What a step did to one record.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
struct RecordPatch {
    #[serde(serialize_with = "write_key", deserialize_with = "read_key")]
    key: Key,
    changes: Vec<Change>,
}

/// A value that holds something else than a patch needs: it was changed by somebody else since.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Clash {
    /// The record.
    pub key: Key,
    /// The way to the value; empty for the whole record.
    pub path: Vec<Step>,
    /// What was found there.
    pub found: Found,
    /// The value that is there; none where nothing is.
    pub stands: Option<Tree>,
    /// What the patch would put there.
    pub wanted: Option<Tree>,
}

/// What a patch found in the place of a value that it needs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Found {
    /// Another value, or a blank.
    Value,
    /// Nothing: what it was a part of was removed.
    Removed,
    /// Something of another form, which the value does not fit into.
    OtherForm,
}

impl Patch {
    /// What leads from these records to what stands at their keys in `book`; none is a record
    /// that was not there.
    pub fn between(was: &BTreeMap<Key, Option<Record>>, book: &Book) -> Patch {
        Patch::of_records(was.iter().map(|(key, was)| (*key, was.clone(), book.record(*key))))
    }

    /// What leads from one form of each record to the other.
    pub fn of_records(records: impl Iterator<Item = (Key, Option<Record>, Option<Record>)>) -> Patch {
        let mut patches = Vec::new();
        for (key, before, after) in records {
            let (before, after) = (before.as_ref().and_then(tree_of), after.as_ref().and_then(tree_of));
            let changes = changes::between(before.as_ref(), after.as_ref());
            if !changes.is_empty() {
                patches.push(RecordPatch { key, changes });
            }
        }
        Patch(patches)
    }

    /// Whether it changes nothing.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// The records that it changes.
    pub fn keys(&self) -> impl Iterator<Item = Key> {
        self.0.iter().map(|patch| patch.key)
    }

    /// What it changes in one record.
    pub fn changes_of(&self, key: Key) -> impl Iterator<Item = &Change> {
        self.0.iter().filter(move |patch| patch.key == key).flat_map(|patch| &patch.changes)
    }

    /// The patch that takes this one back.
    #[must_use]
    pub fn inverse(&self) -> Patch {
        let inverse = |patch: &RecordPatch| RecordPatch {
            key: patch.key,
            changes: patch.changes.iter().rev().map(Change::inverse).collect(),
        };
        Patch(self.0.iter().rev().map(inverse).collect())
    }

    /// Whether both change the same value, or one a part of what the other changes.
    pub fn meets(&self, other: &Patch) -> bool {
        self.0.iter().any(|one| {
            let here = other.changes_of(one.key);
            here.into_iter().any(|other| one.changes.iter().any(|change| change.meets(other)))
        })
    }

    /// The edit that does it to `book`. What is as wanted already stays as it is.
    ///
    /// # Errors
    /// Every [`Clash`]: a value that is neither as it was before nor as it is wanted. Whether what
    /// the edit puts together holds is for [`Book::apply`] to say.
    pub fn edit(&self, book: &Book) -> Result<Edit, Vec<Clash>> {
        let mut records = BTreeMap::new();
        let mut clashes = Vec::new();
        for RecordPatch { key, changes } in &self.0 {
            let mut tree = book.record(*key).as_ref().and_then(tree_of);
            let clash = |change: &Change, (found, stands)| Clash {
                key: *key,
                path: change.path.clone(),
                found,
                stands,
                wanted: change.after.clone(),
            };
            let before = clashes.len();
            for change in changes {
                if let Err(found) = change.put(&mut tree) {
                    clashes.push(clash(change, found));
                }
            }
            if clashes.len() != before {
                continue;
            }
            let record = tree.as_ref().and_then(record_of);
            match changes.first() {
                // What was put together is no record: each part holds only beside what it grew with.
                Some(change) if record.is_none() && tree.is_some() => {
                    clashes.push(clash(change, (Found::OtherForm, None)));
                }
                _ => {
                    records.insert(*key, record);
                }
            }
        }
        if clashes.is_empty() { Ok(Edit::records(book, &records)) } else { Err(clashes) }
    }

    /// The edit that does it to `book` whatever was changed there since. `mine` are the records as
    /// this patch left them: what it changes a part of, and is gone, comes back from there.
    ///
    /// # Errors
    /// The key of a record that cannot be put together: the values that it would have do not
    /// hold beside each other.
    pub fn over(&self, book: &Book, mine: &BTreeMap<Key, Option<Record>>) -> Result<Edit, Key> {
        let mut records = BTreeMap::new();
        for RecordPatch { key, changes } in &self.0 {
            let mine = mine.get(key).and_then(Option::as_ref).and_then(tree_of);
            let mut tree = book.record(*key).as_ref().and_then(tree_of);
            for change in changes {
                change.put_over(&mut tree, mine.as_ref());
            }
            let record = tree.as_ref().and_then(record_of);
            if record.is_none() && tree.is_some() {
                return Err(*key);
            }
            records.insert(*key, record);
        }
        Ok(Edit::records(book, &records))
    }
}

impl Clash {
    /// The name of the field that it is about, as records write it; none for a whole record.
    pub fn field(&self) -> Option<&str> {
        // The first field is the kind of the record.
        let fields = self.path.iter().filter_map(|step| match step {
            Step::Field(name) => Some(name.as_str()),
            Step::Element(_) | Step::Order => None,
        });
        fields.skip(1).last()
    }
}

/// A record as it is written. Every record can be.
fn tree_of(record: &Record) -> Option<Tree> {
    let text = serde_json::to_string(record).ok()?;
    serde_json::from_str(&text).ok()
}

fn record_of(tree: &Tree) -> Option<Record> {
    let text = serde_json::to_string(tree).ok()?;
    from_json(&text).ok()
}

fn write_key<S: Serializer>(key: &Key, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.collect_str(key)
}

fn read_key<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Key, D::Error> {
    let text = String::deserialize(deserializer)?;
    Key::from_text(&text).ok_or_else(|| de::Error::custom("not the key of a record"))
}
