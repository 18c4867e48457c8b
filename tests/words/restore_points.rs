//! What is said of restore points, deleted books and copies.

use brimwright::backup::copies::{CopyStatus, Due};
use brimwright::backup::restore_points::{BringBackError, Moment, Point, Why};
use brimwright::book::{Book, BookId, Settings};
use brimwright::exchange::BookFileError;
use brimwright::foundation::measure::Date;
use brimwright::store::Fault;
use brimwright::words::{copies, restore_points};

fn day(text: &str) -> Date {
    Date::from_text(text).expect("a day")
}

fn point() -> Point {
    Point {
        book: BookId::from_random(1),
        id: "1".into(),
        why: Why::Deletion,
        at: Moment { millis: 0, day: day("2026-11-20") },
        name: "Corner bar".into(),
        drinks: 14,
        ingredients: 1,
        bytes: 101_001,
        made_room: 0,
    }
}

#[test]
fn a_point_says_what_it_was_made_before_and_what_it_holds() {
    let said = [Why::FirstChange, Why::Import, Why::Merge, Why::Adoption, Why::Yields, Why::Restore, Why::Deletion]
        .map(restore_points::made_before);
    assert_eq!(
        said,
        [
            "Before that day’s first change",
            "Before an import",
            "Before changes from two tabs were joined",
            "Before a scenario became the menu",
            "Before weighed yields were used",
            "Before going back to a restore point",
            "Before the book was deleted",
        ]
    );
    assert_eq!(restore_points::holds(&point()), "14 drinks, 1 ingredient, 102 kB");
    let made_room = |made_room| restore_points::made_room(&Point { made_room, ..point() });
    assert_eq!(made_room(0), None);
    assert_eq!(made_room(1).as_deref(), Some("1 older point was deleted to make room."));
    assert_eq!(made_room(3).as_deref(), Some("3 older points were deleted to make room."));
    assert_eq!(
        restore_points::kept(),
        "Restore points stay for 14 days, and the last 20 stay longer. All books share 20 MB. The oldest points go first."
    );
}

#[test]
fn a_point_that_was_not_made_is_told() {
    let full = |why| restore_points::not_made(why, &Fault::Full);
    assert_eq!(
        full(Why::FirstChange),
        "No restore point was made before today’s first change. This device is out of space. Your change is saved. Free up space. Your next change tries again."
    );
    let before = |why| full(why).split(". ").next().map(str::to_owned).unwrap_or_default();
    assert_eq!(
        [Why::Import, Why::Merge, Why::Adoption, Why::Yields, Why::Restore, Why::Deletion].map(before),
        [
            "No restore point was made before the import",
            "No restore point was made before changes from two tabs were joined",
            "No restore point was made before the scenario became the menu",
            "No restore point was made before weighed yields were used",
            "No restore point was made before you went back",
            "No restore point was made before the deletion",
        ]
    );
    assert_eq!(
        restore_points::not_made(Why::Import, &Fault::Closed),
        "No restore point was made before the import. Your browser could not store the point. Your change is saved. Your next change tries again."
    );
}

#[test]
fn a_deleted_book_says_until_when_it_is_kept() {
    assert_eq!(restore_points::deleted(&point()), "Deleted Nov 20. Stays until Dec 20, 2026.");
    assert_eq!(restore_points::deleted_name(&point()), "Corner bar");
    let nameless = Point { name: String::new(), ..point() };
    assert_eq!(restore_points::deleted_name(&nameless), "Damaged book");
    let said = |fault| restore_points::bring_back_error(&BringBackError::Stored(fault));
    assert_eq!(said(Fault::Gone), "This book is gone. Open a saved file instead.");
    assert_eq!(said(Fault::Behind), "This book is back already. Open it under “Your books”.");
    assert_eq!(
        said(Fault::Full),
        "The book is not back. This device is out of space. Free up space and try again, or save a file."
    );
    assert_eq!(
        said(Fault::Closed),
        "The book is not back. Your browser could not store the book. Try again, or save a file."
    );
    assert_eq!(
        restore_points::bring_back_error(&BringBackError::NotWhole(BookFileError::Empty)),
        "Parts of this book cannot be read. Check the readable parts."
    );
    assert_eq!(
        restore_points::deleted_elsewhere(),
        "That book was deleted in another tab. Look under “Deleted books”."
    );
    assert_eq!(
        restore_points::before_deleting(None),
        "This book stays under “Deleted books” for 30 days. Save a file to keep a copy longer."
    );
    assert_eq!(
        restore_points::before_deleting(Some("My book")),
        "“My book” stays under “Deleted books” for 30 days. Save a file to keep a copy longer."
    );
    assert_eq!(restore_points::went(), "This restore point is gone. Choose another.");
}

#[test]
fn what_is_whole_and_what_is_not_is_counted() {
    let book = Book::new(Settings::new("Corner bar"));
    assert_eq!(restore_points::whole(&book), "In this book: 0 drinks, 0 ingredients");
}

#[test]
fn removed_books_are_named() {
    let removed = |names: &[&str]| restore_points::removed(&names.iter().map(ToString::to_string).collect::<Vec<_>>());
    assert_eq!(
        removed(&["Corner bar", "", "My book"]),
        "Your browser removed these books: Corner bar, My book. Open your last saved file, or start again."
    );
    assert_eq!(removed(&[""]), "Your browser removed your books. Open your last saved file, or start again.");
}

#[test]
fn the_age_of_the_last_copy_is_told() {
    let last = Some(Moment { millis: 0, day: day("2026-11-20") });
    let said = |last, changes| copies::last_copy(&CopyStatus { last, changes, known_since: None }, day("2026-11-26"));
    assert_eq!(said(last, 12), "Last copy: Nov 20. 12 changes since.");
    assert_eq!(said(last, 1), "Last copy: Nov 20. 1 change since.");
    assert_eq!(said(last, 0), "Last copy: Nov 20. No changes since.");
    assert_eq!(said(None, 3), "No copy saved yet. 3 changes so far.");
    let earlier = Some(Moment { millis: 0, day: day("2025-11-20") });
    assert_eq!(said(earlier, 1), "Last copy: Nov 20, 2025. 1 change since.");
    assert_eq!(copies::copy_due(Due::Days(15)), "No copy of this book for 15 days.");
    assert_eq!(copies::copy_due(Due::Changes(200)), "200 changes without a copy of this book.");
}

#[test]
fn the_browser_s_answer_is_told() {
    assert_eq!(
        [Some(true), Some(false), None].map(copies::persisted),
        [
            "Your browser agreed to keep your books until you delete them.",
            "Your browser may remove your books when the device runs low on space. Save copies.",
            "Your browser does not say how long your books stay. Save copies.",
        ]
    );
}

#[test]
fn a_file_on_the_device_says_when_it_was_written_or_why_not() {
    assert_eq!(copies::file_written("bar.json", "10:42"), "Copies go to bar.json. Last saved: 10:42.");
    let yesterday = "Copies go to bar.json. Last saved: Yesterday 17:05.";
    assert_eq!(copies::file_written("bar.json", "Yesterday 17:05"), yesterday);
    assert_eq!(copies::file_chosen("bar.json"), "Copies go to bar.json.");
    assert_eq!(copies::ask_again(), "Your browser needs your permission again to save copies to the file.");
    let not = |kind| copies::file_not_written("bar.json", kind);
    assert_eq!(
        not("NotFoundError"),
        "No copy was saved to bar.json. The file or its folder is gone. Choose a file again."
    );
    assert_eq!(
        not("NotAllowedError"),
        "No copy was saved to bar.json. Your browser did not allow this. Allow saving again."
    );
    assert_eq!(
        not("QuotaExceededError"),
        "No copy was saved to bar.json. The disk is full. Free up space. Your next change tries again."
    );
    assert_eq!(
        not("NoModificationAllowedError"),
        "No copy was saved to bar.json. Another program has the file open. Close that program. Your next change tries again."
    );
    assert_eq!(
        not("UnknownError"),
        "No copy was saved to bar.json. Your browser could not save the file. Choose a file again."
    );
}
