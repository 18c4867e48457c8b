//! Tabs learn of each other's saves.

use brimwright::book::{Edit, IngredientId, Key};
use brimwright::store::{Backing, IndexedDb, Notice, Shelf};
use wasm_bindgen_test::wasm_bindgen_test;

use crate::book::{ID, NOON, Notices, fresh, hearing_tab, ingredient, stocked};

#[wasm_bindgen_test]
async fn two_tabs_see_each_others_saves() {
    drop(stocked("tabs").await);
    let (_left_shelf, left) = hearing_tab("test-tabs").await;
    let (_right_shelf, right) = hearing_tab("test-tabs").await;
    left.put(ingredient(1, "Pear"));
    right.reached(2).await;
    assert_eq!(right.book(), left.book());
    right.edit(&Edit::Remove(Key::Ingredient(IngredientId::from_random(2))));
    left.reached(3).await;
    assert_eq!(left.book(), right.book());
}

#[wasm_bindgen_test]
async fn t03_edits_made_in_two_tabs_at_once_both_stand() {
    drop(stocked("tabs-at-once").await);
    let (_left_shelf, left) = hearing_tab("test-tabs-at-once").await;
    let (_right_shelf, right) = hearing_tab("test-tabs-at-once").await;
    for id in 10..30 {
        left.put(ingredient(id, "Pear"));
        right.put(ingredient(id + 100, "Basil"));
    }
    left.settled().await;
    right.settled().await;
    let (shelf, third) = hearing_tab("test-tabs-at-once").await;
    for id in (10..30).chain(110..130) {
        let key = Key::Ingredient(IngredientId::from_random(id));
        assert!(third.book().contains(key), "{key} is lost");
    }
    drop(shelf);
}

#[wasm_bindgen_test]
async fn other_tabs_are_told_of_saves_and_deletions() {
    let name = fresh("notices").await;
    let notices = Notices::default();
    let _hearing = IndexedDb::open(&name, notices.hear()).await.unwrap();
    let shelf = Shelf::new(IndexedDb::open(&name, |_| {}).await.unwrap());
    shelf.create(ID, &crate::book::book(), NOON).await.unwrap();
    assert_eq!(notices.next().await, Notice::Saved { book: ID, revision: 1 });
    shelf.backing().delete(ID, &[]).await.unwrap();
    assert_eq!(notices.next().await, Notice::Deleted { book: ID });
}
