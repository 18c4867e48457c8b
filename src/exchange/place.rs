//! Where in a book file a value could not be read. The reader knows the byte at which it gave up;
//! what it was reading there is found by cutting the file into its parts, and those into theirs.

use super::book_file_error::{cut, shortened};
use super::split::{Part, Piece, Splitter};
use super::{BookFileError, Fault, Place};

/// The reader's error with its place. What was read begins at `begins`; the text must be JSON at
/// least as far as the reader came.
pub(super) fn unreadable(text: &str, begins: usize, error: &serde_json::Error, name: String) -> BookFileError {
    let message = error.to_string();
    let message = message.rsplit_once(" at line ").map_or(message.as_str(), |(message, _)| message);
    let read = text.get(begins..).unwrap_or_default();
    let gave_up = begins.saturating_add(byte_of(read, error.line(), error.column()));
    let (wanted, fault) = fault(message);
    let (byte, path) = find(text, gave_up, wanted);
    BookFileError::Value { place: place(text, byte, &path, name), fault }
}

/// What is wrong with a part of the file that begins at this byte.
pub(super) fn at(text: &str, byte: usize, fault: Fault) -> BookFileError {
    let parts = Splitter::parts_of(text);
    let end = parts.iter().position(|part| part.begins == byte).map_or(0, |found| found.saturating_add(1));
    let path = step(text, parts.get(..end).unwrap_or_default());
    BookFileError::Value { place: place(text, byte, &path, String::new()), fault }
}

/// The line, from 1, that a byte stands in.
pub(super) fn line(text: &str, byte: usize) -> usize {
    text.get(..byte).unwrap_or(text).matches('\n').count().saturating_add(1)
}

/// What is wrong, and what of the text it is about.
fn fault(message: &str) -> (Wanted, Fault) {
    if let Some(field) = message.strip_prefix("missing field `").and_then(|rest| rest.strip_suffix('`')) {
        return (Wanted::Closed, Fault::MissingField(shortened(field)));
    }
    if let Some(field) = message.strip_prefix("duplicate field `").and_then(|rest| rest.strip_suffix('`')) {
        return (Wanted::Name, Fault::RepeatedField(shortened(field)));
    }
    let unknown = message.strip_prefix("unknown field `").and_then(|rest| rest.rsplit_once("`, expected "));
    match unknown {
        Some((field, _)) => (Wanted::Name, Fault::UnknownField(shortened(field))),
        None => (Wanted::Value, Fault::Unreadable(reason(message))),
    }
}

/// The reader's words, with what they repeat of the file cut short.
fn reason(message: &str) -> String {
    let marks = [("\"", "\" is not "), ("`", "`, expected ")];
    for (opens, closes) in marks {
        let Some((before, rest)) = message.split_once(opens) else { continue };
        if let Some((quoted, after)) = rest.split_once(closes) {
            return cut(&format!("{before}{opens}{}{closes}{after}", shortened(quoted)), REASON);
        }
    }
    cut(message, REASON)
}

/// Most letters of a reason.
const REASON: usize = 120;

/// The byte at a line (from 1) and a column (bytes of the line before it).
fn byte_of(text: &str, line: usize, column: usize) -> usize {
    let lines_before = text.split_inclusive('\n').take(line.saturating_sub(1));
    lines_before.map(str::len).sum::<usize>().saturating_add(column)
}

fn place(text: &str, byte: usize, path: &str, name: String) -> Place {
    let in_line = text.get(..byte).unwrap_or(text).rsplit('\n').next().unwrap_or_default();
    Place { line: line(text, byte), column: in_line.len().saturating_add(1), path: shortened(path), name }
}

/// What was last before the reader gave up.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Wanted {
    /// A field whose name began.
    Name,
    /// A value that began.
    Value,
    /// An object that closed.
    Closed,
}

/// Most steps of a path that are followed; a book has six.
const PATH_STEPS: usize = 20;

/// The byte at which what is wanted begins, and the way to it; to a field's name, the way to its
/// object. The reader steps back from an object or a list that it does not want, and forward over
/// blanks after a value.
fn find(text: &str, gave_up: usize, wanted: Wanted) -> (usize, String) {
    let opens = text.find('{').unwrap_or_default();
    let (mut object, mut path) = (opens..text.len(), String::new());
    for _ in 0..PATH_STEPS {
        if wanted == Wanted::Closed && object.end <= gave_up {
            break;
        }
        let inside = text.get(object.clone()).unwrap_or_default();
        let mut parts = Splitter::parts_of(inside);
        parts.retain(|part| {
            let begins = object.start.saturating_add(part.begins);
            begins < gave_up || (begins == gave_up && opened(inside, *part))
        });
        while wanted != Wanted::Name && parts.pop_if(|part| part.piece == Piece::Name).is_some() {}
        let Some(last) = parts.last().copied() else { break };
        let begins = object.start.saturating_add(last.begins);
        if last.piece == Piece::Name {
            return (begins, path);
        }
        let is_object = inside.get(last.begins..).is_some_and(|value| value.starts_with('{'));
        if !is_object && wanted != Wanted::Value {
            break;
        }
        if !path.is_empty() {
            path.push('.');
        }
        path.push_str(&step(inside, &parts));
        object = begins..object.start.saturating_add(last.ends);
        if !is_object {
            break;
        }
    }
    (object.start, path)
}

fn opened(text: &str, part: Part) -> bool {
    text.get(part.begins..).is_some_and(|value| value.starts_with(['{', '[']))
}

/// The step to the last of an object's parts: `lines`, `lines[2]`; none to the name of a field.
fn step(object: &str, parts: &[Part]) -> String {
    let items = parts.iter().rev().take_while(|part| part.piece == Piece::Item).count();
    let name = parts.iter().rev().find(|part| part.piece == Piece::Name);
    let quoted = name.and_then(|name| object.get(name.begins..name.ends)).unwrap_or_default();
    let name = quoted.strip_prefix('"').and_then(|rest| rest.strip_suffix('"')).unwrap_or_default();
    match (parts.last().map(|part| part.piece), items.checked_sub(1)) {
        (None | Some(Piece::Name), _) => String::new(),
        (_, Some(position)) => format!("{name}[{position}]"),
        (_, None) => name.to_string(),
    }
}
