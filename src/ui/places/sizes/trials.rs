//! Trials of changes.

use leptos::prelude::*;

use crate::book::{Key, TrialId};
use crate::ui::parts::{Back, page_of};
use crate::ui::route::Route;

/// Trials of changes.
#[component]
pub fn Trials() -> impl IntoView {
    view! {
        <Back to=Route::Sizes name="Sizes" />
        <h1>"Trials"</h1>
        <p class="about">"Did a change work? The weeks before it against the weeks since."</p>
    }
}

/// One trial.
#[component]
pub fn TrialPage(
    /// The trial.
    id: TrialId,
) -> impl IntoView {
    page_of(Key::Trial(id), Route::Trials, "Trials", move || view! { <Page id /> }.into_any())
}

#[component]
fn Page(id: TrialId) -> impl IntoView {
    let _ = id;
    view! { <Back to=Route::Trials name="Trials" /> }
}
