//! What a tab keeps of an open book while its page is loaded anew.
//!
//! Where the browser gives no storage of its own to a tab, everything reads as absent and writing
//! does nothing.

use gloo_storage::{SessionStorage, Storage};

use crate::book::BookId;

/// Reads what was typed and is not in the book, as texts.
pub fn unfinished(book: BookId) -> Vec<String> {
    if there() { SessionStorage::get(name(book)).unwrap_or_default() } else { Vec::new() }
}

/// Notes what is typed and not in the book.
pub fn note_unfinished(book: BookId, texts: &[String]) {
    if !there() {
        return;
    }
    if texts.is_empty() {
        SessionStorage::delete(name(book));
    } else {
        // A tab that may keep no more keeps what it has.
        SessionStorage::set(name(book), texts).ok();
    }
}

fn name(book: BookId) -> String {
    format!("brimwright.unfinished.{book}")
}

/// Whether the browser gives this tab storage: asking may throw, and `gloo_storage` panics where
/// it does.
fn there() -> bool {
    web_sys::window().is_some_and(|window| window.session_storage().is_ok_and(|storage| storage.is_some()))
}
