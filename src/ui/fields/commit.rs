//! From a typed text to an edit.

use std::borrow::Cow;
use std::sync::Arc;

use crate::app::history::Session;
use crate::book::{Book, Edit};
use crate::foundation::measure::{
    Amount, Density, Exact, Money, Share, Temperature, Time, TypedLength, Unit, Wanted, read_amount, read_change,
    read_density, read_length, read_number, read_temperature, read_time,
};
use crate::say;
use crate::ui::state::AppState;
use crate::words::{self, Example, Speaker};
use leptos::prelude::*;

/// Reads a text and puts it in force, or says in a sentence why not.
pub type Commit = Arc<dyn Fn(&str, Session) -> Result<(), String> + Send + Sync>;

/// How a kind of value is read: in the units and the signs of the speaker.
type Read<T> = Box<dyn Fn(&str, &Speaker) -> Result<T, String> + Send + Sync>;
/// Makes the edit that puts a value in force, or `None` if its record is gone.
type Put<T> = Box<dyn Fn(&Book, T) -> Option<Edit> + Send + Sync>;

fn commit<T: 'static>(step: Cow<'static, str>, read: Read<T>, edit: Put<T>) -> Commit {
    let state = AppState::here();
    Arc::new(move |text, session| {
        let value = read(text, &state.speaker.get_untracked())?;
        let edit = state.book.with_untracked(|book| edit(book, value));
        let gone = || say!(book::gone_from_book).to_string();
        state.apply_in(&step, edit.ok_or_else(gone)?, Some(session))
    })
}

/// A number that must be there.
fn needed(
    step: Cow<'static, str>,
    example: Example,
    edit: impl Fn(&Book, Exact) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    commit(step, Box::new(move |text, speaker| exact(text, speaker, example)), Box::new(edit))
}

/// A number that may be left out.
fn optional(
    step: Cow<'static, str>,
    example: Example,
    edit: impl Fn(&Book, Option<Exact>) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    let read = move |text: &str, speaker: &Speaker| or_none(text, || exact(text, speaker, example));
    commit(step, Box::new(read), Box::new(edit))
}

fn exact(text: &str, speaker: &Speaker, example: Example) -> Result<Exact, String> {
    read_number(text, speaker.style()).map_err(|error| words::read_error(&error, &example.said(speaker)))
}

fn or_none<T>(text: &str, read: impl FnOnce() -> Result<T, String>) -> Result<Option<T>, String> {
    if text.trim().is_empty() { Ok(None) } else { read().map(Some) }
}

/// A share from its percentage.
pub(super) fn share(percent: Exact) -> Option<Share> {
    percent.over(Exact::new(100, 0)).map(Share::from_fraction).ok()
}

/// How many; `step` names the step for Undo.
pub fn count(
    step: impl Into<Cow<'static, str>>,
    example: Example,
    edit: impl Fn(&Book, Exact) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    needed(step.into(), example, edit)
}

/// How many, or nothing.
pub fn optional_count(
    step: impl Into<Cow<'static, str>>,
    example: Example,
    edit: impl Fn(&Book, Option<Exact>) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    optional(step.into(), example, edit)
}

/// A plain number, or nothing.
pub fn optional_number(
    step: impl Into<Cow<'static, str>>,
    example: Example,
    edit: impl Fn(&Book, Option<Exact>) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    optional(step.into(), example, edit)
}

/// A pH, or nothing.
pub fn optional_ph(
    step: impl Into<Cow<'static, str>>,
    edit: impl Fn(&Book, Option<Exact>) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    optional(step.into(), Example::Ph, edit)
}

/// Money.
pub fn money(
    step: impl Into<Cow<'static, str>>,
    example: Example,
    edit: impl Fn(&Book, Money) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    needed(step.into(), example, move |book, number| edit(book, Money::from_major(number)))
}

/// Money, or nothing.
pub fn optional_money(
    step: impl Into<Cow<'static, str>>,
    example: Example,
    edit: impl Fn(&Book, Option<Money>) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    optional(step.into(), example, move |book, number| edit(book, number.map(Money::from_major)))
}

/// A percentage.
pub fn percent(
    step: impl Into<Cow<'static, str>>,
    example: Example,
    edit: impl Fn(&Book, Share) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    needed(step.into(), example, move |book, number| edit(book, share(number)?))
}

/// A percentage, or nothing.
pub fn optional_percent(
    step: impl Into<Cow<'static, str>>,
    example: Example,
    edit: impl Fn(&Book, Option<Share>) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    optional(step.into(), example, move |book, number| edit(book, number.and_then(share)))
}

/// A time in minutes and seconds; none if nothing is typed.
pub fn optional_time(
    step: impl Into<Cow<'static, str>>,
    edit: impl Fn(&Book, Time) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    commit(step.into(), Box::new(time_or_none), Box::new(move |book, time| edit(book, time.unwrap_or_default())))
}

/// A time for each gallon or liter, as it is stored for each liter; none if nothing is typed.
pub fn optional_labor_per_volume(
    step: impl Into<Cow<'static, str>>,
    edit: impl Fn(&Book, Time) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    let read = |text: &str, speaker: &Speaker| {
        let time = time_or_none(text, speaker)?.unwrap_or_default();
        time.per_litre(speaker.units()).map_err(words::overflow)
    };
    commit(step.into(), Box::new(read), Box::new(edit))
}

fn time_or_none(text: &str, speaker: &Speaker) -> Result<Option<Time>, String> {
    or_none(text, || {
        read_time(text, speaker.style()).map_err(|error| words::read_error(&error, &Example::Time.said(speaker)))
    })
}

/// A density, in a US book as the weight of one cup, or nothing.
pub fn optional_density(
    step: impl Into<Cow<'static, str>>,
    edit: impl Fn(&Book, Option<Density>) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    let read = |text: &str, speaker: &Speaker| {
        or_none(text, || {
            read_density(text, speaker.units(), speaker.style())
                .map_err(|error| words::read_error(&error, &Example::Density.said(speaker)))
        })
    };
    commit(step.into(), Box::new(read), Box::new(edit))
}

/// An amount with its unit, such as `example` of the wanted unit.
pub fn amount(
    step: impl Into<Cow<'static, str>>,
    example: fn(Unit) -> Example,
    wanted: impl Fn(&Book) -> Wanted + Send + Sync + 'static,
    edit: impl Fn(&Book, Amount) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    let state = AppState::here();
    let read =
        move |text: &str, speaker: &Speaker| read_wanted(text, speaker, state.book.with_untracked(&wanted), example);
    commit(step.into(), Box::new(read), Box::new(edit))
}

/// An amount with its unit, or nothing.
pub fn optional_amount(
    step: impl Into<Cow<'static, str>>,
    example: fn(Unit) -> Example,
    wanted: impl Fn(&Book) -> Wanted + Send + Sync + 'static,
    edit: impl Fn(&Book, Option<Amount>) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    let state = AppState::here();
    let read = move |text: &str, speaker: &Speaker| {
        or_none(text, || read_wanted(text, speaker, state.book.with_untracked(&wanted), example))
    };
    commit(step.into(), Box::new(read), Box::new(edit))
}

fn read_wanted(text: &str, speaker: &Speaker, wanted: Wanted, example: fn(Unit) -> Example) -> Result<Amount, String> {
    read_amount(text, wanted, speaker.units(), speaker.style())
        .map_err(|error| words::read_error(&error, &example(wanted.unit).said(speaker)))
}

/// A length with its unit.
pub fn length(
    step: impl Into<Cow<'static, str>>,
    example: Example,
    edit: impl Fn(&Book, TypedLength) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    let read = move |text: &str, speaker: &Speaker| read_typed_length(text, speaker, example);
    commit(step.into(), Box::new(read), Box::new(edit))
}

fn read_typed_length(text: &str, speaker: &Speaker, example: Example) -> Result<TypedLength, String> {
    read_length(text, speaker.units(), speaker.style())
        .map_err(|error| words::read_error(&error, &example.said(speaker)))
}

/// A temperature with its scale, or nothing.
pub fn optional_temperature(
    step: impl Into<Cow<'static, str>>,
    edit: impl Fn(&Book, Option<Temperature>) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    let read = |text: &str, speaker: &Speaker| {
        or_none(text, || {
            read_temperature(text, speaker.units(), speaker.style())
                .map_err(|error| words::read_error(&error, &Example::Temperature.said(speaker)))
        })
    };
    commit(step.into(), Box::new(read), Box::new(edit))
}

/// What is typed and not kept in the book, or not yet. It is `None` while it cannot be read.
fn loose<T: Copy + Send + Sync + 'static>(into: RwSignal<Option<T>>, read: Read<T>) -> Commit {
    let state = AppState::here();
    Arc::new(move |text, _| {
        let value = or_none(text, || read(text, &state.speaker.get_untracked()));
        into.set(value.as_ref().ok().copied().flatten());
        value.map(|_| ())
    })
}

/// A length that is not kept in the book, or not yet.
pub fn loose_length(into: RwSignal<Option<TypedLength>>) -> Commit {
    loose(into, Box::new(|text, speaker| read_typed_length(text, speaker, Example::LevelBelowTheRim)))
}

/// An amount that is not kept in the book, or not yet.
pub fn loose_amount(
    into: RwSignal<Option<Amount>>,
    wanted: impl Fn(&Book) -> Wanted + Send + Sync + 'static,
) -> Commit {
    let state = AppState::here();
    let read = move |text: &str, speaker: &Speaker| {
        read_wanted(text, speaker, state.book.with_untracked(&wanted), Example::Amount)
    };
    loose(into, Box::new(read))
}

/// Takes what was typed to try it, or what is wrong with it, in which visit to its field; says
/// why it does not hold.
pub type Take<T> = Box<dyn Fn(Result<Option<T>, String>, Session) -> Result<(), String> + Send + Sync>;

/// What is tried and not kept in the book. It is `None` if the field is empty.
fn tried<T: 'static>(read: Read<T>, take: Take<T>) -> Commit {
    let state = AppState::here();
    Arc::new(move |text, session| take(or_none(text, || read(text, &state.speaker.get_untracked())), session))
}

/// A number that is tried, above or below zero.
pub fn tried_change(take: Take<Exact>) -> Commit {
    let read = |text: &str, speaker: &Speaker| {
        read_change(text, speaker.style()).map_err(|error| words::read_error(&error, &Example::Change.said(speaker)))
    };
    tried(Box::new(read), take)
}

/// A number that is tried.
pub fn tried_number(example: Example, take: Take<Exact>) -> Commit {
    tried(Box::new(move |text, speaker| exact(text, speaker, example)), take)
}

/// An amount that is tried.
pub fn tried_amount(wanted: impl Fn(&Book) -> Wanted + Send + Sync + 'static, take: Take<Amount>) -> Commit {
    let state = AppState::here();
    let read = move |text: &str, speaker: &Speaker| {
        read_wanted(text, speaker, state.book.with_untracked(&wanted), Example::Amount)
    };
    tried(Box::new(read), take)
}

/// Letters: a name or a remark, without blanks around it. An empty name is refused by the book.
pub fn text(
    step: impl Into<Cow<'static, str>>,
    edit: impl Fn(&Book, String) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    commit(step.into(), Box::new(|text, _| Ok(text.trim().to_string())), Box::new(edit))
}
