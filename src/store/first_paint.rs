//! What must be known before the first paint, in local storage. It outlives an eviction of the
//! database.
//!
//! This is no store of record: the browser writes it to the disk seconds later, or never. If there
//! is no local storage, everything reads as absent and writing does nothing.

use gloo_storage::{LocalStorage, Storage};
use serde::Serialize;
use serde::de::DeserializeOwned;

use crate::book::BookId;
use crate::foundation::lock::read_pin;

const OPEN_BOOK: &str = "brimwright.open-book";
/// Read by the script of the first words, as are `STARTED`, `LANGUAGE` and `DENSITY`.
const OPEN_NAME: &str = "brimwright.open-name";
const REVISION: &str = "brimwright.revision";
const STARTED: &str = "brimwright.started";
const BOOKS: &str = "brimwright.books";
const COUNTER_PIN: &str = "brimwright.counter-pin";
const LANGUAGE: &str = "brimwright.language";
const CREW_LANGUAGE: &str = "brimwright.crew-language";
const REGION: &str = "brimwright.region";
const DENSITY: &str = "brimwright.density";

/// What must be known before the first paint.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct FirstPaint {
    /// The book that was last open.
    pub open_book: Option<BookId>,
    /// Its last saved revision.
    pub revision: Option<u64>,
    /// Whether the app was ever used here. If so, and the database is empty, it was evicted.
    pub started: bool,
}

/// Reads it. What does not read counts as absent.
pub fn read() -> FirstPaint {
    let text: Option<String> = get(OPEN_BOOK);
    FirstPaint {
        open_book: text.as_deref().and_then(BookId::from_text),
        revision: get(REVISION),
        started: get(STARTED).unwrap_or_default(),
    }
}

/// Notes which book is open, and that the app was used here.
pub fn note_open(book: Option<BookId>) {
    set(STARTED, true);
    match book {
        Some(book) => set(OPEN_BOOK, book.to_string()),
        None if there() => {
            LocalStorage::delete(OPEN_BOOK);
            LocalStorage::delete(OPEN_NAME);
            LocalStorage::delete(REVISION);
        }
        None => {}
    }
}

/// Notes the name of the open book: the page shows it before the app is here.
pub fn note_name(name: &str) {
    set(OPEN_NAME, name);
}

/// Notes the last saved revision of the open book.
pub fn note_revision(revision: u64) {
    set(REVISION, revision);
}

/// The tag of the region whose numbers and days are chosen for this device. Returns `None` if the
/// browser's own counts.
pub fn region() -> Option<String> {
    get(REGION)
}

/// Chooses the region, or the browser's own.
pub fn note_region(tag: Option<&str>) {
    note(REGION, tag);
}

/// The tag of the language that is chosen for this device. Returns `None` if the browser's own
/// counts.
pub fn language() -> Option<String> {
    get(LANGUAGE)
}

/// Chooses the language, or the browser's own. The start script goes by it when the page is loaded.
pub fn note_language(tag: Option<&str>) {
    note(LANGUAGE, tag);
}

/// The tag of the language that is chosen for the Counter of this device. Returns `None` if it is the
/// same as everywhere.
pub fn crew_language() -> Option<String> {
    get(CREW_LANGUAGE)
}

/// Chooses the language of the Counter, or the same as everywhere.
pub fn note_crew_language(tag: Option<&str>) {
    note(CREW_LANGUAGE, tag);
}

/// How close together things stand on the screens of a desk, where that was chosen.
pub fn density() -> Option<String> {
    get(DENSITY)
}

/// Chooses how close together things stand, or as they do unless chosen.
pub fn note_density(density: Option<&str>) {
    note(DENSITY, density);
}

/// The note of the books that should be here.
pub fn noted_books() -> Option<String> {
    get(BOOKS)
}

/// Notes the books that should be here. Returns whether the note changed.
pub fn note_books(text: &str) -> bool {
    let changes = noted_books().as_deref() != Some(text);
    if changes {
        set(BOOKS, text);
    }
    changes
}

/// The PIN that locks this device to the Counter, as it was typed. Returns `None` if it is not
/// locked.
pub fn pin() -> Option<String> {
    get(COUNTER_PIN).filter(|pin: &String| read_pin(pin).is_ok())
}

/// Sets the PIN, or removes it.
pub fn note_pin(pin: Option<&str>) {
    note(COUNTER_PIN, pin);
}

/// Notes a text, or forgets it.
fn note(key: &str, text: Option<&str>) {
    match text {
        Some(text) => set(key, text),
        None if there() => LocalStorage::delete(key),
        None => {}
    }
}

/// Whether the page has local storage. Asking may throw, and `gloo_storage` panics if it does.
pub(super) fn there() -> bool {
    web_sys::window().is_some_and(|window| window.local_storage().is_ok_and(|storage| storage.is_some()))
}

pub(super) fn get<T: DeserializeOwned>(key: &str) -> Option<T> {
    if there() { LocalStorage::get(key).ok() } else { None }
}

pub(super) fn set(key: &str, value: impl Serialize) {
    if there() {
        LocalStorage::set(key, value).ok();
    }
}
