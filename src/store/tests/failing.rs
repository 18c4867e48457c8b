use super::*;
use crate::book::{Applied, Key};
use crate::store::{Drawer, Durability, Fault, Listed, Slip};

const NOTHING_LOST: &str = "every edit is stored";

#[test]
fn a_created_book_opens_as_it_was_and_is_listed() {
    let storage = storage();
    assert_eq!(stored(&storage), book());
    let listed = run(&storage, |shelf| async move { shelf.books().await }).unwrap();
    let [Listed::Book(entry)] = &listed[..] else { panic!("{listed:?}") };
    assert_eq!((entry.id, entry.name.as_str(), entry.invented, entry.revision), (ID, "Corner bar", false, 1));
}

#[test]
fn a_book_is_not_created_over_another() {
    let storage = storage();
    let empty = Book::new(Settings::new("Empty"));
    let refused = run(&storage, |shelf| async move { shelf.create(ID, &empty, NOON).await });
    assert_eq!(refused, Err(Fault::Behind));
    assert_eq!(stored(&storage), book());
}

#[test]
fn edits_are_saved_in_order() {
    let storage = storage();
    let tab = Tab::open(&storage);
    let before = storage.commits();
    for record in [ingredient(1, "Pear"), ingredient(3, "Kale"), ingredient(1, "Quince")] {
        tab.put(record);
        storage.run();
    }
    assert_eq!(storage.commits() - before, 3);
    assert_eq!(stored(&storage), tab.book(), "{NOTHING_LOST}");
    let row = |key| Row::from_text(&storage.row(ID, key).unwrap()).unwrap();
    assert_eq!((row("ingredient:1").revision, row("ingredient:1").grew_from), (4, 2));
    assert_eq!((row("ingredient:3").revision, row("ingredient:3").grew_from), (3, 0));
    assert_eq!((row("ingredient:2").revision, row("ingredient:2").grew_from), (1, 0));
    assert_eq!(tab.told().last(), Some(&Saving::Saved { revision: 4 }));
}

#[test]
fn edits_that_wait_are_one_transaction() {
    let storage = storage();
    let tab = Tab::open(&storage);
    let before = storage.commits();
    tab.put(ingredient(1, "Pear"));
    tab.put(ingredient(3, "Kale"));
    tab.put(ingredient(1, "Quince"));
    assert_eq!(tab.sync.saving(), Saving::Saving { waiting: 3 });
    storage.run();
    assert_eq!(storage.commits() - before, 1);
    assert_eq!(stored(&storage), tab.book(), "{NOTHING_LOST}");
    let row = Row::from_text(&storage.row(ID, "ingredient:1").unwrap()).unwrap();
    assert_eq!((row.revision, row.grew_from), (2, 1));
    assert_eq!(tab.told().last(), Some(&Saving::Saved { revision: 2 }));
}

#[test]
fn edits_after_a_lost_answer_of_several_are_no_conflict_with_oneself() {
    let storage = storage();
    let tab = Tab::open(&storage);
    storage.lose_next_answer(Fault::Closed);
    tab.put(ingredient(1, "P"));
    tab.put(ingredient(1, "Pe"));
    storage.run();
    assert_eq!(tab.sync.saving(), Saving::NotSaved { waiting: 2, fault: Fault::Closed });
    tab.put(ingredient(1, "Pea"));
    tab.put(ingredient(1, "Pear"));
    storage.run();
    assert_eq!(tab.sync.saving(), Saving::Saved { revision: 3 });
    assert_eq!(stored(&storage), tab.book(), "{NOTHING_LOST}");
}

#[test]
fn saved_is_not_said_before_it_is_written() {
    let storage = storage();
    let tab = Tab::open(&storage);
    storage.fail_next(Fault::Full);
    tab.put(ingredient(1, "Pear"));
    storage.run();
    assert!(!tab.told().iter().any(|saving| matches!(saving, Saving::Saved { .. })));
}

#[test]
fn an_edit_of_several_records_is_one_transaction() {
    let storage = storage();
    let tab = Tab::open(&storage);
    let before = storage.commits();
    tab.edit(&Edit::Together(vec![Edit::Put(ingredient(3, "Kale")), Edit::Put(drink(1, &[1, 3]))]));
    storage.run();
    assert_eq!(storage.commits() - before, 1);
    assert_eq!(stored(&storage), tab.book());
}

#[test]
fn a_removed_record_leaves_a_row_without_one_and_may_come_back() {
    let storage = storage();
    let tab = Tab::open(&storage);
    let key = Key::Ingredient(IngredientId::from_random(2));
    tab.edit(&Edit::Remove(key));
    storage.run();
    assert_eq!(
        storage.row(ID, "ingredient:2").unwrap(),
        r#"{"book":"b1","key":"ingredient:2","revision":2,"grew-from":1,"record":null}"#
    );
    assert!(!stored(&storage).contains(key));
    tab.put(ingredient(2, "Mint"));
    storage.run();
    assert_eq!(stored(&storage), book());
}

#[test]
fn t06_what_could_not_be_saved_waits_and_goes_first_at_the_next_edit() {
    let storage = storage();
    let tab = Tab::open(&storage);
    storage.fail_next(Fault::Full);
    tab.put(ingredient(1, "Pear"));
    storage.run();
    let not_saved = Saving::NotSaved { waiting: 1, fault: Fault::Full };
    assert_eq!(tab.told(), [Saving::Saving { waiting: 1 }, not_saved]);
    assert_eq!(stored(&storage), book(), "nothing is half written");
    tab.put(drink(2, &[1]));
    storage.run();
    assert_eq!(
        tab.told(),
        [Saving::Saving { waiting: 2 }, Saving::Saving { waiting: 1 }, Saving::Saved { revision: 3 }]
    );
    assert_eq!(stored(&storage), tab.book(), "{NOTHING_LOST}");
}

#[test]
fn t06_what_could_not_be_saved_is_tried_again_on_demand() {
    let storage = storage();
    let tab = Tab::open(&storage);
    storage.fail_next(Fault::Full);
    tab.put(ingredient(1, "Pear"));
    storage.run();
    tab.sync.retry();
    storage.run();
    assert_eq!(tab.sync.saving(), Saving::Saved { revision: 2 });
    assert_eq!(stored(&storage), tab.book(), "{NOTHING_LOST}");
}

#[test]
fn a_lost_answer_is_no_conflict_with_oneself() {
    let storage = storage();
    let tab = Tab::open(&storage);
    storage.lose_next_answer(Fault::Closed);
    tab.put(ingredient(1, "Pear"));
    storage.run();
    assert_eq!(tab.sync.saving(), Saving::NotSaved { waiting: 1, fault: Fault::Closed });
    tab.put(ingredient(1, "Quince"));
    storage.run();
    assert_eq!(tab.sync.saving(), Saving::Saved { revision: 3 });
    assert_eq!(stored(&storage), tab.book(), "{NOTHING_LOST}");
}

#[test]
fn steps_without_an_edit_are_saved_and_leave_the_book_as_it_is() {
    let storage = storage();
    let (tab, other) = (Tab::open(&storage), Tab::open(&storage));
    let step = Slip { drawer: Drawer::Steps, book: ID, id: "1".into(), text: Some("a step".into()) };
    let change = Change::new("", NOON, &tab.book(), &Applied::nothing());
    // Also where another tab saved meanwhile, of which this one has not heard, and where the answer
    // is lost.
    other.put(ingredient(2, "Basil"));
    storage.run();
    storage.lose_next_answer(Fault::Closed);
    tab.sync.save(change.beside(vec![step.clone()], Durability::Relaxed));
    storage.run();
    tab.sync.retry();
    storage.run();
    assert!(matches!(tab.sync.saving(), Saving::Saved { .. }), "{:?}", tab.sync.saving());
    assert_eq!(open(&storage).1.steps(), [step]);
    assert_eq!(stored(&storage), other.book());
}

#[test]
fn an_edit_that_touches_nothing_is_not_saved() {
    let storage = storage();
    let tab = Tab::open(&storage);
    let before = storage.commits();
    tab.edit(&Edit::Together(Vec::new()));
    storage.run();
    assert_eq!(storage.commits(), before);
}

#[test]
fn the_list_follows_the_name() {
    let storage = storage();
    let tab = Tab::open(&storage);
    let mut settings = Settings::new("Bridge bar");
    settings.invented = true;
    tab.put(Record::Settings(Box::new(settings)));
    storage.run();
    let listed = run(&storage, |shelf| async move { shelf.books().await }).unwrap();
    let [Listed::Book(entry)] = &listed[..] else { panic!("{listed:?}") };
    assert_eq!((entry.name.as_str(), entry.invented, entry.revision), ("Bridge bar", true, 2));
}

#[test]
fn the_list_says_how_many_drinks_a_book_has_and_when_it_was_changed() {
    let listed = |storage: &InMemory| {
        let listed = run(storage, |shelf| async move { shelf.books().await }).unwrap();
        let [Listed::Book(entry)] = &listed[..] else { panic!("{listed:?}") };
        (entry.drinks, entry.changed)
    };
    let storage = storage();
    assert_eq!(listed(&storage), (Some(1), Some(NOON)));
    let tab = Tab::open(&storage);
    tab.put(drink(2, &[1]));
    storage.run();
    assert_eq!(listed(&storage), (Some(2), Some(NOON + 60_000)));
    tab.edit(&Edit::Remove(Key::Drink(DrinkId::from_random(1))));
    storage.run();
    assert_eq!(listed(&storage), (Some(1), Some(NOON + 60_000)));
    // An entry of the time before still reads.
    storage.set_entry(ID, r#"{"id":"b1","name":"Corner bar","invented":false,"revision":3}"#);
    assert_eq!(listed(&storage), (None, None));
    assert_eq!(stored(&storage), tab.book());
}

#[test]
fn a_deleted_book_is_gone_and_edits_of_it_wait() {
    let storage = storage();
    let tab = Tab::open(&storage);
    run(&storage, |shelf| async move { shelf.backing().delete(ID, &[]).await }).unwrap();
    tab.put(ingredient(1, "Pear"));
    storage.run();
    assert_eq!(tab.sync.saving(), Saving::NotSaved { waiting: 1, fault: Fault::Gone });
    assert_eq!(run(&storage, |shelf| async move { shelf.open(ID).await.map(|_| ()) }), Err(Fault::Gone));
    assert_eq!(run(&storage, |shelf| async move { shelf.books().await }), Ok(Vec::new()));
}
