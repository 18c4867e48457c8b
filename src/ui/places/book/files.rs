//! The book as a file, in and out; the computed offers as a table for a spreadsheet.

use leptos::prelude::*;

use super::choose_file::{ChooseFile, left_out, lines};
use crate::backup::restore_points::Why;
use crate::exchange::{TakenIn, preview};
use crate::ui::files::{file_name, save_text};
use crate::ui::library::{Library, Way};
use crate::ui::live::{live, press};
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::words;

/// Said when a file was not taken.
const UNCHANGED: &str = "Your book is as it was.";

/// Files in and out.
#[component]
pub fn Files() -> impl IntoView {
    let (library, state) = (Library::here(), AppState::here());
    let taken = RwSignal::new(None::<TakenIn>);
    let refused = RwSignal::new(None::<String>);
    let save_offers = move || {
        state.book.with_untracked(|book| {
            let csv = state.ledger.with_untracked(|ledger| words::offers_csv(book, ledger));
            save_text(&format!("{}-offers.csv", file_name(book)), "text/csv", &csv);
        });
    };
    let replace = move || {
        if let Some(wanted) = taken.get_untracked() {
            taken.set(None);
            // What changed here since the preview counts too: the edit is made anew.
            let preview = state.book.with_untracked(|open| preview(open, &wanted.book));
            if !preview.changes_nothing() {
                library.before(Why::Import);
            }
            let done = state.apply_whole("Import a book", &preview.edit);
            if done.is_err() {
                library.not_done();
            }
            refused.set(done.err());
        }
    };
    let add = move || {
        if let Some(wanted) = taken.get_untracked() {
            taken.set(None);
            library.go(Way::Add(Box::new(wanted.book)));
        }
    };
    let ask = move |wanted: TakenIn| {
        let preview = state.book.with_untracked(|open| preview(open, &wanted.book));
        view! {
            <div class="teach" role="status">
                <h3>{format!("“{}” in place of this book", preview.name)}</h3>
                {lines(words::import_changes(&preview))}
                {left_out(&wanted.left_out)}
                <p class="actions">
                    <button class="main" on:click=press(replace)>
                        "Replace this book"
                    </button>
                    <button class="button" on:click=press(add)>
                        "Keep both: add as a new book"
                    </button>
                    <button class="quiet" on:click=press(move || taken.set(None))>
                        "Leave it"
                    </button>
                </p>
                <p class="soft">"Undo takes a replacement back, and today's book becomes a restore point."</p>
            </div>
        }
        .into_any()
    };
    view! {
        <Section
            heading="Files"
            about="The book file holds everything and can be read back whole. Keep one somewhere else: a browser may clear its storage."
        >
            <p class="actions">
                <button class="button" on:click=press(move || library.save_copy(state))>
                    "Save the book as a file"
                </button>
                <button class="button" on:click=press(save_offers)>
                    "Save the offers as CSV"
                </button>
            </p>
            <ChooseFile label="Import a book file" id="import-file" taken refused unchanged=UNCHANGED />
            {live(move || taken.get().map(ask).into_any())}
        </Section>
    }
}
