//! The open book on the screen, and the commands that change it.
//!
//! Data goes one way: a command applies an edit to the book, the ledger computes anew what the
//! edit touched, what was touched is saved, and the screens follow their signals.

mod figures;
mod other_tabs;
mod steps;

use leptos::prelude::*;

use super::locale;
use super::today::this_month;
use crate::app::history::{History, Reach, Session, Walk};
use crate::app::last_change::LastChange;
use crate::app::unfinished::Unfinished;
use crate::book::{Applied, Book, Edit, OfferId, Record};
use crate::drink::ledger::{Ledger, OfferStatus, Priced};
use crate::store::{Durability, Slip};
use crate::words::{self, Speaker};

/// The open book, what is computed from it, and what was done to it.
#[derive(Clone, Copy)]
pub struct AppState {
    /// The open book. Changed by [`AppState::apply`], undo and redo only.
    pub book: RwSignal<Book>,
    /// Its offers, computed.
    pub ledger: RwSignal<Ledger>,
    /// Steps that can be taken back.
    pub history: RwSignal<History>,
    /// What the last walk over a step came to, as a sentence.
    pub said: RwSignal<Option<Said>>,
    /// What the last step moved.
    pub last_change: RwSignal<Option<LastChange>>,
    /// What is typed and not in the book.
    pub unfinished: RwSignal<Unfinished>,
    /// Says the numbers of the book.
    pub speaker: Memo<Speaker>,
    keep: StoredValue<Option<Keep>, LocalStorage>,
    sessions: StoredValue<Session>,
}

/// What a walk over a step came to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Said {
    /// In words.
    pub sentence: String,
    /// Whether the step was walked over.
    pub done: bool,
}

/// Hands over an applied edit, by its name in words, to be saved with the slips beside the book.
pub type Keep = Box<dyn Fn(&str, &Book, &Applied, Vec<Slip>, Durability)>;

impl AppState {
    /// Shows `book` as of this month. Nothing saves what edits touch before [`AppState::keep_by`] says how.
    pub fn new(mut book: Book, history: History) -> AppState {
        book.set_month(this_month());
        let ledger = Ledger::of(&book);
        let book = RwSignal::new(book);
        let spoken_in = Memo::new(move |_| book.with(|book| (book.settings().currency, book.settings().units)));
        let speaker = Memo::new(move |_| {
            let (currency, units) = spoken_in.get();
            Speaker::new(currency, units, locale::number_style(currency))
        });
        AppState {
            book,
            ledger: RwSignal::new(ledger),
            history: RwSignal::new(history),
            said: RwSignal::new(None),
            last_change: RwSignal::default(),
            unfinished: RwSignal::default(),
            speaker,
            keep: StoredValue::new_local(None),
            sessions: StoredValue::new(0),
        }
    }

    /// From here on the book has these steps, and `keep` saves what edits touch.
    pub fn keep_by(self, history: History, keep: Keep) {
        self.history.set(history);
        self.keep.set_value(Some(keep));
    }

    /// The state of the screens above.
    pub fn here() -> AppState {
        expect_context::<AppState>()
    }

    /// Puts the yields of this month in force, and computes everything anew where the month is another one.
    pub fn follow_the_month(self) {
        let month = this_month();
        if self.book.with_untracked(Book::month) == month {
            return;
        }
        self.book.update(|book| book.set_month(month));
        self.book.with_untracked(|book| self.ledger.set(Ledger::of(book)));
    }

    /// A new typing session.
    pub fn new_session(self) -> Session {
        self.sessions.update_value(|last| *last = last.wrapping_add(1));
        self.sessions.get_value()
    }

    /// Changes book and steps; those who follow them hear of it only where something was done.
    fn change(self, walk: &mut dyn FnMut(&mut Book, &mut History) -> Walk) -> Walk {
        self.said.maybe_update(|said| said.take().is_some());
        let walked = self.book.try_maybe_update(|book| {
            let walked = self.history.try_update(|history| walk(book, history)).unwrap_or(Walk::Nothing);
            (matches!(walked, Walk::Done { .. } | Walk::Partly { .. }), walked)
        });
        walked.unwrap_or(Walk::Nothing)
    }

    /// Computes anew what was touched, and has it saved with its step.
    fn keep(self, name: &str, applied: Applied, session: Option<Session>, durability: Durability) {
        self.recompute(name, &applied, session);
        self.hand_over(name, &applied, durability);
    }

    /// Has steps saved that changed nothing that is to be saved.
    fn keep_steps(self, name: &str) {
        self.hand_over(name, &Applied::nothing(), Durability::Relaxed);
    }

    fn hand_over(self, name: &str, applied: &Applied, durability: Durability) {
        let slips = self.history.write_untracked().take_slips();
        self.keep.with_value(|keep| {
            if let Some(keep) = keep {
                self.book.with_untracked(|book| keep(name, book, applied, slips, durability));
            }
        });
    }

    fn recompute(self, name: &str, applied: &Applied, session: Option<Session>) {
        let touched = applied.touched.clone();
        let moves = self.book.with_untracked(|book| self.ledger.try_update(|ledger| ledger.refresh(book, &touched)));
        let change = LastChange {
            name: name.to_string(),
            session,
            touched,
            was: only_record(&applied.inverse).cloned(),
            moves: moves.unwrap_or_default(),
        };
        self.last_change.update(|last| {
            *last = Some(match last.take() {
                Some(earlier) => earlier.joined_with(change),
                None => change,
            });
        });
    }

    /// Whether the last step that was done has this name, following it.
    pub fn is_last_step(self, name: &str) -> bool {
        self.history.with(|history| history.undo_name(Reach::Everything) == Some(name))
    }

    /// Something of an offer's result, following it. Returns `None` if it cannot be computed.
    pub fn priced<T>(self, id: OfferId, read: impl FnOnce(&Priced) -> Option<T>) -> Option<T> {
        self.ledger.with(|ledger| read(ledger.get(id)?.as_ref().ok()?))
    }

    /// Why an offer cannot be computed, as a sentence, following it.
    pub fn stuck(self, id: OfferId) -> Option<String> {
        let error = self.ledger.with(|ledger| ledger.get(id)?.as_ref().err().copied())?;
        Some(self.book.with(|book| words::offer_error(&error, book)))
    }

    /// Where one offer stands.
    pub fn status(self, id: OfferId) -> Signal<OfferStatus> {
        Signal::derive(move || {
            self.ledger.with(|ledger| ledger.get(id).map_or(OfferStatus::CannotCompute, OfferStatus::from))
        })
    }
}

/// The record that an edit writes, where it writes one alone.
fn only_record(edit: &Edit) -> Option<&Record> {
    match edit {
        Edit::Put(record) => Some(record),
        Edit::Together(edits) => match edits.as_slice() {
            [edit] => only_record(edit),
            _ => None,
        },
        _ => None,
    }
}
