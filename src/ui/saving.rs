//! Whether everything is saved, always in sight; and what to do when it is not.

use leptos::prelude::*;

use super::files::{save_book_file, save_text};
use super::library::Library;
use super::live::{flag, press, text, when};
use super::lock::Lock;
use super::state::AppState;
use crate::store::{Fault, Saving};
use crate::words;

/// Says whether everything is saved.
#[component]
pub fn SavingMark() -> impl IntoView {
    let saving = Library::here().saving;
    let words = text(move || {
        let words = match saving.get() {
            Saving::Saved { .. } => "Saved",
            Saving::Saving { .. } => "Saving",
            Saving::NotSaved { .. } => "Not saved",
        };
        words.to_string()
    });
    let failed = flag(move || matches!(saving.get(), Saving::NotSaved { .. }));
    view! {
        <p class="saving" class:saving-failed=failed role="status">
            {words}
        </p>
    }
}

/// Why something is not saved, with the ways out.
#[component]
pub fn SavingTrouble() -> impl IntoView {
    let (library, state, lock) = (Library::here(), AppState::here(), Lock::here());
    let fault = move || match library.saving.get() {
        Saving::NotSaved { fault, .. } => Some(fault),
        Saving::Saved { .. } | Saving::Saving { .. } => None,
    };
    when(
        move || fault().is_some(),
        move || {
            let sentence = text(move || {
                let sentence = fault().map(|fault| state.book.with(|book| words::fault(&fault, book)));
                sentence.unwrap_or_default()
            });
            let conflict = move || matches!(fault(), Some(Fault::Conflict { .. }));
            let gone = move || matches!(fault(), Some(Fault::Gone));
            let again = move || !conflict() && !gone() && !matches!(fault(), Some(Fault::NewerVersionOpen));
            view! {
                <div class="notice notice-trouble" role="alert">
                    <p>{sentence}</p>
                    {way_out(again, "Try again", move || library.retry())}
                    {way_out(conflict, "Keep mine", move || library.keep_mine(state))}
                    {way_out(conflict, "Take theirs", move || library.take_theirs())}
                    {way_out(gone, "Keep as a new book", move || library.add(state.book.get_untracked()))}
                    {way_out(move || !lock.is_on(), "Save a copy as a file", move || state.book.with_untracked(save_book_file))}
                </div>
            }
            .into_any()
        },
    )
}

/// A button for one way out, there while the way is open.
fn way_out(
    open: impl Fn() -> bool + Send + Sync + 'static,
    name: &'static str,
    take: impl Fn() + 'static,
) -> impl IntoView {
    let closed = flag(move || !open());
    view! {
        <button class="button" hidden=closed on:click=press(take)>
            {name}
        </button>
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
    // What is stored has the prices that a locked device keeps to itself.
    let lock = Lock::here();
    let locked = flag(move || lock.is_on());
    let ways = stored.map(|stored| {
        view! {
            <p class="actions">
                <button
                    class="main"
                    hidden=locked
                    on:click=press(move || save_text("brimwright-stored-book.txt", "text/plain", &stored))
                >
                    "Save what is stored"
                </button>
                <button class="button" on:click=press(move || library.leave())>
                    "Open another book"
                </button>
            </p>
        }
    });
    view! {
        <main class="welcome">
            <h1>"Brimwright cannot open this book"</h1>
            <p class="trouble" role="alert">
                {sentence}
            </p>
            {ways}
        </main>
    }
}
