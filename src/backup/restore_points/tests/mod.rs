//! Restore points, on a storage that fails as told.

mod deleted;
mod making;
mod policy;

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use super::*;
use crate::book::{Edit, Ingredient, IngredientId, Record, Settings};
use crate::exchange;
use crate::store::{Backing, BookSync, Change, Fault, Hooks, InMemory, Saving};
use crate::support::day;
use crate::support::shelf::{self, ID, open, run};

const OTHER: BookId = BookId::from_random(0xb2);

/// A time on the 20th of November so many days on.
fn at(days: i32) -> Moment {
    let millis = 1_763_600_000_000_u64.checked_add_signed(i64::from(days) * 86_400_000).unwrap();
    Moment { millis, day: day("2026-11-20").plus_days(days) }
}

fn point(book: BookId, days: i32, why: Why, bytes: u64) -> Point {
    let held = Book::new(Settings::new("Corner bar"));
    Point { bytes, ..Point::new(book, &held, why, at(days), u64::from(days.unsigned_abs()), 0) }
}

fn put(name: &str) -> Edit {
    Edit::Put(Record::Ingredient(Ingredient::named(IngredientId::from_random(1), name)))
}

fn book(ingredient: &str) -> Book {
    let mut book = Book::new(Settings::new("Corner bar"));
    book.apply(&put(ingredient)).unwrap();
    book
}

/// The points of a book, the newest first, with the ingredients that they hold.
fn held(storage: &InMemory, id: BookId) -> Vec<(Why, String)> {
    let points = run(storage, move |shelf| async move { of_book(shelf.backing(), id).await }).unwrap();
    let held = |point: Point| {
        let why = point.why;
        let text = run(storage, move |shelf| async move { copy_of(shelf.backing(), &point).await }).unwrap();
        let names = exchange::read(text).unwrap().ingredients().map(|it| it.name.clone()).collect::<Vec<_>>();
        (why, names.join(", "))
    };
    points.into_iter().map(held).collect()
}

/// A tab with the book open; its clock stands where it is told.
struct Tab {
    book: Rc<RefCell<Book>>,
    sync: BookSync<InMemory>,
    points: Points<InMemory>,
    failed: Rc<RefCell<Option<(Why, Fault)>>>,
    now: Rc<Cell<u64>>,
}

impl Tab {
    fn open(storage: &InMemory) -> Tab {
        let (book, opened) = open(storage);
        let book = Rc::new(RefCell::new(book));
        let failed = Rc::new(RefCell::new(None));
        let tell = Rc::clone(&failed);
        let points = Points::new(storage.clone(), ID, move |fault| drop(tell.replace(fault)));
        let now = Rc::new(Cell::new(0));
        let clock = Rc::clone(&now);
        let (keeping, pointing) = (points.clone(), Rc::clone(&book));
        let hooks = Hooks {
            saving: Box::new(move |saving| {
                if let Saving::Saved { .. } = saving {
                    let moment = Moment { millis: clock.get(), ..at(0) };
                    keeping.saved(moment, || pointing.borrow().clone());
                }
            }),
            ..shelf::hooks(&book)
        };
        Tab { book, sync: opened.keep(hooks), points, failed, now }
    }

    fn edit(&self, days: i32, edit: &Edit) {
        let mut book = self.book.borrow_mut();
        let applied = book.apply(edit).unwrap();
        let change = Change::new("Change", 0, &book, &applied);
        self.points.changed(at(days), 1, change.was());
        drop(book);
        self.sync.save(change);
    }

    fn replace(&self, days: i32, why: Why, by: &Book) {
        let before = self.book.borrow().clone();
        let edit = Edit::replace(&before, by);
        self.points.before(why, at(days), why as u64, before);
        self.edit(days, &edit);
    }
}

fn storage() -> InMemory {
    shelf::storage(book("Apple"), 0)
}

fn delete_it(storage: &InMemory, days: i32) -> Result<(), Fault> {
    run(storage, move |shelf| async move { delete(&shelf, ID, at(days), 3).await })
}

fn deleted(storage: &InMemory, days: i32) -> Vec<Point> {
    run(storage, move |shelf| async move { deleted_books(&shelf, at(days).day).await }).unwrap()
}
