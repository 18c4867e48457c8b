//! T6: no room left, at an edit and at a new book: "Not saved" stands there with a copy offered, what is stored stays as
//! it was to the byte, and saving goes on when there is room again.

use super::{demo_with, stored};
use brimwright::say;

use crate::harness::{By, Engine, in_each_engine};
use crate::support::runs::Runs;

in_each_engine!(t06_what_finds_no_room_waits_and_the_old_stays);

/// Refuses every value while `full` is set.
const FULL: &str = "
    const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (...all) {
        if (window.full) throw new DOMException('no room', 'QuotaExceededError');
        return put.apply(this, all);
    };";

async fn t06_what_finds_no_room_waits_and_the_old_stays(engine: Engine) {
    let mut runs = Runs::of("T6");
    runs.begin();
    let journey = demo_with(engine, "no_room", FULL).await;
    journey.go("#/buying").await;
    let before = stored(&journey).await;
    journey.wait_until("the device to be full", "return window.full = true").await;
    journey.enter(By::Label(&say!(market::price_of, name = "Apples")), "39.50").await;
    journey.wait_for_text(say!(first::not_saved)).await;
    journey.wait_for_text(say!(first::no_room)).await;
    journey.wait_for_text(say!(book::save_copy)).await;
    journey.screenshot("full").await;
    assert_eq!(stored(&journey).await, before, "to the byte");
    journey.wait_until("room again", "window.full = false; return true").await;
    journey.click(By::Text(say!(first::try_again))).await;
    journey.wait_until_saved().await;
    journey.wait_for_text_gone(say!(first::no_room)).await;
    journey.open().await;
    journey.go("#/buying").await;
    journey.expect_value(By::Label(&say!(market::price_of, name = "Apples")), "39.50").await;
    runs.held();
}
