//! What a container holds to the rim, and how that is known: weighed, measured or poured.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::{capacity, changed, of_water, size};
use super::readings::{self, Readings};
use super::starting::capacity_mark;
use crate::book::{Book, Brimful, ContainerId, Edit, Key, Record, Tapered};
use crate::drink::fill::{Known, fill, with_brimful};
use crate::foundation::jump::Kind;
use crate::foundation::measure::TypedLength;
use crate::say;
use crate::ui::fields::{self, Addition, Choice, Draft, Entry, Example, Field, Hangs, NewThing, Typed, asks};
use crate::ui::live::{text, when};
use crate::ui::parts::Fold;
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
    /// How a new one is measured.
    first_way: RwSignal<Known>,
    /// The answers that hang on it.
    hangs: Hangs,
    /// Whether it stands open at first.
    open: bool,
) -> impl IntoView {
    let state = AppState::here();
    let in_book = move |book: &Book| book.container(id).map(|it| Known::of(&it.brimful));
    let typed = move || Known::ALL.iter().copied().find(|way| draft(id, *way).is_open(state));
    let known = Memo::new(move |_| typed().or_else(|| state.book.with(in_book)).unwrap_or_else(|| first_way.get()));
    let ways: Vec<(String, String)> =
        Known::ALL.iter().map(|way| (format!("{way:?}"), words::known(*way).to_string())).collect();
    let way = text(move || format!("{:?}", known.get()));
    let choose = Arc::new(move |chosen: &str| {
        let Some(way) = Known::ALL.iter().copied().find(|way| format!("{way:?}") == chosen) else { return Ok(()) };
        let Some(now) = state.book.with_untracked(in_book) else {
            first_way.set(way);
            return Ok(());
        };
        for way in Known::ALL {
            draft(id, *way).discard(state);
        }
        if way != now {
            draft(id, way).begin(state);
        }
        Ok(())
    });
    let about = text(move || {
        match known.get() {
            Known::Weighed => say!(goods::weigh_water),
            Known::Measured => say!(goods::measure_cup),
            Known::Poured => say!(goods::measure_bottle),
        }
        .to_string()
    });
    let is = move |way| move || known.get() == way;
    let (by_weight, by_measures, by_pouring) = (new.clone(), new.clone(), new);
    let brimful = text(move || {
        let brimful = state.book.with(|book| fill(book.container(id)?).ok().map(|fill| fill.brimful));
        brimful.map(|volume| state.volume(volume)).unwrap_or_default()
    });
    view! {
        <Fold name=say!(goods::capacity) figure=brimful open>
            <Choice label=say!(goods::how_measured) options=ways value=way choose />
            <p class="about">{about}</p>
            {when(is(Known::Weighed), move || weighed(state, id, &by_weight, hangs))}
            {when(is(Known::Measured), move || measured(state, id, &by_measures, hangs))}
            {when(is(Known::Poured), move || {
                let (new, is_new) = first_or_another(id, Known::Poured, &by_pouring);
                view! { <Readings id new is_new hangs /> }.into_any()
            })}
        </Fold>
    }
}

/// What is typed of a way, as it is read.
pub fn as_typed(typed: &mut Typed<'_>, book: &Book, way: Known) -> Option<Brimful> {
    match way {
        Known::Weighed => {
            let example = Example::Amount(size(book).unit);
            let amount = typed.amount_such_as(Field::BrimfulCapacity, capacity(book), example)?;
            Some(Brimful::Weighed(of_water(amount)))
        }
        Known::Measured => {
            let (base, rim, height) = (
                typed.length(Field::BaseWidth, Example::BaseWidth),
                typed.length(Field::RimWidth, Example::RimWidth),
                typed.length(Field::InsideHeight, Example::InsideHeight),
            );
            Some(Brimful::Tapered(Tapered { base: base?, rim: rim?, height: height? }))
        }
        Known::Poured => readings::poured(typed, book),
    }
}

/// The way of a new container of which something is typed already, such as before the page was loaded anew.
pub fn first_way(state: AppState, container: Draft) -> Known {
    let is_typed = |field| untrack(|| !container.text(state, field).is_empty());
    match () {
        () if [Field::BaseWidth, Field::RimWidth, Field::InsideHeight].into_iter().any(is_typed) => Known::Measured,
        () if readings::FIRST.iter().any(|(height, volume)| is_typed(*height) || is_typed(*volume)) => Known::Poured,
        () => Known::Weighed,
    }
}

/// How what is typed of a way gets into the book, and whether that is with a new container: its capacity is
/// typed with the rest of it.
fn first_or_another(id: ContainerId, way: Known, container: &Addition) -> (Addition, bool) {
    if untrack(|| container.is_there()) {
        (addition(id, way, move |typed, book| as_typed(typed, book, way)), false)
    } else {
        (container.clone(), true)
    }
}

fn weighed(state: AppState, id: ContainerId, container: &Addition, hangs: Hangs) -> AnyView {
    let (new, is_new) = first_or_another(id, Known::Weighed, container);
    let volume = text(move || match state.book.with(|book| book.container(id).map(|it| it.brimful.clone())) {
        Some(Brimful::Weighed(amount)) => state.amount(amount),
        _ => String::new(),
    });
    let commit = fields::amount(say!(goods::brimful_capacity), Example::Amount, capacity, move |book, amount| {
        changed(book, id, |it| it.brimful = Brimful::Weighed(of_water(amount)))
    });
    let unit = state.book.with_untracked(|book| size(book).unit);
    let example = state.speaker.with_untracked(|speaker| Example::Amount(unit).said(speaker));
    let (value, commit) = (new.value(Field::BrimfulCapacity, volume), new.commit(Field::BrimfulCapacity, commit));
    let asks = asks(Kind::Size, Key::Container(id), "brimful");
    let (label, units) = (say!(goods::brimful_capacity), fields::units(capacity));
    let entry = view! { <Entry label asks hangs units example value commit /> };
    // What a new container needs stands under all of it.
    let needs = if is_new { ().into_any() } else { view! { {new.needs()} {new.discard()} }.into_any() };
    view! { {entry} {capacity_mark(id)} {needs} }.into_any()
}

fn measured(state: AppState, id: ContainerId, container: &Addition, hangs: Hangs) -> AnyView {
    let (new, is_new) = first_or_another(id, Known::Measured, container);
    let measure = |label: &'static str, field, example: Example, place: fn(&mut Tapered) -> &mut TypedLength| {
        let length = text(move || match state.book.with(|book| book.container(id).map(|it| it.brimful.clone())) {
            Some(Brimful::Tapered(mut cup)) => state.typed_length(*place(&mut cup)),
            _ => String::new(),
        });
        let commit = fields::length(label, example, move |book, length| {
            changed(book, id, |it| {
                if let Brimful::Tapered(cup) = &mut it.brimful {
                    *place(cup) = length;
                }
            })
        });
        let (value, commit) = (new.value(field, length), new.commit(field, commit));
        let asks = asks(Kind::Size, Key::Container(id), Field::id(field));
        let example = state.speaker.with_untracked(|speaker| example.said(speaker));
        view! { <Entry label asks hangs units=fields::length_units() example value commit /> }
    };
    view! {
        <div class="fields">
            {measure(say!(goods::base_width), Field::BaseWidth, Example::BaseWidth, |cup| &mut cup.base)}
            {measure(say!(goods::rim_width), Field::RimWidth, Example::RimWidth, |cup| &mut cup.rim)}
            {measure(say!(goods::inside_height), Field::InsideHeight, Example::InsideHeight, |cup| &mut cup.height)}
        </div>
        {(!is_new).then(|| view! { {new.needs()} {new.discard()} })}
    }
    .into_any()
}
