//! Why a book file cannot be read. The words for each are not here.

use crate::book::{Key, Refusal};

/// Why a book file cannot be read. Nothing has been changed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum BookFileError {
    /// More bytes than [`MAX_BYTES`](super::MAX_BYTES).
    TooLarge {
        /// How many.
        bytes: usize,
    },
    /// There is nothing in it.
    Empty,
    /// The bytes are not UTF-8 text.
    NotText,
    /// The text is not JSON, and says that it is a book.
    NotJson {
        /// Line, from 1.
        line: usize,
        /// Column in bytes, from 1; 0 at the end of the line before.
        column: usize,
    },
    /// The text ends in the middle: half a download, say.
    CutShort {
        /// The line that it ends in, from 1.
        line: usize,
    },
    /// It is of something else.
    Foreign {
        /// What it says it is, shortened, if it says so.
        format: Option<String>,
    },
    /// It does not say its version, a whole number from 1.
    NoVersion,
    /// It was written by a newer version of the app.
    Newer {
        /// The file's version.
        version: u64,
    },
    /// A value is not as it should be.
    Value {
        /// Where.
        place: Place,
        /// What is wrong there.
        fault: Fault,
    },
    /// Two records of the same kind have one id.
    Twice {
        /// The id with its kind.
        key: Key,
        /// The first one's name, shortened.
        name: String,
        /// The line of the second, from 1.
        line: usize,
    },
    /// The book refuses a record.
    Refused {
        /// The record.
        key: Key,
        /// Its name, shortened. It is empty if it has none.
        name: String,
        /// The line that it begins on, from 1.
        line: usize,
        /// Why.
        refusal: Refusal,
    },
}

/// A place in a book file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Place {
    /// Line, from 1.
    pub line: usize,
    /// Column in bytes, from 1.
    pub column: usize,
    /// The way there, such as `drinks[2].lines[0].amount`, shortened. It is empty for the whole
    /// file. Positions are counted from 0.
    pub path: String,
    /// The name of the record there, shortened. It is empty if it has none or none can be read.
    pub name: String,
}

/// What is wrong at a place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fault {
    /// A field that is not known.
    UnknownField(String),
    /// A field that must be there is not.
    MissingField(String),
    /// A field is there twice.
    RepeatedField(String),
    /// The value cannot be read; the reader's reason, shortened.
    Unreadable(String),
    /// A list has more entries than this, the most that is read.
    TooMany(usize),
    /// A record has more bytes than this, the most that is read.
    TooLarge(usize),
}

impl BookFileError {
    pub(super) fn foreign(format: &str) -> BookFileError {
        BookFileError::Foreign { format: Some(shortened(format)) }
    }
}

/// Most letters of the file's own text that an error repeats.
const SHORT: usize = 60;

/// The text, or its beginning and an ellipsis.
pub(super) fn shortened(text: &str) -> String {
    cut(text, SHORT)
}

/// The text, or its first letters and an ellipsis.
pub(super) fn cut(text: &str, letters: usize) -> String {
    match text.char_indices().nth(letters) {
        None => text.to_string(),
        Some((end, _)) => format!("{}…", text.get(..end).unwrap_or_default()),
    }
}
