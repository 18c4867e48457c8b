//! Whether an ingredient is fruit or vegetable, and whether it was treated.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::ingredient_changed;
use crate::book::{IngredientId, Produce as Said};
use crate::ui::fields::Choice;
use crate::ui::live::text;
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::words;

/// Whether an ingredient is fruit or vegetable, and whether it was treated.
#[component]
pub fn Produce(
    /// The ingredient.
    id: IngredientId,
) -> impl IntoView {
    let state = AppState::here();
    let all = [None, Some(Said::Raw), Some(Said::Treated), Some(Said::Neither)];
    let options = all.map(|said| (format!("{said:?}"), words::produce(said).to_string())).to_vec();
    let value = text(move || {
        let said = state.book.with(|book| book.ingredient(id).and_then(|ingredient| ingredient.produce));
        format!("{said:?}")
    });
    let choose = Arc::new(move |chosen: &str| {
        let Some(said) = all.into_iter().find(|said| format!("{said:?}") == chosen) else { return Ok(()) };
        let edit = state.book.with_untracked(|book| ingredient_changed(book, id, |it| it.produce = said));
        edit.map_or(Ok(()), |edit| state.apply("Fruit or vegetable", edit))
    });
    view! {
        <Section
            heading="Fruit or vegetable"
            about="Raw juice, purées and raw fruit or vegetables blended in need a warning on packages. Frozen is raw too."
        >
            <Choice label="What it is" options=Signal::stored(options) value choose=choose />
        </Section>
    }
}
