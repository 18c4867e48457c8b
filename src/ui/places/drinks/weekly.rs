//! How many of a drink are usually sold in a size.

use leptos::prelude::*;

use crate::book::{Edit, Key, Offer, OfferId, Record};
use crate::foundation::jump::Kind;
use crate::say;
use crate::ui::fields::{self, Entry, Hangs, asks};
use crate::ui::live::text;
use crate::ui::state::AppState;

/// The number usually sold in a week.
#[component]
pub fn Weekly(
    /// The offer.
    id: OfferId,
    /// The answers that hang on it.
    hangs: Hangs,
) -> impl IntoView {
    let state = AppState::here();
    let weekly = move || state.book.with(|book| book.offer(id)?.weekly);
    view! {
        <Entry
            label=say!(common::drinks_sold_per_week)
            asks=asks(Kind::Sold, Key::Offer(id), "weekly")
            hangs
            example=say!(drinks::not_known)
            value=text(move || weekly().map(|weekly| state.number(weekly)).unwrap_or_default())
            commit=fields::optional_number(say!(common::drinks_sold_per_week), fields::Example::WeeklySales, move |book, weekly| {
                Some(Edit::Put(Record::Offer(Offer { weekly, ..book.offer(id)?.clone() })))
            })
        />
    }
}
