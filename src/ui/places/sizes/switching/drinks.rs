//! The drinks of a switch: their prices in the new size, and how many of each earn the same.

use leptos::prelude::*;

use super::asking::Asking;
use crate::app::route::Route;
use crate::book::{DrinkId, Key, OfferId};
use crate::foundation::measure::{Exact, Money};
use crate::say;
use crate::sizes::switching::{DrinkSwitch, Earnings, PriceFrom, Question};
use crate::ui::fields::{Entry, tried_number};
use crate::ui::how::opens;
use crate::ui::live::{live, rows, text};
use crate::ui::parts::{Section, wide_table};
use crate::ui::state::AppState;
use crate::words;
use crate::working::{AtPrice, OfOffer, OfPrice, Shown};

/// A price field for each drink.
#[component]
pub fn Prices(asking: Asking) -> impl IntoView {
    let keys = Memo::new(move |_| {
        let drinks = asking.found().map(|(_, switch)| switch.drinks).unwrap_or_default();
        drinks.into_iter().map(|drink| Key::Drink(drink.drink)).collect()
    });
    let row = move |key| match key {
        Key::Drink(id) => price(asking, id),
        _ => ().into_any(),
    };
    view! {
        <Section heading=say!(decide::new_prices) about=say!(decide::new_prices_about)>
            <ul class="switch-prices">{rows(keys, row)}</ul>
        </Section>
    }
}

fn price(asking: Asking, id: DrinkId) -> AnyView {
    let state = AppState::here();
    let name = state.book.with_untracked(|book| book.name(Key::Drink(id)));
    let value = text(move || {
        let then = asking.drink(id).and_then(|drink| drink.then.ok());
        then.map(|earnings| state.plain_money(earnings.price)).unwrap_or_default()
    });
    let note = text(move || {
        let said = |drink: DrinkSwitch| {
            let now = drink.now.ok().map(|earnings| say!(decide::price_now, price = state.money(earnings.price)));
            let then = drink.then.ok().map(|_| words::switching::price_from(drink.price_from).to_string());
            now.into_iter().chain(then).collect::<Vec<_>>().join(" ")
        };
        asking.drink(id).map(said).unwrap_or_default()
    });
    let commit = tried_number(
        "9.50",
        Box::new(move |read: Result<Option<Exact>, String>, _| {
            let number = read?;
            if number.is_some_and(|number| number.is_zero()) {
                return Err(say!(book::price_above_zero, example = "9.50"));
            }
            asking.prices.update(|prices| {
                prices.retain(|(other, _)| *other != id);
                prices.extend(number.map(|number| (id, Money::from_major(number))));
            });
            Ok(())
        }),
    );
    view! {
        <li>
            <Entry
                label=say!(decide::new_price_of, drink = name)
                hangs=asking.hangs
                example=say!(common::none_yet)
                value=value
                note=note
                commit=commit
            />
        </li>
    }
    .into_any()
}

/// How many of each drink earn the same, and why some have no answer.
#[component]
pub fn Drinks(asking: Asking) -> impl IntoView {
    let state = AppState::here();
    let table = live(move || {
        asking.found().map_or_else(|| ().into_any(), |(question, switch)| shown(state, question, &switch.drinks))
    });
    view! { {table} }
}

fn shown(state: AppState, question: Question, drinks: &[DrinkSwitch]) -> AnyView {
    let name = |id| state.book.with(|book| book.name(Key::Drink(id)));
    let row = |drink: &DrinkSwitch| {
        let left = |earnings: Option<Earnings>, id: OfferId, opened: bool| match earnings {
            Some(earnings) => {
                let figure = state.money(earnings.contribution);
                let how = Shown::Offer(id, OfOffer::At(AtPrice::Asked, OfPrice::Contribution));
                if opened { opens(how, Signal::stored(figure)) } else { figure.into_any() }
            }
            None => say!(common::none).into_any(),
        };
        let units = drink.weekly.filter(|weekly| weekly.is_positive()).unwrap_or(Exact::new(100, 0));
        let speaker = &state.speaker.get();
        let (sell, change) = match drink.answer {
            Some(Ok(answer)) => (
                say!(
                    decide::sell_for,
                    then = words::switching::whole(&answer, units, speaker),
                    now = speaker.number(units)
                ),
                words::switching::change(&answer, speaker),
            ),
            _ => (say!(common::none).to_string(), String::new()),
        };
        let asked_there = drink.price_from == PriceFrom::Asked;
        view! {
            <tr>
                <th scope="row">
                    <a href=Route::Drink(drink.drink).address()>{name(drink.drink)}</a>
                </th>
                <td>{left(drink.now.ok(), question.now(drink.drink), true)}</td>
                <td>{left(drink.then.ok(), question.then(drink.drink), asked_there)}</td>
                <td>
                    {sell} " " <span class="soft">{change}</span>
                </td>
            </tr>
        }
    };
    let why: Vec<String> = drinks.iter().flat_map(|drink| why_not(state, question, drink)).collect();
    let none = why.is_empty();
    let why = why.into_iter().map(|sentence| view! { <p class="trouble">{sentence}</p> }).collect_view();
    let heads = [say!(decide::profit_now), say!(decide::new_size_profit), say!(decide::must_sell)];
    let rows = drinks.iter().map(row).collect_view().into_any();
    view! {
        <div class="cautions" hidden=none>
            {why}
        </div>
        {wide_table(say!(decide::by_drink), "table", &heads, rows)}
    }
    .into_any()
}

/// Why a drink has no answer, and what to mend.
fn why_not(state: AppState, question: Question, drink: &DrinkSwitch) -> Vec<String> {
    state.book.with(|book| {
        let said = |why: &crate::sizes::switching::NoEarnings, container| {
            words::switching::no_earnings(why, drink.drink, container, book)
        };
        match (&drink.now, &drink.then, drink.answer) {
            (Ok(now), Ok(then), Some(Err(losing))) => {
                let (name, containers) = (book.name(Key::Drink(drink.drink)), (question.from, question.to));
                vec![words::switching::losing(losing, &name, (*now, *then), containers, (book, &state.speaker.get()))]
            }
            (now, then, _) => {
                let now = now.as_ref().err().map(|why| said(why, question.from));
                let then = then.as_ref().err().map(|why| said(why, question.to));
                now.into_iter().chain(then).collect()
            }
        }
    })
}
