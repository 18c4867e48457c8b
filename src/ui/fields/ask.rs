//! A question: what is typed changes nothing in the book.

use std::borrow::Cow;

use leptos::prelude::*;

use crate::ui::live::flag;
use crate::ui::state::AppState;

/// A field for a question: what is typed is not kept in the book.
#[component]
pub fn Ask(
    /// What is asked.
    #[prop(into)]
    label: Cow<'static, str>,
    /// What is typed.
    text: RwSignal<String>,
    /// What is wrong with it, as a sentence; empty where nothing is.
    error: Signal<String>,
) -> impl IntoView {
    let id = format!("ask-{}", AppState::here().new_session());
    let error_id = format!("{id}-error");
    let wrong = flag(move || !error.with(String::is_empty));
    view! {
        <div class="entry" class:entry-wrong=wrong>
            <label for=id.clone()>{label.into_owned()}</label>
            <div class="entry-box">
                <input
                    id=id
                    type="text"
                    inputmode="decimal"
                    autocomplete="off"
                    aria-describedby=error_id.clone()
                    prop:value=text
                    on:input=move |event| text.set(event_target_value(&event))
                />
            </div>
            <p class="entry-error" id=error_id role="status">{error}</p>
        </div>
    }
}
