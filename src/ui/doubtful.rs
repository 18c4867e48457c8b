//! What is asked about on other screens and has no answer yet.

use leptos::prelude::*;

use super::library::{Library, Phase};
use super::live::live;
use super::lock::Lock;
use super::state::AppState;
use crate::app::history::History;
use crate::app::route::Route;
use crate::book::{Book, BookId, Key};
use crate::foundation::jump::Question;
use crate::say;
use crate::store::asked::questions;
use crate::words;

/// Names what was typed on other screens than the open one and may not be meant, and leads to the
/// first of it; nothing at the locked Counter.
pub fn elsewhere(route: ReadSignal<Route>) -> AnyView {
    let (state, lock, library) = (AppState::here(), Lock::here(), Library::here());
    let doubtful = Memo::new(move |_| match library.phase.get() {
        Phase::Open(book) if !lock.is_on() => {
            let here = route.get();
            state.book.with(|book_now| state.history.with(|history| open(book, book_now, history, here)))
        }
        _ => Vec::new(),
    });
    live(move || {
        let doubtful = doubtful.get();
        let Some((_, first)) = doubtful.first() else { return ().into_any() };
        let names: Vec<&str> = doubtful.iter().map(|(name, _)| name.as_str()).collect();
        view! {
            <div class="notice" role="status">
                <p>{words::left_doubtful(&names)}</p>
                <a class="button" href=first.address()>
                    {say!(market::check_now)}
                </a>
            </div>
        }
        .into_any()
    })
}

/// The open questions that no field of the screen `here` shows: what each is about, and where it is
/// asked.
fn open(id: BookId, book: &Book, history: &History, here: Route) -> Vec<(String, Route)> {
    let mut open: Vec<(String, Route)> = Vec::new();
    for (place, question) in questions(id) {
        let Some((record, field)) = place.split_once('/') else { continue };
        let Some(key) = Key::from_text(record).filter(|key| book.contains(*key)) else { continue };
        let Some(route) = Route::of_record(key) else { continue };
        let goods = matches!(key, Key::Ingredient(_) | Key::Packaging(_));
        let quick = here == Route::Buying && goods && field.ends_with("/price");
        let first = match here {
            Route::Shop => key == Key::Settings,
            Route::FirstPrice(first) => matches!(key, Key::Ingredient(_)) || key == Key::Drink(first.drink),
            _ => false,
        };
        let stands = question.steps.iter().all(|id| history.is_done(id));
        if route != here && !quick && !first && stands {
            open.push((called(&question, key, book, history), route));
        }
    }
    open
}

/// What was typed, by the name of its step, else by what it belongs to.
fn called(question: &Question, key: Key, book: &Book, history: &History) -> String {
    let step = |id: &String| history.steps().iter().find(|step| step.id == *id).map(|step| step.name.clone());
    question.steps.last().and_then(step).unwrap_or_else(|| book.name(key))
}
