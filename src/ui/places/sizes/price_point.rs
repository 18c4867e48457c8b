//! Back from a price point.

use leptos::prelude::*;

use crate::ui::parts::Back;
use crate::ui::route::Route;

/// Back from a price point.
#[component]
pub fn PricePoint() -> impl IntoView {
    view! {
        <Back to=Route::Sizes name="Sizes" />
        <h1>"Back from a price point"</h1>
        <p class="about">"A drink must not cost more than so much: what fits, and what it may cost."</p>
    }
}
