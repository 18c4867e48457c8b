use super::*;
use crate::book::Settings;
use crate::words;

/// A tab with a change that could not be saved.
fn unsaved(shop: &Shop) -> Tab {
    let tab = shop.tab();
    tab.start_empty();
    fill(&shop.storage);
    tab.put(ingredient(1, "Pear"));
    assert_eq!(tab.fault(), Some(Fault::Full));
    tab
}

/// Asks to go a way, on a device that is still full.
fn asks(shop: &Shop, tab: &Tab, way: Way) {
    fill(&shop.storage);
    let leaving = way.leaving();
    tab.go(way);
    assert_eq!(tab.library.leaving(), Some(leaving));
}

#[test]
fn every_way_out_is_asked_about_while_something_is_not_saved() {
    let shop = Shop::new();
    let tab = unsaved(&shop);
    let id = tab.open().unwrap();
    let other = Box::new(Book::new(crate::book::Settings::new("Other")));
    for way in [Way::Close, Way::Open(id), Way::Add(other), Way::Delete(id), Way::Update] {
        asks(&shop, &tab, way);
        assert_eq!((tab.open(), shop.phone.updated.get()), (Some(id), false));
        tab.library.stay();
        assert_eq!(tab.library.leaving(), None);
    }
    assert_eq!(tab.book().name(ingredient_key(1)), "Pear");
    assert_eq!(
        words::keeping::not_saved(&tab.library.saving()).as_deref(),
        Some("Your changes are not saved. If you leave now, you lose them.")
    );
}

#[test]
fn what_can_be_saved_after_all_is_saved_and_the_way_gone() {
    let shop = Shop::new();
    let tab = unsaved(&shop);
    asks(&shop, &tab, Way::Close);
    // Room was made.
    tab.library.retry();
    tab.run();
    assert_eq!((tab.library.phase(), tab.library.leaving()), (Phase::Choosing, None));
    assert_eq!(shop.tab_of_only_book().name(ingredient_key(1)), "Pear");
}

#[test]
fn what_is_on_its_way_is_waited_for() {
    let shop = Shop::new();
    let tab = shop.tab();
    tab.start_empty();
    tab.does("An edit", &Edit::Put(ingredient(1, "Pear")));
    assert!(tab.library.at_risk());
    tab.library.go(Way::Close);
    assert_eq!(tab.library.leaving(), Some(Leaving::Close), "not gone before it is saved");
    tab.run();
    assert_eq!(tab.library.phase(), Phase::Choosing);
    assert_eq!(shop.tab_of_only_book().name(ingredient_key(1)), "Pear");
}

#[test]
fn leaving_anyway_leaves() {
    let shop = Shop::new();
    let tab = unsaved(&shop);
    asks(&shop, &tab, Way::Update);
    tab.library.leave_anyway();
    assert!(shop.phone.updated.get());
    asks(&shop, &tab, Way::Close);
    fill(&shop.storage);
    tab.library.leave_anyway();
    tab.run();
    assert_eq!((tab.library.phase(), tab.library.leaving()), (Phase::Choosing, None));
    assert!(!tab.library.at_risk());
}

#[test]
fn nothing_is_asked_where_everything_is_saved() {
    let shop = Shop::new();
    let tab = shop.tab();
    tab.start_empty();
    tab.put(ingredient(1, "Pear"));
    tab.library.go(Way::Update);
    assert_eq!((tab.library.leaving(), shop.phone.updated.get()), (None, true));
    assert_eq!(words::keeping::not_saved(&tab.library.saving()), None);
}

#[test]
fn a_book_that_is_only_on_the_screen_is_not_left_unasked() {
    let shop = Shop::new();
    let tab = shop.tab();
    tab.start_empty();
    tab.hears(Notice::Deleted { book: tab.open().unwrap() });
    tab.go(Way::Close);
    assert_eq!(tab.library.leaving(), Some(Leaving::Close));
    assert_eq!(
        words::keeping::not_saved(&tab.library.saving()).as_deref(),
        Some("This book is on this screen only. If you leave now, you lose the book.")
    );
}

impl Shop {
    /// The only book there is, as a new tab opens it.
    fn tab_of_only_book(&self) -> Book {
        self.tab().book()
    }
}

#[test]
fn t02_what_a_tab_left_is_saved_where_its_book_opens() {
    let shop = Shop::new();
    let tab = shop.tab();
    tab.start_empty();
    tab.does("An edit", &Edit::Put(ingredient(1, "Carrots")));
    tab.library.write_journal();
    shop.storage.end_all_tabs();
    let tab = shop.tab();
    assert_eq!(tab.book().name(ingredient_key(1)), "Carrots");
    assert!(tab.is_saved());
    assert_eq!(shop.storage.journals(), [[""; 0]; 0]);
}

#[test]
fn t02_what_a_tab_left_is_not_called_saved_before_it_is() {
    let shop = Shop::new();
    let tab = shop.tab();
    tab.start_empty();
    fill(&shop.storage);
    tab.put(ingredient(1, "Carrots"));
    tab.library.write_journal();
    shop.storage.end_all_tabs();
    fill(&shop.storage);
    let tab = shop.tab();
    assert_eq!((tab.fault(), tab.library.at_risk()), (Some(Fault::Full), true));
    assert_eq!(tab.book().name(ingredient_key(1)), "Carrots");
    // Who leaves it anyway was told that it is lost.
    tab.library.write_journal();
    fill(&shop.storage);
    tab.go(Way::Close);
    tab.library.leave_anyway();
    tab.run();
    assert_eq!(shop.storage.journals(), [[""; 0]; 0]);
}

#[test]
fn a_list_that_cannot_be_read_leaves_the_open_book_on_the_screen() {
    let shop = Shop::new();
    let tab = shop.tab();
    tab.start_empty();
    let (open, other) = (tab.open().expect("a book is open"), BookId::from_random(77));
    shop.storage.list_fails(Some(Fault::NewerVersionOpen));
    fill(&shop.storage);
    tab.put(ingredient(1, "Pear"));
    tab.hears(Notice::Saved { book: other, revision: 1 });
    tab.hears(Notice::Deleted { book: other });
    assert_eq!((tab.open(), tab.library.at_risk()), (Some(open), true));
    // It stands in the way once no book is open.
    tab.go(Way::Close);
    tab.library.leave_anyway();
    tab.run();
    assert_eq!(tab.library.phase(), Phase::Stuck(Fault::NewerVersionOpen));
}

#[test]
fn what_is_typed_while_a_book_is_left_is_saved_or_asked_about() {
    let ways = |other| [Way::Close, Way::Open(other), Way::Add(Box::new(Book::new(Settings::new("Bridge bar"))))];
    for place in 0..3 {
        for full in [false, true] {
            let shop = Shop::new();
            let tab = shop.tab();
            tab.start_empty();
            let other = tab.open().expect("a book is open");
            tab.start_empty();
            let open = tab.open().expect("a book is open");
            let way = ways(other)[place].clone();
            tab.library.go(way);
            // It is on its way; the book is still on the screen.
            shop.storage.run_turns(1);
            assert_eq!(tab.open(), Some(open), "{place}");
            if full {
                fill(&shop.storage);
            }
            tab.does("An edit", &Edit::Put(ingredient(1, "Pear")));
            tab.run();
            if full {
                assert_eq!((tab.open(), tab.library.leaving().is_some()), (Some(open), true), "{place}");
                tab.library.stay();
                tab.library.retry();
                tab.run();
            }
            tab.go(Way::Open(open));
            assert_eq!(tab.book().name(ingredient_key(1)), "Pear", "{place} {full}");
        }
    }
}
