//! Letters to find something by.

use leptos::html::Input;
use leptos::prelude::*;

use crate::say;
use crate::ui::live::{flag, press};

/// Letters to find something by, and a button that takes them away.
#[component]
pub fn Search(
    /// What is found.
    label: &'static str,
    /// The letters.
    search: RwSignal<String>,
) -> impl IntoView {
    let field = NodeRef::<Input>::new();
    let clear = move || {
        search.set(String::new());
        if let Some(field) = field.get_untracked() {
            let _ = field.focus();
        }
    };
    view! {
        <div class="search-box">
            <input
                class="search"
                type="search"
                enterkeyhint="search"
                aria-label=label
                placeholder=label
                node_ref=field
                prop:value=search
                on:input=move |event| search.set(event_target_value(&event))
            />
            <button
                class="quiet search-clear"
                aria-label=say!(first::clear_search)
                hidden=flag(move || search.with(String::is_empty))
                on:click=press(clear)
            >
                <svg viewBox="0 0 16 16" aria-hidden="true">
                    <path d="M3.5 3.5l9 9M12.5 3.5l-9 9" />
                </svg>
            </button>
        </div>
    }
}
