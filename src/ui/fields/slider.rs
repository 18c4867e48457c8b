//! A percentage to try, by a slider or by typing.

use std::sync::Arc;

use leptos::ev;
use leptos::prelude::*;

use super::{Entry, tried_change};
use crate::measure::Exact;
use crate::ui::live::text;
use crate::ui::state::AppState;

/// Puts a percentage in force, or says in a sentence why not; none is what holds in the book.
pub type Try = Arc<dyn Fn(Option<Exact>) -> Result<(), String> + Send + Sync>;

/// A percentage with a slider in whole steps beside its field.
#[component]
pub fn Slider(
    /// What is tried.
    label: &'static str,
    /// The ends of the slider.
    ends: (i32, i32),
    /// The percentage in force.
    value: Signal<Exact>,
    /// Puts one in force.
    put: Try,
    /// A quiet line under the slider.
    note: &'static str,
) -> impl IntoView {
    let state = AppState::here();
    let typed = put.clone();
    let slid = move |event: ev::Event| {
        // A slider gives plain digits between its ends, which hold.
        let _ = put(Exact::from_plain(&event_target_value(&event), 0));
    };
    let (least, most) = ends;
    view! {
        <div class="slider">
            <Entry
                label=label
                unit="%"
                letters=least < 0
                value=text(move || state.number(value.get()))
                commit=tried_change(move |number| typed(number))
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
