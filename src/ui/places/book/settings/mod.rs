//! What holds for the whole book.

mod counter;
mod fees;
mod reductions;
mod shop_costs;
mod target;
mod tax;
mod this_book;

use std::sync::Arc;

use leptos::prelude::*;

use crate::book::{self, Book, Edit, Key, Record};
use crate::drink::label::Law;
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Money, Share};
use crate::ui::fields::{self, Choice, Commit, Entry, Example, asks};
use crate::ui::live::{live, text};
use crate::ui::parts::{Fold, is_wide};
use crate::ui::state::AppState;
use counter::{counter, prices_of_suppliers};
use fees::fees;
use reductions::reductions;
use shop_costs::shop_costs;
use target::target;
use tax::tax;
use this_book::this_book;

/// Puts a value into the settings.
type Put<T> = fn(&mut book::Settings, T);

/// A setting as a field shows it, and how it is put in force.
struct Setting {
    value: Signal<String>,
    commit: Commit,
}

/// The edit that changes settings.
fn changed(book: &Book, change: impl FnOnce(&mut book::Settings)) -> Option<Edit> {
    let mut settings = book.settings().clone();
    change(&mut settings);
    Some(Edit::Put(Record::Settings(Box::new(settings))))
}

/// A setting in words, following it.
fn shown(state: AppState, show: fn(&book::Settings, AppState) -> String) -> Signal<String> {
    text(move || state.book.with(|book| show(book.settings(), state)))
}

/// A share that must be there.
fn percent(
    state: AppState,
    step: &'static str,
    example: Example,
    get: fn(&book::Settings) -> Share,
    put: Put<Share>,
) -> Setting {
    let value = text(move || state.plain_percent(state.book.with(|book| get(book.settings()))));
    Setting { value, commit: fields::percent(step, example, move |book, share| changed(book, |it| put(it, share))) }
}

/// Money that must be there.
fn money(
    state: AppState,
    step: &'static str,
    example: Example,
    get: fn(&book::Settings) -> Money,
    put: Put<Money>,
) -> Setting {
    let value = text(move || state.plain_money(state.book.with(|book| get(book.settings()))));
    Setting { value, commit: fields::money(step, example, move |book, money| changed(book, |it| put(it, money))) }
}

/// A part of the settings on a fold of its own, with what it comes to; it stands open where there is room.
fn part(
    name: &'static str,
    about: &'static str,
    figure: impl Fn() -> String + Send + Sync + 'static,
    inside: AnyView,
) -> AnyView {
    let about = (!about.is_empty()).then(|| view! { <p class="about">{about}</p> });
    view! {
        <Fold name figure=text(figure) open=is_wide()>
            {about}
            {inside}
        </Fold>
    }
    .into_any()
}

/// A field of a setting with its note under it, which may be empty.
fn field(label: &'static str, note: impl Into<Signal<String>>, setting: Setting) -> AnyView {
    let note: Signal<String> = note.into();
    let Setting { value, commit } = setting;
    view! { <Entry label note value commit /> }.into_any()
}

/// A field of a share that is often a few percent; `of` tells its questions from others.
fn small_share(label: &'static str, of: &'static str, note: impl Into<Signal<String>>, setting: Setting) -> AnyView {
    let note: Signal<String> = note.into();
    let Setting { value, commit } = setting;
    view! { <Entry label asks=asks(Kind::SmallShare, Key::Settings, of) unit="%" note value commit /> }.into_any()
}

/// A choice among the values of a setting, by their words.
fn choice<T: Copy + Send + Sync + 'static>(
    state: AppState,
    label: &'static str,
    values: Vec<(String, T)>,
    value: fn(&book::Settings, AppState) -> String,
    put: Put<T>,
) -> AnyView {
    let options: Vec<(String, String)> = values.iter().map(|(words, _)| (words.clone(), words.clone())).collect();
    let choose = Arc::new(move |chosen: &str| {
        let Some((_, value)) = values.iter().find(|(words, _)| words == chosen) else { return Ok(()) };
        let edit = state.book.with_untracked(|book| changed(book, |settings| put(settings, *value)));
        edit.map_or(Ok(()), |edit| state.apply(label, edit))
    });
    view! { <Choice label options value=shown(state, value) choose /> }.into_any()
}

/// What holds for the whole book.
#[component]
pub fn Settings() -> impl IntoView {
    let state = AppState::here();
    let law = Memo::new(move |_| state.book.with(|book| Law::of(book.settings())));
    let by_law = move |section: fn(AppState, Law) -> AnyView| {
        live(move || {
            let law = law.get();
            untrack(|| section(state, law))
        })
    };
    view! {
        <div class="folds settings">
            {this_book(state)}
            {target(state)}
            {by_law(tax)}
            {by_law(fees)}
            {shop_costs(state)}
            {reductions(state)}
            {counter(state)}
            {prices_of_suppliers(state)}
        </div>
    }
}
