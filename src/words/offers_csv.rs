//! The computed offers as CSV, with what is lacking in words.

use super::offer_errors::{offer_error, price_error};
use crate::book::Book;
use crate::drink::ledger::Ledger;
use crate::exchange::{Lack, write_offers};

/// The offers of a book as CSV: what the app saves and `cargo dev price` prints.
pub fn offers_csv(book: &Book, ledger: &Ledger) -> String {
    write_offers(book, ledger, &|lack| match lack {
        Lack::Offer(error) => offer_error(error, book),
        Lack::Suggestion(error) => price_error(error),
    })
}
