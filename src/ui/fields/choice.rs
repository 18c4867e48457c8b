//! A choice of a few.

use std::sync::Arc;

use leptos::prelude::*;

use crate::ui::state::AppState;

/// Puts a chosen value in force, or says in a sentence why not.
pub type Choose = Arc<dyn Fn(&str) -> Result<(), String> + Send + Sync>;

/// A labelled list to choose from; the options are pairs of a value and its words.
#[component]
pub fn Choice(
    /// What is chosen.
    #[prop(into)]
    label: String,
    /// The options.
    #[prop(into)]
    options: Signal<Vec<(String, String)>>,
    /// The value in force.
    #[prop(into)]
    value: Signal<String>,
    /// Puts a value in force.
    choose: Choose,
    /// Only for those who cannot see that the place says it.
    #[prop(optional)]
    label_hidden: bool,
) -> impl IntoView {
    let state = AppState::here();
    let id = format!("choice-{}", state.new_session());
    let error = RwSignal::new(None::<String>);
    let chosen = move |event| error.set(choose(&event_target_value(&event)).err());
    let option = move |(key, words): (String, String)| {
        let this = key.clone();
        view! {
            <option value=key.clone() selected=move || value.with(|value| *value == this)>
                {words}
            </option>
        }
    };
    view! {
        <div class="entry" class:entry-wrong=move || error.with(Option::is_some)>
            <label for=id.clone() class:unseen=label_hidden>{label}</label>
            <div class="entry-box">
                <select id=id on:change=chosen prop:value=move || value.get()>
                    {move || options.get().into_iter().map(option).collect_view()}
                </select>
            </div>
            <p class="entry-error" role="status">{move || error.get()}</p>
        </div>
    }
}
