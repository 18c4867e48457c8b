//! Choosing a recipe card: a drink, then a size.

use leptos::prelude::*;

use super::lock::LockDevice;
use super::tabs::Tabs;
use crate::app::route::{Place, Route, Sheet};
use crate::book::{DrinkId, Key};
use crate::say;
use crate::ui::fields::Search;
use crate::ui::live::{flag, rows, text, when};
use crate::ui::lock::Lock;
use crate::ui::order;
use crate::ui::places::book::counter_language;
use crate::ui::state::AppState;

/// More drinks than these are looked for by letters.
const AT_A_GLANCE: usize = 12;

/// Every drink as a large button that opens its sizes.
#[component]
pub fn Choose() -> impl IntoView {
    let state = AppState::here();
    let search = RwSignal::new(String::new());
    let sold = Memo::new(move |_| state.book.with(order::sold_drinks));
    let found = Memo::new(move |_| {
        let wanted = order::lower_case(&search.get());
        let named = |key: &Key| state.book.with(|book| order::lower_case(&book.name(*key)).contains(&wanted));
        sold.with(|sold| sold.iter().copied().filter(|key| wanted.is_empty() || named(key)).collect::<Vec<Key>>())
    });
    let teach = when(
        move || sold.with(Vec::is_empty),
        || {
            view! {
                <div class="teach">
                    <h2>{say!(counter::no_cards_yet)}</h2>
                    <p>{say!(counter::no_cards_about)}</p>
                </div>
            }
            .into_any()
        },
    );
    let find = when(
        move || sold.with(Vec::len) > AT_A_GLANCE,
        move || view! { <Search label=say!(first::find_drink) search /> }.into_any(),
    );
    let none = text(move || {
        if found.with(Vec::is_empty) && !sold.with(Vec::is_empty) {
            say!(counter::no_matches).to_string()
        } else {
            String::new()
        }
    });
    let few = flag(move || !search.with(String::is_empty) && found.with(Vec::len) == 1);
    let sizes = move |key| match key {
        Key::Drink(id) => view! { <DrinkSizes id few /> }.into_any(),
        _ => ().into_any(),
    };
    let lock = Lock::here();
    view! {
        <h1>{Place::Counter.name()}</h1>
        <Tabs here=Route::Counter />
        {teach}
        {find}
        <p class="hollow">{none}</p>
        <ul class="counter-drinks across">{rows(found, sizes)}</ul>
        {when(
            move || !sold.with(Vec::is_empty),
            || view! {
                <p class="actions">
                    <a class="button" href=Route::Sheet(Sheet::Cards).address()>{say!(counter::print_cards)}</a>
                </p>
            }
            .into_any(),
        )}
        {when(move || !lock.is_on(), counter_language)}
        <LockDevice />
    }
}

#[component]
fn DrinkSizes(
    id: DrinkId,
    /// Whether so few are found that their sizes stand open.
    few: Signal<bool>,
) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::Drink(id))));
    let offers = Memo::new(move |_| state.book.with(|book| order::offers(book, id)));
    let size = move |key| {
        let Key::Offer(offer) = key else { return ().into_any() };
        let container = text(move || state.book.with(|book| book.name(Key::Container(offer.container))));
        view! { <a class="button counter-size" href=Route::Card(offer).address()>{container}</a> }.into_any()
    };
    view! {
        <li>
            <details class="counter-drink" name="drink" open=few>
                <summary>{name}</summary>
                <div class="counter-sizes">{rows(offers, size)}</div>
            </details>
        </li>
    }
}
