//! The drinks of a scenario, each with its sizes beside today's.

use std::sync::Arc;

use leptos::prelude::*;

use super::{changed, offer_of, said};
use crate::book::{DrinkId, Key, Offer, OfferId, ScenarioId};
use crate::drink::ledger::Ledger;
use crate::foundation::jump::Kind;
use crate::say;
use crate::sizes::scenario::is_other;
use crate::ui::fields::{self, Choice, Entry, asks};
use crate::ui::live::{live, press, rows, text, when};
use crate::ui::order;
use crate::ui::parts::{Fold, TakeOut, is_wide};
use crate::ui::state::AppState;

/// Every drink with its sizes, in the scenario or today.
#[component]
pub fn Drinks(
    /// The scenario.
    id: ScenarioId,
    /// What its offers are computed to.
    ledger: Signal<Ledger>,
) -> impl IntoView {
    let state = AppState::here();
    // What is typed into the scenario moves no drink, since a field that moves would lose its caret; another menu of
    // today does.
    let today = Memo::new(move |_| {
        let weekly = state.book.with(|book| book.offers().map(|offer| offer.weekly).collect::<Vec<_>>());
        (state.ledger.get(), weekly)
    });
    let other = Memo::new(move |_| {
        today.track();
        state.book.with_untracked(|book| {
            let offers = book.drinks().flat_map(|drink| order::offers_beside(book, id, drink.id));
            let other = |key: Key| match key {
                Key::Offer(offer) if differs(state, id, ledger, offer) => Some(offer.drink),
                _ => None,
            };
            offers.filter_map(other).collect::<Vec<DrinkId>>()
        })
    });
    let part = move |differs: bool| {
        Memo::new(move |_| {
            let stands = |key: &Key| match key {
                Key::Drink(drink) => other.with(|other| other.contains(drink)) == differs,
                _ => false,
            };
            state.book.with(|book| order::drinks(book).into_iter().filter(stands).collect::<Vec<Key>>())
        })
    };
    let card = move |key| match key {
        Key::Drink(drink) => view! { <Card id drink ledger /> }.into_any(),
        _ => ().into_any(),
    };
    let (different, same) = (part(true), part(false));
    let some = move || {
        let count = text(move || say!(sales::count_drinks, drinks = different.with(Vec::len)));
        view! {
            <Fold name=say!(sales::drinks_that_change) figure=count open=Signal::stored(is_wide())>
                <ul class="cards">{rows(different, card)}</ul>
            </Fold>
        }
        .into_any()
    };
    let count = text(move || say!(sales::count_drinks, drinks = same.with(Vec::len)));
    view! {
        {when(move || !different.with(Vec::is_empty), some)}
        <Fold name=say!(sales::drinks_as_today) figure=count>
            <ul class="cards">{rows(same, card)}</ul>
        </Fold>
    }
}

/// Whether an offer of the scenario is other than today's, as they stand now.
fn differs(state: AppState, id: ScenarioId, ledger: Signal<Ledger>, offer: OfferId) -> bool {
    state.book.with_untracked(|book| {
        state.ledger.with_untracked(|today| {
            ledger.with_untracked(|then| is_other((today, book.offer(offer)), (then, offer_of(book, id, offer))))
        })
    })
}

#[component]
fn Card(id: ScenarioId, drink: DrinkId, ledger: Signal<Ledger>) -> impl IntoView {
    let state = AppState::here();
    let open = RwSignal::new(false);
    let name = text(move || state.book.with(|book| book.name(Key::Drink(drink))));
    let expanded = text(move || open.get().to_string());
    let lines = live(move || {
        let mut keys = state.book.with(|book| order::offers_beside(book, id, drink));
        // A drink that is not open says what differs, or all of it where nothing does.
        state.book.track();
        state.ledger.track();
        ledger.track();
        let differs = |key: &Key| match *key {
            Key::Offer(offer) => differs(state, id, ledger, offer),
            _ => false,
        };
        if !open.get() && keys.iter().any(differs) {
            keys.retain(differs);
        }
        let line = |key: Key| {
            let Key::Offer(offer) = key else { return String::new() };
            state.book.with(|book| {
                let (was, is) = (book.offer(offer), offer_of(book, id, offer));
                state.ledger.with(|today| {
                    ledger.with(|then| said(state, |words| words.offer_beside(offer, (today, was), (then, is))))
                })
            })
        };
        keys.into_iter().map(|key| view! { <li>{line(key)}</li> }).collect_view().into_any()
    });
    let action = text(move || if open.get() { say!(first::close) } else { say!(sales::change) }.to_string());
    let spoken = text(move || {
        let drink = name.get();
        if open.get() { say!(sales::close_drink, drink = drink) } else { say!(sales::change_drink, drink = drink) }
    });
    view! {
        <li class="card">
            <div class="card-head">
                <h3>{name}</h3>
                <button
                    class="quiet"
                    aria-expanded=expanded
                    aria-label=spoken
                    on:click=press(move || open.update(|it| *it = !*it))
                >
                    {action}
                </button>
            </div>
            <ul class="steps">{lines}</ul>
            {when(move || open.get(), move || view! { <Changing id drink /> }.into_any())}
        </li>
    }
}

#[component]
fn Changing(id: ScenarioId, drink: DrinkId) -> impl IntoView {
    let state = AppState::here();
    let offers = Memo::new(move |_| state.book.with(|book| order::scenario_offers(book, id, drink)));
    let free = Signal::derive(move || {
        state.book.with(|book| {
            let free = |key: &Key| match key {
                Key::Container(container) => offer_of(book, id, OfferId { drink, container: *container }).is_none(),
                _ => false,
            };
            let mut options = order::options(book, order::containers(book).into_iter().filter(free).collect());
            options.insert(0, (String::new(), say!(sales::choose_container).to_string()));
            options
        })
    });
    let add = Arc::new(move |chosen: &str| {
        let Some(Key::Container(container)) = Key::from_text(chosen) else { return Ok(()) };
        let of = OfferId { drink, container };
        let edit = state.book.with_untracked(|book| {
            let offer = book.offer(of).cloned().unwrap_or_else(|| Offer::new(of));
            changed(book, id, |it| it.offers.push(offer))
        });
        edit.map_or(Ok(()), |edit| state.apply(say!(sales::size_added), edit))
    });
    let field = move |key| match key {
        Key::Offer(offer) => view! { <Fields id offer /> }.into_any(),
        _ => ().into_any(),
    };
    view! {
        <ul class="scenario-sizes">{rows(offers, field)}</ul>
        <Choice label=say!(sales::add_size) options=free value=Signal::stored(String::new()) choose=add />
    }
}

#[component]
fn Fields(id: ScenarioId, offer: OfferId) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::Container(offer.container))));
    let full = state.book.with_untracked(|book| book.name(Key::Offer(offer)));
    let of = move |show: fn(AppState, &Offer) -> Option<String>| {
        text(move || {
            state.book.with(|book| offer_of(book, id, offer).and_then(|it| show(state, it))).unwrap_or_default()
        })
    };
    let set = move |book: &crate::book::Book, change: &dyn Fn(&mut Offer)| {
        changed(book, id, |it| it.offers.iter_mut().filter(|it| it.id() == offer).for_each(change))
    };
    let take_out = move || {
        let edit = state.book.with_untracked(|book| changed(book, id, |it| it.offers.retain(|it| it.id() != offer)));
        if let Some(edit) = edit {
            // Taking out of a list that holds is not refused.
            let _ = state.apply(say!(sales::size_removed), edit);
        }
    };
    view! {
        <li>
            <div class="scenario-size">
                <strong>{name}</strong>
                <TakeOut name=name on_click=take_out />
            </div>
            <div class="pair">
                <Entry
                    label=say!(sales::menu_price_of, size = &full)
                    asks=asks(Kind::Price, Key::Scenario(id), format!("{offer}/price"))
                    example=say!(common::none_yet)
                    value=of(|state, offer| offer.price.map(|price| state.plain_money(price)))
                    commit=fields::optional_money(say!(sales::scenario_price), fields::Example::MenuPrice, move |book, price| {
                        set(book, &|it| it.price = price)
                    })
                />
                <Entry
                    label=say!(sales::weekly_sales_of, size = &full)
                    example=say!(sales::blank_if_unsure)
                    value=of(|state, offer| offer.weekly.map(|weekly| state.number(weekly)))
                    commit=fields::optional_number(say!(sales::scenario_sales), fields::Example::WeeklySales, move |book, weekly| {
                        set(book, &|it| it.weekly = weekly)
                    })
                />
            </div>
        </li>
    }
}
