//! From a typed text to an edit.

use std::sync::Arc;

use crate::book::{Book, Edit};
use crate::measure::{
    Amount, Exact, Money, NumberStyle, ReadError, Share, System, Time, Wanted, read_amount, read_number,
};
use crate::ui::history::Session;
use crate::ui::state::AppState;
use crate::words;
use leptos::prelude::*;

/// Reads a text and puts it in force, or says in a sentence why not.
pub type Commit = Arc<dyn Fn(&str, Session) -> Result<(), String> + Send + Sync>;

/// Reads with the book's units and the locale's signs.
struct Reading {
    units: System,
    style: NumberStyle,
}

fn commit<T>(
    step: String,
    read: impl Fn(&str, &Reading) -> Result<T, String> + Send + Sync + 'static,
    edit: impl Fn(&Book, T) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    let state = AppState::here();
    Arc::new(move |text, session| {
        let units = state.book.with_untracked(|book| book.settings().units);
        let reading = Reading { units, style: state.style.get_untracked() };
        let value = read(text, &reading)?;
        let edit = state.book.with_untracked(|book| edit(book, value));
        let gone = || "This is not in the book any more. Undo its removal, or go back.".to_string();
        state.apply_in(&step, edit.ok_or_else(gone)?, Some(session))
    })
}

fn exact(text: &str, reading: &Reading, example: &str) -> Result<Exact, String> {
    read_number(text, &reading.style).map_err(|error| words::read_error(&error, example))
}

fn or_none<T>(text: &str, read: impl FnOnce() -> Result<T, String>) -> Result<Option<T>, String> {
    if text.trim().is_empty() { Ok(None) } else { read().map(Some) }
}

fn share(text: &str, reading: &Reading) -> Result<Share, String> {
    let percent = exact(text, reading, "65")?;
    percent.over(Exact::new(100, 0)).map(Share::from_fraction).map_err(words::overflow)
}

/// A plain number, or nothing.
pub fn optional_number(
    step: impl Into<String>,
    edit: impl Fn(&Book, Option<Exact>) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    commit(step.into(), |text, reading| or_none(text, || exact(text, reading, "1.05")), edit)
}

/// How many; `step` names the step for Undo.
pub fn count(step: impl Into<String>, edit: impl Fn(&Book, Exact) -> Option<Edit> + Send + Sync + 'static) -> Commit {
    commit(step.into(), |text, reading| exact(text, reading, "1"), edit)
}

/// Money.
pub fn money(step: impl Into<String>, edit: impl Fn(&Book, Money) -> Option<Edit> + Send + Sync + 'static) -> Commit {
    commit(step.into(), |text, reading| exact(text, reading, "38.50").map(Money::from_major), edit)
}

/// Money, or nothing.
pub fn optional_money(
    step: impl Into<String>,
    edit: impl Fn(&Book, Option<Money>) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    let read = |text: &str, reading: &Reading| or_none(text, || exact(text, reading, "9.50").map(Money::from_major));
    commit(step.into(), read, edit)
}

/// A percentage.
pub fn percent(step: impl Into<String>, edit: impl Fn(&Book, Share) -> Option<Edit> + Send + Sync + 'static) -> Commit {
    commit(step.into(), share, edit)
}

/// A percentage, or nothing.
pub fn optional_percent(
    step: impl Into<String>,
    edit: impl Fn(&Book, Option<Share>) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    commit(step.into(), |text, reading| or_none(text, || share(text, reading)), edit)
}

/// A time in seconds.
pub fn seconds(step: impl Into<String>, edit: impl Fn(&Book, Time) -> Option<Edit> + Send + Sync + 'static) -> Commit {
    commit(step.into(), |text, reading| exact(text, reading, "90").map(Time::from_seconds), edit)
}

/// An amount with its unit.
pub fn amount(
    step: impl Into<String>,
    wanted: impl Fn(&Book) -> Wanted + Send + Sync + 'static,
    edit: impl Fn(&Book, Amount) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    let state = AppState::here();
    let read = move |text: &str, reading: &Reading| read_wanted(text, reading, state.book.with_untracked(&wanted));
    commit(step.into(), read, edit)
}

/// An amount with its unit, or nothing.
pub fn optional_amount(
    step: impl Into<String>,
    wanted: impl Fn(&Book) -> Wanted + Send + Sync + 'static,
    edit: impl Fn(&Book, Option<Amount>) -> Option<Edit> + Send + Sync + 'static,
) -> Commit {
    let state = AppState::here();
    let read = move |text: &str, reading: &Reading| {
        or_none(text, || read_wanted(text, reading, state.book.with_untracked(&wanted)))
    };
    commit(step.into(), read, edit)
}

fn read_wanted(text: &str, reading: &Reading, wanted: Wanted) -> Result<Amount, String> {
    let example = |error: &ReadError| words::read_error(error, &format!("12 {}", wanted.unit));
    read_amount(text, wanted, reading.units, &reading.style).map_err(|error| example(&error))
}

/// Letters: a name or a remark, without blanks around it.
pub fn text(step: impl Into<String>, edit: impl Fn(&Book, String) -> Option<Edit> + Send + Sync + 'static) -> Commit {
    commit(step.into(), |text, _| Ok(text.trim().to_string()), edit)
}
