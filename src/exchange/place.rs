//! Where in a book file a value could not be read: the reader knows the byte at which it gave
//! up; the way there and the line of the value itself are found here.

use super::book_file_error::{cut, shortened};
use super::{BookFileError, Fault, Place};

/// The reader's error with its place. What was read begins at `begins`; the text must be JSON at
/// least as far as the reader came.
pub(super) fn unreadable(text: &str, begins: usize, error: &serde_json::Error, name: String) -> BookFileError {
    let message = error.to_string();
    let message = message.rsplit_once(" at line ").map_or(message.as_str(), |(message, _)| message);
    let read = text.get(begins..).unwrap_or_default();
    let gave_up = begins.saturating_add(byte_of(read, error.line(), error.column()));
    let (wanted, fault) = fault(message);
    at(text, find(text, gave_up, wanted), fault, name)
}

/// What is wrong at a byte, in the record of this name.
pub(super) fn at(text: &str, byte: usize, fault: Fault, name: String) -> BookFileError {
    BookFileError::Value { place: place(text, byte, name), fault }
}

/// The line, from 1, that a byte stands in.
pub(super) fn line(text: &str, byte: usize) -> usize {
    text.get(..byte).unwrap_or(text).matches('\n').count().saturating_add(1)
}

/// What is wrong, and what of the text it is about.
fn fault(message: &str) -> (Token, Fault) {
    if let Some(field) = message.strip_prefix("missing field `").and_then(|rest| rest.strip_suffix('`')) {
        return (Token::Close, Fault::MissingField(shortened(field)));
    }
    if let Some(field) = message.strip_prefix("duplicate field `").and_then(|rest| rest.strip_suffix('`')) {
        return (Token::Name, Fault::RepeatedField(shortened(field)));
    }
    let unknown = message.strip_prefix("unknown field `").and_then(|rest| rest.rsplit_once("`, expected "));
    match unknown {
        Some((field, _)) => (Token::Name, Fault::UnknownField(shortened(field))),
        None => (Token::Value, Fault::Unreadable(reason(message))),
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

fn place(text: &str, byte: usize, name: String) -> Place {
    let in_line = text.get(..byte).unwrap_or(text).rsplit('\n').next().unwrap_or_default();
    Place { line: line(text, byte), column: in_line.len().saturating_add(1), path: path(text, byte), name }
}

/// What is met on the way through JSON.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Token {
    /// The name of a field begins.
    Name,
    /// A value begins.
    Value,
    /// An object or a list closes.
    Close,
}

/// An object or a list that is open.
struct Open<'a> {
    begins: usize,
    step: Step<'a>,
}

enum Step<'a> {
    /// In an object: at this field, before or after its colon.
    Field { name: &'a str, named: bool },
    /// In a list: at this position.
    Position(usize),
}

/// The byte at which the last token of this kind begins, up to the byte where the reader gave
/// up; of what closes, the byte at which it was opened. The reader steps back from an object or
/// a list that it does not want, and forward over blanks after a value.
fn find(text: &str, gave_up: usize, wanted: Token) -> usize {
    let mut found = 0;
    walk(text, |token, byte, opens, open| {
        if byte > gave_up || (byte == gave_up && !opens) {
            return false;
        }
        if token == wanted {
            found = match token {
                Token::Close => open.last().map_or(0, |last| last.begins),
                Token::Name | Token::Value => byte,
            };
        }
        true
    });
    found
}

/// The way to the value or the field that begins at `wanted`.
fn path(text: &str, wanted: usize) -> String {
    let mut path = String::new();
    walk(text, |token, byte, _, open| {
        if byte < wanted {
            return true;
        }
        let to_parent = open.len().saturating_sub(usize::from(token == Token::Name));
        for open in open.iter().take(to_parent).take(PATH_STEPS) {
            match open.step {
                Step::Field { name, .. } if path.is_empty() => path.push_str(name),
                Step::Field { name, .. } => {
                    path.push('.');
                    path.push_str(name);
                }
                Step::Position(position) => {
                    path.push('[');
                    path.push_str(&position.to_string());
                    path.push(']');
                }
            }
        }
        false
    });
    shortened(&path)
}

/// Most steps of a path that are told; a book has six.
const PATH_STEPS: usize = 20;

/// Goes through JSON token by token until `visit` says false. It is told the token, the byte
/// where it begins, whether it opens an object or a list, and what is open around it.
fn walk<'a>(text: &'a str, mut visit: impl FnMut(Token, usize, bool, &[Open<'a>]) -> bool) {
    let mut open: Vec<Open<'a>> = Vec::new();
    let mut chars = text.char_indices();
    let mut in_word = false;
    while let Some((byte, char)) = chars.next() {
        let names = matches!(open.last(), Some(Open { step: Step::Field { named: false, .. }, .. }));
        let goes_on = match char {
            '{' | '[' => visit(Token::Value, byte, true, &open),
            '}' | ']' => visit(Token::Close, byte, false, &open),
            '"' if names => visit(Token::Name, byte, false, &open),
            '"' => visit(Token::Value, byte, false, &open),
            ',' | ':' | ' ' | '\n' | '\r' | '\t' => true,
            _ if in_word => true,
            _ => visit(Token::Value, byte, false, &open),
        };
        if !goes_on {
            return;
        }
        in_word = char.is_ascii_alphanumeric() || matches!(char, '-' | '+' | '.');
        match (char, open.last_mut().map(|open| &mut open.step)) {
            ('{', _) => open.push(Open { begins: byte, step: Step::Field { name: "", named: false } }),
            ('[', _) => open.push(Open { begins: byte, step: Step::Position(0) }),
            ('}' | ']', _) => {
                open.pop();
            }
            ('"', step) => {
                let rest = chars.as_str();
                let string = end_of_string(&mut chars).and_then(|end| text.get(byte..end)).unwrap_or(rest);
                if let Some(Step::Field { name, named: false }) = step {
                    *name = string.trim_start_matches('"');
                }
            }
            (':', Some(Step::Field { named, .. })) => *named = true,
            (',', Some(Step::Field { named, .. })) => *named = false,
            (',', Some(Step::Position(position))) => *position = position.saturating_add(1),
            _ => {}
        }
    }
}

/// Goes past a string's closing sign; says at which byte that stands.
fn end_of_string(chars: &mut std::str::CharIndices) -> Option<usize> {
    while let Some((byte, char)) = chars.next() {
        match char {
            '"' => return Some(byte),
            '\\' => {
                chars.next();
            }
            _ => {}
        }
    }
    None
}
