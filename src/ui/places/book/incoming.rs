//! A book from a file, or from what is left of a damaged one: what is whole becomes a new book.

use leptos::prelude::*;

use super::choose_file::{ChooseFile, left_out};
use crate::exchange::TakenIn;
use crate::say;
use crate::ui::library::{Library, Way};
use crate::ui::live::{live, press};
use crate::words;

/// Asks whether what was taken in is to become a new book.
#[component]
pub fn Incoming(
    /// What was taken in.
    taken: RwSignal<Option<TakenIn>>,
) -> impl IntoView {
    let library = Library::here();
    let add = move || {
        if let Some(wanted) = taken.get_untracked() {
            taken.set(None);
            library.go(Way::Add(Box::new(wanted.book)));
        }
    };
    live(move || match taken.get() {
        Some(wanted) => view! {
            <div class="teach" role="status">
                <h3>{wanted.book.settings().name.clone()}</h3>
                <p>{words::restore_points::whole(&wanted.book)}</p>
                {left_out(&wanted.left_out)}
                <p class="actions">
                    <button class="main" on:click=press(add)>
                        {say!(book::add_as_new_book)}
                    </button>
                    <button class="quiet" on:click=press(move || taken.set(None))>
                        {say!(first::cancel)}
                    </button>
                </p>
            </div>
        }
        .into_any(),
        None => ().into_any(),
    })
}

/// A file to be opened as a new book.
#[component]
pub fn OpenFile() -> impl IntoView {
    let taken = RwSignal::new(None::<TakenIn>);
    let refused = RwSignal::new(None::<String>);
    view! {
        <ChooseFile label=say!(book::open_book_file) id="open-file" taken refused />
        <Incoming taken />
    }
}
