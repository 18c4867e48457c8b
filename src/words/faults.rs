//! Why something could not be kept or read.

use crate::say;
use crate::store::{Cause, Fault};

/// The sentence for a fault of the store.
pub fn fault(fault: &Fault) -> String {
    match fault {
        Fault::NoStorage => say!(first::no_storage),
        Fault::NoAnswer => say!(first::no_answer),
        Fault::HeldByOlder => say!(first::held_by_older),
        Fault::NewerSchema => say!(first::newer_books),
        Fault::NewerVersionOpen => say!(first::newer_version_open),
        Fault::Closed => say!(first::connection_lost),
        Fault::Full => say!(first::no_room),
        Fault::Gone => say!(first::book_removed),
        Fault::Deleted => say!(first::book_deleted),
        Fault::Behind => say!(first::book_moved_on),
        Fault::Damaged(damage) => return damaged(&damage.causes),
        Fault::Browser { .. } => say!(first::browser_trouble),
    }
    .to_string()
}

fn damaged(causes: &[Cause]) -> String {
    [&*say!(first::parts_unreadable, parts = causes.len()), say!(first::nothing_deleted)].join(" ")
}
