//! A question: what is typed changes nothing in the book.

use std::borrow::Cow;
use std::sync::Arc;

use leptos::prelude::*;

use super::Hangs;
use super::readings::{TypeIn, readings};
use super::units::{Picker, Units};
use crate::app::unfinished::Unread;
use crate::foundation::measure::{Exact, Money, both_readings, read_number};
use crate::say;
use crate::ui::address;
use crate::ui::live::{flag, text as shown_text};
use crate::ui::state::AppState;
use crate::words::{self, Example};

/// The number that is typed to a question, or what is wrong with it. Returns `None` if nothing is
/// typed.
pub fn asked_number(state: AppState, text: RwSignal<String>, example: Example) -> Option<Result<Exact, String>> {
    let text = text.get();
    if text.trim().is_empty() {
        return None;
    }
    let speaker = state.speaker.get();
    Some(read_number(&text, speaker.style()).map_err(|error| words::read_error(&error, &example.said(&speaker))))
}

/// The price that is typed to a question, above zero.
pub fn asked_price(state: AppState, text: RwSignal<String>) -> Option<Result<Money, String>> {
    let example = Example::MenuPrice;
    match asked_number(state, text, example)? {
        Ok(price) if price.is_zero() => {
            Some(Err(say!(book::price_above_zero, example = example.said(&state.speaker.get()))))
        }
        price => Some(price.map(Money::from_major)),
    }
}

/// A field for a question: what is typed is not kept in the book.
#[component]
pub fn Ask(
    /// What is asked.
    #[prop(into)]
    label: Cow<'static, str>,
    /// What is typed.
    text: RwSignal<String>,
    /// What is wrong with it, as a sentence. It is empty if nothing is.
    error: Signal<String>,
    /// Letters rather than a number.
    #[prop(optional)]
    letters: bool,
    /// Says to the answers that hang on it when it cannot be read.
    #[prop(optional)]
    hangs: Option<Hangs>,
    /// The units that stand beside its number.
    #[prop(optional)]
    units: Option<Units>,
) -> impl IntoView {
    let state = AppState::here();
    let number = state.new_session();
    let id = format!("ask-{number}");
    if let Some(hangs) = hangs {
        hangs.follow(number, label.to_string(), error);
    }
    keep_while_loading(format!("{} {label}", address::here()), text);
    let error_id = format!("{id}-error");
    let wrong = flag(move || !error.with(String::is_empty));
    let unclear = Signal::derive(move || {
        if wrong.get() { text.with(|text| both_readings(text, state.speaker.get().style())) } else { None }
    });
    let picker = units.map(|units| Picker::of(state, units, text.into()));
    // As it stands in the field while the caret is in it, and with its unit.
    let draft = RwSignal::new(None::<(String, String)>);
    let (typing, in_force) = (picker.clone(), picker.clone());
    let typed: TypeIn = Arc::new(move |typed| {
        let full = typing.as_ref().map_or_else(|| typed.clone(), |picker| picker.with_unit(&typed));
        draft.set(Some((typed, full.clone())));
        text.set(full);
    });
    let both = readings(unclear, typed.clone());
    let number = move || in_force.as_ref().map_or_else(|| text.get(), Picker::number);
    // What was typed and taken is emptied by whoever took it.
    let shown = shown_text(move || match draft.get() {
        Some((typed, full)) if text.with(|text| *text == full) => typed,
        _ => number(),
    });
    let list = picker.map(|picker| {
        let put = move |_, full| {
            draft.set(None);
            text.set(full);
        };
        picker.list(&label, move || shown.get_untracked(), put)
    });
    view! {
        <div class="entry" class:entry-wrong=wrong>
            <label for=id.clone()>{label.into_owned()}</label>
            <div class="entry-box">
                <input
                    id=id
                    type="text"
                    inputmode=if letters { "text" } else { "decimal" }
                    autocomplete="off"
                    aria-describedby=error_id.clone()
                    prop:value=shown
                    on:input=move |event| typed(event_target_value(&event))
                    on:blur=move |_| drop(draft.try_set(None))
                />
                {list}
            </div>
            <p class="entry-error" id=error_id role="status">{error}</p>
            {both}
        </div>
    }
}

/// Brings a question's text back when the page is loaded anew on its screen, such as by an update.
/// Where the screen is left, or the form that it belongs to is done with, it is forgotten.
fn keep_while_loading(field: String, text: RwSignal<String>) {
    let state = AppState::here();
    let kept = state.unfinished.with_untracked(|all| all.unread(&field).map(|it| it.text.clone()));
    let first = text.get_untracked();
    if let Some(kept) = kept {
        text.set(kept);
    }
    let note = Arc::new(move |now: Option<String>| {
        let typed = now.map(|text| Unread { field: field.clone(), text, error: String::new() });
        // The book may be closed with its screens.
        let _ = state.unfinished.try_maybe_update(|all| (all.note(&field, typed), ()));
    });
    let forget = note.clone();
    Effect::new(move |_| note(Some(text.get()).filter(|now| *now != first)));
    on_cleanup(move || forget(None));
}
