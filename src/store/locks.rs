//! Named locks that show other tabs that this one is open: the browser releases a lock when its tab
//! goes (Web Locks, W3C).

use std::cell::RefCell;

use js_sys::{Array, Function, Promise, Reflect};
use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::Closure;
use wasm_bindgen_futures::JsFuture;

/// Holds a lock until the tab is gone, or until the returned function is called. Returns `None` if
/// the browser has no locks.
pub(super) fn hold(name: &str) -> Option<Function> {
    let end = RefCell::new(None);
    let held = Promise::new(&mut |unlock, _| {
        end.replace(Some(unlock));
    });
    let hold = Closure::once_into_js(move || held);
    let _held = ask("request", &Array::of2(&name.into(), &hold))?;
    end.take()
}

/// The names of all locks that tabs hold. Empty if the browser has no locks.
pub(super) async fn held() -> Vec<String> {
    let mut names = Vec::new();
    if let Some(asked) = ask("query", &Array::new())
        && let Ok(answer) = JsFuture::from(asked).await
        && let Ok(held) = Reflect::get(&answer, &"held".into())
    {
        let name = |lock: JsValue| Reflect::get(&lock, &"name".into()).ok()?.as_string();
        names.extend(Array::from(&held).iter().filter_map(name));
    }
    names
}

/// Calls a method of the browser's lock manager. Returns `None` if it has none.
fn ask(what: &str, with: &Array) -> Option<Promise> {
    let navigator = web_sys::window()?.navigator();
    let locks = Reflect::get(&navigator, &"locks".into()).ok()?;
    let ask: Function = Reflect::get(&locks, &what.into()).ok()?.dyn_into().ok()?;
    ask.apply(&locks, with).ok()?.dyn_into().ok()
}
