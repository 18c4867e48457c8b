//! An address that no screen has: the list of drinks is shown, and it is said why.

use leptos::prelude::*;

use super::address;
use super::live::when;
use crate::app::route::Route;
use crate::say;

/// Says that no screen has the address that is open.
pub fn elsewhere(route: ReadSignal<Route>) -> AnyView {
    let nowhere = move || {
        route.track();
        !Route::is_address(&address::here())
    };
    when(nowhere, || view! { <p class="aside" role="status">{say!(common::no_page_here)}</p> }.into_any())
}
