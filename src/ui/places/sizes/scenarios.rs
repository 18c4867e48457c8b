//! Menus to play with beside today's.

use leptos::prelude::*;

use crate::book::{Key, ScenarioId};
use crate::ui::parts::{Back, page_of};
use crate::ui::route::Route;

/// Menus to play with beside today's.
#[component]
pub fn Scenarios() -> impl IntoView {
    view! {
        <Back to=Route::Sizes name="Sizes" />
        <h1>"Scenarios"</h1>
        <p class="about">"A copy of the menu to play with. Nothing changes until you adopt it."</p>
    }
}

/// One scenario.
#[component]
pub fn ScenarioPage(
    /// The scenario.
    id: ScenarioId,
) -> impl IntoView {
    page_of(Key::Scenario(id), Route::Scenarios, "Scenarios", move || view! { <Page id /> }.into_any())
}

#[component]
fn Page(id: ScenarioId) -> impl IntoView {
    let _ = id;
    view! { <Back to=Route::Scenarios name="Scenarios" /> }
}
