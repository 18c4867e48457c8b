//! What a container holds to the rim, and how that is known: weighed, measured or poured.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::{changed, size};
use super::readings::Readings;
use crate::book::{Brimful, ContainerId, Edit, Key, Record, Tapered};
use crate::fill::Known;
use crate::jump::Kind;
use crate::measure::TypedLength;
use crate::ui::fields::{self, Choice, Entry, asks};
use crate::ui::live::{text, when};
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::words;

/// What a container holds to the rim.
#[component]
pub fn Holds(
    /// The container.
    id: ContainerId,
) -> impl IntoView {
    let state = AppState::here();
    let known = move || state.book.with(|book| book.container(id).map(|it| Known::of(&it.brimful)));
    let ways: Vec<(String, String)> =
        Known::ALL.iter().map(|way| (format!("{way:?}"), words::known(*way).to_string())).collect();
    let way = text(move || known().map(|way| format!("{way:?}")).unwrap_or_default());
    let choose = Arc::new(move |chosen: &str| {
        let way = Known::ALL.iter().copied().find(|way| format!("{way:?}") == chosen);
        let started = state.book.with_untracked(|book| {
            let started = way?.start(book.container(id)?, book.settings().units);
            Some(started.map_err(|error| words::fill_error(&error, book)))
        });
        let Some(started) = started else { return Ok(()) };
        state.apply("How it is known what a container holds", Edit::Put(Record::Container(started?)))
    });
    let about = text(move || {
        match known() {
            Some(Known::Weighed) | None => {
                "Fill it with water to the rim and weigh it: a gram is a millilitre, and that is its brimful volume."
            }
            Some(Known::Measured) => {
                "For a round cup with straight sides. Measure inside: across the base, across the rim, and straight up from base to rim. What stands here at first is a common cup of that size."
            }
            Some(Known::Poured) => {
                "For a bottle with shoulders. Pour in known amounts of water and measure each time how high it stands above the base inside. The last reading is the rim. What stands here at first is a common cup of that size."
            }
        }
        .to_string()
    });
    view! {
        <Section heading="What it holds to the rim">
            <Choice label="How you know what it holds" options=ways value=way choose />
            <p class="about">{about}</p>
            {when(move || known() == Some(Known::Weighed), move || weighed(state, id))}
            {when(move || known() == Some(Known::Measured), move || measured(state, id))}
            {when(move || known() == Some(Known::Poured), move || view! { <Readings id /> }.into_any())}
        </Section>
    }
}

fn weighed(state: AppState, id: ContainerId) -> AnyView {
    let volume = text(move || match state.book.with(|book| book.container(id).map(|it| it.brimful.clone())) {
        Some(Brimful::Weighed(amount)) => state.amount(amount),
        _ => String::new(),
    });
    let commit = fields::amount("Brimful volume", size, move |book, amount| {
        changed(book, id, |it| it.brimful = Brimful::Weighed(amount))
    });
    view! { <Entry label="Volume to the rim" asks=asks(Kind::Size, Key::Container(id), "brimful") units=fields::units(size) value=volume commit /> }.into_any()
}

fn measured(state: AppState, id: ContainerId) -> AnyView {
    let measure = move |label: &'static str, place: fn(&mut Tapered) -> &mut TypedLength| {
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
        view! { <Entry label asks=asks(Kind::Size, Key::Container(id), label) units=fields::length_units() value=length commit /> }
    };
    view! {
        <div class="fields">
            {measure("Inside, across the base", |cup| &mut cup.base)}
            {measure("Inside, across the rim", |cup| &mut cup.rim)}
            {measure("Inside, from base to rim", |cup| &mut cup.height)}
        </div>
    }
    .into_any()
}
