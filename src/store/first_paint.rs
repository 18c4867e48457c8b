//! What must be known before the first paint, and survives where the database was evicted.
//!
//! Not a store of record: the browser writes it seconds later, or never. Where the browser gives
//! none, everything reads as absent and writing does nothing.

use gloo_storage::{LocalStorage, Storage};
use serde::Serialize;
use serde::de::DeserializeOwned;

use crate::book::BookId;
use crate::foundation::lock::read_pin;

const OPEN_BOOK: &str = "brimwright.open-book";
const REVISION: &str = "brimwright.revision";
const STARTED: &str = "brimwright.started";
const BOOKS: &str = "brimwright.books";
const COUNTER_PIN: &str = "brimwright.counter-pin";

/// What must be known before the first paint.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct FirstPaint {
    /// The book that was open last.
    pub open_book: Option<BookId>,
    /// Its last saved revision.
    pub revision: Option<u64>,
    /// Whether the app was ever used here. With no books in the database, they were evicted.
    pub started: bool,
}

/// Reads them; what does not read is absent.
pub fn read() -> FirstPaint {
    let text: Option<String> = get(OPEN_BOOK);
    FirstPaint {
        open_book: text.as_deref().and_then(BookId::from_text),
        revision: get(REVISION),
        started: get(STARTED).unwrap_or_default(),
    }
}

/// Notes the book that is open, and that the app was used here.
pub fn note_open(book: Option<BookId>) {
    set(STARTED, true);
    match book {
        Some(book) => set(OPEN_BOOK, book.to_string()),
        None if there() => {
            LocalStorage::delete(OPEN_BOOK);
            LocalStorage::delete(REVISION);
        }
        None => {}
    }
}

/// Notes the last saved revision of the open book.
pub fn note_revision(revision: u64) {
    set(REVISION, revision);
}

/// The note of the books there should be.
pub fn noted_books() -> Option<String> {
    get(BOOKS)
}

/// Notes the books there should be. Whether that changes the note.
pub fn note_books(text: &str) -> bool {
    let changes = noted_books().as_deref() != Some(text);
    if changes {
        set(BOOKS, text);
    }
    changes
}

/// The PIN that this device is locked to the Counter by, as it was typed.
pub fn pin() -> Option<String> {
    get(COUNTER_PIN).filter(|pin: &String| read_pin(pin).is_ok())
}

/// Notes the PIN, or that there is none.
pub fn note_pin(pin: Option<&str>) {
    match pin {
        Some(pin) => set(COUNTER_PIN, pin),
        None if there() => LocalStorage::delete(COUNTER_PIN),
        None => {}
    }
}

/// Whether the browser gives this page local storage: asking may throw, and `gloo_storage`
/// panics where it does.
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
