//! Patches: what a step did to a book, field by field. A patch undoes the step, does it again, or rebases it
//! on a book that has changed since, without touching any other field.

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

/// A field with another value than a patch expects, since it was changed in the meantime.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Clash {
    /// The record.
    pub key: Key,
    /// The path to the value; empty for the whole record.
    pub path: Vec<Step>,
    /// What was found there.
    pub found: Found,
    /// The value that is there, if any.
    pub stands: Option<Tree>,
    /// The value that the patch would put there, if any.
    pub wanted: Option<Tree>,
}

/// What a patch found in place of the value that it expects.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Found {
    /// Another value, or none.
    Value,
    /// Nothing, since what the value is a part of was removed.
    Removed,
    /// Something with another structure, in which the value has no place.
    OtherForm,
}

impl Patch {
    /// The patch from these records to those at their keys in `book`. `None` is a record that was not there.
    pub fn between(was: &BTreeMap<Key, Option<Record>>, book: &Book) -> Patch {
        Patch::of_records(was.iter().map(|(key, was)| (*key, was.clone(), book.record(*key))))
    }

    /// The patch from the first form of each record to the second.
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

    /// The patch that undoes this one.
    #[must_use]
    pub fn inverse(&self) -> Patch {
        let inverse = |patch: &RecordPatch| RecordPatch {
            key: patch.key,
            changes: patch.changes.iter().rev().map(Change::inverse).collect(),
        };
        Patch(self.0.iter().rev().map(inverse).collect())
    }

    /// Whether both change the same value, or one changes a part of what the other changes.
    pub fn meets(&self, other: &Patch) -> bool {
        self.0.iter().any(|one| {
            let here = other.changes_of(one.key);
            here.into_iter().any(|other| one.changes.iter().any(|change| change.meets(other)))
        })
    }

    /// The edit that applies it to `book`. A value that already is as the patch would make it stays.
    ///
    /// # Errors
    /// Every [`Clash`]: a value that is neither as it was before the patch nor as it would be after it.
    /// Whether the edit's records are valid is checked by [`Book::apply`].
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
                // The fields put together are no record: they come from two forms of it.
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

    /// The edit that applies it to `book`, overwriting whatever was changed there since. `mine` are the records
    /// as they are after the patch: if what it changes a part of is gone, it comes back from there.
    ///
    /// # Errors
    /// The key of a record whose fields, put together, are no record.
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
    /// The name of the field, as it is stored. Returns `None` for a whole record.
    pub fn field(&self) -> Option<&str> {
        // The first field is the kind of the record.
        let fields = self.path.iter().filter_map(|step| match step {
            Step::Field(name) => Some(name.as_str()),
            Step::Element(_) | Step::Order => None,
        });
        fields.skip(1).last()
    }
}

/// A record as a tree. Every record has one.
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
