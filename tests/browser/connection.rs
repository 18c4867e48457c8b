//! A connection may go at any time.

use brimwright::book::Edit;
use brimwright::store::{Fault, IndexedDb, Notice, Saving, Shelf};
use wasm_bindgen_test::wasm_bindgen_test;

use crate::book::{ID, NOON, Notices, Tab, book, fresh, ingredient, stocked};
use crate::raw::{Misbehaving, delete_database, dump, open};

#[wasm_bindgen_test]
async fn t10_a_closed_connection_is_opened_again() {
    let shelf = stocked("closed").await;
    let tab = Tab::open(&shelf).await;
    shelf.backing().close();
    tab.put(ingredient(1, "Pear"));
    assert_eq!(tab.settled().await, Saving::Saved { revision: 2 });
    assert_eq!(Tab::open(&shelf).await.book(), tab.book());
}

#[wasm_bindgen_test]
async fn t10_a_connection_closed_unnoticed_is_opened_again_within_a_second() {
    let closing = Misbehaving::closing();
    let shelf = stocked("closed-unnoticed").await;
    let tab = Tab::open(&shelf).await;
    closing.close_all();
    let before = js_sys::Date::now();
    tab.put(ingredient(1, "Pear"));
    assert_eq!(tab.settled().await, Saving::Saved { revision: 2 });
    assert!(js_sys::Date::now() - before < 1000.0);
}

#[wasm_bindgen_test]
async fn t04_a_newer_version_gets_the_database_and_the_old_tab_stops_saving() {
    let name = fresh("superseded").await;
    let notices = Notices::default();
    let shelf = Shelf::new(IndexedDb::open(&name, notices.hear()).await.unwrap());
    shelf.create(ID, &book(), NOON).await.unwrap();
    let tab = Tab::open(&shelf).await;
    let newer = open(&name, 6).await;
    assert_eq!(notices.next().await, Notice::NewerVersionOpen);
    tab.put(ingredient(1, "Pear"));
    assert_eq!(tab.settled().await, Saving::NotSaved { waiting: 1, fault: Fault::NewerVersionOpen });
    newer.close();
    assert!(!dump(&name).await.iter().any(|row| row.contains("Pear")), "the newer's data is left alone");
}

#[wasm_bindgen_test]
async fn t08_a_database_deleted_under_the_app_is_no_newer_version() {
    let shelf = stocked("evicted").await;
    let tab = Tab::open(&shelf).await;
    delete_database("test-evicted").await;
    tab.put(ingredient(1, "Pear"));
    assert_eq!(tab.settled().await, Saving::NotSaved { waiting: 1, fault: Fault::Gone });
    assert_eq!(shelf.books().await, Ok(Vec::new()));
}

#[wasm_bindgen_test]
async fn t06_a_full_disk_keeps_the_edit_waiting_and_the_old_data_whole() {
    let shelf = stocked("full").await;
    let tab = Tab::open(&shelf).await;
    let before = dump("test-full").await;
    {
        let _full = Misbehaving::full();
        tab.edit(&Edit::Together(vec![Edit::Put(ingredient(1, "Pear")), Edit::Put(ingredient(2, "Basil"))]));
        assert_eq!(tab.settled().await, Saving::NotSaved { waiting: 1, fault: Fault::Full });
    }
    assert_eq!(dump("test-full").await, before, "the put before the refused one is undone");
    tab.sync.retry();
    tab.reached(2).await;
    assert_eq!(Tab::open(&crate::book::shelf("test-full").await).await.book(), tab.book());
}

#[wasm_bindgen_test]
async fn t10_a_transaction_that_the_browser_aborts_is_tried_once_more() {
    let shelf = stocked("aborted").await;
    let tab = Tab::open(&shelf).await;
    let aborting = Misbehaving::aborting_once();
    // Its row and its entry: all is put when it aborts.
    tab.put(ingredient(1, "Pear"));
    assert_eq!(tab.settled().await, Saving::Saved { revision: 2 });
    assert_eq!(aborting.count(), 4);
    assert_eq!(Tab::open(&shelf).await.book(), tab.book());
}

#[wasm_bindgen_test]
async fn the_browser_is_asked_to_keep_real_books_once_and_not_waited_for() {
    let asking = Misbehaving::never_answering_persist();
    let shelf = stocked("persist").await;
    let demo = brimwright::book::BookId::from_random(0xde);
    let tab = Tab::open(&shelf).await;
    for name in ["Pear", "Quince"] {
        tab.put(ingredient(1, name));
        tab.settled().await;
    }
    assert_eq!(tab.sync.saving(), Saving::Saved { revision: 3 });
    assert_eq!(asking.count(), 1);

    let other = crate::book::shelf(&fresh("persist-not").await).await;
    let mut invented = brimwright::book::Settings::new("Invented");
    invented.invented = true;
    other.create(demo, &brimwright::book::Book::new(invented), NOON).await.unwrap();
    assert_eq!(asking.count(), 1, "not for invented data");
}
