//! How full a container is: its headspace, its labeled size, the fill line.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::{changed, size};
use super::tolerances::Allowed;
use crate::book::{Book, ContainerId, Headspace, Key};
use crate::drink::fill::{fill, fill_line};
use crate::foundation::jump::Kind;
use crate::say;
use crate::ui::fields::{self, Addition, Choice, Draft, Entry, Example, Field, Hangs, NewThing, Typed, asks};
use crate::ui::glass::{glass, poured};
use crate::ui::live::{live, text, trouble, when};
use crate::ui::parts::{Figure, Fold, Section, figures};
use crate::ui::state::AppState;
use crate::working::Shown;

/// How what is left empty is told.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Way {
    Volume,
    Share,
    Height,
}

impl Way {
    const ALL: &[Way] = &[Way::Volume, Way::Share, Way::Height];

    const fn of(headspace: Headspace) -> Way {
        match headspace {
            Headspace::Volume(_) => Way::Volume,
            Headspace::Share(_) => Way::Share,
            Headspace::Height(_) => Way::Height,
        }
    }

    fn key(self) -> String {
        format!("{self:?}")
    }

    fn words(self) -> &'static str {
        match self {
            Way::Volume => say!(labels::by_volume),
            Way::Share => say!(labels::by_share),
            Way::Height => say!(labels::by_height),
        }
    }

    fn read(self, typed: &mut Typed<'_>, book: &Book) -> Option<Headspace> {
        match self {
            Way::Volume => typed.amount_such_as(EMPTY, size(book), Example::SmallVolume).map(Headspace::Volume),
            Way::Share => typed.percent(EMPTY, Example::HeadspaceShare).map(Headspace::Share),
            Way::Height => typed.length(EMPTY, Example::HeadspaceHeight).map(Headspace::Height),
        }
    }
}

/// The field of what is left empty, by what is missing while it is empty.
pub(super) const EMPTY: Field = Field::Headspace;

/// What is left empty, told in another way, typed and not in the book yet.
const fn draft(id: ContainerId, way: Way) -> Draft {
    Draft { what: NewThing::Headspace, of: Some(Key::Container(id)), id: way as u64 }
}

/// The field for what is left empty. Of a new container, the volume is typed with the rest of it.
fn left_empty(state: AppState, id: ContainerId, way: Way, container: &Addition, hangs: Hangs) -> AnyView {
    let is_new = !untrack(|| container.is_there());
    let there = move |book: &Book| book.container(id).is_some_and(|it| Way::of(it.headspace) == way);
    let make = move |typed: &mut Typed<'_>, book: &Book| {
        let headspace = way.read(typed, book)?;
        changed(book, id, |it| it.headspace = headspace)
    };
    let new =
        if is_new { container.clone() } else { Addition::of(draft(id, way), there, say!(labels::headspace), make) };
    let value = text(move || match state.book.with(|book| book.container(id).map(|it| it.headspace)) {
        Some(Headspace::Volume(amount)) if way == Way::Volume => state.amount(amount),
        Some(Headspace::Share(share)) if way == Way::Share => state.plain_percent(share),
        Some(Headspace::Height(length)) if way == Way::Height => state.typed_length(length),
        _ => String::new(),
    });
    let put = move |book: &Book, headspace| changed(book, id, |it| it.headspace = headspace);
    let commit = match way {
        Way::Volume => fields::amount(
            say!(labels::headspace),
            |_| Example::SmallVolume,
            size,
            move |book, amount| put(book, Headspace::Volume(amount)),
        ),
        Way::Share => fields::percent(say!(labels::headspace), Example::HeadspaceShare, move |book, share| {
            put(book, Headspace::Share(share))
        }),
        Way::Height => fields::length(say!(labels::headspace), Example::HeadspaceHeight, move |book, length| {
            put(book, Headspace::Height(length))
        }),
    };
    let (value, commit) = (new.value(EMPTY, value), new.commit(EMPTY, commit));
    let key = Key::Container(id);
    let example = |example: Example| state.speaker.with_untracked(|speaker| example.said(speaker));
    let entry = match way {
        Way::Volume => {
            let (asks, units) = (asks(Kind::Size, key, "headspace/volume"), fields::units(size));
            view! { <Entry label=say!(labels::headspace) asks hangs units example=example(Example::SmallVolume) value commit /> }.into_any()
        }
        Way::Share => {
            view! { <Entry label=say!(labels::headspace) asks=asks(Kind::SmallShare, key, "headspace/share") hangs unit="%" example=example(Example::HeadspaceShare) value commit /> }.into_any()
        }
        Way::Height => {
            let (asks, units) = (asks(Kind::Size, key, "headspace/height"), fields::length_units());
            view! { <Entry label=say!(labels::headspace) asks hangs units example=example(Example::HeadspaceHeight) value commit /> }.into_any()
        }
    };
    // What a new container needs stands under all of it.
    let needs = if is_new { ().into_any() } else { view! { {new.needs()} {new.discard()} }.into_any() };
    view! { <div class="entry">{entry} {needs}</div> }.into_any()
}

/// How full a container is poured.
#[component]
pub fn Poured(
    /// The container.
    id: ContainerId,
    /// How it gets into the book.
    new: Addition,
    /// The answers that hang on it.
    hangs: Hangs,
    /// Whether it stands open at first.
    open: bool,
) -> impl IntoView {
    let state = AppState::here();
    let has_heights = move || state.book.with(|book| book.container(id)?.brimful.height().ok()?).is_some();
    let in_book = move |book: &Book| book.container(id).map(|it| Way::of(it.headspace));
    let typed = move || Way::ALL.iter().copied().find(|way| draft(id, *way).is_open(state));
    let known = Memo::new(move |_| typed().or_else(|| state.book.with(in_book)).unwrap_or(Way::Volume));
    let ways = Memo::new(move |_| {
        let has_heights = has_heights();
        let ways = Way::ALL.iter().filter(|way| has_heights || **way != Way::Height);
        ways.map(|way| (way.key(), way.words().to_string())).collect::<Vec<_>>()
    });
    let choose_way = Arc::new(move |chosen: &str| {
        let now = state.book.with_untracked(in_book);
        let now = now.ok_or(say!(labels::name_and_size_first))?;
        for way in Way::ALL {
            draft(id, *way).discard(state);
        }
        if let Some(way) = Way::ALL.iter().find(|way| **way != now && way.key() == chosen) {
            draft(id, *way).begin(state);
        }
        Ok(())
    });
    let as_new = new.clone();
    let by = move |way| {
        let as_new = as_new.clone();
        when(move || known.get() == way, move || left_empty(state, id, way, &as_new, hangs))
    };
    let figure = text(move || {
        let headspace = state.book.with(|book| book.container(id).map(|it| it.headspace));
        match headspace {
            Some(Headspace::Volume(amount)) => state.amount(amount),
            Some(Headspace::Share(share)) => state.percent(share),
            Some(Headspace::Height(length)) => state.typed_length(length),
            None => String::new(),
        }
    });
    view! {
        <Fold name=say!(labels::headspace) figure=figure open>
            <div class="fields">
                <Choice label=say!(labels::headspace_by) options=ways value=text(move || known.get().key()) choose=choose_way />
                {by(Way::Volume)}
                {by(Way::Share)}
                {by(Way::Height)}
                {new.once_there(move || declared(state, id, hangs))}
            </div>
        </Fold>
    }
}

/// The field for what the menu or label says that it holds.
fn declared(state: AppState, id: ContainerId, hangs: Hangs) -> AnyView {
    let in_book = move || state.book.with(|book| book.container(id)?.declared);
    let commit = fields::optional_amount(say!(labels::labeled_size), Example::Amount, size, move |book, amount| {
        changed(book, id, |it| it.declared = amount)
    });
    view! {
        <Entry
            label=say!(labels::labeled_size)
            asks=asks(Kind::Size, Key::Container(id), "declared")
            hangs
            example=say!(common::none)
            note=say!(labels::labeled_size_about)
            value=text(move || in_book().map(|amount| state.amount(amount)).unwrap_or_default())
            units=fields::units(size)
            commit
        />
    }
    .into_any()
}

/// What is poured, as a picture and in figures.
pub(super) fn answer(state: AppState, id: ContainerId, hangs: Hangs) -> AnyView {
    view! {
        <Section heading=say!(common::fill)>{hangs.answer(move || poured_now(state, id))}</Section>
    }
    .into_any()
}

fn poured_now(state: AppState, id: ContainerId) -> AnyView {
    let filled = move || state.book.with(|book| fill(book.container(id)?).ok());
    let volume =
        text(move || filled().map_or_else(|| say!(common::none).to_string(), |fill| state.volume(fill.volume)));
    let lines = move || {
        let Some(fill) = filled() else { return Vec::new() };
        let line = state.book.with(|book| fill_line(book.container(id)?).ok()?);
        line.map_or(Vec::new(), |line| {
            vec![
                (say!(goods::brimful_capacity).to_string(), state.volume(fill.brimful), Some(Shown::Brimful(id))),
                (say!(labels::fill_line_above_base).to_string(), state.length(line.above_base), None),
                (say!(labels::fill_line_below_rim).to_string(), state.length(line.below_rim), None),
            ]
        })
    };
    let picture = live(move || {
        let container = state.book.with(|book| book.container(id).cloned());
        match (container, filled()) {
            (Some(container), Some(fill)) => glass(&container, &fill, poured(&fill)),
            _ => ().into_any(),
        }
    });
    let short = move || {
        let short = state.volume(filled()?.short_of_declared?);
        Some(say!(labels::container_fill_below_labeled_size, short = short))
    };
    view! {
        <div class="in-glass">
            {picture} <dl class="figures">
                <Figure name=say!(common::fill) large=true value=volume how=Shown::Poured(id) />
                {figures(lines)}
            </dl>
        </div>
        {trouble(short)}
        <Allowed id />
    }
    .into_any()
}
