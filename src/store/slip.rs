//! Slips: what is kept beside the books, one text each.

use crate::book::BookId;

/// A text that is kept beside a book.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Slip {
    /// What kind of text it is.
    pub drawer: Drawer,
    /// The book that it is kept for. The book itself may be gone.
    pub book: BookId,
    /// What it is called; slips of a drawer are listed in the order of these.
    pub id: String,
    /// The text; none where it is thrown away.
    pub text: Option<String>,
}

/// Where slips of one kind are kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Drawer {
    /// Steps that can be taken back. They outlive their book, to come back with it.
    Steps,
    /// What is noted of a book, such as when it was copied last. They go with their book.
    Notes,
    /// What each restore point is. They outlive their book.
    Points,
    /// What each restore point holds: a whole book, under the id of its point.
    Copies,
}

impl Drawer {
    /// Those whose slips go with their book.
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
