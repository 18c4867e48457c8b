//! What was said on one screen of Sizes and counts on others, for as long as the tab is open. Nothing of it is in the
//! book.

use std::cell::RefCell;

use leptos::prelude::*;

use crate::app::route;
use crate::book::{Book, BookId};
use crate::foundation::measure::{Exact, Money};
use crate::sizes::decision::Answered;
use crate::sizes::said::Everywhere;
use crate::store::this_tab::{note_said_of_sizes, said_of_sizes};
use crate::ui::library::{Library, Phase};
use crate::ui::state::AppState;

/// What was said.
#[derive(Clone, Default)]
struct Remembered {
    /// What counts on every screen; it outlives loading the page anew.
    everywhere: Everywhere,
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
        let first = || {
            let kept = open_book().and_then(said_of_sizes).unwrap_or_default();
            (state.book, Remembered { everywhere: Everywhere::read(&kept), ..Remembered::default() })
        };
        act(&mut all.get_or_insert_with(first).1)
    })
}

fn open_book() -> Option<BookId> {
    match Library::here().phase.get_untracked() {
        Phase::Open(book) => Some(book),
        _ => None,
    }
}

fn remember(state: AppState, change: impl FnOnce(&mut Everywhere)) {
    let text = with(state, |it| {
        change(&mut it.everywhere);
        it.everywhere.text()
    });
    if let Some(book) = open_book() {
        note_said_of_sizes(book, &text);
    }
}

/// The price that drinks are to be sold under, where one was typed.
pub fn point(state: AppState) -> Option<Money> {
    with(state, |it| it.everywhere.point)
}

/// Remembers it.
pub fn remember_point(state: AppState, point: Option<Money>) {
    remember(state, |everywhere| everywhere.point = point);
}

/// Of ten buyers, how many stay when a price rises by 10 %, where the owner said so.
pub fn of_ten(state: AppState) -> Option<Exact> {
    with(state, |it| it.everywhere.of_ten)
}

/// The same as an answer that profits are worked out by.
pub fn answered(state: AppState) -> Option<Answered> {
    of_ten(state).and_then(Answered::of_ten)
}

/// Remembers it.
pub fn remember_of_ten(state: AppState, of_ten: Option<Exact>) {
    remember(state, |everywhere| everywhere.of_ten = of_ten);
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
