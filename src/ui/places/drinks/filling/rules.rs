//! The rule that a fill follows, and what it is asked with.

use std::sync::Arc;

use leptos::prelude::*;

use super::{changed, filling};
use crate::book::{Accepted, Book, FillRule, Filling, OfferId};
use crate::foundation::measure::{Dimension, Wanted};
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
    let of = move |show: fn(&Filling, AppState) -> String| {
        text(move || state.book.with(|book| filling(book, id).map(|it| show(it, state)).unwrap_or_default()))
    };
    let rules: Vec<(String, String)> =
        FillRule::ALL.iter().map(|rule| (format!("{rule:?}"), words::fill_rule(*rule).to_string())).collect();
    let choose_rule = Arc::new(move |chosen: &str| {
        let rule = FillRule::ALL.iter().copied().find(|rule| format!("{rule:?}") == chosen);
        let edit = state.book.with_untracked(|book| changed(book, id, |it| it.rule = rule.unwrap_or(it.rule)));
        edit.map_or(Ok(()), |edit| state.apply("Fill rule", edit))
    });
    let shares = |said: fn(Accepted, String) -> String| -> Vec<(String, String)> {
        let percent = |it: &Accepted| untrack(|| state.percent(it.share()));
        Accepted::ALL.iter().map(|it| (format!("{it:?}"), said(*it, percent(it)))).collect()
    };
    let choose_share = move |step: &'static str, set: fn(&mut Filling, Accepted)| -> Choose {
        Arc::new(move |chosen: &str| {
            let share = Accepted::ALL.iter().copied().find(|it| format!("{it:?}") == chosen);
            let edit = share.and_then(|share| state.book.with_untracked(|book| changed(book, id, |it| set(it, share))));
            edit.map_or(Ok(()), |edit| state.apply(step, edit))
        })
    };
    let (accepted, risks) = (shares(words::accepted_share), shares(|_, percent| percent));
    let rule = move || state.book.with(|book| filling(book, id).map(|it| it.rule));
    let volume = |book: &Book| Wanted { dimensions: &[Dimension::Volume], unit: book.settings().units.drink_unit() };
    let invented = text(move || {
        let sample = state
            .book
            .with(|book| book.settings().invented && filling(book, id).is_some_and(|it| it.allowed.is_some()));
        if sample {
            format!("{} {}", words::INVENTED_VARIATION, words::ALLOWED_VARIATION)
        } else {
            words::ALLOWED_VARIATION.to_string()
        }
    });
    view! {
        <div class="fields">
            <Choice label="The rule" options=rules value=of(|it, _| format!("{:?}", it.rule)) choose=choose_rule />
            {when(
                move || rule() == Some(FillRule::EuropeanOrBritish),
                move || {
                    view! {
                        <Choice
                            label="Under the tolerance"
                            options=accepted.clone()
                            value=of(|it, _| format!("{:?}", it.accepted))
                            choose=choose_share("Allowed short fills", |it, share| it.accepted = share)
                        />
                    }
                        .into_any()
                },
            )}
            {when(
                move || rule() == Some(FillRule::UnitedStates),
                move || {
                    view! {
                        <Entry
                            label="Allowed variation"
                            hangs
                            example="none"
                            note=invented
                            value=of(|it, state| it.allowed.map(|amount| state.amount(amount)).unwrap_or_default())
                            units=fields::units(volume)
                            commit=fields::optional_amount("Allowed variation", volume, move |book, amount| {
                                changed(book, id, |it| it.allowed = amount)
                            })
                        />
                    }
                        .into_any()
                },
            )}
            <Entry
                label="Packages per batch"
                hangs
                example="not known"
                note=text(|| "Filled in one go.".to_string())
                value=of(|it, state| it.batch.map(|batch| state.number(batch)).unwrap_or_default())
                commit=fields::optional_count("Packages per batch", move |book, batch| {
                    changed(book, id, |it| it.batch = batch)
                })
            />
            {when(
                move || state.book.with(|book| filling(book, id).is_some_and(|it| it.batch.is_some())),
                move || {
                    view! {
                        <Choice
                            label="Short-batch risk"
                            options=risks.clone()
                            value=of(|it, _| format!("{:?}", it.batch_risk()))
                            choose=choose_share("Short-batch risk", |it, share| it.batch_risk = Some(share))
                        />
                    }
                        .into_any()
                },
            )}
            <Entry
                label="Room for closure"
                hangs
                example="none"
                value=of(|it, state| it.least_headspace.map(|amount| state.amount(amount)).unwrap_or_default())
                units=fields::units(volume)
                commit=fields::optional_amount("Room for the closure", volume, move |book, amount| {
                    changed(book, id, |it| it.least_headspace = amount)
                })
            />
            <Weekly id hangs />
        </div>
    }
}
