//! The buying list.

use leptos::prelude::*;

use super::tabs::Tabs;
use crate::ui::route::Route;

/// What is to be bought.
#[component]
pub fn BuyingListPage() -> impl IntoView {
    view! {
        <h1>"Buying list"</h1>
        <Tabs here=Route::BuyingList />
    }
}
