//! A drink packaged ahead of sale: its fill target and what its label says.

use leptos::prelude::*;

use super::filling::FillTarget;
use super::label::Label;
use crate::app::route::Route;
use crate::book::{Key, OfferId};
use crate::say;
use crate::ui::live::text;
use crate::ui::parts::{Back, page_of};
use crate::ui::state::AppState;

/// Label and fill of a drink at a size.
#[component]
pub fn PackagedPage(
    /// The offer.
    id: OfferId,
) -> impl IntoView {
    page_of(Key::Offer(id), Route::Offer(id), say!(labels::this_size), move || view! { <Page id /> }.into_any())
}

#[component]
fn Page(id: OfferId) -> impl IntoView {
    let state = AppState::here();
    let drink = text(move || state.book.with(|book| book.name(Key::Drink(id.drink))));
    let container = text(move || state.book.with(|book| book.name(Key::Container(id.container))));
    view! {
        <Back to=Route::Offer(id) name=say!(labels::this_size) />
        <h1>{drink} <span class="h1-size">{container}</span></h1>
        <FillTarget id />
        <Label id />
    }
}
