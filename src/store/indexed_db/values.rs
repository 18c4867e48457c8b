//! The keys, ranges and values of the database.

use js_sys::{Array, JSON, Object, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::IdbKeyRange;

use crate::book::BookId;
use crate::store::request::thrown;
use crate::store::schema::{BOOKS, ROWS, SLIPS};
use crate::store::{Drawer, Fault};

/// A slip as it is stored: its key, and one more field.
pub(super) fn slip_value(drawer: Drawer, book: BookId, id: &str, name: &str, value: &JsValue) -> Result<Object, Fault> {
    let slip = Object::new();
    let fields = [("drawer", drawer.name().into()), ("book", book_key(book)), ("id", id.into()), (name, value.clone())];
    for (name, field) in fields {
        Reflect::set(&slip, &name.into(), &field).map_err(thrown)?;
    }
    Ok(slip)
}

/// The key of a slip.
pub(super) fn slip_key(drawer: Drawer, book: BookId, id: &str) -> JsValue {
    Array::of3(&drawer.name().into(), &book_key(book), &id.into()).into()
}

/// The range of the slips in a drawer, of one book or of all.
pub(super) fn slips_in(drawer: Drawer, book: Option<BookId>) -> Result<JsValue, Fault> {
    let (first, last) = match book {
        Some(book) => (
            Array::of2(&drawer.name().into(), &book_key(book)),
            Array::of3(&drawer.name().into(), &book_key(book), &Array::new()),
        ),
        None => (Array::of1(&drawer.name().into()), Array::of2(&drawer.name().into(), &Array::new())),
    };
    IdbKeyRange::bound(&first, &last).map(Into::into).map_err(thrown)
}

/// The text in a field of a stored value. Returns `None` if there is none.
pub(super) fn field(value: &JsValue, name: &str) -> Option<String> {
    Reflect::get(value, &name.into()).ok()?.as_string()
}

/// The names of every store.
pub(super) fn every_store() -> JsValue {
    Array::of3(&BOOKS.into(), &ROWS.into(), &SLIPS.into()).into()
}

/// The names of the stores of a book.
pub(super) fn books_and_rows() -> JsValue {
    Array::of2(&BOOKS.into(), &ROWS.into()).into()
}

/// The key of a book.
pub(super) fn book_key(id: BookId) -> JsValue {
    JsValue::from_str(&id.to_string())
}

/// The range of a book's rows. In the order of keys an array comes after any number or text, so that an
/// empty array ends the range.
pub(super) fn rows_of(id: BookId) -> Result<JsValue, Fault> {
    let (first, last) = (Array::of1(&book_key(id)), Array::of2(&book_key(id), &Array::new()));
    IdbKeyRange::bound(&first, &last).map(Into::into).map_err(thrown)
}

/// The range of a book's rows later than a revision, in the index by revision.
pub(super) fn rows_after(id: BookId, revision: u64) -> Result<JsValue, Fault> {
    let first = Array::of2(&book_key(id), &JsValue::from_f64(revision as f64));
    let last = Array::of2(&book_key(id), &Array::new());
    IdbKeyRange::bound_with_lower_open(&first, &last, true).map(Into::into).map_err(thrown)
}

/// The value that a text of JSON stands for.
pub(super) fn value(text: Result<String, serde_json::Error>) -> Result<JsValue, Fault> {
    let text = text.map_err(|error| Fault::Browser { name: "JSON".into(), message: error.to_string() })?;
    JSON::parse(&text).map_err(thrown)
}

/// The texts of an array of stored values.
pub(super) fn texts(values: &JsValue) -> Result<Vec<String>, Fault> {
    let values: &Array = values.dyn_ref().ok_or(Fault::Closed)?;
    Ok(values.iter().map(|value| stored_text(&value)).collect())
}

/// A stored value as JSON, or as the browser shows it if JSON has no such value.
pub(super) fn stored_text(value: &JsValue) -> String {
    match JSON::stringify(value).ok().and_then(|text| text.as_string()) {
        Some(text) => text,
        None => format!("{value:?}"),
    }
}
