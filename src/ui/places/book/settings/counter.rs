//! How finely the counter weighs and measures, and when supplier prices are old.

use leptos::prelude::*;

use super::{Put, changed, part, shown};
use crate::book::{self, Book};
use crate::counter::batch::least_step;
use crate::foundation::measure::{Amount, Dimension, Unit, Wanted};
use crate::say;
use crate::ui::fields::{self, Entry, Example};
use crate::ui::live::text;
use crate::ui::state::AppState;

/// The smallest steps of scale and jugs.
pub(super) fn counter(state: AppState) -> AnyView {
    let scale = |book: &Book| Wanted { dimensions: &[Dimension::Mass], unit: book.settings().units.weight_unit() };
    let jug = |book: &Book| Wanted { dimensions: &[Dimension::Volume], unit: book.settings().units.drink_unit() };
    let about = text(move || {
        let units = state.units();
        let [weight, volume] = [units.weight_unit(), units.drink_unit()].map(|unit| state.amount(least_step(unit)));
        say!(book::counter_about, weight = weight, volume = volume)
    });
    let figure = move || {
        let steps = state.book.with(|book| [book.settings().scale_step, book.settings().jug_step]);
        let said: Vec<String> = steps.into_iter().flatten().map(|step| state.amount(step)).collect();
        if said.is_empty() { say!(common::none).to_string() } else { said.join(", ") }
    };
    let inside = view! {
        <p class="about">{about}</p>
        <div class="fields">
            {step(state, say!(book::scale_rounds_to), |_| Example::ScaleStep, scale, |it| it.scale_step, |it, step| it.scale_step = step)}
            {step(state, say!(book::cup_marks), |_| Example::CupMark, jug, |it| it.jug_step, |it, step| it.jug_step = step)}
        </div>
    };
    part(say!(first::counter), "", figure, inside.into_any())
}

/// The smallest step that a scale or the jugs show. The field is empty if none is set.
fn step(
    state: AppState,
    label: &'static str,
    example: fn(Unit) -> Example,
    wanted: fn(&Book) -> Wanted,
    get: fn(&book::Settings) -> Option<Amount>,
    put: Put<Option<Amount>>,
) -> AnyView {
    let amount = move || state.book.with(|book| get(book.settings()));
    let value = text(move || amount().map(|step| state.amount(step)).unwrap_or_default());
    let commit = fields::optional_amount(label, example, wanted, move |book, step| changed(book, |it| put(it, step)));
    view! { <Entry label value units=fields::units(wanted) commit /> }.into_any()
}

/// After how many days a price is old.
pub(super) fn prices_of_suppliers(state: AppState) -> AnyView {
    let days = |it: &book::Settings, state: AppState| it.price_days.map(|days| state.number(days)).unwrap_or_default();
    let commit = fields::optional_count(say!(book::flag_prices_older), Example::DaysOfPrice, |book, days| {
        changed(book, |it| it.price_days = days)
    });
    let figure = move || match state.book.with(|book| book.settings().price_days) {
        Some(days) => say!(book::after_days, days = state.speaker.get().counted(days)),
        None => say!(book::never).to_string(),
    };
    let inside = view! {
        <div class="fields">
            <Entry
                label=say!(book::flag_prices_older)
                unit=say!(book::days)
                example=say!(book::never)
                value=shown(state, days)
                commit
            />
        </div>
    };
    part(say!(book::supplier_prices), say!(book::supplier_prices_about), figure, inside.into_any())
}
