//! What each person sees in each tab, on a storage that fails as told.

mod leaving;
mod opening;
mod removed;
mod tabs;

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use super::{Desk, Device, Leaving, Library, Phase, Remembered, Way};
use crate::book::{Book, BookId, Edit, Key, Patch, Record, Refusal, Settings};
use crate::foundation::measure::Date;
use crate::store::{Backing, Change, Fault, InMemory, Notice, Saving};
use crate::support;

thread_local! {
    /// The books of which nothing is kept outside the storage any more.
    static FORGOTTEN: RefCell<Vec<BookId>> = const { RefCell::new(Vec::new()) };
}

/// The time in each of these tests, in milliseconds since 1970.
const NOON: u64 = 1_795_780_800_000;

/// An empty book, as the screen makes it.
fn empty() -> Book {
    Book::new(Settings::in_country("My book", "US"))
}

/// What the device of a tab was asked for.
#[derive(Default)]
struct Phone {
    remembered: Cell<Remembered>,
    next: Cell<u64>,
    updated: Cell<bool>,
    noted: RefCell<Option<String>>,
    asked_to_recall: Cell<bool>,
}

impl Device for Phone {
    fn remembered(&self) -> Remembered {
        self.remembered.get()
    }

    fn note_open(&self, book: Option<BookId>) {
        self.remembered.set(Remembered { open_book: book, ..self.remembered.get() });
    }

    fn note_revision(&self, _: u64) {
        self.remembered.set(Remembered { had_books: true, ..self.remembered.get() });
    }

    fn random(&self) -> u64 {
        self.next.set(self.next.get() + 1);
        self.next.get()
    }

    fn now(&self) -> u64 {
        NOON
    }

    fn today(&self) -> Date {
        Date::new(2026, 11, 27).expect("a day")
    }

    fn noted_books(&self) -> Option<String> {
        self.noted.borrow().clone()
    }

    fn note_books(&self, text: &str) {
        self.noted.replace(Some(text.to_string()));
    }

    fn recall_books(&self) {
        self.asked_to_recall.set(true);
    }

    fn show(&self) {}

    fn go_to_start(&self, _: &Book) {}

    fn update(&self) {
        self.updated.set(true);
    }
}

/// The book on the screen of a tab.
struct Screen(RefCell<Book>);

impl Desk for Screen {
    fn book(&self) -> Book {
        self.0.borrow().clone()
    }

    fn apply_remote(&self, edit: &Edit) -> Result<(), Refusal> {
        self.0.borrow_mut().apply(edit).map(drop)
    }

    fn give_up(&self, _: &str, edit: &Edit) -> Result<(), Refusal> {
        self.apply_remote(edit)
    }

    fn kept(&self, _: &str, _: &Patch) {}
}

/// One device with its storage, and the tabs on it.
struct Shop {
    storage: InMemory,
    phone: Rc<Phone>,
}

impl Shop {
    fn new() -> Shop {
        Shop { storage: InMemory::default(), phone: Rc::new(Phone::default()) }
    }

    /// A tab that has just been opened.
    fn tab(&self) -> Tab {
        let tab = Tab {
            library: Library::new(Rc::clone(&self.phone) as Rc<dyn Device>),
            screen: RefCell::new(None),
            storage: self.storage.clone(),
        };
        tab.library.can_change(|book| FORGOTTEN.with_borrow_mut(|forgotten| forgotten.push(book)), empty);
        tab.library.start(self.storage.clone());
        tab.run();
        tab
    }
}

/// A tab, with the person who uses it.
struct Tab {
    library: Library<InMemory>,
    screen: RefCell<Option<Rc<Screen>>>,
    storage: InMemory,
}

impl Tab {
    /// Lets everything that is under way come to its end.
    fn run(&self) {
        self.storage.run();
        self.library.replay();
        if let Some((_, book)) = self.library.opened() {
            let screen = Rc::new(Screen(RefCell::new(book)));
            self.screen.replace(Some(Rc::clone(&screen)));
            self.library.seat(screen);
            self.storage.run();
        }
    }

    fn go(&self, way: Way) {
        self.library.go(way);
        self.run();
    }

    fn start_empty(&self) {
        self.library.start_empty();
        self.run();
    }

    /// Does a step, and does not wait for it to be saved.
    fn does(&self, name: &str, edit: &Edit) {
        let screen = self.screen.borrow().clone().expect("a book is open");
        let mut book = screen.0.borrow_mut();
        let applied = book.apply(edit).expect("it holds");
        let change = Change::new(name, NOON, &book, &applied);
        drop(book);
        self.library.save(change);
    }

    fn put(&self, record: impl Into<Record>) {
        self.does("An edit", &Edit::Put(record.into()));
        self.run();
    }

    fn hears(&self, notice: Notice) {
        self.library.on_notice(notice);
        self.run();
    }

    /// The id of the open book.
    fn open(&self) -> Option<BookId> {
        match self.library.phase() {
            Phase::Open(id) => Some(id),
            _ => None,
        }
    }

    fn book(&self) -> Book {
        self.screen.borrow().as_ref().expect("a book is open").book()
    }

    fn is_saved(&self) -> bool {
        matches!(self.library.saving(), Saving::Saved { .. })
    }

    fn fault(&self) -> Option<Fault> {
        match self.library.saving() {
            Saving::NotSaved { fault, .. } => Some(fault),
            _ => None,
        }
    }
}

/// An ingredient of this name, without packs.
fn ingredient(id: u64, name: &str) -> Record {
    let mut ingredient = support::ingredient(id, []);
    ingredient.name = name.into();
    Record::Ingredient(ingredient)
}

fn ingredient_key(id: u64) -> Key {
    Key::Ingredient(support::ingredient_id(id))
}

/// The names of the books in the list.
fn listed(tab: &Tab) -> Vec<String> {
    let name = |book| match book {
        crate::store::Listed::Book(entry) => entry.name,
        crate::store::Listed::Damaged { .. } => "damaged".to_string(),
    };
    tab.library.books().into_iter().map(name).collect()
}

/// Lets nothing be saved until room is made.
fn fill(storage: &InMemory) {
    storage.fail_next(Fault::Full);
}
