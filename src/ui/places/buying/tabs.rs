//! The two sides of Buying: prices, and containers.

use leptos::prelude::*;

use crate::ui::route::Route;

/// The two sides of Buying.
#[component]
pub fn Tabs(
    /// Which is open.
    here: Route,
) -> impl IntoView {
    let tab = move |route: Route, name: &'static str| {
        view! {
            <a class="chip" href=route.address() aria-current=(route == here).then_some("page")>
                {name}
            </a>
        }
    };
    view! {
        <nav class="chips" aria-label="Buying">
            {tab(Route::Buying, "Quick price")}
            {tab(Route::Containers, "Containers")}
        </nav>
    }
}
