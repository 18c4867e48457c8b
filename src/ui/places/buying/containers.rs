//! The containers: the sizes that drinks can be sold in.

use leptos::prelude::*;

use super::shared::AllSets;
use super::tabs::Tabs;
use crate::app::route::Route;
use crate::book::{ContainerId, DrinkId, Key};
use crate::drink::fill::{Fill, fill};
use crate::say;
use crate::ui::fields::{Draft, Field};
use crate::ui::live::{flag, press, rows, text, when};
use crate::ui::order;
use crate::ui::random::random;
use crate::ui::state::AppState;

/// Every container, smallest fill first.
#[component]
pub fn Containers() -> impl IntoView {
    let state = AppState::here();
    let listed = Memo::new(move |_| state.book.with(order::containers));
    let teach = when(
        move || listed.with(Vec::is_empty),
        || {
            view! {
                <div class="teach">
                    <h2>{say!(labels::no_containers)}</h2>
                    <p>{say!(labels::no_containers_about)}</p>
                </div>
            }
            .into_any()
        },
    );
    let row = |key| match key {
        Key::Container(id) => container_row(id),
        _ => ().into_any(),
    };
    view! {
        <h1>{say!(first::buying)}</h1>
        <Tabs here=Route::Containers />
        {teach}
        <div class="panes-two">
            <div class="pane">
                <section class="section" hidden=flag(move || listed.with(Vec::is_empty))>
                    <h2>{say!(first::containers)}</h2>
                    <ul class="goods-rows">{rows(listed, row)}</ul>
                </section>
                <p class="actions">
                    <button class="main" on:click=press(move || add_container(state, None))>
                        {say!(labels::add_container)}
                    </button>
                </p>
            </div>
            <div class="pane">
                <AllSets />
            </div>
        </div>
    }
}

/// A container in the list: its name, what is poured of what it holds, and how many drinks it is used for.
fn container_row(id: ContainerId) -> AnyView {
    let state = AppState::here();
    let filled = move || state.book.with(|book| fill(book.container(id)?).ok());
    let name = text(move || state.book.with(|book| book.name(Key::Container(id))));
    let poured = text(move || {
        let said = |fill: Fill| {
            say!(labels::container_fill, fill = state.volume(fill.volume), capacity = state.volume(fill.brimful))
        };
        filled().map(said).unwrap_or_default()
    });
    let uses = text(move || match state.book.with(|book| book.repriced_by(Key::Container(id)).len()) {
        0 => say!(labels::container_not_used).to_string(),
        drinks => say!(goods::used_in_drinks, drinks = drinks),
    });
    goods_row(Route::Container(id), name, poured, uses)
}

/// A row that leads to its page: a name, a quiet line under it, and a figure.
pub(super) fn goods_row(to: Route, name: Signal<String>, about: Signal<String>, figure: Signal<String>) -> AnyView {
    view! {
        <li>
            <a class="goods-row" href=to.address()>
                <strong>{name}</strong>
                <span class="soft">{about}</span>
                <span class="goods-figure">{figure}</span>
            </a>
        </li>
    }
    .into_any()
}

/// Begins a container on its own page; once it is in the book, a drink that it is for is sold in it.
pub fn add_container(state: AppState, sold_for: Option<DrinkId>) {
    let id = ContainerId::from_random(random());
    let draft = Draft::of_record(Key::Container(id));
    draft.begin_on(state, Route::Container(id));
    if let Some(drink) = sold_for {
        draft.set(state, Field::SoldFor, &Key::Drink(drink).to_string());
    }
}
