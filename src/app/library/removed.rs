//! Books that the browser removed, told apart from a first start and from books that a person
//! deleted.

use super::{Library, Phase};
use crate::backup::noted_books::{self, NotedBook, from_text, lost, noted, to_text};
use crate::backup::restore_points::was_deleted;
use crate::book::BookId;
use crate::store::Backing;
use crate::words;

impl<B: Backing> Library<B> {
    /// Names of the books that the browser removed, as far as they are known. Returns an empty list
    /// if it removed none.
    pub fn removed(&self) -> Vec<String> {
        self.inner.removed.borrow().clone()
    }

    /// A note of the books there should be was found where it took a while to look.
    pub fn recalled(&self, text: String) {
        self.spawn(|library| async move {
            if library.phase() == Phase::Choosing && library.books().is_empty() {
                library.compare(&from_text(&text)).await;
            }
        });
    }

    /// Looks whether books are missing that nobody deleted. Whether there are some.
    pub(super) async fn look_for_removed(&self) -> bool {
        match self.inner.device.noted_books() {
            Some(text) => self.compare(&from_text(&text)).await,
            // Noted by a version that noted no names.
            None if self.inner.device.remembered().had_books && self.books().is_empty() => {
                self.set_removed(vec![String::new()]);
                true
            }
            None => {
                if self.books().is_empty() {
                    self.inner.device.recall_books();
                }
                false
            }
        }
    }

    async fn compare(&self, noted: &[NotedBook]) -> bool {
        let Some(shelf) = self.shelf() else { return false };
        let there = self.books();
        let mut deleted: Vec<BookId> = Vec::new();
        for book in lost(noted, &there, |_| false) {
            if was_deleted(shelf.backing(), book.id).await == Ok(true) {
                deleted.push(book.id);
            }
        }
        let removed = lost(noted, &there, |id| deleted.contains(&id));
        self.set_removed(removed.into_iter().map(|book| book.name).collect());
        !self.inner.removed.borrow().is_empty()
    }

    fn set_removed(&self, names: Vec<String>) {
        self.inner.removed.replace(names);
        self.inner.device.show();
    }

    fn noted(&self) -> Vec<NotedBook> {
        self.inner.device.noted_books().as_deref().map(from_text).unwrap_or_default()
    }

    /// Notes the books that are there, beside those noted before.
    pub(super) fn note_more(&self) {
        let mut all = noted_books::noted(&self.books());
        let before = lost(&self.noted(), &self.books(), |_| false);
        all.extend(before);
        if all.is_empty() {
            return;
        }
        self.inner.device.note_books(&to_text(&all));
    }

    /// Notes the books that are there, and no others: the person goes on with them.
    pub(super) fn note_listed(&self) {
        self.inner.removed.replace(Vec::new());
        self.inner.device.note_books(&to_text(&noted(&self.books())));
    }

    /// A book was deleted.
    pub(super) fn forget_noted(&self, id: BookId) {
        let mut all = self.noted();
        all.retain(|book| book.id != id);
        self.inner.device.note_books(&to_text(&all));
    }

    /// The open book is not stored any more: it may have been deleted by a tab that is not there
    /// any more to say so.
    pub(super) async fn look_whether_deleted(&self) {
        let (Phase::Open(id), Some(shelf)) = (self.phase(), self.shelf()) else { return };
        if was_deleted(shelf.backing(), id).await == Ok(true) {
            self.with_sync(|sync| sync.remote_deleted());
        }
    }

    /// A book that was to be opened is not there.
    pub(super) async fn not_there(&self, id: BookId) {
        let Some(shelf) = self.shelf() else { return };
        let name = self.noted().into_iter().find(|book| book.id == id).map(|book| book.name);
        let deleted = was_deleted(shelf.backing(), id).await == Ok(true);
        // An open book with something to lose stays.
        if !self.at_risk() {
            self.close_now(true).await;
        }
        if deleted {
            self.refuse(words::restore_points::deleted_elsewhere().to_string(), false);
        } else {
            self.set_removed(vec![name.unwrap_or_default()]);
        }
    }
}
