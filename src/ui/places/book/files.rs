//! The book as a file, in and out; the computed offers as a table for a spreadsheet.

use leptos::prelude::*;

use super::choose_file::{ChooseFile, left_out, lines};
use crate::backup::restore_points::Why;
use crate::exchange::{TakenIn, preview};
use crate::say;
use crate::ui::files::{file_name, save_text};
use crate::ui::library::{Library, Way};
use crate::ui::live::{live, press};
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::words;

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
            let done = state.apply_whole(say!(book::import_book), &preview.edit);
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
                <h3>{say!(book::replace_with_book, book = &preview.name)}</h3>
                {lines(words::import_changes(&preview))}
                {left_out(&wanted.left_out)}
                <p class="actions">
                    <button class="main" on:click=press(replace)>
                        {say!(book::replace_book)}
                    </button>
                    <button class="button" on:click=press(add)>
                        {say!(book::add_as_new_book)}
                    </button>
                    <button class="quiet" on:click=press(move || taken.set(None))>
                        {say!(first::cancel)}
                    </button>
                </p>
                <p class="soft">{say!(book::import_about)}</p>
            </div>
        }
        .into_any()
    };
    view! {
        <Section
            heading=say!(book::files)
            about=say!(book::files_about)
        >
            <p class="actions">
                <button class="button" on:click=press(move || library.save_copy(state))>
                    {say!(book::save_book_file)}
                </button>
                <button class="button" on:click=press(save_offers)>
                    {say!(book::save_sizes_csv)}
                </button>
            </p>
            <ChooseFile label=say!(book::import_book_file) id="import-file" taken refused unchanged=say!(book::book_unchanged) />
            {live(move || taken.get().map(ask).into_any())}
        </Section>
    }
}
