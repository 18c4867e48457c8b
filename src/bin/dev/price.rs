//! `cargo dev price BOOK.json`: the computed offers of a book file, as the app's own CSV.

use std::io::Write;
use std::path::Path;

use brimwright::book::{Book, Settings};
use brimwright::{exchange, ledger, words};

use super::run::Outcome;

/// Prints the offers of the book in `file` as CSV: the same bytes that the app saves.
pub fn price(file: &str) -> Outcome {
    let bytes = std::fs::read(Path::new(file)).map_err(|error| format!("{file} cannot be read: {error}."))?;
    let book = exchange::read(bytes).map_err(|error| {
        let nothing = Book::new(Settings::new(""));
        format!("{file}: {}", words::book_file_error(&error, &nothing))
    })?;
    let ledger = ledger::Ledger::of(&book);
    let csv = words::offers_csv(&book, &ledger);
    std::io::stdout().write_all(csv.as_bytes()).map_err(|error| format!("The offers cannot be written: {error}."))
}
