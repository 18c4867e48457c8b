//! The open book is kept: its steps, what is typed and not in the book, and every edit saved.

use std::rc::Rc;

use leptos::prelude::*;
use leptos::task::spawn_local;

use super::fields;
use super::library::Library;
use super::locale;
use super::random::random;
use super::state::AppState;
use super::today::{moment, now};
use crate::app::history::History;
use crate::app::unfinished::Unfinished;
use crate::book::{Book, BookId, Settings};
use crate::exchange;
use crate::say;
use crate::store::{BookEntry, Change, asked, first_paint, this_tab};
use crate::words;

/// What goes on as long as the page lives, from now on.
pub fn begin(library: Library) {
    fields::hear_entering();
    if let Some(core) = library.core() {
        let forget = |book| {
            asked::forget(book);
            this_tab::note_unfinished(book, &[]);
        };
        let empty = || Book::new(Settings::in_country(say!(first::new_book_name), &locale::country_here()));
        core.can_change(forget, empty);
    }
}

/// What tells a book in the list from another: how many drinks it has, and when it was changed.
pub fn told_apart(entry: &BookEntry) -> String {
    words::keeping::told_apart(entry, entry.changed.map(moment))
}

/// Keeps the book that was just opened and is on the screen.
pub fn keep(library: Library, state: AppState) {
    // The page itself shows the name when it is loaded again.
    let name = Memo::new(move |_| state.book.with(|book| book.settings().name.clone()));
    Effect::new(move |_| name.with(|name| first_paint::note_name(name)));
    let Some(core) = library.core() else { return };
    let Some(id) = core.opened_id() else { return };
    if let Some(edit) = core.replay() {
        // It is the book that is on the screen that this leads on from.
        let _ = state.apply_remote(&edit);
    }
    let history = History::open(id, random(), &core.opened_steps());
    let keeping = core.clone();
    let keep = move |name: &str, book: &Book, applied: &_, slips, durability| {
        let change = Change::new(name, now(), book, applied);
        keeping.save(change.beside(slips, durability));
    };
    state.keep_by(history, Box::new(keep));
    spawn_local(async move {
        let (tab, others) = this_tab::among_tabs(random()).await;
        // Another book may be open by now.
        let _ = state.history.try_update(|history| history.among(tab, others));
    });
    keep_unfinished(id, state);
    core.seat(Rc::new(state));
}

/// Brings back what was typed and is not in the book when the page is loaded anew.
fn keep_unfinished(book: BookId, state: AppState) {
    state.unfinished.set(Unfinished::from_texts(&this_tab::unfinished(book)));
    Effect::new(move |_| state.unfinished.with(|all| this_tab::note_unfinished(book, &all.to_texts())));
}

/// Reads a book file.
///
/// # Errors
/// What is wrong with it, as a sentence.
pub fn read_book(text: String) -> Result<Book, String> {
    exchange::read(text).map_err(|error| words::book_file_error(&error))
}
