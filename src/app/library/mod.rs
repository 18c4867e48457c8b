//! The books on this device: which is open, opening another, making and deleting them; and what
//! stands between a person and leaving a book whose changes are not saved.

mod leaving;
mod points;
mod removed;
mod syncs;
#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests;

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use std::fmt;
use std::rc::Rc;

use crate::backup::restore_points::{Points, Why};
use crate::book::{Book, BookId, Edit, Patch, Refusal, Settings};
use crate::foundation::measure::Date;
use crate::store::{Backing, Change, Fault, Hooks, Listed, Notice, Opened, Saving, Shelf, Slip};
use crate::words;

pub use leaving::{Leaving, Way};
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
    /// The note of the books there should be; none where there is none.
    fn noted_books(&self) -> Option<String>;
    /// Notes the books there should be.
    fn note_books(&self, text: &str);
    /// Looks for that note where it takes a while to look: [`Library::recalled`] is told.
    fn recall_books(&self);
    /// Shows anew what the library has to show.
    fn show(&self);
    /// Goes to the first screen of a book, since a new one opens.
    fn go_to_start(&self);
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

/// Why the last wish could not be met.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Refused {
    sentence: String,
    /// Whether it no longer holds once something can be saved again.
    until_saved: bool,
}

/// A book that was just opened, until it is on the screen.
struct JustOpened<B> {
    id: BookId,
    book: Book,
    /// How it is kept; none where there is no storage.
    kept: Option<Opened<B>>,
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
    /// How a book is deleted; none until that is here.
    delete: Cell<Option<Delete<B>>>,
    /// How a new book is put on the shelf; none until that is here.
    add: Cell<Option<Add<B>>>,
    /// Forgets what is kept of a book outside the storage.
    forget: Cell<Option<fn(BookId)>>,
    /// The book that is not deleted, since there is no room to keep a copy.
    no_room_to_delete: Cell<Option<BookId>>,
    /// Whether the person goes on though nothing can be kept.
    unkept: Cell<bool>,
    /// How many books were put on the screen: what the keepers before say is of no concern.
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

    /// Why the last wish could not be met, as a sentence; none once that no longer holds.
    pub fn refused(&self) -> Option<String> {
        self.inner.refused.borrow().as_ref().map(|refused| refused.sentence.clone())
    }

    /// The book that was just opened, to be put on the screen and seated: none where it is seated
    /// already.
    pub fn opened(&self) -> Option<(BookId, Book)> {
        self.inner.opened.borrow().as_ref().map(|opened| (opened.id, opened.book.clone()))
    }

    /// The steps that are kept beside the book that was just opened.
    pub fn opened_steps(&self) -> Vec<Slip> {
        let opened = self.inner.opened.borrow();
        let kept = opened.as_ref().and_then(|opened| opened.kept.as_ref());
        kept.map(|kept| kept.steps().to_vec()).unwrap_or_default()
    }

    /// How many books were opened: each is to be put on the screen.
    pub fn openings(&self) -> u64 {
        self.inner.openings.get()
    }

    /// Does to the book that was just opened what tabs that are gone left of it. Gives the edit that
    /// brings it to the screen; none where they left nothing. Before the book is seated.
    pub fn replay(&self) -> Option<Edit> {
        let mut opened = self.inner.opened.borrow_mut();
        let opened = opened.as_mut()?;
        let was = opened.book.clone();
        opened.book = opened.kept.as_mut()?.replay(was.clone());
        (was != opened.book).then(|| Edit::replace(&was, &opened.book))
    }

    /// The book that was just opened is on the screen, and is kept from now on. What another tab
    /// saved in between is taken in.
    pub fn seat(&self, desk: Rc<dyn Desk>) {
        let Some(opened) = self.inner.opened.take() else { return };
        let seat = self.inner.seated.get().wrapping_add(1);
        self.inner.seated.set(seat);
        let Some(opened) = opened.kept else { return };
        self.inner.desk.replace(Some(Rc::clone(&desk)));
        self.seat_points(opened.entry().id);
        let id = opened.entry().id;
        let has_journals = opened.has_journals();
        opened.replayed().for_each(|change| self.note_first_change(change));
        let library = self.clone();
        let (reading, following, giving_up) = (Rc::clone(&desk), Rc::clone(&desk), Rc::clone(&desk));
        let sync = opened.keep(Hooks {
            saving: Box::new(move |saving| {
                if library.inner.seated.get() == seat {
                    library.saved(saving);
                }
            }),
            book: Box::new(move || reading.book()),
            apply_remote: Box::new(move |edit| following.apply_remote(edit)),
            give_up: Box::new(move |name, edit| giving_up.give_up(name, edit)),
            kept: Box::new(move |name, patch| desk.kept(name, patch)),
        });
        self.inner.saving.replace(sync.saving());
        // Another tab may have saved while the book was being opened.
        if let Some(revision) = self.inner.remote_revisions.borrow().get(&id) {
            sync.remote_saved(*revision);
        }
        if has_journals {
            sync.retry();
        }
        self.inner.sync.replace(Some(Rc::new(sync)));
        self.inner.device.show();
    }

    /// The page may go at any moment: what is not saved is written down for whoever opens the book
    /// next.
    pub fn write_journal(&self) {
        self.with_sync(|sync| sync.write_journal());
    }

    /// Saves a change that was done to the book on the screen.
    pub fn save(&self, change: Change) {
        self.note_first_change(&change);
        self.with_sync(|sync| sync.save(change));
    }

    /// Tries again what could not be saved.
    pub fn retry(&self) {
        self.with_sync(|sync| sync.retry());
    }

    /// Puts the change at odds that stands at this place, from 0, over what the other tab did.
    pub fn keep_mine(&self, place: usize) {
        self.before(Why::Merge);
        self.with_sync(|sync| sync.keep_mine(place));
    }

    /// Drops the change at odds that stands at this place, from 0, for what the other tab did.
    pub fn take_theirs(&self, place: usize) {
        self.before(Why::Merge);
        self.with_sync(|sync| sync.take_theirs(place));
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
                match open == Phase::Open(book) {
                    true => self.with_sync(|sync| sync.remote_saved(revision)),
                    false => self.spawn(|library| async move { library.list_again().await }),
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
        self.go(Way::Add(Box::new(Book::new(Settings::new("My book")))));
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

    fn with_sync(&self, act: impl FnOnce(&dyn SyncsBook)) {
        let sync = self.inner.sync.borrow().clone();
        if let Some(sync) = sync {
            act(&*sync);
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

    /// The keeper of the book on the screen says whether it is saved.
    fn saved(&self, saving: &Saving) {
        self.inner.saving.replace(saving.clone());
        match saving {
            Saving::Saved { revision } => {
                self.inner.device.note_revision(*revision);
                self.inner.refused.borrow_mut().take_if(|refused| refused.until_saved);
                self.keep_points();
            }
            Saving::NotSaved { fault: Fault::Gone, .. } => {
                self.spawn(|library| async move { library.look_whether_deleted().await });
            }
            Saving::Saving { .. } | Saving::NotSaved { .. } | Saving::InConflict { .. } => {}
        }
        self.inner.device.show();
        self.go_on();
    }

    async fn choose_or_open(&self) {
        self.list_again().await;
        if matches!(self.phase(), Phase::Stuck(_)) {
            return;
        }
        if self.look_for_removed().await {
            self.set_phase(Phase::Choosing);
            return;
        }
        let remembered = self.inner.device.remembered();
        let last = {
            let books = self.inner.books.borrow();
            let ids = || books.iter().filter_map(Listed::id);
            // The only book there is needs no choosing.
            let last = remembered.open_book.filter(|last| ids().any(|id| id == *last));
            last.or_else(|| ids().next().filter(|_| books.len() == 1))
        };
        match last {
            Some(id) => self.open_now(id, true).await,
            None => self.set_phase(Phase::Choosing),
        }
    }

    async fn list(&self) -> Result<(), Fault> {
        let Some(shelf) = self.inner.shelf.borrow().clone() else { return Ok(()) };
        let books = shelf.books().await?;
        self.inner.books.replace(books);
        self.note_more();
        self.inner.device.show();
        Ok(())
    }

    /// Lists the books anew. Where that fails, an open book stays on the screen.
    async fn list_again(&self) {
        if let Err(fault) = self.list().await
            && !matches!(self.phase(), Phase::Open(_))
        {
            self.set_phase(Phase::Stuck(fault));
        }
    }

    /// Opens a book in place of the open one; `anyway` where the person knows what is lost.
    async fn open_now(&self, id: BookId, anyway: bool) {
        let Some(shelf) = self.inner.shelf.borrow().clone() else { return };
        match shelf.open(id).await {
            // Something may have been typed while it was read.
            Ok(_) if !anyway && self.asks_again(Way::Open(id)) => {}
            Ok((book, opened)) => {
                // One that was just brought back is not on the list yet.
                if self.inner.books.borrow().iter().all(|listed| listed.id() != Some(id)) {
                    self.list_again().await;
                }
                self.note_listed();
                self.inner.device.note_open(Some(id));
                self.put_up(id, book, Some(opened));
            }
            Err(Fault::Gone) => self.not_there(id).await,
            Err(fault) => self.set_phase(Phase::Stuck(fault)),
        }
    }

    /// A book that was just opened waits to be put on the screen.
    fn put_up(&self, id: BookId, book: Book, kept: Option<Opened<B>>) {
        self.leave_seat();
        self.inner.saving.replace(match &kept {
            Some(kept) => Saving::Saved { revision: kept.entry().revision },
            None => Saving::NotSaved { waiting: 1, fault: Fault::NoStorage },
        });
        self.inner.opened.replace(Some(JustOpened { id, book, kept }));
        self.inner.openings.set(self.inner.openings.get().wrapping_add(1));
        self.set_phase(Phase::Open(id));
    }

    /// The book on the screen is kept no more.
    fn leave_seat(&self) {
        self.inner.seated.set(self.inner.seated.get().wrapping_add(1));
        // Who leaves it knows what is lost.
        self.with_sync(|sync| sync.delete_journals());
        self.inner.sync.take();
        self.inner.desk.take();
        self.inner.points.take();
        self.inner.no_point.take();
        self.inner.no_room_to_delete.set(None);
        self.inner.refused.replace(None);
    }

    async fn close_now(&self, anyway: bool) {
        let listed = self.list().await;
        // Something may have been typed while they were listed.
        if !anyway && self.asks_again(Way::Close) {
            return;
        }
        self.leave_seat();
        self.inner.device.note_open(None);
        self.set_phase(listed.map_or_else(Phase::Stuck, |()| Phase::Choosing));
    }

    async fn add_now(&self, book: Book, anyway: bool) {
        let id = BookId::from_random(self.inner.device.random());
        let Some(shelf) = self.inner.shelf.borrow().clone() else { return };
        match shelf.create(id, &book, self.inner.device.now()).await {
            Ok(()) => {
                self.list_again().await;
                if anyway || !self.asks_again(Way::Open(id)) {
                    self.inner.device.go_to_start();
                    self.open_now(id, anyway).await;
                }
            }
            Err(fault) => {
                self.refuse(words::keeping::not_added(&book.settings().name, &fault), fault == Fault::Full);
            }
        }
    }

    /// Puts a book on the screen that nothing can keep.
    fn add_unkept(&self, book: Book) {
        let id = BookId::from_random(self.inner.device.random());
        self.inner.device.go_to_start();
        self.put_up(id, book, None);
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
