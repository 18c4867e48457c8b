//! One container: how much it holds, how full it is poured, what belongs to it.

use leptos::prelude::*;

use super::change::{changed, size};
use super::headspace::{EMPTY, Poured};
use super::holds::Holds;
use super::shared::SharedSets;
use super::stands::Stands;
use super::uses::Uses;
use crate::app::route::Route;
use crate::book::{Book, Brimful, Container, ContainerId, Edit, Headspace, Key, Record};
use crate::say;
use crate::ui::fields::{self, Addition, Draft, Entry, Field, Hangs};
use crate::ui::live::text;
use crate::ui::parts::{Back, page_of};
use crate::ui::places::users::Users;
use crate::ui::state::AppState;

/// The field of its name, by what is missing while it is empty.
const NAME: Field = Field::Name;

/// One container.
#[component]
pub fn ContainerPage(
    /// The container.
    id: ContainerId,
) -> impl IntoView {
    page_of(Key::Container(id), Route::Containers, say!(first::containers), move || view! { <Page id /> }.into_any())
}

#[component]
fn Page(id: ContainerId) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::Container(id))));
    let key = Key::Container(id);
    let there = move |book: &Book| book.contains(key);
    let new = Addition::of(Draft::of_record(key), there, say!(labels::add_container_step), move |typed, book| {
        let name = typed.name(NAME);
        let (brimful, empty) = (typed.amount(Field::BrimfulCapacity, size(book)), typed.amount(EMPTY, size(book)));
        let new = Container::new(id, name?, Brimful::Weighed(brimful?));
        let container = Container { headspace: Headspace::Volume(empty?), ..new };
        Some(Edit::Put(Record::Container(container)))
    });
    let is_new = !untrack(|| new.is_there());
    let rename = fields::text(say!(labels::menu_name), move |book, name| changed(book, id, |it| it.name = name));
    let hangs = Hangs::new();
    let rest = new.once_there(move || {
        view! {
            <Stands id />
            <Uses
                of=key
                heading=say!(common::packaging)
                about=say!(labels::packaging_about)
            />
            <SharedSets id />
            <Users of=key back=Route::Containers what=say!(labels::remove_container) />
        }
        .into_any()
    });
    view! {
        <Back to=Route::Containers name=say!(first::containers) />
        <h1>{new.heading(say!(labels::new_container), name)}</h1>
        <Entry
            label=say!(labels::menu_name)
            letters=true
            caret=is_new
            example=say!(labels::example_container)
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
