//! Restore points of the open book, and deleting books with a point left behind.

use super::{Library, Phase, named};
use crate::backup::restore_points::{self, Moment, Points, Why};
use crate::book::{Book, BookId};
use crate::store::{Backing, Change, Fault, Shelf};
use crate::words;

impl<B: Backing> Library<B> {
    /// The shelf, once there is one.
    pub fn shelf(&self) -> Option<Shelf<B>> {
        self.inner.shelf.borrow().clone()
    }

    /// Now, where the person is.
    pub fn moment(&self) -> Moment {
        Moment { millis: self.inner.device.now(), day: self.inner.device.today() }
    }

    /// Before what no restore point was made, and why. Returns `None` if the last one was made.
    pub fn no_point(&self) -> Option<(Why, Fault)> {
        self.inner.no_point.borrow().clone()
    }

    /// How many times restore points were made, failed to be or went.
    pub fn points_tried(&self) -> u64 {
        self.inner.points_tried.get()
    }

    /// The book that is not deleted, since there is no room to keep a copy of it.
    pub fn no_room_to_delete(&self) -> Option<BookId> {
        self.inner.no_room_to_delete.get()
    }

    /// The whole open book is about to be changed: a restore point is made once that is saved.
    pub fn before(&self, why: Why) {
        let book = self.inner.desk.borrow().as_ref().map(|desk| desk.book());
        if let Some(book) = book {
            self.with_points(|points| points.before(why, self.moment(), self.inner.device.random(), book));
        }
    }

    /// What was about to be done was refused.
    pub fn not_done(&self) {
        self.with_points(Points::refused);
    }

    pub(super) fn note_first_change(&self, change: &Change) {
        if !change.was().is_empty() {
            self.with_points(|points| points.changed(self.moment(), self.inner.device.random(), change.was()));
        }
    }

    pub(super) fn keep_points(&self) {
        let desk = self.inner.desk.borrow().clone();
        if let Some(desk) = desk {
            self.with_points(|points| points.saved(self.moment(), || desk.book()));
        }
    }

    fn with_points(&self, act: impl FnOnce(&Points<B>)) {
        let points = self.inner.points.borrow().clone();
        if let Some(points) = points {
            act(&points);
        }
    }

    /// The points of the book that is put on the screen.
    pub(super) fn seat_points(&self, id: BookId) {
        let Some(shelf) = self.shelf() else { return };
        let library = self.clone();
        let points = Points::new(shelf.backing().clone(), id, move |failed| {
            library.inner.no_point.replace(failed);
            library.inner.points_tried.set(library.points_tried().wrapping_add(1));
            library.inner.device.show();
        });
        self.inner.points.replace(Some(points));
    }

    /// From here on books can be added and deleted; `forget` forgets what is kept of one that was
    /// deleted for good outside the storage, and `empty` makes an empty book. A new book that was asked for before
    /// is added now.
    pub fn can_change(&self, forget: fn(BookId), empty: fn() -> Book) {
        self.inner.forget.set(Some(forget));
        self.inner.empty.set(Some(empty));
        self.inner.add.set(Some(|library, book, anyway| {
            library.spawn(move |library| async move { library.add_now(book, anyway).await });
        }));
        self.inner.delete.set(Some(|library, id, for_good| {
            library.spawn(move |library| async move { library.delete_now(id, for_good).await });
        }));
        self.go_on();
    }

    pub(super) fn delete(&self, id: BookId, for_good: bool) {
        if let Some(delete) = self.inner.delete.get() {
            delete(self, id, for_good);
        }
    }

    /// Deletes a book: with a copy left among the deleted ones, or for good.
    async fn delete_now(&self, id: BookId, for_good: bool) {
        let Some(shelf) = self.shelf() else { return };
        let deleted = if for_good {
            restore_points::delete_for_good(&shelf, id).await
        } else {
            restore_points::delete(&shelf, id, self.moment(), self.inner.device.random()).await
        };
        match deleted {
            Ok(()) | Err(Fault::Gone) => {
                self.forget_noted(id);
                if let Some(forget) = self.inner.forget.get().filter(|_| for_good) {
                    forget(id);
                }
                // A book that was deleted before leaves the books as they were, but not its points.
                self.inner.points_tried.set(self.points_tried().wrapping_add(1));
                self.inner.no_room_to_delete.set(None);
                match self.phase() {
                    Phase::Open(open) if open != id => self.list_again().await,
                    _ => self.close_now(true).await,
                }
            }
            Err(fault) => {
                let name = self.inner.books.borrow().iter().find_map(|book| named(book, id));
                self.inner.no_room_to_delete.set((fault == Fault::Full).then_some(id));
                self.refuse(words::keeping::not_deleted(name.as_deref(), &fault), fault == Fault::Full);
            }
        }
    }
}
