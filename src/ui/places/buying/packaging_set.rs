//! A set of packaging that containers share: lid, straw and sleeve, or cap and seal.

use leptos::prelude::*;

use crate::book::{Key, PackagingSetId};
use crate::ui::live::text;
use crate::ui::parts::{Back, page_of};
use crate::ui::places::users::Users;
use crate::ui::route::Route;
use crate::ui::state::AppState;

/// A set of packaging that containers share.
#[component]
pub fn PackagingSetPage(
    /// The set.
    id: PackagingSetId,
) -> impl IntoView {
    page_of(Key::PackagingSet(id), Route::Containers, "Containers", move || view! { <Page id /> }.into_any())
}

#[component]
fn Page(id: PackagingSetId) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::PackagingSet(id))));
    view! {
        <Back to=Route::Containers name="Containers" />
        <h1>{name}</h1>
        <Users of=Key::PackagingSet(id) back=Route::Containers what="Remove this set" />
    }
}
