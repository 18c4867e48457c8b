//! The book as a file, in and out; the computed offers as a table for a spreadsheet.

use leptos::ev;
use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::HtmlInputElement;

use crate::app::restore_points::Why;
use crate::book::Book;
use crate::exchange::{LeftOut, Preview, TakenIn, preview};
use crate::ui::beside::save_copy;
use crate::ui::files::{book_of, file_name, save_text};
use crate::ui::library::{Library, Way};
use crate::ui::live::{live, press, text, when};
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::words;

/// Said when a file was not taken.
const UNCHANGED: &str = "Your book is as it was.";

/// A book that was read from a file and waits for the person's word.
#[derive(Clone)]
struct Incoming {
    book: Book,
    preview: Preview,
    left_out: Vec<LeftOut>,
}

/// What was left out that is shown at once.
const SHOWN: usize = 20;

/// Files in and out.
#[component]
pub fn Files() -> impl IntoView {
    let (library, state) = (Library::here(), AppState::here());
    let incoming = RwSignal::new(None::<Incoming>);
    let refused = RwSignal::new(None::<String>);
    let progress = RwSignal::new(None::<usize>);
    let save_offers = move || {
        state.book.with_untracked(|book| {
            let csv = state.ledger.with_untracked(|ledger| words::offers_csv(book, ledger));
            save_text(&format!("{}-offers.csv", file_name(book)), "text/csv", &csv);
        });
    };
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
        incoming.set(None);
        progress.set(Some(0));
        spawn_local(async move {
            let read = book_of(&file, move |percent| progress.set(Some(percent))).await;
            progress.set(None);
            refused.set(read.as_ref().err().map(|sentence| format!("{sentence} {UNCHANGED}")));
            incoming.set(read.ok().map(|TakenIn { book, left_out }| {
                let preview = state.book.with_untracked(|open| preview(open, &book));
                Incoming { book, preview, left_out }
            }));
        });
    };
    let replace = move || {
        if let Some(wanted) = incoming.get_untracked() {
            // What changed here since the preview counts too: the edit is made anew.
            let edit = state.book.with_untracked(|open| preview(open, &wanted.book).edit);
            if !wanted.preview.changes_nothing() {
                library.before(Why::Import);
            }
            let done = state.apply_whole("Import a book", &edit);
            if done.is_err() {
                library.not_done();
            }
            refused.set(done.err());
            incoming.set(None);
        }
    };
    let add = move || {
        if let Some(wanted) = incoming.get_untracked() {
            incoming.set(None);
            library.go(Way::Add(Box::new(wanted.book)));
        }
    };
    let sentence = text(move || refused.get().unwrap_or_default());
    view! {
        <Section
            heading="Files"
            about="The book file holds everything and can be read back whole. Keep one somewhere else: a browser may clear its storage."
        >
            <p class="actions">
                <button class="button" on:click=press(move || save_copy(library, state))>
                    "Save the book as a file"
                </button>
                <button class="button" on:click=press(save_offers)>
                    "Save the offers as CSV"
                </button>
            </p>
            <div class="entry">
                <label for="import-file">"Import a book file"</label>
                <div class="entry-box">
                    <input id="import-file" aria-describedby="import-error" type="file" accept=".json,.txt,application/json,text/plain" on:change=chosen />
                </div>
                <p class="entry-error" id="import-error" role="status">{sentence}</p>
                {when(move || progress.with(Option::is_some), move || reading(progress))}
            </div>
            {live(move || match incoming.get() {
                Some(wanted) => view! {
                            <div class="teach" role="status">
                                <h3>{format!("“{}” in place of this book", wanted.preview.name)}</h3>
                                {lines(words::import_changes(&wanted.preview))}
                                {left_out(&wanted.left_out)}
                                <p class="actions">
                                    <button class="main" on:click=press(replace)>
                                        "Replace this book"
                                    </button>
                                    <button class="button" on:click=press(add)>
                                        "Keep both: add as a new book"
                                    </button>
                                    <button class="quiet" on:click=press(move || incoming.set(None))>
                                        "Leave it"
                                    </button>
                                </p>
                                <p class="soft">"Undo takes a replacement back, and today's book becomes a restore point."</p>
                            </div>
                        }.into_any(),
                None => ().into_any(),
            })}
        </Section>
    }
}

/// How far the reading of a file is.
pub fn reading(progress: RwSignal<Option<usize>>) -> AnyView {
    let percent = text(move || progress.get().unwrap_or_default().to_string());
    view! {
        <p class="soft">
            "Reading the file " <progress aria-label="Reading the file" max="100" value=percent></progress>
        </p>
    }
    .into_any()
}

fn lines(sentences: Vec<String>) -> AnyView {
    view! { <ul>{sentences.into_iter().map(|line| view! { <li>{line}</li> }).collect_view()}</ul> }.into_any()
}

/// What of a stored book is not in what would be taken in.
pub fn left_out(out: &[LeftOut]) -> AnyView {
    if out.is_empty() {
        return ().into_any();
    }
    let more = match out.len().saturating_sub(SHOWN) {
        0 => String::new(),
        more => format!("And {more} more."),
    };
    view! {
        <h4>"Not whole in this file"</h4>
        {lines(out.iter().take(SHOWN).map(words::not_taken).collect())}
        <p class="soft">{more}</p>
    }
    .into_any()
}
