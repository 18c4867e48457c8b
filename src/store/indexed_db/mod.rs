//! The browser's database as the storage.

mod connection;
mod values;

use std::cell::{Cell, RefCell};
use std::future::Future;
use std::rc::Rc;

use js_sys::{Array, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::IdbDatabase;

use connection::Connection;
use values::{
    book_key, books_and_rows, every_store, field, rows_after, rows_of, slip_key, slip_value, slips_in, stored_text,
    texts, value,
};

use super::journals::{self, Journals};
use super::request::{Transaction, answer, thrown};
use super::schema::{self, BOOKS, BY_REVISION, ROWS, SLIPS};
use super::tabs::Tabs;
use super::{Backing, Commit, Drawer, Durability, Fault, Journal, Notice, Slip, StoredBook};
use crate::book::BookId;

/// The browser's database. Clones share one connection. If the browser closes that, the next use opens
/// it again.
#[derive(Clone)]
pub struct IndexedDb {
    inner: Rc<Inner>,
}

/// The field of a slip that holds a file handle.
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

impl IndexedDb {
    /// The name of the app's own database, and of its broadcast channel.
    pub const NAME: &str = "brimwright";

    /// Opens the database `name`, and migrates it to this version if it is older. `on_notice` is called
    /// with what other tabs do to it.
    ///
    /// # Errors
    /// [`Fault::NoStorage`] if the browser has no database; [`Fault::HeldByOlder`] if a tab with an
    /// older version of the app holds it open; [`Fault::NewerSchema`] if a newer version wrote it; any
    /// other error of the browser. Nothing is changed then.
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

    /// Closes the connection, as the browser itself may at any time. The next use opens it again.
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

    /// Does `work`, and does it once more on a new connection if the first was closed.
    async fn on<T>(&self, work: impl AsyncFn(&IdbDatabase) -> Result<T, Fault>) -> Result<T, Fault> {
        match work(&self.database().await?).await {
            Err(Fault::Closed | Fault::Browser { .. }) => {
                self.inner.close();
                work(&self.database().await?).await
            }
            other => other,
        }
    }

    /// Stores the browser's handle of a file on the device, as the note `id` of a book.
    ///
    /// # Errors
    /// Any [`Fault`] of the storage itself.
    pub async fn keep_handle(&self, book: BookId, id: &str, handle: &JsValue) -> Result<(), Fault> {
        self.on(async |database| {
            let transaction = Transaction::writing(database, &SLIPS.into(), Durability::Relaxed)?;
            let slip = slip_value(Drawer::Notes, book, id, HANDLE, handle)?;
            let written = transaction.store(SLIPS).and_then(|store| store.put(&slip).map_err(thrown));
            all_or_nothing(transaction, written.map(|_| ())).await
        })
        .await
    }

    /// The file handle that is stored as the note `id` of a book, or `None` if there is none.
    ///
    /// # Errors
    /// Any [`Fault`] of the storage itself.
    pub async fn handle(&self, book: BookId, id: &str) -> Result<Option<JsValue>, Fault> {
        self.on(async |database| {
            let transaction = Transaction::reading(database, &SLIPS.into())?;
            let slip = transaction.store(SLIPS)?.get(&slip_key(Drawer::Notes, book, id)).map_err(thrown)?;
            let slip = answer(&slip).await?;
            Ok(Reflect::get(&slip, &HANDLE.into()).ok().filter(JsValue::is_object))
        })
        .await
    }

    /// Asks the browser once, without waiting for its answer, not to evict the database.
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
            let transaction = Transaction::reading(database, &books_and_rows())?;
            let entry = transaction.store(BOOKS)?.get(&book_key(id)).map_err(thrown)?;
            let rows = transaction.store(ROWS)?;
            let rows = match after {
                0 => rows.get_all_with_key(&rows_of(id)?),
                _ => rows.index(BY_REVISION).map_err(thrown)?.get_all_with_key(&rows_after(id, after)?),
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
            let transaction = Transaction::writing(database, &every_store(), commit.durability)?;
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
            let transaction = Transaction::writing(database, &every_store(), Durability::Strict)?;
            let deleted = delete(&transaction, id, slips);
            all_or_nothing(transaction, deleted).await
        })
        .await?;
        self.inner.journals.delete(&journals::names(id));
        self.inner.tabs.broadcast(Notice::Deleted { book: id });
        Ok(())
    }

    async fn slips(&self, drawer: Drawer, book: Option<BookId>) -> Result<Vec<Slip>, Fault> {
        self.on(async |database| {
            let transaction = Transaction::reading(database, &SLIPS.into())?;
            let slips = transaction.store(SLIPS)?.get_all_with_key(&slips_in(drawer, book)?).map_err(thrown)?;
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
            let slip = transaction.store(SLIPS)?.get(&slip_key(drawer, book, id)).map_err(thrown)?;
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
        self.inner.journals.write(book, texts)
    }

    async fn orphaned_journals(&self, book: BookId) -> Vec<Journal> {
        journals::orphaned(book).await
    }

    fn delete_journals(&self, names: &[String]) {
        self.inner.journals.delete(names);
    }

    fn spawn(&self, work: impl Future<Output = ()> + 'static) {
        spawn_local(work);
    }
}

async fn write(transaction: &Transaction, commit: &Commit) -> Result<(), Fault> {
    let books = transaction.store(BOOKS)?;
    let stored = answer(&books.get(&book_key(commit.entry.id)).map_err(thrown)?).await?;
    let stored = if stored.is_undefined() {
        Some(0.0)
    } else {
        Reflect::get(&stored, &"revision".into()).ok().and_then(|revision| revision.as_f64())
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

/// Commits a transaction if every request succeeded, and aborts it otherwise.
async fn all_or_nothing(transaction: Transaction, requested: Result<(), Fault>) -> Result<(), Fault> {
    match requested {
        Ok(()) => transaction.complete().await,
        Err(fault) => {
            transaction.undo().await;
            Err(fault)
        }
    }
}

fn delete(transaction: &Transaction, id: BookId, slips: &[Slip]) -> Result<(), Fault> {
    for drawer in Drawer::GO_WITH_BOOK {
        transaction.store(SLIPS)?.delete(&slips_in(drawer, Some(id))?).map_err(thrown)?;
    }
    transaction.store(BOOKS)?.delete(&book_key(id)).map_err(thrown)?;
    transaction.store(ROWS)?.delete(&rows_of(id)?).map_err(thrown)?;
    put_slips(transaction, slips)
}

fn put_slips(transaction: &Transaction, slips: &[Slip]) -> Result<(), Fault> {
    for slip in slips {
        let store = transaction.store(SLIPS)?;
        match &slip.text {
            Some(kept) => {
                let value = slip_value(slip.drawer, slip.book, &slip.id, "text", &kept.into())?;
                store.put(&value).map_err(thrown)?
            }
            None => store.delete(&slip_key(slip.drawer, slip.book, &slip.id)).map_err(thrown)?,
        };
    }
    Ok(())
}
