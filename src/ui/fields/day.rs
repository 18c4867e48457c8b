//! A day, chosen from the browser's own calendar.

use std::borrow::Cow;
use std::sync::Arc;

use leptos::ev;
use leptos::html;
use leptos::prelude::*;

use super::Choose;
use crate::foundation::measure::Date;
use crate::say;
use crate::ui::live::{flag, live, press, text};
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

/// A labelled day.
#[component]
pub fn Day(
    /// What the day is of.
    label: &'static str,
    /// The day in force, as `2026-11-23`. It is empty for no day.
    #[prop(into)]
    value: Signal<String>,
    /// Puts a day in force, or none where the text is empty.
    choose: Choose,
    /// It has been: a day in the future is asked about first.
    #[prop(optional)]
    past: bool,
    /// Any day of its week will do: what is left of this week is no future.
    #[prop(optional)]
    weekly: bool,
    /// A quiet line under the field.
    #[prop(optional, into)]
    note: Cow<'static, str>,
) -> impl IntoView {
    let state = AppState::here();
    let id = format!("day-{}", state.new_session());
    let error_id = format!("{id}-error");
    let error = RwSignal::new(None::<String>);
    let input = NodeRef::<html::Input>::new();
    // A day in the future that waits for an answer.
    let ahead = RwSignal::new(None::<Date>);
    let take = move |chosen: &str| {
        let outcome = choose(chosen);
        if outcome.is_ok() {
            // What stands there is what is in force: a week shows its Monday.
            show(input, &value.get_untracked());
        }
        error.set(outcome.err());
    };
    let take = Arc::new(take);
    let chosen = {
        let take = take.clone();
        move |event: ev::Event| {
            let text = event_target_value(&event);
            let typed = Date::from_text(&text);
            let day = typed.filter(|day| {
                let begins = if weekly { day.monday() } else { *day };
                past && begins > today()
            });
            ahead.set(day);
            error.set(None);
            // While a year is typed, each of its digits makes a day: 0002, 0020, 0202.
            if let Some(sentence) = typed.and_then(words::day_too_early) {
                error.set(Some(sentence));
                return;
            }
            if day.is_none() {
                take(&text);
            }
        }
    };
    let asked = live(move || {
        let Some(day) = ahead.get() else { return ().into_any() };
        let take = take.clone();
        let keep = move || {
            ahead.set(None);
            take(&day.to_string());
        };
        let back = move || {
            ahead.set(None);
            show(input, &value.get_untracked());
        };
        view! {
            <span>{words::day_ahead(day)}</span>
            <span class="entry-answers">
                <button class="button" type="button" on:click=press(keep)>
                    {say!(book::keep)}
                </button>
                <button class="button" type="button" on:click=press(back)>
                    {say!(book::back)}
                </button>
            </span>
        }
        .into_any()
    });
    let wrong = flag(move || error.with(Option::is_some));
    let sentence = text(move || error.get().unwrap_or_default());
    view! {
        <div class="entry" class:entry-wrong=wrong>
            <label for=id.clone()>{label}</label>
            <div class="entry-box">
                <input
                    node_ref=input
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
            <div class="entry-asked" role="status">{asked}</div>
            <p class="entry-note">{note.into_owned()}</p>
        </div>
    }
}

/// Shows a day in a field, whatever stands there.
fn show(input: NodeRef<html::Input>, day: &str) {
    if let Some(input) = input.get_untracked() {
        input.set_value(day);
    }
}
