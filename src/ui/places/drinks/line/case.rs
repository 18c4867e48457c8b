//! An ingredient of a recipe that has no case price yet: the case is typed right at its line.

use leptos::prelude::*;

use super::line_of;
use crate::book::{DrinkId, Goods, LineId};
use crate::say;
use crate::ui::fields::Hangs;
use crate::ui::live::{live, press};
use crate::ui::places::buying::{costs_nothing, first_case};
use crate::ui::state::AppState;

/// A press that opens the fields of the first case, while there is none; once open they stay.
pub(super) fn without_case(state: AppState, drink: DrinkId, line: LineId, hangs: Hangs) -> AnyView {
    let ingredient = Memo::new(move |_| state.book.with(|book| line_of(book, drink, line).map(|it| it.ingredient)));
    let is_open = RwSignal::new(false);
    let has_none = Memo::new(move |_| {
        let none = |id| state.book.with(|book| book.packs(Goods::Ingredient(id)).is_empty());
        ingredient.get().is_some_and(none)
    });
    live(move || {
        let Some(id) = ingredient.get() else { return ().into_any() };
        if is_open.get() {
            return untrack(|| first_case(Goods::Ingredient(id), hangs, true));
        }
        if !has_none.get() {
            return ().into_any();
        }
        let name = state.book.with_untracked(|book| book.name(Goods::Ingredient(id).into()));
        let label = say!(goods::add_case_price_of, name = name);
        view! {
            <p class="actions">
                <button class="button" type="button" aria-label=label on:click=press(move || is_open.set(true))>
                    {say!(goods::add_case_price)}
                </button>
            </p>
            {costs_nothing(state, id)}
        }
        .into_any()
    })
}
