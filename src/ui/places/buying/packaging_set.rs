//! A set of packaging that containers share: lid, straw and sleeve, or cap and seal.

use leptos::prelude::*;

use super::shared::cost;
use super::uses::Uses;
use crate::app::route::Route;
use crate::book::{Book, Edit, Key, PackagingSet, PackagingSetId, Record};
use crate::ui::fields::{self, Entry};
use crate::ui::live::text;
use crate::ui::moved::Moved;
use crate::ui::parts::{Back, Figure, page_of};
use crate::ui::places::users::Users;
use crate::ui::state::AppState;

fn changed(book: &Book, id: PackagingSetId, change: impl FnOnce(&mut PackagingSet)) -> Option<Edit> {
    let mut set = book.packaging_set(id)?.clone();
    change(&mut set);
    Some(Edit::Put(Record::PackagingSet(set)))
}

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
        <Entry
            label="Name of the set"
            letters=true
            value=name
            commit=fields::text("Name of a set", move |book, name| changed(book, id, |it| it.name = name))
        />
        <Uses
            of=Key::PackagingSet(id)
            heading="What is in it"
            about="For one drink, of every container that shares the set."
        />
        <dl class="figures">
            <Figure name="The set for one drink" value=cost(state, id) />
        </dl>
        <Moved by=Key::PackagingSet(id) />
        <Users of=Key::PackagingSet(id) back=Route::Containers what="Remove this set" />
    }
}
