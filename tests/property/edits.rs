//! Whatever is done to a book can be undone; what is refused changes nothing; and the ledger
//! that follows the edits is the one computed anew.

use brimwright::book::{Book, Edit, Key, Record};
use brimwright::ledger::Ledger;
use proptest::collection::vec;
use proptest::prelude::*;

use crate::books::{book, edit};

/// Every record as it is stored.
fn stored(book: &Book) -> String {
    serde_json::to_string(&book.records().collect::<Vec<_>>()).unwrap()
}

/// The records that differ between two books.
fn differing(before: &Book, after: &Book) -> Vec<Key> {
    let keys = before.records().chain(after.records()).map(|record| record.key());
    let mut differing: Vec<Key> = keys.filter(|key| before.record(*key) != after.record(*key)).collect();
    differing.sort();
    differing.dedup();
    differing
}

proptest! {
    #[test]
    fn an_edit_and_its_inverse_leave_the_book_as_it_was(book in book(), edits in vec(edit(), 0..12)) {
        let mut edited = book.clone();
        let mut undo = Vec::new();
        for edit in edits {
            let before = edited.clone();
            match edited.apply(&edit) {
                Ok(applied) => {
                    for key in differing(&before, &edited) {
                        prop_assert!(applied.touched.contains(&key), "{} changed untold", key);
                    }
                    let mut back = edited.clone();
                    let redo = back.apply(&applied.inverse).expect("an inverse is never refused");
                    prop_assert_eq!(stored(&back), stored(&before));
                    back.apply(&redo.inverse).expect("an inverse is never refused");
                    prop_assert_eq!(stored(&back), stored(&edited));
                    undo.push(applied.inverse);
                }
                Err(_) => prop_assert_eq!(stored(&edited), stored(&before), "a refused edit changed the book"),
            }
        }
        while let Some(inverse) = undo.pop() {
            edited.apply(&inverse).expect("an inverse is never refused");
        }
        prop_assert_eq!(stored(&edited), stored(&book));
    }

    #[test]
    fn a_book_never_refers_to_what_is_not_there(mut book in book(), edits in vec(edit(), 0..12)) {
        for edit in &edits {
            let _ = book.apply(edit);
        }
        for record in book.records() {
            for needed in record.needs() {
                prop_assert!(book.contains(needed), "{} is needed by {}", needed, record.key());
                prop_assert!(book.users(needed).contains(&record.key()));
            }
        }
    }

    #[test]
    fn a_stored_book_is_read_again(mut book in book(), edits in vec(edit(), 0..6)) {
        for edit in &edits {
            let _ = book.apply(edit);
        }
        let records: Vec<Record> = serde_json::from_str(&stored(&book)).expect("what is stored can be read");
        prop_assert_eq!(Book::from_records(records), Ok(book));
    }

    #[test]
    fn one_book_is_turned_into_another(from in book(), to in book()) {
        let mut turned = from.clone();
        let applied = turned.apply(&Edit::replace(&from, &to)).expect("the other book holds");
        prop_assert_eq!(&turned, &to);
        turned.apply(&applied.inverse).expect("an inverse is never refused");
        prop_assert_eq!(turned, from);
    }

    #[test]
    fn the_ledger_follows_every_edit(mut book in book(), edits in vec(edit(), 0..12)) {
        let mut ledger = Ledger::of(&book);
        for edit in &edits {
            let before = ledger.clone();
            let Ok(applied) = book.apply(edit) else { continue };
            let moves = ledger.refresh(&book, &applied.touched);
            let anew = Ledger::of(&book);
            prop_assert_eq!(&ledger, &anew);

            let mut moved: Vec<_> = moves.iter().map(|moved| moved.offer).collect();
            moved.sort();
            let mut differing: Vec<_> = before.offers().chain(anew.offers()).map(|(offer, _)| offer).collect();
            differing.retain(|offer| before.get(*offer) != anew.get(*offer));
            differing.sort();
            differing.dedup();
            prop_assert_eq!(moved, differing);

            let first_not_fallen = moves.iter().position(|moved| !moved.fell()).unwrap_or(moves.len());
            prop_assert!(moves.iter().skip(first_not_fallen).all(|moved| !moved.fell()), "those that fell stand first");
        }
    }
}
