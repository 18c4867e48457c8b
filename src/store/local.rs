//! Small things that this device remembers. Not a store of record: the browser writes them seconds
//! later, or never. Where the browser gives none, everything reads as absent and writing does
//! nothing.

use gloo_storage::{LocalStorage, Storage};
use serde::Serialize;
use serde::de::DeserializeOwned;

/// Whether the browser gives this page local storage: asking may throw, and `gloo_storage`
/// panics where it does.
fn there() -> bool {
    web_sys::window().is_some_and(|window| window.local_storage().is_ok_and(|storage| storage.is_some()))
}

pub fn get<T: DeserializeOwned>(key: &str) -> Option<T> {
    if there() { LocalStorage::get(key).ok() } else { None }
}

pub fn set(key: &str, value: impl Serialize) {
    if there() {
        LocalStorage::set(key, value).ok();
    }
}

pub fn forget(key: &str) {
    if there() {
        LocalStorage::delete(key);
    }
}
