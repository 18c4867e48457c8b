//! Undo and redo: each entry is the edit that takes a step back, or does it again.

use std::collections::BTreeSet;

use crate::book::{Edit, Key, Record};
use crate::ledger::Move;

/// How many steps can be taken back.
const LONGEST: usize = 200;

/// One typing session in one field; all its edits are one step.
pub type Session = u64;

/// A step that can be taken back.
#[derive(Clone, Debug)]
pub struct Step {
    /// What was done, in words.
    pub name: String,
    /// The edit that takes it back.
    pub inverse: Edit,
    /// The typing session it belongs to.
    pub session: Option<Session>,
}

/// Steps done and undone.
#[derive(Clone, Debug, Default)]
pub struct History {
    done: Vec<Step>,
    undone: Vec<Step>,
}

impl History {
    /// Notes a new step. A further edit of the same session joins its step: taking it back
    /// restores what was there before the session.
    pub fn note(&mut self, step: Step) {
        self.undone.clear();
        let joins = step.session.is_some() && self.done.last().is_some_and(|last| last.session == step.session);
        if joins {
            return;
        }
        if self.done.len() >= LONGEST {
            self.done.remove(0);
        }
        self.done.push(step);
    }

    /// The last step, if it belongs to `session`: taken out, to be taken back.
    pub fn take_session(&mut self, session: Session) -> Option<Step> {
        self.done.pop_if(|last| last.session == Some(session))
    }

    /// The last step, to be taken back.
    pub fn take_done(&mut self) -> Option<Step> {
        self.done.pop()
    }

    /// The last step taken back, to be done again.
    pub fn take_undone(&mut self) -> Option<Step> {
        self.undone.pop()
    }

    /// A step taken back can be done again.
    pub fn note_undone(&mut self, step: Step) {
        self.undone.push(step);
    }

    /// A step done again can be taken back again.
    pub fn note_redone(&mut self, step: Step) {
        self.done.push(step);
    }

    /// The name of the step that Undo takes back.
    pub fn last_done(&self) -> Option<&str> {
        self.done.last().map(|step| step.name.as_str())
    }

    /// The name of the step that Redo does again.
    pub fn last_undone(&self) -> Option<&str> {
        self.undone.last().map(|step| step.name.as_str())
    }
}

/// What the last step moved.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LastChange {
    /// What was done, in words.
    pub name: String,
    /// The typing session it belongs to.
    pub session: Option<Session>,
    /// The records that it wrote.
    pub touched: BTreeSet<Key>,
    /// The record that it wrote, as it was before; none where it wrote several, or a new one.
    pub was: Option<Record>,
    /// The offers that moved, those now under target first.
    pub moves: Vec<Move>,
}

impl LastChange {
    /// With the moves of a further edit of the same session: before from the first, after from
    /// the last.
    pub fn joined_with(self, later: LastChange) -> LastChange {
        if later.session.is_none() || self.session != later.session {
            return later;
        }
        let mut moves = later.moves;
        for earlier in &self.moves {
            match moves.iter_mut().find(|moved| moved.offer == earlier.offer) {
                Some(moved) => moved.before = earlier.before,
                None => moves.push(*earlier),
            }
        }
        moves.retain(|moved| moved.before != moved.after);
        LastChange { moves: Move::worst_first(moves), was: self.was, ..later }
    }
}
