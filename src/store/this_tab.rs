//! What a tab keeps while its page is reloaded: its number, and what is typed but not in the book.
//!
//! If the browser has no session storage, everything reads as absent and writing does nothing.

use std::cell::Cell;

use gloo_storage::{SessionStorage, Storage};

use super::locks;
use crate::book::BookId;

/// The key of the tab's number, and the start of its lock's name.
const NUMBER: &str = "brimwright.tab";

/// The number of this tab, and those of the other open tabs. A tab keeps its number when its page is
/// reloaded; a new tab, or a duplicate of another, takes `fresh`. If the browser has no locks, no tab
/// sees another.
pub async fn among_tabs(fresh: u64) -> (u64, Vec<u64>) {
    let held = locks::held().await;
    let held: Vec<u64> = held.iter().filter_map(|name| name.strip_prefix(NUMBER)?.parse().ok()).collect();
    NOW.with(|now| {
        let number = now.get().unwrap_or_else(|| {
            let kept = if there() { SessionStorage::get(NUMBER).ok() } else { None };
            let number = kept.filter(|kept| !held.contains(kept)).unwrap_or(fresh);
            if there() {
                SessionStorage::set(NUMBER, number).ok();
            }
            // The lock is held until the tab goes.
            let _ = locks::hold(&format!("{NUMBER}{number}"));
            now.set(Some(number));
            number
        });
        (number, held.into_iter().filter(|other| *other != number).collect())
    })
}

thread_local! {
    /// The number of this tab, once it is known.
    static NOW: Cell<Option<u64>> = const { Cell::new(None) };
}

/// What is typed but not in the book, as texts.
pub fn unfinished(book: BookId) -> Vec<String> {
    if there() { SessionStorage::get(name(book)).unwrap_or_default() } else { Vec::new() }
}

/// Keeps what is typed but not in the book.
pub fn note_unfinished(book: BookId, texts: &[String]) {
    if !there() {
        return;
    }
    if texts.is_empty() {
        SessionStorage::delete(name(book));
    } else {
        // If there is no room, what was kept before stays.
        SessionStorage::set(name(book), texts).ok();
    }
}

fn name(book: BookId) -> String {
    format!("brimwright.unfinished.{book}")
}

/// What was said of the sizes of a book and is not in it, as a text.
pub fn said_of_sizes(book: BookId) -> Option<String> {
    if there() { SessionStorage::get(of_sizes(book)).ok() } else { None }
}

/// Keeps it.
pub fn note_said_of_sizes(book: BookId, said: &str) {
    if there() {
        // If there is no room, what was kept before stays.
        SessionStorage::set(of_sizes(book), said).ok();
    }
}

fn of_sizes(book: BookId) -> String {
    format!("brimwright.sizes.{book}")
}

/// Whether the tab has session storage. Asking may throw, and `gloo_storage` panics if it does.
fn there() -> bool {
    web_sys::window().is_some_and(|window| window.session_storage().is_ok_and(|storage| storage.is_some()))
}
