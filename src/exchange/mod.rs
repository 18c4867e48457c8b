//! Books leaving and coming in: the book file, what an import would do, computed offers as CSV.
//!
//! Bytes to values and back. What comes in is held to be hostile until every record has been
//! put in a book by the same checks as an edit. A file is measured before it is read
//! ([`MAX_BYTES`]), cut into records by its brackets alone, and read record by record in pieces, so
//! that a page can answer meanwhile. What looks through a list does so in linear time. No sentence
//! repeats more than 60 letters of a file, nor a parser's words, nor an id.

mod book_file;
mod book_file_error;
mod csv;
mod fields;
mod header;
mod offers_csv;
mod place;
mod preview;
mod reading;
mod records;
mod salvage;
mod split;
mod till;

pub use book_file::{FORMAT, MAX_BYTES, VERSION, read, take_in, write};
pub use book_file_error::{BookFileError, Fault, Place};
pub use offers_csv::{Column, Lack, Said, write_offers};
pub use preview::{Counts, Preview, preview};
pub use reading::{Reading, text};
pub use salvage::{LeftOut, TakenIn, WhyLeftOut};
pub use split::MAX_RECORD_BYTES;
pub use till::{BadRow, DayOrder, Days, Row, Table, Taken, TakenWeek, Till, TillError, Why, read_table, take};
