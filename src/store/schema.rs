//! The schema of the database, and the migrations to it.

use js_sys::{Array, Function, Promise, Reflect};
use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{Event, IdbDatabase, IdbFactory, IdbObjectStoreParameters, IdbOpenDbRequest, IdbVersionChangeEvent};

use super::Fault;
use super::request::{failed, thrown};

/// The entries of the books, by id.
pub(super) const BOOKS: &str = "books";
/// The rows of all books, by book and key.
pub(super) const ROWS: &str = "rows";
/// What is kept beside the books, by drawer, book and id.
pub(super) const SLIPS: &str = "slips";
/// Of [`ROWS`]: by book and revision.
pub(super) const BY_REVISION: &str = "by-revision";

/// The migration at place n brings version n to n + 1. A released migration is never changed.
const STEPS: &[Step] = &[books_and_rows, fuller_records, fuller_records, slips, fuller_records];

type Step = fn(&IdbDatabase) -> Result<(), JsValue>;

fn books_and_rows(database: &IdbDatabase) -> Result<(), JsValue> {
    let by = IdbObjectStoreParameters::new();
    by.set_key_path(&"id".into());
    database.create_object_store_with_optional_parameters(BOOKS, &by)?;
    by.set_key_path(&Array::of2(&"book".into(), &"key".into()));
    let rows = database.create_object_store_with_optional_parameters(ROWS, &by)?;
    rows.create_index_with_str_sequence(BY_REVISION, &Array::of2(&"book".into(), &"revision".into()))?;
    Ok(())
}

/// Records have fields that the app before could not read. The schema does not change, but its
/// version does: a tab with that app then lets go of the database.
fn fuller_records(_: &IdbDatabase) -> Result<(), JsValue> {
    Ok(())
}

fn slips(database: &IdbDatabase) -> Result<(), JsValue> {
    let by = IdbObjectStoreParameters::new();
    by.set_key_path(&Array::of3(&"drawer".into(), &"book".into(), &"id".into()));
    database.create_object_store_with_optional_parameters(SLIPS, &by)?;
    Ok(())
}

/// Opens the database, and migrates it to this version if it is older.
pub(super) async fn open(name: &str) -> Result<IdbDatabase, Fault> {
    let factory = Reflect::get(&js_sys::global(), &"indexedDB".into()).map_err(|_| Fault::NoStorage)?;
    let factory: IdbFactory = factory.dyn_into().map_err(|_| Fault::NoStorage)?;
    let version = u32::try_from(STEPS.len()).unwrap_or(u32::MAX);
    let request = factory.open_with_u32(name, version).map_err(|_| Fault::NoStorage)?;
    let upgrade = Closure::once_into_js(upgrade);
    request.set_onupgradeneeded(upgrade.dyn_ref());
    let opened = Promise::new(&mut |resolve: Function, _| {
        request.set_onsuccess(Some(&resolve));
        request.set_onerror(Some(&resolve));
        request.set_onblocked(Some(&resolve));
    });
    let event: Event = JsFuture::from(opened).await.and_then(JsCast::dyn_into).map_err(thrown)?;
    match event.type_().as_str() {
        "success" => request.result().and_then(JsCast::dyn_into).map_err(thrown),
        "blocked" => {
            // If it opens later after all, nobody uses it.
            request.set_onsuccess(Closure::once_into_js(close).dyn_ref());
            Err(Fault::HeldByOlder)
        }
        _ => Err(failed(&request)),
    }
}

fn request_of(event: &Event) -> Option<IdbOpenDbRequest> {
    event.target()?.dyn_into().ok()
}

fn upgrade(event: IdbVersionChangeEvent) {
    let Some(request) = request_of(&event) else { return };
    let result = request.result().and_then(JsCast::dyn_into::<IdbDatabase>);
    let (from, to) = (event.old_version(), event.new_version().unwrap_or(f64::MAX));
    let steps = (0_u32..).zip(STEPS).filter(|(version, _)| (from..to).contains(&f64::from(*version)));
    let upgraded = result.and_then(|database| {
        for (_, step) in steps {
            step(&database)?;
        }
        Ok(())
    });
    if upgraded.is_err()
        && let Some(transaction) = request.transaction()
    {
        // The request then fails, and the older database stays as it was.
        transaction.abort().ok();
    }
}

fn close(event: Event) {
    let result = request_of(&event).and_then(|request| request.result().ok());
    if let Some(database) = result.and_then(|result| result.dyn_into::<IdbDatabase>().ok()) {
        database.close();
    }
}
