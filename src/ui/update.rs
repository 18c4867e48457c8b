//! A new version waits until the person agrees.

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;

use super::live::{press, when};

/// Said by the start script when a new version waits.
const READY: &str = "brimwright-update-ready";
/// Said to the start script when the person agrees.
const ACCEPT: &str = "brimwright-accept-update";

/// Offers a new version once one waits.
#[component]
pub fn UpdateNotice() -> impl IntoView {
    let ready = RwSignal::new(false);
    let hear = Closure::<dyn Fn()>::new(move || ready.set(true));
    // Lives as long as the page, as the notice does.
    let _ = window().add_event_listener_with_callback(READY, hear.as_ref().unchecked_ref());
    hear.forget();
    when(
        move || ready.get(),
        move || {
            view! {
                <div class="notice" role="status">
                    <p>"A new version of Brimwright is ready. Your book stays as it is."</p>
                    <button class="button" on:click=press(accept)>
                        "Use it now"
                    </button>
                    <button class="quiet" on:click=press(move || ready.set(false))>
                        "Later"
                    </button>
                </div>
            }
            .into_any()
        },
    )
}

fn accept() {
    if let Ok(event) = web_sys::CustomEvent::new(ACCEPT) {
        // Nobody can refuse an event that cannot be cancelled.
        let _ = window().dispatch_event(&event);
    }
}
