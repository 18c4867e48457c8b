//! Whether everything is saved, always in sight; and what to do when it is not.

use leptos::prelude::*;

use super::later::{Later, waiting};
use super::library::{Library, Way};
use super::live::{flag, live, press, text, when};
use super::lock::Lock;
use super::notices::Notices;
use super::state::AppState;
use super::steps::reach;
use super::update::{Update, UpdateNotice};
use crate::say;
use crate::store::{ConflictReason, Fault, Saving};
use crate::words;

/// Says whether everything is saved. Where something is not, it opens the notice that says why.
#[component]
pub fn SavingMark() -> impl IntoView {
    let (saving, notices) = (Library::here().saving, Notices::here());
    let words = text(move || {
        let words = match saving.get() {
            Saving::Saved { .. } => say!(first::saved),
            Saving::Saving { .. } => say!(first::saving),
            Saving::NotSaved { .. } | Saving::InConflict { .. } => say!(first::not_saved),
        };
        words.to_string()
    });
    let failed =
        flag(move || saving.with(|saving| matches!(saving, Saving::NotSaved { .. } | Saving::InConflict { .. })));
    view! {
        <p class="saving" role="status">
            {when(move || !failed.get(), move || view! { <span>{words}</span> }.into_any())}
            {when(
                move || failed.get(),
                move || {
                    view! {
                        <button class="saving-failed" on:click=press(move || notices.turn())>
                            {words}
                        </button>
                    }
                        .into_any()
                },
            )}
        </p>
    }
}

/// Says that a new version waits, and opens the notice that offers it.
#[component]
pub fn UpdateMark() -> impl IntoView {
    let (update, notices) = (Update::here(), Notices::here());
    when(
        move || update.is_ready(),
        move || {
            view! {
                <button class="quiet" on:click=press(move || notices.turn())>
                    {say!(first::update)}
                </button>
            }
            .into_any()
        },
    )
}

/// Why something is not saved, with the ways out.
#[component]
pub fn SavingTrouble() -> impl IntoView {
    let (library, state, lock) = (Library::here(), AppState::here(), Lock::here());
    let saving = library.saving;
    let odds = move || saving.with(|saving| matches!(saving, Saving::InConflict { .. }));
    // What a price is to be is not decided at the locked Counter.
    let decides = move || {
        saving.with(|saving| match saving {
            Saving::InConflict { conflicts } => match conflicts.first().map(|first| &first.why) {
                Some(ConflictReason::Changed(clashes)) => clashes.iter().all(|clash| reach(lock).decides(clash)),
                _ => !lock.is_on(),
            },
            Saving::NotSaved { .. } | Saving::Saving { .. } | Saving::Saved { .. } => false,
        })
    };
    let fault = move || match saving.get() {
        Saving::NotSaved { fault, .. } => Some(fault),
        Saving::Saved { .. } | Saving::Saving { .. } | Saving::InConflict { .. } => None,
    };
    when(
        move || odds() || fault().is_some(),
        move || {
            let sentence = text(move || match saving.get() {
                Saving::NotSaved { fault, .. } => words::fault(&fault),
                Saving::InConflict { conflicts } => state.book.with(|book| {
                    let speaker = &state.speaker.get();
                    let said = words::keeping::conflicts(&conflicts, book, (!lock.is_on()).then_some(speaker));
                    if decides() { said } else { words::keeping::unlock_to_decide(said) }
                }),
                Saving::Saved { .. } | Saving::Saving { .. } => String::new(),
            });
            let lost = move || matches!(fault(), Some(Fault::Gone | Fault::Deleted));
            let again =
                move || !odds() && !lost() && !matches!(fault(), Some(Fault::NewerVersionOpen | Fault::NoStorage));
            view! {
                <div class="notice notice-trouble" role="alert">
                    <p>{sentence}</p>
                    {way_out(again, say!(first::try_again), move || library.retry())}
                    {way_out(decides, say!(book::keep_mine), move || library.keep_mine())}
                    {way_out(decides, say!(book::take_theirs), move || library.take_theirs())}
                    {way_out(lost, say!(book::save_as_new_book), move || library.keep_as_new(state.book.get_untracked()))}
                    {way_out(
                        move || !lock.is_on(),
                        say!(book::save_copy),
                        move || library.save_copy(state),
                    )}
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

/// What stands in the way of opening any book; of a damaged one also the ways out.
#[component]
pub fn Stuck(
    /// What it is.
    fault: Fault,
) -> impl IntoView {
    let (library, later) = (Library::here(), Later::here());
    let sentence = words::fault(&fault);
    let no_storage = fault == Fault::NoStorage;
    let heading = match fault {
        Fault::Damaged(_) => say!(first::damaged_book),
        _ => say!(first::books_not_open),
    };
    let ways = match fault {
        Fault::Damaged(damage) => {
            later.ask();
            live(move || later.parts().map_or_else(waiting, |parts| (parts.damaged)(&damage)))
        }
        _ => ().into_any(),
    };
    view! {
        <div class="top">
            <UpdateNotice />
        </div>
        <main class="welcome">
            <h1>{heading}</h1>
            <p class="trouble" role="alert">
                {sentence}
            </p>
            <p class="actions">
                <button class="button" on:click=press(load_again)>
                    {say!(first::try_again)}
                </button>
                <button class="button" hidden=!no_storage on:click=press(move || library.go_on_without_saving())>
                    {say!(first::go_on_without_saving)}
                </button>
            </p>
            {ways}
        </main>
    }
}

/// Asks before a book is deleted, while `asked`; `name` is its name where that reads, and `armed` says
/// that the person wants to.
pub fn before_deleting(
    asked: impl Fn() -> bool + Send + Sync + 'static,
    name: impl Fn() -> Option<String> + Copy + Send + Sync + 'static,
    delete: impl Fn() + Copy + Send + Sync + 'static,
    armed: RwSignal<bool>,
) -> AnyView {
    when(asked, move || {
        view! {
            <div class="trouble" role="status">
                <p>{words::restore_points::before_deleting(name().as_deref())}</p>
                <p class="actions">
                    <button class="button" on:click=press(delete)>
                        {say!(first::delete_from_device)}
                    </button>
                    <button class="main" on:click=press(move || armed.set(false))>
                        {say!(first::cancel)}
                    </button>
                </p>
            </div>
        }
        .into_any()
    })
}

/// Deletes for good the book that there is no room to keep a copy of, where the person wants that.
pub fn without_a_copy(library: Library) -> AnyView {
    when(
        move || library.kept.with(|kept| kept.no_room_to_delete.is_some()),
        move || {
            let for_good = move || {
                if let Some(id) = library.kept.with_untracked(|kept| kept.no_room_to_delete) {
                    library.go(Way::DeleteForGood(id));
                }
            };
            view! {
                <p class="actions">
                    <button class="button" on:click=press(for_good)>
                        {say!(first::delete_without_copy)}
                    </button>
                </p>
            }
            .into_any()
        },
    )
}

/// Loads the page anew: the books are opened from the beginning.
fn load_again() {
    // A page can always be loaded again.
    let _ = location().reload();
}
