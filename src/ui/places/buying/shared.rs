//! The sets of packaging that a container shares with others.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::changed;
use super::packaging_set::{SHARED_BY, set_cost};
use crate::app::route::Route;
use crate::book::{ContainerId, Key, PackagingSetId};
use crate::ui::fields::{Choice, Draft};
use crate::ui::live::{press, rows, text};
use crate::ui::order;
use crate::ui::parts::{Section, TakeOut};
use crate::ui::random::random;
use crate::ui::state::AppState;

/// The sets of packaging that a container shares with others.
#[component]
pub fn SharedSets(
    /// The container.
    id: ContainerId,
) -> impl IntoView {
    let state = AppState::here();
    let shared = Memo::new(move |_| {
        let keys = state.book.with(|book| {
            Some(book.container(id)?.shared.iter().map(|set| Key::PackagingSet(*set)).collect::<Vec<Key>>())
        });
        keys.unwrap_or_default()
    });
    let options = Memo::new(move |_| {
        let taken = shared.get();
        let free = |key: &Key| !taken.contains(key);
        let mut options = state
            .book
            .with(|book| order::options(book, order::packaging_sets(book).into_iter().filter(free).collect()));
        options.insert(0, (String::new(), "Choose a set".to_string()));
        options.push(("new".to_string(), "A new set".to_string()));
        options
    });
    let add = Arc::new(move |chosen: &str| {
        let set = match (chosen, Key::from_text(chosen)) {
            ("new", _) => None,
            (_, Some(Key::PackagingSet(set))) => Some(set),
            _ => return Ok(()),
        };
        share(state, id, set)
    });
    let row = move |key| match key {
        Key::PackagingSet(set) => shared_row(state, id, set),
        _ => ().into_any(),
    };
    view! {
        <Section
            heading="Shared with other containers"
            about="Lid, straw and sleeve of all cups, cap and seal of all bottles: kept once, in a set."
        >
            <ul class="set">
                {rows(shared, row)}
            </ul>
            <Choice label="Share a set" options=options value=Signal::stored(String::new()) choose=add />
        </Section>
    }
}

/// Lets a container share a set; a new one where none is given.
fn share(state: AppState, container: ContainerId, set: Option<PackagingSetId>) -> Result<(), String> {
    let Some(id) = set else {
        let id = PackagingSetId::from_random(random());
        let draft = Draft::of_record(Key::PackagingSet(id));
        draft.begin_on(state, Route::PackagingSet(id));
        draft.set(state, SHARED_BY, &Key::Container(container).to_string());
        return Ok(());
    };
    let edit = state.book.with_untracked(|book| changed(book, container, |it| it.shared.push(id)));
    edit.map_or(Ok(()), |edit| state.apply("Share a set", edit))
}

fn shared_row(state: AppState, container: ContainerId, set: PackagingSetId) -> AnyView {
    let name = text(move || state.book.with(|book| book.name(Key::PackagingSet(set))));
    let remove = move || {
        let edit =
            state.book.with_untracked(|book| changed(book, container, |it| it.shared.retain(|shared| *shared != set)));
        // Taking a set out of a container is never refused.
        let _ = edit.map(|edit| state.apply("Stop sharing a set", edit));
    };
    view! {
        <li class="set-row set-shared">
            {set_link(state, set)}
            <TakeOut name on_click=remove />
        </li>
    }
    .into_any()
}

/// The name of a set, leading to it, and what it costs for one drink.
fn set_link(state: AppState, set: PackagingSetId) -> AnyView {
    let name = text(move || state.book.with(|book| book.name(Key::PackagingSet(set))));
    view! {
        <a class="line-name" href=Route::PackagingSet(set).address()>{name}</a>
        <span class="set-cost">{set_cost(state, set)}</span>
    }
    .into_any()
}

/// Every set that containers share.
#[component]
pub fn AllSets() -> impl IntoView {
    let state = AppState::here();
    let sets = Memo::new(move |_| state.book.with(order::packaging_sets));
    let row = move |key| match key {
        Key::PackagingSet(set) => view! { <li class="set-row set-shared">{set_link(state, set)}</li> }.into_any(),
        _ => ().into_any(),
    };
    let add = move || {
        let id = PackagingSetId::from_random(random());
        Draft::of_record(Key::PackagingSet(id)).begin_on(state, Route::PackagingSet(id));
    };
    view! {
        <Section
            heading="Sets that containers share"
            about="Lid, straw and sleeve of all cups; cap and seal of all bottles: kept once, and a new price or another straw counts in every container that shares the set."
        >
            <ul class="set">
                {rows(sets, row)}
            </ul>
            <p class="actions">
                <button class="button" on:click=press(add)>
                    "Add a shared set"
                </button>
            </p>
        </Section>
    }
}
