//! Price watch: what supplier's prices moved, and what the menu hangs on.

use leptos::prelude::*;

use super::tabs::Tabs;
use crate::ui::route::Route;

/// What supplier's prices moved, and what the menu hangs on.
#[component]
pub fn PriceWatch() -> impl IntoView {
    view! {
        <h1>"Price watch"</h1>
        <Tabs here=Route::PriceWatch />
    }
}
