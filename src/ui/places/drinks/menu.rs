//! The drinks of a list, by kind: a table with a column for each size where there is room, else each
//! drink with its sizes as tags.

use leptos::prelude::*;

use super::list::Filter;
use crate::app::route::Route;
use crate::book::{ContainerId, DrinkId, DrinkKind, Key, OfferId};
use crate::say;
use crate::ui::live::{flag, live, rows, text};
use crate::ui::order;
use crate::ui::parts::Mark;
use crate::ui::state::AppState;
use crate::words;

/// The drinks that are listed, by kind.
pub fn menu(state: AppState, listed: Memo<Vec<Key>>, filter: RwSignal<Filter>) -> AnyView {
    let shown = text(move || {
        let margin = words::margin_on(state.book.with(|book| book.settings().cost_basis));
        if listed.with(Vec::is_empty) { String::new() } else { say!(first::margin_and_sold, margin = margin) }
    });
    view! {
        <p class="hollow menu-about">{shown}</p>
        {DrinkKind::ALL.iter().map(|kind| of_kind(state, *kind, listed, filter)).collect_view()}
    }
    .into_any()
}

/// The columns of a table: the containers that any of its sizes is sold in.
type Columns = Memo<Vec<Key>>;

fn of_kind(state: AppState, kind: DrinkKind, listed: Memo<Vec<Key>>, filter: RwSignal<Filter>) -> AnyView {
    let drinks = Memo::new(move |_| {
        let of_kind = |key: &Key| match key {
            Key::Drink(id) => state.book.with(|book| book.drink(*id).is_some_and(|drink| drink.kind == kind)),
            _ => false,
        };
        listed.get().into_iter().filter(of_kind).collect()
    });
    let columns = Memo::new(move |_| {
        let filter = filter.get();
        let mut columns = state.book.with(order::containers);
        columns.retain(|key| {
            let Key::Container(container) = key else { return false };
            drinks
                .with(|drinks: &Vec<Key>| drinks.iter().any(|drink| cell(state, *drink, *container, filter).is_some()))
        });
        columns
    });
    let heads = live(move || {
        let head = |key| view! { <th scope="col" role="columnheader">{state.book.with(|book| book.name(key))}</th> };
        columns.get().into_iter().map(head).collect_view().into_any()
    });
    let none = flag(move || drinks.with(Vec::is_empty));
    view! {
        <table class="menu" role="table" hidden=none>
            <caption>
                <h2>{words::drink_kind(kind)}</h2>
            </caption>
            <thead role="rowgroup">
                <tr role="row">
                    <td role="cell"></td>
                    {heads}
                </tr>
            </thead>
            <tbody role="rowgroup">{rows(drinks, move |key| drink(state, key, columns, filter))}</tbody>
        </table>
    }
    .into_any()
}

/// The size of a drink in a container, where it is sold and shown.
fn cell(state: AppState, drink: Key, container: ContainerId, filter: Filter) -> Option<OfferId> {
    let Key::Drink(drink) = drink else { return None };
    let offer = OfferId { drink, container };
    let sold = state.book.with(|book| book.offer(offer).is_some());
    (sold && state.ledger.with(|ledger| filter.takes(ledger, offer))).then_some(offer)
}

fn drink(state: AppState, key: Key, columns: Columns, filter: RwSignal<Filter>) -> AnyView {
    let Key::Drink(id) = key else { return ().into_any() };
    let name = text(move || state.book.with(|book| book.name(key)));
    let cells = Memo::new(move |_| {
        let filter = filter.get();
        let cell = |column| match column {
            Key::Container(container) => cell(state, key, container, filter),
            _ => None,
        };
        columns.get().into_iter().map(cell).collect::<Vec<_>>()
    });
    let cells = live(move || {
        let cells = cells.get();
        if cells.iter().all(Option::is_none) {
            return none(state, id);
        }
        let drawn = |cell: Option<OfferId>| {
            view! { <td role="cell">{cell.map(|id| size_tag(state, id))}</td> }
        };
        cells.into_iter().map(drawn).collect_view().into_any()
    });
    view! {
        <tr role="row">
            <th scope="row" role="rowheader">
                <a href=Route::Drink(id).address()>{name}</a>
            </th>
            {cells}
        </tr>
    }
    .into_any()
}

/// What stands beside a drink without sizes.
fn none(state: AppState, id: DrinkId) -> AnyView {
    let sizes = state.book.with(|book| book.offers_of(id).next().is_some());
    let said = if sizes { "" } else { say!(first::drink_without_sizes) };
    view! {
        <td role="cell" colspan="99" class="soft">
            {said}
        </td>
    }
    .into_any()
}

/// One size of a drink: its price, where it stands, its margin and how many are sold.
pub fn size_tag(state: AppState, id: OfferId) -> AnyView {
    let container = text(move || state.book.with(|book| book.name(Key::Container(id.container))));
    let price = text(move || match state.book.with(|book| book.offer(id).and_then(|offer| offer.price)) {
        Some(price) => state.money(price),
        None => say!(first::no_price).to_string(),
    });
    let brings = text(move || {
        let margin = state.priced(id, |priced| Some(state.margin(priced.margin()?, priced.terms.target)));
        let sold = state.book.with(|book| book.offer(id)?.weekly).map(|sold| state.number(sold));
        margin.into_iter().chain(sold).collect::<Vec<_>>().join(" · ")
    });
    view! {
        <a class="size-tag" href=Route::Offer(id).address()>
            <span class="size-name">{container}</span>
            <span class="size-price">{price}</span>
            <span class="size-brings">{brings}</span>
            <Mark status=state.status(id) />
        </a>
    }
    .into_any()
}
