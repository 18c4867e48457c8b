//! Books are kept whole.

use brimwright::book::{Edit, IngredientId, Key};
use brimwright::store::{Backing, Cause, Drawer, Fault, Listed, Row, Saving, Slip};
use wasm_bindgen_test::wasm_bindgen_test;

use crate::book::{ID, NOON, Tab, book, ingredient, shelf, stocked};
use crate::raw::{Misbehaving, dump, put};

#[wasm_bindgen_test]
async fn a_saved_book_opens_as_it_was() {
    let shelf = stocked("same").await;
    let tab = Tab::open(&shelf).await;
    assert_eq!(tab.book(), book());
    tab.put(ingredient(3, "Käse, 芽, \u{1f34e} and \"quotes\"\n"));
    assert_eq!(tab.settled().await, Saving::Saved { revision: 2 });
    let again = crate::book::shelf("test-same").await;
    assert_eq!(Tab::open(&again).await.book(), tab.book());
    let listed = again.books().await.unwrap();
    let [Listed::Book(entry)] = &listed[..] else { panic!("{listed:?}") };
    assert_eq!((entry.id, entry.name.as_str(), entry.revision), (ID, "Corner bar", 2));
}

#[wasm_bindgen_test]
async fn an_edit_is_one_transaction_however_many_records_it_touches() {
    let shelf = stocked("one-transaction").await;
    let tab = Tab::open(&shelf).await;
    let count = Misbehaving::counting_writes();
    tab.edit(&Edit::Together((3..40).map(|id| Edit::Put(ingredient(id, "Kale"))).collect()));
    tab.settled().await;
    assert_eq!(count.count(), 1);
    // What waits goes in one transaction, too.
    tab.put(ingredient(1, "Pear"));
    tab.put(ingredient(1, "Quince"));
    assert_eq!(tab.settled().await, Saving::Saved { revision: 3 });
    assert_eq!(count.count(), 2);
}

#[wasm_bindgen_test]
async fn what_is_in_conflict_is_not_written_and_everything_else_is() {
    let shelf = stocked("at-odds").await;
    let (left, right) = (Tab::open(&shelf).await, Tab::open(&shelf).await);
    left.put(ingredient(1, "Pear"));
    left.settled().await;
    right.edit(&Edit::Together(vec![Edit::Put(ingredient(1, "Quince")), Edit::Put(ingredient(9, "Beet"))]));
    right.put(ingredient(8, "Kale"));
    let Saving::InConflict { conflicts } = right.settled().await else { panic!("{:?}", right.sync.saving()) };
    assert_eq!(conflicts.len(), 1);
    let mut stored = left.book();
    stored.apply(&Edit::Put(ingredient(8, "Kale"))).unwrap();
    assert_eq!(Tab::open(&shelf).await.book(), stored);
    right.sync.keep_mine(0);
    right.settled().await;
    assert_eq!(Tab::open(&shelf).await.book(), right.book());
}

#[wasm_bindgen_test]
async fn a_book_is_not_created_over_another() {
    let shelf = stocked("create-twice").await;
    let before = dump("test-create-twice").await;
    let other = brimwright::book::Book::new(brimwright::book::Settings::new("Other"));
    assert_eq!(shelf.create(ID, &other, NOON).await, Err(Fault::Behind));
    assert_eq!(dump("test-create-twice").await, before);
}

#[wasm_bindgen_test]
async fn a_removed_record_stays_as_a_row_without_one() {
    let shelf = stocked("tombstone").await;
    let tab = Tab::open(&shelf).await;
    tab.edit(&Edit::Remove(Key::Ingredient(IngredientId::from_random(2))));
    tab.settled().await;
    let stored = shelf.backing().book(ID, 1).await.unwrap();
    let gone = r#"{"book":"b1","key":"ingredient:2","revision":2,"grew-from":1,"record":null}"#;
    assert_eq!(stored.rows, [gone]);
    assert_eq!(Tab::open(&shelf).await.book(), tab.book());
}

#[wasm_bindgen_test]
async fn rows_since_a_revision_are_those_saved_after_it() {
    let shelf = stocked("since").await;
    let other = brimwright::book::BookId::from_random(0xb10);
    shelf.create(other, &book(), NOON).await.unwrap();
    let tab = Tab::open(&shelf).await;
    for (id, name) in [(1, "Pear"), (2, "Basil"), (1, "Quince")] {
        tab.put(ingredient(id, name));
        tab.settled().await;
    }
    let mut counts = Vec::new();
    for revision in 1..=4 {
        let rows = shelf.backing().book(ID, revision).await.unwrap().rows;
        let rows: Vec<Row> = rows.iter().map(|row| Row::from_text(row).unwrap()).collect();
        assert!(rows.iter().all(|row| row.book == ID && row.revision > revision));
        counts.push(rows.len());
    }
    assert_eq!(counts, [2, 2, 1, 0]);
}

#[wasm_bindgen_test]
async fn t07_a_damaged_row_is_kept_to_the_byte_and_reported() {
    let shelf = stocked("damaged").await;
    let whole = r#"{"book":"b1","key":"ingredient:1","revision":1,"grew-from":0,"record":{"ingredi"#;
    let damaged = [
        r#"{"book":"b1","key":"ingredient:1"}"#.to_string(),
        r#"{"book":"b1","key":"ingredient:1","revision":"one","grew-from":0,"record":null}"#.to_string(),
        format!(r#"{{"book":"b1","key":"ingredient:1","revision":1,"grew-from":0,"record":{whole:?}}}"#),
    ];
    for text in damaged {
        put("test-damaged", "rows", &text).await;
        let before = dump("test-damaged").await;
        let Err(Fault::Damaged(damage)) = shelf.open(ID).await.map(|_| ()) else { panic!("{text}") };
        let [Cause::Row { index, .. }] = damage.causes[..] else { panic!("{:?}", damage.causes) };
        assert_eq!(damage.stored.rows[index], text);
        assert!(damage.text().lines().any(|line| line == text));
        assert_eq!(dump("test-damaged").await, before);
    }
}

#[wasm_bindgen_test]
async fn a_deleted_book_leaves_nothing_and_others_alone() {
    let shelf = stocked("delete").await;
    let other = brimwright::book::BookId::from_random(0xb10);
    shelf.create(other, &book(), NOON).await.unwrap();
    let tab = Tab::open(&shelf).await;
    shelf.backing().delete(ID, &[]).await.unwrap();
    assert_eq!(shelf.open(ID).await.map(|_| ()), Err(Fault::Gone));
    assert_eq!(shelf.open(other).await.map(|(book, _)| book), Ok(book()));
    assert!(!dump("test-delete").await.iter().any(|line| line.contains("\"b1\"")));
    tab.put(ingredient(1, "Pear"));
    assert_eq!(tab.settled().await, Saving::NotSaved { waiting: 1, fault: Fault::Gone });
    assert_eq!(shelf.open(ID).await.map(|_| ()), Err(Fault::Gone), "it does not come back by itself");
}

#[wasm_bindgen_test]
async fn slips_are_kept_beside_a_book_and_its_steps_go_with_it() {
    let shelf = stocked("slips").await;
    let other = brimwright::book::BookId::from_random(0xb10);
    let slip =
        |drawer, book, id: &str, text: Option<&str>| Slip { drawer, book, id: id.into(), text: text.map(Into::into) };
    let all = [
        slip(Drawer::Points, ID, "1", Some("a point")),
        slip(Drawer::Steps, ID, "1", Some("a step")),
        slip(Drawer::Steps, ID, "2", Some("another")),
        slip(Drawer::Steps, other, "1", Some("elsewhere")),
    ];
    let backing = shelf.backing();
    backing.file(&all).await.unwrap();
    assert_eq!(backing.slips(Drawer::Steps, Some(ID)).await.as_deref(), Ok(&all[1..3]));
    assert_eq!(backing.slips(Drawer::Steps, None).await.as_deref(), Ok(&all[1..]));
    assert_eq!(backing.slip(Drawer::Points, ID, "1").await, Ok(Some("a point".to_string())));
    backing.file(&[slip(Drawer::Steps, ID, "1", None)]).await.unwrap();
    assert_eq!(backing.slip(Drawer::Steps, ID, "1").await, Ok(None));
    backing.delete(ID, &[slip(Drawer::Points, ID, "2", Some("the last"))]).await.unwrap();
    assert_eq!(shelf.open(ID).await.map(|_| ()), Err(Fault::Gone));
    assert_eq!(backing.slips(Drawer::Steps, None).await.as_deref(), Ok(&all[2..]), "they come back with it");
    assert_eq!(backing.slips(Drawer::Points, None).await.map(|slips| slips.len()), Ok(2));
}

#[wasm_bindgen_test]
async fn each_name_is_a_database_of_its_own() {
    stocked("one").await;
    let other = shelf(&crate::book::fresh("other").await).await;
    assert_eq!(other.books().await, Ok(Vec::new()));
}
