//! A day, chosen from the browser's own calendar.

use leptos::ev;
use leptos::prelude::*;
use web_sys::HtmlInputElement;

use super::Choose;
use crate::measure::Date;
use crate::ui::live::{flag, text};
use crate::ui::state::AppState;

/// A labelled day.
#[component]
pub fn Day(
    /// What the day is of.
    label: &'static str,
    /// The day in force, as `2026-11-23`; empty for none.
    #[prop(into)]
    value: Signal<String>,
    /// Puts a day in force, or none where the text is empty.
    choose: Choose,
    /// A quiet line under the field.
    #[prop(optional)]
    note: &'static str,
) -> impl IntoView {
    let state = AppState::here();
    let id = format!("day-{}", state.new_session());
    let error_id = format!("{id}-error");
    let error = RwSignal::new(None::<String>);
    let chosen = move |event: ev::Event| {
        let outcome = choose(&event_target_value(&event));
        if outcome.is_ok() {
            // What stands there is what is in force: a week shows its Monday.
            event_target::<HtmlInputElement>(&event).set_value(&value.get_untracked());
        }
        error.set(outcome.err());
    };
    let wrong = flag(move || error.with(Option::is_some));
    let sentence = text(move || error.get().unwrap_or_default());
    view! {
        <div class="entry" class:entry-wrong=wrong>
            <label for=id.clone()>{label}</label>
            <div class="entry-box">
                <input
                    id=id
                    type="date"
                    max=Date::LAST.to_string()
                    aria-describedby=error_id.clone()
                    prop:value=value
                    on:change=chosen
                />
            </div>
            <p class="entry-error" id=error_id role="status">
                {sentence}
            </p>
            <p class="entry-note">{note}</p>
        </div>
    }
}
