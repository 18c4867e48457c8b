//! Drink against drink: the sizes of a part of the menu beside those of another drink.

use std::sync::Arc;

use leptos::prelude::*;

use crate::app::route::{Route, scope_from_text};
use crate::book::{Key, Offer, OfferId, Scope};
use crate::drink::price::Hands;
use crate::say;
use crate::ui::fields::Choice;
use crate::ui::live::{live, text};
use crate::ui::order;
use crate::ui::parts::{Fold, wide_table};
use crate::ui::places::sizes::asked::scope_options;
use crate::ui::places::sizes::trying::Trying;
use crate::ui::state::AppState;
use crate::words;

/// The fold with another drink to choose, and the figures of both.
#[component]
pub fn Beside(
    /// What is compared.
    trying: Trying,
) -> impl IntoView {
    let Scope::Drink(first) = trying.scope else { return ().into_any() };
    let state = AppState::here();
    let other = trying.beside;
    let options = Signal::derive(move || {
        state.book.with(|book| {
            let drinks = order::sold_drinks(book).into_iter().filter_map(|key| match key {
                Key::Drink(id) if id != first => Some(Scope::Drink(id)),
                _ => None,
            });
            let mut options = scope_options(book, drinks);
            options.insert(0, (String::new(), say!(sales::choose_drink).to_string()));
            options
        })
    });
    let choose = Arc::new(move |chosen: &str| {
        other.set(chosen.to_string());
        Ok(())
    });
    let figure = text(move || {
        let chosen = scope_from_text(&other.get());
        chosen.map(|chosen| state.book.with(|book| words::scope(chosen, book))).unwrap_or_default()
    });
    let table = live(move || match scope_from_text(&other.get()) {
        Some(Scope::Drink(second)) => {
            let rows = state.book.with(|book| {
                let of = |drink| order::offers(book, drink).into_iter();
                of(first)
                    .chain(of(second))
                    .filter_map(|key| if let Key::Offer(id) = key { book.offer(id).cloned() } else { None })
                    .collect::<Vec<Offer>>()
            });
            let rows = rows.into_iter().map(|offer| row(state, offer.id())).collect_view().into_any();
            let heads = [
                say!(common::price),
                say!(drinks::profit_that_changes),
                say!(common::full_cost),
                say!(common::profit_per_drink),
            ];
            wide_table(say!(sales::beside_drink), "table", &heads, rows)
        }
        _ => ().into_any(),
    });
    let as_in_book =
        text(move || if trying.is_trying() { say!(sales::beside_as_in_book).to_string() } else { String::new() });
    view! {
        <Fold name=say!(sales::beside_drink) figure late=true>
            <Choice label=say!(sales::choose_drink) options value=other choose />
            <p class="hollow">{as_in_book}</p>
            {table}
        </Fold>
    }
    .into_any()
}

/// The figures of one drink in a size.
fn row(state: AppState, id: OfferId) -> AnyView {
    let name = state.book.with(|book| book.name(Key::Offer(id)));
    let none = || say!(common::none).to_string();
    let money = |read: Option<String>| read.unwrap_or_else(none);
    let asked = |read: &dyn Fn(&crate::drink::price::Asked) -> String| {
        money(state.priced(id, |priced| priced.asked.map(|asked| read(&asked))))
    };
    let changes = state.priced(id, |priced| priced.profit_that_changes(Hands::Counted).ok().flatten());
    let cost = state.priced(id, |priced| Some(priced.cost.total()));
    view! {
        <tr>
            <th scope="row">
                <a href=Route::Offer(id).address()>{name}</a>
            </th>
            <td>{asked(&|asked| state.money(asked.menu))}</td>
            <td>{money(changes.map(|money| state.money(money)))}</td>
            <td>{money(cost.map(|cost| state.money(cost)))}</td>
            <td>{asked(&|asked| state.money(asked.contribution))}</td>
        </tr>
    }
    .into_any()
}
