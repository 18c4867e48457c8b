//! The table of one language as the build made it.

use super::keys::BUILD;

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
    lines: Vec<&'static str>,
}

impl Table {
    /// A table without texts.
    pub const fn empty() -> Table {
        Table { lines: Vec::new() }
    }

    /// This table and a further part, of which every line is checked to be there.
    ///
    /// # Errors
    /// [`TableError`].
    pub fn with(&self, language: &str, part: Part, file: &'static str) -> Result<Table, TableError> {
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
        Ok(Table { lines: [self.lines.as_slice(), &lines].concat() })
    }

    /// The text at a place, or nothing where its part is not here.
    pub(super) fn line(&self, place: u16) -> &'static str {
        self.lines.get(usize::from(place)).copied().unwrap_or_default()
    }
}
