//! The sides of Buying.

use leptos::prelude::*;

use crate::app::route::Route;
use crate::ui::parts::sides;

/// The sides of Buying.
#[component]
pub fn Tabs(
    /// Which is open.
    here: Route,
) -> impl IntoView {
    let all = [
        (Route::Buying, "Quick price"),
        (Route::PriceWatch, "Price watch"),
        (Route::BuyingList, "Buying list"),
        (Route::Containers, "Containers"),
    ];
    sides("Buying", here, &all)
}
