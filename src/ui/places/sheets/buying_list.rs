//! The buying list on paper.

use std::cell::Cell;

use leptos::prelude::*;

use super::frame::bodies;
use crate::buying::buying_list::{Group, Listed, group};
use crate::say;
use crate::ui::fields::Tick;
use crate::ui::live::{flag, live};
use crate::ui::state::AppState;
use crate::words;
use crate::words::buying_list::{Buying, supplier};

thread_local! {
    static WITH_PRICES: Cell<bool> = const { Cell::new(false) };
}

/// Whether the list is printed and shared with its prices: what was last chosen, as long as the app is open.
pub fn with_prices() -> RwSignal<bool> {
    let chosen = RwSignal::new(WITH_PRICES.get());
    Effect::new(move |_| WITH_PRICES.set(chosen.get()));
    chosen
}

/// The choice whether prices stand on it.
pub fn prices_choice(prices: RwSignal<bool>) -> AnyView {
    view! {
        <Tick done=flag(move || prices.get()) set=move |with| prices.set(with)>
            {say!(market::include_prices)}
        </Tick>
    }
    .into_any()
}

/// The buying list by supplier, with a box to tick and room to write down what was paid.
#[component]
pub fn BuyingListSheet(
    /// Whether what was quoted stands on it.
    prices: RwSignal<bool>,
) -> impl IntoView {
    let state = AppState::here();
    live(move || {
        state.book.with(|book| {
            let Some(list) = book.buying_list() else {
                return view! { <p class="hollow">{say!(market::no_list_to_print)}</p> }.into_any();
            };
            let (groups, totals) = match group(book, list) {
                Ok(grouped) => grouped,
                Err(error) => return view! { <p class="trouble">{words::overflow(error)}</p> }.into_any(),
            };
            let words = Buying { book, speaker: &state.speaker.get() };
            let prices = prices.get();
            let tables = groups.iter().map(|group| table(&words, group, prices)).collect_view();
            let all = say!(market::list_total, total = words.speaker.money(totals.all));
            view! {
                <p>{say!(market::made_on, day = words::day(list.day))}</p>
                {tables}
                {prices.then(|| view! { <p><strong>{all}</strong></p> })}
            }
            .into_any()
        })
    })
}

fn table(words: &Buying, group: &Group, prices: bool) -> AnyView {
    let row = |listed: &Listed| {
        let cell = |money: Option<_>| {
            let money = money.map(|money| words.speaker.money(money)).unwrap_or_default();
            prices.then(|| view! { <td class="paper-figure">{money}</td> })
        };
        let tick = if listed.line.bought { "\u{2611}" } else { "\u{2610}" };
        view! {
            <tr class="paper-whole">
                <th scope="row">
                    {tick} " " {words.goods(listed.line.goods)} " "
                    <span class="soft">{words.packs(listed.line.packs, listed.pack.as_ref())}</span>
                </th>
                {cell(listed.each)}
                <td></td>
                {cell(listed.cost)}
            </tr>
        }
        .into_any()
    };
    let rows = bodies(group.lines.iter().map(row).collect());
    let head = |name: &'static str| view! { <th class="paper-figure" scope="col">{name}</th> };
    let total = prices.then(|| {
        view! {
            <tfoot>
                <tr>
                    <th scope="row" colspan="3">
                        {say!(market::total)}
                    </th>
                    <td class="paper-figure">{words.speaker.money(group.totals.all)}</td>
                </tr>
            </tfoot>
        }
    });
    view! {
        <h2>{supplier(group).to_string()}</h2>
        <table class="paper-table">
            <thead>
                <tr>
                    <td></td>
                    {prices.then(|| head(say!(market::quoted)))}
                    {head(say!(market::paid))}
                    {prices.then(|| head(say!(market::total)))}
                </tr>
            </thead>
            {rows}
            {total}
        </table>
    }
    .into_any()
}
