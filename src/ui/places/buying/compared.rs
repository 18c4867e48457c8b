//! The packs of goods beside each other, by what a usable amount costs out of each.

use leptos::prelude::*;
use web_sys::Element;

use crate::book::{Book, Goods, Pack};
use crate::buying::quotes::{Compared, Usable, compared, usable};
use crate::drink::ledger::OfferError;
use crate::say;
use crate::ui::live::live;
use crate::ui::parts::wide_table;
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

/// The packs of goods beside each other, the cheapest first. Draws nothing if there is only one.
pub fn side_by_side(state: AppState, goods: Goods) -> AnyView {
    let found = Memo::new(move |_| {
        state.book.with(|book| {
            let several = book.packs(goods).len() > 1;
            several.then(|| (usable(book, goods), compared(book, goods), book.packs(goods).to_vec()))
        })
    });
    // A price that is typed draws the table anew: it stays open.
    let open = RwSignal::new(false);
    live(move || {
        let Some((per, compared, packs)) = found.get() else { return ().into_any() };
        state.book.with_untracked(|book| shown(state, book, (goods, per), &compared, &packs, open))
    })
}

fn shown(
    state: AppState,
    book: &Book,
    (goods, per): (Goods, Usable),
    compared: &[Compared],
    packs: &[Pack],
    open: RwSignal<bool>,
) -> AnyView {
    let turned = move |event: leptos::ev::Event| open.set(event_target::<Element>(&event).has_attribute("open"));
    let speaker = &state.speaker.get();
    let (said, what) =
        (words::quotes::current_pack(compared, goods, book, speaker), words::quotes::label_per(per, speaker));
    let bought = packs.first().map(|pack| pack.id);
    let row = |one: &Compared| {
        let pack = packs.iter().find(|pack| pack.id == one.pack)?;
        let (name, above_cheapest) = (words::quotes::pack(pack, speaker), words::quotes::above_cheapest(one, speaker));
        let figures = match one.cost {
            Ok(cost) => view! {
                <td>{state.fine_money(cost)}</td>
                <td>{above_cheapest}</td>
            }
            .into_any(),
            Err(error) => {
                view! { <td colspan="2" class="compared-not">{words::offer_error(&OfferError::Cost(error), book)}</td> }
                    .into_any()
            }
        };
        let age = words::quotes::age_in_column(crate::buying::quotes::age(pack, book.settings(), today()), today());
        let tag =
            (bought == Some(one.pack)).then(|| view! { " " <span class="tag">{say!(goods::current_pack_tag)}</span> });
        Some(view! {
            <tr>
                <th scope="row">
                    {name}
                    {tag}
                </th>
                {figures}
                <td>{age}</td>
            </tr>
        })
    };
    let rows = compared.iter().filter_map(row).collect_view().into_any();
    let heads = &[say!(common::cost), say!(goods::above_lowest), say!(goods::quote_date)];
    view! {
        <div class="compared">
            <p>{said}</p>
            <details class="more" open=open.get_untracked() on:toggle=turned>
                <summary>{say!(goods::packs_compared)}</summary>
                <h3>{what}</h3>
                {wide_table(say!(goods::packs_compared), "table", heads, rows)}
                <p class="about">
                    {say!(goods::packs_compared_about)}
                </p>
            </details>
        </div>
    }
    .into_any()
}
