//! A book file read piece by piece, so that a page breathes while a large one comes in.

use std::collections::BTreeMap;

use super::header::{check_header, header, malformed};
use super::records::{Records, record_name};
use super::salvage::{Lines, is_stored};
use super::split::{Part, Piece, Splitter};
use super::{BookFileError, Fault, MAX_BYTES, MAX_RECORD_BYTES, TakenIn, place};
use crate::book::{Book, Edit, Key, Record, Refusal, Settings};

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
                    left = left.saturating_sub(part.size());
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
                    if let Err(refusal) = checked(&edit).and_then(|()| book.apply(&edit)) {
                        let name = record_name(&edit, book);
                        let key = match &refusal {
                            Refusal::Missing { needed_by, .. } => needed_by.unwrap_or(key),
                            Refusal::InUse { .. } | Refusal::Field { .. } => key,
                        };
                        let line = place::line(self.text, part.begins);
                        return Err(BookFileError::Refused { key, name, line, refusal });
                    }
                    *done = done.saturating_add(part.size());
                    left = left.saturating_sub(part.size());
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

/// What the book itself does not check of a record.
fn checked(edit: &Edit) -> Result<(), Refusal> {
    match edit {
        Edit::Put(Record::Scenario(scenario)) => scenario.check_conditions(),
        _ => Ok(()),
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
        if part.size() > MAX_RECORD_BYTES {
            return Err(place::at(text, part.begins, Fault::TooLarge(MAX_RECORD_BYTES)));
        }
    }
    Ok(())
}
