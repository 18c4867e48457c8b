//! Sheets to print.

mod buying_list;

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
    view! {
        <Back to=back name=name />
        <h1>{heading}</h1>
        {(sheet == Sheet::BuyingList).then(|| view! { <buying_list::BuyingListSheet /> })}
    }
    .into_any()
}
