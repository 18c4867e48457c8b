//! One container: how much it holds, how full it is poured, what belongs to it.

use leptos::prelude::*;

use super::change::{changed, size};
use super::headspace::{EMPTY, Poured};
use super::holds::{BRIMFUL, Holds};
use super::shared::SharedSets;
use super::stands::Stands;
use super::uses::Uses;
use crate::app::route::Route;
use crate::book::{Book, Brimful, Container, ContainerId, Edit, Headspace, Key, Record};
use crate::ui::fields::{self, Addition, Draft, Entry, Hangs};
use crate::ui::live::text;
use crate::ui::parts::{Back, page_of};
use crate::ui::places::users::Users;
use crate::ui::state::AppState;

/// The field of its name, by what is missing while it is empty.
const NAME: &str = "a name";

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
    let key = Key::Container(id);
    let there = move |book: &Book| book.contains(key);
    let new = Addition::of(Draft::of_record(key), there, "Add a container", move |typed, book| {
        let name = typed.name(NAME);
        let (brimful, empty) = (typed.amount(BRIMFUL, size(book)), typed.amount(EMPTY, size(book)));
        let new = Container::new(id, name?, Brimful::Weighed(brimful?));
        let container = Container { headspace: Headspace::Volume(empty?), ..new };
        Some(Edit::Put(Record::Container(container)))
    });
    let is_new = !untrack(|| new.is_there());
    let rename = fields::text("Name of a container", move |book, name| changed(book, id, |it| it.name = name));
    let hangs = Hangs::new();
    let rest = new.once_there(move || {
        view! {
            <Stands id />
            <Uses
                of=key
                heading="What belongs to it"
                about="For one drink: the vessel, what closes it, label, straw."
            />
            <SharedSets id />
            <Users of=key back=Route::Containers what="Remove this container" />
        }
        .into_any()
    });
    view! {
        <Back to=Route::Containers name="Containers" />
        <h1>{new.heading("New container", name)}</h1>
        <Entry
            label="Name on the menu"
            letters=true
            caret=is_new
            example="12 oz bottle"
            value=new.value(NAME, name)
            commit=new.commit(NAME, rename)
        />
        <Holds id new=new.clone() hangs />
        <Poured id new=new.clone() hangs />
        {new.needs()}
        {new.discard()}
        {rest}
    }
}
