//! Why something could not be kept or read.

use crate::store::{Cause, Fault};

/// The sentence for a fault of the store.
pub fn fault(fault: &Fault) -> String {
    match fault {
        Fault::NoStorage => "This browser gives the page no storage, as in some private windows. What you enter is gone when you close it. Use an ordinary window.".to_string(),
        Fault::NoAnswer => "Your books do not answer. Nothing was changed. Wait a little or try again; if that does not help, close all tabs and windows of the browser.".to_string(),
        Fault::HeldByOlder => "Another tab holds your books open with an older version. Close the other tabs, then load this page again.".to_string(),
        Fault::NewerSchema => "Your books were written by a newer version of Brimwright. Load the page again while online to get it. Nothing was changed.".to_string(),
        Fault::NewerVersionOpen => "A newer version is open in another tab. This tab no longer saves: load the page again to go on here.".to_string(),
        Fault::Closed => "The connection to the stored books was lost. Try again; if that does not help, save a copy as a file and load the page again.".to_string(),
        Fault::Full => "This device has no room left. Your changes are still on the screen: save a copy as a file, make room, then try again.".to_string(),
        Fault::Gone => "The browser has removed this book from the device. Keep what you see as a new book.".to_string(),
        Fault::Deleted => "This book was deleted in another tab. Keep what you see as a new book, or close it.".to_string(),
        Fault::Behind => "The stored book moved on in another tab. Load the page again to see it.".to_string(),
        Fault::Damaged(damage) => damaged(&damage.causes),
        Fault::Browser { .. } => "Your browser ran into a problem. Try again, or save a copy as a file.".to_string(),
    }
}

fn damaged(causes: &[Cause]) -> String {
    let found = match causes.len() {
        1 => "One part".to_string(),
        count => format!("{count} parts"),
    };
    format!(
        "{found} of this book cannot be read. Nothing was changed or deleted: save what is stored as a file, or see what is whole."
    )
}
