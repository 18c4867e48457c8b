//! What stands in the way of taking a step back, and the list of steps that says so.

use super::{History, Reach, Step};
use crate::book::{Book, Clash, Key, Patch, Refusal};
use crate::words::{self, Speaker};

/// Why a step cannot be taken back, or done again.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Hindrance {
    /// What it changed was changed since, by a later step or in another tab.
    Changed(Vec<Clash>),
    /// The book would not hold without it: something that it added is used.
    Refused(Refusal),
}

/// Where a step stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Stands {
    /// It can be taken back by itself.
    Free,
    /// It was taken back.
    TakenBack,
    /// Later steps hang on it: name and time of each, the latest first.
    Under(Vec<(String, u64)>),
    /// Something else stands in the way.
    Hindered(Hindrance),
}

/// A step in the list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Listed {
    /// Its id, to take it back by.
    pub id: String,
    /// What was done, in words.
    pub name: String,
    /// What it did, field by field.
    pub patch: Patch,
    /// The record that it changed, where it changed one alone.
    pub of: Option<Key>,
    /// When, in milliseconds since 1970.
    pub at: u64,
    /// Where it stands.
    pub stands: Stands,
    /// Whether it is too large to be kept beside the book.
    pub too_large: bool,
}

impl History {
    /// The steps within `reach`, the latest first, each with where it stands.
    pub fn list(&self, book: &Book, reach: Reach) -> Vec<Listed> {
        let within = self.steps.iter().rev().filter(|step| reach.takes(step));
        // Each step is tried on one draft, which is put back after each.
        let mut draft = book.clone();
        let listed = |step: &Step| Listed {
            id: step.id.clone(),
            name: step.name.clone(),
            patch: step.patch.clone(),
            of: step.of(),
            at: step.at,
            stands: self.stands_on(&mut draft, step),
            too_large: step.is_too_large(),
        };
        within.map(listed).collect()
    }

    /// Where a step stands.
    pub fn stands(&self, book: &Book, step: &Step) -> Stands {
        self.stands_on(&mut book.clone(), step)
    }

    fn stands_on(&self, draft: &mut Book, step: &Step) -> Stands {
        if step.undone.is_some() || self.is_taken_back(&step.id) {
            return Stands::TakenBack;
        }
        let later = self.later(step, |later| later.patch.meets(&step.patch));
        if !later.is_empty() {
            return Stands::Under(later);
        }
        let edit = match step.patch.inverse().edit(draft) {
            Ok(edit) => edit,
            Err(clashes) => return Stands::Hindered(Hindrance::Changed(clashes)),
        };
        match draft.apply(&edit) {
            Ok(applied) => {
                // What was just applied can be taken back.
                let _ = draft.apply(&applied.inverse);
                Stands::Free
            }
            Err(refusal) => {
                let users: &[Key] = if let Refusal::InUse { by, .. } = &refusal { by } else { &[] };
                match self.later(step, |later| later.patch.keys().any(|key| users.contains(&key))) {
                    none if none.is_empty() => Stands::Hindered(Hindrance::Refused(refusal)),
                    later => Stands::Under(later),
                }
            }
        }
    }

    /// The later steps that hang on one, the latest first.
    fn later(&self, step: &Step, hangs: impl Fn(&Step) -> bool) -> Vec<(String, u64)> {
        let later = self.steps.iter().rev().take_while(|later| later.id != step.id);
        // One that was taken back, and the step that did so, leave nothing behind.
        let counts = |later: &&Step| {
            later.undone.is_none() && later.takes_back.is_none() && !self.is_taken_back(&later.id) && hangs(later)
        };
        later.filter(counts).map(|later| (later.name.clone(), later.at)).collect()
    }
}

impl Hindrance {
    /// Why, and what to do, as a sentence.
    pub fn sentence(&self, book: &Book, speaker: &Speaker) -> String {
        match self {
            Hindrance::Changed(clashes) => words::steps::changed_since(clashes, book, speaker),
            Hindrance::Refused(refusal) => words::refusal(refusal, book),
        }
    }
}
