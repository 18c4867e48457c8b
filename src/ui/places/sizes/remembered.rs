//! What was said on one screen of Sizes and counts on others, while the page and its book are open. Nothing of
//! it is in the book.

use std::cell::RefCell;

use leptos::prelude::*;

use crate::app::route;
use crate::book::Book;
use crate::foundation::measure::{Exact, Money};
use crate::sizes::decision::Answered;
use crate::ui::state::AppState;

/// What was said.
#[derive(Clone, Default)]
struct Remembered {
    /// The price that drinks are to be sold under.
    point: Option<Money>,
    /// Of ten buyers, how many stay when a price rises by 10 %.
    of_ten: Option<Exact>,
    /// What was said for decisions, as [`Said`](crate::sizes::said::Said) writes it.
    decisions: Vec<(route::Decision, String)>,
}

thread_local! {
    /// It is forgotten with the book that was open.
    static REMEMBERED: RefCell<Option<(RwSignal<Book>, Remembered)>> = const { RefCell::new(None) };
}

fn with<T>(state: AppState, act: impl FnOnce(&mut Remembered) -> T) -> T {
    REMEMBERED.with_borrow_mut(|all| {
        if !all.as_ref().is_some_and(|(book, _)| *book == state.book) {
            *all = None;
        }
        act(&mut all.get_or_insert_with(|| (state.book, Remembered::default())).1)
    })
}

/// The price that drinks are to be sold under, where one was typed.
pub fn point(state: AppState) -> Option<Money> {
    with(state, |it| it.point)
}

/// Remembers it.
pub fn remember_point(state: AppState, point: Option<Money>) {
    with(state, |it| it.point = point);
}

/// Of ten buyers, how many stay when a price rises by 10 %, where the owner said so.
pub fn of_ten(state: AppState) -> Option<Exact> {
    with(state, |it| it.of_ten)
}

/// The same as an answer that profits are worked out by.
pub fn answered(state: AppState) -> Option<Answered> {
    of_ten(state).and_then(Answered::of_ten)
}

/// Remembers it.
pub fn remember_of_ten(state: AppState, of_ten: Option<Exact>) {
    with(state, |it| it.of_ten = of_ten);
}

/// What was said for a decision.
pub fn said_for(state: AppState, decision: route::Decision) -> Option<String> {
    with(state, |it| it.decisions.iter().find(|(of, _)| *of == decision).map(|(_, said)| said.clone()))
}

/// Remembers it.
pub fn remember_said(state: AppState, decision: route::Decision, said: String) {
    with(state, |it| {
        it.decisions.retain(|(of, _)| *of != decision);
        it.decisions.push((decision, said));
    });
}
