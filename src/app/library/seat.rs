//! A book comes to the screen, is kept while it is there, and leaves it.

use std::rc::Rc;

use super::syncs::SyncsBook;
use super::{Desk, Library};
use crate::backup::restore_points::Why;
use crate::book::{Book, BookId, Edit};
use crate::store::{Backing, Change, Fault, Hooks, Opened, Saving, Slip};

/// A book that was just opened, until it is on the screen.
pub(super) struct JustOpened<B> {
    pub(super) id: BookId,
    pub(super) book: Book,
    /// How it is kept; `None` if there is no storage.
    pub(super) kept: Option<Opened<B>>,
}

impl<B: Backing> Library<B> {
    /// The book that was just opened, to be put on the screen and seated. Returns `None` if it is
    /// seated already.
    pub fn opened(&self) -> Option<(BookId, Book)> {
        self.inner.opened.borrow().as_ref().map(|opened| (opened.id, opened.book.clone()))
    }

    /// The id of the book that was just opened; `None` once it is seated.
    pub fn opened_id(&self) -> Option<BookId> {
        self.inner.opened.borrow().as_ref().map(|opened| opened.id)
    }

    /// The steps that are kept beside the book that was just opened.
    pub fn opened_steps(&self) -> Vec<Slip> {
        let opened = self.inner.opened.borrow();
        let kept = opened.as_ref().and_then(|opened| opened.kept.as_ref());
        kept.map(|kept| kept.steps().to_vec()).unwrap_or_default()
    }

    /// How many books were opened: each is to be put on the screen.
    pub fn openings(&self) -> u64 {
        self.inner.openings.get()
    }

    /// Does to the book that was just opened what tabs that are gone left of it, before the book is
    /// seated. Returns the edit that brings it to the screen, or `None` if they left nothing.
    pub fn replay(&self) -> Option<Edit> {
        let mut opened = self.inner.opened.borrow_mut();
        let opened = opened.as_mut()?;
        let was = opened.book.clone();
        opened.book = opened.kept.as_mut()?.replay(was.clone());
        (was != opened.book).then(|| Edit::replace(&was, &opened.book))
    }

    /// The book that was just opened is on the screen, and is kept from now on. What another tab
    /// saved in between is taken in.
    pub fn seat(&self, desk: Rc<dyn Desk>) {
        let Some(opened) = self.inner.opened.take() else { return };
        let seat = self.inner.seated.get().wrapping_add(1);
        self.inner.seated.set(seat);
        let Some(opened) = opened.kept else { return };
        self.inner.desk.replace(Some(Rc::clone(&desk)));
        self.seat_points(opened.entry().id);
        let id = opened.entry().id;
        let has_journals = opened.has_journals();
        opened.replayed().for_each(|change| self.note_first_change(change));
        let library = self.clone();
        let (reading, following, giving_up) = (Rc::clone(&desk), Rc::clone(&desk), Rc::clone(&desk));
        let sync = opened.keep(Hooks {
            saving: Box::new(move |saving| {
                if library.inner.seated.get() == seat {
                    library.saved(saving);
                }
            }),
            book: Box::new(move || reading.book()),
            apply_remote: Box::new(move |edit| following.apply_remote(edit)),
            give_up: Box::new(move |name, edit| giving_up.give_up(name, edit)),
            kept: Box::new(move |name, patch| desk.kept(name, patch)),
        });
        self.inner.saving.replace(sync.saving());
        // Another tab may have saved while the book was being opened.
        if let Some(revision) = self.inner.remote_revisions.borrow().get(&id) {
            sync.remote_saved(*revision);
        }
        if has_journals {
            sync.retry();
        }
        self.inner.sync.replace(Some(Rc::new(sync)));
        self.inner.device.show();
    }

    /// Called by the sync of the book on the screen when it may be saved or not.
    pub(super) fn saved(&self, saving: &Saving) {
        self.inner.saving.replace(saving.clone());
        match saving {
            Saving::Saved { revision } => {
                self.inner.device.note_revision(*revision);
                self.inner.refused.borrow_mut().take_if(|refused| refused.until_saved);
                self.keep_points();
            }
            Saving::NotSaved { fault: Fault::Gone, .. } => {
                self.spawn(|library| async move { library.look_whether_deleted().await });
            }
            Saving::Saving { .. } | Saving::NotSaved { .. } | Saving::InConflict { .. } => {}
        }
        self.inner.device.show();
        self.go_on();
    }

    /// The book on the screen is kept no more.
    pub(super) fn leave_seat(&self) {
        self.inner.seated.set(self.inner.seated.get().wrapping_add(1));
        // Who leaves it knows what is lost.
        self.with_sync(|sync| sync.delete_journals());
        self.inner.sync.take();
        self.inner.desk.take();
        self.inner.points.take();
        self.inner.no_point.take();
        self.inner.no_room_to_delete.set(None);
        self.inner.refused.replace(None);
    }

    /// The page may go at any moment: what is not saved is written down for whoever opens the book
    /// next.
    pub fn write_journal(&self) {
        self.with_sync(|sync| sync.write_journal());
    }

    /// Saves a change that was done to the book on the screen.
    pub fn save(&self, change: Change) {
        self.note_first_change(&change);
        self.with_sync(|sync| sync.save(change));
    }

    /// Tries again what could not be saved.
    pub fn retry(&self) {
        self.with_sync(|sync| sync.retry());
    }

    /// Resolves the conflict at this place, from 0, for this tab.
    pub fn keep_mine(&self, place: usize) {
        self.before(Why::Merge);
        self.with_sync(|sync| sync.keep_mine(place));
    }

    /// Resolves the conflict at this place, from 0, for the other tab.
    pub fn take_theirs(&self, place: usize) {
        self.before(Why::Merge);
        self.with_sync(|sync| sync.take_theirs(place));
    }

    pub(super) fn with_sync(&self, act: impl FnOnce(&dyn SyncsBook)) {
        let sync = self.inner.sync.borrow().clone();
        if let Some(sync) = sync {
            act(&*sync);
        }
    }
}
