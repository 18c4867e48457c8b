//! The note beside the files for use offline, and the handle of a file on the device.

use brimwright::store::{Backing, cache_note};
use js_sys::{Object, Reflect};
use wasm_bindgen::JsValue;
use wasm_bindgen_test::wasm_bindgen_test;

use crate::book::{ID, stocked};
use crate::raw::{Misbehaving, delete_cache};

#[wasm_bindgen_test]
async fn the_note_reads_back_and_the_last_one_counts() {
    delete_cache("brimwright-note").await;
    assert_eq!(cache_note::read().await, None, "a first start");
    cache_note::try_to_note("b1 Corner bar\n").await.unwrap();
    assert_eq!(cache_note::read().await.as_deref(), Some("b1 Corner bar\n"));
    cache_note::try_to_note("").await.unwrap();
    assert_eq!(cache_note::read().await.as_deref(), Some(""));
}

#[wasm_bindgen_test]
async fn without_such_a_store_nothing_is_noted_and_nothing_breaks() {
    let _without = Misbehaving::without_caches();
    assert!(cache_note::try_to_note("b1 Corner bar\n").await.is_err());
    assert_eq!(cache_note::read().await, None);
}

#[wasm_bindgen_test]
async fn a_handle_is_kept_with_its_book_and_goes_with_it() {
    let shelf = stocked("handle").await;
    let handle = Object::new();
    Reflect::set(&handle, &"name".into(), &"bar.json".into()).unwrap();
    let name = |handle: Option<JsValue>| handle.and_then(|it| Reflect::get(&it, &"name".into()).ok()?.as_string());
    assert_eq!(name(shelf.backing().handle(ID, "device-file").await.unwrap()), None);
    shelf.backing().keep_handle(ID, "device-file", &handle).await.unwrap();
    assert_eq!(name(shelf.backing().handle(ID, "device-file").await.unwrap()).as_deref(), Some("bar.json"));
    shelf.backing().delete(ID, &[]).await.unwrap();
    assert_eq!(name(shelf.backing().handle(ID, "device-file").await.unwrap()), None);
}
