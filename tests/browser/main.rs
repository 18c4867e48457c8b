<<<<<<< HEAD
//! What only a browser can show of the app's parts, in headless Chromium.
#![cfg(target_arch = "wasm32")]

use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

#[wasm_bindgen_test]
fn the_app_mounts_on_an_empty_page() {
    let page =
        web_sys::window().and_then(|window| window.document()).and_then(|document| document.body()).expect("a page");
    brimwright::ui::mount();
    assert!(page.inner_text().contains("Brimwright"));
}
=======
//! Tests in a real browser, of what only a browser has: its database, its tabs, its storage.
#![cfg(target_arch = "wasm32")]

mod book;
mod connection;
mod first_paint;
mod keeping;
mod raw;
mod schema;
mod tabs;

wasm_bindgen_test::wasm_bindgen_test_configure!(run_in_browser);
>>>>>>> store
