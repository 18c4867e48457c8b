//! A percentage to try, by a slider or by typing.

use std::sync::Arc;

use leptos::ev;
use leptos::prelude::*;

use super::{Entry, tried_change};
use crate::measure::Exact;
use crate::ui::history::Session;
use crate::ui::live::text;
use crate::ui::state::AppState;

/// Takes a percentage, or what is wrong with it, in which visit to the field; no visit where it
/// was slid. Says why it does not hold. None is what holds in the book.
pub type Try = Arc<dyn Fn(Result<Option<Exact>, String>, Option<Session>) -> Result<(), String> + Send + Sync>;

/// A percentage with a slider in whole steps beside its field.
#[component]
pub fn Slider(
    /// What is tried.
    label: &'static str,
    /// The ends of the slider.
    ends: (i32, i32),
    /// The percentage in force.
    value: Signal<Exact>,
    /// Takes another.
    put: Try,
    /// A quiet line under the slider.
    note: &'static str,
) -> impl IntoView {
    let state = AppState::here();
    let typed = put.clone();
    let slid = move |event: ev::Event| {
        // A slider gives plain digits between its ends, which hold.
        let _ = put(Ok(Exact::from_plain(&event_target_value(&event), 0)), None);
    };
    let (least, most) = ends;
    view! {
        <div class="slider">
            <Entry
                label=label
                unit="%"
                letters=least < 0
                value=text(move || state.number(value.get()))
                commit=tried_change(Box::new(move |read, session| typed(read, Some(session))))
            />
            <input
                type="range"
                aria-label=format!("{label}, as a slider")
                min=least.to_string()
                max=most.to_string()
                step="1"
                prop:value=text(move || value.get().rounded(0).to_string())
                on:input=slid
            />
            <p class="entry-note">{note}</p>
        </div>
    }
}
