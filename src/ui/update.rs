//! A new version waits until the person agrees.

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;

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
    let accept = move |_| {
        if let Ok(event) = web_sys::CustomEvent::new(ACCEPT) {
            let _ = window().dispatch_event(&event);
        }
    };
    view! {
        <Show when=move || ready.get()>
            <div class="notice" role="status">
                <p>"A new version of Brimwright is ready. Your book stays as it is."</p>
                <button class="button" on:click=accept>
                    "Use it now"
                </button>
                <button class="quiet" on:click=move |_| ready.set(false)>
                    "Later"
                </button>
            </div>
        </Show>
    }
}
