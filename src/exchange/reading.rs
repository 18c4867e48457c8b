//! A book file read piece by piece, so that a page breathes while a large one comes in.

use std::collections::{BTreeMap, BTreeSet};

use serde::Deserialize;
use serde_json::error::Category;

use super::book_file_error::shortened;
use super::header::{Header, Said};
use super::salvage::{Lines, is_stored};
use super::split::{Part, Piece, Splitter};
use super::{BookFileError, FORMAT, Fault, MAX_BYTES, TakenIn, VERSION, place};
use crate::book::{Book, BuyingList, Edit, Key, Record, Refusal, Settings, from_json};

/// Largest record that is read, in bytes: one alone is read in one piece.
pub const MAX_RECORD_BYTES: usize = 1_000_000;

/// A file being read: a book file, or the lines of a stored book.
pub struct Reading<'a> {
    text: &'a str,
    stage: Stage,
}

enum Stage {
    /// Reading the lines of a stored book, from this byte on.
    Lines(Lines, usize),
    /// Finding where records begin and end.
    Split(Splitter),
    /// Reading the records.
    Read(Records),
    /// Putting them in a book, in the order of need.
    Put(BTreeMap<Key, (Record, Part)>, Box<Book>, usize),
}

/// What was read of the parts so far.
struct Records {
    parts: std::vec::IntoIter<Part>,
    /// The field that the parts now read belong to.
    field: &'static Field,
    /// The fields that were met.
    met: BTreeSet<&'static str>,
    records: BTreeMap<Key, (Record, Part)>,
}

/// Reads one record.
type ReadRecord = fn(&str) -> Result<Record, serde_json::Error>;

/// A field of the file.
struct Field {
    name: &'static str,
    holds: Holds,
    needed: bool,
}

#[derive(Clone, Copy)]
enum Holds {
    /// Format and version, which were looked at before.
    Header,
    /// One record.
    One(ReadRecord),
    /// One record, or null.
    OneOrNone(ReadRecord),
    /// A list of records.
    List(ReadRecord),
}

const FIELDS: [Field; 15] = [
    field("format", Holds::Header, true),
    field("version", Holds::Header, true),
    field("settings", Holds::One(|text| from_json::<Settings>(text).map(|it| Record::Settings(Box::new(it)))), true),
    field("ingredients", Holds::List(|text| from_json(text).map(Record::Ingredient)), true),
    field("packagings", Holds::List(|text| from_json(text).map(Record::Packaging)), true),
    field("packaging-sets", Holds::List(|text| from_json(text).map(Record::PackagingSet)), false),
    field("containers", Holds::List(|text| from_json(text).map(Record::Container)), true),
    field("drinks", Holds::List(|text| from_json(text).map(Record::Drink)), true),
    field("offers", Holds::List(|text| from_json(text).map(Record::Offer)), true),
    field("weeks", Holds::List(|text| from_json(text).map(Record::Week)), false),
    field("seen-prices", Holds::List(|text| from_json(text).map(Record::SeenPrice)), false),
    field("trials", Holds::List(|text| from_json(text).map(Record::Trial)), false),
    field("scenarios", Holds::List(|text| from_json(text).map(Record::Scenario)), false),
    field("batches", Holds::List(|text| from_json(text).map(Record::Batch)), false),
    field("buying-list", Holds::OneOrNone(|text| from_json::<BuyingList>(text).map(Record::BuyingList)), false),
];

const fn field(name: &'static str, holds: Holds, needed: bool) -> Field {
    Field { name, holds, needed }
}

/// The text of a file that is not too large.
///
/// # Errors
/// [`BookFileError::TooLarge`] and [`BookFileError::NotText`].
pub fn text(bytes: &[u8]) -> Result<&str, BookFileError> {
    if bytes.len() > MAX_BYTES {
        return Err(BookFileError::TooLarge { bytes: bytes.len() });
    }
    let text = std::str::from_utf8(bytes).map_err(|_| BookFileError::NotText)?;
    Ok(text.strip_prefix('\u{feff}').unwrap_or(text))
}

impl<'a> Reading<'a> {
    /// Begins with the text of a file.
    ///
    /// # Errors
    /// A [`BookFileError`] where the text is no JSON object.
    pub fn of(text: &'a str) -> Result<Reading<'a>, BookFileError> {
        if is_stored(text) {
            return Ok(Reading { text, stage: Stage::Lines(Lines::default(), 0) });
        }
        match text.trim_start().chars().next() {
            None => Err(BookFileError::Empty),
            Some('{') => Ok(Reading { text, stage: Stage::Split(Splitter::new()) }),
            Some(_) => match header(text) {
                Err(error @ (BookFileError::NotJson { .. } | BookFileError::CutShort { .. })) => Err(error),
                _ => Err(BookFileError::Foreign { format: None }),
            },
        }
    }

    /// Goes on by about so many bytes; the book once all is read.
    ///
    /// # Errors
    /// A [`BookFileError`] that says what is wrong and where. Reading ends with it.
    pub fn go_on(&mut self, bytes: usize) -> Result<Option<TakenIn>, BookFileError> {
        let mut left = bytes;
        match &mut self.stage {
            Stage::Lines(lines, at) => {
                while left > 0 {
                    let Some(rest) = self.text.get(*at..).filter(|rest| !rest.is_empty()) else {
                        return Ok(Some(std::mem::take(lines).book()));
                    };
                    let line = rest.split_inclusive('\n').next().unwrap_or(rest);
                    lines.take_line(line.trim_end_matches(['\r', '\n']));
                    *at = at.saturating_add(line.len());
                    left = left.saturating_sub(line.len());
                }
            }
            Stage::Split(splitter) => {
                if let Some(parts) = splitter.go_on(self.text, bytes).map_err(|_| malformed(self.text))? {
                    check_header(self.text, &parts)?;
                    check_sizes(self.text, &parts)?;
                    self.stage = Stage::Read(Records::of(parts));
                }
            }
            Stage::Read(reading) => {
                while left > 0 {
                    let Some(part) = reading.parts.next() else {
                        let records = reading.ended(self.text)?;
                        let book = Box::new(Book::new(Settings::new("")));
                        self.stage = Stage::Put(records, book, 0);
                        break;
                    };
                    left = left.saturating_sub(size(part));
                    reading.take(self.text, part)?;
                }
            }
            Stage::Put(waiting, book, done) => {
                while left > 0 {
                    let Some((key, (record, part))) = waiting.pop_first() else {
                        let book = std::mem::replace(&mut **book, Book::new(Settings::new("")));
                        return Ok(Some(TakenIn { book, left_out: Vec::new() }));
                    };
                    let edit = Edit::Put(record);
                    if let Err(refusal) = book.apply(&edit) {
                        let name = record_name(&edit, book);
                        let key = match &refusal {
                            Refusal::Missing { needed_by, .. } => needed_by.unwrap_or(key),
                            Refusal::InUse { .. } | Refusal::Field { .. } => key,
                        };
                        let line = place::line(self.text, part.begins);
                        return Err(BookFileError::Refused { key, name, line, refusal });
                    }
                    *done = done.saturating_add(size(part));
                    left = left.saturating_sub(size(part));
                }
            }
        }
        Ok(None)
    }

    /// How much of the work is done, in percent.
    pub fn done(&self) -> usize {
        let of_all = |done: usize| done.saturating_mul(100).checked_div(self.text.len()).unwrap_or(100).min(100);
        let third = |before: usize, done: usize| before.saturating_add(of_all(done)).checked_div(3).unwrap_or(100);
        match &self.stage {
            Stage::Lines(_, at) => of_all(*at),
            Stage::Split(splitter) => third(0, splitter.at()),
            Stage::Read(reading) => {
                third(100, reading.parts.as_slice().first().map_or(self.text.len(), |it| it.begins))
            }
            Stage::Put(_, _, done) => third(200, *done),
        }
    }

    /// Reads to the end.
    ///
    /// # Errors
    /// As [`Reading::go_on`].
    pub(super) fn finish(mut self) -> Result<TakenIn, BookFileError> {
        loop {
            if let Some(taken) = self.go_on(usize::MAX)? {
                return Ok(taken);
            }
        }
    }
}

fn size(part: Part) -> usize {
    part.ends.saturating_sub(part.begins)
}

fn slice(text: &str, part: Part) -> &str {
    text.get(part.begins..part.ends).unwrap_or_default()
}

/// Goes through the whole text as JSON.
fn header(text: &str) -> Result<Header, BookFileError> {
    serde_json::from_str(text).map_err(|error| match error.classify() {
        Category::Data => place::unreadable(text, 0, &error, String::new()),
        Category::Eof => BookFileError::CutShort { line: error.line() },
        Category::Syntax | Category::Io => BookFileError::NotJson { line: error.line(), column: error.column() },
    })
}

/// What is wrong with a text that is not cut into parts.
fn malformed(text: &str) -> BookFileError {
    header(text).err().unwrap_or(BookFileError::Foreign { format: None })
}

/// Whether the file says that it is a book, in a version that is known.
fn check_header(text: &str, parts: &[Part]) -> Result<(), BookFileError> {
    let mut header = Header::default();
    let mut met = BTreeSet::new();
    for (index, part) in parts.iter().enumerate().filter(|(_, part)| part.piece == Piece::Name) {
        let name = slice(text, *part).trim_matches('"');
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
            Some(value) => serde_json::from_str(slice(text, value)).map_err(|_| malformed(text))?,
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

/// Whether lists and records are of a size that can be read.
fn check_sizes(text: &str, parts: &[Part]) -> Result<(), BookFileError> {
    let mut items = 0_usize;
    for part in parts {
        items = if part.piece == Piece::Item { items.saturating_add(1) } else { 0 };
        if items > Splitter::MOST {
            return Err(place::at(text, part.begins, Fault::TooMany(Splitter::MOST)));
        }
        if size(*part) > MAX_RECORD_BYTES {
            return Err(place::at(text, part.begins, Fault::TooLarge(MAX_RECORD_BYTES)));
        }
    }
    Ok(())
}

impl Records {
    fn of(parts: Vec<Part>) -> Records {
        let [field, ..] = &FIELDS;
        Records { parts: parts.into_iter(), field, met: BTreeSet::new(), records: BTreeMap::new() }
    }

    fn take(&mut self, text: &str, part: Part) -> Result<(), BookFileError> {
        let (piece, slice) = (part.piece, slice(text, part));
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
        let name: String = serde_json::from_str(slice(text, part)).map_err(|_| malformed(text))?;
        let fault = |fault: fn(String) -> Fault| place::at(text, part.begins, fault(shortened(&name)));
        let field = FIELDS.iter().find(|field| field.name == name).ok_or_else(|| fault(Fault::UnknownField))?;
        if !self.met.insert(field.name) {
            return Err(fault(Fault::RepeatedField));
        }
        self.field = field;
        Ok(())
    }

    fn record(&mut self, text: &str, part: Part, read: ReadRecord) -> Result<(), BookFileError> {
        let slice = slice(text, part);
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
    fn ended(&mut self, text: &str) -> Result<BTreeMap<Key, (Record, Part)>, BookFileError> {
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

/// The name in the text of a record, shortened; empty where none can be read.
fn name_in(text: &str) -> String {
    match serde_json::from_str(text) {
        Ok(Named { name: Said::Text(name), .. }) => shortened(&name),
        Ok(_) | Err(_) => String::new(),
    }
}

/// The name of a record that is put in a book; an offer's is its drink's and container's.
fn record_name(edit: &Edit, book: &Book) -> String {
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
