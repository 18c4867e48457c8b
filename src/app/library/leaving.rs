//! Leaving the open book: nothing that is not saved is left behind unasked.

use super::{Library, Phase};
use crate::book::{Book, BookId};
use crate::store::Backing;

/// A way out of the open book, or to the first one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Way {
    /// To the choice of books.
    Close,
    /// To another book.
    Open(BookId),
    /// To an empty book.
    Start,
    /// To a new book.
    Add(Box<Book>),
    /// A book is deleted from the shelf, and kept for a while among the deleted ones.
    Delete(BookId),
    /// A book is deleted from the shelf with all that is kept of it.
    DeleteForGood(BookId),
    /// To the new version of the app.
    Update,
}

/// What a way does to the open book, as it is asked about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Leaving {
    /// It is closed.
    Close,
    /// Another one takes its place.
    Switch,
    /// A book is deleted.
    Delete,
    /// The page is loaded anew.
    Update,
}

impl Way {
    pub(super) const fn leaving(&self) -> Leaving {
        match self {
            Way::Close => Leaving::Close,
            Way::Open(_) | Way::Start | Way::Add(_) => Leaving::Switch,
            Way::Delete(_) | Way::DeleteForGood(_) => Leaving::Delete,
            Way::Update => Leaving::Update,
        }
    }
}

impl<B: Backing> Library<B> {
    /// Goes a way. While something of the open book is not saved, the person is asked first; once
    /// it is saved after all, the way is gone by itself.
    pub fn go(&self, way: Way) {
        self.inner.refused.replace(None);
        self.inner.way.replace(Some(way));
        if self.at_risk() {
            self.retry();
        }
        self.go_on();
        self.inner.device.show();
    }

    /// What the way does that waits for the person's word, since something is not saved.
    pub fn leaving(&self) -> Option<Leaving> {
        self.inner.way.borrow().as_ref().map(Way::leaving)
    }

    /// Goes the way that waits, though something is lost.
    pub fn leave_anyway(&self) {
        if let Some(way) = self.inner.way.take() {
            self.set_off(way, true);
        }
    }

    /// Stays in the open book.
    pub fn stay(&self) {
        self.inner.way.replace(None);
        self.inner.device.show();
    }

    /// Whether something would be lost if the page went now.
    pub fn at_risk(&self) -> bool {
        let unkept = self.inner.unkept.get() && matches!(self.phase(), Phase::Open(_));
        unkept || self.inner.sync.borrow().as_ref().is_some_and(|sync| sync.saving().at_risk())
    }

    /// Goes the way that waits, where nothing is lost any more.
    pub(super) fn go_on(&self) {
        if !self.at_risk()
            && let Some(way) = self.inner.way.take()
        {
            self.set_off(way, false);
        }
    }

    /// Whether the person is asked before this way after all, since something is not saved.
    pub(super) fn asks_again(&self, way: Way) -> bool {
        let at_risk = self.at_risk();
        if at_risk {
            self.inner.way.replace(Some(way));
            self.inner.device.show();
        }
        at_risk
    }

    fn set_off(&self, way: Way, anyway: bool) {
        match way {
            Way::Close if self.inner.unkept.get() => {
                self.leave_seat();
                self.set_phase(Phase::Choosing);
            }
            Way::Start => match self.inner.empty.get() {
                Some(empty) => self.set_off(Way::Add(Box::new(empty())), anyway),
                // Once it is here the way is gone.
                None => drop(self.inner.way.replace(Some(Way::Start))),
            },
            Way::Add(book) if self.inner.unkept.get() => self.add_unkept(*book),
            Way::Close => self.spawn(move |library| async move { library.close_now(anyway).await }),
            Way::Open(id) => self.spawn(move |library| async move { library.open_now(id, anyway).await }),
            Way::Add(book) => match self.inner.add.get() {
                Some(add) => add(self, *book, anyway),
                // Once it is here the way is gone.
                None => drop(self.inner.way.replace(Some(Way::Add(book)))),
            },
            Way::Delete(id) => self.delete(id, false),
            Way::DeleteForGood(id) => self.delete(id, true),
            Way::Update => self.inner.device.update(),
        }
        self.inner.device.show();
    }
}
