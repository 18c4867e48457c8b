//! The sync of one open book with its storage: it saves the book's changes in order, and rebases
//! them on what other tabs save.

mod change;
mod conflict;
mod journal;
mod known;
mod queue;
mod rebasing;

use std::cell::{Cell, RefCell};
use std::fmt;
use std::rc::Rc;

pub use change::{Change, ConflictReason};
pub use conflict::Conflict;
pub(super) use journal::{Replayed, replay};
pub(super) use known::Known;
pub(super) use queue::Queue;
use queue::Then;

use super::{Backing, Cause, Commit, Damage, Fault, StoredBook};
use crate::book::{Book, Edit, Patch, Refusal};

/// Whether the open book is saved.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Saving {
    /// Everything is.
    Saved {
        /// The book's revision; at least 1.
        revision: u64,
    },
    /// Changes are on their way.
    Saving {
        /// How many.
        waiting: usize,
    },
    /// Nothing moves until the next change or [`BookSync::retry`]. No change is dropped.
    NotSaved {
        /// How many changes wait, or 0 if reading another tab's changes failed.
        waiting: usize,
        /// Why.
        fault: Fault,
    },
    /// Changes in conflict with what another tab saved wait for the person to decide, by
    /// [`BookSync::keep_mine`] and [`BookSync::take_theirs`]. Everything else is saved.
    InConflict {
        /// The conflicts; at least one.
        conflicts: Vec<Conflict>,
    },
}

impl Saving {
    /// Whether something would be lost if the person left now.
    pub fn at_risk(&self) -> bool {
        match self {
            Saving::Saved { .. } => false,
            Saving::Saving { .. } | Saving::InConflict { .. } => true,
            // A book that is stored no more is on the screen only.
            Saving::NotSaved { waiting, fault } => *waiting > 0 || matches!(fault, Fault::Gone | Fault::Deleted),
        }
    }
}

/// What the app does for the sync of its book.
pub struct Hooks {
    /// Shows whether the book is saved. Called whenever that may have changed.
    pub saving: Box<dyn Fn(&Saving)>,
    /// Returns the book as it is on the screen.
    pub book: Box<dyn Fn() -> Book>,
    /// Applies to the book on the screen what another tab saved. It is not saved again.
    pub apply_remote: Box<ApplyRemote>,
    /// Applies to the book on the screen that the person gives up the change of this name for what
    /// another tab saved. It is not saved, and is a step that Undo takes back.
    pub give_up: Box<GiveUp>,
    /// Called when the person kept the change of this name over what another tab saved. The patch is
    /// what that did to the book: a step, from which Undo goes back to what the other tab saved.
    pub kept: Box<Kept>,
}

type ApplyRemote = dyn Fn(&Edit) -> Result<(), Refusal>;
type GiveUp = dyn Fn(&str, &Edit) -> Result<(), Refusal>;
type Kept = dyn Fn(&str, &Patch);

/// The sync of one open book. A clone is a handle of the same sync.
///
/// Changes that wait are rebased, field by field, on what other tabs save. A change that cannot be
/// rebased is in conflict until the person decides; the others are saved meanwhile.
pub struct BookSync<B> {
    inner: Rc<Inner<B>>,
}

struct Inner<B> {
    backing: B,
    known: RefCell<Known>,
    queue: RefCell<Queue>,
    /// Whether another tab is known to have saved a later revision.
    behind: Cell<bool>,
    fault: RefCell<Option<Fault>>,
    busy: Cell<bool>,
    /// Whether another tab said that it deleted the book.
    deleted: Cell<bool>,
    /// The names of the journals that hold what is not saved, in case this tab goes.
    journals: RefCell<Vec<String>>,
    hooks: Hooks,
}

impl<B: Backing> BookSync<B> {
    /// The sync of a book. `queue` is what is not saved of it yet, and `journals` the names of the
    /// journals that hold that.
    pub(super) fn new(backing: B, known: Known, queue: Queue, journals: Vec<String>, hooks: Hooks) -> BookSync<B> {
        let inner = Inner {
            backing,
            known: RefCell::new(known),
            queue: RefCell::new(queue),
            behind: Cell::new(false),
            fault: RefCell::new(None),
            busy: Cell::new(false),
            deleted: Cell::new(false),
            journals: RefCell::new(journals),
            hooks,
        };
        BookSync { inner: Rc::new(inner) }
    }

    /// Saves a change that was applied to the book on the screen, after those that wait. If an
    /// earlier attempt failed, they are tried again with it.
    pub fn save(&self, change: Change) {
        if change.is_empty() {
            return;
        }
        if self.inner.queue.borrow().conflicts().is_empty() {
            self.inner.queue.borrow_mut().push(change);
            self.retry();
        } else {
            self.decide(Then::Later(Box::new(change)));
        }
    }

    /// Tells that another tab saved this book as `revision`.
    pub fn remote_saved(&self, revision: u64) {
        // A book that was deleted and brought back begins anew.
        if self.inner.deleted.take() || revision > self.inner.known.borrow().entry().revision {
            self.inner.behind.set(true);
            self.retry();
        }
    }

    /// Tells that another tab deleted this book.
    pub fn remote_deleted(&self) {
        self.inner.deleted.set(true);
        self.halt(Fault::Deleted);
    }

    /// Tries again to save what waits, such as after the person made room.
    pub fn retry(&self) {
        let sync = self.clone();
        self.inner.backing.spawn(async move { sync.work().await });
    }

    /// Writes to a journal at once what is not saved, since this tab may go at any moment: whoever
    /// opens the book next replays it. If there is no room for the journal, nothing is written.
    pub fn write_journal(&self) {
        let inner = &self.inner;
        let texts = journal::texts(inner.queue.borrow().not_saved());
        if texts.is_empty() || inner.deleted.get() {
            return;
        }
        let id = inner.known.borrow().entry().id;
        if let Some(name) = inner.backing.write_journal(id, &texts) {
            let mut others = inner.journals.replace(vec![name.clone()]);
            // This one has what they hold.
            others.retain(|other| *other != name);
            inner.backing.delete_journals(&others);
        }
    }

    /// Deletes the journals: what is not saved is given up.
    pub fn delete_journals(&self) {
        self.inner.delete_journals();
    }

    /// Stops saving for this reason, until the next change or [`BookSync::retry`].
    pub fn halt(&self, fault: Fault) {
        self.inner.fault.replace(Some(fault));
        self.inner.tell();
    }

    /// Whether the book is saved.
    pub fn saving(&self) -> Saving {
        self.inner.saving()
    }

    /// Resolves the conflict at this place, counted from 0, for this tab: its change overwrites what
    /// the other tab did, and is saved. A conflict that cannot be resolved so stays.
    pub fn keep_mine(&self, place: usize) {
        let kept = {
            let queue = self.inner.queue.borrow();
            let item = queue.conflicts().get(place).filter(|item| item.can_be_kept);
            item.map(|item| (item.name().to_string(), item.patch()))
        };
        let decided = self.decide(Then::Keep(place));
        if let Some((name, patch)) = kept.filter(|_| decided) {
            (self.inner.hooks.kept)(&name, &patch);
        }
    }

    /// Resolves the conflict at this place, counted from 0, for the other tab: this tab's change is
    /// dropped.
    pub fn take_theirs(&self, place: usize) {
        self.decide(Then::Drop(place));
    }

    /// Rearranges what waits. Returns whether that succeeded.
    fn decide(&self, then: Then) -> bool {
        let arranged = self.inner.arrange(then);
        let decided = arranged.is_ok();
        match arranged {
            Ok(()) => self.retry(),
            Err(refusal) => self.halt(self.inner.damaged(refusal)),
        }
        decided
    }

    async fn work(&self) {
        let inner = &self.inner;
        if inner.busy.replace(true) {
            inner.tell();
            return;
        }
        inner.fault.replace(None);
        let fault = loop {
            let step = if inner.deleted.get() {
                Err(Fault::Deleted)
            } else if inner.behind.get() {
                inner.catch_up().await
            } else {
                let sent = inner.queue.borrow_mut().send();
                match sent.map(|change| inner.known.borrow().commit(&change)) {
                    Some(commit) => inner.write(commit).await,
                    None => break None,
                }
            };
            if let Err(fault) = step {
                break Some(fault);
            }
        };
        inner.fault.replace(fault);
        inner.busy.set(false);
        inner.tell();
    }
}

impl<B: Backing> Inner<B> {
    fn saving(&self) -> Saving {
        let queue = self.queue.borrow();
        if let Some(fault) = self.fault.borrow().clone() {
            return Saving::NotSaved { waiting: queue.len(), fault };
        }
        match (queue.is_waiting(), queue.conflicts()) {
            (true, _) => Saving::Saving { waiting: queue.len() },
            (false, []) => Saving::Saved { revision: self.known.borrow().entry().revision },
            (false, conflicts) => Saving::InConflict { conflicts: conflicts.to_vec() },
        }
    }

    fn tell(&self) {
        let saving = self.saving();
        if let Saving::Saved { .. } = saving {
            self.delete_journals();
        }
        (self.hooks.saving)(&saving);
    }

    fn delete_journals(&self) {
        let journals = self.journals.take();
        if !journals.is_empty() {
            self.backing.delete_journals(&journals);
        }
    }

    /// The fault that what is stored is not a valid book.
    fn damaged(&self, refusal: Refusal) -> Fault {
        let book = self.known.borrow().entry().id;
        Fault::Damaged(Box::new(Damage { book, stored: StoredBook::default(), causes: vec![Cause::Book(refusal)] }))
    }

    async fn write(&self, commit: Commit) -> Result<(), Fault> {
        self.tell();
        // Steps alone do not change the book's revision.
        let steps_alone = commit.rows.is_empty();
        let written =
            if steps_alone { self.backing.file(&commit.slips).await } else { self.backing.commit(&commit).await };
        match written {
            Ok(()) => {
                if !steps_alone {
                    self.known.borrow_mut().take(commit.entry, &commit.rows);
                }
                self.queue.borrow_mut().written();
                Ok(())
            }
            Err(Fault::Behind) => {
                self.behind.set(true);
                Ok(())
            }
            Err(fault) => Err(fault),
        }
    }
}

impl<B> Clone for BookSync<B> {
    fn clone(&self) -> BookSync<B> {
        BookSync { inner: Rc::clone(&self.inner) }
    }
}

impl<B> fmt::Debug for BookSync<B> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("BookSync").field("known", &self.inner.known).field("queue", &self.inner.queue).finish()
    }
}
