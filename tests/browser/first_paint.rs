//! What is known before the first paint.

use brimwright::book::BookId;
use brimwright::store::first_paint::{self, FirstPaint};
use wasm_bindgen_test::wasm_bindgen_test;

use crate::raw::Misbehaving;

fn local_storage() -> web_sys::Storage {
    web_sys::window().unwrap().local_storage().unwrap().unwrap()
}

#[wasm_bindgen_test]
fn they_read_back_and_leave_others_alone() {
    let storage = local_storage();
    storage.clear().unwrap();
    storage.set_item("neighbour", "kept").unwrap();
    assert_eq!(first_paint::read(), FirstPaint::default());

    let book = BookId::from_random(0xb1);
    first_paint::note_open(Some(book));
    first_paint::note_revision(7);
    assert_eq!(first_paint::read(), FirstPaint { open_book: Some(book), revision: Some(7), started: true });
    assert_eq!(storage.get_item("brimwright.open-book").unwrap().as_deref(), Some("\"b1\""));

    assert_eq!(first_paint::noted_books(), None);
    assert!(first_paint::note_books("b1 Corner bar\n"));
    assert_eq!(first_paint::noted_books().as_deref(), Some("b1 Corner bar\n"));
    assert!(!first_paint::note_books("b1 Corner bar\n"), "nothing new");

    first_paint::note_open(None);
    assert_eq!(first_paint::read(), FirstPaint { open_book: None, revision: None, started: true });
    assert_eq!(storage.get_item("neighbour").unwrap().as_deref(), Some("kept"));
}

#[wasm_bindgen_test]
fn what_does_not_read_is_absent() {
    let storage = local_storage();
    for text in ["", "{", "\"0\"", "\"b1", "-1", "null", "\u{0}"] {
        for key in ["open-book", "revision", "started"] {
            storage.set_item(&format!("brimwright.{key}"), text).unwrap();
        }
        assert_eq!(first_paint::read(), FirstPaint::default(), "{text:?}");
    }
}

#[wasm_bindgen_test]
fn without_local_storage_nothing_is_known_and_nothing_breaks() {
    first_paint::note_open(Some(BookId::from_random(1)));
    let _without = Misbehaving::without_local_storage();
    assert_eq!(first_paint::read(), FirstPaint::default());
    first_paint::note_open(Some(BookId::from_random(2)));
    first_paint::note_open(None);
    first_paint::note_revision(1);
}

#[wasm_bindgen_test]
fn without_room_the_old_stays() {
    first_paint::note_open(Some(BookId::from_random(1)));
    let _full = Misbehaving::full_local_storage();
    first_paint::note_open(Some(BookId::from_random(2)));
    assert_eq!(first_paint::read().open_book, Some(BookId::from_random(1)));
}
