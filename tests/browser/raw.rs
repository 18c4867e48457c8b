//! The browser's database without the app in between, and a browser that misbehaves as told.

use js_sys::{Array, Function, Promise};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::IdbDatabase;

/// Runs a script that returns a promise, or rejects with an event of a request.
async fn script(arguments: &str, body: &str, values: &[&JsValue]) -> Result<JsValue, String> {
    let promise =
        Function::new_with_args(arguments, body).apply(&JsValue::NULL, &values.iter().copied().collect::<Array>());
    let promise: Promise = promise.unwrap().dyn_into().unwrap();
    JsFuture::from(promise).await.map_err(|error| error.as_string().unwrap_or_else(|| format!("{error:?}")))
}

pub async fn delete_database(name: &str) {
    let body = "return new Promise((resolve, reject) => {
        const request = indexedDB.deleteDatabase(name);
        request.onsuccess = () => resolve();
        request.onerror = () => reject(request.error.name);
    });";
    script("name", body, &[&name.into()]).await.unwrap();
}

/// Opens a database at `version`, where it is lower with a store `later` that holds one value.
pub async fn open(name: &str, version: u32) -> IdbDatabase {
    let body = "return new Promise((resolve, reject) => {
        const request = indexedDB.open(name, version);
        request.onupgradeneeded = () => request.result.createObjectStore('later').put('kept', 1);
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error.name);
    });";
    script("name, version", body, &[&name.into(), &version.into()]).await.unwrap().unchecked_into()
}

/// Every value of every store, as JSON, and the shape: names, key paths and indexes.
pub async fn dump(name: &str) -> Vec<String> {
    let body = "return new Promise((resolve, reject) => {
        const request = indexedDB.open(name);
        request.onerror = () => reject(request.error.name);
        request.onsuccess = () => {
            const database = request.result;
            const lines = ['version ' + database.version];
            const names = [...database.objectStoreNames];
            const transaction = database.transaction(names);
            for (const name of names) {
                const store = transaction.objectStore(name);
                lines.push(name + ' by ' + store.keyPath);
                for (const index of store.indexNames) lines.push(name + '.' + index + ' by ' + store.index(index).keyPath);
                store.getAll().onsuccess = event => event.target.result.forEach(value => lines.push(JSON.stringify(value)));
            }
            transaction.oncomplete = () => { database.close(); resolve(lines); };
        };
    });";
    let lines: Array = script("name", body, &[&name.into()]).await.unwrap().unchecked_into();
    lines.iter().map(|line| line.as_string().unwrap()).collect()
}

/// Puts a value, given as JSON, behind the app's back.
pub async fn put(name: &str, store: &str, text: &str) {
    let body = "return new Promise((resolve, reject) => {
        const request = indexedDB.open(name);
        request.onerror = () => reject(request.error.name);
        request.onsuccess = () => {
            const transaction = request.result.transaction(store, 'readwrite');
            transaction.objectStore(store).put(JSON.parse(text));
            transaction.oncomplete = () => { request.result.close(); resolve(); };
        };
    });";
    script("name, store, text", body, &[&name.into(), &store.into(), &text.into()]).await.unwrap();
}

pub async fn delete_cache(name: &str) {
    script("name", "return caches.delete(name)", &[&name.into()]).await.unwrap();
}

/// The names of the databases there are.
pub async fn databases() -> Vec<String> {
    let body = "return indexedDB.databases().then(all => all.map(database => database.name));";
    let names: Array = script("", body, &[]).await.unwrap().unchecked_into();
    names.iter().map(|name| name.as_string().unwrap()).collect()
}

/// A browser that misbehaves while this lives.
pub struct Misbehaving {
    control: JsValue,
}

impl Misbehaving {
    /// Replaces what `place`, an object, has as `name` by what `with` makes of it. `with` is an
    /// expression that may use `was`, and `control.count` to count.
    fn new(place: &str, name: &str, with: &str) -> Misbehaving {
        let body = format!(
            "const place = {place};
            const own = Object.getOwnPropertyDescriptor(place, '{name}');
            const was = own && own.value;
            const control = {{ count: 0, kept: [] }};
            Object.defineProperty(place, '{name}', {{ configurable: true, ...({with}) }});
            control.undo = () => own ? Object.defineProperty(place, '{name}', own) : delete place['{name}'];
            return control;"
        );
        Misbehaving { control: Function::new_no_args(&body).call0(&JsValue::NULL).unwrap() }
    }

    /// Counts transactions that write.
    pub fn counting_writes() -> Misbehaving {
        let with = "{ value(stores, mode, options) {
            if (mode === 'readwrite') control.count += 1;
            if (options && options.durability) control.kept.push(options.durability);
            return was.call(this, stores, mode, options);
        } }";
        Misbehaving::new("IDBDatabase.prototype", "transaction", with)
    }

    /// Closes connections behind the app's back, at [`Misbehaving::close_all`].
    pub fn closing() -> Misbehaving {
        let with = "{ value(...all) {
            const request = was.apply(this, all);
            request.addEventListener('success', () => control.kept.push(request.result));
            return request;
        } }";
        Misbehaving::new("IDBFactory.prototype", "open", with)
    }

    /// Opens each database one version later than asked.
    pub fn one_version_ahead() -> Misbehaving {
        let with = "{ value(name, version) { return was.call(this, name, version && version + 1); } }";
        Misbehaving::new("IDBFactory.prototype", "open", with)
    }

    /// Opens each database so many versions earlier than asked.
    pub fn versions_behind(by: u32) -> Misbehaving {
        let with = format!("{{ value(name, version) {{ return was.call(this, name, version && version - {by}); }} }}");
        Misbehaving::new("IDBFactory.prototype", "open", &with)
    }

    /// Refuses each value but the first.
    pub fn full() -> Misbehaving {
        let with = "{ value(...all) {
            control.count += 1;
            if (control.count > 1) throw new DOMException('no room', 'QuotaExceededError');
            return was.apply(this, all);
        } }";
        Misbehaving::new("IDBObjectStore.prototype", "put", with)
    }

    /// Aborts a transaction, once, as its second value is put.
    pub fn aborting_once() -> Misbehaving {
        let with = "{ value(...all) {
            const request = was.apply(this, all);
            control.count += 1;
            if (control.count === 2) this.transaction.abort();
            return request;
        } }";
        Misbehaving::new("IDBObjectStore.prototype", "put", with)
    }

    /// Fails to make a second store.
    pub fn failing_upgrade() -> Misbehaving {
        let with = "{ value(...all) {
            control.count += 1;
            if (control.count > 1) throw new DOMException('no', 'UnknownError');
            return was.apply(this, all);
        } }";
        Misbehaving::new("IDBDatabase.prototype", "createObjectStore", with)
    }

    /// Has no database.
    pub fn without_database() -> Misbehaving {
        Misbehaving::new("globalThis", "indexedDB", "{ value: undefined }")
    }

    /// Has no store of files for use offline.
    pub fn without_caches() -> Misbehaving {
        Misbehaving::new("globalThis", "caches", "{ value: undefined }")
    }

    /// Throws where local storage is asked for.
    pub fn without_local_storage() -> Misbehaving {
        let with = "{ get() { throw new DOMException('blocked', 'SecurityError'); } }";
        Misbehaving::new("globalThis", "localStorage", with)
    }

    /// Has no room in local storage.
    pub fn full_local_storage() -> Misbehaving {
        let with = "{ value() { throw new DOMException('no room', 'QuotaExceededError'); } }";
        Misbehaving::new("Storage.prototype", "setItem", with)
    }

    /// Never answers whether it keeps what is stored, and counts how often it is asked.
    pub fn never_answering_persist() -> Misbehaving {
        let with = "{ value() { control.count += 1; return new Promise(() => {}); } }";
        Misbehaving::new("StorageManager.prototype", "persist", with)
    }

    pub fn count(&self) -> u32 {
        self.part("count").as_f64().unwrap() as u32
    }

    /// The durabilities that were asked for.
    pub fn durabilities(&self) -> Vec<String> {
        let kept: Array = self.part("kept").unchecked_into();
        kept.iter().map(|text| text.as_string().unwrap()).collect()
    }

    pub fn close_all(&self) {
        let kept: Array = self.part("kept").unchecked_into();
        assert!(kept.length() > 0, "something is open");
        for database in kept.iter() {
            database.unchecked_into::<IdbDatabase>().close();
        }
    }

    fn part(&self, name: &str) -> JsValue {
        js_sys::Reflect::get(&self.control, &name.into()).unwrap()
    }
}

impl Drop for Misbehaving {
    fn drop(&mut self) {
        self.part("undo").unchecked_into::<Function>().call0(&JsValue::NULL).unwrap();
    }
}
