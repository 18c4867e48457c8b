//! What other tabs saved is read, what waits is rebased on it, and the screen follows.

use std::collections::BTreeSet;

use super::queue::{Then, differences};
use super::{Inner, Known};
use crate::book::{Book, BookId, Key, Refusal};
use crate::store::{Backing, Fault, Row, damage, remote_edit};

impl<B: Backing> Inner<B> {
    /// Reads what other tabs saved, and rebases on it what waits here.
    pub(super) async fn catch_up(&self) -> Result<(), Fault> {
        let (id, revision) = {
            let known = self.known.borrow();
            (known.entry().id, known.entry().revision)
        };
        let stored = self.backing.book(id, revision).await?;
        let (entry, mut rows) = damage::read(id, stored)?;
        if entry.revision < revision {
            return self.begin_again(id).await;
        }
        // A transaction whose answer was lost may be written all the same.
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

    /// Reads a book whose revisions began anew, since it was deleted and brought back.
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

    /// Rebases what waits on what is known to be stored, then does `then`.
    pub(super) fn arrange(&self, then: Then) -> Result<(), Refusal> {
        let screen = (self.hooks.book)();
        let later = if let Then::Later(change) = &then { Some(change.as_ref()) } else { None };
        let stored = self.queue.borrow().stored(&screen, later)?;
        let keys = later.iter().flat_map(|change| change.is.keys().copied()).collect();
        self.show(stored, &screen, keys, then)
    }

    /// Brings to the screen what is stored with what waits rebased on it, then does `then`. `keys` are
    /// the records, besides those that wait, that may differ from the screen.
    fn show(&self, stored: Book, screen: &Book, mut keys: BTreeSet<Key>, then: Then) -> Result<(), Refusal> {
        let dropped = match &then {
            Then::Drop(place) => self.queue.borrow().conflicts().get(*place).map(|item| item.name().to_string()),
            Then::Nothing | Then::Later(_) | Then::Keep(_) => None,
        };
        keys.extend(self.queue.borrow().keys());
        let book = self.queue.borrow_mut().rebase(stored, screen, then);
        keys.extend(self.queue.borrow().keys());
        let edit = differences(screen, book.at(&keys));
        match dropped {
            _ if edit.keys().is_empty() => Ok(()),
            Some(name) => (self.hooks.give_up)(&name, &edit),
            None => (self.hooks.apply_remote)(&edit),
        }
    }
}
