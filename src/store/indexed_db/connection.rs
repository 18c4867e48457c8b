//! A connection to the database, and what closes it.

use std::rc::Weak;

use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use wasm_bindgen_futures::spawn_local;
use web_sys::{IdbDatabase, IdbVersionChangeEvent};

use super::{Inner, Notice};

/// A connection to the database.
pub(super) struct Connection {
    pub(super) database: IdbDatabase,
    _version_change: Closure<dyn Fn(IdbVersionChangeEvent)>,
    _closed: Closure<dyn Fn()>,
}

impl Connection {
    /// Watches an open database: it is closed when a newer version of the app wants it, or when it is
    /// deleted.
    pub(super) fn new(database: IdbDatabase, owner: Weak<Inner>) -> Connection {
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
