//! Undo and redo: what was done to the open book, step by step, kept beside it.
//!
//! A step knows what it did field by field. Taking it back puts those fields back, and no other:
//! what somebody else changed since stays, and where both changed the same field nothing is
//! taken back and a sentence says why. Each step is written in the transaction of its edit, so
//! that it is there again when the book is: the last 200, of at most 4 MB together. One that does
//! not read is dropped.
//!
//! Undo goes over the steps of this tab and of tabs that are gone. Those of a tab that is open are
//! taken back by name only, in the list of steps; each tab has a number, and holds a lock of that
//! name while it is open.

mod hindrance;
mod keeping;
mod step;
#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests;
mod undated;

use std::collections::BTreeMap;

use crate::book::{Applied, Book, BookId, Edit, Key, Patch, Record, Refusal};
use crate::store::Slip;

pub use hindrance::{Hindrance, Listed, Stands};
pub use keeping::{LARGEST, LONGEST};
pub use step::{Reach, Step};

/// One typing session in one field; all its edits are one step.
pub type Session = u64;

/// What is to be done to the book.
#[derive(Clone, Debug)]
pub struct Deed<'a> {
    /// What is done, in words.
    pub name: &'a str,
    /// When, in milliseconds since 1970.
    pub now: u64,
    /// The typing session that it belongs to.
    pub session: Option<Session>,
}

/// What came of walking over a step.
#[allow(clippy::large_enum_variant, reason = "one at a time, and a box would stand in the way of the edit")]
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Walk {
    /// There is no step to walk over.
    Nothing,
    /// It was taken back, or done again.
    Done {
        /// The step's name.
        name: String,
        /// What that did to the book.
        applied: Applied,
    },
    /// The book stands so already: another tab did the same.
    Already {
        /// The step's name.
        name: String,
    },
    /// Some of it was taken back, and the rest refused.
    Partly {
        /// The step's name.
        name: String,
        /// What that did to the book.
        applied: Applied,
        /// Why the rest was refused.
        hindrance: Hindrance,
    },
    /// It was refused: the book is as it was, and the next walk goes on to the next step.
    Refused {
        /// The step's name.
        name: String,
        /// Why.
        hindrance: Hindrance,
    },
}

/// What was done to one open book, and what was taken back of it.
#[derive(Clone, Debug)]
pub struct History {
    book: BookId,
    tab: u64,
    /// The other tabs that are there. It is `None` while nobody has looked. Their steps are theirs.
    others: Option<Vec<u64>>,
    /// In the order in which they were done.
    steps: Vec<Step>,
    typing: Option<Typing>,
    /// What is to be written: with an edit, or alone where nothing else was done.
    unwritten: Vec<Slip>,
}

/// The typing session of the last step, while nothing came between.
#[derive(Clone, Debug)]
struct Typing {
    session: Session,
    /// What stood before it, at each key that it wrote to.
    was: BTreeMap<Key, Option<Record>>,
}

impl History {
    /// Applies an edit as a step. A further edit of the same typing session joins its step: taking
    /// it back restores what was there before the session. Returns `None` if nothing changed.
    ///
    /// # Errors
    /// The [`Refusal`]; book and steps are then as they were.
    pub fn apply(&mut self, book: &mut Book, deed: &Deed<'_>, edit: &Edit) -> Result<Option<Applied>, Refusal> {
        let was = book.at(&edit.keys());
        let applied = book.apply(edit)?;
        if was == book.at(&edit.keys()) {
            return Ok(None);
        }
        self.forget_undone();
        let typing = self.typing.take().filter(|typing| Some(typing.session) == deed.session);
        if let Some(typing) = typing {
            self.join(book, deed, typing, was);
        } else {
            self.begin(deed, Patch::between(&was, book), None);
            self.typing = deed.session.map(|session| Typing { session, was });
        }
        self.prune();
        Ok(Some(applied))
    }

    /// Notes as a step what a patch did that is done already.
    pub fn note(&mut self, deed: &Deed<'_>, patch: &Patch) {
        self.typing = None;
        self.forget_undone();
        self.begin(deed, patch.clone(), None);
        self.prune();
    }

    fn begin(&mut self, deed: &Deed<'_>, patch: Patch, takes_back: Option<String>) {
        let step = Step {
            id: self.next_id(deed.now),
            name: deed.name.to_string(),
            at: deed.now,
            patch,
            undone: None,
            takes_back,
            session: deed.session,
            set_aside: false,
            bytes: 0,
        };
        self.steps.push(step);
        self.write(self.steps.len().saturating_sub(1));
    }

    /// Lets the last step reach from before its typing session to now.
    fn join(&mut self, book: &Book, deed: &Deed<'_>, mut typing: Typing, was: BTreeMap<Key, Option<Record>>) {
        for (key, record) in was {
            typing.was.entry(key).or_insert(record);
        }
        let patch = Patch::between(&typing.was, book);
        let Some(step) = self.steps.last_mut() else { return };
        if patch.is_empty() {
            // Typed back to what stood there: there is nothing to take back.
            self.remove(self.steps.len().saturating_sub(1));
            return;
        }
        step.patch = patch;
        step.name = deed.name.to_string();
        step.at = deed.now;
        self.write(self.steps.len().saturating_sub(1));
        self.typing = Some(typing);
    }

    /// Another tab's edits came in: what is typed next is a step of its own, so that it never
    /// reaches over them.
    pub fn follow(&mut self) {
        self.typing = None;
    }

    /// Takes back what a typing session did, since what is typed now does not hold. It leaves no
    /// step behind.
    pub fn take_back(&mut self, book: &mut Book, session: Session) -> Walk {
        self.typing = None;
        let mut walk = Walk::Nothing;
        let of_the_session = |step: &Step| step.session == Some(session) && step.undone.is_none() && !step.set_aside;
        while let Some(place) = self.steps.iter().rposition(of_the_session) {
            let Some(step) = self.steps.get(place) else { break };
            let (name, patch) = (step.name.clone(), step.patch.inverse());
            match put(book, &patch) {
                Ok(Some(applied)) => {
                    let earlier = match walk {
                        Walk::Done { applied, .. } => Some(applied),
                        _ => None,
                    };
                    walk = Walk::Done { name, applied: after(earlier, applied) };
                    self.remove(place);
                }
                Ok(None) => self.remove(place),
                Err(hindrance) => {
                    self.set_aside(place);
                    return match walk {
                        Walk::Done { applied, .. } => Walk::Partly { name, applied, hindrance },
                        _ => Walk::Refused { name, hindrance },
                    };
                }
            }
        }
        walk
    }

    /// Takes back the last step within `reach`.
    pub fn undo(&mut self, book: &mut Book, reach: Reach) -> Walk {
        self.typing = None;
        let Some(place) = self.last_done(reach) else { return Walk::Nothing };
        let last = self.steps.iter().filter_map(|step| step.undone).max().unwrap_or(0);
        self.walk(book, place, Patch::inverse, Some(last.saturating_add(1)))
    }

    /// Does the last step taken back again.
    pub fn redo(&mut self, book: &mut Book, reach: Reach) -> Walk {
        self.typing = None;
        let Some(place) = self.last_undone(reach) else { return Walk::Nothing };
        self.walk(book, place, Patch::clone, None)
    }

    fn walk(&mut self, book: &mut Book, place: usize, way: fn(&Patch) -> Patch, undone: Option<u64>) -> Walk {
        let Some(step) = self.steps.get_mut(place) else { return Walk::Nothing };
        let name = step.name.clone();
        let put = put(book, &way(&step.patch));
        if put.is_ok() {
            step.undone = undone;
            self.write(place);
        }
        match put {
            Ok(Some(applied)) => Walk::Done { name, applied },
            Ok(None) => Walk::Already { name },
            Err(hindrance) => {
                self.set_aside(place);
                Walk::Refused { name, hindrance }
            }
        }
    }

    /// Takes one step back out of its turn, which is a step itself. `deed` names it.
    pub fn take_back_alone(&mut self, book: &mut Book, id: &str, deed: &Deed<'_>) -> Walk {
        let Some(step) = self.steps.iter().find(|step| step.id == id) else { return Walk::Nothing };
        if self.stands(book, step) != Stands::Free {
            return Walk::Nothing;
        }
        let (name, patch) = (step.name.clone(), step.patch.inverse());
        match put(book, &patch) {
            Ok(Some(applied)) => {
                self.typing = None;
                self.forget_undone();
                self.begin(deed, patch, Some(id.to_string()));
                self.prune();
                Walk::Done { name, applied }
            }
            Ok(None) => Walk::Already { name },
            Err(hindrance) => Walk::Refused { name, hindrance },
        }
    }

    /// Whether Undo and Redo of this tab walk over a step: it is this tab's, or of a tab that is gone.
    fn is_ours(&self, step: &Step) -> bool {
        let tab = step.tab();
        tab == Some(self.tab) || self.others.as_ref().is_some_and(|others| tab.is_none_or(|tab| !others.contains(&tab)))
    }

    /// The name of the step that Undo takes back.
    pub fn undo_name(&self, reach: Reach) -> Option<&str> {
        self.name_at(self.last_done(reach))
    }

    /// The name of the step that Redo does again.
    pub fn redo_name(&self, reach: Reach) -> Option<&str> {
        self.name_at(self.last_undone(reach))
    }

    /// The step that a typing session made. Returns `None` if it changed nothing, or that was taken
    /// back.
    pub fn step_of(&self, session: Session) -> Option<&Step> {
        self.steps.iter().rev().find(|step| step.session == Some(session) && step.undone.is_none())
    }

    /// The steps, in the order in which they were done; those taken back are among them.
    pub fn steps(&self) -> &[Step] {
        &self.steps
    }

    /// The id of the step that was done last.
    pub fn last_id(&self) -> Option<&str> {
        self.steps.last().map(|step| step.id.as_str())
    }

    /// Whether a step stands, as far as is known here: it was not taken back.
    pub fn is_done(&self, id: &str) -> bool {
        self.steps.iter().all(|step| step.id != id || step.undone.is_none()) && !self.is_taken_back(id)
    }

    /// Whether a step was taken back out of its turn.
    fn is_taken_back(&self, id: &str) -> bool {
        self.steps.iter().any(|step| step.undone.is_none() && step.takes_back.as_deref() == Some(id))
    }

    fn last_done(&self, reach: Reach) -> Option<usize> {
        let done = |step: &Step| step.undone.is_none() && !step.set_aside && reach.takes(step) && self.is_ours(step);
        self.steps.iter().rposition(|step| done(step) && !self.is_taken_back(&step.id))
    }

    fn last_undone(&self, reach: Reach) -> Option<usize> {
        let undone = |step: &Step| step.undone.filter(|_| !step.set_aside && reach.takes(step) && self.is_ours(step));
        let undone = self.steps.iter().enumerate().filter_map(|(place, step)| Some((undone(step)?, place)));
        undone.max().map(|(_, place)| place)
    }

    fn name_at(&self, place: Option<usize>) -> Option<&str> {
        place.and_then(|place| self.steps.get(place)).map(|step| step.name.as_str())
    }

    fn set_aside(&mut self, place: usize) {
        if let Some(step) = self.steps.get_mut(place) {
            step.set_aside = true;
            self.write(place);
        }
    }
}

/// Does a patch to the book. Returns `None` if the book stands so already.
fn put(book: &mut Book, patch: &Patch) -> Result<Option<Applied>, Hindrance> {
    let edit = patch.edit(book).map_err(Hindrance::Changed)?;
    let was = book.at(&edit.keys());
    let applied = book.apply(&edit).map_err(Hindrance::Refused)?;
    Ok((was != book.at(&edit.keys())).then_some(applied))
}

/// What two edits did, the later one last.
fn after(earlier: Option<Applied>, later: Applied) -> Applied {
    let Some(mut earlier) = earlier else { return later };
    earlier.touched.extend(later.touched);
    Applied { inverse: Edit::Together(vec![later.inverse, earlier.inverse]), touched: earlier.touched }
}
