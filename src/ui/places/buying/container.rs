//! One container: how much it holds, how full it is poured, what belongs to it.

use leptos::prelude::*;

use super::change::changed;
use super::headspace::Poured;
use super::holds::Holds;
use super::shared::SharedSets;
use super::stands::Stands;
use super::uses::Uses;
use crate::app::route::Route;
use crate::book::{ContainerId, Key};
use crate::ui::fields::{self, Entry};
use crate::ui::live::text;
use crate::ui::parts::{Back, page_of};
use crate::ui::places::users::Users;
use crate::ui::state::AppState;

/// One container.
#[component]
pub fn ContainerPage(
    /// The container.
    id: ContainerId,
) -> impl IntoView {
    page_of(Key::Container(id), Route::Containers, "Containers", move || view! { <Page id /> }.into_any())
}

#[component]
fn Page(id: ContainerId) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::Container(id))));
    view! {
        <Back to=Route::Containers name="Containers" />
        <h1>{name}</h1>
        <Entry
            label="Name on the menu"
            letters=true
            value=name
            commit=fields::text("Name of a container", move |book, name| changed(book, id, |it| it.name = name))
        />
        <Holds id />
        <Poured id />
        <Stands id />
        <Uses
            of=Key::Container(id)
            heading="What belongs to it"
            about="For one drink: the vessel, what closes it, label, straw."
        />
        <SharedSets id />
        <Users of=Key::Container(id) back=Route::Containers what="Remove this container" />
    }
}
