//! How many sizes.

use leptos::prelude::*;

use crate::ui::parts::Back;
use crate::ui::route::Route;

/// How many sizes.
#[component]
pub fn HowMany() -> impl IntoView {
    view! {
        <Back to=Route::Sizes name="Sizes" />
        <h1>"How many sizes"</h1>
        <p class="about">"One size, two or three: what each plan earns, and what it takes to keep."</p>
    }
}
