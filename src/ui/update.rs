//! A new version waits until the person agrees.

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;

use super::library::{Library, Way};
use super::live::{press, when};
use crate::say;

/// Said by the start script when a new version waits.
const READY: &str = "brimwright-update-ready";
/// Said to the start script when the person agrees.
const ACCEPT: &str = "brimwright-accept-update";

/// Whether a new version waits for the person to agree.
#[derive(Clone, Copy)]
pub struct Update(RwSignal<bool>);

impl Update {
    /// Listens for a new version as long as the page lives.
    pub fn start() -> Update {
        let update = Update(RwSignal::new(false));
        let hear = Closure::<dyn Fn()>::new(move || update.0.set(true));
        let _ = window().add_event_listener_with_callback(READY, hear.as_ref().unchecked_ref());
        hear.forget();
        update
    }

    /// The one of this page.
    pub fn here() -> Update {
        expect_context::<Update>()
    }

    /// Whether one waits, following it.
    pub fn is_ready(self) -> bool {
        self.0.get()
    }
}

/// Offers a new version once one waits.
#[component]
pub fn UpdateNotice() -> impl IntoView {
    let (update, library) = (Update::here(), Library::here());
    when(
        move || update.is_ready(),
        move || {
            view! {
                <div class="notice" role="status">
                    <p>{say!(first::version_ready)}</p>
                    <button class="button" on:click=press(move || library.go(Way::Update))>
                        {say!(first::update_now)}
                    </button>
                    <button class="quiet" on:click=press(move || update.0.set(false))>
                        {say!(first::update_later)}
                    </button>
                </div>
            }
            .into_any()
        },
    )
}

/// Says to the start script that the person agrees.
pub fn accept() {
    if let Ok(event) = web_sys::CustomEvent::new(ACCEPT) {
        // Nobody can refuse an event that cannot be cancelled.
        let _ = window().dispatch_event(&event);
    }
}
