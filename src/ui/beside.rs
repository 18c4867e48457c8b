//! What goes on beside every screen of an open book: its copies outside the browser.

use std::time::Duration;

use leptos::prelude::*;
use leptos::task::spawn_local;

use super::device_file;
use super::library::Library;
use super::live::{live, press};
use super::lock::Lock;
use super::state::AppState;
use super::today::today;
use crate::app::history::Step;
use crate::backup::copies::{self, Copies, CopyStatus, DeviceFile};
use crate::backup::restore_points;
use crate::say;
use crate::store::{Backing, Drawer, Saving};
use crate::words;

/// How long after the last save the file on the device is written.
const SOON: Duration = Duration::from_secs(2);
/// How often a page that stays open looks what month it is.
const HOUR: Duration = Duration::from_secs(3600);

/// A quiet line where a copy is due or the file on the device needs a word; and the writing of
/// that file after saves.
pub fn beside() -> AnyView {
    let (library, state, lock) = (Library::here(), AppState::here(), Lock::here());
    let turn = StoredValue::new(0_u64);
    spawn_local(async move {
        look_up(library).await;
        if let DeviceFile::On { .. } = library.copies.with_untracked(|copies| copies.file.clone()) {
            write_soon(library, state, turn);
        }
    });
    Effect::new(move |before: Option<()>| {
        let saved = library.saving.with(|saving| matches!(saving, Saving::Saved { .. }));
        if saved && before.is_some() {
            write_soon(library, state, turn);
        }
    });
    follow_the_month(state);
    let line = Memo::new(move |_| line(library, state, lock));
    live(move || match line.get() {
        Line::None => ().into_any(),
        Line::Due(sentence) => view! {
            <div class="aside" role="status">
                <p>{sentence}</p>
                <button class="button" on:click=press(move || library.save_copy(state))>
                    {say!(book::save_copy)}
                </button>
                <button
                    class="quiet"
                    on:click=press(move || library.copies.update(|copies| copies.put_off = true))
                >
                    {say!(book::copy_later)}
                </button>
            </div>
        }
        .into_any(),
        Line::AskAgain => view! {
            <div class="aside" role="status">
                <p>{words::copies::ask_again()}</p>
                <button class="button" on:click=press(move || device_file::allow(library, state))>
                    {say!(book::allow_saving)}
                </button>
                <button class="quiet" on:click=press(move || device_file::stop(library))>
                    {say!(book::stop_copies)}
                </button>
            </div>
        }
        .into_any(),
        Line::Failed(sentence) => view! {
            <div class="aside" role="status">
                <p>{sentence}</p>
                <button class="button" on:click=press(move || device_file::choose(library, state))>
                    {say!(book::choose_file)}
                </button>
                <button class="quiet" on:click=press(move || device_file::stop(library))>
                    {say!(book::stop_copies)}
                </button>
            </div>
        }
        .into_any(),
    })
}

/// Keeps the yields of the month in force: a page may stay open over midnight, and is looked at again later.
fn follow_the_month(state: AppState) {
    let looking = window_event_listener_untyped("visibilitychange", move |_| state.follow_the_month());
    let ticking = set_interval_with_handle(move || state.follow_the_month(), HOUR).ok();
    on_cleanup(move || {
        looking.remove();
        if let Some(ticking) = ticking {
            ticking.clear();
        }
    });
}

/// What the quiet line says.
#[derive(Clone, PartialEq)]
enum Line {
    None,
    Due(String),
    AskAgain,
    Failed(String),
}

/// Nothing for who is kept to the Counter.
fn line(library: Library, state: AppState, lock: Lock) -> Line {
    if lock.is_on() {
        return Line::None;
    }
    let copies = library.copies.get();
    match copies.file {
        DeviceFile::AskAgain(_) => return Line::AskAgain,
        DeviceFile::Failed { name, kind } => return Line::Failed(words::copies::file_not_written(&name, &kind)),
        DeviceFile::None | DeviceFile::Off | DeviceFile::On { .. } => {}
    }
    let invented = state.book.with(|book| book.settings().invented);
    let due = standing(library, state).due(today()).filter(|_| !invented && !copies.put_off);
    due.map_or(Line::None, |due| Line::Due(words::copies::copy_due(due)))
}

/// How it stands with the copies of the open book, following it.
pub fn standing(library: Library, state: AppState) -> CopyStatus {
    let (last, known_since) = library.copies.with(|copies| (copies.last, copies.known_since));
    let since = last.map_or(0, |last| last.millis);
    let done_since = |step: &&Step| step.at > since && step.undone.is_none();
    let changes = state.history.with(|history| history.steps().iter().filter(done_since).count());
    CopyStatus { last, changes, known_since }
}

/// Looks up what is known of the copies of the open book.
async fn look_up(library: Library) {
    library.copies.set(Copies::default());
    let (Some(shelf), Some(id)) = (library.shelf(), library.open_book()) else { return };
    let notes = shelf.backing().slips(Drawer::Notes, Some(id)).await.unwrap_or_default();
    let points = restore_points::of_book(shelf.backing(), id).await.unwrap_or_default();
    let file = device_file::look_up(library, id).await;
    library.copies.set(Copies {
        last: copies::last(&notes),
        known_since: points.last().map(|oldest| oldest.at.day),
        put_off: false,
        file,
    });
}

fn write_soon(library: Library, state: AppState, turn: StoredValue<u64>) {
    let Some(mine) = turn.try_update_value(|turn| {
        *turn = turn.wrapping_add(1);
        *turn
    }) else {
        return;
    };
    set_timeout(
        move || {
            if turn.try_get_value() == Some(mine) {
                device_file::write(library, state);
            }
        },
        SOON,
    );
}
