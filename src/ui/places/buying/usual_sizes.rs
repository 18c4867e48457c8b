//! Usual bottles and cups for a container that is not in the book yet.

use leptos::prelude::*;

use super::change::container_added;
use crate::book::ContainerId;
use crate::buying::starter::vessels::{Vessel, usual};
use crate::say;
use crate::ui::fields::{Addition, Draft, Field};
use crate::ui::live::{press, trouble};
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::words;

/// Usual bottles and cups, each a button that makes the container one of them. A name that was typed stays.
pub(super) fn usual_sizes(id: ContainerId, draft: Draft, new: &Addition) -> AnyView {
    let state = AppState::here();
    if untrack(|| new.is_there()) {
        return ().into_any();
    }
    let refused = RwSignal::new(None::<String>);
    let choose = move |vessel: Vessel| {
        let typed = untrack(|| draft.text(state, Field::Name)).trim().to_string();
        let name = if typed.is_empty() { words::vessel(&vessel, &state.speaker.get_untracked()) } else { typed };
        let sold_for = untrack(|| draft.text(state, Field::SoldFor));
        let edit = state.book.with_untracked(|book| container_added(book, vessel.container(id, name), &sold_for));
        let made = state.apply(say!(labels::add_container_step), edit);
        if made.is_ok() {
            draft.discard(state);
        }
        refused.set(made.err());
    };
    let button = move |vessel: Vessel| {
        let (size, capacity) =
            state.speaker.with_untracked(|speaker| (words::vessel(&vessel, speaker), speaker.amount(vessel.brimful)));
        view! {
            <button class="match" type="button" on:click=press(move || choose(vessel))>
                <strong>{size}</strong>
                <span class="soft">{say!(starter::holds, capacity = capacity)}</span>
            </button>
        }
    };
    let units = untrack(|| state.units());
    new.until_there(move || {
        let buttons = move |of_book: bool| {
            let some = usual(units).filter(move |vessel| vessel.is_of(units) == of_book);
            view! { <div class="usual-sizes">{some.map(button).collect_view()}</div> }.into_any()
        };
        view! {
            <Section heading=say!(starter::usual_sizes) about=say!(starter::usual_sizes_about)>
                {buttons(true)}
                <details class="more">
                    <summary>{say!(starter::other_units)}</summary>
                    {buttons(false)}
                </details>
                {trouble(move || refused.get())}
            </Section>
        }
        .into_any()
    })
}
