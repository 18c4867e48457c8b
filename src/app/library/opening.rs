//! Opening a book in place of another, putting a new one on the shelf, and closing.

use super::seat::JustOpened;
use super::{Library, Phase, Way};
use crate::book::{Book, BookId};
use crate::store::{Backing, Fault, Listed, Opened, Saving};
use crate::words;

impl<B: Backing> Library<B> {
    pub(super) async fn choose_or_open(&self) {
        self.list_again().await;
        if matches!(self.phase(), Phase::Stuck(_)) {
            return;
        }
        if self.look_for_removed().await {
            self.set_phase(Phase::Choosing);
            return;
        }
        let remembered = self.inner.device.remembered();
        let last = {
            let books = self.inner.books.borrow();
            let ids = || books.iter().filter_map(Listed::id);
            // The only book there is needs no choosing.
            let last = remembered.open_book.filter(|last| ids().any(|id| id == *last));
            last.or_else(|| ids().next().filter(|_| books.len() == 1))
        };
        match last {
            Some(id) => self.open_now(id, true).await,
            None => self.set_phase(Phase::Choosing),
        }
    }

    pub(super) async fn list(&self) -> Result<(), Fault> {
        let Some(shelf) = self.inner.shelf.borrow().clone() else { return Ok(()) };
        let books = shelf.books().await?;
        self.inner.books.replace(books);
        self.note_more();
        self.inner.device.show();
        Ok(())
    }

    /// Lists the books anew. Where that fails, an open book stays on the screen.
    pub(super) async fn list_again(&self) {
        if let Err(fault) = self.list().await
            && !matches!(self.phase(), Phase::Open(_))
        {
            self.set_phase(Phase::Stuck(fault));
        }
    }

    /// Opens a book in place of the open one; `anyway` where the person knows what is lost.
    pub(super) async fn open_now(&self, id: BookId, anyway: bool) {
        let Some(shelf) = self.inner.shelf.borrow().clone() else { return };
        match shelf.open(id).await {
            // Something may have been typed while it was read.
            Ok(_) if !anyway && self.asks_again(Way::Open(id)) => {}
            Ok((book, opened)) => {
                // One that was just brought back is not on the list yet.
                if self.inner.books.borrow().iter().all(|listed| listed.id() != Some(id)) {
                    self.list_again().await;
                }
                self.note_listed();
                self.inner.device.note_open(Some(id));
                self.put_up(id, book, Some(opened));
            }
            Err(Fault::Gone) => self.not_there(id).await,
            Err(fault) => self.set_phase(Phase::Stuck(fault)),
        }
    }

    /// A book that was just opened waits to be put on the screen.
    pub(super) fn put_up(&self, id: BookId, book: Book, kept: Option<Opened<B>>) {
        self.leave_seat();
        self.inner.saving.replace(match &kept {
            Some(kept) => Saving::Saved { revision: kept.entry().revision },
            None => Saving::NotSaved { waiting: 1, fault: Fault::NoStorage },
        });
        self.inner.opened.replace(Some(JustOpened { id, book, kept }));
        self.inner.openings.set(self.inner.openings.get().wrapping_add(1));
        self.set_phase(Phase::Open(id));
    }

    pub(super) async fn close_now(&self, anyway: bool) {
        let listed = self.list().await;
        // Something may have been typed while they were listed.
        if !anyway && self.asks_again(Way::Close) {
            return;
        }
        self.leave_seat();
        self.inner.device.note_open(None);
        self.set_phase(listed.map_or_else(Phase::Stuck, |()| Phase::Choosing));
    }

    pub(super) async fn add_now(&self, book: Book, anyway: bool) {
        let id = BookId::from_random(self.inner.device.random());
        let Some(shelf) = self.inner.shelf.borrow().clone() else { return };
        match shelf.create(id, &book, self.inner.device.now()).await {
            Ok(()) => {
                self.list_again().await;
                if anyway || !self.asks_again(Way::Open(id)) {
                    self.inner.device.go_to_start(&book);
                    self.open_now(id, anyway).await;
                }
            }
            Err(fault) => {
                self.refuse(words::keeping::not_added(&book.settings().name, &fault), fault == Fault::Full);
            }
        }
    }

    /// Puts a book on the screen that nothing can keep.
    pub(super) fn add_unkept(&self, book: Book) {
        let id = BookId::from_random(self.inner.device.random());
        self.inner.device.go_to_start(&book);
        self.put_up(id, book, None);
    }
}
