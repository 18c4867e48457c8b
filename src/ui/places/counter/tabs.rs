//! The sides of the Counter.

use leptos::prelude::*;

use crate::app::route::Route;
use crate::ui::parts::sides;

/// The sides of the Counter.
#[component]
pub fn Tabs(
    /// Which is open.
    here: Route,
) -> impl IntoView {
    let all = [(Route::Counter, "Cards"), (Route::Batches, "Batches"), (Route::OnHand, "On hand")];
    sides("Counter", here, &all)
}
