//! The containers: the sizes that drinks can be sold in.

use leptos::prelude::*;

use super::shared::AllSets;
use super::tabs::Tabs;
use crate::app::route::Route;
use crate::book::{ContainerId, Key};
use crate::drink::fill::{Fill, fill};
use crate::say;
use crate::ui::fields::Draft;
use crate::ui::live::{press, rows, text, when};
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
    let card = |key| match key {
        Key::Container(id) => view! { <ContainerCard id /> }.into_any(),
        _ => ().into_any(),
    };
    view! {
        <h1>{say!(first::buying)}</h1>
        <Tabs here=Route::Containers />
        {teach}
        <ul class="cards">{rows(listed, card)}</ul>
        <p class="actions">
            <button class="main" on:click=press(move || add_container(state))>
                {say!(labels::add_container)}
            </button>
        </p>
        <AllSets />
    }
}

#[component]
fn ContainerCard(id: ContainerId) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::Container(id))));
    let poured = text(move || {
        let fill = state.book.with(|book| book.container(id).and_then(|container| fill(container).ok()));
        let said = |fill: Fill| {
            say!(labels::container_fill, fill = state.volume(fill.volume), capacity = state.volume(fill.brimful))
        };
        fill.map(said).unwrap_or_default()
    });
    let uses = text(move || match state.book.with(|book| book.repriced_by(Key::Container(id)).len()) {
        0 => say!(labels::container_not_used).to_string(),
        drinks => say!(labels::container_uses, drinks = drinks),
    });
    view! {
        <li class="card">
            <a class="card-head" href=Route::Container(id).address()>
                <h2>{name}</h2>
                <span class="card-kind">{poured}</span>
                <span class="card-kind">{uses}</span>
            </a>
        </li>
    }
}

fn add_container(state: AppState) {
    let id = ContainerId::from_random(random());
    Draft::of_record(Key::Container(id)).begin_on(state, Route::Container(id));
}
