//! Steps: doing them, taking them back, doing them again, and saying so.

use std::time::Duration;

use leptos::prelude::*;

use super::{AppState, Said};
use crate::app::history::{Deed, Reach, Session, Walk};
use crate::book::Edit;
use crate::say;
use crate::store::Durability;
use crate::ui::today::now;
use crate::words;

/// How long it is said what was taken back.
const SAID: Duration = Duration::from_secs(6);

/// Which way a step is walked over.
#[derive(Clone, Copy)]
enum Way {
    Undo,
    Redo,
}

impl AppState {
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
        self.walked(walked, Way::Undo);
    }

    /// Does the last step taken back within reach again.
    pub fn redo(self, reach: Reach) {
        let walked = self.change(&mut |book, history| history.redo(book, reach));
        self.walked(walked, Way::Redo);
    }

    /// Takes one step back out of its turn: a step itself.
    pub fn take_back_alone(self, id: &str, name: &str) {
        let name = words::steps::undo_of(name);
        let deed = Deed { name: &name, now: now(), session: None };
        let walked = self.change(&mut |book, history| history.take_back_alone(book, id, &deed));
        self.walked(walked, Way::Undo);
    }

    fn walked(self, walked: Walk, way: Way) {
        match walked {
            Walk::Done { name, applied } => {
                let (walk, said) = match way {
                    Way::Undo => (say!(book::undone_change, change = &name), words::steps::undone(&name)),
                    Way::Redo => (say!(book::redone_change, change = &name), words::steps::redone(&name)),
                };
                self.keep(&walk, applied, None, Durability::Relaxed);
                self.say_done(said);
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
}
