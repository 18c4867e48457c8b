//! The browser's database as a backing.

use std::cell::{Cell, RefCell};
use std::future::Future;
use std::rc::{Rc, Weak};

use js_sys::{Array, JSON, Object, Reflect};
use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{IdbDatabase, IdbKeyRange, IdbVersionChangeEvent};

use super::journals::{self, Journals};
use super::request::{Transaction, answer, thrown};
use super::schema::{self, BOOKS, BY_REVISION, ROWS, SLIPS};
use super::tabs::Tabs;
use super::{Backing, Commit, Drawer, Durability, Fault, Journal, Notice, Slip, StoredBook};
use crate::book::BookId;

/// The browser's database. Its clones share a connection, which is opened again where the browser
/// closed it.
#[derive(Clone)]
pub struct IndexedDb {
    inner: Rc<Inner>,
}

/// The field of a slip that holds a handle.
const HANDLE: &str = "handle";

struct Inner {
    name: String,
    connection: RefCell<Option<Connection>>,
    newer_version_open: Cell<bool>,
    asked_to_persist: Cell<bool>,
    tabs: Tabs,
    journals: Journals,
    on_notice: Rc<dyn Fn(Notice)>,
}

struct Connection {
    database: IdbDatabase,
    _version_change: Closure<dyn Fn(IdbVersionChangeEvent)>,
    _closed: Closure<dyn Fn()>,
}

impl IndexedDb {
    /// The name of the app's own database, and of its line between tabs.
    pub const NAME: &str = "brimwright";

    /// Opens the database `name`, bringing it to this version where it is older. `on_notice` is told
    /// what happens to it outside this tab.
    ///
    /// # Errors
    /// [`Fault::NoStorage`], [`Fault::HeldByOlder`], [`Fault::NewerSchema`] (nothing is touched
    /// then), or what the browser says.
    pub async fn open(name: &str, on_notice: impl Fn(Notice) + 'static) -> Result<IndexedDb, Fault> {
        let on_notice: Rc<dyn Fn(Notice)> = Rc::new(on_notice);
        let inner = Inner {
            name: name.to_string(),
            connection: RefCell::new(None),
            newer_version_open: Cell::new(false),
            asked_to_persist: Cell::new(false),
            tabs: Tabs::new(name, Rc::clone(&on_notice)),
            journals: Journals::default(),
            on_notice,
        };
        let opened = IndexedDb { inner: Rc::new(inner) };
        opened.database().await?;
        Ok(opened)
    }

    /// Closes the connection, as the browser may at any time. The next use opens it again.
    pub fn close(&self) {
        self.inner.close();
    }

    async fn database(&self) -> Result<IdbDatabase, Fault> {
        if self.inner.newer_version_open.get() {
            return Err(Fault::NewerVersionOpen);
        }
        if let Some(connection) = self.inner.connection.borrow().as_ref() {
            return Ok(connection.database.clone());
        }
        let database = schema::open(&self.inner.name).await?;
        self.inner.close();
        let connection = Connection::new(database.clone(), Rc::downgrade(&self.inner));
        self.inner.connection.replace(Some(connection));
        Ok(database)
    }

    /// Does `work`, and once more on a new connection where the first was closed.
    async fn on<T>(&self, work: impl AsyncFn(&IdbDatabase) -> Result<T, Fault>) -> Result<T, Fault> {
        match work(&self.database().await?).await {
            Err(Fault::Closed | Fault::Browser { .. }) => {
                self.inner.close();
                work(&self.database().await?).await
            }
            other => other,
        }
    }

    /// Keeps the browser's handle of a file on the device, as the note `id` of a book.
    ///
    /// # Errors
    /// Any [`Fault`] of the storage itself.
    pub async fn keep_handle(&self, book: BookId, id: &str, handle: &JsValue) -> Result<(), Fault> {
        self.on(async |database| {
            let transaction = Transaction::writing(database, &SLIPS.into(), Durability::Relaxed)?;
            let slip = slip_with(Drawer::Notes, book, id, HANDLE, handle)?;
            let written = transaction.store(SLIPS).and_then(|store| store.put(&slip).map_err(thrown));
            all_or_nothing(transaction, written.map(|_| ())).await
        })
        .await
    }

    /// The handle that is kept as the note `id` of a book; none where there is none.
    ///
    /// # Errors
    /// Any [`Fault`] of the storage itself.
    pub async fn handle(&self, book: BookId, id: &str) -> Result<Option<JsValue>, Fault> {
        self.on(async |database| {
            let transaction = Transaction::reading(database, &SLIPS.into())?;
            let slip = transaction.store(SLIPS)?.get(&key_of(Drawer::Notes, book, id)).map_err(thrown)?;
            let slip = answer(&slip).await?;
            Ok(Reflect::get(&slip, &HANDLE.into()).ok().filter(JsValue::is_object))
        })
        .await
    }

    /// Asks the browser, once and without waiting, not to evict the books.
    fn ask_to_persist(&self) {
        let Some(window) = web_sys::window().filter(|_| !self.inner.asked_to_persist.replace(true)) else { return };
        if let Ok(asked) = window.navigator().storage().persist() {
            spawn_local(async move {
                JsFuture::from(asked).await.ok();
            });
        }
    }
}

impl Inner {
    fn close(&self) {
        if let Some(connection) = self.connection.take() {
            connection.database.close();
        }
    }
}

impl Drop for Inner {
    fn drop(&mut self) {
        self.close();
    }
}

impl Connection {
    fn new(database: IdbDatabase, owner: Weak<Inner>) -> Connection {
        let closing = Weak::clone(&owner);
        let version_change = Closure::<dyn Fn(IdbVersionChangeEvent)>::new(move |event: IdbVersionChangeEvent| {
            let Some(owner) = closing.upgrade() else { return };
            // Without a new version the database is being deleted, not upgraded.
            let newer = event.new_version().is_some();
            owner.newer_version_open.set(newer);
            spawn_local(async move {
                owner.close();
                if newer {
                    (owner.on_notice)(Notice::NewerVersionOpen);
                }
            });
        });
        database.set_onversionchange(Some(version_change.as_ref().unchecked_ref()));
        let closed = Closure::<dyn Fn()>::new(move || {
            if let Some(owner) = owner.upgrade() {
                spawn_local(async move { owner.close() });
            }
        });
        database.set_onclose(Some(closed.as_ref().unchecked_ref()));
        Connection { database, _version_change: version_change, _closed: closed }
    }
}

impl Drop for Connection {
    fn drop(&mut self) {
        self.database.set_onversionchange(None);
        self.database.set_onclose(None);
    }
}

impl Backing for IndexedDb {
    async fn entries(&self) -> Result<Vec<String>, Fault> {
        self.on(async |database| {
            let transaction = Transaction::reading(database, &BOOKS.into())?;
            texts(&answer(&transaction.store(BOOKS)?.get_all().map_err(thrown)?).await?)
        })
        .await
    }

    async fn book(&self, id: BookId, after: u64) -> Result<StoredBook, Fault> {
        self.on(async |database| {
            let transaction = Transaction::reading(database, &both())?;
            let entry = transaction.store(BOOKS)?.get(&text(id)).map_err(thrown)?;
            let rows = transaction.store(ROWS)?;
            let rows = match after {
                0 => rows.get_all_with_key(&all_of(id)?),
                _ => rows.index(BY_REVISION).map_err(thrown)?.get_all_with_key(&later(id, after)?),
            }
            .map_err(thrown)?;
            let entry = answer(&entry).await?;
            let entry = (!entry.is_undefined()).then(|| stored_text(&entry));
            Ok(StoredBook { entry, rows: texts(&answer(&rows).await?)? })
        })
        .await
    }

    async fn commit(&self, commit: &Commit) -> Result<(), Fault> {
        self.on(async |database| {
            let transaction = Transaction::writing(database, &all(), commit.durability)?;
            let written = write(&transaction, commit).await;
            all_or_nothing(transaction, written).await
        })
        .await?;
        self.inner.tabs.broadcast(Notice::Saved { book: commit.entry.id, revision: commit.entry.revision });
        if !commit.entry.invented {
            self.ask_to_persist();
        }
        Ok(())
    }

    async fn delete(&self, id: BookId, slips: &[Slip]) -> Result<(), Fault> {
        self.on(async |database| {
            let transaction = Transaction::writing(database, &all(), Durability::Strict)?;
            let deleted = delete(&transaction, id, slips);
            all_or_nothing(transaction, deleted).await
        })
        .await?;
        self.inner.journals.delete_journals(&journals::names(id));
        self.inner.tabs.broadcast(Notice::Deleted { book: id });
        Ok(())
    }

    async fn slips(&self, drawer: Drawer, book: Option<BookId>) -> Result<Vec<Slip>, Fault> {
        self.on(async |database| {
            let transaction = Transaction::reading(database, &SLIPS.into())?;
            let slips = transaction.store(SLIPS)?.get_all_with_key(&in_drawer(drawer, book)?).map_err(thrown)?;
            let slips = answer(&slips).await?;
            let slips: &Array = slips.dyn_ref().ok_or(Fault::Closed)?;
            let slip = |slip: JsValue| {
                let of = |name| field(&slip, name);
                Some(Slip { drawer, book: BookId::from_text(&of("book")?)?, id: of("id")?, text: of("text") })
            };
            Ok(slips.iter().filter_map(slip).collect())
        })
        .await
    }

    async fn slip(&self, drawer: Drawer, book: BookId, id: &str) -> Result<Option<String>, Fault> {
        self.on(async |database| {
            let transaction = Transaction::reading(database, &SLIPS.into())?;
            let slip = transaction.store(SLIPS)?.get(&key_of(drawer, book, id)).map_err(thrown)?;
            Ok(field(&answer(&slip).await?, "text"))
        })
        .await
    }

    async fn file(&self, slips: &[Slip]) -> Result<(), Fault> {
        self.on(async |database| {
            let transaction = Transaction::writing(database, &SLIPS.into(), Durability::Strict)?;
            let written = put_slips(&transaction, slips);
            all_or_nothing(transaction, written).await
        })
        .await
    }

    fn write_journal(&self, book: BookId, texts: &[String]) -> Option<String> {
        self.inner.journals.write_journal(book, texts)
    }

    async fn orphaned_journals(&self, book: BookId) -> Vec<Journal> {
        journals::orphaned(book).await
    }

    fn delete_journals(&self, names: &[String]) {
        self.inner.journals.delete_journals(names);
    }

    fn spawn(&self, work: impl Future<Output = ()> + 'static) {
        spawn_local(work);
    }
}

async fn write(transaction: &Transaction, commit: &Commit) -> Result<(), Fault> {
    let books = transaction.store(BOOKS)?;
    let stored = answer(&books.get(&text(commit.entry.id)).map_err(thrown)?).await?;
    let stored = match stored.is_undefined() {
        true => Some(0.0),
        false => Reflect::get(&stored, &"revision".into()).ok().and_then(|revision| revision.as_f64()),
    };
    if stored != Some(commit.expected as f64) {
        return Err(Fault::Behind);
    }
    let rows = transaction.store(ROWS)?;
    for row in &commit.rows {
        rows.put(&value(row.text())?).map_err(thrown)?;
    }
    books.put(&value(commit.entry.text())?).map_err(thrown)?;
    put_slips(transaction, &commit.slips)
}

/// Ends a transaction: with all that was asked of it, or with nothing.
async fn all_or_nothing(transaction: Transaction, asked: Result<(), Fault>) -> Result<(), Fault> {
    match asked {
        Ok(()) => transaction.complete().await,
        Err(fault) => {
            transaction.undo().await;
            Err(fault)
        }
    }
}

fn delete(transaction: &Transaction, id: BookId, slips: &[Slip]) -> Result<(), Fault> {
    for drawer in Drawer::GO_WITH_BOOK {
        transaction.store(SLIPS)?.delete(&in_drawer(drawer, Some(id))?).map_err(thrown)?;
    }
    transaction.store(BOOKS)?.delete(&text(id)).map_err(thrown)?;
    transaction.store(ROWS)?.delete(&all_of(id)?).map_err(thrown)?;
    put_slips(transaction, slips)
}

fn put_slips(transaction: &Transaction, slips: &[Slip]) -> Result<(), Fault> {
    for slip in slips {
        let store = transaction.store(SLIPS)?;
        match &slip.text {
            Some(kept) => {
                let value = slip_with(slip.drawer, slip.book, &slip.id, "text", &kept.into())?;
                store.put(&value).map_err(thrown)?
            }
            None => store.delete(&key_of(slip.drawer, slip.book, &slip.id)).map_err(thrown)?,
        };
    }
    Ok(())
}

/// A slip as it is stored, with one field besides its key.
fn slip_with(drawer: Drawer, book: BookId, id: &str, name: &str, value: &JsValue) -> Result<Object, Fault> {
    let slip = Object::new();
    let fields = [("drawer", drawer.name().into()), ("book", text(book)), ("id", id.into()), (name, value.clone())];
    for (name, field) in fields {
        Reflect::set(&slip, &name.into(), &field).map_err(thrown)?;
    }
    Ok(slip)
}

fn key_of(drawer: Drawer, book: BookId, id: &str) -> JsValue {
    Array::of3(&drawer.name().into(), &text(book), &id.into()).into()
}

/// Every slip in a drawer, of one book or of all.
fn in_drawer(drawer: Drawer, book: Option<BookId>) -> Result<JsValue, Fault> {
    let (first, last) = match book {
        Some(book) => (
            Array::of2(&drawer.name().into(), &text(book)),
            Array::of3(&drawer.name().into(), &text(book), &Array::new()),
        ),
        None => (Array::of1(&drawer.name().into()), Array::of2(&drawer.name().into(), &Array::new())),
    };
    IdbKeyRange::bound(&first, &last).map(Into::into).map_err(thrown)
}

/// A text in a field of a stored value.
fn field(value: &JsValue, name: &str) -> Option<String> {
    Reflect::get(value, &name.into()).ok()?.as_string()
}

fn all() -> JsValue {
    Array::of3(&BOOKS.into(), &ROWS.into(), &SLIPS.into()).into()
}

fn both() -> JsValue {
    Array::of2(&BOOKS.into(), &ROWS.into()).into()
}

fn text(id: BookId) -> JsValue {
    JsValue::from_str(&id.to_string())
}

/// Every row of a book: an array is later than any number or text.
fn all_of(id: BookId) -> Result<JsValue, Fault> {
    let (first, last) = (Array::of1(&text(id)), Array::of2(&text(id), &Array::new()));
    IdbKeyRange::bound(&first, &last).map(Into::into).map_err(thrown)
}

/// The rows of a book later than a revision.
fn later(id: BookId, revision: u64) -> Result<JsValue, Fault> {
    let first = Array::of2(&text(id), &JsValue::from_f64(revision as f64));
    let last = Array::of2(&text(id), &Array::new());
    IdbKeyRange::bound_with_lower_open(&first, &last, true).map(Into::into).map_err(thrown)
}

fn value(text: Result<String, serde_json::Error>) -> Result<JsValue, Fault> {
    let text = text.map_err(|error| Fault::Browser { name: "JSON".into(), message: error.to_string() })?;
    JSON::parse(&text).map_err(thrown)
}

fn texts(values: &JsValue) -> Result<Vec<String>, Fault> {
    let values: &Array = values.dyn_ref().ok_or(Fault::Closed)?;
    Ok(values.iter().map(|value| stored_text(&value)).collect())
}

/// A stored value as JSON; as the browser shows it where it is something that JSON has not.
fn stored_text(value: &JsValue) -> String {
    match JSON::stringify(value).ok().and_then(|text| text.as_string()) {
        Some(text) => text,
        None => format!("{value:?}"),
    }
}
