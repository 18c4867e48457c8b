//! Choosing a recipe card: a drink, then a size.

use leptos::prelude::*;

use crate::book::{DrinkId, Key, OfferId};
use crate::ui::route::Route;
use crate::ui::state::AppState;
use crate::words;

/// Every drink with its sizes, as large buttons.
#[component]
pub fn Choose() -> impl IntoView {
    let state = AppState::here();
    let drinks = Memo::new(move |_| {
        state.book.with(|book| {
            let sold = book.drinks().filter(|drink| book.offers_of(drink.id).next().is_some());
            let mut drinks: Vec<(String, DrinkId)> = sold.map(|it| (it.name.to_lowercase(), it.id)).collect();
            drinks.sort();
            drinks.into_iter().map(|(_, id)| id).collect::<Vec<DrinkId>>()
        })
    });
    view! {
        <h1>"Counter"</h1>
        <Show when=move || drinks.with(Vec::is_empty)>
            <div class="teach">
                <h2>"No cards yet"</h2>
                <p>"A drink has a recipe card for each size it is sold in. Add sizes to a drink in Drinks."</p>
            </div>
        </Show>
        <ul class="cards">
            <For each=move || drinks.get() key=|drink| *drink let(id)>
                <DrinkSizes id />
            </For>
        </ul>
    }
}

/// The offers of a drink, smallest fill first.
pub fn by_size(state: AppState, drink: DrinkId) -> Vec<OfferId> {
    let mut offers: Vec<OfferId> = state.book.with(|book| book.offers_of(drink).map(|offer| offer.id()).collect());
    state.ledger.with(|ledger| {
        offers.sort_by_key(|offer| ledger.get(*offer).and_then(|it| it.as_ref().ok()).map(|it| it.fill.volume));
    });
    offers
}

#[component]
fn DrinkSizes(id: DrinkId) -> impl IntoView {
    let state = AppState::here();
    let name = move || state.book.with(|book| book.name(Key::Drink(id)));
    let kind = move || state.book.with(|book| book.drink(id).map(|drink| words::drink_kind(drink.kind)));
    let offers = Memo::new(move |_| by_size(state, id));
    let size = move |offer: OfferId| {
        let container = move || state.book.with(|book| book.name(Key::Container(offer.container)));
        view! { <a class="button counter-size" href=Route::Card(offer).address()>{container}</a> }
    };
    view! {
        <li class="card">
            <div class="card-head">
                <h2>{name}</h2>
                <span class="card-kind">{kind}</span>
            </div>
            <div class="counter-sizes">{move || offers.get().into_iter().map(size).collect_view()}</div>
        </li>
    }
}
