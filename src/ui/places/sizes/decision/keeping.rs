//! What a change makes to train, to keep and to pay once.

use leptos::prelude::*;

use super::asking::Asking;
use super::customer::fact;
use crate::foundation::measure::Exact;
use crate::say;
use crate::sizes::decision::FirstOrder;
use crate::ui::live::{live, text};
use crate::ui::parts::{Fold, is_wide};
use crate::words;

/// Cards, kinds and stock, and what it costs once.
#[component]
pub fn Keeping(asking: Asking) -> impl IntoView {
    let state = asking.state;
    let kept = Memo::new(move |_| asking.kept());
    let cards = text(move || {
        let said = |now: usize, then: usize| say!(decide::cards_now_then, now = words::count(now), then = then);
        kept.get().map(|(now, then)| said(now.cards, then.cards)).unwrap_or_default()
    });
    let facts = live(move || {
        let Some((now, then)) = kept.get() else { return ().into_any() };
        let both = |name: &'static str, now: String, then: String| {
            fact(name.to_string(), String::new(), say!(decide::now_to_then, now = now, then = then))
        };
        let count = |count: usize| words::count(count);
        let lasts = |weeks: Option<Exact>| asking.said(|words| words.lasts(weeks));
        view! {
            <dl class="facts">
                {both(say!(common::recipe_cards), count(now.cards), count(then.cards))}
                {both(say!(decide::container_types), count(now.vessels), count(then.vessels))}
                {both(say!(decide::lid_types), count(now.closures), count(then.closures))}
                {both(say!(decide::opening_stock), state.money(now.cash), state.money(then.cash))}
                {both(say!(decide::weeks_of_stock), lasts(now.weeks), lasts(then.weeks))}
            </dl>
            <p class="soft">{say!(decide::stock_of_menu)}</p>
        }
        .into_any()
    });
    let once = Memo::new(move |_| asking.once().ok());
    let figure = text(move || {
        let Some((decision, (_, cost))) = asking.decided().zip(once.get()) else { return String::new() };
        let Ok(payback) = decision.payback(asking.share(), cost) else { return String::new() };
        let payback = asking.said(|words| words.payback(&payback));
        say!(decide::one_time_figure, cost = state.money(cost), payback = payback)
    });
    let orders = live(move || {
        let Some((found, _)) = once.get() else { return ().into_any() };
        let order = |order: &FirstOrder| asking.said(|words| words.first_order(order));
        let lines: Vec<String> = found
            .orders
            .iter()
            .map(order)
            .chain(found.left_over.iter().map(|left| asking.said(|words| words.left_over(left))))
            .collect();
        if lines.is_empty() {
            return view! { <p class="soft">{say!(decide::no_new_packaging)}</p> }.into_any();
        }
        view! { <ul class="steps">{lines.into_iter().map(|line| view! { <li>{line}</li> }).collect_view()}</ul> }
            .into_any()
    });
    let wide = Signal::stored(is_wide());
    view! {
        <div class="folds">
            <Fold name=say!(decide::what_to_keep) figure=cards open=wide>{facts}</Fold>
            <Fold name=say!(decide::one_time_costs) figure=figure>{orders}</Fold>
        </div>
    }
}
