//! Steps as they are kept beside their book: read when it opens, written with each edit.

use super::{History, Step};
use crate::book::BookId;
use crate::store::{Drawer, Slip};

/// How many steps of a book are kept.
pub const LONGEST: usize = 200;

/// How many bytes the kept steps of a book may take together. The oldest go first.
pub const LARGEST: usize = 4_000_000;

impl History {
    /// The history of a book without steps.
    pub fn new(book: BookId) -> History {
        History { book, tab: 0, others: None, steps: Vec::new(), typing: None, unwritten: Vec::new() }
    }

    /// The history of a book that opens, from the slips kept beside it. `tab` tells this tab's
    /// steps from those of any other; Undo goes no further back until [`History::among`]. A slip
    /// that does not read is thrown away: it stands in the way of nothing.
    pub fn open(book: BookId, tab: u64, slips: &[Slip]) -> History {
        let mut history = History { tab, steps: Vec::with_capacity(slips.len()), ..History::new(book) };
        for slip in slips {
            let step = slip.text.as_deref().and_then(|text| Step::from_text(&slip.id, text));
            match step {
                Some(step) => history.steps.push(step),
                None => history.put(&slip.id, None),
            }
        }
        history.prune();
        history
    }

    /// Tells this tab's number, and those of the other tabs that are there: from now on Undo and Redo
    /// reach back to the steps of all others that are gone.
    pub fn among(&mut self, tab: u64, others: Vec<u64>) {
        self.tab = tab;
        self.others = Some(others);
    }

    /// What is to be written or thrown away: with the edit that was just applied, or alone where a
    /// step was given up or could not be walked over.
    pub fn take_slips(&mut self) -> Vec<Slip> {
        std::mem::take(&mut self.unwritten)
    }

    /// An id after all those of the steps: the time, then the tab. No two steps of a tab have one
    /// time, and no two tabs one number.
    pub(super) fn next_id(&self, now: u64) -> String {
        let last = self.steps.last().and_then(|step| u64::from_str_radix(step.id.split('-').next()?, 16).ok());
        let time = now.max(last.map_or(0, |last| last.saturating_add(1)));
        format!("{time:012x}-{:x}", self.tab)
    }

    /// Writes the step at a place. One that is larger than all steps together may be is kept on
    /// the page alone.
    pub(super) fn write(&mut self, place: usize) {
        let Some(step) = self.steps.get_mut(place) else { return };
        let text = step.text();
        step.bytes = text.as_ref().map_or(0, String::len);
        let id = step.id.clone();
        self.put(&id, text.filter(|text| text.len() <= LARGEST));
    }

    /// Throws the step at a place away.
    pub(super) fn remove(&mut self, place: usize) {
        if place < self.steps.len() {
            let step = self.steps.remove(place);
            self.put(&step.id, None);
        }
    }

    /// After a new step nothing is done again.
    pub(super) fn forget_undone(&mut self) {
        while let Some(place) = self.steps.iter().position(|step| step.undone.is_some() && self.is_ours(step)) {
            self.remove(place);
        }
    }

    /// Throws away the oldest steps beyond what is kept, never the newest. Of those that are too
    /// large to keep only the newest stays, beside the others.
    pub(super) fn prune(&mut self) {
        let kept = |steps: &[Step]| {
            let kept = steps.iter().filter(|step| !step.is_too_large());
            kept.fold(0_usize, |sum, step| sum.saturating_add(step.bytes))
        };
        let too_large = |steps: &[Step]| steps.iter().filter(|step| step.is_too_large()).count();
        while let Some(first) = self.steps.iter().position(Step::is_too_large).filter(|_| too_large(&self.steps) > 1) {
            self.remove(first);
        }
        while self.steps.len() > LONGEST || kept(&self.steps) > LARGEST {
            self.remove(0);
        }
    }

    fn put(&mut self, id: &str, text: Option<String>) {
        self.unwritten.retain(|slip| slip.id != id);
        self.unwritten.push(Slip { drawer: Drawer::Steps, book: self.book, id: id.to_string(), text });
    }
}
