//! Sheets to print.

mod batch;

use leptos::prelude::*;

use crate::ui::parts::Back;
use crate::ui::route::{Route, Sheet};

/// A sheet to print.
pub fn sheet(sheet: Sheet) -> AnyView {
    let (heading, back, name) = match sheet {
        Sheet::Prices => ("Price sheet", Route::Drinks, "Drinks"),
        Sheet::Cards => ("Recipe cards", Route::Counter, "Counter"),
        Sheet::Batch(day) => ("Batch sheet", Route::Batch(day), "Batch"),
        Sheet::BuyingList => ("Buying list", Route::BuyingList, "Buying list"),
    };
    let content = match sheet {
        Sheet::Batch(day) => view! { <batch::BatchSheet day /> }.into_any(),
        Sheet::Prices | Sheet::Cards | Sheet::BuyingList => ().into_any(),
    };
    view! {
        <Back to=back name=name />
        <h1>{heading}</h1>
        {content}
    }
    .into_any()
}
