//! One container: what is poured into it, how much it holds, what belongs to it.

use leptos::prelude::*;

use super::change::{changed, container_added, size};
use super::deposit::Deposit;
use super::headspace::{EMPTY, Poured, answer};
use super::holds::{Holds, as_typed, first_way};
use super::shared::SharedSets;
use super::stands::Stands;
use super::uses::Uses;
use super::usual_sizes::usual_sizes;
use crate::app::route::Route;
use crate::book::{Book, Container, ContainerId, Headspace, Key};
use crate::say;
use crate::ui::fields::{self, Addition, Draft, Entry, Field, Hangs};
use crate::ui::kept;
use crate::ui::live::text;
use crate::ui::parts::{Back, Fold, is_wide, page_of};
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
    let first_way = RwSignal::new(first_way(state, Draft::of_record(key)));
    let new = Addition::of(Draft::of_record(key), there, say!(labels::add_container_step), move |typed, book| {
        let name = typed.name(NAME);
        let (brimful, empty) = (
            as_typed(typed, book, first_way.get_untracked()),
            typed.amount_such_as(EMPTY, size(book), fields::Example::SmallVolume),
        );
        let new = Container::new(id, name?, brimful?);
        let container = Container { headspace: Headspace::Volume(empty?), ..new };
        Some(container_added(book, container, &typed.letters(Field::SoldFor)))
    });
    let is_new = !untrack(|| new.is_there());
    let rename = fields::text(say!(labels::menu_name), move |book, name| changed(book, id, |it| it.name = name));
    let hangs = Hangs::new();
    let named = new.clone();
    let name_field = move || {
        view! {
            <Entry
                label=say!(labels::menu_name)
                letters=true
                caret=is_new
                example=say!(labels::example_container)
                value=named.value(NAME, name)
                commit=named.commit(NAME, rename.clone())
            />
        }
        .into_any()
    };
    // The name of a new container is what is asked for first; later it is one thing among others.
    let (first, later) = if is_new {
        (Some(name_field()), None)
    } else {
        let fold = view! { <Fold name=say!(labels::menu_name) figure=name open=is_wide()>{name_field()}</Fold> };
        (None, Some(fold))
    };
    // Of a new container nothing is folded away, and what it holds comes before what is poured.
    let open = is_new || is_wide();
    let fill = new.once_there(move || answer(state, id, hangs));
    let (before, after) = if is_new { (None, Some(fill)) } else { (Some(fill), None) };
    let stands = new.once_there(move || view! { <Stands id open /> }.into_any());
    let packaging = new.once_there(move || {
        view! {
            <Uses of=key heading=say!(common::packaging) about=say!(labels::packaging_about) open />
            <SharedSets id open />
            <Deposit id open />
        }
        .into_any()
    });
    let users = new.once_there(move || {
        view! { <Users of=key back=Route::Containers what=say!(labels::remove_container) open /> }.into_any()
    });
    // Who came from a drink to add a size goes back to it.
    let (to, back) = match kept::from().map(|from| Route::from_address(&from)) {
        Some(drink @ Route::Drink(_)) => (drink, say!(labels::back_to_drink)),
        _ => (Route::Containers, say!(first::containers)),
    };
    view! {
        <Back to name=back />
        <h1>{new.heading(say!(labels::new_container), name)}</h1>
        {first}
        {usual_sizes(id, Draft::of_record(key), &new)}
        <div class="panes-three container-panes">
            <div class="pane">{before}</div>
            <div class="pane">
                <Holds id new=new.clone() first_way hangs open />
                <Poured id new=new.clone() hangs open />
                {new.needs()}
                {new.discard()}
                {after}
                {stands}
            </div>
            <div class="pane">{packaging} {later} {users}</div>
        </div>
    }
}
