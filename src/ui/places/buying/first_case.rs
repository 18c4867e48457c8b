//! Where goods have no case yet, the fields of the first stand right there.

use leptos::prelude::*;

use super::case::{Caret, case_fields};
use super::pack::{addition, draft};
use crate::book::{Goods, IngredientId, Key, PackId};
use crate::buying::starter::{OwnSupply, free_pack, own_supply};
use crate::say;
use crate::ui::fields::{Field, Hangs, NewThing, begun};
use crate::ui::live::{live, press, text};
use crate::ui::random::random;
use crate::ui::starter;
use crate::ui::state::AppState;
use crate::ui::today::today;

/// The fields of the first case of goods: of the one that is bought now, or of a new one. With `caret`, the first
/// field that is empty takes the caret.
pub fn first_case(goods: Goods, hangs: Hangs, caret: bool) -> AnyView {
    let state = AppState::here();
    let bought = state.book.with_untracked(|book| book.packs(goods).first().map(|pack| pack.id));
    let waiting = || untrack(|| begun(state, NewThing::Pack, Some(Key::from(goods)))).first().copied();
    let case = bought.or_else(|| waiting().map(PackId::from_random)).unwrap_or_else(|| begin(state, goods));
    let suggested = untrack(|| draft(goods, case).text(state, Field::PackSize));
    let caret = match caret {
        true if suggested.is_empty() && bought.is_none() => Caret::Contents,
        true => Caret::Price,
        false => Caret::None,
    };
    let new = addition(goods, case);
    let in_book = move || {
        let pack = state.book.with(|book| book.packs(goods).iter().find(|pack| pack.id == case).cloned());
        pack.map(|pack| state.amount(pack.contents))
    };
    let note = text(move || {
        let now = in_book().unwrap_or_else(|| draft(goods, case).text(state, Field::PackSize));
        let usual = !suggested.is_empty() && now == suggested;
        if usual { say!(setup::usual_case).to_string() } else { String::new() }
    });
    let missing = is_missing(state, goods);
    let own = match goods {
        Goods::Ingredient(id) => costs_nothing(state, id),
        Goods::Packaging(_) => ().into_any(),
    };
    view! {
        <div class="pair">{case_fields(goods, case, &new, hangs, caret, note)}</div>
        {missing}
        {own}
    }
    .into_any()
}

/// Begins the first case of goods, with the usual contents where the starter list is here and knows them.
fn begin(state: AppState, goods: Goods) -> PackId {
    let new = PackId::from_random(random());
    let case = draft(goods, new);
    case.begin(state);
    if let Goods::Ingredient(id) = goods {
        let row = untrack(|| state.book.with(|book| book.ingredient(id).and_then(starter::row_of)));
        let usual = row.and_then(|row| row.contents(untrack(|| state.units())));
        if let Some(usual) = usual {
            case.set(state, Field::PackSize, &untrack(|| state.amount(usual)));
        }
    }
    new
}

/// Says quietly that goods wait for their case.
fn is_missing(state: AppState, goods: Goods) -> AnyView {
    let waits = move || state.book.with(|book| book.packs(goods).is_empty());
    live(move || {
        if !waits() {
            return ().into_any();
        }
        view! { <p class="hollow">{say!(setup::case_price_missing)}</p> }.into_any()
    })
}

/// For ice and water, the press that says that they come from the shop itself. Draws nothing for all else.
pub fn costs_nothing(state: AppState, id: IngredientId) -> AnyView {
    let own = Memo::new(move |_| state.book.with(|book| own_supply(book, id)));
    live(move || {
        let name = match own.get() {
            Some(OwnSupply::Ice) => say!(goods::own_ice),
            Some(OwnSupply::Water) => say!(goods::own_water),
            None => return ().into_any(),
        };
        let take = move || {
            let goods = Goods::Ingredient(id);
            let waiting = untrack(|| begun(state, NewThing::Pack, Some(Key::from(goods))));
            // A case whose fields stand there is the one that costs nothing.
            let new = PackId::from_random(waiting.first().copied().unwrap_or_else(random));
            for case in waiting {
                draft(goods, PackId::from_random(case)).discard(state);
            }
            let edit = state.book.with_untracked(|book| free_pack(book, id, new, today()));
            // A pack of something that costs nothing is never refused.
            let _ = edit.map(|edit| state.apply(name, edit));
        };
        view! {
            <p class="actions">
                <button class="button" type="button" on:click=press(take)>
                    {name}
                </button>
            </p>
        }
        .into_any()
    })
}
