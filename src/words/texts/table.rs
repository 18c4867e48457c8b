//! The table of one language as the build made it.

use super::keys::BUILD;
#[cfg(not(target_arch = "wasm32"))]
use super::{KEYS, TABLES};

/// Which of the two parts of a table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// What the first screen needs.
    First,
    /// The other texts.
    Rest,
}

impl Part {
    /// Its name in the first line and in the name of the file.
    pub const fn name(self) -> &'static str {
        match self {
            Part::First => "first",
            Part::Rest => "rest",
        }
    }
}

/// Why a file is not a table that can be used.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TableError {
    /// It is not a table of this language and part.
    NotATable,
    /// It is of another build.
    OtherBuild,
    /// It was cut off.
    CutOff,
}

/// The texts of one language, in the order of their keys.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Table {
    first: Vec<&'static str>,
    rest: Vec<&'static str>,
}

impl Table {
    /// A table without texts.
    pub const fn empty() -> Table {
        Table { first: Vec::new(), rest: Vec::new() }
    }

    /// All texts of a language that is built in; none for another one.
    #[cfg(not(target_arch = "wasm32"))]
    pub fn built_in(language: &str) -> Table {
        let mut table = Table::empty();
        for part in [Part::First, Part::Rest] {
            let file = TABLES.iter().find(|(tag, name, ..)| (*tag, *name) == (language, part.name()));
            table = file.and_then(|(.., text)| table.clone().with(language, part, text).ok()).unwrap_or(table);
        }
        table
    }

    /// The text of a key ("first::opening") that has no placeholders; `None` if there is no such key.
    #[cfg(not(target_arch = "wasm32"))]
    pub fn by_key(&self, key: &str) -> Option<&'static str> {
        let place = KEYS.iter().position(|it| *it == key)?;
        u16::try_from(place).ok().map(|place| self.line(place))
    }

    /// This table with one of its parts from its file.
    ///
    /// # Errors
    /// [`TableError`].
    pub fn with(self, language: &str, part: Part, file: &'static str) -> Result<Table, TableError> {
        let (head, body) = file.split_once('\n').ok_or(TableError::NotATable)?;
        let mut head = head.split(' ');
        if (head.next(), head.next(), head.next()) != (Some("brimwright"), Some(language), Some(part.name())) {
            return Err(TableError::NotATable);
        }
        if head.next().and_then(|build| build.parse().ok()) != Some(BUILD) {
            return Err(TableError::OtherBuild);
        }
        let lines: Vec<&'static str> = body.split_terminator('\n').collect();
        if head.next().and_then(|count| count.parse().ok()) != Some(lines.len()) || !file.ends_with('\n') {
            return Err(TableError::CutOff);
        }
        Ok(match part {
            Part::First => Table { first: lines, ..self },
            Part::Rest => Table { rest: lines, ..self },
        })
    }

    /// The text at a place, or nothing where its part is not here.
    pub(super) fn line(&self, place: u16) -> &'static str {
        self.first.iter().chain(&self.rest).nth(usize::from(place)).copied().unwrap_or_default()
    }
}
