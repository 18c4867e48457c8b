//! Slips: what is kept beside the books, one text each.

use crate::book::BookId;

/// A text that is kept beside a book.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Slip {
    /// What kind of text it is.
    pub drawer: Drawer,
    /// The book that it is kept for. The book itself may be gone.
    pub book: BookId,
    /// Its name in the drawer. Slips are listed in the order of their ids.
    pub id: String,
    /// The text, or `None` to delete it.
    pub text: Option<String>,
}

/// Where slips of one kind are kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Drawer {
    /// Steps that can be taken back. They outlive their book, to come back with it.
    Steps,
    /// Facts about a book, such as when it was last copied. They go with their book.
    Notes,
    /// The facts of each restore point. They outlive their book.
    Points,
    /// The contents of each restore point: a whole book, under the id of its point.
    Copies,
}

impl Drawer {
    /// The drawers whose slips are deleted with their book.
    pub const GO_WITH_BOOK: [Drawer; 1] = [Drawer::Notes];

    /// Its name in the database.
    pub const fn name(self) -> &'static str {
        match self {
            Drawer::Steps => "steps",
            Drawer::Notes => "notes",
            Drawer::Points => "points",
            Drawer::Copies => "copies",
        }
    }
}
