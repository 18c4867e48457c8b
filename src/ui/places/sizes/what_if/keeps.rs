//! Keeping what is tried as a scenario: what it keeps and what it cannot is said first.

use leptos::prelude::*;

use super::Trying;
use super::uses::{items, said};
use crate::say;
use crate::sizes::side_by_side::{NotOurs, Uses, WhatIf};
use crate::ui::live::{live, press, text, when};
use crate::ui::places::sizes::scenarios::{keep_as_scenario, keep_named};
use crate::ui::places::sizes::side_by_side::difference;
use crate::words::what_if::Trials;

/// The button. Where a scenario cannot keep all of it, what it keeps and then earns stands before the button that
/// keeps it.
#[component]
pub fn Keeps(trying: Trying) -> impl IntoView {
    let parts = Memo::new(move |_| trying.keeps());
    let whole = move || parts.with(|[_, not_kept]| *not_kept == Uses::default());
    let open = RwSignal::new(false);
    let expanded = text(move || open.get().to_string());
    let ask = move || {
        view! {
            <p class="actions">
                <button
                    class="button"
                    aria-expanded=expanded
                    on:click=press(move || open.update(|open| *open = !*open))
                >
                    {say!(decide::keep_as_scenario)}
                </button>
            </p>
            {when(move || open.get(), move || live(move || parts.with(|parts| listed(trying, parts))))}
        }
        .into_any()
    };
    view! {
        {when(whole, move || keep_as_scenario(move |id| trying.scenario(id)))}
        {when(move || !whole(), ask)}
    }
}

/// What the scenario keeps, what it cannot, and what it then earns.
fn listed(trying: Trying, [kept, not_kept]: &[Uses; 2]) -> AnyView {
    let state = trying.state;
    let [mut keeps, _] = said(state, kept);
    keeps.extend(state.book.with(|book| {
        let words = Trials { book, speaker: &state.speaker.get() };
        let share = |left: &NotOurs| match left {
            NotOurs::Mix(container, share) => Some(words.kept_share(*container, *share)),
            NotOurs::Ingredients(_) | NotOurs::PackPrice { .. } => None,
        };
        kept.not_ours.iter().filter_map(share).collect::<Vec<_>>()
    }));
    let left = said(state, not_kept).concat();
    let then = trying.week_with(WhatIf::kept).map(|(now, then)| {
        let (more, by) = difference(state, now, then);
        match (more.is_positive(), more.is_negative()) {
            (true, _) => say!(sales::scenario_then_more, profit = by),
            (_, true) => say!(sales::scenario_then_less, profit = by),
            _ => say!(sales::scenario_then_same).to_string(),
        }
    });
    let some = !keeps.is_empty();
    let kept = some.then(|| {
        view! {
            <h3>{say!(sales::scenario_keeps)}</h3>
            <ul class="bulleted keeps">{items(keeps)}</ul>
        }
    });
    let keep = if some {
        view! {
            {then.map(|said| view! { <p class="keeps-then">{said}</p> })}
            {keep_named(say!(decide::keep_these), move |id| trying.scenario(id))}
        }
        .into_any()
    } else {
        view! { <p>{say!(sales::scenario_keeps_none)}</p> }.into_any()
    };
    view! {
        <div class="uses keeping">
            {kept}
            <h3>{say!(sales::scenario_cannot_keep)}</h3>
            <ul class="bulleted keeps-not">{items(left)}</ul>
            <p class="soft">{say!(sales::scenario_keeps_about)}</p>
            {keep}
        </div>
    }
    .into_any()
}
