//! A small book, and the app's side of keeping it.

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use brimwright::book::{Book, BookId, Edit, Ingredient, IngredientId, Record, Settings};
use brimwright::store::{BookSync, Change, Hooks, IndexedDb, Notice, Saving, Shelf};
use js_sys::Promise;
use wasm_bindgen_futures::JsFuture;

pub const ID: BookId = BookId::from_random(0xb1);

/// The time in each of these tests, in milliseconds since 1970.
pub const NOON: u64 = 1_795_780_800_000;

pub fn ingredient(id: u64, name: &str) -> Record {
    Record::Ingredient(Ingredient::named(IngredientId::from_random(id), name))
}

pub fn book() -> Book {
    let settings = Record::Settings(Box::new(Settings::new("Corner bar")));
    Book::from_records([settings, ingredient(1, "Apple"), ingredient(2, "Mint")]).unwrap()
}

/// A database of its own for each test, which is not there yet.
pub async fn fresh(name: &str) -> String {
    let name = format!("test-{name}");
    crate::raw::delete_database(&name).await;
    name
}

/// A tab on the database `name`.
pub async fn shelf(name: &str) -> Shelf<IndexedDb> {
    Shelf::new(IndexedDb::open(name, |_| {}).await.unwrap())
}

/// A shelf with the small book on it.
pub async fn stocked(name: &str) -> Shelf<IndexedDb> {
    let shelf = shelf(&fresh(name).await).await;
    shelf.create(ID, &book(), NOON).await.unwrap();
    shelf
}

/// What a test waits for: a count that grows, and whoever waits for it.
#[derive(Clone, Default)]
pub struct Bell {
    waiting: Rc<RefCell<Vec<js_sys::Function>>>,
}

impl Bell {
    pub fn ring(&self) {
        for resolve in self.waiting.take() {
            resolve.call0(&wasm_bindgen::JsValue::NULL).unwrap();
        }
    }

    /// Waits until `holds`, asking again at each ring.
    pub async fn until(&self, holds: impl Fn() -> bool) {
        while !holds() {
            let rung = Promise::new(&mut |resolve, _| self.waiting.borrow_mut().push(resolve));
            JsFuture::from(rung).await.unwrap();
        }
    }
}

/// An open book as the app has it.
#[derive(Clone)]
pub struct Tab {
    pub book: Rc<RefCell<Book>>,
    pub sync: BookSync<IndexedDb>,
    bell: Bell,
}

impl Tab {
    pub async fn open(shelf: &Shelf<IndexedDb>) -> Tab {
        let (book, opened) = shelf.open(ID).await.unwrap();
        let book = Rc::new(RefCell::new(book));
        let (bell, reading) = (Bell::default(), Rc::clone(&book));
        let (following, giving_up) = (Rc::clone(&book), Rc::clone(&book));
        let ringing = bell.clone();
        let hooks = Hooks {
            saving: Box::new(move |_| ringing.ring()),
            book: Box::new(move || reading.borrow().clone()),
            apply_remote: Box::new(move |edit| following.borrow_mut().apply(edit).map(drop)),
            give_up: Box::new(move |_, edit| giving_up.borrow_mut().apply(edit).map(drop)),
            kept: Box::new(|_, _| ()),
        };
        Tab { book, sync: opened.keep(hooks), bell }
    }

    /// Edits the book; saving begins.
    pub fn put(&self, record: Record) {
        self.edit(&Edit::Put(record));
    }

    pub fn edit(&self, edit: &Edit) {
        let mut book = self.book.borrow_mut();
        let applied = book.apply(edit).unwrap();
        let change = Change::new("An edit", NOON, &book, &applied);
        drop(book);
        self.sync.save(change);
    }

    /// Waits until nothing is on its way, and says how that ended.
    pub async fn settled(&self) -> Saving {
        self.bell.until(|| !matches!(self.sync.saving(), Saving::Saving { .. })).await;
        self.sync.saving()
    }

    /// Waits until revision `revision` is saved or taken in.
    pub async fn reached(&self, revision: u64) {
        self.bell.until(|| self.sync.saving() == Saving::Saved { revision }).await;
    }

    pub fn book(&self) -> Book {
        self.book.borrow().clone()
    }
}

/// Two tabs on the database `name` that hear each other, as the app wires them.
pub async fn hearing_tab(name: &str) -> (Shelf<IndexedDb>, Tab) {
    let sync: Rc<RefCell<Option<BookSync<IndexedDb>>>> = Rc::default();
    let hearing = Rc::clone(&sync);
    let database = IndexedDb::open(name, move |notice| {
        if let (Notice::Saved { book: ID, revision }, Some(sync)) = (notice, hearing.borrow().as_ref()) {
            sync.remote_saved(revision);
        }
    });
    let shelf = Shelf::new(database.await.unwrap());
    let tab = Tab::open(&shelf).await;
    sync.replace(Some(tab.sync.clone()));
    (shelf, tab)
}

/// Notices as they come.
#[derive(Clone, Default)]
pub struct Notices {
    last: Rc<Cell<Option<Notice>>>,
    bell: Bell,
}

impl Notices {
    pub fn hear(&self) -> impl Fn(Notice) + 'static {
        let notices = self.clone();
        move |notice| {
            notices.last.set(Some(notice));
            notices.bell.ring();
        }
    }

    pub async fn next(&self) -> Notice {
        self.bell.until(|| self.last.get().is_some()).await;
        self.last.take().unwrap()
    }
}
