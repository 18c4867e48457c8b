//! The containers: the sizes that drinks can be sold in.

use leptos::prelude::*;

use super::shared::AllSets;
use super::tabs::Tabs;
use crate::app::route::Route;
use crate::book::{ContainerId, Key};
use crate::drink::fill::{Fill, fill};
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
                    <h2>"What do you pour into?"</h2>
                    <p>
                        "A container has a volume to the rim, some of it left empty, and a set of packaging: the bottle or cup, its cap or lid, a label, a straw."
                    </p>
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
        <h1>"Buying"</h1>
        <Tabs here=Route::Containers />
        {teach}
        <ul class="cards">{rows(listed, card)}</ul>
        <p class="actions">
            <button class="main" on:click=press(move || add_container(state))>
                "Add a container"
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
        let said =
            |fill: Fill| format!("poured {}, {} to the rim", state.volume(fill.volume), state.volume(fill.brimful));
        fill.map(said).unwrap_or_default()
    });
    let uses = text(move || match state.book.with(|book| book.repriced_by(Key::Container(id)).len()) {
        0 => "not used yet".to_string(),
        1 => "used for 1 drink".to_string(),
        count => format!("used for {count} drinks"),
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
