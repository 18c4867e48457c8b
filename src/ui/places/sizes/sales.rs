//! What is sold in a week.

use leptos::prelude::*;

use crate::measure::Date;
use crate::ui::parts::Back;
use crate::ui::route::Route;

/// What is sold in a week.
#[component]
pub fn Sales() -> impl IntoView {
    view! {
        <Back to=Route::Sizes name="Sizes" />
        <h1>"Sales"</h1>
        <p class="about">"What you sell in a week of each drink and size: the mix that every comparison counts with."</p>
    }
}

/// What was sold in one week.
#[component]
pub fn SalesWeek(
    /// The Monday that it begins on.
    monday: Date,
) -> impl IntoView {
    view! {
        <Back to=Route::Sales name="Sales" />
        <h1>{monday.to_string()}</h1>
    }
}
