//! One size in place of another.

use leptos::prelude::*;

use crate::ui::parts::Back;
use crate::ui::route::Route;

/// One size in place of another.
#[component]
pub fn Switching() -> impl IntoView {
    view! {
        <Back to=Route::Sizes name="Sizes" />
        <h1>"One size in place of another"</h1>
        <p class="about">"A size goes, another comes: how many must then be sold to earn the same."</p>
    }
}
