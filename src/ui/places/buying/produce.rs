//! What an ingredient is called, here and on labels, and whether it is fruit or vegetable and treated.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::ingredient_changed;
use crate::book::{IngredientId, Produce as Said};
use crate::drink::label::Law;
use crate::say;
use crate::ui::fields::{self, Choice, Entry};
use crate::ui::live::text;
use crate::ui::parts::Fold;
use crate::ui::state::AppState;
use crate::words;

/// What an ingredient is called, here and on labels, and whether it is fruit or vegetable and treated.
#[component]
pub fn Produce(
    /// The ingredient.
    id: IngredientId,
    /// Whether it stands open at first.
    open: bool,
    /// The field of its name.
    children: Children,
) -> impl IntoView {
    let state = AppState::here();
    let law = state.book.with_untracked(|book| Law::of(book.settings()));
    let all = [None, Some(Said::Raw), Some(Said::Treated), Some(Said::Neither)];
    let options = all.map(|said| (format!("{said:?}"), words::produce(said, law).to_string())).to_vec();
    let value = text(move || {
        let said = state.book.with(|book| book.ingredient(id).and_then(|ingredient| ingredient.produce));
        format!("{said:?}")
    });
    let choose = Arc::new(move |chosen: &str| {
        let Some(said) = all.into_iter().find(|said| format!("{said:?}") == chosen) else { return Ok(()) };
        let edit = state.book.with_untracked(|book| ingredient_changed(book, id, |it| it.produce = said));
        edit.map_or(Ok(()), |edit| state.apply(say!(goods::kind_of_ingredient), edit))
    });
    let sold_as = text(move || {
        state.book.with(|book| book.ingredient(id).map(|ingredient| ingredient.sold_as.clone()).unwrap_or_default())
    });
    let said = text(move || {
        words::produce(state.book.with(|book| book.ingredient(id).and_then(|it| it.produce)), law).to_string()
    });
    view! {
        <Fold name=say!(goods::name_and_label) figure=said open>
            {children()}
            <p class="about">{words::on_labels_about(law)}</p>
            <div class="fields">
                <Choice label=say!(goods::kind_of_ingredient) options=Signal::stored(options) value choose=choose />
                <Entry
                    label=say!(goods::name_on_labels)
                    letters=true
                    example=say!(goods::name_on_labels_example)
                    note=say!(goods::name_on_labels_note)
                    value=sold_as
                    commit=fields::text(say!(goods::name_on_labels), move |book, name| {
                        ingredient_changed(book, id, |it| it.sold_as = name)
                    })
                />
            </div>
        </Fold>
    }
}
