//! One kind of packaging: a bottle, a cap, a straw, bought by the case.

use std::sync::Arc;

use leptos::prelude::*;

use super::cost_now::cost_now;
use super::packs::Packs;
use super::prices_heard::prices_heard;
use crate::app::route::Route;
use crate::book::{Book, Edit, Goods, Key, Packaging, PackagingId, PackagingPart, Record};
use crate::say;
use crate::ui::fields::{self, Addition, Choice, Draft, Entry, Field, Hangs};
use crate::ui::live::text;
use crate::ui::moved::Moved;
use crate::ui::parts::{Back, Fold, is_wide, page_of};
use crate::ui::places::users::Users;
use crate::ui::state::AppState;
use crate::words;

fn changed(book: &Book, id: PackagingId, change: impl FnOnce(&mut Packaging)) -> Option<Edit> {
    let mut packaging = book.packaging(id)?.clone();
    change(&mut packaging);
    Some(Edit::Put(Record::Packaging(packaging)))
}

/// One kind of packaging.
#[component]
pub fn PackagingPage(
    /// The packaging.
    id: PackagingId,
) -> impl IntoView {
    page_of(Key::Packaging(id), Route::Buying, say!(first::buying), move || view! { <Page id /> }.into_any())
}

#[component]
fn Page(id: PackagingId) -> impl IntoView {
    let state = AppState::here();
    let of = move |show: fn(&Packaging) -> String| {
        text(move || state.book.with(|book| book.packaging(id).map(show).unwrap_or_default()))
    };
    let name = of(|it| it.name.clone());
    let part = of(|it| format!("{:?}", it.part));
    let parts: Vec<(String, String)> =
        PackagingPart::ALL.iter().map(|part| (format!("{part:?}"), words::packaging_part(*part).to_string())).collect();
    let choose_part = Arc::new(move |chosen: &str| {
        let part = PackagingPart::ALL.iter().copied().find(|part| format!("{part:?}") == chosen);
        let edit = part.and_then(|part| state.book.with_untracked(|book| changed(book, id, |it| it.part = part)));
        edit.map_or(Ok(()), |edit| state.apply(say!(goods::packaging_type), edit))
    });
    let key = Key::Packaging(id);
    let there = move |book: &Book| book.contains(key);
    let new = Addition::of(Draft::of_record(key), there, say!(goods::add_packaging), move |typed, _| {
        Some(Edit::Put(Record::Packaging(Packaging::named(id, &typed.name(Field::Name)?))))
    });
    let is_new = !untrack(|| new.is_there());
    let rename = fields::text(say!(goods::packaging_name), move |book, name| changed(book, id, |it| it.name = name));
    let choice = move || {
        let parts = parts.clone();
        view! { <Choice label=say!(goods::packaging_type) options=parts value=part choose=choose_part.clone() /> }
            .into_any()
    };
    let (none, packs) = (Hangs::new(), Hangs::new());
    let goods = Goods::Packaging(id);
    let fields = {
        let new = new.clone();
        move || {
            view! {
                <div class="pair">
                    <Entry
                        label=say!(common::name)
                        letters=true
                        caret=is_new
                        example=say!(goods::packaging_example)
                        value=new.value(Field::Name, name)
                        commit=new.commit(Field::Name, rename.clone())
                    />
                    {new.once_there(choice.clone())}
                </div>
            }
            .into_any()
        }
    };
    // Name and type of new packaging are asked for first; later they are one thing among others.
    let (first, later) = if is_new { (Some(fields()), None) } else { (None, Some(fields)) };
    let open = is_new || is_wide();
    let type_of = text(move || {
        state
            .book
            .with(|book| book.packaging(id).map(|it| words::packaging_part(it.part).to_string()))
            .unwrap_or_default()
    });
    let rest = new.once_there(move || {
        let name_and_type = later.clone().map(|fields| {
            view! { <Fold name=say!(goods::name_and_type) figure=type_of open>{fields()}</Fold> }
        });
        view! {
            {cost_now(state, goods, none, packs)}
            <div class="panes-three goods-panes">
                <div class="pane">
                    <Packs goods of_yields=none packs />
                    {packs.while_read(move || view! { <Moved by=key /> }.into_any())}
                </div>
                <div class="pane">{prices_heard(state, goods)} {name_and_type}</div>
                <div class="pane">
                    <Users of=key back=Route::Buying what=say!(goods::remove_packaging) open />
                </div>
            </div>
        }
        .into_any()
    });
    view! {
        <Back to=Route::Buying name=say!(first::buying) />
        <h1>{new.heading(say!(goods::new_packaging), name)}</h1>
        {first}
        {new.needs()}
        {rest}
    }
}
