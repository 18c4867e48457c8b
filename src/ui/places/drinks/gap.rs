//! Closing the gap: what would bring a size under its target back to it.

use std::time::Duration;

use leptos::prelude::*;

use crate::app::route::Route;
use crate::book::{Edit, Goods, OfferId};
use crate::drink::gap::{Lever, Way, Ways, practical_ways};
use crate::drink::ledger::OfferStatus;
use crate::say;
use crate::ui::live::{live, press, when};
use crate::ui::parts::{Fold, Section};
use crate::ui::state::AppState;
use crate::words;

/// How long after a change the levers are tried anew.
const PAUSE: Duration = Duration::from_millis(150);

/// What would close the gap of a size under its target. Draws nothing for one that is not.
#[component]
pub fn Gap(
    /// The offer.
    id: OfferId,
) -> impl IntoView {
    let state = AppState::here();
    let status = state.status(id);
    when(
        move || status.get() == OfferStatus::UnderTarget,
        move || {
            let find = move || untrack(|| state.book.with(|book| practical_ways(book, id)).unwrap_or_default());
            let found = RwSignal::new(find());
            // Trying every lever is too much for each key that is pressed.
            let mut after_typing = debounce(PAUSE, move |()| {
                let now = find();
                // The same levers stay as they are drawn: a button keeps its focus.
                found.maybe_update(|before| {
                    let moved = *before != now;
                    *before = now;
                    moved
                });
            });
            Effect::new(move |_| {
                state.ledger.track();
                after_typing(());
            });
            let rows = move |ways: Vec<Way>| ways.into_iter().map(|way| row(state, way)).collect_view();
            let drawn = live(move || {
                let Ways { practical, others } = found.get();
                let count = others.len().to_string();
                let others = (!others.is_empty()).then(|| {
                    view! {
                        <Fold name=say!(drinks::other_ways) figure=Signal::stored(count)>
                            <ul class="ways">{rows(others)}</ul>
                        </Fold>
                    }
                });
                view! {
                    <ul class="ways">{rows(practical)}</ul>
                    {others}
                }
                .into_any()
            });
            view! {
                <Section heading=say!(drinks::reach_target)>
                    {drawn}
                </Section>
            }
            .into_any()
        },
    )
}

fn row(state: AppState, way: Way) -> AnyView {
    let (name, change, advice, set) = state.book.with(|book| {
        let speaker = &state.speaker.get();
        (
            words::lever(way.lever, book),
            words::lever_change(&way, speaker),
            words::lever_advice(&way, book, speaker),
            words::lever_set(&way, book, speaker),
        )
    });
    let seen = if way.closes.is_ok() { where_to_see(way.lever) } else { None };
    let seen = seen.map(|(route, name)| view! { <a class="button" href=route.address()>{name}</a> });
    let edit = way.closes.ok().and_then(|closing| closing.edit);
    let apply = edit.zip(set).map(|(edit, set)| apply(state, set, edit));
    let said = if advice.is_empty() { name } else { advice };
    view! {
        <li class="way">
            <p>{said} " " <span class="soft">{change}</span></p>
            {apply}
            {seen}
        </li>
    }
    .into_any()
}

/// Where what a lever hangs on is looked at, for one that is not set here.
fn where_to_see(lever: Lever) -> Option<(Route, &'static str)> {
    match lever {
        Lever::PackPrice(Goods::Ingredient(id)) => Some((Route::Ingredient(id), say!(drinks::see_quotes))),
        Lever::PackPrice(Goods::Packaging(id)) => Some((Route::Packaging(id), say!(drinks::see_quotes))),
        Lever::TrimYield(id) | Lever::PressYield(id) | Lever::SoakYield(id) => {
            Some((Route::YieldLog(id), say!(drinks::see_yield_log)))
        }
        Lever::MenuPrice(_) | Lever::Fill(_) | Lever::ContainerSet(_) | Lever::Unsold(_) | Lever::HandsTime(_) => None,
    }
}

fn apply(state: AppState, set: String, edit: Edit) -> AnyView {
    let step = set.clone();
    let apply = move || {
        // A closing value was tried on a copy of the book, so it is not refused.
        let _ = state.apply(&step, edit.clone());
    };
    view! {
        <button class="button" on:click=press(apply)>
            {set}
        </button>
    }
    .into_any()
}
