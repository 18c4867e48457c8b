//! The sides of the Counter.

use leptos::prelude::*;

use crate::app::route::{Place, Route};
use crate::say;
use crate::ui::parts::sides;

/// The sides of the Counter.
#[component]
pub fn Tabs(
    /// Which is open.
    here: Route,
) -> impl IntoView {
    let all = [
        (Route::Counter, say!(counter::cards)),
        (Route::Batches, say!(counter::batches)),
        (Route::OnHand, say!(counter::on_hand)),
        (Route::CanMake, say!(counter::can_make)),
    ];
    sides(Place::Counter.name(), here, &all)
}
