//! The keeper of one open book: saves its changes in order, and takes in what other tabs save.

mod change;
mod conflict;
mod journal;
mod known;
mod queue;

use std::cell::{Cell, RefCell};
use std::collections::BTreeSet;
use std::fmt;
use std::rc::Rc;

pub use change::{Change, ConflictReason};
pub use conflict::Conflict;
pub(super) use journal::{Replayed, replay};
pub(super) use known::Known;
pub(super) use queue::Queue;
use queue::{Then, differences};

use super::{Backing, Cause, Commit, Damage, Fault, Row, StoredBook, damage, remote_edit};
use crate::book::{Book, BookId, Edit, Key, Patch, Refusal};

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
        /// How many changes wait; 0 where the trouble is with reading another tab's.
        waiting: usize,
        /// Why.
        fault: Fault,
    },
    /// What does not hold upon what another tab saved waits for the person to decide, by
    /// [`BookSync::keep_mine`] and [`BookSync::take_theirs`]. Everything else is saved.
    InConflict {
        /// Each of them; at least one.
        conflicts: Vec<Conflict>,
    },
}

impl Saving {
    /// Whether something would be lost if the page went now.
    pub fn at_risk(&self) -> bool {
        match self {
            Saving::Saved { .. } => false,
            Saving::Saving { .. } | Saving::InConflict { .. } => true,
            // What is stored nowhere is on the screen only.
            Saving::NotSaved { waiting, fault } => *waiting > 0 || matches!(fault, Fault::Gone | Fault::Deleted),
        }
    }
}

/// What the app does on a keeper's behalf.
pub struct Hooks {
    /// Shows whether the book is saved. Called at each change of it.
    pub saving: Box<dyn Fn(&Saving)>,
    /// The book as it is on the screen.
    pub book: Box<dyn Fn() -> Book>,
    /// Applies to the book on the screen, and does not save, what another tab saved.
    pub apply_remote: Box<ApplyRemote>,
    /// Applies to the book on the screen, and does not save, that the person gives up a change of
    /// this name for what another tab saved: a step that Undo takes back.
    pub give_up: Box<GiveUp>,
    /// The person kept a change of this name over what another tab saved: what that did to the book
    /// is a step of its own, which Undo takes back to what the other tab saved.
    pub kept: Box<Kept>,
}

type ApplyRemote = dyn Fn(&Edit) -> Result<(), Refusal>;
type GiveUp = dyn Fn(&str, &Edit) -> Result<(), Refusal>;
type Kept = dyn Fn(&str, &Patch);

/// The keeper of one open book. Its clones are the same sync.
///
/// What waits is carried over to what other tabs save, field by field, by itself. A change that
/// does not hold there is at odds, until the person decides; the others are saved meanwhile.
pub struct BookSync<B> {
    inner: Rc<Inner<B>>,
}

struct Inner<B> {
    backing: B,
    known: RefCell<Known>,
    queue: RefCell<Queue>,
    /// Whether another tab is known to have saved.
    behind: Cell<bool>,
    fault: RefCell<Option<Fault>>,
    busy: Cell<bool>,
    /// Whether another tab said that it deleted the book.
    deleted: Cell<bool>,
    /// The notes that hold what is not saved, in case this tab goes.
    journals: RefCell<Vec<String>>,
    hooks: Hooks,
}

impl<B: Backing> BookSync<B> {
    /// Keeps a book of which `queue` is not saved yet, and stands in `notes`.
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

    /// The book's id.
    pub fn id(&self) -> BookId {
        self.inner.known.borrow().entry().id
    }

    /// Saves a change that was done to the book on the screen: one transaction, after those that
    /// wait. What stood in the way before is tried again.
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

    /// Another tab saved this book as of `revision`.
    pub fn remote_saved(&self, revision: u64) {
        // A book that was deleted and brought back begins anew.
        if self.inner.deleted.take() || revision > self.inner.known.borrow().entry().revision {
            self.inner.behind.set(true);
            self.retry();
        }
    }

    /// Another tab deleted this book.
    pub fn remote_deleted(&self) {
        self.inner.deleted.set(true);
        self.halt(Fault::Deleted);
    }

    /// Tries again what waits, as when the person made room.
    pub fn retry(&self) {
        let sync = self.clone();
        self.inner.backing.spawn(async move { sync.work().await });
    }

    /// This tab may go at any moment: writes down at once what is not saved, for whoever opens the
    /// book next. Where there is no room for that, nothing is written.
    pub fn write_journal(&self) {
        let inner = &self.inner;
        let texts = journal::texts(inner.queue.borrow().not_saved());
        if texts.is_empty() || inner.deleted.get() {
            return;
        }
        if let Some(name) = inner.backing.write_journal(self.id(), &texts) {
            let mut others = inner.journals.replace(vec![name.clone()]);
            // What they hold is in this one.
            others.retain(|other| *other != name);
            inner.backing.delete_journals(&others);
        }
    }

    /// What is not saved is given up: nobody is to find it.
    pub fn delete_journals(&self) {
        self.inner.delete_journals();
    }

    /// Shows that nothing is saved any more, for this reason, until it is tried again.
    pub fn halt(&self, fault: Fault) {
        self.inner.fault.replace(Some(fault));
        self.inner.tell();
    }

    /// Whether the book is saved.
    pub fn saving(&self) -> Saving {
        self.inner.saving()
    }

    /// Puts the change at odds that stands at this place, from 0, over what the other tab did, and
    /// saves it. What cannot be put over stays at odds.
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

    /// Drops the change at odds that stands at this place, from 0, for what the other tab did.
    pub fn take_theirs(&self, place: usize) {
        self.decide(Then::Drop(place));
    }

    /// Whether what waits could be arranged so.
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

    /// What is stored does not hold together.
    fn damaged(&self, refusal: Refusal) -> Fault {
        let book = self.known.borrow().entry().id;
        Fault::Damaged(Box::new(Damage { book, stored: StoredBook::default(), causes: vec![Cause::Book(refusal)] }))
    }

    async fn write(&self, commit: Commit) -> Result<(), Fault> {
        self.tell();
        // Steps alone leave the book at its revision.
        let steps_alone = commit.rows.is_empty();
        let written = match steps_alone {
            true => self.backing.file(&commit.slips).await,
            false => self.backing.commit(&commit).await,
        };
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

    /// Takes in what other tabs saved, and carries over to it what waits here.
    async fn catch_up(&self) -> Result<(), Fault> {
        let (id, revision) = {
            let known = self.known.borrow();
            (known.entry().id, known.entry().revision)
        };
        let stored = self.backing.book(id, revision).await?;
        let (entry, mut rows) = damage::read(id, stored)?;
        if entry.revision < revision {
            return self.begin_again(id).await;
        }
        // A transaction whose answer was lost may have been written all the same.
        let own = self.queue.borrow().in_flight().map(|change| self.known.borrow().commit(&change).rows);
        let written = |own: &Vec<Row>| !own.is_empty() && own.iter().all(|row| rows.contains(row));
        if let Some(own) = own.filter(written) {
            rows.retain(|row| !own.contains(row));
            self.known.borrow_mut().take(entry.clone(), &own);
            self.queue.borrow_mut().written();
        }
        self.queue.borrow_mut().not_written();
        if !rows.is_empty() {
            let screen = (self.hooks.book)();
            let was_stored = self.queue.borrow().stored(&screen, None);
            let taken = was_stored.and_then(|mut stored| {
                let edit = remote_edit(&stored, &rows);
                let keys = stored.apply(&edit)?.touched;
                self.show(stored, &screen, keys, Then::Nothing)
            });
            taken.map_err(|refusal| self.damaged(refusal))?;
        }
        self.known.borrow_mut().take(entry, &rows);
        self.behind.set(false);
        Ok(())
    }

    /// Takes in a book that began anew at its id, as one that was deleted and brought back.
    async fn begin_again(&self, id: BookId) -> Result<(), Fault> {
        let stored = self.backing.book(id, 0).await?;
        let (entry, rows, book) = damage::open(id, stored)?;
        let screen = (self.hooks.book)();
        let keys = screen.records().chain(book.records()).map(|record| record.key()).collect();
        self.show(book, &screen, keys, Then::Nothing).map_err(|refusal| self.damaged(refusal))?;
        self.known.replace(Known::new(entry, &rows));
        self.behind.set(false);
        Ok(())
    }

    /// Arranges anew what waits, upon what is stored already.
    fn arrange(&self, then: Then) -> Result<(), Refusal> {
        let screen = (self.hooks.book)();
        let later = if let Then::Later(change) = &then { Some(change.as_ref()) } else { None };
        let stored = self.queue.borrow().stored(&screen, later)?;
        let keys = later.iter().flat_map(|change| change.is.keys().copied()).collect();
        self.show(stored, &screen, keys, then)
    }

    /// Shows what is stored with what waits upon it. `keys` are the records that may differ from
    /// the screen besides those that wait.
    fn show(&self, stored: Book, screen: &Book, mut keys: BTreeSet<Key>, then: Then) -> Result<(), Refusal> {
        let dropped = match &then {
            Then::Drop(place) => self.queue.borrow().conflicts().get(*place).map(|item| item.name().to_string()),
            Then::Nothing | Then::Later(_) | Then::Keep(_) => None,
        };
        keys.extend(self.queue.borrow().keys());
        let book = self.queue.borrow_mut().rebase(stored, screen, then);
        keys.extend(self.queue.borrow().keys());
        let edit = differences(screen, book.at(&keys));
        match (edit.keys().is_empty(), dropped) {
            (true, _) => Ok(()),
            (false, Some(name)) => (self.hooks.give_up)(&name, &edit),
            (false, None) => (self.hooks.apply_remote)(&edit),
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
