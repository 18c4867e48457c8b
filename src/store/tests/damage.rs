use super::*;
use crate::book::{Key, Refusal};
use crate::exchange::{TakenIn, take_in};
use crate::store::{Cause, Damage, Fault, Listed};
use crate::support::runs::Runs;

const KEY: &str = "ingredient:1";

fn opened(storage: &InMemory) -> Result<Book, Fault> {
    run(storage, |shelf| async move { shelf.open(ID).await.map(|(book, _)| book) })
}

fn damage(storage: &InMemory) -> Damage {
    match opened(storage) {
        Err(Fault::Damaged(damage)) => *damage,
        other => panic!("{other:?}"),
    }
}

/// What is saved of a damaged book can be taken in again, as far as it is whole.
fn repaired(damage: &Damage) -> TakenIn {
    take_in(damage.text()).unwrap_or_else(|error| panic!("{error:?}: {}", damage.text()))
}

#[test]
fn t07_a_row_cut_off_anywhere_is_reported_and_kept() {
    let mut runs = Runs::of("T7");
    let storage = storage();
    let whole = storage.row(ID, KEY).unwrap();
    for length in 0..whole.len() {
        runs.begin();
        let cut = &whole[..length];
        storage.set_row(ID, KEY, cut);
        let damage = damage(&storage);
        let [Cause::Row { index, .. }] = damage.causes[..] else { panic!("{:?}", damage.causes) };
        assert_eq!(damage.stored.rows[index], cut);
        assert!(damage.text().lines().any(|line| line == cut), "the download has it");
        assert_eq!(storage.row(ID, KEY).unwrap(), cut, "and so has the storage");
        runs.held();
        let TakenIn { book, left_out } = repaired(&damage);
        // The drink that is made of it, and the ingredient itself.
        let kept = book.keys().map(|key| key.to_string()).collect::<Vec<_>>();
        assert_eq!((kept, left_out.len()), (vec!["settings".to_string(), "ingredient:2".to_string()], 2));
    }
    storage.set_row(ID, KEY, &whole);
    assert_eq!(opened(&storage), Ok(book()));
}

#[test]
fn t07_no_flipped_bit_stops_the_app_or_is_written_over() {
    let mut runs = Runs::of("T7");
    let storage = storage();
    let (mut flips, mut noticed) = (0, 0);
    for key in ["settings", "ingredient:1", "drink:1"] {
        let whole = storage.row(ID, key).unwrap();
        for (place, byte) in whole.bytes().enumerate() {
            for bit in 0..8 {
                let mut bytes = whole.clone().into_bytes();
                bytes[place] = byte ^ (1 << bit);
                let Ok(flipped) = String::from_utf8(bytes) else { continue };
                flips += 1;
                runs.begin();
                storage.set_row(ID, key, &flipped);
                match opened(&storage) {
                    Err(Fault::Damaged(damage)) => {
                        noticed += 1;
                        assert!(damage.stored.rows.contains(&flipped));
                        let taken = repaired(&damage);
                        let whole = taken.book.records().count();
                        assert!(whole >= 2 && (whole == 4 || !taken.left_out.is_empty()), "{flipped}");
                    }
                    // A letter of a name or a digit of a yield reads as another.
                    Ok(read) => assert_ne!(read, book(), "{flipped}"),
                    Err(other) => panic!("{other:?}"),
                }
                assert_eq!(storage.row(ID, key).unwrap(), flipped);
                runs.held();
            }
        }
        storage.set_row(ID, key, &whole);
    }
    assert!(flips > 1000 && noticed > flips / 2, "{noticed} of {flips} noticed");
}

#[test]
fn t07_rows_of_the_wrong_shape_are_reported_in_words() {
    let storage = storage();
    let cases = [
        ("null", "invalid type: null, expected struct Stored at line 1 column 4"),
        ("7", "invalid type: integer `7`, expected struct Stored at line 1 column 1"),
        (r#"{"book":"b1","key":"spoon:1","revision":1,"grew-from":0,"record":null}"#, "\"spoon:1\" is not a key"),
        (r#"{"book":"b2","key":"ingredient:1","revision":1,"grew-from":0,"record":null}"#, "it is of book b2"),
        (
            r#"{"book":"b1","key":"ingredient:1","revision":1,"grew-from":1,"record":null}"#,
            "revision 1 cannot have grown from 1",
        ),
        (
            r#"{"book":"b1","key":"ingredient:1","revision":1,"grew-from":0,"record":null,"extra":1}"#,
            "unknown field `extra`, expected one of `book`, `key`, `revision`, `grew-from`, `record` at line 1 column 82",
        ),
    ];
    for (text, why) in cases {
        storage.set_row(ID, KEY, text);
        let damage = damage(&storage);
        let [Cause::Row { why: said, .. }] = &damage.causes[..] else { panic!("{:?}", damage.causes) };
        assert_eq!(said, why);
    }
    let other =
        storage.row(ID, "ingredient:2").unwrap().replace("\"key\":\"ingredient:2\"", "\"key\":\"ingredient:1\"");
    storage.set_row(ID, KEY, &other);
    let damage = damage(&storage);
    assert_eq!(damage.causes, [Cause::Row { index: 1, why: "ingredient:2 is stored at ingredient:1".into() }]);
}

#[test]
fn rows_that_make_no_book_are_reported() {
    let storage = storage();
    let removed = r#"{"book":"b1","key":"ingredient:1","revision":1,"grew-from":0,"record":null}"#;
    storage.set_row(ID, KEY, removed);
    let refusal = Refusal::Missing {
        key: Key::Ingredient(IngredientId::from_random(1)),
        needed_by: Some(Key::Drink(DrinkId::from_random(1))),
    };
    assert_eq!(damage(&storage).causes, [Cause::Book(refusal)]);
}

#[test]
fn an_entry_that_does_not_read_is_listed_as_it_is_and_can_be_deleted() {
    let storage = storage();
    let text = r#"{"id":"b1","name":7}"#;
    storage.set_entry(ID, text);
    let listed = run(&storage, |shelf| async move { shelf.books().await }).unwrap();
    assert_eq!(listed, [Listed::Damaged { id: Some(ID), text: text.into() }]);
    let damage = damage(&storage);
    let why = "invalid type: integer `7`, expected a string at line 1 column 19";
    assert_eq!(damage.causes, [Cause::Entry { why: why.into() }]);
    assert_eq!(damage.text().lines().next(), Some(text));
    run(&storage, |shelf| async move { shelf.backing().delete(ID, &[]).await }).unwrap();
    assert_eq!(opened(&storage), Err(Fault::Gone));
}

#[test]
fn an_entry_of_another_revision_than_the_rows_is_reported() {
    let storage = storage();
    storage.set_entry(ID, r#"{"id":"b1","name":"Corner bar","invented":false,"revision":9}"#);
    assert_eq!(damage(&storage).causes, [Cause::Revisions { entry: 9, rows: 1 }]);
}

#[test]
fn nothing_is_saved_over_an_entry_that_does_not_read() {
    let storage = storage();
    let tab = Tab::open(&storage);
    storage.set_entry(ID, "?");
    tab.put(ingredient(1, "Pear"));
    storage.run();
    let Saving::NotSaved { waiting: 1, fault: Fault::Damaged(damage) } = tab.sync.saving() else {
        panic!("{:?}", tab.sync.saving())
    };
    assert_eq!(damage.causes, [Cause::Entry { why: "expected value at line 1 column 1".into() }]);
    assert_eq!(storage.row(ID, KEY).map(|text| text.contains("Apple")), Some(true));
}
