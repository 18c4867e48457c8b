//! What other tabs do to the open book.

use leptos::prelude::*;

use super::AppState;
use crate::app::history::{Deed, History, Walk};
use crate::app::library::Desk;
use crate::book::{Book, Edit, Patch, Refusal};
use crate::say;
use crate::ui::today::now;
use crate::words;

impl AppState {
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
            self.recompute(say!(book::another_tab), &applied, None);
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
