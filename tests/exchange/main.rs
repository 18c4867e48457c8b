//! Tests: books leaving and coming in.

mod broken;
mod demo;
mod hostile;
mod offers_csv;
mod preview;
mod schema;

use brimwright::book::Book;
use brimwright::exchange::read;

/// The demo book's file.
const DEMO: &str = include_str!("../../public/books/marrowgate-juice-hall.json");

fn demo() -> Book {
    read(DEMO).unwrap()
}

/// The demo's file with the first `old` replaced by `new`.
fn demo_with(old: &str, new: &str) -> String {
    assert!(DEMO.contains(old), "{old:?}");
    DEMO.replacen(old, new, 1)
}
