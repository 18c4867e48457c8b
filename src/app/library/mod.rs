//! The books on this device: which is open, opening another, making and deleting them; and what
//! stands between a person and leaving a book whose changes are not saved.

mod device;
mod leaving;
mod opening;
mod points;
mod removed;
mod seat;
mod syncs;
#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests;

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use std::fmt;
use std::rc::Rc;

use crate::backup::restore_points::{Points, Why};
use crate::book::{Book, BookId};
use crate::store::{Backing, Fault, Listed, Notice, Saving, Shelf};
use crate::words;

pub use device::{Desk, Device, Remembered};
pub use leaving::{Leaving, Way};
use seat::JustOpened;
use syncs::SyncsBook;

/// What is on the screen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Phase {
    /// The books are being opened.
    Opening,
    /// No book is open: the person chooses.
    Choosing,
    /// A book is open.
    Open(BookId),
    /// Something stands in the way.
    Stuck(Fault),
}

/// Why the last wish could not be met.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Refused {
    sentence: String,
    /// Whether it no longer holds once something can be saved again.
    until_saved: bool,
}

/// Deletes a book from the shelf of a library, for good or not.
type Delete<B> = fn(&Library<B>, BookId, bool);

/// Puts a new book on the shelf of a library and opens it, whatever is lost of the open one or not.
type Add<B> = fn(&Library<B>, Book, bool);

/// The books on this device. Its clones are the same library.
///
/// Opening and listing books is one thing, keeping and deleting them another: whoever calls
/// [`Library::seat`] and [`Library::can_change`] brings that along, later than the first screen.
pub struct Library<B: Backing> {
    inner: Rc<Inner<B>>,
}

struct Inner<B: Backing> {
    device: Rc<dyn Device>,
    shelf: RefCell<Option<Shelf<B>>>,
    phase: RefCell<Phase>,
    books: RefCell<Vec<Listed>>,
    saving: RefCell<Saving>,
    refused: RefCell<Option<Refused>>,
    /// Names of the books that the browser removed, as far as they are known.
    removed: RefCell<Vec<String>>,
    /// The book that was just opened, until it is on the screen.
    opened: RefCell<Option<JustOpened<B>>>,
    /// How many books were opened.
    openings: Cell<u64>,
    sync: RefCell<Option<Rc<dyn SyncsBook>>>,
    desk: RefCell<Option<Rc<dyn Desk>>>,
    points: RefCell<Option<Points<B>>>,
    /// Before what no restore point was made, and why.
    no_point: RefCell<Option<(Why, Fault)>>,
    /// How many times a restore point was made or failed to be.
    points_tried: Cell<u64>,
    /// How a book is deleted. It is `None` until that is here.
    delete: Cell<Option<Delete<B>>>,
    /// How a new book is put on the shelf. It is `None` until that is here.
    add: Cell<Option<Add<B>>>,
    /// Forgets what is kept of a book outside the storage.
    forget: Cell<Option<fn(BookId)>>,
    empty: Cell<Option<fn() -> Book>>,
    /// The book that is not deleted, since there is no room to keep a copy.
    no_room_to_delete: Cell<Option<BookId>>,
    /// Whether the person goes on though nothing can be kept.
    unkept: Cell<bool>,
    /// How many books were put on the screen. What the sync of an earlier one reports is ignored.
    seated: Cell<u64>,
    /// The last revision of each book that another tab told of.
    remote_revisions: RefCell<BTreeMap<BookId, u64>>,
    /// Where the person wants to go, while something is not saved.
    way: RefCell<Option<Way>>,
}

impl<B: Backing> Library<B> {
    /// A library that has no books yet: [`Library::start`] gives it its shelf.
    pub fn new(device: Rc<dyn Device>) -> Library<B> {
        let inner = Inner {
            device,
            shelf: RefCell::new(None),
            phase: RefCell::new(Phase::Opening),
            books: RefCell::default(),
            saving: RefCell::new(Saving::Saved { revision: 1 }),
            refused: RefCell::new(None),
            removed: RefCell::default(),
            opened: RefCell::new(None),
            openings: Cell::new(0),
            sync: RefCell::new(None),
            desk: RefCell::new(None),
            points: RefCell::new(None),
            no_point: RefCell::new(None),
            points_tried: Cell::new(0),
            delete: Cell::new(None),
            add: Cell::new(None),
            forget: Cell::new(None),
            empty: Cell::new(None),
            no_room_to_delete: Cell::new(None),
            unkept: Cell::new(false),
            seated: Cell::new(0),
            remote_revisions: RefCell::default(),
            way: RefCell::new(None),
        };
        Library { inner: Rc::new(inner) }
    }

    /// Opens the book that was open last, or the only one; else the person chooses.
    pub fn start(&self, backing: B) {
        self.inner.shelf.replace(Some(Shelf::new(backing)));
        if self.phase() == Phase::Stuck(Fault::NoAnswer) {
            self.set_phase(Phase::Opening);
        }
        self.spawn(|library| async move { library.choose_or_open().await });
    }

    /// Something stands in the way of every book.
    pub fn stuck(&self, fault: Fault) {
        self.set_phase(Phase::Stuck(fault));
    }

    /// The books have not answered for long. They may still.
    pub fn waited_long(&self) {
        if self.phase() == Phase::Opening {
            self.stuck(Fault::NoAnswer);
        }
    }

    /// Goes on where there is no storage: books are on the screen only.
    pub fn go_on_without_saving(&self) {
        if self.phase() == Phase::Stuck(Fault::NoStorage) {
            self.inner.unkept.set(true);
            self.set_phase(Phase::Choosing);
        }
    }

    /// What is on the screen.
    pub fn phase(&self) -> Phase {
        self.inner.phase.borrow().clone()
    }

    /// The books.
    pub fn books(&self) -> Vec<Listed> {
        self.inner.books.borrow().clone()
    }

    /// Whether the open book is saved.
    pub fn saving(&self) -> Saving {
        self.inner.saving.borrow().clone()
    }

    /// Why the last wish could not be met, as a sentence. Returns `None` once that no longer holds.
    pub fn refused(&self) -> Option<String> {
        self.inner.refused.borrow().as_ref().map(|refused| refused.sentence.clone())
    }

    /// Keeps `book`, which is stored no more, as a new one.
    pub fn keep_as_new(&self, book: Book) {
        self.spawn(|library| async move { library.add_now(book, true).await });
    }

    /// Takes in what happened outside this tab.
    pub fn on_notice(&self, notice: Notice) {
        let open = self.phase();
        match notice {
            Notice::Saved { book, revision } => {
                self.inner.remote_revisions.borrow_mut().insert(book, revision);
                if open == Phase::Open(book) {
                    self.with_sync(|sync| sync.remote_saved(revision));
                } else {
                    self.spawn(|library| async move { library.list_again().await });
                }
            }
            Notice::Deleted { book } => {
                self.inner.remote_revisions.borrow_mut().remove(&book);
                self.forget_noted(book);
                if open == Phase::Open(book) {
                    self.with_sync(|sync| sync.remote_deleted());
                }
                self.spawn(|library| async move { library.list_again().await });
            }
            Notice::NewerVersionOpen => match open {
                Phase::Open(_) => self.with_sync(|sync| sync.halt(Fault::NewerVersionOpen)),
                _ => self.refuse(words::fault(&Fault::NewerVersionOpen), false),
            },
        }
    }

    /// Lists the books anew.
    pub fn look_again(&self) {
        self.spawn(|library| async move { library.list_again().await });
    }

    /// Starts an empty book.
    pub fn start_empty(&self) {
        self.go(Way::Start);
    }

    /// Opens the demo book: the one on the shelf, or `demo` as a new one.
    pub fn open_demo(&self, demo: Result<Book, String>) {
        match demo {
            Ok(demo) => {
                let name = &demo.settings().name;
                let there = self.inner.books.borrow().iter().find_map(|book| demo_id(book, name));
                self.go(there.map_or_else(|| Way::Add(Box::new(demo)), Way::Open));
            }
            Err(sentence) => self.refuse(sentence, false),
        }
    }

    fn spawn<F: Future<Output = ()> + 'static>(&self, work: impl FnOnce(Library<B>) -> F) {
        let shelf = self.inner.shelf.borrow().clone();
        if let Some(shelf) = shelf {
            shelf.backing().spawn(work(self.clone()));
        }
    }

    fn set_phase(&self, phase: Phase) {
        self.inner.phase.replace(phase);
        self.inner.device.show();
    }

    fn refuse(&self, sentence: String, until_saved: bool) {
        self.inner.refused.replace(Some(Refused { sentence, until_saved }));
        self.inner.device.show();
    }
}

fn named(book: &Listed, id: BookId) -> Option<String> {
    match book {
        Listed::Book(entry) if entry.id == id => Some(entry.name.clone()),
        Listed::Book(_) | Listed::Damaged { .. } => None,
    }
}

fn demo_id(book: &Listed, name: &str) -> Option<BookId> {
    match book {
        Listed::Book(entry) if entry.invented && entry.name == name => Some(entry.id),
        Listed::Book(_) | Listed::Damaged { .. } => None,
    }
}

impl<B: Backing> Clone for Library<B> {
    fn clone(&self) -> Library<B> {
        Library { inner: Rc::clone(&self.inner) }
    }
}

impl<B: Backing> fmt::Debug for Library<B> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Library").field("phase", &self.inner.phase).field("saving", &self.inner.saving).finish()
    }
}
