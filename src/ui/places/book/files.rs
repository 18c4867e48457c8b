//! The book as a file, in and out; the computed offers as a table for a spreadsheet.

use leptos::ev;
use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen_futures::JsFuture;
use web_sys::HtmlInputElement;

use crate::book::Book;
use crate::exchange::{self, Preview, preview};
use crate::ui::files::{file_name, save_book_file, save_text};
use crate::ui::library::Library;
use crate::ui::live::{live, press, text};
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
}

/// Files in and out.
#[component]
pub fn Files() -> impl IntoView {
    let (library, state) = (Library::here(), AppState::here());
    let incoming = RwSignal::new(None::<Incoming>);
    let refused = RwSignal::new(None::<String>);
    let save_offers = move || {
        state.book.with_untracked(|book| {
            let csv = state.ledger.with_untracked(|ledger| words::offers_csv(book, ledger));
            save_text(&format!("{}-offers.csv", file_name(book)), "text/csv", &csv);
        });
    };
    let chosen = move |event: ev::Event| {
        let input: HtmlInputElement = event_target(&event);
        let Some(file) = input.files().and_then(|files| files.get(0)) else { return };
        // The same file can be chosen again only if the field is empty.
        input.set_value("");
        spawn_local(async move {
            let bytes = JsFuture::from(file.array_buffer()).await;
            let read = match bytes {
                Ok(buffer) => {
                    let bytes = js_sys::Uint8Array::new(&buffer).to_vec();
                    exchange::read(bytes).map_err(|error| format!("{} {UNCHANGED}", words::book_file_error(&error)))
                }
                Err(_) => Err(format!("The file could not be read. Choose it again. {UNCHANGED}")),
            };
            refused.set(read.as_ref().err().cloned());
            incoming.set(read.ok().map(|book| {
                let preview = state.book.with_untracked(|open| preview(open, &book));
                Incoming { book, preview }
            }));
        });
    };
    let replace = move || {
        if let Some(wanted) = incoming.get_untracked() {
            // What changed here since the preview counts too: the edit is made anew.
            let edit = state.book.with_untracked(|open| preview(open, &wanted.book).edit);
            refused.set(state.apply_whole("Import a book", &edit).err());
            incoming.set(None);
        }
    };
    let add = move || {
        if let Some(wanted) = incoming.get_untracked() {
            incoming.set(None);
            library.add(wanted.book);
        }
    };
    let sentence = text(move || refused.get().unwrap_or_default());
    view! {
        <Section
            heading="Files"
            about="The book file holds everything and can be read back whole. Keep one somewhere else: a browser may clear its storage."
        >
            <p class="actions">
                <button class="button" on:click=press(move || state.book.with_untracked(save_book_file))>
                    "Save the book as a file"
                </button>
                <button class="button" on:click=press(save_offers)>
                    "Save the offers as CSV"
                </button>
            </p>
            <div class="entry">
                <label for="import-file">"Import a book file"</label>
                <div class="entry-box">
                    <input id="import-file" aria-describedby="import-error" type="file" accept=".json,application/json" on:change=chosen />
                </div>
                <p class="entry-error" id="import-error" role="status">{sentence}</p>
            </div>
            {live(move || match incoming.get() {
                Some(wanted) => view! {
                            <div class="teach" role="status">
                                <h3>{format!("“{}” in place of this book", wanted.preview.name)}</h3>
                                <ul>{words::import_changes(&wanted.preview).into_iter().map(|line| view! { <li>{line}</li> }).collect_view()}</ul>
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
                                <p class="soft">"Undo takes a replacement back."</p>
                            </div>
                        }.into_any(),
                None => ().into_any(),
            })}
        </Section>
    }
}
