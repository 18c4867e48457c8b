//! The books on this device: which is open, opening another, making and deleting them.

use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;

use super::random::random;
use super::state::AppState;
use crate::app::history::History;
use crate::app::route::Route;
use crate::app::unfinished::Unfinished;
use crate::book::{Book, BookId, Edit, Settings};
use crate::exchange;
use crate::store::{
    Durability, Fault, Hooks, IndexedDb, Keeper, Listed, Notice, Opened, Saving, Shelf, first_paint, news, this_tab,
};
use crate::ui::address::go;
use crate::words;

/// Where the demo book lies, beside the app.
const DEMO: &str = "./books/marrowgate-juice-hall.json";

/// What is on the screen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Phase {
    /// The books are being opened.
    Opening,
    /// No book is open: the person chooses.
    Choosing,
    /// A book is open.
    Open(BookId),
    /// Something stands in the way.
    Stuck(Fault),
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
    /// Whether this device had books before, though none are here now.
    pub emptied: RwSignal<bool>,
    shelf: StoredValue<Option<Shelf<IndexedDb>>, LocalStorage>,
    opened: StoredValue<Option<(Book, Opened<IndexedDb>)>, LocalStorage>,
    keeper: StoredValue<Option<Keeper<IndexedDb>>, LocalStorage>,
    unsaved: StoredValue<Option<Edit>>,
}

impl Library {
    /// Opens the store, and the book that was open last.
    pub fn start() -> Library {
        let library = Library {
            phase: RwSignal::new(Phase::Opening),
            books: RwSignal::new(Vec::new()),
            saving: RwSignal::new(Saving::Saved { revision: 1 }),
            refused: RwSignal::new(None),
            emptied: RwSignal::new(false),
            shelf: StoredValue::new_local(None),
            opened: StoredValue::new_local(None),
            keeper: StoredValue::new_local(None),
            unsaved: StoredValue::new(None),
        };
        spawn_local(async move {
            match IndexedDb::open(IndexedDb::NAME, move |notice| library.hear(notice)).await {
                Ok(database) => {
                    library.shelf.set_value(Some(Shelf::new(database)));
                    library.choose_or_open().await;
                }
                Err(fault) => library.phase.set(Phase::Stuck(fault)),
            }
        });
        library
    }

    /// The library of the screens above.
    pub fn here() -> Library {
        expect_context::<Library>()
    }

    async fn choose_or_open(self) {
        self.list().await;
        let paint = first_paint::read();
        // The only book there is needs no choosing.
        let open_last = |books: &Vec<Listed>| {
            let ids = || books.iter().filter_map(listed_id);
            let last = paint.open_book.filter(|last| ids().any(|id| id == *last));
            last.or_else(|| ids().next().filter(|_| books.len() == 1))
        };
        match self.books.with_untracked(open_last) {
            Some(id) => self.open_now(id).await,
            None => {
                self.emptied.set(paint.started && paint.revision.is_some() && self.books.with_untracked(Vec::is_empty));
                self.phase.set(Phase::Choosing);
            }
        }
    }

    async fn list(self) {
        let Some(shelf) = self.shelf.get_value() else { return };
        match shelf.books().await {
            Ok(books) => self.books.set(books),
            Err(fault) => self.phase.set(Phase::Stuck(fault)),
        }
    }

    async fn open_now(self, id: BookId) {
        let Some(shelf) = self.shelf.get_value() else { return };
        match shelf.open(id).await {
            Ok(opened) => {
                self.keeper.set_value(None);
                self.opened.set_value(Some(opened));
                self.refused.set(None);
                first_paint::note_open(Some(id));
                self.phase.set(Phase::Open(id));
            }
            Err(fault) => self.phase.set(Phase::Stuck(fault)),
        }
    }

    /// The state of the book that was just opened; none where it was taken already.
    pub fn take_opened(self) -> Option<AppState> {
        let (book, opened) = self.opened.try_update_value(Option::take).flatten()?;
        self.saving.set(Saving::Saved { revision: opened.entry().revision });
        let history = History::open(opened.entry().id, random(), opened.steps());
        let keep = move |book: &Book, applied: &_, slips, durability: Durability| {
            self.keeper.with_value(|keeper| {
                if let Some(keeper) = keeper {
                    keeper.save(book, applied, slips, durability);
                }
            });
        };
        let state = AppState::new(book, history, Box::new(keep));
        keep_unfinished(opened.entry().id, state);
        let keeper = opened.keep(Hooks {
            saving: Box::new(move |saving| {
                if let Saving::Saved { revision } = saving {
                    first_paint::note_revision(*revision);
                }
                self.saving.set(saving.clone());
            }),
            news: Box::new(move |rows| {
                let edit = state.book.with_untracked(|book| news(book, rows));
                state.follow(&edit)
            }),
        });
        self.keeper.set_value(Some(keeper));
        if let Some(mine) = self.unsaved.try_update_value(Option::take).flatten() {
            self.refused.set(state.apply("Keep mine", mine).err());
        }
        Some(state)
    }

    fn hear(self, notice: Notice) {
        let open = |book: BookId| self.phase.with_untracked(|phase| *phase == Phase::Open(book));
        match notice {
            Notice::Saved { book, revision } if open(book) => {
                self.keeper.with_value(|keeper| {
                    if let Some(keeper) = keeper {
                        keeper.heard(revision);
                    }
                });
            }
            Notice::Saved { .. } | Notice::Deleted { .. } => spawn_local(self.list()),
            Notice::NewerVersionOpen => {
                self.saving.set(Saving::NotSaved { waiting: 0, fault: Fault::NewerVersionOpen });
            }
        }
    }

    /// Opens a book.
    pub fn open(self, id: BookId) {
        spawn_local(self.open_now(id));
    }

    /// Leaves the open book for the choice of books.
    pub fn leave(self) {
        spawn_local(async move {
            self.list().await;
            first_paint::note_open(None);
            self.phase.set(Phase::Choosing);
        });
    }

    /// Puts a book on the shelf and opens it.
    pub fn add(self, book: Book) {
        spawn_local(self.add_now(book));
    }

    async fn add_now(self, book: Book) {
        let Some(shelf) = self.shelf.get_value() else { return };
        let id = BookId::from_random(random());
        match shelf.create(id, &book).await {
            Ok(()) => {
                self.list().await;
                go(Route::Drinks);
                self.open_now(id).await;
            }
            Err(fault) => self.refused.set(Some(words::fault(&fault, &book))),
        }
    }

    /// Starts an empty book.
    pub fn start_empty(self) {
        self.add(Book::new(Settings::new("My book")));
    }

    /// Opens the demo book: the one on the shelf, or a new one from its file.
    pub fn open_demo(self) {
        spawn_local(async move {
            match fetch_demo().await {
                Ok(demo) => {
                    let name = demo.settings().name.clone();
                    let there = self.books.with_untracked(|books| books.iter().find_map(|book| demo_id(book, &name)));
                    match there {
                        Some(id) => self.open_now(id).await,
                        None => self.add_now(demo).await,
                    }
                }
                Err(sentence) => self.refused.set(Some(sentence)),
            }
        });
    }

    /// Deletes a book from the shelf. The file that it can be saved as is the only way back.
    pub fn delete(self, id: BookId) {
        spawn_local(async move {
            let Some(shelf) = self.shelf.get_value() else { return };
            if let Err(fault) = shelf.delete(id).await {
                let nothing = Book::new(Settings::new(""));
                self.refused.set(Some(words::fault(&fault, &nothing)));
            }
            self.list().await;
        });
    }

    /// Tries again what could not be saved.
    pub fn retry(self) {
        self.keeper.with_value(|keeper| {
            if let Some(keeper) = keeper {
                keeper.retry();
            }
        });
    }

    /// After a conflict: opens the book as the other tab saved it.
    pub fn take_theirs(self) {
        if let Phase::Open(id) = self.phase.get_untracked() {
            self.open(id);
        }
    }

    /// After a conflict: puts what is not saved here on top of what the other tab saved.
    pub fn keep_mine(self, state: AppState) {
        let (Phase::Open(id), Some(shelf)) = (self.phase.get_untracked(), self.shelf.get_value()) else { return };
        let keeper = self.keeper.get_value();
        spawn_local(async move {
            match shelf.open(id).await {
                Ok((stored, opened)) => {
                    let mine = keeper.and_then(|keeper| keeper.unsaved(&stored));
                    self.unsaved.set_value(mine);
                    self.opened.set_value(Some((stored, opened)));
                    self.phase.set(Phase::Open(id));
                }
                Err(fault) => self.refused.set(Some(state.book.with_untracked(|book| words::fault(&fault, book)))),
            }
        });
    }
}

/// Brings back what was typed and is not in the book when the page is loaded anew.
fn keep_unfinished(book: BookId, state: AppState) {
    state.unfinished.set(Unfinished::from_texts(&this_tab::unfinished(book)));
    Effect::new(move |_| state.unfinished.with(|all| this_tab::note_unfinished(book, &all.to_texts())));
}

fn listed_id(book: &Listed) -> Option<BookId> {
    match book {
        Listed::Book(entry) => Some(entry.id),
        Listed::Damaged { id, .. } => *id,
    }
}

fn demo_id(book: &Listed, name: &str) -> Option<BookId> {
    match book {
        Listed::Book(entry) if entry.invented && entry.name == name => Some(entry.id),
        Listed::Book(_) | Listed::Damaged { .. } => None,
    }
}

/// Reads the demo book by the same importer as any file.
async fn fetch_demo() -> Result<Book, String> {
    let lost = |_| "The demo book could not be loaded. Go online once, then try again.".to_string();
    let response = JsFuture::from(window().fetch_with_str(DEMO)).await.map_err(lost)?;
    let text = response.unchecked_into::<web_sys::Response>().text().map_err(lost)?;
    let text = JsFuture::from(text).await.map_err(lost)?.as_string().unwrap_or_default();
    exchange::read(text).map_err(|error| words::book_file_error(&error))
}
