//! What is tried by a slider, or by typing beside it.

use std::sync::Arc;

use leptos::ev;
use leptos::prelude::*;

use super::{Entry, Hangs, tried_change};
use crate::app::history::Session;
use crate::foundation::measure::{Exact, TYPED_PLACES};
use crate::say;
use crate::ui::live::text;
use crate::ui::state::AppState;

/// Takes a percentage, or what is wrong with it, in which visit to the field; no visit where it
/// was slid. Says why it does not hold. None is what holds in the book.
pub type Try = Arc<dyn Fn(Result<Option<Exact>, String>, Option<Session>) -> Result<(), String> + Send + Sync>;

/// Takes the number that was slid to.
pub type Slid = Arc<dyn Fn(Exact) + Send + Sync>;

/// A bare slider, beside a field for the same number.
#[component]
pub fn Range(
    /// What is tried.
    label: String,
    /// Its ends, as the numbers stand when it is drawn.
    ends: (Exact, Exact),
    /// How far one step goes.
    step: Exact,
    /// The number in force.
    value: Signal<Exact>,
    /// Takes another.
    slid: Slid,
) -> impl IntoView {
    let slide = move |event: ev::Event| {
        // A slider gives plain digits between its ends.
        if let Some(number) = Exact::from_plain(&event_target_value(&event), TYPED_PLACES) {
            slid(number);
        }
    };
    let (least, most) = ends;
    view! {
        <input
            type="range"
            aria-label=say!(book::slider_of_field, field = label)
            min=least.to_string()
            max=most.to_string()
            step=step.to_string()
            prop:value=text(move || value.get().rounded(step.places()).to_string())
            on:input=slide
        />
    }
}

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
    /// Says to the answers that hang on it when it cannot be read.
    hangs: Hangs,
) -> impl IntoView {
    let state = AppState::here();
    let typed = put.clone();
    let slid: Slid = Arc::new(move |number| {
        // What lies between the ends holds.
        let _ = put(Ok(Some(number)), None);
    });
    let (least, most) = ends;
    let whole = |end: i32| Exact::new(i64::from(end), 0);
    view! {
        <div class="slider">
            <Entry
                label=label
                unit="%"
                letters=least < 0
                hangs
                value=text(move || state.number(value.get()))
                commit=tried_change(Box::new(move |read, session| typed(read, Some(session))))
            />
            <Range label=label.to_string() ends=(whole(least), whole(most)) step=Exact::ONE value slid />
            <p class="entry-note">{note}</p>
        </div>
    }
}
