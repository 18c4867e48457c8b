//! What stands between a person and a saved book.

use brimwright::book::{Book, BookId, Settings};
use brimwright::store::{BookEntry, Fault, Saving};
use brimwright::words::keeping::{not_added, not_deleted, not_saved, told_apart};

#[test]
fn what_was_not_done_with_a_book() {
    assert_eq!(
        not_added("Corner bar", &Fault::Full),
        "“Corner bar” was not added. This device is out of space. Delete what you do not need, then try again."
    );
    assert_eq!(
        not_added("Corner bar", &Fault::Closed),
        "“Corner bar” was not added. This page lost its link to your saved books. Try again. If that fails, save a copy and reload this page."
    );
    let thrown = Fault::Browser { name: "UnknownError".into(), message: "Internal error opening backing store".into() };
    assert_eq!(
        not_added("Corner bar", &thrown),
        "“Corner bar” was not added. Your browser had a problem. Try again, or save a copy."
    );
    assert_eq!(
        not_deleted(Some("Corner bar"), &Fault::Full),
        "“Corner bar” was not deleted. This device is out of space. Try again."
    );
    assert_eq!(
        not_deleted(None, &Fault::NewerVersionOpen),
        "The book was not deleted. Another tab has a newer version open. This tab no longer saves. Reload this page to go on."
    );
}

#[test]
fn what_would_be_lost_by_leaving() {
    assert_eq!(not_saved(&Saving::Saved { revision: 3 }), None);
    assert_eq!(
        not_saved(&Saving::Saving { waiting: 2 }).as_deref(),
        Some("Your changes are still being saved. If you leave now, you may lose them.")
    );
    assert_eq!(
        not_saved(&Saving::NotSaved { waiting: 1, fault: Fault::Full }).as_deref(),
        Some("Your changes are not saved. If you leave now, you lose them.")
    );
    assert_eq!(
        not_saved(&Saving::NotSaved { waiting: 0, fault: Fault::Deleted }).as_deref(),
        Some("This book is on this screen only. If you leave now, you lose the book.")
    );
    assert_eq!(not_saved(&Saving::NotSaved { waiting: 0, fault: Fault::NewerVersionOpen }), None);
}

#[test]
fn what_tells_two_books_of_one_name_apart() {
    let book = Book::new(Settings::new("My book"));
    let entry = BookEntry::new(BookId::from_random(1), &book, 0);
    assert_eq!(told_apart(&entry, Some("Yesterday 17:05".into())), "0 drinks · Last change: Yesterday 17:05");
    assert_eq!(told_apart(&BookEntry { drinks: Some(1), ..entry.clone() }, None), "1 drink");
    assert_eq!(told_apart(&BookEntry { drinks: None, ..entry }, None), "");
}

#[test]
fn a_locked_device_says_who_decides() {
    let said = brimwright::words::keeping::unlock_to_decide("Another tab changed Apples too.".to_string());
    assert_eq!(said, "Another tab changed Apples too. Unlock this device to decide.");
}
