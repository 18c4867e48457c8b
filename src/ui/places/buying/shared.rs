//! The sets of packaging that a container shares with others.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::changed;
use super::containers::goods_row;
use super::packaging_set::set_cost;
use crate::app::route::Route;
use crate::book::{ContainerId, Key, PackagingSetId};
use crate::say;
use crate::ui::fields::{Choice, Draft, Field};
use crate::ui::live::{press, rows, text};
use crate::ui::order;
use crate::ui::parts::{Fold, Section, TakeOut};
use crate::ui::random::random;
use crate::ui::state::AppState;

/// The sets of packaging that a container shares with others.
#[component]
pub fn SharedSets(
    /// The container.
    id: ContainerId,
    /// Whether it stands open at first.
    open: bool,
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
        options.insert(0, (String::new(), say!(goods::choose_kit).to_string()));
        options.push(("new".to_string(), say!(goods::new_kit).to_string()));
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
    let figure = text(move || match shared.with(Vec::len) {
        0 => say!(common::none).to_string(),
        count => count.to_string(),
    });
    view! {
        <Fold name=say!(goods::packaging_kits) figure open>
            <p class="about">{say!(goods::kits_of_container)}</p>
            <ul class="set">
                {rows(shared, row)}
            </ul>
            <Choice label=say!(goods::add_kit) options=options value=Signal::stored(String::new()) choose=add />
        </Fold>
    }
}

/// Lets a container share a set; a new one where none is given.
fn share(state: AppState, container: ContainerId, set: Option<PackagingSetId>) -> Result<(), String> {
    let Some(id) = set else {
        let id = PackagingSetId::from_random(random());
        let draft = Draft::of_record(Key::PackagingSet(id));
        draft.begin_on(state, Route::PackagingSet(id));
        draft.set(state, Field::SharedBy, &Key::Container(container).to_string());
        return Ok(());
    };
    let edit = state.book.with_untracked(|book| changed(book, container, |it| it.shared.push(id)));
    edit.map_or(Ok(()), |edit| state.apply(say!(goods::add_kit), edit))
}

fn shared_row(state: AppState, container: ContainerId, set: PackagingSetId) -> AnyView {
    let name = text(move || state.book.with(|book| book.name(Key::PackagingSet(set))));
    let remove = move || {
        let edit =
            state.book.with_untracked(|book| changed(book, container, |it| it.shared.retain(|shared| *shared != set)));
        // Taking a set out of a container is never refused.
        let _ = edit.map(|edit| state.apply(say!(goods::remove_kit), edit));
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

/// A set in the list of all: its name, what it costs, and how many containers share it.
fn set_row(state: AppState, set: PackagingSetId) -> AnyView {
    let key = Key::PackagingSet(set);
    let name = text(move || state.book.with(|book| book.name(key)));
    let used = text(move || say!(goods::used_in_places, places = state.book.with(|book| book.repriced_by(key).len())));
    goods_row(Route::PackagingSet(set), name, used, set_cost(state, set))
}

/// Every set that containers share.
#[component]
pub fn AllSets() -> impl IntoView {
    let state = AppState::here();
    let sets = Memo::new(move |_| state.book.with(order::packaging_sets));
    let row = move |key| match key {
        Key::PackagingSet(set) => set_row(state, set),
        _ => ().into_any(),
    };
    let add = move || {
        let id = PackagingSetId::from_random(random());
        Draft::of_record(Key::PackagingSet(id)).begin_on(state, Route::PackagingSet(id));
    };
    view! {
        <Section
            heading=say!(goods::packaging_kits)
            about=say!(goods::all_kits)
        >
            <ul class="goods-rows">
                {rows(sets, row)}
            </ul>
            <p class="actions">
                <button class="button" on:click=press(add)>
                    {say!(goods::add_kit)}
                </button>
            </p>
        </Section>
    }
}
