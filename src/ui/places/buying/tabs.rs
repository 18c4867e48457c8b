//! The sides of Buying.

use leptos::prelude::*;

use crate::app::route::Route;
use crate::say;
use crate::ui::parts::sides;

/// The sides of Buying.
#[component]
pub fn Tabs(
    /// Which is open.
    here: Route,
) -> impl IntoView {
    let all = [
        (Route::Buying, say!(goods::quick_price)),
        (Route::PriceWatch, say!(goods::price_watch)),
        (Route::BuyingList, say!(goods::buying_list)),
        (Route::Containers, say!(first::containers)),
    ];
    sides(say!(first::buying), here, &all)
}
