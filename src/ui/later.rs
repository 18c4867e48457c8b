//! What is not in the first load: a second wasm file brings it, at the latest on first use.
//!
//! Whatever is reachable only through [`Parts`] is in the second file; the build cuts it off. It is
//! taken up as soon as it is kept on this device, so that a page which is still open after an
//! update has all of its own version.

use std::pin::Pin;

use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;

use super::library::Library;
use super::live::{live, press};
use super::state::AppState;
use super::{beside, damaged, doubtful, how, keeping, language, notices, nowhere, places, speaking, steps, unfinished};
use crate::app::history::Reach;
use crate::app::route::Route;
use crate::book::Book;
use crate::say;
use crate::store::{BookEntry, Damage};
use crate::words::texts::Part;

/// Said by the start script when the whole build is kept on this device.
const KEPT: &str = "brimwright-kept";

/// The ways into the second file.
pub struct Parts {
    /// What goes on from the moment that the second file is here.
    pub begin: fn(Library),
    /// Adds the texts that the first screen does not need; gives whether they could be had.
    pub texts: fn() -> Pin<Box<dyn Future<Output = bool>>>,
    /// What tells a book in the list from another.
    pub told_apart: fn(&BookEntry) -> String,
    /// Keeps the book that was just opened and is on the screen.
    pub keep: fn(Library, AppState),
    /// Takes the last step within reach back.
    pub undo: fn(AppState, Reach),
    /// Does the last step taken back within reach again.
    pub redo: fn(AppState, Reach),
    /// Reads a book file; an error is a sentence.
    pub read_book: fn(String) -> Result<Book, String>,
    /// What is wrong with saving, and what is asked before a book is left.
    pub notices: fn() -> AnyView,
    /// The screen of any route.
    pub screen: fn(Route) -> AnyView,
    /// What was begun on other screens and is not in the book yet.
    pub elsewhere: fn(ReadSignal<Route>) -> AnyView,
    /// What goes on beside every screen of an open book.
    pub beside: fn() -> AnyView,
    /// The ways back to a book: from a file, or from the deleted ones.
    pub ways_back: fn() -> AnyView,
    /// The ways out where a book does not read.
    pub damaged: fn(&Damage) -> AnyView,
    /// The sheet for the workings of numbers.
    pub sheet: fn(ReadSignal<Route>) -> AnyView,
    /// The sheet for the list of steps.
    pub steps: fn(ReadSignal<Route>) -> AnyView,
}

/// The ways into the second file. Whoever refers to this is in it.
pub static PARTS: Parts = Parts {
    begin: keeping::begin,
    texts: speaking::add_rest,
    told_apart: keeping::told_apart,
    keep: keeping::keep,
    undo: AppState::undo,
    redo: AppState::redo,
    read_book: keeping::read_book,
    notices: notices::about_saving,
    screen: places::screen,
    elsewhere: |route| [unfinished::elsewhere(route), doubtful::elsewhere(route), nowhere::elsewhere(route)].into_any(),
    beside: beside::beside,
    ways_back: || places::ways_back(None),
    damaged: damaged::ways_out,
    sheet: how::sheet,
    steps: steps::sheet,
};

/// Fetches the second file, and gives the ways into it, or `None` if it could not be had. The
/// program says how: a test of the library alone has no second file.
pub type Load = fn() -> Pin<Box<dyn Future<Output = Option<&'static Parts>>>>;

/// Whether the second file is here.
#[derive(Clone, Copy)]
pub struct Later {
    library: Library,
    load: Load,
    parts: RwSignal<Option<&'static Parts>>,
    /// The open book, while what keeps it is not here, and the screen that it belongs to.
    unkept: StoredValue<Option<(Owner, AppState)>>,
    failed: RwSignal<bool>,
}

impl Later {
    /// Waits until it is kept on this device, or somebody asks for it.
    pub fn start(load: Load) -> Later {
        let later = Later {
            library: Library::here(),
            load,
            parts: RwSignal::new(None),
            unkept: StoredValue::new(None),
            failed: RwSignal::new(false),
        };
        let hear = Closure::<dyn Fn()>::new(move || later.take_up());
        // Lives as long as the page, as this does.
        let _ = window().add_event_listener_with_callback(KEPT, hear.as_ref().unchecked_ref());
        hear.forget();
        later
    }

    /// The one of this page.
    pub fn here() -> Later {
        expect_context::<Later>()
    }

    /// The ways into the second file once it is here, following it.
    pub fn parts(self) -> Option<&'static Parts> {
        self.parts.get()
    }

    /// Has the open book kept: at once, or before anything else that the second file brings. What
    /// was typed and is not in the book is back before its fields are drawn.
    pub fn keep(self, state: AppState) {
        match (self.parts_now(), Owner::current()) {
            (Some(parts), _) => (parts.keep)(self.library, state),
            (None, Some(owner)) => {
                self.unkept.set_value(Some((owner, state)));
                on_cleanup(move || self.unkept.set_value(None));
            }
            (None, None) => {}
        }
    }

    /// The ways into the second file where it is here.
    pub fn parts_now(self) -> Option<&'static Parts> {
        self.parts.get_untracked()
    }

    /// Whether it was asked for and could not be had, following it.
    pub fn failed(self) -> bool {
        self.failed.get()
    }

    /// Fetches it for a screen that is waited for. Where it could not be had, asking tries again.
    pub fn ask(self) {
        self.failed.set(false);
        spawn_local(async move { self.failed.set(self.arrived().await.is_none()) });
    }

    /// Fetches it before a screen is waited for; where that fails, whoever asks is told.
    fn take_up(self) {
        spawn_local(async move {
            let _ = self.arrived().await;
        });
    }

    /// The ways into the second file; fetches it unless it is here or on its way. Returns `None` if it
    /// could not be had.
    pub async fn arrived(self) -> Option<&'static Parts> {
        if let Some(parts) = self.parts_now() {
            return Some(parts);
        }
        // Its texts come beside it.
        let _ = language::table(&language::language(), Part::Rest.name());
        let arrived = (self.load)().await;
        let arrived = match arrived {
            Some(parts) if (parts.texts)().await => Some(parts),
            _ => None,
        };
        if let Some(parts) = arrived
            && self.parts_now().is_none()
        {
            (parts.begin)(self.library);
            if let Some((owner, state)) = self.unkept.try_update_value(Option::take).flatten() {
                owner.with(|| (parts.keep)(self.library, state));
            }
            self.parts.set(arrived);
        }
        arrived
    }

    /// No screen is waited for any more.
    pub fn stop_waiting(self) {
        self.failed.set(false);
    }
}

/// Says that a screen is on its way, or that it could not be had.
pub fn waiting() -> AnyView {
    let later = Later::here();
    live(move || {
        if !later.failed() {
            return view! {
                <p class="coming" role="status">
                    {say!(first::opening)}
                </p>
            }
            .into_any();
        }
        view! {
            <div class="trouble" role="alert">
                <p>
                    {say!(first::part_missing)}
                </p>
                <p class="actions">
                    <button class="button" on:click=press(move || later.ask())>
                        {say!(first::try_again)}
                    </button>
                </p>
            </div>
        }
        .into_any()
    })
}
