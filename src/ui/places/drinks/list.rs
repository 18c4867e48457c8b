//! The list of drinks.

use leptos::prelude::*;

use crate::book::{Book, Drink, DrinkId, DrinkKind, Edit, Key, Labour, OfferId, Record};
use crate::ledger::{Ledger, Standing};
use crate::measure::{Amount, Exact, Money, Share};
use crate::ui::parts::Mark;
use crate::ui::random::random;
use crate::ui::route::{Route, go};
use crate::ui::state::AppState;
use crate::words;

/// What of the list is shown.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Filter {
    All,
    Only(Standing),
}

impl Filter {
    const ALL: [(Filter, &'static str); 4] = [
        (Filter::All, "All"),
        (Filter::Only(Standing::UnderTarget), "Under target"),
        (Filter::Only(Standing::WithoutPrice), "No price yet"),
        (Filter::Only(Standing::CannotCompute), "Cannot be computed"),
    ];

    fn takes(self, ledger: &Ledger, offer: OfferId) -> bool {
        match self {
            Filter::All => true,
            Filter::Only(wanted) => ledger.get(offer).is_some_and(|result| Standing::from(result) == wanted),
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
        let wanted = search.get().to_lowercase();
        let filter = filter.get();
        state.book.with(|book| state.ledger.with(|ledger| listed(book, ledger, &wanted, filter)))
    });
    let count = move |filter: Filter| {
        state.ledger.with(|ledger| ledger.offers().filter(|(offer, _)| filter.takes(ledger, *offer)).count())
    };
    let chip = move |(this, name): (Filter, &'static str)| {
        let pressed = move || (filter.get() == this).to_string();
        let needless = move || this != Filter::All && filter.get() != this && count(this) == 0;
        view! {
            <button class="chip" aria-pressed=pressed hidden=needless on:click=move |_| filter.set(this)>
                {name}
                " "
                <span class="chip-count">{move || count(this)}</span>
            </button>
        }
    };
    let add = move |_| add_drink(state);
    let empty = move || state.book.with(|book| book.drinks().next().is_none());
    view! {
        <h1>"Drinks"</h1>
        <Show when=move || !empty() fallback=move || view! { <FirstSteps /> }>
            <div class="tools">
                <input
                    class="search"
                    type="search"
                    aria-label="Find a drink"
                    placeholder="Find a drink"
                    prop:value=move || search.get()
                    on:input=move |event| search.set(event_target_value(&event))
                />
                <div class="chips" role="group" aria-label="Show">
                    {Filter::ALL.into_iter().map(chip).collect_view()}
                </div>
            </div>
            <Show when=move || listed.with(Vec::is_empty)>
                <p class="hollow">"No drink here. Search for other letters, or show all."</p>
            </Show>
            <ul class="cards">
                <For each=move || listed.get() key=|drink| *drink let(id)>
                    <DrinkCard id filter />
                </For>
            </ul>
        </Show>
        <p class="actions">
            <button class="main" on:click=add>
                "Add a drink"
            </button>
        </p>
    }
}

fn listed(book: &Book, ledger: &Ledger, wanted: &str, filter: Filter) -> Vec<DrinkId> {
    let mut drinks: Vec<&Drink> = book
        .drinks()
        .filter(|drink| drink.name.to_lowercase().contains(wanted))
        .filter(|drink| filter == Filter::All || book.offers_of(drink.id).any(|it| filter.takes(ledger, it.id())))
        .collect();
    drinks.sort_by_key(|drink| (drink.name.to_lowercase(), drink.id));
    drinks.into_iter().map(|drink| drink.id).collect()
}

#[component]
fn DrinkCard(id: DrinkId, filter: RwSignal<Filter>) -> impl IntoView {
    let state = AppState::here();
    let name = move || state.book.with(|book| book.name(Key::Drink(id)));
    let kind = move || state.book.with(|book| book.drink(id).map(|drink| words::drink_kind(drink.kind)));
    let offers = Memo::new(move |_| {
        let filter = filter.get();
        let mut offers: Vec<OfferId> = state.book.with(|book| book.offers_of(id).map(|offer| offer.id()).collect());
        state.ledger.with(|ledger| {
            offers.retain(|offer| filter.takes(ledger, *offer));
            offers.sort_by_key(|offer| ledger.get(*offer).and_then(|it| it.as_ref().ok()).map(|it| it.fill.volume));
        });
        offers
    });
    view! {
        <li class="card">
            <a class="card-head" href=Route::Drink(id).address()>
                <h2>{name}</h2>
                <span class="card-kind">{kind}</span>
            </a>
            <ul class="rows">
                <For each=move || offers.get() key=|offer| *offer let(offer)>
                    <OfferRow id=offer />
                </For>
            </ul>
            <Show when=move || offers.with(Vec::is_empty)>
                <p class="hollow">"Not sold in any size yet. Open it to add one."</p>
            </Show>
        </li>
    }
}

/// One size of a drink in a list.
#[component]
pub fn OfferRow(
    /// The offer.
    id: OfferId,
) -> impl IntoView {
    let state = AppState::here();
    let result = state.offer(id);
    let container = move || state.book.with(|book| book.name(Key::Container(id.container)));
    let price = move || match state.book.with(|book| book.offer(id).and_then(|offer| offer.price)) {
        Some(price) => state.money(price),
        None => "no price".into(),
    };
    let cost = move || {
        result.with(|result| {
            let total = result.as_ref()?.as_ref().ok()?.cost.total().ok()?;
            Some(state.money(total))
        })
    };
    let margin = move || result.with(|result| Some(state.percent(result.as_ref()?.as_ref().ok()?.margin()?)));
    let standing =
        Signal::derive(move || result.with(|it| it.as_ref().map_or(Standing::CannotCompute, Standing::from)));
    view! {
        <li>
            <a class="row" href=Route::Offer(id).address()>
                <span class="row-name">{container}</span>
                <span class="row-price">{price}</span>
                <span class="row-small">
                    {move || cost().map(|cost| format!("costs {cost}"))}
                </span>
                <span class="row-margin">{margin}</span>
                <Mark standing />
            </a>
        </li>
    }
}

/// What an empty list teaches: three steps to a first price.
#[component]
fn FirstSteps() -> impl IntoView {
    view! {
        <div class="teach">
            <h2>"Three steps to a first price"</h2>
            <ol>
                <li>
                    <a href=Route::Buying.address()>"Buying"</a>
                    ": what you buy, in which pack, for how much."
                </li>
                <li>
                    <a href=Route::Containers.address()>"Containers"</a>
                    ": the bottles and cups you pour into."
                </li>
                <li>"Here: a drink, what goes in, and the sizes you sell it in."</li>
            </ol>
        </div>
    }
}

fn add_drink(state: AppState) {
    let id = DrinkId::from_random(random());
    let units = state.book.with_untracked(|book| book.settings().units);
    let size = if units.drink_unit() == crate::measure::Unit::Millilitre { 500 } else { 16 };
    let drink = Drink {
        id,
        name: "New drink".into(),
        kind: DrinkKind::Pressed,
        reference: Amount::new(Exact::from(size), units.drink_unit()),
        lines: Vec::new(),
        process_loss: Share::ZERO,
        labour: Labour { batch: Exact::ONE, ..Labour::default() },
        toll: Money::ZERO,
        unsold: None,
        target: None,
    };
    if state.apply("Add a drink", Edit::Put(Record::Drink(drink))).is_ok() {
        go(Route::Drink(id));
    }
}
