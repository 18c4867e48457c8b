//! Whether a drink is treated, how acid it is, and how it is kept.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::changed;
use crate::book::{Drink, DrinkId};
use crate::drink::label::Law;
use crate::foundation::measure::Exact;
use crate::say;
use crate::ui::fields::{self, Choice, Entry, Hangs};
use crate::ui::live::text;
use crate::ui::parts::Fold;
use crate::ui::state::AppState;
use crate::words;

/// Treatment, pH and keeping of a drink.
#[component]
pub fn Keeping(
    /// The drink.
    id: DrinkId,
    /// The answers that hang on its fields.
    hangs: Hangs,
) -> impl IntoView {
    let state = AppState::here();
    let law = state.book.with_untracked(|book| Law::of(book.settings()));
    let yes_or_no = |words: fn(bool) -> &'static str| -> Signal<Vec<(String, String)>> {
        Signal::stored([false, true].map(|it| (it.to_string(), words(it).to_string())).to_vec())
    };
    let of = move |show: fn(&Drink) -> String| {
        text(move || state.book.with(|book| book.drink(id).map(show).unwrap_or_default()))
    };
    let choose = move |step: &'static str, set: fn(&mut Drink, bool)| {
        Arc::new(move |chosen: &str| {
            let yes = chosen == "true";
            let edit = state.book.with_untracked(|book| changed(book, id, |drink| set(drink, yes)));
            edit.map_or(Ok(()), |edit| state.apply(step, edit))
        })
    };
    let number = move |show: fn(&Drink) -> Option<Exact>| {
        text(move || {
            let number = state.book.with(|book| book.drink(id).and_then(show));
            number.map(|number| state.number(number)).unwrap_or_default()
        })
    };
    let treated = text(move || {
        let treated = state.book.with(|book| book.drink(id).is_some_and(|drink| drink.treated));
        words::treatment(treated, law).to_string()
    });
    view! {
        <Fold name=say!(labels::safety_and_storage) figure=treated>
            <p class="about">{say!(labels::safety_and_storage_about)}</p>
            <div class="fields">
                <Choice
                    label=say!(labels::treatment)
                    options=Signal::stored([false, true].map(|it| (it.to_string(), words::treatment(it, law).to_string())).to_vec())
                    value=of(|drink| drink.treated.to_string())
                    choose=choose(say!(labels::treatment), |drink, treated| drink.treated = treated)
                />
                <Entry
                    hangs
                    label=say!(labels::measured_ph)
                    example=say!(labels::not_measured)
                    note=words::low_acid_above()
                    value=number(|drink| drink.ph)
                    commit=fields::optional_ph(say!(labels::measured_ph), move |book, ph| changed(book, id, |drink| drink.ph = ph))
                />
                <Choice
                    label=say!(labels::keep_refrigerated)
                    options=yes_or_no(words::keep_refrigerated)
                    value=of(|drink| drink.keep_refrigerated.to_string())
                    choose=choose(say!(labels::keep_refrigerated), |drink, cold| drink.keep_refrigerated = cold)
                />
                <Entry
                    hangs
                    label=say!(labels::use_within)
                    unit=say!(labels::days)
                    example=say!(labels::not_entered)
                    note=say!(labels::use_within_about)
                    value=number(|drink| drink.keeps_days)
                    commit=fields::optional_count(say!(labels::use_within), fields::Example::DaysOfUse, move |book, days| {
                        changed(book, id, |drink| drink.keeps_days = days)
                    })
                />
            </div>
        </Fold>
    }
}
