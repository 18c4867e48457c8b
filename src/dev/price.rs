//! `cargo dev price BOOK.json`: the computed offers of a book file, as the app's own CSV.

use std::fs;
use std::io::Write;

use brimwright::{drink::ledger, exchange, words};

use crate::run::Outcome;

/// Prints the offers of the book in `file` as CSV: the same bytes that the app saves.
pub fn price(file: &str) -> Outcome {
    let unread =
        |_| format!("{file} cannot be read. Check the name and the permissions: cargo dev price my-book.json.");
    let bytes = fs::metadata(file).map_err(unread)?.len();
    let bytes = usize::try_from(bytes).unwrap_or(usize::MAX);
    let read = if bytes > exchange::MAX_BYTES {
        Err(exchange::BookFileError::TooLarge { bytes })
    } else {
        exchange::read(fs::read(file).map_err(unread)?)
    };
    let book = read.map_err(|error| format!("{file}: {}", words::book_file_error(&error)))?;
    let ledger = ledger::Ledger::of(&book);
    let csv = words::offers_csv(&book, &ledger);
    std::io::stdout().write_all(csv.as_bytes()).map_err(|error| {
        format!("The offers cannot be printed ({error}). Write them to a file: cargo dev price {file} > offers.csv.")
    })
}
