//! A choice of a few.

use std::borrow::Cow;
use std::sync::Arc;

use leptos::ev;
use leptos::prelude::*;
use web_sys::HtmlSelectElement;

use crate::ui::live::{flag, live, text};
use crate::ui::state::AppState;

/// Puts a chosen value in force, or says in a sentence why not.
pub type Choose = Arc<dyn Fn(&str) -> Result<(), String> + Send + Sync>;

/// A labelled list to choose from; the options are pairs of a value and its words.
#[component]
pub fn Choice(
    /// What is chosen.
    #[prop(into)]
    label: Cow<'static, str>,
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
    let error_id = format!("{id}-error");
    let chosen = move |event: ev::Event| {
        error.set(choose(&event_target_value(&event)).err());
        // What stands there is what is in force: a list to add from is empty again, a refused
        // choice falls back.
        event_target::<HtmlSelectElement>(&event).set_value(&value.get_untracked());
    };
    let wrong = flag(move || error.with(Option::is_some));
    let sentence = text(move || error.get().unwrap_or_default());
    let option = move |(key, words): (String, String)| {
        let this = key.clone();
        let chosen = flag(move || value.with(|value| *value == this));
        view! { <option value=key selected=chosen>{words}</option> }
    };
    let list = live(move || options.get().into_iter().map(option).collect_view().into_any());
    view! {
        <div class="entry" class:entry-wrong=wrong>
            <label for=id.clone() class:unseen=label_hidden>{label.into_owned()}</label>
            <div class="entry-box">
                <select id=id aria-describedby=error_id.clone() on:change=chosen prop:value=value>
                    {list}
                </select>
            </div>
            <p class="entry-error" id=error_id role="status">
                {sentence}
            </p>
        </div>
    }
}
