//! What a container holds to the rim, and how that is known: weighed, measured or poured.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::{changed, size};
use super::readings::{self, Readings};
use crate::book::{Book, Brimful, ContainerId, Edit, Key, Record, Tapered};
use crate::drink::fill::{Known, with_brimful};
use crate::foundation::jump::Kind;
use crate::foundation::measure::{LengthUnit, TypedLength};
use crate::ui::fields::{self, Addition, Choice, Draft, Entry, Hangs, Typed, asks};
use crate::ui::live::{text, when};
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::words;

/// The fields of measures, by what is missing while they are empty.
const BASE: &str = "the width across the base";
const RIM: &str = "the width across the rim";
const HEIGHT: &str = "the height inside";

/// The field of the volume to the rim, by what is missing while it is empty.
pub(super) const BRIMFUL: &str = "the volume to its rim";

/// Another way of knowing what a container holds, typed and not in the book yet.
const fn draft(id: ContainerId, way: Known) -> Draft {
    let what = match way {
        Known::Weighed => "weighing",
        Known::Measured => "set of measures",
        Known::Poured => "set of readings",
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
    Addition::of(draft(id, way), there, "Brimful capacity", move |typed, book| {
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
        let now = now.ok_or("Type its name, the volume to the rim and what is left empty first.")?;
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
            Some(Known::Weighed) | None => {
                "Fill it with water to the rim and weigh it: a gram is a millilitre, and that is its brimful volume."
            }
            Some(Known::Measured) => {
                "For a round cup with straight sides. Measure inside: across the base, across the rim, and straight up from base to rim."
            }
            Some(Known::Poured) => {
                "For a bottle with shoulders. Pour in known amounts of water and measure each time how high it stands above the base inside. The last reading is the rim."
            }
        }
        .to_string()
    });
    let is = move |way| move || known.get() == Some(way);
    view! {
        <Section heading="What it holds to the rim">
            <Choice label="How you know what it holds" options=ways value=way choose />
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
    let weighing = |typed: &mut Typed<'_>, book: &Book| typed.amount(BRIMFUL, size(book)).map(Brimful::Weighed);
    let new = if is_new { container.clone() } else { addition(id, Known::Weighed, weighing) };
    let volume = text(move || match state.book.with(|book| book.container(id).map(|it| it.brimful.clone())) {
        Some(Brimful::Weighed(amount)) => state.amount(amount),
        _ => String::new(),
    });
    let commit = fields::amount("Brimful volume", size, move |book, amount| {
        changed(book, id, |it| it.brimful = Brimful::Weighed(amount))
    });
    let example = state.book.with_untracked(|book| words::example(size(book).unit, book.settings().units));
    let (value, commit) = (new.value(BRIMFUL, volume), new.commit(BRIMFUL, commit));
    let asks = asks(Kind::Size, Key::Container(id), "brimful");
    let entry = view! { <Entry label="Volume to the rim" asks hangs units=fields::units(size) example value commit /> };
    // What a new container needs stands under all of it.
    let needs = if is_new { ().into_any() } else { view! { {new.needs()} {new.discard()} }.into_any() };
    view! { {entry} {needs} }.into_any()
}

fn measured(state: AppState, id: ContainerId, hangs: Hangs) -> AnyView {
    let new = addition(id, Known::Measured, |typed, _| {
        let (base, rim, height) = (typed.length(BASE), typed.length(RIM), typed.length(HEIGHT));
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
            let asks = asks(Kind::Size, Key::Container(id), label);
            let [inches, millimetres] = examples;
            let example = if in_inches { inches } else { millimetres };
            view! { <Entry label asks hangs units=fields::length_units() example value commit /> }
        };
    view! {
        <div class="fields">
            {measure("Inside, across the base", BASE, ["2 1/2", "60"], |cup| &mut cup.base)}
            {measure("Inside, across the rim", RIM, ["3 1/2", "90"], |cup| &mut cup.rim)}
            {measure("Inside, from base to rim", HEIGHT, ["4 3/4", "120"], |cup| &mut cup.height)}
        </div>
        {new.needs()}
        {new.discard()}
    }
    .into_any()
}
