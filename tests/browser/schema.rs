//! The shape of the database, and versions of it.

use brimwright::store::{Backing, Fault, IndexedDb};
use wasm_bindgen_test::wasm_bindgen_test;

use crate::book::{ID, NOON, Tab, fresh, shelf, stocked};
use crate::raw::{Misbehaving, databases, dump, open, put};

async fn opened(name: &str) -> Result<(), Fault> {
    IndexedDb::open(name, |_| {}).await.map(|_| ())
}

#[wasm_bindgen_test]
async fn nothing_becomes_version_5() {
    let name = fresh("upgrade").await;
    assert_eq!(opened(&name).await, Ok(()));
    assert_eq!(
        dump(&name).await,
        [
            "version 5",
            "books by id",
            "rows by book,key",
            "rows.by-revision by book,revision",
            "slips by drawer,book,id"
        ]
    );
}

#[wasm_bindgen_test]
async fn older_versions_keep_every_row() {
    for (behind, version) in [(4, "version 1"), (3, "version 2"), (2, "version 3"), (1, "version 4")] {
        let name = fresh("older").await;
        {
            let _behind = Misbehaving::versions_behind(behind);
            assert_eq!(opened(&name).await, Ok(()));
        }
        put(&name, "books", r#"{"id":"b1","name":"Corner bar","invented":true,"revision":1}"#).await;
        let row = r#"{"book":"b1","key":"ingredient:1","revision":1,"grew-from":0,"record":{"name":"Apple"}}"#;
        put(&name, "rows", row).await;
        let before = dump(&name).await;
        assert_eq!(before[0], version);
        assert_eq!(opened(&name).await, Ok(()));
        let after = dump(&name).await;
        assert_eq!(after[0], "version 5");
        // The store of slips came with version 4.
        let slips = |line: &&String| *line == "slips by drawer,book,id";
        assert_eq!(
            (before.iter().filter(slips).count(), after.iter().filter(slips).count()),
            (usize::from(behind == 1), 1)
        );
        let others = |dump: &[String]| dump[1..].iter().filter(|line| !slips(line)).cloned().collect::<Vec<_>>();
        assert_eq!(others(&after), others(&before));
        assert!(after.iter().any(|line| line.contains("Apple")), "{after:?}");
    }
}

#[wasm_bindgen_test]
async fn version_5_opens_untouched() {
    drop(stocked("reopen").await);
    let before = dump("test-reopen").await;
    assert_eq!(opened("test-reopen").await, Ok(()));
    assert_eq!(dump("test-reopen").await, before);
}

#[wasm_bindgen_test]
async fn a_newer_database_is_refused_and_left_alone() {
    let name = fresh("newer").await;
    open(&name, 6).await.close();
    let before = dump(&name).await;
    assert_eq!(opened(&name).await, Err(Fault::NewerSchema));
    assert_eq!(before, ["version 6", "later by null", "\"kept\""]);
    assert_eq!(dump(&name).await, before);
}

#[wasm_bindgen_test]
async fn a_failed_upgrade_leaves_nothing_half_made() {
    let name = fresh("failed-upgrade").await;
    {
        let _failing = Misbehaving::failing_upgrade();
        assert_eq!(opened(&name).await, Err(Fault::Closed));
    }
    assert!(!databases().await.contains(&name));
    assert_eq!(opened(&name).await, Ok(()));
}

#[wasm_bindgen_test]
async fn an_older_tab_that_holds_on_is_named_and_the_upgrade_comes_later() {
    drop(stocked("blocked").await);
    let older = open("test-blocked", 5).await;
    {
        let _ahead = Misbehaving::one_version_ahead();
        assert_eq!(opened("test-blocked").await, Err(Fault::HeldByOlder));
    }
    older.close();
    // What was blocked then opens by itself and is closed again: nobody holds on.
    open("test-blocked", 7).await.close();
    let dump = dump("test-blocked").await;
    assert_eq!(dump[0], "version 7");
    assert!(dump.iter().any(|line| line.contains("Apple")), "the books are all there");
}

#[wasm_bindgen_test]
async fn a_browser_without_a_database_is_named() {
    let _without = Misbehaving::without_database();
    assert_eq!(opened("test-none").await, Err(Fault::NoStorage));
}

#[wasm_bindgen_test]
async fn whole_books_are_written_to_the_disk_and_edits_at_once() {
    let name = fresh("durability").await;
    let shelf = shelf(&name).await;
    let counting = Misbehaving::counting_writes();
    shelf.create(ID, &crate::book::book(), NOON).await.unwrap();
    assert_eq!((counting.count(), counting.durabilities()), (1, vec!["strict".to_string()]));
    let tab = Tab::open(&shelf).await;
    tab.put(crate::book::ingredient(1, "Pear"));
    tab.settled().await;
    assert_eq!((counting.count(), counting.durabilities().len()), (2, 1));
    shelf.backing().delete(ID, &[]).await.unwrap();
    assert_eq!((counting.count(), counting.durabilities().len()), (3, 2));
}
