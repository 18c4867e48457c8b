//! The browser's database as a backing.

use std::cell::{Cell, RefCell};
use std::future::Future;
use std::rc::{Rc, Weak};

use js_sys::{Array, JSON, Reflect};
use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{IdbDatabase, IdbKeyRange, IdbVersionChangeEvent};

use super::request::{Transaction, answer, thrown};
use super::schema::{self, BOOKS, BY_REVISION, ROWS};
use super::tabs::Tabs;
use super::{Backing, Commit, Durability, Fault, Notice, StoredBook};
use crate::book::BookId;

/// The browser's database. Its clones share a connection, which is opened again where the browser
/// closed it.
#[derive(Clone)]
pub struct IndexedDb {
    inner: Rc<Inner>,
}

struct Inner {
    name: String,
    connection: RefCell<Option<Connection>>,
    newer_version_open: Cell<bool>,
    asked_to_persist: Cell<bool>,
    tabs: Tabs,
    heard: Rc<dyn Fn(Notice)>,
}

struct Connection {
    database: IdbDatabase,
    _version_change: Closure<dyn Fn(IdbVersionChangeEvent)>,
    _closed: Closure<dyn Fn()>,
}

impl IndexedDb {
    /// The name of the app's own database, and of its line between tabs.
    pub const NAME: &str = "brimwright";

    /// Opens the database `name`, bringing it to this version where it is older. `heard` is told
    /// what happens to it outside this tab.
    ///
    /// # Errors
    /// [`Fault::NoStorage`], [`Fault::HeldByOlder`], [`Fault::NewerSchema`] (nothing is touched
    /// then), or what the browser says.
    pub async fn open(name: &str, heard: impl Fn(Notice) + 'static) -> Result<IndexedDb, Fault> {
        let heard: Rc<dyn Fn(Notice)> = Rc::new(heard);
        let inner = Inner {
            name: name.to_string(),
            connection: RefCell::new(None),
            newer_version_open: Cell::new(false),
            asked_to_persist: Cell::new(false),
            tabs: Tabs::new(name, Rc::clone(&heard)),
            heard,
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
                    (owner.heard)(Notice::NewerVersionOpen);
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
            let transaction = Transaction::writing(database, &both(), commit.durability)?;
            match write(&transaction, commit).await {
                Ok(()) => transaction.complete().await,
                Err(fault) => {
                    transaction.undo().await;
                    Err(fault)
                }
            }
        })
        .await?;
        self.inner.tabs.tell(Notice::Saved { book: commit.entry.id, revision: commit.entry.revision });
        if !commit.entry.invented {
            self.ask_to_persist();
        }
        Ok(())
    }

    async fn delete(&self, id: BookId) -> Result<(), Fault> {
        self.on(async |database| {
            let transaction = Transaction::writing(database, &both(), Durability::Strict)?;
            transaction.store(BOOKS)?.delete(&text(id)).map_err(thrown)?;
            transaction.store(ROWS)?.delete(&all_of(id)?).map_err(thrown)?;
            transaction.complete().await
        })
        .await?;
        self.inner.tabs.tell(Notice::Deleted { book: id });
        Ok(())
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
    Ok(())
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
