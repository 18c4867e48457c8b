//! The journals that tabs write when they go. They are in local storage, since that is written
//! before a call returns, as the database is not. A lock of the journal's name shows that its tab is
//! still open.

use std::cell::RefCell;

use gloo_storage::{LocalStorage, Storage};
use js_sys::Function;
use wasm_bindgen::JsValue;

use super::first_paint::there;
use super::{Journal, locks};
use crate::book::BookId;

/// The journals of this tab.
#[derive(Default)]
pub(super) struct Journals {
    /// The tab's own part of the journals' names, once it wrote one.
    tab: RefCell<Option<String>>,
    /// The journal that is locked, and the function that unlocks it.
    lock: RefCell<Option<(String, Function)>>,
}

impl Journals {
    pub(super) fn write(&self, book: BookId, texts: &[String]) -> Option<String> {
        if !there() {
            return None;
        }
        let mut tab = self.tab.borrow_mut();
        let tab = tab.get_or_insert_with(|| js_sys::Math::random().to_string());
        let name = format!("{}{tab}", about(book));
        LocalStorage::set(&name, texts).ok()?;
        self.lock(&name);
        Some(name)
    }

    pub(super) fn delete(&self, names: &[String]) {
        for name in names.iter().filter(|_| there()) {
            LocalStorage::delete(name);
        }
        let unlock = self.lock.borrow_mut().take_if(|(locked, _)| names.contains(locked));
        if let Some((_, unlock)) = unlock {
            unlock.call0(&JsValue::UNDEFINED).ok();
        }
    }

    /// Locks a journal until it is deleted or the tab is gone. Does nothing if the browser has no
    /// locks.
    fn lock(&self, name: &str) {
        if self.lock.borrow().as_ref().is_some_and(|(locked, _)| locked == name) {
            return;
        }
        if let Some(unlock) = locks::hold(name) {
            self.lock.replace(Some((name.to_string(), unlock)));
        }
    }
}

/// How the names of the journals on a book begin.
fn about(book: BookId) -> String {
    format!("brimwright.left.{book}.")
}

/// The names of the journals on a book.
pub(super) fn names(book: BookId) -> Vec<String> {
    let mut names = Vec::new();
    if there() {
        let storage = LocalStorage::raw();
        let all = (0..storage.length().unwrap_or_default()).filter_map(|place| storage.key(place).ok()?);
        names.extend(all.filter(|name| name.starts_with(&about(book))));
    }
    names
}

/// The journals on a book whose tabs are gone.
pub(super) async fn orphaned(book: BookId) -> Vec<Journal> {
    let names = names(book);
    let mut orphaned = Vec::new();
    if names.is_empty() {
        return orphaned;
    }
    let locked = locks::held().await;
    for name in names.into_iter().filter(|name| !locked.contains(name)) {
        if let Ok(texts) = LocalStorage::get(&name) {
            orphaned.push(Journal { name, texts });
        }
    }
    orphaned
}
