//! What a library asks of the device that it is on, and of the screen that its book is on.

use crate::book::{Book, BookId, Edit, Patch, Refusal};
use crate::foundation::measure::Date;

/// What the device remembers besides the books.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Remembered {
    /// The book that was open last.
    pub open_book: Option<BookId>,
    /// Whether a book was saved here before.
    pub had_books: bool,
}

/// What a library asks of the device that it is on.
pub trait Device {
    /// What is remembered.
    fn remembered(&self) -> Remembered;
    /// Remembers which book is open.
    fn note_open(&self, book: Option<BookId>);
    /// Remembers the last saved revision of the open book.
    fn note_revision(&self, revision: u64);
    /// A random number.
    fn random(&self) -> u64;
    /// The time, in milliseconds since 1970.
    fn now(&self) -> u64;
    /// The day where the person is.
    fn today(&self) -> Date;
    /// The note of the books there should be. Returns `None` if there is none.
    fn noted_books(&self) -> Option<String>;
    /// Notes the books there should be.
    fn note_books(&self, text: &str);
    /// Looks for that note where it takes a while to look: [`Library::recalled`](super::Library::recalled) is told.
    fn recall_books(&self);
    /// Shows anew what the library has to show.
    fn show(&self);
    /// Goes to the first screen of a book, since a new one opens.
    fn go_to_start(&self, book: &Book);
    /// Goes over to the new version of the app, which loads the page anew.
    fn update(&self);
}

/// The open book on the screen.
pub trait Desk {
    /// The book as it is there.
    fn book(&self) -> Book;
    /// Applies what another tab saved: no step of the person's, and nothing to save.
    ///
    /// # Errors
    /// The [`Refusal`]; nothing is changed.
    fn apply_remote(&self, edit: &Edit) -> Result<(), Refusal>;
    /// Applies that the person gives up a change of this name: a step that Undo takes back, and
    /// nothing to save.
    ///
    /// # Errors
    /// The [`Refusal`]; nothing is changed.
    fn give_up(&self, name: &str, edit: &Edit) -> Result<(), Refusal>;
    /// A change of this name was kept over what another tab saved: what that did is a step.
    fn kept(&self, name: &str, patch: &Patch);
}
