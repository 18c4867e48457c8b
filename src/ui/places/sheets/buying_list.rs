//! The buying list on paper.

use leptos::prelude::*;

use super::frame::bodies;
use crate::buying::buying_list::{Group, Listed, group};
use crate::say;
use crate::ui::live::live;
use crate::ui::state::AppState;
use crate::words;
use crate::words::buying_list::{Buying, supplier};

/// The buying list by supplier, with a box to tick and room to write down what was paid.
#[component]
pub fn BuyingListSheet() -> impl IntoView {
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
            let tables = groups.iter().map(|group| table(&words, group)).collect_view();
            view! {
                <p>{say!(market::made_on, day = words::day(list.day))}</p>
                {tables}
                <p><strong>{say!(market::list_total, total = words.speaker.money(totals.all))}</strong></p>
            }
            .into_any()
        })
    })
}

fn table(words: &Buying, group: &Group) -> AnyView {
    let row = |listed: &Listed| {
        let money = |money: Option<_>| money.map(|money| words.speaker.money(money)).unwrap_or_default();
        let tick = if listed.line.bought { "\u{2611}" } else { "\u{2610}" };
        view! {
            <tr class="paper-whole">
                <th scope="row">
                    {tick} " " {words.goods(listed.line.goods)} " "
                    <span class="soft">{words.packs(listed.line.packs, listed.pack.as_ref())}</span>
                </th>
                <td class="paper-figure">{money(listed.each)}</td>
                <td></td>
                <td class="paper-figure">{money(listed.cost)}</td>
            </tr>
        }
        .into_any()
    };
    let rows = bodies(group.lines.iter().map(row).collect());
    view! {
        <h2>{supplier(group).to_string()}</h2>
        <table class="paper-table">
            <thead>
                <tr>
                    <td></td>
                    <th class="paper-figure" scope="col">{say!(market::quoted)}</th>
                    <th class="paper-figure" scope="col">{say!(market::paid)}</th>
                    <th class="paper-figure" scope="col">{say!(market::total)}</th>
                </tr>
            </thead>
            {rows}
            <tfoot>
                <tr>
                    <th scope="row" colspan="3">
                        {say!(market::total)}
                    </th>
                    <td class="paper-figure">{words.speaker.money(group.totals.all)}</td>
                </tr>
            </tfoot>
        </table>
    }
    .into_any()
}
