//! What goods cost now, out of the pack that is bought now: the answer of their page, in view while
//! packs and yields are typed.

use leptos::prelude::*;

use super::heard::heard_on;
use super::usable;
use crate::book::{Book, Goods, Pack};
use crate::say;
use crate::ui::fields::Hangs;
use crate::ui::live::{text, when};
use crate::ui::parts::{Named, figures};
use crate::ui::state::AppState;
use crate::words;

/// What a usable amount costs, and the pack that is bought now. Draws nothing without a pack.
pub fn cost_now(state: AppState, goods: Goods, of_yields: Hangs, packs: Hangs) -> AnyView {
    let pack = move || state.book.with(|book| book.packs(goods).first().cloned());
    let bought = text(move || pack().map(|pack| bought_now(state, &pack)).unwrap_or_default());
    let costs = move || of_yields.answer(move || packs.answer(move || costs(state, goods)));
    when(
        move || pack().is_some(),
        move || {
            view! {
                <section class="answer-bar goods-cost">
                    <h2 class="unseen">{say!(common::cost)}</h2>
                    {costs()}
                    <p class="soft">{bought} " " {heard_on(state, pack, words::quotes::age)}</p>
                </section>
            }
            .into_any()
        },
    )
}

fn costs(state: AppState, goods: Goods) -> AnyView {
    let found = move |book: &Book| -> Option<Vec<Named>> {
        let pack = book.packs(goods).first()?;
        match goods {
            Goods::Ingredient(id) => Some(usable::costs(state, &*book.ingredient_now(id)?, pack)),
            Goods::Packaging(_) => Some(usable::piece(state, goods, pack).into_iter().collect()),
        }
    };
    let list = move || state.book.with(found).unwrap_or_default();
    view! { <dl class="figures">{figures(list)}</dl> }.into_any()
}

/// "Tansywold Produce, 40 lb: $38.00,", before the day on which that was quoted.
fn bought_now(state: AppState, pack: &Pack) -> String {
    let name = words::quotes::pack(pack, &state.speaker.get());
    let said = say!(goods::pack_bought_now, pack = name, price = state.money(pack.price_now()));
    [&said, ","].concat()
}
