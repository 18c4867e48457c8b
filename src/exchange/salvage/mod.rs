//! What "Save what is stored" writes, taken in again: a line for the book's entry and each row.
//! What is whole is taken, the rest is listed.

#[cfg(test)]
mod tests;

use std::collections::BTreeMap;

use super::MAX_RECORD_BYTES;
use super::book_file_error::shortened;
use crate::book::{Book, Edit, Key, Record, Refusal, Settings};
use crate::store::{BookEntry, Row};

/// A book, and what of its file could not be taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TakenIn {
    /// The book. Its name is empty where nothing says it.
    pub book: Book,
    /// What is not in it, or not whole. It is empty for a whole book file.
    pub left_out: Vec<LeftOut>,
}

impl TakenIn {
    /// The same, its book under this name where it has none.
    pub fn or_named(mut self, name: &str) -> TakenIn {
        let settings = self.book.settings();
        if settings.name.is_empty() {
            let settings = Settings { name: name.to_string(), ..settings.clone() };
            // Settings that hold go on to hold under another name.
            let _ = self.book.apply(&Edit::Put(Record::Settings(Box::new(settings))));
        }
        self
    }
}

/// Something that could not be taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LeftOut {
    /// Line in the file, from 1. It is `None` if the file has nothing of it.
    pub line: Option<usize>,
    /// The record, where that much can be read.
    pub key: Option<Key>,
    /// Its name, shortened. It is empty if none can be read.
    pub name: String,
    /// Why it was left out.
    pub why: WhyLeftOut,
}

impl LeftOut {
    /// For how many things it stands.
    pub const fn count(&self) -> usize {
        match self.why {
            WhyLeftOut::Further(count) => count,
            _ => 1,
        }
    }
}

/// Why something could not be taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WhyLeftOut {
    /// The line cannot be read.
    Damaged,
    /// The line is longer than [`MAX_RECORD_BYTES`]: it was not read.
    TooLong,
    /// It is the book's entry in the list of books; the settings say the same.
    Entry,
    /// The file has none.
    NotThere,
    /// A newer copy of the record was taken.
    Older,
    /// It needs a record that was not taken, of this name. It is empty if the name is not known.
    Needs(Key, String),
    /// It was taken without so many of its lines: what they name was not taken.
    Lines(usize),
    /// The book refuses it.
    Refused(Refusal),
    /// So many more could not be taken, for whatever reason. Stands last, where there are any.
    Further(usize),
}

/// How a row begins.
const ROW: &str = "{\"book\":";

/// Up to so many things that could not be taken are told one by one.
const TOLD: usize = 200;

/// Up to so many bytes of a text are read to find a whole row in it.
const LOOKED_AT: usize = 2 * MAX_RECORD_BYTES;

/// Whether a text is the lines of a stored book: at least one of them is a whole row. Of what
/// looks like rows only the first [`LOOKED_AT`] bytes are read.
pub(super) fn is_stored(text: &str) -> bool {
    let mut looked_at = 0_usize;
    let rows = text.lines().filter(|line| line.starts_with(ROW) && line.len() <= MAX_RECORD_BYTES);
    let mut rows = rows.take_while(|line| {
        looked_at = looked_at.saturating_add(line.len());
        looked_at <= LOOKED_AT
    });
    rows.any(|line| Row::from_text(line).is_ok())
}

/// The lines of a stored book as they were read.
#[derive(Default)]
pub(super) struct Lines {
    /// How many were read.
    read: usize,
    /// The name in the entry.
    name: Option<String>,
    /// The newest row of each record, with its line.
    rows: BTreeMap<Key, (usize, Row)>,
    /// Names of records, taken or not.
    names: BTreeMap<Key, String>,
    /// At most [`TOLD`].
    left_out: Vec<LeftOut>,
    /// How many more there are.
    further: usize,
    /// The first blank line. It says nothing, unless a record is missing: then it may be all that
    /// is left of it.
    blank: Option<usize>,
}

impl Lines {
    /// Reads one line, without its end.
    pub(super) fn take_line(&mut self, text: &str) {
        self.read = self.read.saturating_add(1);
        let line = self.read;
        if text.trim_ascii().is_empty() {
            // The first is where the title of the book stands, and no record.
            if line > 1 {
                self.blank.get_or_insert(line);
            }
            return;
        }
        if text.len() > MAX_RECORD_BYTES {
            return self.unread(line, text, WhyLeftOut::TooLong);
        }
        if let Ok(row) = Row::from_text(text) {
            return self.take(line, row);
        }
        match BookEntry::from_text(text) {
            Ok(entry) => self.name = Some(entry.name),
            Err(_) => self.unread(line, text, WhyLeftOut::Damaged),
        }
    }

    /// Tells of a line that is not read as much as can be made out.
    fn unread(&mut self, line: usize, text: &str, why: WhyLeftOut) {
        let key = between(text, "\"key\":\"").and_then(Key::from_text);
        let name = between(text, "\"name\":\"").filter(|name| !name.contains('\\')).unwrap_or_default();
        let entry = line == 1 && key.is_none() && !text.starts_with(ROW);
        let why = if entry { WhyLeftOut::Entry } else { why };
        if let Some(key) = key {
            self.names.entry(key).or_insert_with(|| shortened(name));
        }
        self.tell(LeftOut { line: Some(line), key, name: shortened(name), why });
    }

    fn take(&mut self, line: usize, row: Row) {
        let key = row.key;
        if let Some(record) = &row.record {
            self.names.insert(key, shortened(record.name()));
        }
        let newer = self.rows.get(&key).is_none_or(|(_, before)| before.revision < row.revision);
        let older = if newer { self.rows.insert(key, (line, row)) } else { Some((line, row)) };
        if let Some((line, _)) = older {
            self.leave_out(line, key, WhyLeftOut::Older);
        }
    }

    fn leave_out(&mut self, line: usize, key: Key, why: WhyLeftOut) {
        let name = self.name(key);
        self.tell(LeftOut { line: Some(line), key: Some(key), name, why });
    }

    fn tell(&mut self, out: LeftOut) {
        if self.left_out.len() < TOLD {
            self.left_out.push(out);
        } else {
            self.further = self.further.saturating_add(1);
        }
    }

    /// The name of a record; an offer's is its drink's and container's.
    fn name(&self, key: Key) -> String {
        let known = |key: Key| self.names.get(&key).cloned().filter(|name| !name.is_empty());
        match key {
            Key::Offer(id) => {
                let parts = [known(Key::Drink(id.drink)), known(Key::Container(id.container))];
                parts.into_iter().flatten().collect::<Vec<_>>().join(", ")
            }
            key => known(key).unwrap_or_default(),
        }
    }

    /// Puts in what is whole. Keys are in the order of need: what is needed goes in first.
    pub(super) fn book(mut self) -> TakenIn {
        let rows = std::mem::take(&mut self.rows);
        let mut book = Book::new(Settings::new(self.name.as_deref().unwrap_or_default()));
        let mut settings = false;
        for (key, (line, row)) in rows {
            let Some(record) = row.record else { continue };
            let (record, without) = without_lost_lines(record, &book);
            match book.apply(&Edit::Put(record)) {
                Ok(_) if without > 0 => self.leave_out(line, key, WhyLeftOut::Lines(without)),
                Ok(_) => settings |= key == Key::Settings,
                Err(Refusal::Missing { key: needed, .. }) => {
                    let without_trace = !self.names.contains_key(&needed);
                    if let Some(line) = self.blank.take_if(|_| without_trace) {
                        self.unread(line, "", WhyLeftOut::Damaged);
                    }
                    let name = self.name(needed);
                    self.leave_out(line, key, WhyLeftOut::Needs(needed, name));
                }
                Err(refusal) => self.leave_out(line, key, WhyLeftOut::Refused(refusal)),
            }
        }
        let told = |out: &LeftOut| out.key == Some(Key::Settings) && out.why != WhyLeftOut::Older;
        if !settings && !self.left_out.iter().any(told) {
            let why = WhyLeftOut::NotThere;
            self.left_out.push(LeftOut { line: None, key: Some(Key::Settings), name: String::new(), why });
        }
        self.left_out.sort_by_key(|out| out.line);
        if self.further > 0 {
            let why = WhyLeftOut::Further(self.further);
            self.left_out.push(LeftOut { line: None, key: None, name: String::new(), why });
        }
        TakenIn { book, left_out: self.left_out }
    }
}

/// What stands after `mark`, up to the next quotation mark.
fn between<'a>(text: &'a str, mark: &str) -> Option<&'a str> {
    text.split_once(mark)?.1.split_once('"').map(|(found, _)| found)
}

/// A record of many lines without those whose drink, container or goods are not in the book, and
/// how many these are. A recipe or a set of packaging would cost less without a line than it
/// does: it stays as it is.
fn without_lost_lines(record: Record, book: &Book) -> (Record, usize) {
    let sold = |drink, container| book.contains(Key::Drink(drink)) && book.contains(Key::Container(container));
    match record {
        Record::Week(mut week) => {
            let lost = retain(&mut week.sold, |line| sold(line.drink, line.container));
            (Record::Week(week), lost)
        }
        Record::Scenario(mut scenario) => {
            let lost = retain(&mut scenario.offers, |line| sold(line.drink, line.container));
            (Record::Scenario(scenario), lost)
        }
        Record::Batch(mut batch) => {
            let lost = retain(&mut batch.makes, |line| sold(line.drink, line.container));
            (Record::Batch(batch), lost)
        }
        Record::BuyingList(mut list) => {
            let lost = retain(&mut list.lines, |line| book.contains(line.goods.into()));
            (Record::BuyingList(list), lost)
        }
        whole => (whole, 0),
    }
}

fn retain<T>(lines: &mut Vec<T>, keep: impl FnMut(&T) -> bool) -> usize {
    let all = lines.len();
    lines.retain(keep);
    all.saturating_sub(lines.len())
}
