//! The list of drinks.

use leptos::prelude::*;

use crate::app::route::Route;
use crate::book::{Book, DrinkId, Key, OfferId};
use crate::drink::ledger::{Ledger, OfferStatus};
use crate::say;
use crate::ui::fields::{Draft, Search};
use crate::ui::live::{flag, press, rows, text, when};
use crate::ui::order;
use crate::ui::parts::{Mark, filter_chip};
use crate::ui::random::random;
use crate::ui::state::AppState;
use crate::words;
use crate::words::texts::{HOLE, around};

/// What of the list is shown.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Filter {
    All,
    Only(OfferStatus),
}

impl Filter {
    const ALL: [Filter; 4] = [
        Filter::All,
        Filter::Only(OfferStatus::UnderTarget),
        Filter::Only(OfferStatus::WithoutPrice),
        Filter::Only(OfferStatus::CannotCompute),
    ];

    fn name(self) -> &'static str {
        match self {
            Filter::All => say!(first::all_drinks),
            Filter::Only(status) => words::offer_status(status),
        }
    }

    fn takes(self, ledger: &Ledger, offer: OfferId) -> bool {
        match self {
            Filter::All => true,
            Filter::Only(wanted) => ledger.get(offer).is_some_and(|result| OfferStatus::from(result) == wanted),
        }
    }
}

/// Every drink with its sizes.
#[component]
pub fn List() -> impl IntoView {
    let state = AppState::here();
    let search = RwSignal::new(String::new());
    let filter = RwSignal::new(Filter::All);
    let listed = Memo::new(move |_| {
        let wanted = order::lower_case(&search.get());
        let filter = filter.get();
        state.book.with(|book| state.ledger.with(|ledger| listed(book, ledger, &wanted, filter)))
    });
    let count = move |filter: Filter| {
        state.ledger.with(|ledger| ledger.offers().filter(|(offer, _)| filter.takes(ledger, *offer)).count())
    };
    let chip = move |this: Filter| {
        let pressed = text(move || (filter.get() == this).to_string());
        let needless = flag(move || this != Filter::All && filter.get() != this && count(this) == 0);
        let count = text(move || count(this).to_string());
        filter_chip(this.name(), pressed, needless, count, move || filter.set(this))
    };
    let empty = move || state.book.with(|book| book.drinks().next().is_none());
    let none = text(move || {
        if listed.with(Vec::is_empty) && !empty() { say!(first::no_drink_matches).to_string() } else { String::new() }
    });
    let card = move |key| match key {
        Key::Drink(id) => view! { <DrinkCard id filter /> }.into_any(),
        _ => ().into_any(),
    };
    view! {
        <h1>{say!(first::drinks)}</h1>
        {when(empty, || view! { <FirstSteps /> }.into_any())}
        {when(
            move || !empty(),
            move || {
                view! {
                    <div class="tools">
                        <Search label=say!(first::find_drink) search />
                        <div class="chips" role="group" aria-label=say!(first::show_drinks)>
                            {Filter::ALL.into_iter().map(chip).collect_view()}
                        </div>
                    </div>
                }
                    .into_any()
            },
        )}
        <p class="hollow">{none}</p>
        <ul class="cards">{rows(listed, card)}</ul>
        <p class="actions">
            <button class="main" on:click=press(move || add_drink(state))>
                {say!(first::add_drink)}
            </button>
            <a class="button" href="#/print/prices">
                {say!(first::price_sheet)}
            </a>
        </p>
    }
}

fn listed(book: &Book, ledger: &Ledger, wanted: &str, filter: Filter) -> Vec<Key> {
    let takes = |key: &Key| match key {
        Key::Drink(id) => {
            let named = wanted.is_empty() || order::lower_case(&book.name(*key)).contains(wanted);
            named && (filter == Filter::All || book.offers_of(*id).any(|it| filter.takes(ledger, it.id())))
        }
        _ => false,
    };
    order::drinks(book).into_iter().filter(takes).collect()
}

#[component]
fn DrinkCard(id: DrinkId, filter: RwSignal<Filter>) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::Drink(id))));
    let kind = text(move || {
        let kind = state.book.with(|book| book.drink(id).map(|drink| words::drink_kind(drink.kind)));
        kind.unwrap_or_default().to_string()
    });
    let offers = Memo::new(move |_| {
        let filter = filter.get();
        let takes = |ledger: &Ledger, key: &Key| matches!(key, Key::Offer(id) if filter.takes(ledger, *id));
        let mut offers = state.book.with(|book| order::offers(book, id));
        state.ledger.with(|ledger| offers.retain(|key| takes(ledger, key)));
        offers
    });
    let without_sizes = move || offers.with(Vec::is_empty).then(|| say!(first::drink_without_sizes).to_string());
    let none = text(move || without_sizes().unwrap_or_default());
    view! {
        <li class="card">
            <a class="card-head" href=Route::Drink(id).address()>
                <h2>{name}</h2>
                <span class="card-kind">{kind}</span>
            </a>
            <ul class="rows">{rows(offers, offer_row)}</ul>
            <p class="hollow">{none}</p>
        </li>
    }
}

/// One size of a drink in a list.
pub fn offer_row(key: Key) -> AnyView {
    match key {
        Key::Offer(id) => view! { <OfferRow id /> }.into_any(),
        _ => ().into_any(),
    }
}

#[component]
fn OfferRow(id: OfferId) -> impl IntoView {
    let state = AppState::here();
    let container = text(move || state.book.with(|book| book.name(Key::Container(id.container))));
    let price = text(move || match state.book.with(|book| book.offer(id).and_then(|offer| offer.price)) {
        Some(price) => state.money(price),
        None => say!(first::no_price).to_string(),
    });
    let cost = text(move || {
        let total = state.priced(id, |priced| priced.cost.total().ok());
        total.map(|cost| say!(first::cost_of_drink, cost = state.money(cost))).unwrap_or_default()
    });
    let margin = text(move || {
        let margin = state.priced(id, |priced| priced.margin());
        margin.map(|margin| state.percent(margin)).unwrap_or_default()
    });
    view! {
        <li>
            <a class="row" href=Route::Offer(id).address()>
                <span class="row-name">{container}</span>
                <span class="row-price">{price}</span>
                <span class="row-small">{cost}</span>
                <span class="row-margin">{margin}</span>
                <Mark status=state.status(id) />
            </a>
        </li>
    }
}

/// What an empty list teaches: three steps to a first price.
#[component]
fn FirstSteps() -> impl IntoView {
    let step = |said: String, screen: Route, name: &'static str| {
        let (before, after) = around(&said);
        view! { <li>{before} <a href=screen.address()>{name}</a> {after}</li> }
    };
    view! {
        <div class="teach">
            <h2>{say!(first::first_price_steps)}</h2>
            <ol>
                {step(say!(first::first_step_buying, buying = HOLE), Route::Buying, say!(first::buying))}
                {step(
                    say!(first::first_step_containers, containers = HOLE),
                    Route::Containers,
                    say!(first::containers),
                )}
                <li>{say!(first::first_step_drink)}</li>
            </ol>
        </div>
    }
}

fn add_drink(state: AppState) {
    let id = DrinkId::from_random(random());
    Draft::of_record(Key::Drink(id)).begin_on(state, Route::Drink(id));
}
