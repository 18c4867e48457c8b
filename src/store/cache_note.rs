//! A note in the browser's cache of offline files. That is cleared separately from the database, so
//! the note may tell what was lost.

use js_sys::{Array, Function, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::Response;

/// The cache of the note. The service worker leaves it alone when it clears old caches.
const CACHE: &str = "brimwright-note";
/// The address of the note in that cache.
const ADDRESS: &str = "./brimwright-note";

/// The note. Returns `None` if there is none, or if the cache cannot be read.
pub async fn read() -> Option<String> {
    let found = answer(&cache().await.ok()?, "match", &[ADDRESS.into()]).await.ok()?;
    let text = found.dyn_into::<Response>().ok()?.text().ok()?;
    JsFuture::from(text).await.ok()?.as_string()
}

/// Writes the note, without waiting for it. A failure is ignored.
pub fn note(text: String) {
    spawn_local(async move {
        let _ = try_to_note(&text).await;
    });
}

/// Writes the note.
///
/// # Errors
/// The browser's error if it has no cache, or no room in it.
pub async fn try_to_note(text: &str) -> Result<(), JsValue> {
    let note = Response::new_with_opt_str(Some(text))?;
    answer(&cache().await?, "put", &[ADDRESS.into(), note.into()]).await.map(|_| ())
}

async fn cache() -> Result<JsValue, JsValue> {
    let caches = Reflect::get(&js_sys::global(), &"caches".into())?;
    answer(&caches, "open", &[CACHE.into()]).await
}

/// Calls a method that returns a promise, and awaits that.
async fn answer(of: &JsValue, name: &str, with: &[JsValue]) -> Result<JsValue, JsValue> {
    let method: Function = Reflect::get(of, &name.into())?.dyn_into()?;
    let with: Array = with.iter().cloned().collect();
    let answer: Promise = method.apply(of, &with)?.dyn_into()?;
    JsFuture::from(answer).await
}
