//! What a book file says it is, read before anything else so that newer and foreign files are
//! told apart from broken ones.

use std::collections::BTreeSet;
use std::fmt;

use serde::de::{Deserialize, Deserializer, Error, IgnoredAny, MapAccess, SeqAccess, Visitor};
use serde_json::error::Category;

use super::split::{Part, Piece};
use super::{BookFileError, FORMAT, Fault, VERSION, place};

/// Format and version; all else is passed over, yet must be JSON.
#[derive(Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct Header {
    pub(super) format: Said,
    pub(super) version: Said,
}

/// Goes through the whole text as JSON.
pub(super) fn header(text: &str) -> Result<Header, BookFileError> {
    serde_json::from_str(text).map_err(|error| match error.classify() {
        Category::Data => place::unreadable(text, 0, &error, String::new()),
        Category::Eof => BookFileError::CutShort { line: error.line() },
        // A page, a list, a picture's text: nothing in it says that it was ever a book.
        Category::Syntax | Category::Io if !text.contains(FORMAT) => BookFileError::Foreign { format: None },
        Category::Syntax | Category::Io => BookFileError::NotJson { line: error.line(), column: error.column() },
    })
}

/// What is wrong with a text that is not cut into parts.
pub(super) fn malformed(text: &str) -> BookFileError {
    header(text).err().unwrap_or(BookFileError::Foreign { format: None })
}

/// Whether the file says that it is a book, in a version that is known.
pub(super) fn check_header(text: &str, parts: &[Part]) -> Result<(), BookFileError> {
    let mut header = Header::default();
    let mut met = BTreeSet::new();
    for (index, part) in parts.iter().enumerate().filter(|(_, part)| part.piece == Piece::Name) {
        let name = part.of(text).trim_matches('"');
        let said = match name {
            "format" => &mut header.format,
            "version" => &mut header.version,
            _ => continue,
        };
        if !met.insert(name) {
            return Err(place::at(text, part.begins, Fault::RepeatedField(name.to_string())));
        }
        let value = parts.get(index.saturating_add(1)).copied().filter(|value| value.piece == Piece::Value);
        *said = match value {
            Some(value) => serde_json::from_str(value.of(text)).map_err(|_| malformed(text))?,
            None => Said::Other,
        };
    }
    match header.format {
        Said::Text(format) if format == FORMAT => {}
        Said::Text(format) => return Err(BookFileError::foreign(&format)),
        Said::Nothing | Said::Number(_) | Said::Other => return Err(BookFileError::Foreign { format: None }),
    }
    match header.version {
        Said::Number(1..=VERSION) => Ok(()),
        Said::Number(version) if version > VERSION => Err(BookFileError::Newer { version }),
        Said::Number(_) | Said::Text(_) | Said::Nothing | Said::Other => Err(BookFileError::NoVersion),
    }
}

/// A value where text or a whole number is expected and anything may stand.
#[derive(Default)]
pub(super) enum Said {
    /// It is not there.
    #[default]
    Nothing,
    /// Text.
    Text(String),
    /// A whole number, 0 or more.
    Number(u64),
    /// Something else.
    Other,
}

impl<'de> Deserialize<'de> for Said {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Said, D::Error> {
        deserializer.deserialize_any(AnyValue)
    }
}

struct AnyValue;

impl<'de> Visitor<'de> for AnyValue {
    type Value = Said;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("any value")
    }

    fn visit_str<E: Error>(self, text: &str) -> Result<Said, E> {
        Ok(Said::Text(text.to_string()))
    }

    fn visit_u64<E: Error>(self, number: u64) -> Result<Said, E> {
        Ok(Said::Number(number))
    }

    fn visit_i64<E: Error>(self, _: i64) -> Result<Said, E> {
        Ok(Said::Other)
    }

    fn visit_f64<E: Error>(self, _: f64) -> Result<Said, E> {
        Ok(Said::Other)
    }

    fn visit_bool<E: Error>(self, _: bool) -> Result<Said, E> {
        Ok(Said::Other)
    }

    fn visit_unit<E: Error>(self) -> Result<Said, E> {
        Ok(Said::Other)
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<Said, A::Error> {
        while list.next_element::<IgnoredAny>()?.is_some() {}
        Ok(Said::Other)
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Said, A::Error> {
        while map.next_entry::<IgnoredAny, IgnoredAny>()?.is_some() {}
        Ok(Said::Other)
    }
}
