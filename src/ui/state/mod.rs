//! The open book on the screen, and the commands that change it.
//!
//! Data goes one way: a command applies an edit to the book, the ledger computes anew what the
//! edit touched, what was touched is saved, and the screens follow their signals.

mod figures;

use std::time::Duration;

use leptos::prelude::*;

use super::locale;
use super::today::now;
use crate::app::history::{Deed, History, Reach, Session, Walk};
use crate::app::last_change::LastChange;
use crate::app::library::Desk;
use crate::app::unfinished::Unfinished;
use crate::book::{Applied, Book, Edit, OfferId, Patch, Record, Refusal};
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

/// How long it is said what was taken back.
const SAID: Duration = Duration::from_secs(6);

/// Hands over an applied edit, by its name in words, to be saved with the slips beside the book.
pub type Keep = Box<dyn Fn(&str, &Book, &Applied, Vec<Slip>, Durability)>;

/// Which way a step is walked over.
#[derive(Clone, Copy)]
enum Way {
    Undo,
    Redo,
}

impl AppState {
    /// Shows `book`. Nothing saves what edits touch before [`AppState::keep_by`] says how.
    pub fn new(book: Book, history: History) -> AppState {
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

    /// A new typing session.
    pub fn new_session(self) -> Session {
        self.sessions.update_value(|last| *last = last.wrapping_add(1));
        self.sessions.get_value()
    }

    /// Applies an edit as a step of its own.
    ///
    /// # Errors
    /// The refusal, as a sentence; nothing is changed.
    pub fn apply(self, name: &str, edit: Edit) -> Result<(), String> {
        self.apply_in(name, edit, None)
    }

    /// Applies an edit of a typing session.
    ///
    /// # Errors
    /// The refusal, as a sentence; nothing is changed.
    pub fn apply_in(self, name: &str, edit: Edit, session: Option<Session>) -> Result<(), String> {
        self.step(name, &edit, session, Durability::Relaxed)
    }

    /// Applies an edit of a whole book, such as an import; it is on the disk when saved.
    ///
    /// # Errors
    /// The refusal, as a sentence; nothing is changed.
    pub fn apply_whole(self, name: &str, edit: &Edit) -> Result<(), String> {
        self.step(name, edit, None, Durability::Strict)
    }

    fn step(self, name: &str, edit: &Edit, session: Option<Session>, durability: Durability) -> Result<(), String> {
        let deed = Deed { name, now: now(), session };
        let mut refused = None;
        let walked = self.change(&mut |book, history| match history.apply(book, &deed, edit) {
            Ok(applied) => applied.map_or(Walk::Nothing, |applied| Walk::Done { name: name.to_string(), applied }),
            Err(refusal) => {
                refused = Some(words::refusal(&refusal, book));
                Walk::Nothing
            }
        });
        if let Walk::Done { name, applied } = walked {
            self.keep(&name, applied, session, durability);
        }
        refused.map_or(Ok(()), Err)
    }

    /// Takes back what a typing session did, since what is typed now does not hold.
    pub fn take_back(self, session: Session) {
        match self.change(&mut |book, history| history.take_back(book, session)) {
            Walk::Done { name, applied } => self.keep(&name, applied, Some(session), Durability::Relaxed),
            Walk::Partly { name, applied, hindrance } => {
                self.keep(&name, applied, Some(session), Durability::Relaxed);
                self.say(&Walk::Refused { name, hindrance }, Way::Undo);
            }
            other => self.say(&other, Way::Undo),
        }
    }

    /// Takes the last step within reach back.
    pub fn undo(self, reach: Reach) {
        let walked = self.change(&mut |book, history| history.undo(book, reach));
        self.walked(walked, "Taken back", Way::Undo);
    }

    /// Does the last step taken back within reach again.
    pub fn redo(self, reach: Reach) {
        let walked = self.change(&mut |book, history| history.redo(book, reach));
        self.walked(walked, "Done again", Way::Redo);
    }

    /// Takes one step back out of its turn: a step itself.
    pub fn take_back_alone(self, id: &str, name: &str) {
        let name = words::steps::undo_of(name);
        let deed = Deed { name: &name, now: now(), session: None };
        let walked = self.change(&mut |book, history| history.take_back_alone(book, id, &deed));
        self.walked(walked, "Taken back", Way::Undo);
    }

    fn walked(self, walked: Walk, said: &str, way: Way) {
        match walked {
            Walk::Done { name, applied } => {
                self.keep(&format!("{said}: {name}"), applied, None, Durability::Relaxed);
                self.say_done(match way {
                    Way::Undo => words::steps::undone(&name),
                    Way::Redo => words::steps::redone(&name),
                });
            }
            other => self.say(&other, way),
        }
    }

    /// Says for a while what was done, taken back or done again.
    pub fn say_done(self, sentence: String) {
        let said = Said { sentence, done: true };
        self.said.set(Some(said.clone()));
        let fade = move || {
            // The book may be closed by then.
            let _ = self.said.try_maybe_update(|now| {
                let same = now.as_ref() == Some(&said);
                if same {
                    *now = None;
                }
                (same, ())
            });
        };
        set_timeout(fade, SAID);
    }

    /// Says why a step was not walked over.
    fn say(self, walked: &Walk, way: Way) {
        let said = match walked {
            Walk::Nothing | Walk::Done { .. } | Walk::Partly { .. } => return,
            Walk::Already { name } => match way {
                Way::Undo => words::steps::already_undone(name),
                Way::Redo => words::steps::already_redone(name),
            },
            Walk::Refused { name, hindrance } => {
                let book = self.book.read_untracked();
                let why = hindrance.sentence(&book, &self.speaker.get_untracked());
                match way {
                    Way::Undo => words::steps::not_undone(name, &why),
                    Way::Redo => words::steps::not_redone(name, &why),
                }
            }
        };
        self.said.set(Some(Said { sentence: said, done: false }));
        // Undo goes on to the next step, also when the page is loaded anew.
        self.keep_steps("");
    }

    /// Takes in what another tab saved: no step of ours, and nothing to save.
    ///
    /// # Errors
    /// The refusal where it contradicts what is here; nothing is changed.
    pub fn apply_remote(self, edit: &Edit) -> Result<(), Refusal> {
        let applied = self.book.try_maybe_update(|book| match book.apply(edit) {
            Ok(applied) => (true, Ok(applied)),
            Err(refusal) => (false, Err(refusal)),
        });
        if let Some(applied) = applied {
            let applied = applied?;
            self.history.update(History::follow);
            self.recompute("Another tab", &applied, None);
        }
        Ok(())
    }

    /// Gives a change of this name up for what another tab saved: a step, and nothing to save.
    ///
    /// # Errors
    /// The refusal; nothing is changed.
    pub fn give_up(self, name: &str, edit: &Edit) -> Result<(), Refusal> {
        let name = words::keeping::took_theirs(name);
        let deed = Deed { name: &name, now: now(), session: None };
        let mut given_up = Ok(None);
        self.change(&mut |book, history| {
            given_up = history.apply(book, &deed, edit);
            match &given_up {
                Ok(Some(applied)) => Walk::Done { name: name.clone(), applied: applied.clone() },
                Ok(None) | Err(_) => Walk::Nothing,
            }
        });
        if let Some(applied) = given_up? {
            self.recompute(&name, &applied, None);
            self.keep_steps(&name);
        }
        Ok(())
    }

    /// A change of this name was kept over what another tab saved: a step, which is on the screen
    /// already.
    pub fn kept(self, name: &str, patch: &Patch) {
        let name = words::keeping::kept_mine(name);
        let deed = Deed { name: &name, now: now(), session: None };
        self.history.update(|history| history.note(&deed, patch));
        self.keep_steps(&name);
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

    /// Something of an offer's result, following it; none where it cannot be computed.
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

impl Desk for AppState {
    fn book(&self) -> Book {
        self.book.get_untracked()
    }

    fn apply_remote(&self, edit: &Edit) -> Result<(), Refusal> {
        AppState::apply_remote(*self, edit)
    }

    fn give_up(&self, name: &str, edit: &Edit) -> Result<(), Refusal> {
        AppState::give_up(*self, name, edit)
    }

    fn kept(&self, name: &str, patch: &Patch) {
        AppState::kept(*self, name, patch);
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
