use super::*;
use crate::book::Settings;

#[test]
fn a_first_start_lets_choose_and_a_new_book_is_opened() {
    let shop = Shop::new();
    let tab = shop.tab();
    assert_eq!((tab.library.phase(), tab.library.removed()), (Phase::Choosing, Vec::new()));
    tab.start_empty();
    assert_eq!(listed(&tab), ["My book"]);
    assert_eq!(tab.book().settings().name, "My book");
    // Opened again, the only book opens by itself.
    let again = shop.tab();
    assert_eq!((again.open(), again.book()), (tab.open(), tab.book()));
}

#[test]
fn the_book_that_was_open_last_opens_again_and_a_closed_one_does_not() {
    let shop = Shop::new();
    let tab = shop.tab();
    tab.start_empty();
    let first = tab.open();
    tab.start_empty();
    assert_ne!(tab.open(), first);
    assert_eq!(shop.tab().open(), tab.open());
    tab.go(Way::Close);
    assert_eq!(tab.library.phase(), Phase::Choosing);
    assert_eq!(shop.tab().library.phase(), Phase::Choosing);
}

#[test]
fn a_new_book_that_is_asked_for_early_is_added_once_it_can_be() {
    let shop = Shop::new();
    let tab = Tab {
        library: Library::new(Rc::clone(&shop.phone) as Rc<dyn Device>),
        screen: RefCell::new(None),
        storage: shop.storage.clone(),
    };
    tab.library.start(shop.storage.clone());
    tab.start_empty();
    assert_eq!((tab.library.phase(), tab.library.leaving()), (Phase::Choosing, Some(Leaving::Switch)));
    tab.library.can_change(|_| {}, empty);
    tab.run();
    assert_eq!((listed(&tab), tab.library.leaving()), (vec!["My book".to_string()], None));
    assert!(tab.open().is_some());
}

#[test]
fn t05_what_another_tab_saves_while_a_book_opens_is_in_both() {
    let shop = Shop::new();
    let fast = shop.tab();
    fast.start_empty();
    let slow = Tab {
        library: Library::new(Rc::clone(&shop.phone) as Rc<dyn Device>),
        screen: RefCell::new(None),
        storage: shop.storage.clone(),
    };
    slow.library.start(shop.storage.clone());
    shop.storage.run();
    assert!(slow.library.opened_id().is_some(), "read, and not on the screen yet");
    fast.put(ingredient(1, "Pear"));
    slow.hears(Notice::Saved { book: fast.open().unwrap(), revision: 2 });
    assert_eq!(slow.book(), fast.book());
    assert_eq!(slow.book().name(ingredient_key(1)), "Pear");
}

#[test]
fn a_new_book_on_a_full_device_says_what_was_not_done_and_the_open_book_stays() {
    let shop = Shop::new();
    let tab = shop.tab();
    tab.start_empty();
    tab.put(ingredient(1, "Pear"));
    let open = tab.open();
    fill(&shop.storage);
    tab.go(Way::Add(Box::new(Book::new(Settings::new("Bridge bar")))));
    let said = "“Bridge bar” was not added. This device is out of space. Delete what you do not need, then try again.";
    assert_eq!(tab.library.refused().as_deref(), Some(said));
    assert_eq!((tab.open(), listed(&tab)), (open, vec!["My book".to_string()]));
    assert!(tab.is_saved());
    // Once something could be saved, it no longer holds.
    tab.put(ingredient(2, "Mint"));
    assert_eq!(tab.library.refused(), None);
    // Nor once it is tried again.
    fill(&shop.storage);
    tab.start_empty();
    assert!(tab.library.refused().is_some());
    tab.start_empty();
    assert_eq!((tab.library.refused(), listed(&tab).len()), (None, 2));
}

#[test]
fn a_deletion_that_fails_says_so_and_the_book_stays_open() {
    let shop = Shop::new();
    let tab = shop.tab();
    tab.start_empty();
    let id = tab.open().unwrap();
    fill(&shop.storage);
    tab.go(Way::Delete(id));
    assert_eq!(
        tab.library.refused().as_deref(),
        Some("“My book” was not deleted. This device is out of space. Try again.")
    );
    assert_eq!(tab.open(), Some(id));
    tab.go(Way::Delete(id));
    assert_eq!((tab.library.phase(), tab.library.refused(), listed(&tab).len()), (Phase::Choosing, None, 0));
}

#[test]
fn a_book_that_another_tab_deleted_says_so_and_can_be_kept_as_a_new_one() {
    let shop = Shop::new();
    let (here, there) = (shop.tab(), shop.tab());
    here.start_empty();
    let id = here.open().unwrap();
    here.put(ingredient(1, "Pear"));
    there.go(Way::Open(id));
    there.go(Way::Delete(id));
    here.hears(Notice::Deleted { book: id });
    assert_eq!(here.fault(), Some(Fault::Deleted));
    here.put(ingredient(2, "Mint"));
    assert_eq!(here.fault(), Some(Fault::Deleted), "a try to save says the same");
    let book = here.book();
    here.library.keep_as_new(book.clone());
    here.run();
    assert_ne!(here.open(), Some(id));
    assert_eq!(here.book(), book);
    assert!(here.is_saved());
}

#[test]
fn a_book_that_is_gone_without_another_tab_was_not_deleted_there() {
    let shop = Shop::new();
    let tab = shop.tab();
    tab.start_empty();
    let id = tab.open().unwrap();
    let storage = shop.storage.clone();
    shop.storage.spawn(async move { storage.delete(id, &[]).await.unwrap() });
    shop.storage.run();
    tab.put(ingredient(1, "Pear"));
    assert_eq!(tab.fault(), Some(Fault::Gone));
}

#[test]
fn a_newer_version_stops_saving_and_says_so() {
    let shop = Shop::new();
    let tab = shop.tab();
    tab.start_empty();
    tab.hears(Notice::NewerVersionOpen);
    assert_eq!(tab.fault(), Some(Fault::NewerVersionOpen));
}

#[test]
fn the_demo_is_opened_from_the_shelf_where_it_is_there() {
    let shop = Shop::new();
    let tab = shop.tab();
    let mut settings = Settings::new("Demo");
    settings.invented = true;
    for _ in 0..2 {
        tab.library.open_demo(Ok(Book::new(settings.clone())));
        tab.run();
    }
    assert_eq!(listed(&tab), ["Demo"]);
    tab.library.open_demo(Err("No demo.".into()));
    assert_eq!(tab.library.refused().as_deref(), Some("No demo."));
}

/// The two files beside the app.
#[test]
fn t17_each_demo_is_a_book_of_its_own() {
    let shop = Shop::new();
    let tab = shop.tab();
    let demo = |name: &str| Ok(Book::new(Settings { invented: true, ..Settings::new(name) }));
    for name in ["Marrowgate Juice Hall", "Kastanje Saftbar", "Marrowgate Juice Hall"] {
        tab.library.open_demo(demo(name));
        tab.run();
    }
    let mut books = listed(&tab);
    books.sort();
    assert_eq!(books, ["Kastanje Saftbar", "Marrowgate Juice Hall"]);
}
