//! What customers see of a change: price, price per ounce, and what others nearby ask.

use leptos::prelude::*;

use super::asking::Asking;
use super::with_answer;
use crate::book::{ContainerId, Key};
use crate::foundation::measure::{Share, Volume};
use crate::say;
use crate::sizes::decision::{Customer, Decision, Position, Tipping};
use crate::sizes::market::Against;
use crate::ui::parts::Section;

/// What customers see.
#[component]
pub fn Customers(asking: Asking) -> impl IntoView {
    let shown = with_answer(asking, move |decision| shown(asking, decision));
    view! { <Section heading=say!(decide::customers_see)>{shown}</Section> }
}

fn shown(asking: Asking, decision: &Decision) -> AnyView {
    let seen =
        facts(asking, decision).into_iter().map(|(name, about, figure)| fact(name, about, figure)).collect_view();
    let unlike = whose(asking, decision).map(|said| view! { <p class="soft">{said}</p> });
    let tips = decision.tipping().map(|tipping| tips(asking, &tipping, decision));
    view! {
        <dl class="facts">{seen}</dl>
        {unlike}
        {tips}
    }
    .into_any()
}

/// The facts that customers see: each with its name, a small line under it, and its figure.
pub fn facts(asking: Asking, decision: &Decision) -> Vec<Fact> {
    let seen = decision.customer().map(|customer| prices(asking, decision, &customer));
    let then =
        decision.rows.iter().filter_map(|row| Some((row.weekly.count(), row.then?))).max_by_key(|(count, _)| *count);
    let nearby = then.and_then(|(_, then)| {
        let size = then.offer.container;
        let position = asking.menu(|menu| Ok(menu.position(size, then.price)?)).ok()??;
        nearby(asking, size, &position)
    });
    seen.into_iter().flatten().chain(nearby).collect()
}

/// Of which drink the facts are, where others differ.
pub fn whose(asking: Asking, decision: &Decision) -> Option<String> {
    let offer = most(decision).filter(|_| !decision.customers_alike())?;
    let drink = asking.state.book.with(|book| book.name(Key::Drink(offer.drink)));
    Some(say!(decide::shown_for, drink = drink))
}

/// The offer with the most buyers.
fn most(decision: &Decision) -> Option<crate::book::OfferId> {
    let mut rows: Vec<_> = decision.rows.iter().filter(|row| row.customer.is_some()).collect();
    rows.sort_by_key(|row| row.weekly.count());
    rows.last().and_then(|row| row.then).map(|then| then.offer)
}

/// A name, a small line under it, and a figure.
pub type Fact = (String, String, String);

/// A fact with a small line under its name.
pub fn fact(name: String, about: String, figure: String) -> AnyView {
    view! {
        <div class="fact">
            <dt>{name} <small>{about}</small></dt>
            <dd>{figure}</dd>
        </div>
    }
    .into_any()
}

/// What most of its buyers face; beside it from what to what that goes, where others face something else.
fn prices(asking: Asking, decision: &Decision, customer: &Customer) -> [Fact; 2] {
    let state = asking.state;
    let per = state.book.with(|book| book.settings().units.price_volume_name());
    let change = |of: fn(&Customer) -> Share| {
        asking.said(|words| words.faced_range(decision, of).unwrap_or_else(|| words.seen_change(of(customer))))
    };
    let price = say!(decide::now_to_then, now = state.money(customer.now), then = state.money(customer.then));
    let (now, then) = (state.money(customer.per_volume_now), state.money(customer.per_volume_then));
    let per_volume = say!(decide::now_to_then, now = now, then = then);
    [
        (say!(common::price).to_string(), change(|customer| customer.change), price),
        (say!(decide::per_labeled, unit = per), change(|customer| customer.per_volume_change), per_volume),
    ]
}

/// What others nearby ask for this size: by the curve through what was seen, or between the lowest and the highest
/// of the same size.
fn nearby(asking: Asking, size: ContainerId, position: &Position) -> Option<Fact> {
    let state = asking.state;
    let name = say!(decide::nearby_at, size = state.book.with(|book| book.name(Key::Container(size))));
    let (seen, figure) = match (position.against, position.at_size) {
        (Ok(Against::Within(on) | Against::Beyond(on)), _) => {
            (position.seen, say!(decide::about_price, price = state.money(on.price)))
        }
        (_, Some((count, low, high))) if low == high => (count, state.money(low)),
        (_, Some((count, low, high))) => {
            (count, say!(decide::price_range, low = state.money(low), high = state.money(high)))
        }
        _ => return None,
    };
    Some((name, say!(decide::from_local_prices, prices = seen), figure))
}

fn tips(asking: Asking, tipping: &Tipping, decision: &Decision) -> AnyView {
    let said = asking.said(|words| words.tipping(tipping, &decision.verdict));
    let mut faced = decision.rows.iter().filter_map(|row| row.customer);
    let resized = faced.any(|customer| customer.more_volume != Volume::ZERO);
    let size = resized.then(|| say!(decide::size_counts_too));
    view! { <p>{said} " " <small class="soft">{size} " " {say!(decide::studies_average)}</small></p> }.into_any()
}
