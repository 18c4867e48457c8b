//! Restore points, on a storage that fails as told.

use std::cell::{Cell, RefCell};
use std::future::Future;
use std::rc::Rc;

use super::*;
use crate::book::{Edit, Ingredient, IngredientId, Record, Settings};
use crate::exchange;
use crate::store::{Backing, BookSync, Change, Fault, Hooks, InMemory, Saving, Shelf};

const ID: BookId = BookId::from_random(0xb1);
const OTHER: BookId = BookId::from_random(0xb2);

fn day(text: &str) -> Date {
    Date::from_text(text).unwrap()
}

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

/// Does something to its end.
fn run<T: 'static, F: Future<Output = T> + 'static>(storage: &InMemory, work: impl FnOnce(Shelf<InMemory>) -> F) -> T {
    let done = Rc::new(RefCell::new(None));
    let (work, done_by) = (work(Shelf::new(storage.clone())), Rc::clone(&done));
    storage.spawn(async move {
        let result = work.await;
        done_by.replace(Some(result));
    });
    storage.run();
    done.take().expect("the work ends")
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
        let (book, mut opened) = run(storage, |shelf| async move { shelf.open(ID).await }).unwrap();
        let book = opened.replay(book);
        let book = Rc::new(RefCell::new(book));
        let failed = Rc::new(RefCell::new(None));
        let tell = Rc::clone(&failed);
        let points = Points::new(storage.clone(), ID, move |fault| drop(tell.replace(fault)));
        let now = Rc::new(Cell::new(0));
        let clock = Rc::clone(&now);
        let (keeping, pointing, reading, taking) =
            (points.clone(), Rc::clone(&book), Rc::clone(&book), Rc::clone(&book));
        let hooks = Hooks {
            saving: Box::new(move |saving| {
                if let Saving::Saved { .. } = saving {
                    let moment = Moment { millis: clock.get(), ..at(0) };
                    keeping.saved(moment, || pointing.borrow().clone());
                }
            }),
            book: Box::new(move || reading.borrow().clone()),
            apply_remote: Box::new(move |edit| taking.borrow_mut().apply(edit).map(|_| ())),
            give_up: Box::new(|_, _| Ok(())),
            kept: Box::new(|_, _| ()),
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
    let storage = InMemory::default();
    run(&storage, |shelf| async move { shelf.create(ID, &book("Apple"), 0).await }).unwrap();
    storage
}

fn delete_it(storage: &InMemory, days: i32) -> Result<(), Fault> {
    run(storage, move |shelf| async move { delete(&shelf, ID, at(days), 3).await })
}

fn deleted(storage: &InMemory, days: i32) -> Vec<Point> {
    run(storage, move |shelf| async move { deleted_books(&shelf, at(days).day).await }).unwrap()
}

#[test]
fn what_a_point_is_reads_back_and_other_texts_are_left_out() {
    let mut whole = Point::new(ID, &book("Apple"), Why::Import, at(0), 0xff, 1234);
    whole.made_room = 3;
    whole.name = "Two\nlines 1 2".into();
    let slip = |text: Option<String>| Slip { drawer: Drawer::Points, book: ID, id: whole.id.clone(), text };
    assert_eq!(Point::from_slip(&slip(Some(whole.text()))), Some(whole.clone()));
    assert_eq!(whole.text(), "import 1763600000000 2026-11-20 0 1 1234 3\nTwo\nlines 1 2");
    for (why, _) in Why::ALL {
        let point = Point { why, ..whole.clone() };
        assert_eq!(Point::from_slip(&slip(Some(point.text()))).map(|point| point.why), Some(why));
    }
    for other in ["", "import", "other 1 2026-11-20 0 1 2 3\nName", "import 1 2026-11-20 0 1 2\nName"] {
        assert_eq!(Point::from_slip(&slip(Some(other.into()))), None, "{other:?}");
    }
    assert_eq!(Point::from_slip(&slip(Some("import 1 2026-11-20 0 1 2 3 4\nName".into()))), None);
    assert_eq!(Point::from_slip(&slip(None)), None);
}

#[test]
fn points_of_fourteen_days_stay_and_the_last_twenty_however_old() {
    // One a day for sixty days, the last today: those of the last 14 days are among the last 20.
    let daily: Vec<Point> = (0..60).map(|days| point(ID, days, Why::FirstChange, 1000)).collect();
    let go = to_go(&daily, at(59).day);
    assert_eq!(go.aged.len(), 60 - 20);
    assert!(go.aged.iter().all(|place| *place < 40) && go.for_room.is_empty(), "the oldest");
    // Three a day: of 14 days and today there are 45.
    let often: Vec<Point> = (0..180).map(|number| point(ID, number / 3, Why::Import, 1000)).collect();
    assert_eq!(to_go(&often, at(59).day).aged.len(), 180 - 45);
    // Nobody came for a year.
    assert_eq!(to_go(&daily[..20], at(365).day), policy::ToGo::default());
}

#[test]
fn twenty_points_are_those_of_one_book() {
    let both: Vec<Point> =
        (0..40).map(|days| point(if days % 2 == 0 { ID } else { OTHER }, days, Why::FirstChange, 1)).collect();
    assert_eq!(to_go(&both, at(365).day), policy::ToGo::default());
}

#[test]
fn a_deleted_book_stays_thirty_days_with_its_points() {
    let points = [point(ID, 0, Why::Import, 1), point(ID, 1, Why::FirstChange, 1), point(ID, 2, Why::Deletion, 1)];
    assert_eq!(to_go(&points, at(2 + 30).day).aged, [0_usize; 0]);
    assert_eq!(to_go(&points, at(2 + 31).day).aged, [2, 1, 0]);
    // Brought back and changed, it is a book like others.
    let mut back = points.to_vec();
    back.push(point(ID, 3, Why::FirstChange, 1));
    assert_eq!(to_go(&back, at(2 + 31).day), policy::ToGo::default());
}

#[test]
fn the_oldest_go_for_room_deleted_books_last_and_the_newest_never() {
    let deleted = point(OTHER, 0, Why::Deletion, 6_000_000);
    let points = [
        deleted,
        point(ID, 1, Why::FirstChange, 6_000_000),
        point(ID, 2, Why::FirstChange, 6_000_000),
        point(ID, 3, Why::FirstChange, 6_000_000),
    ];
    assert_eq!(to_go(&points, at(3).day), policy::ToGo { aged: vec![], for_room: vec![1] });
    let mut larger = points.to_vec();
    larger.push(point(ID, 4, Why::Import, 15_000_000));
    // 15 and 6 MB are too much for anything but the newest.
    assert_eq!(to_go(&larger, at(4).day).for_room, [1, 2, 3, 0]);
    larger.push(point(ID, 5, Why::Import, 21_000_000));
    assert_eq!(to_go(&larger, at(5).day).for_room, [1, 2, 3, 4, 0]);
    assert_eq!(to_go(&larger[5..], at(5).day), policy::ToGo::default());
    // Just as much as there may be.
    let fits = [point(ID, 1, Why::Import, 10_000_000), point(ID, 2, Why::Import, 10_000_000)];
    assert_eq!(to_go(&fits, at(2).day), policy::ToGo::default());
}

#[test]
fn the_first_change_of_a_day_leaves_the_book_before_it() {
    let storage = storage();
    let tab = Tab::open(&storage);
    tab.edit(0, &put("Pear"));
    tab.edit(0, &put("Quince"));
    storage.run();
    assert_eq!(held(&storage, ID), [(Why::FirstChange, "Apple".into())]);
    tab.edit(0, &put("Plum"));
    storage.run();
    assert_eq!(held(&storage, ID).len(), 1, "once a day");
    tab.edit(1, &put("Beet"));
    storage.run();
    assert_eq!(held(&storage, ID), [(Why::FirstChange, "Plum".into()), (Why::FirstChange, "Apple".into())]);
    // Opened again, or in another tab, on the same day: the state before the day is kept already.
    let again = Tab::open(&storage);
    again.edit(1, &put("Kale"));
    storage.run();
    assert_eq!(held(&storage, ID).len(), 2);
}

#[test]
fn a_point_waits_until_the_edit_is_saved() {
    let storage = storage();
    let tab = Tab::open(&storage);
    storage.fail_next(Fault::Full);
    tab.edit(0, &put("Pear"));
    storage.run();
    assert_eq!(held(&storage, ID), []);
    tab.edit(0, &put("Quince"));
    storage.run();
    assert_eq!(held(&storage, ID), [(Why::FirstChange, "Apple".into())], "from before the edit that had to wait");
}

#[test]
fn without_room_for_a_point_the_edit_is_saved_and_it_is_told() {
    let storage = storage();
    let tab = Tab::open(&storage);
    storage.fail_after(1, Fault::Full);
    tab.edit(0, &put("Pear"));
    storage.run();
    assert!(matches!(tab.sync.saving(), Saving::Saved { revision: 2 }));
    assert_eq!(*tab.failed.borrow(), Some((Why::FirstChange, Fault::Full)));
    assert_eq!(held(&storage, ID), []);
    // No edit of the next ten seconds tries again: a point is a whole book.
    for (seconds, name) in [(0, "Quince"), (9, "Lime")] {
        tab.now.set(seconds * 1000);
        tab.edit(0, &put(name));
        storage.run();
        assert_eq!(*tab.failed.borrow(), Some((Why::FirstChange, Fault::Full)), "{seconds}");
    }
    // Then it is tried again after an edit, with the book that it is to hold.
    tab.now.set(10_000);
    tab.edit(0, &put("Mint"));
    storage.run();
    assert_eq!(*tab.failed.borrow(), None);
    assert_eq!(held(&storage, ID), [(Why::FirstChange, "Apple".into())]);
}

#[test]
fn an_import_leaves_the_book_before_it_also_later_on_the_day() {
    let storage = storage();
    let tab = Tab::open(&storage);
    tab.replace(0, Why::Import, &book("Lime"));
    storage.run();
    assert_eq!(held(&storage, ID), [(Why::Import, "Apple".into())], "which is that of the first change too");
    tab.replace(0, Why::Adoption, &book("Mint"));
    storage.run();
    assert_eq!(held(&storage, ID), [(Why::Adoption, "Lime".into()), (Why::Import, "Apple".into())]);
}

#[test]
fn what_was_refused_leaves_no_point() {
    let storage = storage();
    let tab = Tab::open(&storage);
    tab.points.before(Why::Import, at(0), 1, tab.book.borrow().clone());
    tab.points.refused();
    tab.edit(0, &put("Pear"));
    storage.run();
    assert_eq!(held(&storage, ID), [(Why::FirstChange, "Apple".into())]);
}

#[test]
fn older_points_go_with_the_one_that_needs_their_room_and_it_says_so() {
    let storage = storage();
    let large = [point(ID, -1, Why::Import, 15_000_000), point(OTHER, -2, Why::Import, 15_000_000)];
    let slips: Vec<Slip> = large
        .iter()
        .flat_map(|it| [it.slip(Drawer::Points, Some(it.text())), it.slip(Drawer::Copies, Some("x".into()))])
        .collect();
    run(&storage, |shelf| async move { shelf.backing().file(&slips).await }).unwrap();
    let tab = Tab::open(&storage);
    tab.edit(0, &put("Pear"));
    storage.run();
    let points = run(&storage, |shelf| async move { of_book(shelf.backing(), ID).await }).unwrap();
    assert_eq!(
        points.iter().map(|point| (point.why, point.made_room)).collect::<Vec<_>>(),
        [(Why::FirstChange, 1), (Why::Import, 0)]
    );
    let copies = run(&storage, |shelf| async move { shelf.backing().slips(Drawer::Copies, None).await }).unwrap();
    assert_eq!(copies.len(), 2, "what the gone one held is gone too");
}

#[test]
fn a_deleted_book_comes_back_whole_byte_for_byte() {
    let storage = storage();
    let before = exchange::write(&book("Apple"));
    assert!(deleted(&storage, 0).is_empty());
    delete_it(&storage, 0).unwrap();
    assert_eq!(run(&storage, |shelf| async move { shelf.open(ID).await.map(|_| ()) }), Err(Fault::Gone));
    let list = deleted(&storage, 30);
    assert_eq!(
        list.iter().map(|it| (it.book, it.name.as_str(), it.ingredients)).collect::<Vec<_>>(),
        [(ID, "Corner bar", 1)]
    );
    assert!(deleted(&storage, 31).is_empty(), "only for 30 days");
    assert_eq!(run(&storage, |shelf| async move { was_deleted(shelf.backing(), ID).await }), Ok(true));
    let text = list[0].clone();
    assert_eq!(run(&storage, |shelf| async move { copy_of(shelf.backing(), &text).await }), Ok(before.clone()));

    let back = list[0].clone();
    run(&storage, |shelf| async move { bring_back(&shelf, &back, 0).await }).unwrap();
    let (book, _) = run(&storage, |shelf| async move { shelf.open(ID).await }).unwrap();
    assert_eq!(exchange::write(&book), before);
    assert!(deleted(&storage, 0).is_empty(), "what is there is not deleted");
    assert_eq!(held(&storage, ID), [], "and its earlier points age as those of any book on the shelf");
}

#[test]
fn a_deleted_book_comes_back_with_its_steps_and_they_go_with_its_time() {
    let storage = storage();
    let step = Slip { drawer: Drawer::Steps, book: ID, id: "1-1".into(), text: Some("a step".into()) };
    let kept = step.clone();
    run(&storage, |shelf| async move { shelf.backing().file(&[kept]).await }).unwrap();
    let steps = || run(&storage, |shelf| async move { shelf.backing().slips(Drawer::Steps, None).await }).unwrap();
    delete_it(&storage, 0).unwrap();
    let back = deleted(&storage, 0)[0].clone();
    run(&storage, |shelf| async move { bring_back(&shelf, &back, 0).await }).unwrap();
    assert_eq!(steps(), [step]);
    delete_it(&storage, 0).unwrap();
    // Another point is made when the book can be brought back no more.
    let other = BookId::from_random(0xb2);
    run(&storage, |shelf| async move {
        shelf.create(other, &book("Pear"), 0).await?;
        delete(&shelf, other, at(31), 7).await
    })
    .unwrap();
    assert_eq!(steps(), []);
    run(&storage, |shelf| async move { shelf.create(ID, &book("Apple"), 0).await }).unwrap();
    let kept = Slip { drawer: Drawer::Steps, book: ID, id: "1-1".into(), text: Some("a step".into()) };
    run(&storage, |shelf| async move {
        shelf.backing().file(&[kept]).await?;
        delete_for_good(&shelf, ID).await
    })
    .unwrap();
    assert_eq!(steps(), []);
}

#[test]
fn without_room_for_its_copy_a_book_stays_until_it_is_deleted_for_good() {
    let storage = storage();
    storage.fail_next(Fault::Full);
    assert_eq!(delete_it(&storage, 0), Err(Fault::Full));
    assert!(run(&storage, |shelf| async move { shelf.open(ID).await.is_ok() }));
    run(&storage, |shelf| async move { delete_for_good(&shelf, ID).await }).unwrap();
    assert!(deleted(&storage, 0).is_empty());
    assert_eq!(held(&storage, ID), []);
    assert_eq!(delete_it(&storage, 0), Err(Fault::Gone));
}

#[test]
fn a_deleted_book_that_did_not_read_is_kept_as_it_was_stored() {
    let storage = storage();
    storage.set_row(ID, "ingredient:1", "{\"cut");
    delete_it(&storage, 0).unwrap();
    let list = deleted(&storage, 0);
    assert_eq!(list[0].name, "");
    let point = list[0].clone();
    let text = run(&storage, |shelf| async move { copy_of(shelf.backing(), &point).await }).unwrap();
    assert!(text.lines().any(|line| line == "{\"cut"), "{text}");
    let back = list[0].clone();
    let refused = run(&storage, |shelf| async move { bring_back(&shelf, &back, 0).await });
    assert!(matches!(refused, Err(BringBackError::NotWhole(_))), "{refused:?}");
    assert_eq!(deleted(&storage, 0).len(), 1, "it stays in the list");
}

#[test]
fn two_books_deleted_are_two_in_the_list_the_last_first() {
    let storage = storage();
    run(&storage, |shelf| async move { shelf.create(OTHER, &book("Mint"), 0).await }).unwrap();
    delete_it(&storage, 0).unwrap();
    run(&storage, |shelf| async move { delete(&shelf, OTHER, at(1), 4).await }).unwrap();
    assert_eq!(deleted(&storage, 1).iter().map(|point| point.book).collect::<Vec<_>>(), [OTHER, ID]);
}

#[test]
fn a_book_the_browser_removed_was_not_deleted() {
    let storage = storage();
    assert_eq!(run(&storage, |shelf| async move { was_deleted(shelf.backing(), OTHER).await }), Ok(false));
    delete_it(&storage, 0).unwrap();
    let back = deleted(&storage, 0)[0].clone();
    run(&storage, |shelf| async move { bring_back(&shelf, &back, 0).await }).unwrap();
    Tab::open(&storage).edit(1, &put("Pear"));
    storage.run();
    assert_eq!(run(&storage, |shelf| async move { was_deleted(shelf.backing(), ID).await }), Ok(false));
}
