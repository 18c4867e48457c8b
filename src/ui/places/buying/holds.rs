//! What a container holds to the rim, and how that is known: weighed, measured or poured.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::{changed, size};
use super::readings::{self, Readings};
use crate::book::{Book, Brimful, ContainerId, Edit, Key, Record, Tapered};
use crate::drink::fill::{Known, with_brimful};
use crate::foundation::jump::Kind;
use crate::foundation::measure::{LengthUnit, TypedLength};
use crate::say;
use crate::ui::fields::{self, Addition, Choice, Draft, Entry, Field, Hangs, NewThing, Typed, asks};
use crate::ui::live::{text, when};
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::words;

/// Another way of knowing what a container holds, typed and not in the book yet.
const fn draft(id: ContainerId, way: Known) -> Draft {
    let what = match way {
        Known::Weighed => NewThing::Weighing,
        Known::Measured => NewThing::Measures,
        Known::Poured => NewThing::Readings,
    };
    Draft { what, of: Some(Key::Container(id)), id: 0 }
}

/// How what is typed of another way gets into the book.
fn addition(
    id: ContainerId,
    way: Known,
    make: impl Fn(&mut Typed<'_>, &Book) -> Option<Brimful> + Send + Sync + 'static,
) -> Addition {
    let there = move |book: &Book| book.container(id).is_some_and(|it| Known::of(&it.brimful) == way);
    Addition::of(draft(id, way), there, say!(goods::brimful_capacity), move |typed, book| {
        let brimful = make(typed, book)?;
        Some(Edit::Put(Record::Container(with_brimful(book.container(id)?, brimful, book.settings().units))))
    })
}

/// What a container holds to the rim.
#[component]
pub fn Holds(
    /// The container.
    id: ContainerId,
    /// How it gets into the book.
    new: Addition,
    /// The answers that hang on it.
    hangs: Hangs,
) -> impl IntoView {
    let state = AppState::here();
    let in_book = move |book: &Book| book.container(id).map(|it| Known::of(&it.brimful));
    let typed = move || Known::ALL.iter().copied().find(|way| draft(id, *way).is_open(state));
    let known = Memo::new(move |_| typed().or_else(|| state.book.with(in_book)));
    let ways: Vec<(String, String)> =
        Known::ALL.iter().map(|way| (format!("{way:?}"), words::known(*way).to_string())).collect();
    let way = text(move || known.get().map(|way| format!("{way:?}")).unwrap_or_default());
    let choose = Arc::new(move |chosen: &str| {
        let now = state.book.with_untracked(in_book);
        let now = now.ok_or(say!(labels::name_and_size_first))?;
        for way in Known::ALL {
            draft(id, *way).discard(state);
        }
        if let Some(way) = Known::ALL.iter().find(|way| **way != now && format!("{way:?}") == chosen) {
            draft(id, *way).begin(state);
        }
        Ok(())
    });
    let about = text(move || {
        match known.get() {
            Some(Known::Weighed) | None => say!(goods::weigh_water),
            Some(Known::Measured) => say!(goods::measure_cup),
            Some(Known::Poured) => say!(goods::measure_bottle),
        }
        .to_string()
    });
    let is = move |way| move || known.get() == Some(way);
    view! {
        <Section heading=say!(goods::capacity)>
            <Choice label=say!(goods::how_measured) options=ways value=way choose />
            <p class="about">{about}</p>
            {when(move || matches!(known.get(), Some(Known::Weighed) | None), move || weighed(state, id, &new, hangs))}
            {when(is(Known::Measured), move || measured(state, id, hangs))}
            {when(is(Known::Poured), move || {
                let new = addition(id, Known::Poured, readings::poured);
                view! { <Readings id new hangs /> }.into_any()
            })}
        </Section>
    }
}

/// Of a new container, the volume is typed with the rest of it.
fn weighed(state: AppState, id: ContainerId, container: &Addition, hangs: Hangs) -> AnyView {
    let is_new = !untrack(|| container.is_there());
    let weighing =
        |typed: &mut Typed<'_>, book: &Book| typed.amount(Field::BrimfulCapacity, size(book)).map(Brimful::Weighed);
    let new = if is_new { container.clone() } else { addition(id, Known::Weighed, weighing) };
    let volume = text(move || match state.book.with(|book| book.container(id).map(|it| it.brimful.clone())) {
        Some(Brimful::Weighed(amount)) => state.amount(amount),
        _ => String::new(),
    });
    let commit = fields::amount(say!(goods::brimful_capacity), size, move |book, amount| {
        changed(book, id, |it| it.brimful = Brimful::Weighed(amount))
    });
    let example = state.book.with_untracked(|book| words::example(size(book).unit, book.settings().units));
    let (value, commit) = (new.value(Field::BrimfulCapacity, volume), new.commit(Field::BrimfulCapacity, commit));
    let asks = asks(Kind::Size, Key::Container(id), "brimful");
    let (label, units) = (say!(goods::brimful_capacity), fields::units(size));
    let entry = view! { <Entry label asks hangs units example value commit /> };
    // What a new container needs stands under all of it.
    let needs = if is_new { ().into_any() } else { view! { {new.needs()} {new.discard()} }.into_any() };
    view! { {entry} {needs} }.into_any()
}

fn measured(state: AppState, id: ContainerId, hangs: Hangs) -> AnyView {
    let new = addition(id, Known::Measured, |typed, _| {
        let (base, rim, height) =
            (typed.length(Field::BaseWidth), typed.length(Field::RimWidth), typed.length(Field::InsideHeight));
        Some(Brimful::Tapered(Tapered { base: base?, rim: rim?, height: height? }))
    });
    let in_inches = LengthUnit::of(untrack(|| state.units())) == LengthUnit::Inch;
    let measure =
        |label: &'static str, field, examples: [&'static str; 2], place: fn(&mut Tapered) -> &mut TypedLength| {
            let length = text(move || match state.book.with(|book| book.container(id).map(|it| it.brimful.clone())) {
                Some(Brimful::Tapered(mut cup)) => state.typed_length(*place(&mut cup)),
                _ => String::new(),
            });
            let commit = fields::length(label, move |book, length| {
                changed(book, id, |it| {
                    if let Brimful::Tapered(cup) = &mut it.brimful {
                        *place(cup) = length;
                    }
                })
            });
            let (value, commit) = (new.value(field, length), new.commit(field, commit));
            let asks = asks(Kind::Size, Key::Container(id), Field::id(field));
            let [inches, millimetres] = examples;
            let example = if in_inches { inches } else { millimetres };
            view! { <Entry label asks hangs units=fields::length_units() example value commit /> }
        };
    view! {
        <div class="fields">
            {measure(say!(goods::base_width), Field::BaseWidth, ["2 1/2", "60"], |cup| &mut cup.base)}
            {measure(say!(goods::rim_width), Field::RimWidth, ["3 1/2", "90"], |cup| &mut cup.rim)}
            {measure(say!(goods::inside_height), Field::InsideHeight, ["4 3/4", "120"], |cup| &mut cup.height)}
        </div>
        {new.needs()}
        {new.discard()}
    }
    .into_any()
}
