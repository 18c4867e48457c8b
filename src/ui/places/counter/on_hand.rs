//! What is here, and how many drinks it makes.

use leptos::prelude::*;

use super::tabs::Tabs;
use crate::ui::route::Route;

/// What is here, and how many drinks it makes.
#[component]
pub fn OnHand() -> impl IntoView {
    view! {
        <h1>"On hand"</h1>
        <Tabs here=Route::OnHand />
    }
}
