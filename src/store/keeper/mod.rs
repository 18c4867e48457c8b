//! The keeper of one open book: saves its edits in order, and takes in what other tabs save.

mod known;
mod queue;

use std::cell::{Cell, RefCell};
use std::fmt;
use std::rc::Rc;

pub(super) use known::Known;
use queue::{Change, Queue};

use super::{Backing, Commit, Durability, Fault, Row, Slip, damage};
use crate::book::{Applied, Book, BookId, Edit, Refusal};

/// Whether the open book is saved.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Saving {
    /// Everything is.
    Saved {
        /// The book's revision; at least 1.
        revision: u64,
    },
    /// Edits are on their way.
    Saving {
        /// How many.
        waiting: usize,
    },
    /// Nothing moves until the next edit or [`Keeper::retry`]. No edit is dropped.
    NotSaved {
        /// How many edits wait; 0 where the trouble is with reading another tab's.
        waiting: usize,
        /// Why.
        fault: Fault,
    },
}

/// What the app does on a keeper's behalf.
pub struct Hooks {
    /// Shows whether the book is saved. Called at each change of it.
    pub saving: Box<dyn Fn(&Saving)>,
    /// Applies to the book in memory, and does not save, what another tab saved:
    /// [`news`](super::news) gives the edit. A refusal becomes a [`Fault::Conflict`].
    pub news: Box<TakeIn>,
}

type TakeIn = dyn Fn(&[Row]) -> Result<(), Refusal>;

/// The keeper of one open book. Its clones are the same keeper.
///
/// After a [`Fault::Conflict`] or [`Fault::Gone`] the app asks the person. To take the other
/// tab's: open the book again. To keep one's own: open it again, apply [`Keeper::unsaved`] to it
/// and save that with the new keeper. Either way this keeper is dropped.
pub struct Keeper<B> {
    inner: Rc<Inner<B>>,
}

struct Inner<B> {
    backing: B,
    known: RefCell<Known>,
    queue: RefCell<Queue>,
    /// Whether another tab is known to have saved.
    news: Cell<bool>,
    fault: RefCell<Option<Fault>>,
    busy: Cell<bool>,
    hooks: Hooks,
}

impl<B: Backing> Keeper<B> {
    pub(super) fn new(backing: B, known: Known, hooks: Hooks) -> Keeper<B> {
        let inner = Inner {
            backing,
            known: RefCell::new(known),
            queue: RefCell::default(),
            news: Cell::new(false),
            fault: RefCell::new(None),
            busy: Cell::new(false),
            hooks,
        };
        Keeper { inner: Rc::new(inner) }
    }

    /// The book's id.
    pub fn id(&self) -> BookId {
        self.inner.known.borrow().entry().id
    }

    /// Saves what `applied` touched, as it now stands in `book`, and `slips` beside it: one
    /// transaction, after those that wait. What stood in the way before is tried again.
    pub fn save(&self, book: &Book, applied: &Applied, slips: Vec<Slip>, durability: Durability) {
        if applied.touched.is_empty() {
            return;
        }
        self.inner.queue.borrow_mut().push(Change::new(book, applied, slips, durability));
        self.retry();
    }

    /// Another tab saved this book as of `revision`.
    pub fn heard(&self, revision: u64) {
        if revision > self.inner.known.borrow().entry().revision {
            self.inner.news.set(true);
            self.retry();
        }
    }

    /// Tries again what waits, as when the person made room.
    pub fn retry(&self) {
        let keeper = self.clone();
        self.inner.backing.spawn(async move { keeper.work().await });
    }

    /// Whether the book is saved.
    pub fn saving(&self) -> Saving {
        let waiting = self.inner.queue.borrow().len();
        if let Some(fault) = self.inner.fault.borrow().clone() {
            return Saving::NotSaved { waiting, fault };
        }
        match waiting {
            0 => Saving::Saved { revision: self.inner.known.borrow().entry().revision },
            _ => Saving::Saving { waiting },
        }
    }

    /// What is not saved, as an edit of `stored`; none where everything is.
    pub fn unsaved(&self, stored: &Book) -> Option<Edit> {
        let change = self.inner.queue.borrow().as_one()?;
        Some(Edit::records(stored, &change.records))
    }

    fn tell(&self) {
        (self.inner.hooks.saving)(&self.saving());
    }

    async fn work(&self) {
        if self.inner.busy.replace(true) {
            self.tell();
            return;
        }
        self.inner.fault.replace(None);
        let fault = loop {
            let step = if self.inner.news.get() {
                self.catch_up().await
            } else {
                let commit = self.inner.queue.borrow().first().map(|change| self.inner.known.borrow().commit(change));
                match commit {
                    Some(commit) => self.write(commit).await,
                    None => break None,
                }
            };
            if let Err(fault) = step {
                break Some(fault);
            }
        };
        self.inner.fault.replace(fault);
        self.inner.busy.set(false);
        self.tell();
    }

    async fn write(&self, commit: Commit) -> Result<(), Fault> {
        self.tell();
        match self.inner.backing.commit(&commit).await {
            Ok(()) => {
                self.inner.known.borrow_mut().take(commit.entry, &commit.rows);
                self.inner.queue.borrow_mut().pop();
                Ok(())
            }
            Err(Fault::Behind) => {
                self.inner.news.set(true);
                Ok(())
            }
            Err(fault) => Err(fault),
        }
    }

    /// Takes in what other tabs saved, so that what waits here can be saved upon it.
    async fn catch_up(&self) -> Result<(), Fault> {
        let (id, revision) = {
            let known = self.inner.known.borrow();
            (known.entry().id, known.entry().revision)
        };
        let stored = self.inner.backing.book(id, revision).await?;
        let (entry, mut rows) = damage::read(id, stored)?;
        if entry.revision < revision {
            return Err(Fault::Conflict { theirs: rows, refusal: None });
        }
        // A transaction whose answer was lost may have been written all the same.
        let own = self.inner.queue.borrow().first().map(|change| self.inner.known.borrow().commit(change).rows);
        if let Some(own) = own.filter(|own| own.iter().all(|row| rows.contains(row))) {
            rows.retain(|row| !own.contains(row));
            self.inner.known.borrow_mut().take(entry.clone(), &own);
            self.inner.queue.borrow_mut().pop();
        }
        if rows.iter().any(|row| self.inner.queue.borrow().touches(row.key)) {
            return Err(Fault::Conflict { theirs: rows, refusal: None });
        }
        if !rows.is_empty() {
            let taken = (self.inner.hooks.news)(&rows);
            taken.map_err(|refusal| Fault::Conflict { theirs: rows.clone(), refusal: Some(refusal) })?;
        }
        self.inner.known.borrow_mut().take(entry, &rows);
        self.inner.queue.borrow_mut().join();
        self.inner.news.set(false);
        Ok(())
    }
}

impl<B> Clone for Keeper<B> {
    fn clone(&self) -> Keeper<B> {
        Keeper { inner: Rc::clone(&self.inner) }
    }
}

impl<B> fmt::Debug for Keeper<B> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Keeper").field("known", &self.inner.known).field("queue", &self.inner.queue).finish()
    }
}
