//! Closing the gap: what would bring a size under its target back to it.

use std::time::Duration;

use leptos::prelude::*;

use crate::book::{Edit, OfferId};
use crate::drink::gap::{Way, ways};
use crate::drink::ledger::OfferStatus;
use crate::say;
use crate::ui::live::{live, press, when};
use crate::ui::parts::Section;
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
            let find = move || untrack(|| state.book.with(|book| ways(book, id)).unwrap_or_default());
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
            let rows = live(move || found.get().into_iter().map(|way| row(state, way)).collect_view().into_any());
            view! {
                <Section
                    heading=say!(drinks::reach_target)
                    about=say!(drinks::reach_target_about)
                >
                    <ul class="ways">{rows}</ul>
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
    let edit = way.closes.ok().and_then(|closing| closing.edit);
    let apply = edit.zip(set).map(|(edit, set)| apply(state, set, edit));
    view! {
        <li class="way">
            <p class="way-name">
                <strong>{name}</strong>
                " "
                <span class="soft">{change}</span>
            </p>
            <p>{advice}</p>
            {apply}
        </li>
    }
    .into_any()
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
