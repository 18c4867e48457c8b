//! Prices seen elsewhere.

use leptos::prelude::*;

use crate::ui::parts::Back;
use crate::ui::route::Route;

/// Prices seen elsewhere.
#[component]
pub fn SeenPrices() -> impl IntoView {
    view! {
        <Back to=Route::Sizes name="Sizes" />
        <h1>"Prices seen elsewhere"</h1>
        <p class="about">"What others ask, and where your sizes stand among them."</p>
    }
}
