//! What if: prices, fills, the target and the cost of ingredients to play with.

use std::sync::Arc;

use leptos::prelude::*;

use super::trying::{Columns, Trying};
use crate::book::{Book, ContainerId, Key, Scope};
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Amount, Dimension, Exact, Money, Share, System, Wanted};
use crate::say;
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
        if tried { say!(sales::crossed_out_is_today) } else { "" }.to_string()
    });
    let nothing = flag(move || trying.columns.with(|columns| columns.then.is_none()));
    let useless = flag(move || trying.hangs.is_unread() || !trying.can_use());
    view! {
        <details class="section more">
            <summary>{say!(sales::what_if)}</summary>
            <div class="tries">
            <p class="about">{say!(sales::about_what_if)}</p>
            {live(move || {
                trying.begun.track();
                view! { <Fields trying /> }.into_any()
            })}
            {trouble(cannot)}
            <p class="hollow" role="status">{said}</p>
            <p class="actions">
                <button class="main" disabled=useless on:click=press(use_it)>
                    {say!(sales::use_changes)}
                </button>
                <button class="button" disabled=nothing on:click=press(anew)>
                    {say!(sales::clear_changes)}
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
    let field = move |key| match key {
        Key::Container(id) => tries_of(state, trying, id, alone),
        _ => ().into_any(),
    };
    let about = if alone { say!(sales::fills_apply) } else { say!(sales::prices_and_fills_apply) };
    let within = move |number: Option<Exact>| {
        let number = number.unwrap_or_default();
        let (least, most) = INGREDIENTS;
        let (least, most) = (Exact::new(i64::from(least), 0), Exact::new(i64::from(most), 0));
        if number < least || number > most {
            let shown = |end| untrack(|| state.number(end));
            return Err(say!(sales::change_too_far, least = shown(least), most = shown(most)));
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
        Scope::Menu => say!(sales::target_of_book),
        Scope::Kind(_) => say!(sales::target_of_kind),
        Scope::Drink(_) => say!(sales::target_of_drink),
    };
    view! {
        <ul class="tries-sizes">{rows(keys, field)}</ul>
        <p class="soft">{about}</p>
        <div class="fields">
            <Slider
                label=say!(sales::ingredient_cost_change)
                ends=INGREDIENTS
                value=Signal::derive(move || percent(trying.ingredients()))
                put=ingredients
                note=say!(sales::about_ingredient_cost)
                hangs
            />
            <Slider
                label=say!(common::target_margin)
                ends=TARGET
                value=Signal::derive(move || percent(trying.target()))
                put=target
                note=of_target
                hangs
            />
        </div>
    }
}

/// What can be tried of one size: its price, or how much all prices go up by, and how full it is.
fn tries_of(state: AppState, trying: Trying, id: ContainerId, alone: bool) -> AnyView {
    let name = state.book.with_untracked(|book| book.name(Key::Container(id)));
    view! {
        <li class="pair">
            <div class="slider">{price_of(state, trying, id, alone, &name)}</div>
            <div class="slider">{fill_of(state, trying, id, &name)}</div>
        </li>
    }
    .into_any()
}

fn price_of(state: AppState, trying: Trying, id: ContainerId, alone: bool, name: &str) -> AnyView {
    let hangs = trying.hangs;
    let take: Take<Exact> =
        Box::new(move |read, visit| trying.take(read, Some(visit), |number| trying.set_price(id, number)));
    let slid: Slid = Arc::new(move |number| {
        // What the slider reaches may still be refused; the columns then say why.
        let _ = trying.take(Ok(Some(number)), None, |number| trying.set_price(id, number));
    });
    let step = Exact::new(5, state.book.with_untracked(|book| book.settings().currency.digits()));
    let ends = untrack(|| trying.price_ends(id));
    let now = Signal::derive(move || trying.price_now(id).map(Money::major).unwrap_or_default());
    let label = if alone { say!(sales::price_of, size = name) } else { say!(sales::raise_of, size = name) };
    let (called, value) = (label.clone(), text(move || trying.price(id)));
    let entry = if alone {
        let asks = asks(Kind::Price, Key::Container(id), "tried/price").while_tried();
        let commit = tried_number("9.50", take);
        view! { <Entry label=called asks hangs value commit /> }.into_any()
    } else {
        // How much more is no price.
        view! { <Entry label=called hangs letters=true value commit=tried_change(take) /> }.into_any()
    };
    view! {
        {entry}
        <Range label ends step value=now slid />
    }
    .into_any()
}

fn fill_of(state: AppState, trying: Trying, id: ContainerId, name: &str) -> AnyView {
    let take: Take<Amount> =
        Box::new(move |read, visit| trying.take(read, Some(visit), |amount| trying.set_fill(id, amount)));
    let slid: Slid = Arc::new(move |number| {
        let poured = Amount::new(number, untrack(|| state.units()).drink_unit());
        let _ = trying.take(Ok(Some(poured)), None, |amount| trying.set_fill(id, amount));
    });
    let step = match untrack(|| state.units()) {
        System::Metric => Exact::ONE,
        System::UsCustomary | System::Imperial => Exact::new(1, 1),
    };
    let ends = untrack(|| trying.fill_ends(id, step));
    let label = say!(sales::fill_of, size = name);
    view! {
        <Entry
            label=label.clone()
            asks=asks(Kind::Size, Key::Container(id), "tried/fill").while_tried()
            hangs=trying.hangs
            value=text(move || trying.fill(id))
            units=units(size)
            commit=tried_amount(size, take)
        />
        <Range label ends step value=Signal::derive(move || trying.fill_now(id)) slid />
    }
    .into_any()
}
