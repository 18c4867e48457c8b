//! T4: an old and a new version of the app on one store: the old one stops saving and says so, and what the new one
//! keeps is left alone.

use super::{demo, stored};
use brimwright::say;

use crate::harness::{By, Engine, Journey, in_each_engine};
use crate::support::runs::Runs;

in_each_engine!(t04_the_old_version_stops_saving_and_says_so);

/// What a newer version does: takes the books over to its own form, and goes on working with them.
const NEWER: &str = "
    window.newer = await new Promise((done, fail) => {
        const known = indexedDB.open('brimwright');
        known.onsuccess = () => {
            const version = known.result.version;
            known.result.close();
            const opening = indexedDB.open('brimwright', version + 1);
            opening.onupgradeneeded = () => opening.result.createObjectStore('newer').put('kept', 1);
            opening.onsuccess = () => done(opening.result);
            opening.onerror = () => fail(opening.error);
        };
    });
    return true;";

async fn t04_the_old_version_stops_saving_and_says_so(engine: Engine) {
    let mut runs = Runs::of("T4");
    runs.begin();
    let journey = demo(engine, "newer_version").await;
    journey.go("#/buying").await;
    journey.run(NEWER).await;
    journey.wait_for_text(say!(first::newer_version_open)).await;
    let before = stored(&journey).await;
    assert!(before.contains("\"kept\""), "the newer version's own");
    journey.enter(By::Label(&say!(market::price_of, name = "Apples")), "39.50").await;
    journey.wait_for_text(say!(first::not_saved)).await;
    journey.wait_for_text(say!(first::newer_version_open)).await;
    assert_eq!(stored(&journey).await, before, "to the byte");
    // Loaded again, the old version says what it needs.
    loaded_again(&journey).await;
    assert_eq!(stored(&journey).await, before, "to the byte");
    runs.held();
}

async fn loaded_again(journey: &Journey) {
    journey.open().await;
    journey.wait_for_text(say!(first::newer_books)).await;
}
