//! Making restore points, and reading their contents.

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use std::rc::Rc;

use super::{Moment, Point, Why, to_go};
use crate::book::{Book, BookId, Edit, Key, Record, Settings};
use crate::exchange::{self, BookFileError};
use crate::foundation::measure::Date;
use crate::store::{Backing, Drawer, Fault, Listed, Shelf, Slip};

/// How long to wait after a failed attempt, in milliseconds.
const REST: u64 = 10_000;

/// The most points that wait.
const MOST_WAITING: usize = 4;

/// The restore points of an open book. A point waits here until the edit after it is saved, so that no edit
/// waits for a point. A clone is a handle of the same points.
pub struct Points<B> {
    inner: Rc<Inner<B>>,
}

struct Inner<B> {
    backing: B,
    book: BookId,
    /// The day of the last change that was seen here.
    seen: Cell<Option<Date>>,
    waiting: RefCell<Vec<Waiting>>,
    busy: Cell<bool>,
    /// Whether the last attempt failed.
    failed: Cell<bool>,
    /// After a failed attempt: when the next one is made, in milliseconds since 1970.
    rests_until: Cell<u64>,
    told: Box<Told>,
}

/// Called after each attempt. If it failed, with the event before which the point was to be made, and the
/// fault.
type Told = dyn Fn(Option<(Why, Fault)>);

#[derive(Clone)]
struct Waiting {
    why: Why,
    at: Moment,
    salt: u64,
    held: Held,
}

/// The contents of a point that is to be made.
#[derive(Clone)]
enum Held {
    /// This book.
    Book(Box<Book>),
    /// The open book, with these records as they were before; `None` is one that was not there. The first
    /// change of a day is a keystroke, and must not wait for a copy of the book.
    Was(BTreeMap<Key, Option<Record>>),
}

impl<B: Backing> Points<B> {
    /// The restore points of a book. `told` is called after each attempt to make one: with `None` if it
    /// succeeded.
    pub fn new(backing: B, book: BookId, told: impl Fn(Option<(Why, Fault)>) + 'static) -> Points<B> {
        let inner = Inner {
            backing,
            book,
            seen: Cell::new(None),
            waiting: RefCell::default(),
            busy: Cell::new(false),
            failed: Cell::new(false),
            rests_until: Cell::new(0),
            told: Box::new(told),
        };
        Points { inner: Rc::new(inner) }
    }

    /// Tells that the book was changed at `at`. `was` are the changed records as they were before.
    pub fn changed(&self, at: Moment, salt: u64, was: &BTreeMap<Key, Option<Record>>) {
        let first = self.inner.seen.replace(Some(at.day)) != Some(at.day);
        let mut waiting = self.inner.waiting.borrow_mut();
        for earlier in waiting.iter_mut() {
            if let Held::Was(records) = &mut earlier.held {
                for (key, record) in was {
                    records.entry(*key).or_insert_with(|| record.clone());
                }
            }
        }
        if first && waiting.iter().all(|earlier| earlier.at.day != at.day) {
            waiting.push(Waiting { why: Why::FirstChange, at, salt, held: Held::Was(was.clone()) });
        }
    }

    /// Tells that the whole book is about to be changed. `before` is the book as it is.
    pub fn before(&self, why: Why, at: Moment, salt: u64, before: Book) {
        let mut waiting = self.inner.waiting.borrow_mut();
        // Of several conflicts that are resolved one after the other, the book before the first counts.
        if why != Why::Merge || waiting.iter().all(|earlier| earlier.why != why) {
            waiting.push(Waiting { why, at, salt, held: Held::Book(Box::new(before)) });
            // The first may be in the making.
            if waiting.len() > MOST_WAITING {
                waiting.remove(1);
            }
        }
    }

    /// Tells that the change announced last was refused.
    pub fn refused(&self) {
        self.inner.waiting.borrow_mut().pop();
    }

    /// Tells that everything is saved at `now`, so that the points that wait are made. `book` returns the open
    /// book. Shortly after a failed attempt none is made, since a point is a whole book.
    pub fn saved(&self, now: Moment, book: impl Fn() -> Book) {
        for waiting in self.inner.waiting.borrow_mut().iter_mut() {
            if let Held::Was(records) = &waiting.held {
                let mut before = book();
                let back = Edit::records(&before, records);
                // What was just done can be undone. If another tab's change prevents it, the book as it
                // is now is better than none.
                let _ = before.apply(&back);
                waiting.held = Held::Book(Box::new(before));
            }
        }
        if self.inner.failed.take() {
            self.inner.rests_until.set(now.millis.saturating_add(REST));
        }
        let rests = now.millis < self.inner.rests_until.get();
        if rests || self.inner.waiting.borrow().is_empty() || self.inner.busy.replace(true) {
            return;
        }
        let inner = Rc::clone(&self.inner);
        self.inner.backing.spawn(async move { inner.keep_all().await });
    }
}

impl<B: Backing> Inner<B> {
    async fn keep_all(&self) {
        loop {
            let Some(first) = self.waiting.borrow().first().cloned() else { break };
            let made = make(&self.backing, self.book, &first).await;
            (self.told)(made.as_ref().err().map(|fault| (first.why, fault.clone())));
            if made.is_err() {
                self.failed.set(true);
                break;
            }
            self.waiting.borrow_mut().remove(0);
        }
        self.busy.set(false);
    }
}

impl<B> Clone for Points<B> {
    fn clone(&self) -> Points<B> {
        Points { inner: Rc::clone(&self.inner) }
    }
}

/// Every point of one book or of all, the newest first. A point that does not read is left out.
async fn all<B: Backing>(backing: &B, book: Option<BookId>) -> Result<Vec<Point>, Fault> {
    let slips = backing.slips(Drawer::Points, book).await?;
    let mut points: Vec<Point> = slips.iter().filter_map(Point::from_slip).collect();
    points.sort_by(|one, other| other.id.cmp(&one.id));
    Ok(points)
}

/// The slips that write a point, and delete those that go for it. If the point of a deleted book goes, so do
/// its steps.
async fn slips<B: Backing>(
    backing: &B,
    others: Vec<Point>,
    mut point: Point,
    text: String,
) -> Result<Vec<Slip>, Fault> {
    let today = point.at.day;
    let mut points = others;
    points.push(point.clone());
    let go = to_go(&points, today);
    point.made_room = go.for_room.len();
    let gone: Vec<&Point> = go.aged.iter().chain(&go.for_room).filter_map(|place| points.get(*place)).collect();
    let mut slips: Vec<Slip> = gone.iter().flat_map(|gone| gone.thrown_away()).collect();
    for deleted in gone.iter().filter(|gone| gone.why == Why::Deletion && gone.book != point.book) {
        slips.extend(steps_thrown_away(backing, deleted.book).await?);
    }
    slips.push(point.slip(Drawer::Points, Some(point.text())));
    slips.push(point.slip(Drawer::Copies, Some(text)));
    Ok(slips)
}

/// The slips that delete the steps of a book.
async fn steps_thrown_away<B: Backing>(backing: &B, book: BookId) -> Result<Vec<Slip>, Fault> {
    let steps = backing.slips(Drawer::Steps, Some(book)).await?;
    Ok(steps.into_iter().map(|step| Slip { text: None, ..step }).collect())
}

/// Makes a point. For the first change of a day none is made if that day has a point already, from this tab or
/// another: each is of the book before a change.
async fn make<B: Backing>(backing: &B, book: BookId, waiting: &Waiting) -> Result<(), Fault> {
    let Waiting { why, at, salt, held: Held::Book(before) } = waiting else { return Ok(()) };
    let others = all(backing, None).await?;
    let of_the_day = |point: &Point| point.book == book && point.at.day == at.day;
    if *why == Why::FirstChange && others.iter().any(of_the_day) {
        return Ok(());
    }
    let text = exchange::write(before);
    let point = Point::new(book, before, *why, *at, *salt, text.len());
    backing.file(&slips(backing, others, point, text).await?).await
}

/// The points of a book, the newest first.
///
/// # Errors
/// Any [`Fault`] of the storage itself.
pub async fn of_book<B: Backing>(backing: &B, book: BookId) -> Result<Vec<Point>, Fault> {
    all(backing, Some(book)).await
}

/// The contents of a point as a text: a book file, or what was stored of a damaged book.
///
/// # Errors
/// [`Fault::Gone`] if the point was deleted since; any [`Fault`] of the storage itself.
pub async fn copy_of<B: Backing>(backing: &B, point: &Point) -> Result<String, Fault> {
    backing.slip(Drawer::Copies, point.book, &point.id).await?.ok_or(Fault::Gone)
}

/// The deleted books that can be brought back, the last deleted first: of each, the point before its deletion.
///
/// # Errors
/// Any [`Fault`] of the storage itself.
pub async fn deleted_books<B: Backing>(shelf: &Shelf<B>, today: Date) -> Result<Vec<Point>, Fault> {
    let there: Vec<BookId> = shelf.books().await?.iter().filter_map(Listed::id).collect();
    let points = all(shelf.backing(), None).await?;
    let aged = to_go(&points, today).aged;
    let mut deleted: Vec<Point> = Vec::new();
    for (place, point) in points.into_iter().enumerate() {
        let listed = deleted.iter().any(|other| other.book == point.book);
        if point.why == Why::Deletion && !listed && !aged.contains(&place) && !there.contains(&point.book) {
            deleted.push(point);
        }
    }
    Ok(deleted)
}

/// Whether a book that is gone was deleted by a person. If not, the browser removed it.
///
/// # Errors
/// Any [`Fault`] of the storage itself.
pub async fn was_deleted<B: Backing>(backing: &B, book: BookId) -> Result<bool, Fault> {
    // The slips are ordered by id, the latest last.
    let slips = backing.slips(Drawer::Points, Some(book)).await?;
    Ok(slips.iter().filter_map(Point::from_slip).next_back().is_some_and(|last| last.why == Why::Deletion))
}

/// Deletes a book and keeps it as a point: both or neither. Its steps stay as long as the point. Of a damaged
/// book, the point has what is stored of it.
///
/// # Errors
/// [`Fault::Gone`] if there is no such book; any [`Fault`] of the storage itself. The book is then still there.
pub async fn delete<B: Backing>(shelf: &Shelf<B>, id: BookId, at: Moment, salt: u64) -> Result<(), Fault> {
    let (held, text) = match shelf.open(id).await {
        Ok((book, mut opened)) => {
            let book = opened.replay(book);
            let text = exchange::write(&book);
            (book, text)
        }
        Err(Fault::Damaged(damage)) => (Book::new(Settings::new("")), damage.text()),
        Err(fault) => return Err(fault),
    };
    let point = Point::new(id, &held, Why::Deletion, at, salt, text.len());
    let others = all(shelf.backing(), None).await?;
    shelf.backing().delete(id, &slips(shelf.backing(), others, point, text).await?).await
}

/// Deletes a book with its points and steps.
///
/// # Errors
/// Any [`Fault`] of the storage itself. The book is then still there.
pub async fn delete_for_good<B: Backing>(shelf: &Shelf<B>, id: BookId) -> Result<(), Fault> {
    let points = of_book(shelf.backing(), id).await?;
    let mut slips: Vec<Slip> = points.iter().flat_map(Point::thrown_away).collect();
    slips.extend(steps_thrown_away(shelf.backing(), id).await?);
    shelf.backing().delete(id, &slips).await
}

/// Why a deleted book cannot be brought back. It stays in the list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum BringBackError {
    /// The storage failed.
    Stored(Fault),
    /// The point's contents are not a whole book.
    NotWhole(BookFileError),
}

/// Puts a deleted book back on the shelf under its own id. `now` is the moment, in milliseconds since 1970.
///
/// # Errors
/// A [`BringBackError`] if the storage fails, if its contents are not a whole book, or if its id is taken.
/// Nothing is changed then.
pub async fn bring_back<B: Backing>(shelf: &Shelf<B>, point: &Point, now: u64) -> Result<(), BringBackError> {
    let text = copy_of(shelf.backing(), point).await.map_err(BringBackError::Stored)?;
    let book = exchange::read(text).map_err(BringBackError::NotWhole)?;
    shelf.create(point.book, &book, now).await.map_err(BringBackError::Stored)?;
    // Its contents are on the shelf again. If the point cannot be deleted now, it goes when it is old.
    let _ = shelf.backing().file(&point.thrown_away()).await;
    Ok(())
}
