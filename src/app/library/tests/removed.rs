//! Books that the browser removed, told apart from a first start and from deleted ones.

use super::*;
use crate::backup::restore_points::{bring_back, deleted_books};
use crate::book::Settings;
use crate::store::Shelf;

fn add(tab: &Tab, name: &str) {
    tab.go(Way::Add(Box::new(Book::new(Settings::new(name)))));
}

#[test]
fn a_first_start_has_lost_nothing() {
    let shop = Shop::new();
    let tab = shop.tab();
    assert_eq!((tab.library.phase(), tab.library.removed()), (Phase::Choosing, Vec::new()));
    assert!(shop.phone.asked_to_recall.get(), "a note elsewhere is looked for");
}

#[test]
fn removed_books_are_named_also_those_closed_or_never_edited() {
    let shop = Shop::new();
    let tab = shop.tab();
    add(&tab, "Corner bar");
    add(&tab, "Bridge bar");
    tab.go(Way::Close);
    shop.storage.evict();
    let again = shop.tab();
    assert_eq!(again.library.phase(), Phase::Choosing);
    assert_eq!(again.library.removed(), ["Corner bar", "Bridge bar"]);
    // Until the person goes on with other books.
    let later = shop.tab();
    assert_eq!(later.library.removed(), ["Corner bar", "Bridge bar"]);
    add(&later, "My book");
    assert_eq!(later.library.removed(), [""; 0]);
    assert_eq!(shop.tab().library.removed(), [""; 0]);
}

#[test]
fn the_book_that_is_left_does_not_hide_that_another_is_lost() {
    let shop = Shop::new();
    let tab = shop.tab();
    add(&tab, "Corner bar");
    let corner = shop.phone.noted.borrow().clone().expect("a note");
    shop.storage.evict();
    shop.phone.noted.replace(None);
    add(&shop.tab(), "Bridge bar");
    let bridge = shop.phone.noted.borrow().clone().expect("a note");
    shop.phone.noted.replace(Some(format!("{corner}{bridge}")));
    let again = shop.tab();
    assert_eq!((again.library.phase(), again.library.removed()), (Phase::Choosing, vec!["Corner bar".to_string()]));
    let left = again.library.books().first().and_then(|book| book.id()).expect("a book");
    again.go(Way::Open(left));
    assert_eq!(shop.tab().open(), Some(left), "the person went on with it");
}

#[test]
fn a_deleted_book_is_not_called_removed() {
    let shop = Shop::new();
    let tab = shop.tab();
    add(&tab, "Corner bar");
    let noted = shop.phone.noted.borrow().clone();
    tab.go(Way::Delete(tab.open().expect("a book is open")));
    assert_eq!(listed(&tab), [""; 0]);
    assert_eq!(shop.tab().library.removed(), [""; 0]);
    // The browser wrote the note too late: the restore point tells.
    shop.phone.noted.replace(noted);
    assert_eq!(shop.tab().library.removed(), [""; 0]);
}

#[test]
fn a_note_elsewhere_tells_where_the_first_is_lost_too() {
    let shop = Shop::new();
    add(&shop.tab(), "Corner bar");
    let noted = shop.phone.noted.take().expect("a note");
    shop.phone.remembered.set(Remembered::default());
    shop.storage.evict();
    let again = shop.tab();
    assert_eq!(again.library.removed(), [""; 0]);
    again.library.recalled(noted.clone());
    again.run();
    assert_eq!(again.library.removed(), ["Corner bar"]);
    // Once there is a book again, it is too late to tell.
    add(&again, "My book");
    again.library.recalled(noted);
    again.run();
    assert_eq!(again.library.removed(), [""; 0]);
}

#[test]
fn what_an_older_version_noted_tells_that_books_are_lost() {
    let shop = Shop::new();
    shop.phone.remembered.set(Remembered { open_book: None, had_books: true });
    assert_eq!(shop.tab().library.removed(), [""]);
}

#[test]
fn a_database_that_goes_while_a_book_is_open_is_not_another_tab_s_doing() {
    let shop = Shop::new();
    let tab = shop.tab();
    add(&tab, "Corner bar");
    shop.storage.evict();
    tab.put(ingredient(1, "Pear"));
    assert_eq!(tab.fault(), Some(Fault::Gone));
    // What is on the screen can be kept.
    tab.library.keep_as_new(tab.book());
    tab.run();
    assert!(tab.is_saved());
    assert!(tab.book().contains(ingredient_key(1)));
}

#[test]
fn a_tab_that_did_not_hear_of_a_deletion_finds_out() {
    let shop = Shop::new();
    let (one, other) = (shop.tab(), shop.tab());
    add(&one, "Corner bar");
    let id = one.open().expect("a book is open");
    other.go(Way::Open(id));
    one.go(Way::Delete(id));
    other.put(ingredient(1, "Pear"));
    assert_eq!(other.fault(), Some(Fault::Deleted));
}

#[test]
fn a_book_that_is_not_there_when_it_is_opened_says_why() {
    let shop = Shop::new();
    let (one, other) = (shop.tab(), shop.tab());
    add(&one, "Corner bar");
    let id = one.open().expect("a book is open");
    one.go(Way::Delete(id));
    other.go(Way::Open(id));
    assert_eq!(other.library.phase(), Phase::Choosing);
    let refused = other.library.refused();
    assert_eq!(refused.as_deref(), Some("That book was deleted in another tab. Look under “Deleted books”."));

    add(&one, "Bridge bar");
    let id = one.open().expect("a book is open");
    shop.storage.evict();
    other.go(Way::Open(id));
    assert_eq!((other.library.phase(), other.library.removed()), (Phase::Choosing, vec!["Bridge bar".to_string()]));
}

#[test]
fn books_that_do_not_answer_may_still() {
    let shop = Shop::new();
    let library: Library<InMemory> = Library::new(Rc::clone(&shop.phone) as Rc<dyn Device>);
    library.waited_long();
    assert_eq!(library.phase(), Phase::Stuck(Fault::NoAnswer));
    library.start(shop.storage.clone());
    shop.storage.run();
    assert_eq!(library.phase(), Phase::Choosing);
    library.waited_long();
    assert_eq!(library.phase(), Phase::Choosing, "they did answer");
}

#[test]
fn without_storage_the_person_can_go_on_and_is_asked_before_it_is_lost() {
    let shop = Shop::new();
    let tab = Tab {
        library: Library::new(Rc::clone(&shop.phone) as Rc<dyn Device>),
        screen: RefCell::new(None),
        storage: shop.storage.clone(),
    };
    tab.library.stuck(Fault::Closed);
    tab.library.go_on_without_saving();
    assert_eq!(tab.library.phase(), Phase::Stuck(Fault::Closed), "only where there is no storage");
    tab.library.stuck(Fault::NoStorage);
    tab.library.go_on_without_saving();
    assert_eq!(tab.library.phase(), Phase::Choosing);
    tab.library.can_change(|_| {}, super::empty);
    tab.start_empty();
    tab.put(ingredient(1, "Pear"));
    assert!(tab.book().contains(ingredient_key(1)));
    assert_eq!(tab.fault(), Some(Fault::NoStorage));
    tab.go(Way::Close);
    assert_eq!(tab.library.leaving(), Some(Leaving::Close), "what is on the screen only is asked about");
    tab.library.leave_anyway();
    tab.run();
    assert_eq!((tab.library.phase(), tab.library.leaving()), (Phase::Choosing, None));
}

#[test]
fn without_room_for_a_copy_a_book_is_deleted_only_for_good() {
    let shop = Shop::new();
    let tab = shop.tab();
    add(&tab, "Corner bar");
    let id = tab.open().expect("a book is open");
    fill(&shop.storage);
    tab.go(Way::Delete(id));
    assert_eq!((tab.open(), tab.library.no_room_to_delete()), (Some(id), Some(id)));
    assert_eq!(
        tab.library.refused().as_deref(),
        Some("“Corner bar” was not deleted. This device is out of space. Try again.")
    );
    tab.go(Way::DeleteForGood(id));
    assert_eq!((listed(&tab), tab.library.no_room_to_delete()), (Vec::new(), None));
}

#[test]
fn the_first_change_and_changes_joined_from_two_tabs_leave_points() {
    use crate::backup::restore_points::{Why, of_book};
    let shop = Shop::new();
    let (one, other) = (shop.tab(), shop.tab());
    add(&one, "Corner bar");
    let id = one.open().expect("a book is open");
    other.go(Way::Open(id));
    other.run();
    one.put(ingredient(1, "Pear"));
    other.put(ingredient(1, "Quince"));
    other.library.keep_mine(0);
    other.run();
    assert!(other.is_saved());
    let done = Rc::new(RefCell::new(None));
    let (backing, telling) = (shop.storage.clone(), Rc::clone(&done));
    shop.storage.spawn(async move { drop(telling.replace(of_book(&backing, id).await.ok())) });
    shop.storage.run();
    let whys: Vec<Why> = done.take().expect("points").iter().map(|point| point.why).collect();
    assert_eq!(whys, [Why::Merge, Why::FirstChange]);
}

#[test]
fn a_book_brought_back_is_noted_and_listed() {
    let shop = Shop::new();
    let tab = shop.tab();
    add(&tab, "Corner bar");
    let id = tab.open().expect("a book is open");
    tab.go(Way::Delete(id));
    assert_eq!((listed(&tab), FORGOTTEN.take()), (Vec::new(), Vec::new()));
    let shelf = Shelf::new(shop.storage.clone());
    shop.storage.spawn(async move {
        let deleted = deleted_books(&shelf, Date::FIRST).await.expect("a list");
        bring_back(&shelf, &deleted[0], NOON).await.expect("a book");
    });
    shop.storage.run();
    tab.go(Way::Open(id));
    assert_eq!(listed(&tab), ["Corner bar"]);
    shop.storage.evict();
    assert_eq!(shop.tab().library.removed(), ["Corner bar"]);
}

#[test]
fn of_a_book_deleted_for_good_nothing_is_kept_outside_the_storage_either() {
    let shop = Shop::new();
    let tab = shop.tab();
    add(&tab, "Corner bar");
    let id = tab.open().expect("a book is open");
    tab.go(Way::DeleteForGood(id));
    assert_eq!(FORGOTTEN.take(), [id]);
}
