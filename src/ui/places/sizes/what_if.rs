//! What if: prices, fills, the target and the cost of ingredients to play with.

use std::sync::Arc;

use leptos::prelude::*;

use super::trying::{Columns, Trying};
use crate::book::{Book, Key, Scope};
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Amount, Dimension, Exact, Money, Share, System, Wanted};
use crate::ui::fields::{Entry, Range, Slid, Slider, Take, Try, asks, tried_amount, tried_change, tried_number, units};
use crate::ui::live::{flag, live, press, rows, text, trouble};
use crate::ui::state::AppState;

/// How far the cost of ingredients can be moved, in percent.
const INGREDIENTS: (i32, i32) = (-50, 100);
/// How far the slider of the target goes, in percent.
const TARGET: (i32, i32) = (0, 95);

fn size(book: &Book) -> Wanted {
    Wanted { dimensions: &[Dimension::Volume], unit: book.settings().units.drink_unit() }
}

fn share(percent: Exact) -> Share {
    percent.over(Exact::new(100, 0)).map(Share::from_fraction).unwrap_or_default()
}

fn percent(share: Share) -> Exact {
    share.percent().unwrap_or_default()
}

/// What can be tried.
#[component]
pub fn WhatIf(
    /// What is compared.
    trying: Trying,
) -> impl IntoView {
    let refused = RwSignal::new(None::<String>);
    let use_it = move || refused.set(trying.use_it().err());
    let anew = move || {
        refused.set(None);
        trying.start_anew();
    };
    let cannot = move || {
        let then = trying.columns.with(|columns| match &columns.then {
            Some(Err(error)) => Some(error.clone()),
            Some(Ok((_, stuck))) => stuck.clone(),
            None => None,
        });
        refused.get().or(then)
    };
    let said = text(move || {
        let tried = trying.columns.with(|columns| columns.tried().is_some());
        if tried { "Struck through is today; beside it what you try." } else { "" }.to_string()
    });
    let nothing = flag(move || trying.columns.with(|columns| columns.then.is_none()));
    let useless = flag(move || trying.hangs.is_unread() || !trying.can_use());
    view! {
        <details class="section more">
            <summary>"What if"</summary>
            <div class="tries">
            <p class="about">"Try other prices and fills. Nothing in the book changes until you use it."</p>
            {live(move || {
                trying.begun.track();
                view! { <Fields trying /> }.into_any()
            })}
            {trouble(cannot)}
            <p class="hollow" role="status">{said}</p>
            <p class="actions">
                <button class="main" disabled=useless on:click=press(use_it)>
                    "Use this"
                </button>
                <button class="button" disabled=nothing on:click=press(anew)>
                    "Back to today's"
                </button>
            </p>
            </div>
        </details>
    }
}

#[component]
fn Fields(trying: Trying) -> impl IntoView {
    let state = AppState::here();
    let hangs = trying.hangs;
    let alone = matches!(trying.scope, Scope::Drink(_));
    let keys = Memo::new(move |_| {
        let keys = |columns: &Columns| columns.today().iter().map(|row| Key::Container(row.container)).collect();
        trying.columns.with(keys)
    });
    let field = move |key| {
        let Key::Container(id) = key else { return ().into_any() };
        let name = state.book.with_untracked(|book| book.name(key));
        let price: Take<Exact> =
            Box::new(move |read, visit| trying.take(read, Some(visit), |number| trying.set_price(id, number)));
        let fill: Take<Amount> =
            Box::new(move |read, visit| trying.take(read, Some(visit), |amount| trying.set_fill(id, amount)));
        let slide_price: Slid = Arc::new(move |number| {
            // What the slider reaches may still be refused; the columns then say why.
            let _ = trying.take(Ok(Some(number)), None, |number| trying.set_price(id, number));
        });
        let slide_fill: Slid = Arc::new(move |number| {
            let poured = Amount::new(number, untrack(|| state.units()).drink_unit());
            let _ = trying.take(Ok(Some(poured)), None, |amount| trying.set_fill(id, amount));
        });
        let price_step = Exact::new(5, state.book.with_untracked(|book| book.settings().currency.digits()));
        let fill_step = match untrack(|| state.units()) {
            System::Metric => Exact::ONE,
            System::UsCustomary | System::Imperial => Exact::new(1, 1),
        };
        let (price_ends, fill_ends) = untrack(|| (trying.price_ends(id), trying.fill_ends(id, fill_step)));
        let price_now = Signal::derive(move || trying.price_now(id).map(Money::major).unwrap_or_default());
        let price = if alone { tried_number("9.50", price) } else { tried_change(price) };
        let label = if alone { "price" } else { "all prices up by" };
        let tried = move |kind, field| asks(kind, key, format!("tried/{field}")).while_tried();
        let (called, value) = (format!("{name}: {label}"), text(move || trying.price(id)));
        let price = if alone {
            view! { <Entry label=called asks=tried(Kind::Price, "price") hangs value commit=price /> }.into_any()
        } else {
            // How much more is no price.
            view! { <Entry label=called hangs letters=true value commit=price /> }.into_any()
        };
        view! {
            <li class="pair">
                <div class="slider">
                    {price}
                    <Range
                        label=format!("{name}: {label}")
                        ends=price_ends
                        step=price_step
                        value=price_now
                        slid=slide_price
                    />
                </div>
                <div class="slider">
                    <Entry
                        label=format!("{name}: poured")
                        asks=tried(Kind::Size, "fill")
                        hangs
                        value=text(move || trying.fill(id))
                        units=units(size)
                        commit=tried_amount(size, fill)
                    />
                    <Range
                        label=format!("{name}: poured")
                        ends=fill_ends
                        step=fill_step
                        value=Signal::derive(move || trying.fill_now(id))
                        slid=slide_fill
                    />
                </div>
            </li>
        }
        .into_any()
    };
    let about = if alone {
        "How full a container is poured holds for every drink sold in it."
    } else {
        "Prices move for the drinks compared. How full a container is poured holds for every drink sold in it."
    };
    let within = |number: Option<Exact>| {
        let number = number.unwrap_or_default();
        let (least, most) = INGREDIENTS;
        if number < Exact::new(i64::from(least), 0) || number > Exact::new(i64::from(most), 0) {
            return Err(format!("Type from {least} to {most}, such as 20 for a fifth more."));
        }
        Ok(Some(number))
    };
    let ingredients: Try = Arc::new(move |read, visit| {
        let read = read.and_then(within);
        trying.take(read, visit, |number| trying.set_ingredients(number.map(share).unwrap_or_default()))
    });
    let set_target = move |number: Option<Exact>| trying.set_target(number.map(share));
    let target: Try = Arc::new(move |read, visit| trying.take(read, visit, set_target));
    let of_target = match trying.scope {
        Scope::Menu => "Of the book. A drink that has a target of its own keeps it.",
        Scope::Kind(_) => "Of each drink of this kind.",
        Scope::Drink(_) => "Of this drink.",
    };
    view! {
        <ul class="tries-sizes">{rows(keys, field)}</ul>
        <p class="soft">{about}</p>
        <div class="fields">
            <Slider
                label="Ingredients cost more by"
                ends=INGREDIENTS
                value=Signal::derive(move || percent(trying.ingredients()))
                put=ingredients
                note="Below zero: less. To try only: what suppliers ask is typed in Buying."
                hangs
            />
            <Slider
                label="Target margin"
                ends=TARGET
                value=Signal::derive(move || percent(trying.target()))
                put=target
                note=of_target
                hangs
            />
        </div>
    }
}
