//! A book file cut into its records without reading them: only brackets, commas and quotation
//! marks are looked at, so many bytes at a time.

/// Largest record that is read, in bytes: one alone is read in one piece.
pub const MAX_RECORD_BYTES: usize = 1_000_000;

/// A piece of the file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Part {
    /// What it is.
    pub(super) piece: Piece,
    /// The byte that it begins at.
    pub(super) begins: usize,
    /// The byte after its last.
    pub(super) ends: usize,
}

impl Part {
    /// Its bytes in the text that was cut.
    pub(super) fn of(self, text: &str) -> &str {
        text.get(self.begins..self.ends).unwrap_or_default()
    }

    /// How many bytes it has.
    pub(super) fn size(self) -> usize {
        self.ends.saturating_sub(self.begins)
    }
}

/// What a piece of the file is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Piece {
    /// The name of a field of the file, in its quotation marks.
    Name,
    /// The whole value of a field that is no list.
    Value,
    /// The bracket that opens a field's list.
    List,
    /// A value in that list.
    Item,
}

/// What may come next in the file's own object.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Next {
    Object,
    NameOrEnd,
    Name,
    Colon,
    Value,
    InValue,
    ItemOrEnd,
    Item,
    InItem,
    CommaOrEnd,
    Nothing,
}

/// The text does not have the form of a JSON object.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Malformed;

/// Cuts a text into its parts.
pub(super) struct Splitter {
    at: usize,
    begins: usize,
    last: usize,
    depth: usize,
    quoted: bool,
    escaped: bool,
    next: Next,
    items: usize,
    most: usize,
    parts: Vec<Part>,
}

impl Splitter {
    /// Most items of one list; one more is cut out and tells that there are more, the rest is not.
    pub(super) const MOST: usize = 20_000;

    pub(super) fn new() -> Splitter {
        Splitter {
            at: 0,
            begins: 0,
            last: 0,
            depth: 0,
            quoted: false,
            escaped: false,
            next: Next::Object,
            items: 0,
            most: Splitter::MOST,
            parts: Vec::new(),
        }
    }

    /// All parts of an object, as far as its text is in order.
    pub(super) fn parts_of(text: &str) -> Vec<Part> {
        let mut splitter = Splitter { most: usize::MAX, ..Splitter::new() };
        splitter.go_on(text, text.len()).ok().flatten().unwrap_or(splitter.parts)
    }

    /// How many bytes were looked at.
    pub(super) fn at(&self) -> usize {
        self.at
    }

    /// Looks at so many bytes more; the parts once the text is at its end.
    pub(super) fn go_on(&mut self, text: &str, bytes: usize) -> Result<Option<Vec<Part>>, Malformed> {
        let end = self.at.saturating_add(bytes).min(text.len());
        for byte in text.as_bytes().get(self.at..end).unwrap_or_default() {
            self.take(*byte)?;
            self.at = self.at.saturating_add(1);
        }
        match (self.at >= text.len(), self.next) {
            (false, _) => Ok(None),
            (true, Next::Nothing) => Ok(Some(std::mem::take(&mut self.parts))),
            (true, _) => Err(Malformed),
        }
    }

    fn take(&mut self, byte: u8) -> Result<(), Malformed> {
        if self.quoted {
            match byte {
                _ if self.escaped => self.escaped = false,
                b'\\' => self.escaped = true,
                b'"' => {
                    self.quoted = false;
                    self.last = self.at;
                    if self.next == Next::Colon {
                        self.part(Piece::Name);
                    }
                }
                _ => {}
            }
            return Ok(());
        }
        match (byte, self.depth) {
            (b' ' | b'\n' | b'\r' | b'\t', _) => return Ok(()),
            (b'{', 0) if self.next == Next::Object => {
                self.depth = 1;
                self.next = Next::NameOrEnd;
            }
            (_, 0) => return Err(Malformed),
            (b'"', 1) if matches!(self.next, Next::NameOrEnd | Next::Name) => {
                (self.begins, self.quoted, self.next) = (self.at, true, Next::Colon);
            }
            (b':', 1) if self.next == Next::Colon => self.next = Next::Value,
            (b'[', 1) if self.next == Next::Value => {
                (self.begins, self.last, self.items) = (self.at, self.at, 0);
                self.part(Piece::List);
                self.depth = 2;
                self.next = Next::ItemOrEnd;
            }
            (b',' | b'}', 1) => {
                match (self.next, byte) {
                    (Next::InValue, _) => self.part(Piece::Value),
                    (Next::CommaOrEnd, _) | (Next::NameOrEnd, b'}') => {}
                    _ => return Err(Malformed),
                }
                (self.next, self.depth) = if byte == b',' { (Next::Name, 1) } else { (Next::Nothing, 0) };
            }
            (b',' | b']', 2) if matches!(self.next, Next::ItemOrEnd | Next::Item | Next::InItem) => {
                match (self.next, byte) {
                    (Next::InItem, _) => self.item(),
                    (Next::ItemOrEnd, b']') => {}
                    _ => return Err(Malformed),
                }
                (self.next, self.depth) = if byte == b',' { (Next::Item, 2) } else { (Next::CommaOrEnd, 1) };
            }
            (b'{' | b'[', _) => {
                self.begin()?;
                self.depth = self.depth.saturating_add(1);
            }
            (b'}' | b']', _) => {
                self.depth = self.depth.saturating_sub(1);
                self.last = self.at;
            }
            (b'"', _) => {
                self.begin()?;
                self.quoted = true;
            }
            _ => self.begin()?,
        }
        Ok(())
    }

    /// A value begins here, or goes on.
    fn begin(&mut self) -> Result<(), Malformed> {
        self.last = self.at;
        match self.next {
            Next::Value => (self.begins, self.next) = (self.at, Next::InValue),
            Next::ItemOrEnd | Next::Item => (self.begins, self.next) = (self.at, Next::InItem),
            Next::InValue | Next::InItem => {}
            _ => return Err(Malformed),
        }
        Ok(())
    }

    fn item(&mut self) {
        self.items = self.items.saturating_add(1);
        if self.items <= self.most.saturating_add(1) {
            self.part(Piece::Item);
        }
    }

    fn part(&mut self, piece: Piece) {
        self.parts.push(Part { piece, begins: self.begins, ends: self.last.saturating_add(1) });
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The parts of a text, looked at so many bytes at a time.
    fn parts(text: &str, bytes: usize) -> Result<Vec<(Piece, &str)>, Malformed> {
        let mut splitter = Splitter::new();
        loop {
            if let Some(parts) = splitter.go_on(text, bytes)? {
                return Ok(parts.iter().map(|part| (part.piece, &text[part.begins..part.ends])).collect());
            }
        }
    }

    #[test]
    fn names_values_and_items() {
        let text = r#" { "a" : 1.5e3 , "b\"]" : [ {"x": [1, "]"]}, "}" ,[] ] , "c":{"d":[{}]},"e":[], "f" : null } "#;
        let expected = [
            (Piece::Name, r#""a""#),
            (Piece::Value, "1.5e3"),
            (Piece::Name, r#""b\"]""#),
            (Piece::List, "["),
            (Piece::Item, r#"{"x": [1, "]"]}"#),
            (Piece::Item, r#""}""#),
            (Piece::Item, "[]"),
            (Piece::Name, r#""c""#),
            (Piece::Value, r#"{"d":[{}]}"#),
            (Piece::Name, r#""e""#),
            (Piece::List, "["),
            (Piece::Name, r#""f""#),
            (Piece::Value, "null"),
        ];
        for bytes in [1, 2, 7, text.len()] {
            assert_eq!(parts(text, bytes), Ok(expected.to_vec()), "{bytes}");
        }
        assert_eq!(parts("{}", 1), Ok(vec![]));
    }

    #[test]
    fn what_is_no_object_is_malformed() {
        for text in [
            "",
            "[]",
            "1",
            "{",
            "{}{}",
            "{,}",
            "{\"a\"}",
            "{\"a\":}",
            "{\"a\":1,}",
            "{\"a\":[1,]}",
            "{\"a\":[,1]}",
            "{\"a\" 1}",
            "{1:2}",
            "{\"a\":[1}",
            "{\"a\":[]",
            "{\"a\":[] []}",
            "{\"a\":1]",
            "{\"a",
            "{} x",
            "}",
        ] {
            assert_eq!(parts(text, 3), Err(Malformed), "{text}");
        }
    }

    #[test]
    fn of_a_list_that_is_too_long_only_the_beginning_is_cut_out() {
        let text = format!("{{\"a\":[{}]}}", vec!["1"; 300_000].join(","));
        let items = parts(&text, text.len()).unwrap().iter().filter(|(piece, _)| *piece == Piece::Item).count();
        assert_eq!(items, Splitter::MOST + 1);
    }
}
