//! A step: what was done, when, and how it is kept beside the book.

use serde::{Deserialize, Serialize};

use super::{LARGEST, Session};
use crate::book::{Clash, Key, Patch, Step as Way, from_json};

/// Which steps are walked over.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reach {
    /// All of them.
    Everything,
    /// What can be done at the Counter: batches, and what is on hand.
    Counter,
}

/// Something that was done to the book.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Step {
    /// Its id: in the order in which steps were done, and never that of another tab's step.
    pub id: String,
    /// What was done, in words.
    pub name: String,
    /// When, in milliseconds since 1970.
    pub at: u64,
    /// What it did, field by field.
    pub patch: Patch,
    /// Where it was taken back by Undo, the how manieth of those that stand so; the highest is
    /// done again first.
    pub undone: Option<u64>,
    /// The step that this one takes back, where it was taken back out of its turn.
    pub takes_back: Option<String>,
    /// The typing session that it belongs to, while the page stays.
    pub(super) session: Option<Session>,
    /// Whether it could not be taken back or done again, so that the next one is walked over.
    pub(super) set_aside: bool,
    /// How many bytes it takes to keep.
    pub(super) bytes: usize,
}

/// A step as it is written.
#[derive(Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
struct Stored {
    name: String,
    at: u64,
    patch: Patch,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    undone: Option<u64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    takes_back: Option<String>,
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    set_aside: bool,
}

impl Step {
    /// The record that it changed, where it changed one alone.
    pub fn of(&self) -> Option<Key> {
        let mut keys = self.patch.keys();
        keys.next().filter(|_| keys.next().is_none())
    }

    /// The number of the tab that it was done in.
    pub(super) fn tab(&self) -> Option<u64> {
        u64::from_str_radix(self.id.split_once('-')?.1, 16).ok()
    }

    /// Whether it takes more than all kept steps together may: it is there until the page is left.
    pub fn is_too_large(&self) -> bool {
        self.bytes > LARGEST
    }

    /// The step as JSON. Returns `None` if it cannot be written.
    pub(super) fn text(&self) -> Option<String> {
        let stored = Stored {
            name: self.name.clone(),
            at: self.at,
            patch: self.patch.clone(),
            undone: self.undone,
            takes_back: self.takes_back.clone(),
            set_aside: self.set_aside,
        };
        serde_json::to_string(&stored).ok()
    }

    /// Reads what [`Step::text`] writes. Returns `None` for anything else.
    pub(super) fn from_text(id: &str, text: &str) -> Option<Step> {
        let Stored { name, at, patch, undone, takes_back, set_aside } = from_json(text).ok()?;
        let (id, bytes) = (id.to_string(), text.len());
        Some(Step { id, name, at, patch, undone, takes_back, session: None, set_aside, bytes })
    }
}

impl Reach {
    /// Whether a step is among those walked over.
    pub fn takes(self, step: &Step) -> bool {
        let takes = |key: Key| step.patch.changes_of(key).all(|change| self.covers(key, &change.path));
        // A large step is not gone through where all of it counts: this is asked at every key that is typed.
        self == Reach::Everything || step.patch.keys().all(takes)
    }

    /// Whether this reach may decide between two values of one field.
    pub fn decides(self, clash: &Clash) -> bool {
        self.covers(clash.key, &clash.path)
    }

    fn covers(self, key: Key, path: &[Way]) -> bool {
        match (self, key) {
            (Reach::Everything, _) | (Reach::Counter, Key::Batch(_)) => true,
            (Reach::Counter, Key::Ingredient(_) | Key::Packaging(_)) => {
                matches!(path, [_, Way::Field(field), ..] if field == "on-hand")
            }
            (Reach::Counter, _) => false,
        }
    }
}
