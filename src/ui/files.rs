//! Files going out of the page, to where the browser keeps downloads, and coming in.

use js_sys::{Array, Date, Promise, Uint8Array};
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, BlobPropertyBag, File, HtmlAnchorElement, Url};

use crate::book::Book;
use crate::exchange::{self, BookFileError, MAX_BYTES, Reading, TakenIn};
use crate::say;
use crate::words;

/// Said of a file that the browser does not hand over.
pub fn unread() -> &'static str {
    say!(book::file_not_read)
}

/// Bytes read at a time, and the milliseconds after which the page gets its turn.
const PIECE: usize = 16_000;
const TURN: f64 = 12.0;

/// The bytes of a file that was chosen. Returns `None` if the browser does not hand them over. It
/// must have been measured: see [`is_too_large`].
pub async fn bytes_of(file: &File) -> Option<Vec<u8>> {
    let buffer = JsFuture::from(file.array_buffer()).await.ok()?;
    Some(Uint8Array::new(&buffer).to_vec())
}

/// Whether a file is larger than any that is read. Asked before it is read.
pub fn is_too_large(file: &File) -> bool {
    file.size() > MAX_BYTES as f64
}

/// Reads a book from a file that was chosen, a few milliseconds at a time; `progress` is told the
/// percentage done.
///
/// # Errors
/// Why it cannot be read, as a sentence.
pub async fn book_of(file: &File, progress: impl Fn(usize)) -> Result<TakenIn, String> {
    let said = |error: BookFileError| words::book_file_error(&error);
    if is_too_large(file) {
        return Err(said(BookFileError::TooLarge { bytes: file.size() as usize }));
    }
    let bytes = bytes_of(file).await.ok_or_else(|| unread().to_string())?;
    let mut reading = exchange::text(&bytes).and_then(Reading::of).map_err(said)?;
    loop {
        let until = Date::now() + TURN;
        while Date::now() < until {
            if let Some(taken) = reading.go_on(PIECE).map_err(said)? {
                return Ok(taken.or_named(say!(book::repaired_book)));
            }
        }
        progress(reading.done());
        turn().await;
    }
}

/// Gives the page its turn: to paint, and to answer the person.
async fn turn() {
    let mut later = |resolve: js_sys::Function, _| {
        // A page without timers has nothing to give its turn to.
        let _ = window().set_timeout_with_callback(&resolve);
    };
    let _ = JsFuture::from(Promise::new(&mut later)).await;
}

/// Offers a text as a file to save.
pub fn save_text(name: &str, kind: &str, text: &str) {
    // A browser that refuses a download says so itself; there is nothing to mend here.
    let _ = offer(name, kind, text);
}

fn offer(name: &str, kind: &str, text: &str) -> Result<(), JsValue> {
    let options = BlobPropertyBag::new();
    options.set_type(kind);
    let blob = Blob::new_with_str_sequence_and_options(&Array::of1(&text.into()), &options)?;
    let address = Url::create_object_url_with_blob(&blob)?;
    let link: HtmlAnchorElement = document().create_element("a")?.unchecked_into();
    link.set_href(&address);
    link.set_download(name);
    link.click();
    // The download has begun with the click; the address may go once it is under way.
    set_timeout(
        move || {
            let _ = Url::revoke_object_url(&address);
        },
        std::time::Duration::from_secs(60),
    );
    Ok(())
}

/// Offers a whole book as a file. Whether the browser took it.
pub fn save_book_file(book: &Book) -> bool {
    let name = format!("{}.brimwright.json", file_name(book));
    offer(&name, "application/json", &exchange::write(book)).is_ok()
}

/// The book's name as a file may be called.
pub fn file_name(book: &Book) -> String {
    let plain = |letter: char| {
        if letter.is_ascii_alphanumeric() || !letter.is_ascii() { letter.to_ascii_lowercase() } else { '-' }
    };
    let name: String = book.settings().name.chars().map(plain).collect();
    name.trim_matches('-').to_string()
}
