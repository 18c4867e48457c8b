//! A page as it is shown to others: answers large, without bars and without fields.

use leptos::ev;
use leptos::prelude::*;

use super::live::{press, text};
use crate::say;

/// What the page bears while it is shown.
const SHOWN: &str = "data-present";

/// Shows the page to others, until it is pressed again, Escape is, or the page is left.
#[component]
pub fn Present() -> impl IntoView {
    let on = RwSignal::new(false);
    let show = move |shown: bool| {
        on.set(shown);
        if let Some(page) = document().document_element() {
            // One's own page takes any attribute.
            let _ = if shown { page.set_attribute(SHOWN, "") } else { page.remove_attribute(SHOWN) };
        }
    };
    let keys = window_event_listener(ev::keydown, move |event| {
        // What is open above the page closes first.
        let above = document().query_selector("dialog[open]").ok().flatten().is_some();
        if event.key() == "Escape" && !above && on.get_untracked() {
            show(false);
        }
    });
    on_cleanup(move || {
        keys.remove();
        show(false);
    });
    let name = text(move || if on.get() { say!(common::stop_presenting) } else { say!(common::present) }.to_string());
    view! {
        <button class="button present" on:click=press(move || show(!on.get_untracked()))>
            {name}
        </button>
    }
}
