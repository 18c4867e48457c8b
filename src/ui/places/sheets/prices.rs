//! The price sheet: every drink with its sizes and what is asked for them.

use leptos::prelude::*;

use super::frame::{Frame, Leaf};
use crate::app::route::{Place, Route};
use crate::book::{Book, DrinkId, DrinkKind, Key, OfferId, Scope};
use crate::drink::label;
use crate::drink::ledger::OfferStatus;
use crate::say;
use crate::ui::fields::Tick;
use crate::ui::live::live;
use crate::ui::order;
use crate::ui::state::AppState;
use crate::words;

/// What a price sheet shows beside prices.
#[derive(Clone, Copy)]
struct Shows {
    unit_price: bool,
    costs: bool,
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
    let mut foot = vec![state.book.with(|book| words::tax(book.settings().tax, &state.speaker.get()))];
    if shows.unit_price {
        foot.push(words::per_volume_means(state.units()).to_string());
        if state.book.with(|book| book.drinks().any(label::size_includes_ice)) {
            foot.push(say!(counter::iced_sizes_include_ice).to_string());
        }
    }
    if shows.costs {
        foot.push(say!(counter::owner_copy).to_string());
    }
    let none = state.book.with(|book| book.drinks().next().is_none());
    let none = none.then(|| view! { <p class="hollow">{say!(counter::no_drinks_to_print)}</p> });
    let kinds = DrinkKind::ALL.iter().map(|kind| kind_table(state, *kind, shows)).collect_view();
    view! {
        <Leaf title=say!(counter::prices) foot=foot>
            {none}
            {kinds}
        </Leaf>
    }
    .into_any()
}

fn kind_table(state: AppState, kind: DrinkKind, shows: Shows) -> Option<AnyView> {
    let of_kind = |book: &Book| -> Vec<DrinkId> {
        let id = |key| if let Key::Drink(id) = key { Some(id) } else { None };
        let drinks = order::drinks(book).into_iter().filter_map(id);
        drinks.filter(|id| book.belongs(*id, Scope::Kind(kind))).collect()
    };
    let drinks = state.book.with(of_kind);
    if drinks.is_empty() {
        return None;
    }
    let per_volume = words::per_volume(state.units());
    let head = |shown: bool, name: String| shown.then(|| view! { <th class="paper-figure" scope="col">{name}</th> });
    let rows = drinks.into_iter().map(|drink| drink_rows(state, drink, shows)).collect_view();
    let table = view! {
        <h2>{words::drink_kind(kind)}</h2>
        <table class="paper-table paper-prices">
            <thead>
                <tr>
                    <th scope="col">{say!(counter::drink)}</th>
                    <th scope="col">{say!(common::size)}</th>
                    {head(true, say!(common::price).into())}
                    {head(shows.unit_price, per_volume)}
                    {head(shows.costs, say!(common::cost).into())}
                    {head(shows.costs, say!(common::margin).into())}
                    {head(shows.costs, say!(counter::target).into())}
                </tr>
            </thead>
            {rows}
        </table>
    };
    Some(table.into_any())
}

/// A drink with a row for each of its sizes, which belong together.
fn drink_rows(state: AppState, drink: DrinkId, shows: Shows) -> AnyView {
    let name = state.book.with(|book| book.name(Key::Drink(drink)));
    let sizes = state.book.with(|book| order::offers(book, drink));
    if sizes.is_empty() {
        return view! {
            <tbody class="paper-whole">
                <tr>
                    <th scope="row">{name}</th>
                    <td>{say!(counter::no_size_yet)}</td>
                </tr>
            </tbody>
        }
        .into_any();
    }
    let lines = sizes.len().to_string();
    let mut name = Some(view! { <th scope="rowgroup" rowspan=lines>{name}</th> });
    let rows = sizes.into_iter().filter_map(|key| if let Key::Offer(id) = key { Some(id) } else { None });
    let rows = rows.map(|id| {
        let cells = figures(state, id, shows).into_iter();
        let cell = |(figure, besides): (String, &'static str)| {
            view! {
                <td class="paper-figure">
                    {figure} " " <span class="soft">{besides}</span>
                </td>
            }
        };
        let cells = cells.map(cell).collect_view();
        let size = state.book.with(|book| book.name(Key::Container(id.container)));
        view! {
            <tr>
                {name.take()}
                <td>{size}</td>
                {cells}
            </tr>
        }
    });
    view! { <tbody class="paper-whole">{rows.collect_view()}</tbody> }.into_any()
}

/// The figures of a size, from its price on, and what is said of each besides.
fn figures(state: AppState, id: OfferId, shows: Shows) -> Vec<(String, &'static str)> {
    let or_none = |figure: Option<String>| figure.unwrap_or_else(|| "–".to_string());
    let price = state.book.with(|book| book.offer(id).and_then(|offer| offer.price));
    let no_price = if price.is_none() { words::offer_status(OfferStatus::WithoutPrice) } else { "" };
    let mut figures = vec![(or_none(price.map(|price| state.money(price))), no_price)];
    if shows.unit_price {
        let unit_price = state.book.with(|book| label::unit_price(book, book.offer(id)?).ok()?);
        figures.push((or_none(unit_price.map(|it| state.unit_price(&it))), ""));
    }
    if shows.costs {
        let cost = state.priced(id, |priced| priced.cost.total().ok());
        let stuck = if cost.is_none() { words::offer_status(OfferStatus::CannotCompute) } else { "" };
        figures.push((or_none(cost.map(|cost| state.money(cost))), stuck));
        let margin = state.priced(id, |priced| priced.margin());
        let under = state.status(id).get() == OfferStatus::UnderTarget;
        let under = if under { words::offer_status(OfferStatus::UnderTarget) } else { "" };
        figures.push((or_none(margin.map(|margin| state.percent(margin))), under));
        let target = state.priced(id, |priced| Some(priced.terms.target));
        figures.push((or_none(target.map(|target| state.percent(target))), ""));
    }
    figures
}
