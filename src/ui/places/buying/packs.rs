//! The packs that goods are quoted in, each in a fold. The first is the one bought now.

use leptos::prelude::*;

use super::compared::side_by_side;
use super::pack::{PackRow, draft};
use crate::book::{Goods, Key, PackId};
use crate::say;
use crate::ui::fields::{Hangs, NewThing, begun};
use crate::ui::live::{parts, press, text};
use crate::ui::parts::Fold;
use crate::ui::random::random;
use crate::ui::state::AppState;

/// The packs that goods are quoted in; goods without one begin with the fields of a first.
#[component]
pub fn Packs(
    /// What is bought.
    goods: Goods,
    /// The fields of its yields, which costs hang on too.
    of_yields: Hangs,
    /// The fields of its packs.
    packs: Hangs,
) -> impl IntoView {
    let state = AppState::here();
    let ids = move || {
        let mut ids: Vec<u64> = state.book.with(|book| book.packs(goods).iter().map(|pack| pack.id.number()).collect());
        ids.extend(begun(state, NewThing::Pack, Some(Key::from(goods))));
        ids
    };
    // The pack whose first field takes the caret.
    let added = StoredValue::new(None::<PackId>);
    let begin = move || {
        let id = PackId::from_random(random());
        draft(goods, id).begin(state);
        id
    };
    let is_new = untrack(ids).is_empty();
    if is_new {
        begin();
    }
    let add = move || added.set_value(Some(begin()));
    let row = move |id| {
        let id = PackId::from_random(id);
        let caret = added.get_value() == Some(id);
        view! { <PackRow goods id of_yields hangs=packs.within() caret /> }.into_any()
    };
    let count = text(move || ids().len().to_string());
    view! {
        <Fold name=say!(goods::packs) figure=count open=true>
            {of_yields.while_read(move || packs.while_read(move || side_by_side(state, goods)))}
            <ol class="packs">
                {parts(ids, row)}
            </ol>
            <button class="button" on:click=press(add)>
                {say!(goods::add_pack)}
            </button>
        </Fold>
    }
}
