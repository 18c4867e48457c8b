//! Files going out of the page, to where the browser keeps downloads.

use js_sys::Array;
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Blob, BlobPropertyBag, HtmlAnchorElement, Url};

use crate::book::Book;
use crate::exchange;

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

/// Offers a whole book as a file.
pub fn save_book_file(book: &Book) {
    let name = format!("{}.brimwright.json", file_name(book));
    save_text(&name, "application/json", &exchange::write(book));
}

/// The book's name as a file may be called.
pub fn file_name(book: &Book) -> String {
    let plain = |letter: char| {
        if letter.is_ascii_alphanumeric() || !letter.is_ascii() { letter.to_ascii_lowercase() } else { '-' }
    };
    let name: String = book.settings().name.chars().map(plain).collect();
    name.trim_matches('-').to_string()
}
