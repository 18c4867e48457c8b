//! The days that something is made on.

use leptos::prelude::*;

use super::tabs::Tabs;
use crate::ui::route::Route;

/// The days that something is made on.
#[component]
pub fn Batches() -> impl IntoView {
    view! {
        <h1>"Batches"</h1>
        <Tabs here=Route::Batches />
    }
}
