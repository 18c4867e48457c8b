//! Tests in a real browser, of what only a browser has: its database, its tabs, its storage.
#![cfg(target_arch = "wasm32")]

mod book;
mod cache_note;
mod connection;
mod first_paint;
mod keeping;
mod raw;
mod schema;
mod tabs;

wasm_bindgen_test::wasm_bindgen_test_configure!(run_in_browser);
