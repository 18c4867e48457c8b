//! The rule that a fill follows, and what it is asked with.

use std::sync::Arc;

use leptos::prelude::*;

use super::{changed, filling};
use crate::book::{Accepted, Book, FillRule, Filling, OfferId};
use crate::foundation::measure::{Dimension, Wanted};
use crate::say;
use crate::ui::fields::{self, Choice, Choose, Entry, Hangs};
use crate::ui::live::{text, when};
use crate::ui::places::drinks::weekly::Weekly;
use crate::ui::state::AppState;
use crate::words;

/// The rule, the batch, and what single packages may be short by.
#[component]
pub fn Rules(
    /// The offer.
    id: OfferId,
    /// The answers that hang on its fields.
    hangs: Hangs,
) -> impl IntoView {
    let state = AppState::here();
    let rule = move || state.book.with(|book| filling(book, id).map(|it| it.rule));
    let by = move |wanted: FillRule| move || rule() == Some(wanted);
    let in_batches = move || state.book.with(|book| filling(book, id).is_some_and(|it| it.batch.is_some()));
    view! {
        <div class="fields">
            {the_rule(state, id)}
            {when(by(FillRule::EuropeanOrBritish), move || under_the_tolerance(state, id))}
            {when(by(FillRule::UnitedStates), move || allowed_variation(state, id, hangs))}
            <Entry
                label=say!(labels::packages_per_batch)
                hangs
                example=say!(labels::not_known)
                note=text(|| say!(labels::packages_per_batch_about).to_string())
                value=shown(state, id, |it, state| it.batch.map(|batch| state.number(batch)).unwrap_or_default())
                commit=fields::optional_count(say!(labels::packages_per_batch), fields::Example::PackagesPerBatch, move |book, batch| {
                    changed(book, id, |it| it.batch = batch)
                })
            />
            {when(in_batches, move || short_batch_risk(state, id))}
            <Entry
                label=say!(labels::room_for_closure)
                hangs
                example=say!(common::none)
                value=shown(state, id, |it, state| it.least_headspace.map(|room| state.amount(room)).unwrap_or_default())
                units=fields::units(volume)
                commit=fields::optional_amount(say!(labels::room_for_closure), |_| fields::Example::SmallVolume, volume, move |book, amount| {
                    changed(book, id, |it| it.least_headspace = amount)
                })
            />
            <Weekly id hangs />
        </div>
    }
}

fn shown(state: AppState, id: OfferId, show: fn(&Filling, AppState) -> String) -> Signal<String> {
    text(move || state.book.with(|book| filling(book, id).map(|it| show(it, state)).unwrap_or_default()))
}

fn volume(book: &Book) -> Wanted {
    Wanted { dimensions: &[Dimension::Volume], unit: book.settings().units.drink_unit() }
}

fn the_rule(state: AppState, id: OfferId) -> AnyView {
    let options: Vec<(String, String)> =
        FillRule::ALL.iter().map(|rule| (format!("{rule:?}"), words::fill_rule(*rule).to_string())).collect();
    let choose = Arc::new(move |chosen: &str| {
        let rule = FillRule::ALL.iter().copied().find(|rule| format!("{rule:?}") == chosen);
        let edit = state.book.with_untracked(|book| changed(book, id, |it| it.rule = rule.unwrap_or(it.rule)));
        edit.map_or(Ok(()), |edit| state.apply(say!(labels::rule), edit))
    });
    view! { <Choice label=say!(labels::rule) options value=shown(state, id, |it, _| format!("{:?}", it.rule)) choose /> }
        .into_any()
}

fn under_the_tolerance(state: AppState, id: OfferId) -> AnyView {
    let value = shown(state, id, |it, _| format!("{:?}", it.accepted));
    let choose = choose_share(state, id, say!(labels::allowed_short_fills), |it, share| it.accepted = share);
    view! { <Choice label=say!(labels::allowed_short_fills) options=shares(state, words::accepted_share) value choose /> }
        .into_any()
}

fn short_batch_risk(state: AppState, id: OfferId) -> AnyView {
    let value = shown(state, id, |it, _| format!("{:?}", it.batch_risk()));
    let choose = choose_share(state, id, say!(labels::short_batch_risk), |it, share| it.batch_risk = Some(share));
    view! { <Choice label=say!(labels::short_batch_risk) options=shares(state, |_, percent| percent) value choose /> }
        .into_any()
}

/// The shares that can be accepted, by what is said of each and its percentage.
fn shares(state: AppState, said: fn(Accepted, String) -> String) -> Vec<(String, String)> {
    let percent = |it: &Accepted| untrack(|| state.percent(it.share()));
    Accepted::ALL.iter().map(|it| (format!("{it:?}"), said(*it, percent(it)))).collect()
}

fn choose_share(state: AppState, id: OfferId, step: &'static str, set: fn(&mut Filling, Accepted)) -> Choose {
    Arc::new(move |chosen: &str| {
        let share = Accepted::ALL.iter().copied().find(|it| format!("{it:?}") == chosen);
        let edit = share.and_then(|share| state.book.with_untracked(|book| changed(book, id, |it| set(it, share))));
        edit.map_or(Ok(()), |edit| state.apply(step, edit))
    })
}

fn allowed_variation(state: AppState, id: OfferId, hangs: Hangs) -> AnyView {
    let note = text(move || {
        let is_sample =
            |book: &Book| book.settings().invented && filling(book, id).is_some_and(|it| it.allowed.is_some());
        if state.book.with(is_sample) {
            [say!(labels::sample_variation), say!(labels::look_up_variation)].join(" ")
        } else {
            say!(labels::look_up_variation).to_string()
        }
    });
    view! {
        <Entry
            label=say!(labels::allowed_variation)
            hangs
            example=say!(common::none)
            note
            value=shown(state, id, |it, state| it.allowed.map(|amount| state.amount(amount)).unwrap_or_default())
            units=fields::units(volume)
            commit=fields::optional_amount(say!(labels::allowed_variation), |_| fields::Example::SmallVolume, volume, move |book, amount| {
                changed(book, id, |it| it.allowed = amount)
            })
        />
    }
    .into_any()
}
