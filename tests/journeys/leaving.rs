//! Nothing that is not saved is left behind unasked, on a device that is full.

use brimwright::{say, words};

use crate::harness::{By, Journey};
use crate::support;

/// The price of apples, in Buying.
fn apples() -> By<'static> {
    By::label(say!(market::price_of, name = "Apples"))
}

/// From now on nothing can be stored; `window.roomy = true` ends that.
const NO_ROOM: &str = "
const put = IDBObjectStore.prototype.put;
IDBObjectStore.prototype.put = function (...what) {
    if (!window.roomy) throw new DOMException('no room', 'QuotaExceededError');
    return put.apply(this, what);
};
return true";

/// Whether the browser would ask before this page goes.
const ASKS: &str = "
const event = new Event('beforeunload', { cancelable: true });
window.dispatchEvent(event);
return event.defaultPrevented";

/// Whether the notice is within the window.
const IN_VIEW: &str = "
const { top, bottom } = document.querySelector('.notice-trouble').getBoundingClientRect();
return top >= 0 && bottom > top && bottom <= innerHeight";

/// Whether the notice is drawn nowhere.
const FOLDED: &str = "return document.querySelector('.notice-trouble').getClientRects().length === 0";

#[tokio::test]
async fn what_is_not_saved_is_not_left_behind() {
    let journey = Journey::start("leaving").await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text(say!(first::saved)).await;
    journey.wait_until("nothing to be asked", &ASKS.replace("return event", "return !event")).await;
    journey.click(By::Text(say!(first::buying))).await;
    journey.wait_until("the device to be full", NO_ROOM).await;
    journey.enter(apples(), "44.25").await;
    journey.wait_for_text(say!(first::no_room)).await;
    journey.wait_until("the browser to ask", ASKS).await;

    // The notice stays in view while the page scrolls.
    journey.wait_until("the end of the page", "window.scrollTo(0, document.body.scrollHeight); return true").await;
    journey.wait_until("the notice in view", IN_VIEW).await;
    journey.screenshot("scrolled").await;

    // Folded away by the mark it stays so while the same trouble lasts; what is new is shown.
    journey.click(By::Text(say!(first::not_saved))).await;
    journey.click(By::Text(say!(first::not_saved))).await;
    journey.wait_until("the notice folded", FOLDED).await;
    journey.enter(apples(), "44.50").await;
    journey.expect_value(apples(), "44.50").await;
    journey.wait_until("the notice folded", FOLDED).await;
    journey.wait_until("room", "return window.roomy = true").await;
    journey.enter(apples(), "44.25").await;
    journey.wait_until_saved().await;
    journey.wait_until("no room again", "window.roomy = false; return true").await;
    journey.enter(apples(), "44.75").await;
    journey.wait_until("the notice in view", IN_VIEW).await;
    journey.enter(apples(), "44.25").await;
    journey.wait_for_text(say!(first::no_room)).await;

    // A copy that the notice offers counts as one.
    journey.click(By::Text(say!(book::save_copy))).await;
    journey.go("#/book").await;
    let last_copy = say!(book::last_copy, day = words::short_day(support::day("2026-11-26")));
    journey.wait_for_text(&[last_copy, say!(book::changes_since_copy, changes = 0)].join(" ")).await;

    // A new book is not added; the sentence says so.
    journey.click(By::Text(say!(first::book))).await;
    journey.click(By::Text(say!(book::close_book))).await;
    journey.wait_for_text(say!(book::changes_not_saved)).await;
    journey.screenshot("asked").await;
    journey.click(By::Text(say!(book::stay_here))).await;
    journey.wait_for_text_gone(say!(book::changes_not_saved)).await;
    journey.wait_for_text(say!(first::no_room)).await;

    // Once there is room it is saved, and the way is gone by itself.
    journey.click(By::Text(say!(book::close_book))).await;
    journey.wait_for_text(say!(book::changes_not_saved)).await;
    journey.wait_until("room", "return window.roomy = true").await;
    journey.click(By::Text(say!(first::try_again))).await;
    journey.wait_for_text(say!(first::your_books)).await;
    journey.wait_until("nothing to be asked", &ASKS.replace("return event", "return !event")).await;
    let drinks = say!(common::book_holds_drinks, drinks = 14);
    journey.wait_for_text(&[drinks, say!(common::book_last_changed, when = "12:0")].join(" · ")).await;
    journey.click(By::Text("Marrowgate Juice Hall")).await;
    journey.click(By::Text(say!(first::buying))).await;
    journey.expect_value(apples(), "44.25").await;
}

#[tokio::test]
async fn a_book_that_was_not_added_says_so_until_it_is() {
    let journey = Journey::start("not_added").await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text(say!(first::saved)).await;
    journey.click(By::Text(say!(first::book))).await;
    journey.wait_until("the device to be full", NO_ROOM).await;
    journey.click(By::Text(say!(first::start_book))).await;
    let not_added = say!(first::not_added_no_room, book = say!(first::new_book_name));
    journey.wait_for_text(&not_added).await;
    journey.wait_until("room", "return window.roomy = true").await;
    journey.click(By::Text(say!(first::start_book))).await;
    journey.wait_for_text(say!(first::new_book_name)).await;
    journey.wait_for_text_gone(&not_added).await;
}
