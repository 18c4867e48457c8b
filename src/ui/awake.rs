//! Keeps the screen on, where the browser can (W3C Screen Wake Lock).
//!
//! The browser lets go whenever the page is not seen, so it is asked again when it is.

use js_sys::Reflect;
use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen::JsValue;
use wasm_bindgen::closure::Closure;
use wasm_bindgen_futures::JsFuture;

use super::call::call;
use super::live::when;
use crate::say;

/// Keeps the screen on as long as this is in the page, and says quietly where it cannot.
pub fn awake() -> AnyView {
    let dark = RwSignal::new(false);
    let held = StoredValue::new_local(None::<JsValue>);
    let seen = move || {
        if !document().hidden() {
            spawn_local(hold(held, dark));
        }
    };
    seen();
    let listening = window_event_listener_untyped("visibilitychange", move |_| seen());
    on_cleanup(move || {
        listening.remove();
        let last = held.try_update_value(Option::take).flatten();
        last.iter().for_each(release);
    });
    when(
        move || dark.get(),
        || view! { <p class="about" role="status">{say!(counter::screen_may_go_dark)}</p> }.into_any(),
    )
}

async fn hold(held: StoredValue<Option<JsValue>, LocalStorage>, dark: RwSignal<bool>) {
    let lock = ask().await;
    dark.try_set(lock.is_none());
    let Some(lock) = lock else { return };
    let let_go = Closure::once_into_js(move || {
        // A device may let go while the page is seen, to spare its battery.
        if !document().hidden() {
            dark.try_set(true);
        }
    });
    // An object of the browser takes the handler that it has a place for.
    let _ = Reflect::set(&lock, &"onrelease".into(), &let_go);
    let before = held.try_update_value(|held| held.replace(lock.clone()));
    match before {
        Some(before) => before.iter().for_each(release_quietly),
        // The screen was left while the browser was asked.
        None => release(&lock),
    }
}

async fn ask() -> Option<JsValue> {
    let locks = Reflect::get(&window().navigator(), &"wakeLock".into()).ok().filter(JsValue::is_object)?;
    JsFuture::from(call(&locks, "request", &"screen".into()).ok()?).await.ok()
}

fn release(lock: &JsValue) {
    // Nothing waits for it.
    let _ = call(lock, "release", &JsValue::UNDEFINED);
}

/// Releases one that another has taken the place of.
fn release_quietly(lock: &JsValue) {
    let _ = Reflect::set(lock, &"onrelease".into(), &JsValue::NULL);
    release(lock);
}
