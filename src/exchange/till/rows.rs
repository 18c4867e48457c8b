//! Rows of separated values: RFC 4180, and with it semicolons, tabs and bare line ends.

use std::collections::BTreeSet;

use crate::exchange::MAX_BYTES;
use crate::foundation::measure::is_seen;

/// Most columns of a list: a person chooses among their heads.
const MOST_COLUMNS: usize = 200;

/// Why a file is not a till's list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TillError {
    /// Larger than [`MAX_BYTES`].
    TooLarge,
    /// Nothing is in it.
    Empty,
    /// It is not text in UTF-8.
    NotText,
    /// Its first line has one column only, or begins like a page or a book file.
    NoColumns,
    /// More than 200 columns.
    TooManyColumns,
    /// Heads without a row under them.
    OnlyHeads,
    /// A quotation mark is not closed.
    OpenQuote {
        /// The line that its row begins on, from 1.
        line: usize,
    },
}

/// Rows under their heads.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Table {
    /// The heads of the columns, each once and none empty.
    pub heads: Vec<String>,
    /// The rows under them.
    pub rows: Vec<Row>,
}

/// A row of cells.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// The line that it begins on, from 1.
    pub line: usize,
    /// Its cells.
    pub cells: Vec<String>,
}

/// Reads rows under a row of heads. What separates the cells is what the heads have most of:
/// comma, semicolon or tab.
///
/// # Errors
/// A [`TillError`]; never a panic, whatever the bytes.
pub fn read_table(bytes: &[u8]) -> Result<Table, TillError> {
    if bytes.len() > MAX_BYTES {
        return Err(TillError::TooLarge);
    }
    let text = std::str::from_utf8(bytes).map_err(|_| TillError::NotText)?;
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    if text.contains('\0') {
        return Err(TillError::NotText);
    }
    let first = text.trim_start().chars().next().ok_or(TillError::Empty)?;
    if matches!(first, '{' | '[' | '<') {
        return Err(TillError::NoColumns);
    }
    let separator = separator(text).ok_or(TillError::NoColumns)?;
    let mut rows = rows(text, separator)?.into_iter();
    let heads = rows.next().map(|row| named(row.cells)).ok_or(TillError::Empty)?;
    match heads.len() {
        ..2 => return Err(TillError::NoColumns),
        2..=MOST_COLUMNS => {}
        _ => return Err(TillError::TooManyColumns),
    }
    let rows: Vec<Row> = rows.collect();
    if rows.is_empty() { Err(TillError::OnlyHeads) } else { Ok(Table { heads, rows }) }
}

/// The separator that stands most often outside quotes in the first line that is not blank.
fn separator(text: &str) -> Option<char> {
    let counted = |separator: char| {
        let mut quoted = false;
        let count = text.trim_start().chars().take_while(|sign| {
            quoted ^= *sign == '"';
            quoted || !matches!(sign, '\r' | '\n')
        });
        let mut inside = false;
        count
            .filter(|sign| {
                inside ^= *sign == '"';
                !inside && *sign == separator
            })
            .count()
    };
    let mut best = None;
    let mut most = 0;
    for separator in [',', ';', '\t'] {
        let count = counted(separator);
        if count > most {
            (best, most) = (Some(separator), count);
        }
    }
    best
}

/// Every row but blank ones.
fn rows(text: &str, separator: char) -> Result<Vec<Row>, TillError> {
    let mut rows = Vec::new();
    let mut row = Row { line: 1, cells: Vec::new() };
    let (mut cell, mut line) = (String::new(), 1_usize);
    let (mut quoted, mut was_quoted) = (false, false);
    let mut signs = text.chars().peekable();
    while let Some(sign) = signs.next() {
        let ends_line = sign == '\n' || (sign == '\r' && signs.peek() != Some(&'\n'));
        if ends_line {
            line = line.saturating_add(1);
        }
        match sign {
            '"' if quoted && signs.peek() == Some(&'"') => {
                signs.next();
                cell.push('"');
            }
            '"' if quoted => quoted = false,
            '"' if cell.is_empty() && !was_quoted => (quoted, was_quoted) = (true, true),
            sign if quoted => cell.push(sign),
            '\r' if !ends_line => {}
            sign if sign == separator => {
                row.cells.push(std::mem::take(&mut cell));
                was_quoted = false;
            }
            '\r' | '\n' => {
                row.cells.push(std::mem::take(&mut cell));
                was_quoted = false;
                let next = Row { line, cells: Vec::new() };
                keep(&mut rows, std::mem::replace(&mut row, next));
            }
            sign => cell.push(sign),
        }
    }
    if quoted {
        return Err(TillError::OpenQuote { line: row.line });
    }
    row.cells.push(cell);
    keep(&mut rows, row);
    Ok(rows)
}

fn keep(rows: &mut Vec<Row>, row: Row) {
    if row.cells.iter().any(|cell| !cell.trim().is_empty()) {
        rows.push(row);
    }
}

/// Heads without blanks around them; one that is empty or stands a second time is called by its
/// place.
fn named(heads: Vec<String>) -> Vec<String> {
    let mut named: Vec<String> = Vec::new();
    let mut met = BTreeSet::new();
    for (place, head) in (1_usize..).zip(heads) {
        let mut head = if is_seen(&head) { head.trim().to_string() } else { format!("#{place}") };
        while !met.insert(head.clone()) {
            head = format!("{head} #{place}");
        }
        named.push(head);
    }
    named
}
