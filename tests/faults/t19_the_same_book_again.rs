//! T19: a book that is taken in again changes nothing; before one is taken in, every record that it would add, change or
//! take out is counted; and no clock has a say in it.

use std::cell::RefCell;

use brimwright::book::{Book, Key};
use brimwright::exchange::{Counts, Preview, preview, read, write};
use proptest::test_runner::{Config, TestCaseError, TestRunner};
use proptest::{prop_assert, prop_assert_eq};

use crate::books::book;
use crate::support::runs::Runs;

/// Records added, changed and taken out, as the preview counts them; settings and buying list, of which a book has one
/// of each, stand beside.
fn counted(preview: &Preview) -> (usize, usize, usize) {
    let kinds = [
        preview.ingredients,
        preview.packagings,
        preview.packaging_sets,
        preview.containers,
        preview.drinks,
        preview.offers,
        preview.weeks,
        preview.seen_prices,
        preview.trials,
        preview.scenarios,
        preview.batches,
    ];
    let sum = |of: fn(&Counts) -> usize| kinds.iter().map(of).sum::<usize>();
    (sum(|kind| kind.added), sum(|kind| kind.changed), sum(|kind| kind.removed))
}

/// The same, by looking at each record of both.
fn differing(open: &Book, incoming: &Book) -> (usize, usize, usize) {
    let keys = |book: &Book| -> Vec<Key> {
        let keys = book.records().map(|record| record.key());
        keys.filter(|key| !matches!(key, Key::Settings | Key::BuyingList)).collect()
    };
    let added = keys(incoming).into_iter().filter(|key| !open.contains(*key)).count();
    let removed = keys(open).into_iter().filter(|key| !incoming.contains(*key)).count();
    let changed = keys(open).into_iter().filter(|key| incoming.contains(*key));
    (added, changed.filter(|key| open.record(*key) != incoming.record(*key)).count(), removed)
}

#[test]
fn t19_the_same_book_again_changes_nothing_and_counts_are_those_of_the_records() {
    let runs = RefCell::new(Runs::of("T19"));
    let mut runner = TestRunner::new(Config { cases: Runs::asked_for(100), ..Config::default() });
    let outcome = runner.run(&(book(), book()), |(mut open, other)| {
        runs.borrow_mut().begin();
        let copy = read(write(&other)).map_err(|error| TestCaseError::fail(format!("{error:?}")))?;
        let first = preview(&open, &copy);
        prop_assert_eq!(counted(&first), differing(&open, &copy));
        let differs = |key| open.record(key) != copy.record(key);
        prop_assert_eq!(first.settings_change, differs(Key::Settings));
        prop_assert_eq!(first.buying_list_changes, differs(Key::BuyingList));
        open.apply(&first.edit).map_err(|refusal| TestCaseError::fail(format!("{refusal:?}")))?;
        prop_assert_eq!(write(&open), write(&other));
        let again = preview(&open, &copy);
        prop_assert!(again.changes_nothing());
        prop_assert_eq!(counted(&again), (0, 0, 0));
        open.apply(&again.edit).map_err(|refusal| TestCaseError::fail(format!("{refusal:?}")))?;
        prop_assert_eq!(write(&open), write(&other));
        runs.borrow_mut().held();
        Ok(())
    });
    outcome.unwrap_or_else(|failure| panic!("{failure}"));
}
