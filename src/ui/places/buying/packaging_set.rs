//! A set of packaging that containers share: lid, straw and sleeve, or cap and seal.

use leptos::prelude::*;

use super::change::changed as container_changed;
use super::uses::{self, Uses};
use crate::app::route::Route;
use crate::book::{Book, Edit, Key, PackagingSet, PackagingSetId, Record};
use crate::say;
use crate::ui::fields::{self, Addition, Draft, Entry, Field};
use crate::ui::live::text;
use crate::ui::moved::Moved;
use crate::ui::parts::{Back, Figure, page_of};
use crate::ui::places::users::Users;
use crate::ui::state::AppState;

/// What a set costs for one drink, in words.
pub(super) fn set_cost(state: AppState, set: PackagingSetId) -> Signal<String> {
    text(move || {
        let cost = state.book.with(|book| uses::cost(book, Key::PackagingSet(set)));
        cost.map_or(say!(goods::no_pack_yet).into(), |cost| state.fine_money(cost))
    })
}

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
    page_of(Key::PackagingSet(id), Route::Containers, say!(first::containers), move || view! { <Page id /> }.into_any())
}

#[component]
fn Page(id: PackagingSetId) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::PackagingSet(id))));
    let key = Key::PackagingSet(id);
    let draft = Draft::of_record(key);
    let there = move |book: &Book| book.contains(key);
    let new = Addition::of(draft, there, say!(goods::add_kit), move |typed, book| {
        let set = PackagingSet { id, name: typed.name(Field::Name)?, uses: Vec::new() };
        let mut edits = vec![Edit::Put(Record::PackagingSet(set))];
        if let Some(Key::Container(container)) = Key::from_text(&typed.letters(Field::SharedBy)) {
            edits.extend(container_changed(book, container, |it| it.shared.push(id)));
        }
        Some(Edit::Together(edits))
    });
    let is_new = !untrack(|| new.is_there());
    let rename = fields::text(say!(goods::kit_name), move |book, name| changed(book, id, |it| it.name = name));
    let rest = new.once_there(move || {
        view! {
            <Uses
                of=key
                heading=say!(goods::in_this_kit)
                about=say!(goods::in_this_kit_about)
                open=true
            />
            <dl class="figures">
                <Figure name=say!(goods::cost_per_drink) value=set_cost(state, id) />
            </dl>
            <Moved by=key />
            <Users of=key back=Route::Containers what=say!(goods::remove_kit) open=true />
        }
        .into_any()
    });
    view! {
        <Back to=Route::Containers name=say!(first::containers) />
        <h1>{new.heading(say!(goods::new_kit), name)}</h1>
        <Entry
            label=say!(goods::kit_name)
            letters=true
            caret=is_new
            example=say!(goods::kit_example)
            value=new.value(Field::Name, name)
            commit=new.commit(Field::Name, rename)
        />
        {new.needs()}
        {rest}
    }
}
