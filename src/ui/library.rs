//! The books on this device, as the screens follow them: signals around the library.

use std::rc::Rc;

use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

use super::address::go;
use super::files::save_book_file;
use super::later::Later;
use super::random::random;
use super::state::AppState;
use super::today::{now, today};
use super::update;
use crate::app::history::History;
use crate::app::library::{self as core, Device, Remembered};
use crate::app::route::Route;
use crate::backup::copies::{self, Copies};
use crate::backup::restore_points::{Moment, Why};
use crate::book::{Book, BookId};
use crate::foundation::measure::Date;
use crate::say;
use crate::store::{Backing, Fault, IndexedDb, Listed, Saving, Shelf, cache_note, first_paint};

pub use core::{Leaving, Phase, Way};

/// The demo books, each by where it lies beside the app.
pub const DEMO: &str = "./books/marrowgate-juice-hall.json";
/// One in euros, with tax inside the prices and deposits on bottles.
pub const SECOND_DEMO: &str = "./books/kastanje-saftbar.json";

/// How long the books may take to answer, in milliseconds, before it is said that they do not.
const LONG: u64 = 5000;

/// The library in this browser.
pub type Core = core::Library<IndexedDb>;

/// What is kept beside the books, and what is lost of them.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Kept {
    /// Names of the books that the browser removed, as far as they are known.
    pub removed: Vec<String>,
    /// Before what no restore point was made, and why.
    pub no_point: Option<(Why, Fault)>,
    /// How many times a restore point was made or failed to be.
    pub points_tried: u64,
    /// The book that is not deleted, since there is no room to keep a copy of it.
    pub no_room_to_delete: Option<BookId>,
}

/// The books on this device.
#[derive(Clone, Copy)]
pub struct Library {
    /// What is on the screen.
    pub phase: RwSignal<Phase>,
    /// The books.
    pub books: RwSignal<Vec<Listed>>,
    /// Whether the open book is saved.
    pub saving: RwSignal<Saving>,
    /// Why the last wish could not be met.
    pub refused: RwSignal<Option<String>>,
    /// What is kept beside the books.
    pub kept: RwSignal<Kept>,
    /// The copies of the open book outside the browser.
    pub copies: RwSignal<Copies>,
    /// The way out that waits for the person's word, since something is not saved.
    pub leaving: RwSignal<Option<Leaving>>,
    openings: StoredValue<u64>,
    core: StoredValue<Option<Core>, LocalStorage>,
}

impl Library {
    /// Opens the store, and the book that was open last.
    pub fn start() -> Library {
        let library = Library {
            phase: RwSignal::new(Phase::Opening),
            books: RwSignal::new(Vec::new()),
            saving: RwSignal::new(Saving::Saved { revision: 1 }),
            refused: RwSignal::new(None),
            kept: RwSignal::default(),
            copies: RwSignal::default(),
            leaving: RwSignal::new(None),
            openings: StoredValue::new(0),
            core: StoredValue::new_local(None),
        };
        let core = Core::new(Rc::new(Browser { library }));
        library.core.set_value(Some(core.clone()));
        library.warn_before_unload();
        library.write_journals();
        let waiting = core.clone();
        set_timeout(move || waiting.waited_long(), std::time::Duration::from_millis(LONG));
        spawn_local(async move {
            let hearing = core.clone();
            match IndexedDb::open(IndexedDb::NAME, move |notice| hearing.on_notice(notice)).await {
                Ok(database) => core.start(database),
                Err(fault) => core.stuck(fault),
            }
        });
        library
    }

    /// The library of the screens above.
    pub fn here() -> Library {
        expect_context::<Library>()
    }

    fn with(self, act: impl FnOnce(&Core)) {
        if let Some(core) = self.core.get_value() {
            act(&core);
        }
    }

    /// The library itself, behind these signals; none before it is started.
    pub fn core(self) -> Option<Core> {
        self.core.get_value()
    }

    /// The state of the book that was just opened. Returns `None` if it is kept already.
    pub fn opened(self) -> Option<AppState> {
        let (id, book) = self.core()?.opened()?;
        Some(AppState::new(book, History::new(id)))
    }

    /// The shelf, once there is one.
    pub fn shelf(self) -> Option<Shelf<IndexedDb>> {
        self.core.get_value().and_then(|core| core.shelf())
    }

    /// The whole open book is about to be changed: a restore point is made once that is saved.
    pub fn before(self, why: Why) {
        self.with(|core| core.before(why));
    }

    /// What was about to be done was refused.
    pub fn not_done(self) {
        self.with(Core::not_done);
    }

    /// Goes on where there is no storage.
    pub fn go_on_without_saving(self) {
        self.with(Core::go_on_without_saving);
    }

    /// Lists the books anew, as they have become by what was done since.
    pub fn look_again(self) {
        self.with(Core::look_again);
    }

    /// Goes a way out of the open book; the person is asked where something would be lost.
    pub fn go(self, way: Way) {
        self.with(|core| core.go(way));
    }

    /// Goes the way that waits, though something is lost.
    pub fn leave_anyway(self) {
        self.with(Core::leave_anyway);
    }

    /// Stays in the open book.
    pub fn stay(self) {
        self.with(Core::stay);
    }

    /// Starts an empty book, once what keeps it is here.
    pub fn start_empty(self) {
        let later = Later::here();
        if later.parts_now().is_none() {
            later.ask();
        }
        self.with(Core::start_empty);
    }

    /// Opens a demo book: the one on the shelf, or a new one from its file.
    pub fn open_demo(self, file: &'static str) {
        let later = Later::here();
        spawn_local(async move {
            let demo = fetch_demo(later, file).await;
            self.with(|core| core.open_demo(demo));
        });
    }

    /// Keeps a book that is stored no more as a new one.
    pub fn keep_as_new(self, book: Book) {
        self.with(|core| core.keep_as_new(book));
    }

    /// Tries again what could not be saved.
    pub fn retry(self) {
        self.with(Core::retry);
    }

    /// Resolves the first conflict for this tab.
    pub fn keep_mine(self) {
        self.with(|core| core.keep_mine(0));
    }

    /// Resolves the first conflict for the other tab.
    pub fn take_theirs(self) {
        self.with(|core| core.take_theirs(0));
    }

    /// The book that is open.
    pub fn open_book(self) -> Option<BookId> {
        match self.phase.get_untracked() {
            Phase::Open(id) => Some(id),
            Phase::Opening | Phase::Choosing | Phase::Stuck(_) => None,
        }
    }

    /// Saves the open book as a file, and notes that where the browser took it.
    pub fn save_copy(self, state: AppState) {
        if state.book.with_untracked(save_book_file)
            && let Some(id) = self.open_book()
        {
            self.note_copy_of(id);
        }
    }

    /// Notes that a copy of a book was saved now.
    pub fn note_copy_of(self, id: BookId) {
        let at = Moment { millis: now(), day: today() };
        if self.open_book() == Some(id) {
            self.copies.update(|copies| copies.last = Some(at));
        }
        spawn_local(async move {
            if let Some(shelf) = self.shelf() {
                // Where this cannot be noted, the copy counts until the book is opened again.
                let _ = shelf.backing().file(&[copies::note(id, at)]).await;
            }
        });
    }

    /// Has the browser ask before the page goes, while something is not saved. A page that always
    /// asks could not be taken up again from where it was.
    fn warn_before_unload(self) {
        let warn = Closure::<dyn Fn(web_sys::Event)>::new(|event: web_sys::Event| event.prevent_default());
        let warn = warn.into_js_value();
        Effect::new(move |warned: Option<bool>| {
            let risk = self.saving.with(Saving::at_risk) && self.phase.with(|phase| *phase != Phase::Choosing);
            if risk != warned.unwrap_or_default() {
                let warn = warn.unchecked_ref();
                // A listener can always be added and removed.
                let _ = if risk {
                    window().add_event_listener_with_callback("beforeunload", warn)
                } else {
                    window().remove_event_listener_with_callback("beforeunload", warn)
                };
            }
            risk
        });
    }

    /// A page that is hidden may go without another word: what is not saved is written down then,
    /// and when it goes.
    fn write_journals(self) {
        for event in ["pagehide", "visibilitychange"] {
            window_event_listener_untyped(event, move |_| {
                if event == "pagehide" || document().hidden() {
                    self.with(Core::write_journal);
                }
            });
        }
    }

    /// Shows what the library has to show.
    fn show(self, core: &Core) {
        show_in(self.books, core.books());
        show_in(self.saving, core.saving());
        show_in(self.refused, core.refused());
        let kept = Kept {
            removed: core.removed(),
            no_point: core.no_point(),
            points_tried: core.points_tried(),
            no_room_to_delete: core.no_room_to_delete(),
        };
        show_in(self.kept, kept);
        show_in(self.leaving, core.leaving());
        let opened = core.openings();
        if opened != self.openings.get_value() {
            self.openings.set_value(opened);
            self.phase.set(core.phase());
        }
        show_in(self.phase, core.phase());
    }
}

/// Sets a signal where that changes it.
fn show_in<T: PartialEq + Send + Sync + 'static>(signal: RwSignal<T>, value: T) {
    if signal.with_untracked(|shown| *shown != value) {
        signal.set(value);
    }
}

/// The browser that the library is in.
struct Browser {
    library: Library,
}

impl Device for Browser {
    fn remembered(&self) -> Remembered {
        let paint = first_paint::read();
        Remembered { open_book: paint.open_book, had_books: paint.started && paint.revision.is_some() }
    }

    fn note_open(&self, book: Option<BookId>) {
        first_paint::note_open(book);
    }

    fn note_revision(&self, revision: u64) {
        first_paint::note_revision(revision);
    }

    fn random(&self) -> u64 {
        random()
    }

    fn now(&self) -> u64 {
        now()
    }

    fn today(&self) -> Date {
        today()
    }

    fn noted_books(&self) -> Option<String> {
        first_paint::noted_books()
    }

    fn note_books(&self, text: &str) {
        if first_paint::note_books(text) {
            cache_note::note(text.to_string());
        }
    }

    fn recall_books(&self) {
        let library = self.library;
        spawn_local(async move {
            if let Some(text) = cache_note::read().await {
                library.with(|core| core.recalled(text));
            }
        });
    }

    fn show(&self) {
        self.library.with(|core| self.library.show(core));
    }

    fn go_to_start(&self, book: &Book) {
        let is_empty = book.drinks().next().is_none() && book.ingredients().next().is_none();
        go(if is_empty { Route::Shop } else { Route::Drinks });
    }

    fn update(&self) {
        update::accept();
    }
}

/// Reads a demo book by the same importer as any file, which comes with the second part.
async fn fetch_demo(later: Later, file: &str) -> Result<Book, String> {
    let lost = |_| say!(first::sample_book_missing).to_string();
    let response = JsFuture::from(window().fetch_with_str(file)).await.map_err(lost)?;
    let text = response.unchecked_into::<web_sys::Response>().text().map_err(lost)?;
    let text = JsFuture::from(text).await.map_err(lost)?.as_string().unwrap_or_default();
    let parts = later.arrived().await.ok_or_else(|| lost(JsValue::NULL))?;
    (parts.read_book)(text)
}
