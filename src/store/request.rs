//! The database's requests and transactions as futures, and its errors as [`Fault`]s.

use js_sys::{Function, Object, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{DomException, IdbDatabase, IdbRequest, IdbTransaction};

use super::{Durability, Fault};

/// What the browser threw.
pub(super) fn thrown(error: JsValue) -> Fault {
    match error.dyn_into::<DomException>() {
        Ok(error) => exception(&error),
        Err(error) => Fault::Browser { name: "Thrown".into(), message: format!("{error:?}") },
    }
}

/// What the browser reported.
pub(super) fn exception(error: &DomException) -> Fault {
    match error.name().as_str() {
        "QuotaExceededError" => Fault::Full,
        "VersionError" => Fault::NewerSchema,
        "SecurityError" => Fault::NoStorage,
        "AbortError" | "InvalidStateError" => Fault::Closed,
        name => Fault::Browser { name: name.into(), message: error.message() },
    }
}

/// The answer to `request`.
pub(super) async fn answer(request: &IdbRequest) -> Result<JsValue, Fault> {
    let answered = Promise::new(&mut |resolve: Function, reject: Function| {
        request.set_onsuccess(Some(&resolve));
        request.set_onerror(Some(&reject));
    });
    match JsFuture::from(answered).await {
        Ok(_) => request.result().map_err(thrown),
        Err(_) => Err(failed(request)),
    }
}

/// Why `request` failed.
pub(super) fn failed(request: &IdbRequest) -> Fault {
    match request.error() {
        Ok(Some(error)) => exception(&error),
        Ok(None) => Fault::Closed,
        Err(error) => thrown(error),
    }
}

/// A transaction under way, watched from its beginning.
pub(super) struct Transaction {
    inner: IdbTransaction,
    ended: Promise,
}

impl Transaction {
    pub(super) fn reading(database: &IdbDatabase, stores: &JsValue) -> Result<Transaction, Fault> {
        Transaction::begin(database, stores, "readonly", Durability::Relaxed)
    }

    pub(super) fn writing(
        database: &IdbDatabase,
        stores: &JsValue,
        durability: Durability,
    ) -> Result<Transaction, Fault> {
        Transaction::begin(database, stores, "readwrite", durability)
    }

    // The bindings have the third argument behind a compiler flag only.
    fn begin(
        database: &IdbDatabase,
        stores: &JsValue,
        mode: &str,
        durability: Durability,
    ) -> Result<Transaction, Fault> {
        let options = Object::new();
        if durability == Durability::Strict {
            Reflect::set(&options, &"durability".into(), &"strict".into()).map_err(thrown)?;
        }
        let begin = Reflect::get(database, &"transaction".into()).map_err(thrown)?;
        let begin: Function = begin.dyn_into().map_err(thrown)?;
        let inner = begin.call3(database, stores, &mode.into(), &options).map_err(thrown)?;
        let inner: IdbTransaction = inner.dyn_into().map_err(thrown)?;
        let ended = Promise::new(&mut |resolve: Function, _| {
            inner.set_oncomplete(Some(&resolve));
            inner.set_onabort(Some(&resolve));
        });
        Ok(Transaction { inner, ended })
    }

    pub(super) fn store(&self, name: &str) -> Result<web_sys::IdbObjectStore, Fault> {
        self.inner.object_store(name).map_err(thrown)
    }

    /// Waits until everything is written.
    pub(super) async fn complete(self) -> Result<(), Fault> {
        let event = JsFuture::from(self.ended).await.map_err(thrown)?;
        let event: web_sys::Event = event.dyn_into().map_err(thrown)?;
        match event.type_().as_str() {
            "complete" => Ok(()),
            _ => Err(self.inner.error().as_ref().map_or(Fault::Closed, exception)),
        }
    }

    /// Waits until everything is undone.
    pub(super) async fn undo(self) {
        if self.inner.abort().is_ok() {
            JsFuture::from(self.ended).await.ok();
        }
    }
}
