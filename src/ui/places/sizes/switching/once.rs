//! What a switch costs once, and when that is back.

use leptos::prelude::*;

use super::asking::Asking;
use crate::foundation::measure::{Exact, Money, Overflow};
use crate::say;
use crate::sizes::switching::{FirstOrder, first_orders, to_pay};
use crate::ui::fields::{Entry, Hangs, tried_number};
use crate::ui::live::{live, text};
use crate::ui::parts::{Section, figures};
use crate::ui::state::AppState;
use crate::words;

/// What it costs once.
#[component]
pub fn Once(asking: Asking) -> impl IntoView {
    let state = AppState::here();
    let (printing, stock) = (RwSignal::new(Money::ZERO), RwSignal::new(Money::ZERO));
    let value = move |money: RwSignal<Money>| {
        text(move || match money.get() {
            none if none.is_zero() => String::new(),
            money => state.plain_money(money),
        })
    };
    let commit = move |money: RwSignal<Money>| {
        let take = move |read: Result<Option<Exact>, String>, _| {
            money.set(Money::from_major(read?.unwrap_or_default()));
            Ok(())
        };
        tried_number("120", Box::new(take))
    };
    let orders = move || {
        let Some(question) = asking.question() else { return Vec::new() };
        state.book.with(|book| first_orders(book, question)).unwrap_or_default()
    };
    let once = move |orders: &[FirstOrder]| -> Result<Money, Overflow> {
        to_pay(orders)?.plus(printing.get())?.plus(stock.get())
    };
    let list = live(move || {
        let orders = orders();
        let said = |order: &FirstOrder| {
            let sentence = state.book.with(|book| words::switching::first_order(order, book, &state.speaker.get()));
            view! { <li>{sentence}</li> }
        };
        if orders.is_empty() {
            view! {
                <p class="hollow">{say!(decide::no_new_packaging)}</p>
            }
            .into_any()
        } else {
            view! { <ul class="steps">{orders.iter().map(said).collect_view()}</ul> }.into_any()
        }
    });
    let hangs = Hangs::new();
    let back = move || {
        let (together, sales) = asking.together()?;
        let once = once(&orders()).ok()?;
        Some(words::switching::payback(&together, asking.kept.get(), once, sales, &state.speaker.get()))
    };
    let shown = move || {
        let once = once(&orders()).map_or_else(words::overflow, |once| state.money(once));
        let mut shown = vec![(say!(decide::one_time_total).to_string(), once, None)];
        shown.extend(back().map(|(weeks, _)| (say!(decide::payback).to_string(), weeks, None)));
        shown
    };
    let formula = text(move || back().map(|(_, formula)| formula).unwrap_or_default());
    let answer = move || {
        view! {
            <dl class="figures">{figures(shown)}</dl>
            <p class="about">{formula}</p>
        }
        .into_any()
    };
    view! {
        <Section heading=say!(decide::one_time_costs) about=say!(decide::one_time_costs_about)>
            {list}
            <div class="fields">
                <Entry label=say!(decide::labels_and_printing) hangs example=say!(common::none) value=value(printing) commit=commit(printing) />
                <Entry label=say!(decide::leftover_stock) hangs example=say!(common::none) value=value(stock) commit=commit(stock) />
            </div>
            {asking.hangs.answer(move || hangs.answer(answer))}
        </Section>
    }
}
