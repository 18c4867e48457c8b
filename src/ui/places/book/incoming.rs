//! A book from a file, or from what is left of a damaged one: what is whole becomes a new book.

use leptos::ev;
use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::HtmlInputElement;

use super::files::{left_out, reading};
use crate::exchange::TakenIn;
use crate::ui::files::book_of;
use crate::ui::library::{Library, Way};
use crate::ui::live::{live, press, text, when};
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
                <h3>{format!("“{}”", wanted.book.settings().name)}</h3>
                <p>{words::restore_points::whole(&wanted.book)}</p>
                {left_out(&wanted.left_out)}
                <p class="actions">
                    <button class="main" on:click=press(add)>
                        "Add as a new book"
                    </button>
                    <button class="quiet" on:click=press(move || taken.set(None))>
                        "Cancel"
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
    let progress = RwSignal::new(None::<usize>);
    let chosen = move |event: ev::Event| {
        let input: HtmlInputElement = event_target(&event);
        let Some(file) = input.files().and_then(|files| files.get(0)) else { return };
        // One file at a time.
        if progress.with_untracked(Option::is_some) {
            return;
        }
        // The same file can be chosen again only if the field is empty.
        input.set_value("");
        refused.set(None);
        taken.set(None);
        progress.set(Some(0));
        spawn_local(async move {
            let read = book_of(&file, move |percent| progress.set(Some(percent))).await;
            progress.set(None);
            refused.set(read.as_ref().err().cloned());
            taken.set(read.ok());
        });
    };
    let sentence = text(move || refused.get().unwrap_or_default());
    view! {
        <div class="entry">
            <label for="open-file">"Open a book file"</label>
            <div class="entry-box">
                <input
                    id="open-file"
                    aria-describedby="open-error"
                    type="file"
                    accept=".json,.txt,application/json,text/plain"
                    on:change=chosen
                />
            </div>
            <p class="entry-error" id="open-error" role="status">{sentence}</p>
            {when(move || progress.with(Option::is_some), move || reading(progress))}
        </div>
        <Incoming taken />
    }
}
