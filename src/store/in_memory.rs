//! A storage in memory that fails on demand, for native tests of everything above it.

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use std::future::{Future, poll_fn};
use std::pin::Pin;
use std::rc::Rc;
use std::task::{Context, Poll, Waker};

use super::{Backing, BookEntry, Commit, Drawer, Fault, Journal, Slip, StoredBook};
use crate::book::BookId;

/// A storage in memory. Each clone is a tab on the same storage.
#[derive(Default)]
pub struct InMemory {
    inner: Rc<Inner>,
    /// The number of this tab.
    tab: usize,
}

/// A journal on a book, and whether its tab is open.
#[derive(Debug)]
struct KeptJournal {
    book: BookId,
    texts: Vec<String>,
    open: bool,
}

#[derive(Default)]
struct Inner {
    entries: RefCell<BTreeMap<BookId, String>>,
    rows: RefCell<BTreeMap<(BookId, String), (u64, String)>>,
    slips: RefCell<BTreeMap<(Drawer, BookId, String), String>>,
    commits: Cell<usize>,
    faults: RefCell<BTreeMap<usize, (Fault, bool)>>,
    tasks: RefCell<Vec<Task>>,
    journals: RefCell<BTreeMap<String, KeptJournal>>,
    no_room_for_journals: Cell<bool>,
    no_list: RefCell<Option<Fault>>,
    tabs: Cell<usize>,
}

type Task = Pin<Box<dyn Future<Output = ()>>>;

impl InMemory {
    /// How many commits were tried.
    pub fn commits(&self) -> usize {
        self.inner.commits.get()
    }

    /// Makes the next commit fail with nothing written.
    pub fn fail_next(&self, fault: Fault) {
        self.inner.faults.borrow_mut().insert(self.commits(), (fault, false));
    }

    /// Makes the commit after `others` more fail with nothing written.
    pub fn fail_after(&self, others: usize, fault: Fault) {
        self.inner.faults.borrow_mut().insert(self.commits().saturating_add(others), (fault, false));
    }

    /// Makes the next commit report this fault although it is written: its answer is lost.
    pub fn lose_next_answer(&self, fault: Fault) {
        self.inner.faults.borrow_mut().insert(self.commits(), (fault, true));
    }

    /// Deletes everything, as a browser does that is short of room.
    pub fn evict(&self) {
        self.inner.entries.take();
        self.inner.rows.take();
        self.inner.slips.take();
    }

    /// Kills every tab: what they were about to do is not done.
    pub fn end_all_tabs(&self) {
        self.inner.tasks.take();
        self.inner.journals.borrow_mut().values_mut().for_each(|journal| journal.open = false);
    }

    /// The texts of all journals, whether their tabs are open or not.
    pub fn journals(&self) -> Vec<Vec<String>> {
        self.inner.journals.borrow().values().map(|journal| journal.texts.clone()).collect()
    }

    /// Writes a journal whose tab is gone.
    pub fn set_journal(&self, book: BookId, texts: Vec<String>) {
        self.inner.journals.borrow_mut().insert("0".into(), KeptJournal { book, texts, open: false });
    }

    /// From now on listing the books fails with this fault, or works again.
    pub fn list_fails(&self, fault: Option<Fault>) {
        self.inner.no_list.replace(fault);
    }

    /// From now on there is no room for journals.
    pub fn leave_no_room_for_journals(&self) {
        self.inner.no_room_for_journals.set(true);
    }

    /// The stored text of a row.
    pub fn row(&self, book: BookId, key: &str) -> Option<String> {
        self.inner.rows.borrow().get(&(book, key.to_string())).map(|(_, text)| text.clone())
    }

    /// Stores any text as a row.
    pub fn set_row(&self, book: BookId, key: &str, text: &str) {
        let mut rows = self.inner.rows.borrow_mut();
        let row = rows.entry((book, key.to_string())).or_default();
        row.1 = text.to_string();
    }

    /// Stores any text as a book's entry.
    pub fn set_entry(&self, book: BookId, text: &str) {
        self.inner.entries.borrow_mut().insert(book, text.to_string());
    }

    /// The fault that this commit is to report, and whether it is written all the same.
    fn next_fault(&self) -> Option<(Fault, bool)> {
        let fault = self.inner.faults.borrow_mut().remove(&self.commits());
        self.inner.commits.set(self.commits().saturating_add(1));
        fault
    }

    fn put_slips(&self, slips: &[Slip]) {
        let mut kept = self.inner.slips.borrow_mut();
        for slip in slips {
            let key = (slip.drawer, slip.book, slip.id.clone());
            match &slip.text {
                Some(text) => drop(kept.insert(key, text.clone())),
                None => drop(kept.remove(&key)),
            }
        }
    }

    /// Runs what was spawned until nothing is left to do.
    pub fn run(&self) {
        while !self.inner.tasks.borrow().is_empty() {
            self.run_turns(1);
        }
    }

    /// Polls everything that was spawned, so many times.
    pub fn run_turns(&self, turns: u64) {
        let mut context = Context::from_waker(Waker::noop());
        for _ in 0..turns {
            for mut task in self.inner.tasks.take() {
                if task.as_mut().poll(&mut context).is_pending() {
                    self.inner.tasks.borrow_mut().push(task);
                }
            }
        }
    }
}

impl Backing for InMemory {
    async fn entries(&self) -> Result<Vec<String>, Fault> {
        turn().await;
        let entries = self.inner.entries.borrow().values().cloned().collect();
        self.inner.no_list.borrow().clone().map_or(Ok(entries), Err)
    }

    async fn book(&self, id: BookId, after: u64) -> Result<StoredBook, Fault> {
        turn().await;
        let rows = self.inner.rows.borrow();
        let rows = rows.iter().filter(|((book, _), (revision, _))| *book == id && (after == 0 || *revision > after));
        Ok(StoredBook {
            entry: self.inner.entries.borrow().get(&id).cloned(),
            rows: rows.map(|(_, (_, text))| text.clone()).collect(),
        })
    }

    async fn commit(&self, commit: &Commit) -> Result<(), Fault> {
        let fault = self.next_fault();
        turn().await;
        if let Some((fault, false)) = fault {
            return Err(fault);
        }
        let stored = self.inner.entries.borrow().get(&commit.entry.id).cloned();
        let stored = stored.map_or(Ok(0), |text| BookEntry::from_text(&text).map(|entry| entry.revision));
        if stored != Ok(commit.expected) {
            return Err(Fault::Behind);
        }
        let unwritable = |error: serde_json::Error| Fault::Browser { name: "JSON".into(), message: error.to_string() };
        let entry = commit.entry.text().map_err(unwritable)?;
        let texts = commit.rows.iter().map(|row| Ok((row, row.text()?))).collect::<Result<Vec<_>, _>>();
        for (row, text) in texts.map_err(unwritable)? {
            self.inner.rows.borrow_mut().insert((row.book, row.key.to_string()), (row.revision, text));
        }
        self.inner.entries.borrow_mut().insert(commit.entry.id, entry);
        self.put_slips(&commit.slips);
        fault.map_or(Ok(()), |(fault, _)| Err(fault))
    }

    async fn delete(&self, id: BookId, slips: &[Slip]) -> Result<(), Fault> {
        let fault = self.next_fault();
        if let Some((fault, false)) = fault {
            return Err(fault);
        }
        self.inner.entries.borrow_mut().remove(&id);
        self.inner.rows.borrow_mut().retain(|(book, _), _| *book != id);
        self.inner
            .slips
            .borrow_mut()
            .retain(|(drawer, book, _), _| !Drawer::GO_WITH_BOOK.contains(drawer) || *book != id);
        self.put_slips(slips);
        self.inner.journals.borrow_mut().retain(|_, journal| journal.book != id);
        fault.map_or(Ok(()), |(fault, _)| Err(fault))
    }

    async fn slips(&self, drawer: Drawer, book: Option<BookId>) -> Result<Vec<Slip>, Fault> {
        let slips = self.inner.slips.borrow();
        let wanted = slips.iter().filter(|((of, id, _), _)| *of == drawer && book.is_none_or(|book| *id == book));
        let slip = |((drawer, book, id), text): (&(Drawer, BookId, String), &String)| Slip {
            drawer: *drawer,
            book: *book,
            id: id.clone(),
            text: Some(text.clone()),
        };
        Ok(wanted.map(slip).collect())
    }

    async fn slip(&self, drawer: Drawer, book: BookId, id: &str) -> Result<Option<String>, Fault> {
        Ok(self.inner.slips.borrow().get(&(drawer, book, id.to_string())).cloned())
    }

    async fn file(&self, slips: &[Slip]) -> Result<(), Fault> {
        let fault = self.next_fault();
        turn().await;
        if let Some((fault, false)) = fault {
            return Err(fault);
        }
        self.put_slips(slips);
        fault.map_or(Ok(()), |(fault, _)| Err(fault))
    }

    fn write_journal(&self, book: BookId, texts: &[String]) -> Option<String> {
        if self.inner.no_room_for_journals.get() {
            return None;
        }
        let name = format!("{book} {}", self.tab);
        self.inner.journals.borrow_mut().insert(name.clone(), KeptJournal { book, texts: texts.to_vec(), open: true });
        Some(name)
    }

    async fn orphaned_journals(&self, book: BookId) -> Vec<Journal> {
        let journals = self.inner.journals.borrow();
        let gone = journals.iter().filter(|(_, journal)| journal.book == book && !journal.open);
        gone.map(|(name, journal)| Journal { name: name.clone(), texts: journal.texts.clone() }).collect()
    }

    fn delete_journals(&self, names: &[String]) {
        self.inner.journals.borrow_mut().retain(|name, _| !names.contains(name));
    }

    fn spawn(&self, work: impl Future<Output = ()> + 'static) {
        self.inner.tasks.borrow_mut().push(Box::pin(work));
    }
}

impl Clone for InMemory {
    fn clone(&self) -> InMemory {
        self.inner.tabs.set(self.inner.tabs.get().saturating_add(1));
        InMemory { inner: Rc::clone(&self.inner), tab: self.inner.tabs.get() }
    }
}

/// Yields once, so that others run first.
async fn turn() {
    let mut waited = false;
    poll_fn(|_| if std::mem::replace(&mut waited, true) { Poll::Ready(()) } else { Poll::Pending }).await;
}

impl std::fmt::Debug for InMemory {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("InMemory").field("entries", &self.inner.entries).field("rows", &self.inner.rows).finish()
    }
}
