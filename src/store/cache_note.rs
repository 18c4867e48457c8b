//! A note in the browser's store of files for use offline: that is cleared apart from the
//! database, so it may tell what was lost.

use js_sys::{Array, Function, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::Response;

/// The cache of the note. The service worker tidies up no cache of this name.
const CACHE: &str = "brimwright-note";
/// Under which address it is kept.
const ADDRESS: &str = "./brimwright-note";

/// The note; none where there is none, or the browser does not say.
pub async fn read() -> Option<String> {
    let found = answer(&cache().await.ok()?, "match", &[ADDRESS.into()]).await.ok()?;
    let text = found.dyn_into::<Response>().ok()?.text().ok()?;
    JsFuture::from(text).await.ok()?.as_string()
}

/// Notes a text, without waiting. Where the browser takes none, nothing is noted.
pub fn note(text: String) {
    spawn_local(async move {
        let _ = try_to_note(&text).await;
    });
}

/// Notes a text.
///
/// # Errors
/// What the browser says.
pub async fn try_to_note(text: &str) -> Result<(), JsValue> {
    let note = Response::new_with_opt_str(Some(text))?;
    answer(&cache().await?, "put", &[ADDRESS.into(), note.into()]).await.map(|_| ())
}

async fn cache() -> Result<JsValue, JsValue> {
    let caches = Reflect::get(&js_sys::global(), &"caches".into())?;
    answer(&caches, "open", &[CACHE.into()]).await
}

/// What a method answers.
async fn answer(of: &JsValue, name: &str, with: &[JsValue]) -> Result<JsValue, JsValue> {
    let method: Function = Reflect::get(of, &name.into())?.dyn_into()?;
    let with: Array = with.iter().cloned().collect();
    let answer: Promise = method.apply(of, &with)?.dyn_into()?;
    JsFuture::from(answer).await
}
