//! What is made on a day: the plan, and the sheet to work from.

use leptos::prelude::*;

use crate::book::Key;
use crate::measure::Date;
use crate::ui::parts::{Back, page_of};
use crate::ui::route::Route;
use crate::words;

/// What is made on a day.
#[component]
pub fn BatchPage(
    /// The day.
    day: Date,
) -> impl IntoView {
    page_of(Key::Batch(day), Route::Batches, "Batches", move || view! { <Page day /> }.into_any())
}

#[component]
fn Page(day: Date) -> impl IntoView {
    view! {
        <Back to=Route::Batches name="Batches" />
        <h1>{words::batch(day)}</h1>
    }
}
