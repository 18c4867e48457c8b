//! What the last step moved: the offers before and after it.

use std::collections::BTreeSet;

use super::history::Session;
use crate::book::{Key, Record};
use crate::drink::ledger::OfferChange;

/// What the last step moved.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LastChange {
    /// What was done, in words.
    pub name: String,
    /// The typing session it belongs to.
    pub session: Option<Session>,
    /// The records that it wrote.
    pub touched: BTreeSet<Key>,
    /// The record that it wrote, as it was before. It is `None` if it wrote several, or a new one.
    pub was: Option<Record>,
    /// The offers that moved, those now under target first.
    pub moves: Vec<OfferChange>,
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
        LastChange { moves: OfferChange::worst_first(moves), was: self.was, ..later }
    }
}
