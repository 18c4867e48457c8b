//! Whether everything is saved, always in sight; and what to do when it is not.

use leptos::prelude::*;

use super::files::{save_book_file, save_text};
use super::library::Library;
use super::state::AppState;
use crate::store::{Fault, Saving};
use crate::words;

/// Says whether everything is saved.
#[component]
pub fn SavingMark() -> impl IntoView {
    let saving = Library::here().saving;
    let words = move || match saving.get() {
        Saving::Saved { .. } => "Saved",
        Saving::Saving { .. } => "Saving",
        Saving::NotSaved { .. } => "Not saved",
    };
    let failed = move || matches!(saving.get(), Saving::NotSaved { .. });
    view! {
        <p class="saving" class:saving-failed=failed role="status">
            {words}
        </p>
    }
}

/// Why something is not saved, with the ways out.
#[component]
pub fn SavingTrouble() -> impl IntoView {
    let (library, state) = (Library::here(), AppState::here());
    let fault = Memo::new(move |_| match library.saving.get() {
        Saving::NotSaved { fault, .. } => Some(fault),
        Saving::Saved { .. } | Saving::Saving { .. } => None,
    });
    let sentence = move || fault.get().map(|fault| state.book.with(|book| words::fault(&fault, book)));
    let conflict = move || matches!(fault.get(), Some(Fault::Conflict { .. }));
    let gone = move || matches!(fault.get(), Some(Fault::Gone));
    let again = move || !conflict() && !gone() && !matches!(fault.get(), Some(Fault::NewerVersionOpen));
    view! {
        <Show when=move || fault.with(Option::is_some)>
            <div class="notice notice-trouble" role="alert">
                <p>{sentence}</p>
                <Show when=again>
                    <button class="button" on:click=move |_| library.retry()>
                        "Try again"
                    </button>
                </Show>
                <Show when=conflict>
                    <button class="button" on:click=move |_| library.keep_mine(state)>
                        "Keep mine"
                    </button>
                    <button class="button" on:click=move |_| library.take_theirs()>
                        "Take theirs"
                    </button>
                </Show>
                <Show when=gone>
                    <button class="button" on:click=move |_| library.add(state.book.get_untracked())>
                        "Keep as a new book"
                    </button>
                </Show>
                <button class="button" on:click=move |_| state.book.with_untracked(save_book_file)>
                    "Save a copy as a file"
                </button>
            </div>
        </Show>
    }
}

/// What stands in the way of opening any book, with the stored text for saving elsewhere.
#[component]
pub fn Stuck(
    /// What it is.
    fault: Fault,
) -> impl IntoView {
    let library = Library::here();
    let nothing = crate::book::Book::new(crate::book::Settings::new(""));
    let sentence = words::fault(&fault, &nothing);
    let stored = match fault {
        Fault::Damaged(damage) => Some(damage.text()),
        _ => None,
    };
    let damaged = stored.is_some();
    let save = move |_| {
        if let Some(text) = &stored {
            save_text("brimwright-stored-book.txt", "text/plain", text);
        }
    };
    view! {
        <main class="welcome">
            <h1>"Brimwright cannot open this book"</h1>
            <p class="trouble" role="alert">{sentence}</p>
            <p class="actions">
                <Show when=move || damaged>
                    <button class="main" on:click=save.clone()>
                        "Save what is stored"
                    </button>
                    <button class="button" on:click=move |_| library.leave()>
                        "Open another book"
                    </button>
                </Show>
            </p>
        </main>
    }
}
