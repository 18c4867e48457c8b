//! The records of a book file, as far as they were read.

use std::collections::{BTreeMap, BTreeSet};

use serde::Deserialize;
use serde_json::error::Category;

use super::book_file_error::shortened;
use super::fields::{FIELDS, Field, Holds, ReadRecord};
use super::header::{Said, header, malformed};
use super::split::{Part, Piece};
use super::{BookFileError, Fault, place};
use crate::book::{Book, Edit, Key, Record};

/// What was read of the parts so far.
pub(super) struct Records {
    pub(super) parts: std::vec::IntoIter<Part>,
    /// The field that the parts now read belong to.
    field: &'static Field,
    /// The fields that were met.
    met: BTreeSet<&'static str>,
    records: BTreeMap<Key, (Record, Part)>,
}

impl Records {
    pub(super) fn of(parts: Vec<Part>) -> Records {
        let [field, ..] = &FIELDS;
        Records { parts: parts.into_iter(), field, met: BTreeSet::new(), records: BTreeMap::new() }
    }

    pub(super) fn take(&mut self, text: &str, part: Part) -> Result<(), BookFileError> {
        let (piece, slice) = (part.piece, part.of(text));
        match (piece, self.field.holds) {
            (Piece::Name, _) => self.begin(text, part),
            (_, Holds::Header) | (Piece::List, Holds::List(_)) => Ok(()),
            (Piece::Item, Holds::List(read)) | (Piece::Value, Holds::One(read)) => self.record(text, part, read),
            (Piece::Value, Holds::OneOrNone(_)) if slice == "null" => Ok(()),
            (Piece::Value, Holds::OneOrNone(read)) => self.record(text, part, read),
            // A list where one record is wanted, or something else where a list is.
            (Piece::Value | Piece::List | Piece::Item, _) => {
                let wanted = if piece == Piece::Value { "a sequence" } else { "a map" };
                let fault = Fault::Unreadable(format!("invalid type, expected {wanted}"));
                Err(place::at(text, part.begins, fault))
            }
        }
    }

    /// A field begins: one that is known, and not met before.
    fn begin(&mut self, text: &str, part: Part) -> Result<(), BookFileError> {
        let name: String = serde_json::from_str(part.of(text)).map_err(|_| malformed(text))?;
        let fault = |fault: fn(String) -> Fault| place::at(text, part.begins, fault(shortened(&name)));
        let field = FIELDS.iter().find(|field| field.name == name).ok_or_else(|| fault(Fault::UnknownField))?;
        if !self.met.insert(field.name) {
            return Err(fault(Fault::RepeatedField));
        }
        self.field = field;
        Ok(())
    }

    fn record(&mut self, text: &str, part: Part, read: ReadRecord) -> Result<(), BookFileError> {
        let slice = part.of(text);
        let record = read(slice).map_err(|error| match error.classify() {
            Category::Syntax | Category::Eof => match header(text) {
                Err(error) => error,
                Ok(_) => place::unreadable(text, part.begins, &error, self.name_in(slice)),
            },
            Category::Data | Category::Io => place::unreadable(text, part.begins, &error, self.name_in(slice)),
        })?;
        let key = record.key();
        if let Some((before, _)) = self.records.get(&key) {
            let name = self.name(before);
            return Err(BookFileError::Twice { key, name, line: place::line(text, part.begins) });
        }
        self.records.insert(key, (record, part));
        Ok(())
    }

    /// The records, where none of the fields that must be there is missing.
    pub(super) fn ended(&mut self, text: &str) -> Result<BTreeMap<Key, (Record, Part)>, BookFileError> {
        match FIELDS.iter().find(|field| field.needed && !self.met.contains(field.name)) {
            Some(field) => {
                let opens = text.find('{').unwrap_or_default();
                Err(place::at(text, opens, Fault::MissingField(field.name.to_string())))
            }
            None => Ok(std::mem::take(&mut self.records)),
        }
    }

    fn name(&self, record: &Record) -> String {
        let of = |key| self.records.get(&key).map(|(record, _)| record.name().to_string()).unwrap_or_default();
        shortened(&match record {
            Record::Offer(offer) => joined([of(Key::Drink(offer.drink)), of(Key::Container(offer.container))]),
            record => record.name().to_string(),
        })
    }

    /// The name of the record in a text that does not read as one; an offer's as far as its drink
    /// and container were read before.
    fn name_in(&self, text: &str) -> String {
        let id = |id: &'static str| match serde_json::from_str::<Named>(text) {
            Ok(named) => match (id, named.drink, named.container) {
                ("drink", Said::Text(id), _) => Key::from_text(&format!("drink:{id}")),
                ("container", _, Said::Text(id)) => Key::from_text(&format!("container:{id}")),
                _ => None,
            },
            Err(_) => None,
        };
        let of = |key: Option<Key>| {
            let record = key.and_then(|key| self.records.get(&key));
            record.map(|(record, _)| record.name().to_string()).unwrap_or_default()
        };
        match name_in(text) {
            name if name.is_empty() => shortened(&joined([of(id("drink")), of(id("container"))])),
            name => name,
        }
    }
}

/// As much of a record as names it; all else is passed over.
#[derive(Default, Deserialize)]
#[serde(default)]
struct Named {
    name: Said,
    drink: Said,
    container: Said,
}

/// The name in the text of a record, shortened. Returns an empty text if none can be read.
fn name_in(text: &str) -> String {
    match serde_json::from_str(text) {
        Ok(Named { name: Said::Text(name), .. }) => shortened(&name),
        Ok(_) | Err(_) => String::new(),
    }
}

/// The name of a record that is put in a book; an offer's is its drink's and container's.
pub(super) fn record_name(edit: &Edit, book: &Book) -> String {
    shortened(&match edit {
        Edit::Put(Record::Offer(offer)) => {
            joined([book.name(Key::Drink(offer.drink)), book.name(Key::Container(offer.container))])
        }
        Edit::Put(record) => record.name().to_string(),
        _ => String::new(),
    })
}

fn joined(parts: [String; 2]) -> String {
    parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(", ")
}
