//! The price sheet: drinks by sizes, with what is asked for them. Customers see no gap that is the owner's to
//! fill: a size without a price is an empty cell, and a drink without any is left out.

use leptos::prelude::*;

use super::frame::{Frame, Leaf, bodies};
use crate::app::route::{Place, Route};
use crate::book::{Book, ContainerId, DrinkId, DrinkKind, Key, Offer, OfferId, Scope, Tax};
use crate::drink::label;
use crate::drink::ledger::OfferStatus;
use crate::foundation::measure::Money;
use crate::say;
use crate::ui::fields::Tick;
use crate::ui::live::live;
use crate::ui::order;
use crate::ui::state::AppState;
use crate::words;

/// Sizes that stand side by side; more go on in a table below.
const SIDE_BY_SIDE: usize = 6;

/// What a price sheet shows beside prices.
#[derive(Clone, Copy)]
pub(super) struct Shows {
    pub unit_price: bool,
    pub costs: bool,
}

/// Every drink with its sizes and prices.
#[component]
pub fn Prices() -> impl IntoView {
    let (unit_price, costs) = (RwSignal::new(false), RwSignal::new(false));
    let choices = view! {
        <Tick done=unit_price.into() set=move |is| unit_price.set(is)>
            {say!(counter::unit_price)}
        </Tick>
        <Tick done=costs.into() set=move |is| costs.set(is)>
            {say!(counter::cost_and_margin)}
        </Tick>
    };
    let papers = live(move || paper(Shows { unit_price: unit_price.get(), costs: costs.get() }));
    view! {
        <Frame
            heading=say!(counter::price_sheet)
            back=Route::Drinks
            name=Place::Drinks.name()
            choices=choices.into_any()
        >
            {papers}
        </Frame>
    }
}

fn paper(shows: Shows) -> AnyView {
    let state = AppState::here();
    let mut foot = vec![state.book.with(|book| words::tax(&taxes(book, shows), &state.speaker.get()))];
    if state.book.with(|book| listed(book, shows).any(|id| deposit(book, id).is_positive())) {
        foot.push(say!(counter::deposits_come_back).to_string());
    }
    if shows.unit_price {
        foot.push(words::per_volume_means(state.units()).to_string());
        if state.book.with(|book| book.drinks().any(label::size_includes_ice)) {
            foot.push(say!(counter::iced_sizes_include_ice).to_string());
        }
    }
    if shows.costs {
        let terms = words::cost_basis(state.book.with(|book| book.settings().cost_basis));
        foot.push(say!(counter::owner_terms, terms = terms));
        foot.push(say!(counter::owner_copy).to_string());
    }
    let kinds: Vec<AnyView> = DrinkKind::ALL.iter().flat_map(|kind| kind_tables(state, *kind, shows)).collect();
    let none = match (kinds.is_empty(), state.book.with(|book| book.drinks().next().is_none())) {
        (false, _) => None,
        (true, true) => Some(say!(counter::no_drinks_to_print)),
        (true, false) => Some(say!(counter::no_prices_yet)),
    };
    let none = none.map(|sentence| view! { <p class="hollow">{sentence}</p> });
    view! {
        <Leaf title=say!(counter::prices) foot=foot>
            {none}
            {kinds}
        </Leaf>
    }
    .into_any()
}

/// The sizes that stand on the sheet.
fn listed(book: &Book, shows: Shows) -> impl Iterator<Item = OfferId> {
    book.offers().map(Offer::id).filter(move |id| is_listed(book, *id, shows))
}

/// The taxes of what stands on the sheet, each once; that of the book where nothing does.
fn taxes(book: &Book, shows: Shows) -> Vec<Tax> {
    let mut taxes: Vec<Tax> = Vec::new();
    for drink in listed(book, shows).filter_map(|id| book.drink(id.drink)) {
        let tax = book.settings().tax_of(drink);
        if !taxes.contains(&tax) {
            taxes.push(tax);
        }
    }
    if taxes.is_empty() { vec![book.settings().tax] } else { taxes }
}

/// What a customer pays beside the price of a size, and gets back.
fn deposit(book: &Book, id: OfferId) -> Money {
    book.container(id.container).map_or(Money::ZERO, |container| container.deposit)
}

/// Whether a size stands on the sheet: for customers only with its price.
fn is_listed(book: &Book, id: OfferId, shows: Shows) -> bool {
    book.offer(id).is_some_and(|offer| shows.costs || offer.price.is_some())
}

/// The prices of one kind of drinks, in tables of up to [`SIDE_BY_SIDE`] sizes.
pub(super) fn kind_tables(state: AppState, kind: DrinkKind, shows: Shows) -> Vec<AnyView> {
    let (drinks, sizes) = state.book.with(|book| {
        let listed = |drink: DrinkId, size: ContainerId| is_listed(book, OfferId { drink, container: size }, shows);
        let id = |key| if let Key::Drink(id) = key { Some(id) } else { None };
        let size = |key| if let Key::Container(id) = key { Some(id) } else { None };
        let of_kind: Vec<DrinkId> =
            order::drinks(book).into_iter().filter_map(id).filter(|id| book.belongs(*id, Scope::Kind(kind))).collect();
        let sizes: Vec<ContainerId> = order::containers(book)
            .into_iter()
            .filter_map(size)
            .filter(|size| of_kind.iter().any(|drink| listed(*drink, *size)))
            .collect();
        let drinks: Vec<DrinkId> =
            of_kind.into_iter().filter(|drink| sizes.iter().any(|size| listed(*drink, *size))).collect();
        (drinks, sizes)
    });
    sizes.chunks(SIDE_BY_SIDE).map(|sizes| kind_table(state, kind, &drinks, sizes, shows)).collect()
}

fn kind_table(state: AppState, kind: DrinkKind, drinks: &[DrinkId], sizes: &[ContainerId], shows: Shows) -> AnyView {
    let head = |size: &ContainerId| {
        let name = state.book.with(|book| book.name(Key::Container(*size)));
        view! { <th class="paper-figure" scope="col">{name}</th> }
    };
    let row = |drink: &DrinkId| {
        let name = state.book.with(|book| book.name(Key::Drink(*drink)));
        let cell = |size: &ContainerId| {
            let id = OfferId { drink: *drink, container: *size };
            let listed = state.book.with(|book| is_listed(book, id, shows));
            let lines = if listed { figures(state, id, shows) } else { Vec::new() };
            let line = |(place, said): (usize, String)| {
                let class = if place == 0 { "paper-price" } else { "paper-below soft" };
                view! { <span class=class>{said}</span> }
            };
            view! { <td class="paper-figure">{lines.into_iter().enumerate().map(line).collect_view()}</td> }
        };
        view! {
            <tr class="paper-whole">
                <th scope="row">{name}</th>
                {sizes.iter().map(cell).collect_view()}
            </tr>
        }
        .into_any()
    };
    view! {
        <h2>{words::drink_kind(kind)}</h2>
        <table class="paper-table paper-prices">
            <thead>
                <tr>
                    <th scope="col">{say!(counter::drink)}</th>
                    {sizes.iter().map(head).collect_view()}
                </tr>
            </thead>
            {bodies(drinks.iter().map(row).collect())}
        </table>
    }
    .into_any()
}

/// The figures of a size, its price first, each on a line of its own.
fn figures(state: AppState, id: OfferId, shows: Shows) -> Vec<String> {
    let price = state.book.with(|book| book.offer(id).and_then(|offer| offer.price));
    let without = || words::offer_status(OfferStatus::WithoutPrice).to_string();
    let mut figures = vec![price.map_or_else(without, |price| state.money(price))];
    let deposit = state.book.with(|book| deposit(book, id));
    if deposit.is_positive() {
        figures.push(say!(drinks::plus_deposit, deposit = state.money(deposit)));
    }
    if shows.unit_price {
        let unit_price = state.book.with(|book| label::unit_price(book, book.offer(id)?).ok()?);
        let unit = words::per_volume(state.units());
        figures.extend(unit_price.map(|it| [&*state.unit_price(&it), &unit].join(" ")));
    }
    if shows.costs {
        // On the terms of the margin beside it.
        let cost = state.priced(id, |priced| Some(priced.cost.covered(priced.terms.cost_basis)));
        figures.push(match cost {
            Some(cost) => say!(counter::cost_of, cost = state.money(cost)),
            None => words::offer_status(OfferStatus::CannotCompute).to_string(),
        });
        let margin = state.priced(id, |priced| priced.margin()).map(|margin| state.percent(margin));
        let under = state.status(id).get() == OfferStatus::UnderTarget;
        let under = under.then(|| words::offer_status(OfferStatus::UnderTarget).to_string());
        figures.extend(margin.map(|margin| [Some(margin), under].into_iter().flatten().collect::<Vec<_>>().join(" ")));
    }
    figures
}
