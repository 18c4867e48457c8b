//! The yield log of an ingredient.

use leptos::prelude::*;

use crate::book::{IngredientId, Key};
use crate::ui::live::text;
use crate::ui::parts::{Back, page_of};
use crate::ui::route::Route;
use crate::ui::state::AppState;

/// The yield log of an ingredient.
#[component]
pub fn YieldLog(
    /// The ingredient.
    id: IngredientId,
) -> impl IntoView {
    page_of(Key::Ingredient(id), Route::Buying, "Buying", move || view! { <Page id /> }.into_any())
}

#[component]
fn Page(id: IngredientId) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::Ingredient(id))));
    view! {
        <Back to=Route::Ingredient(id) name="Ingredient" />
        <h1>{name} <span class="h1-size">"Yield log"</span></h1>
    }
}
