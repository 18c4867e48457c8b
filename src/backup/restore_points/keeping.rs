//! Making restore points, and reading what they hold.

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use std::rc::Rc;

use super::{Moment, Point, Why, to_go};
use crate::book::{Book, BookId, Edit, Key, Record, Settings};
use crate::exchange::{self, BookFileError};
use crate::foundation::measure::Date;
use crate::store::{Backing, Drawer, Fault, Listed, Shelf, Slip};

/// How long nothing is tried after a try that failed, in milliseconds.
const REST: u64 = 10_000;

/// How many points wait at most.
const MOST_WAITING: usize = 4;

/// The restore points of an open book: what is to be kept waits here until the edit after it is
/// saved, so that no edit waits for a point. Its clones are the same.
pub struct Points<B> {
    inner: Rc<Inner<B>>,
}

struct Inner<B> {
    backing: B,
    book: BookId,
    /// The last day whose first change was seen here.
    seen: Cell<Option<Date>>,
    waiting: RefCell<Vec<Waiting>>,
    busy: Cell<bool>,
    /// Whether the last try failed, and until when none is made then.
    failed: Cell<bool>,
    rests_until: Cell<u64>,
    told: Box<Told>,
}

/// Hears of each try whether it went wrong: what the point was to be made before, and why there
/// is none.
type Told = dyn Fn(Option<(Why, Fault)>);

#[derive(Clone)]
struct Waiting {
    why: Why,
    at: Moment,
    salt: u64,
    held: Held,
}

/// What a point is to hold.
#[derive(Clone)]
enum Held {
    /// This book.
    Book(Box<Book>),
    /// The open book, with these records as they were; none is one that was not there. The first
    /// change of a day is a keystroke, and shall not wait for a copy of the book.
    Was(BTreeMap<Key, Option<Record>>),
}

impl<B: Backing> Points<B> {
    /// Those of the book `book`.
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

    /// The book was changed at `at`; `was` are the records that were changed, as they were.
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

    /// The whole book is about to be changed; `before` is how it stands.
    pub fn before(&self, why: Why, at: Moment, salt: u64, before: Book) {
        let mut waiting = self.inner.waiting.borrow_mut();
        // Of changes that are joined one after the other, the book before the first is wanted.
        if why != Why::Merge || waiting.iter().all(|earlier| earlier.why != why) {
            waiting.push(Waiting { why, at, salt, held: Held::Book(Box::new(before)) });
            // The first is perhaps on its way.
            if waiting.len() > MOST_WAITING {
                waiting.remove(1);
            }
        }
    }

    /// What was about to be done was refused.
    pub fn refused(&self) {
        self.inner.waiting.borrow_mut().pop();
    }

    /// Everything is saved at `now`, and `book` is the open one: what waits is kept now. On a device
    /// that took none a moment ago nothing is tried: a point is a whole book.
    pub fn saved(&self, now: Moment, book: impl Fn() -> Book) {
        for waiting in self.inner.waiting.borrow_mut().iter_mut() {
            if let Held::Was(records) = &waiting.held {
                let mut before = book();
                let back = Edit::records(&before, records);
                // What was just done can be taken back; where another tab stands in the way, the
                // book as it is now is better than none.
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

/// Every point of one book or of all, the newest first. What does not read is left out.
async fn all<B: Backing>(backing: &B, book: Option<BookId>) -> Result<Vec<Point>, Fault> {
    let slips = backing.slips(Drawer::Points, book).await?;
    let mut points: Vec<Point> = slips.iter().filter_map(Point::from_slip).collect();
    points.sort_by(|one, other| other.id.cmp(&one.id));
    Ok(points)
}

/// The slips that keep a point, and throw away those that go for it; with a deleted book go its
/// steps.
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

/// The slips that throw the steps of a book away.
async fn steps_thrown_away<B: Backing>(backing: &B, book: BookId) -> Result<Vec<Slip>, Fault> {
    let steps = backing.slips(Drawer::Steps, Some(book)).await?;
    Ok(steps.into_iter().map(|step| Slip { text: None, ..step }).collect())
}

/// Makes a point; none is made where the first change of its day has one, from here or from
/// another tab: each is of the book before a change.
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

/// What a point holds, as a text: a book file, or what was stored of a book that did not read.
///
/// # Errors
/// [`Fault::Gone`] where it was thrown away since; any [`Fault`] of the storage itself.
pub async fn copy_of<B: Backing>(backing: &B, point: &Point) -> Result<String, Fault> {
    backing.slip(Drawer::Copies, point.book, &point.id).await?.ok_or(Fault::Gone)
}

/// The books that were deleted and can be brought back: the point before the deletion of each,
/// the last deleted first.
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

/// Whether a book that is gone was deleted by a person; else the browser has removed it.
///
/// # Errors
/// Any [`Fault`] of the storage itself.
pub async fn was_deleted<B: Backing>(backing: &B, book: BookId) -> Result<bool, Fault> {
    // The slips are in the order of their ids, the last made last.
    let slips = backing.slips(Drawer::Points, Some(book)).await?;
    Ok(slips.iter().filter_map(Point::from_slip).next_back().is_some_and(|last| last.why == Why::Deletion))
}

/// Deletes a book, whether it reads or not, and keeps it as a point: both or neither. Its steps stay
/// as long. Of one that
/// does not read, what is stored of it is kept.
///
/// # Errors
/// [`Fault::Gone`] where there is none; any [`Fault`] of the storage itself. The book is then
/// still there.
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

/// Deletes a book and everything that is kept of it.
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
    /// The storage.
    Stored(Fault),
    /// What is kept is no whole book.
    NotWhole(BookFileError),
}

/// Puts a deleted book back on the shelf, whole and under its own id; `now` is the time in
/// milliseconds since 1970.
///
/// # Errors
/// A [`BringBackError`]; nothing is changed.
pub async fn bring_back<B: Backing>(shelf: &Shelf<B>, point: &Point, now: u64) -> Result<(), BringBackError> {
    let text = copy_of(shelf.backing(), point).await.map_err(BringBackError::Stored)?;
    let book = exchange::read(text).map_err(BringBackError::NotWhole)?;
    shelf.create(point.book, &book, now).await.map_err(BringBackError::Stored)?;
    // What it holds is on the shelf again. Where it cannot go, it goes with its time.
    let _ = shelf.backing().file(&point.thrown_away()).await;
    Ok(())
}
