//! Whatever is done to a book can be undone; what is refused changes nothing; and the ledger
//! that follows the edits is the one computed anew.

use brimwright::book::{Book, Edit, Key, Patch, Record};
use brimwright::drink::ledger::Ledger;
use proptest::collection::vec;
use proptest::prelude::*;

use crate::books::{book, edit, money};

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
            if let Ok(applied) = edited.apply(&edit) {
                for key in differing(&before, &edited) {
                    prop_assert!(applied.touched.contains(&key), "{} changed untold", key);
                }
                let mut back = edited.clone();
                let redo = back.apply(&applied.inverse).expect("an inverse is never refused");
                prop_assert_eq!(stored(&back), stored(&before));
                back.apply(&redo.inverse).expect("an inverse is never refused");
                prop_assert_eq!(stored(&back), stored(&edited));
                undo.push(applied.inverse);
            } else { prop_assert_eq!(stored(&edited), stored(&before), "a refused edit changed the book") }
        }
        while let Some(inverse) = undo.pop() {
            edited.apply(&inverse).expect("an inverse is never refused");
        }
        prop_assert_eq!(stored(&edited), stored(&book));
    }

    #[test]
    fn a_patch_takes_a_step_back_and_does_it_again(mut book in book(), edits in vec(edit(), 1..12)) {
        for edit in edits {
            let before = book.clone();
            let was = book.at(&edit.keys());
            let Ok(applied) = book.apply(&edit) else { continue };
            prop_assert!(applied.touched.iter().all(|key| was.contains_key(key)));
            let patch = Patch::between(&was, &book);
            prop_assert_eq!(patch.is_empty(), stored(&before) == stored(&book));
            let mut back = book.clone();
            let inverse = patch.inverse().edit(&back).expect("nothing came between");
            back.apply(&inverse).expect("the book before held");
            prop_assert_eq!(&back, &before);
            let again = patch.edit(&back).expect("nothing came between");
            back.apply(&again).expect("the book after held");
            prop_assert_eq!(&back, &book);
        }
    }

    #[test]
    fn a_patch_carried_over_another_step_leaves_that_as_it_is(book in book(), one in edit(), other in edit()) {
        // Two tabs that began with the same book.
        let patch_of = |edit: &Edit| {
            let (mut tab, was) = (book.clone(), book.at(&edit.keys()));
            tab.apply(edit).ok().map(|_| (Patch::between(&was, &tab), tab))
        };
        let (Some((mine, _)), Some((theirs, after_theirs))) = (patch_of(&one), patch_of(&other)) else { return Ok(()) };
        let mut both = after_theirs.clone();
        match mine.edit(&both) {
            Ok(edit) => if both.apply(&edit).is_ok() {
                // Their values still stand: doing theirs again changes nothing.
                let edit = theirs.edit(&both).expect("their values stand");
                let merged = both.clone();
                both.apply(&edit).expect("it is there already");
                prop_assert_eq!(&both, &merged);
                // And mine can be taken back without touching theirs, unless both did the same.
                if !mine.meets(&theirs) {
                    let edit = mine.inverse().edit(&both).expect("my values stand");
                    both.apply(&edit).expect("their book held");
                    prop_assert_eq!(stored(&both), stored(&after_theirs));
                }
            },
            Err(clashes) => {
                prop_assert!(!clashes.is_empty());
                prop_assert!(mine.meets(&theirs), "{:?}", clashes);
            }
        }
    }

    #[test]
    fn a_book_never_refers_to_what_is_not_there(mut book in book(), edits in vec(edit(), 0..12)) {
        for edit in &edits {
            let _ = book.apply(edit);
        }
        for record in book.records() {
            for needed in record.needs() {
                prop_assert!(book.contains(needed), "{} is needed by {}", needed, record.key());
                prop_assert!(book.needed_by(needed).contains(&record.key()));
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

    #[test]
    fn the_ledger_follows_prices_that_change_alone(mut book in book(), prices in vec(vec(money(40), 6), 1..4)) {
        let mut ledger = Ledger::of(&book);
        for prices in prices {
            let offers: Vec<_> = book.offers().map(|offer| offer.id()).collect();
            let each = offers.into_iter().zip(prices).map(|(offer, price)| Edit::SetPrice { offer, price: Some(price) });
            let Ok(applied) = book.apply(&Edit::Together(each.collect())) else { continue };
            ledger.refresh(&book, &applied.touched);
            prop_assert_eq!(&ledger, &Ledger::of(&book));
        }
    }
}
