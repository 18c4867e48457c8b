//! Nothing that is not saved is left behind unasked, on a device that is full.

use crate::harness::{By, Journey};

const APPLES: By<'_> = By::Label("Price of Apples");
const FULL: &str = "This device has no room left. Your changes are still on the screen: save a copy as a file, make room, then try again.";

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
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.wait_for_text("Saved").await;
    journey.wait_until("nothing to be asked", &ASKS.replace("return event", "return !event")).await;
    journey.click(By::Text("Buying")).await;
    journey.wait_until("the device to be full", NO_ROOM).await;
    journey.enter(APPLES, "44.25").await;
    journey.wait_for_text(FULL).await;
    journey.wait_until("the browser to ask", ASKS).await;

    // The notice stays in view while the page scrolls.
    journey.wait_until("the end of the page", "window.scrollTo(0, document.body.scrollHeight); return true").await;
    journey.wait_until("the notice in view", IN_VIEW).await;
    journey.screenshot("scrolled").await;

    // Folded away by the mark it stays so while the same trouble lasts; what is new is shown.
    journey.click(By::Text("Not saved")).await;
    journey.click(By::Text("Not saved")).await;
    journey.wait_until("the notice folded", FOLDED).await;
    journey.enter(APPLES, "44.50").await;
    journey.expect_value(APPLES, "44.50").await;
    journey.wait_until("the notice folded", FOLDED).await;
    journey.wait_until("room", "return window.roomy = true").await;
    journey.enter(APPLES, "44.25").await;
    journey.wait_until_saved().await;
    journey.wait_until("no room again", "window.roomy = false; return true").await;
    journey.enter(APPLES, "44.75").await;
    journey.wait_until("the notice in view", IN_VIEW).await;
    journey.enter(APPLES, "44.25").await;
    journey.wait_for_text(FULL).await;

    // A copy that the notice offers counts as one.
    journey.click(By::Text("Save a copy as a file")).await;
    journey.go("#/book").await;
    journey.wait_for_text("Last copy saved 26 Nov, no changes since.").await;

    // A new book is not added; the sentence says so.
    journey.click(By::Text("Book")).await;
    journey.click(By::Text("Close this book")).await;
    journey.wait_for_text("Changes are not saved. Leave now, and they are lost.").await;
    journey.screenshot("asked").await;
    journey.click(By::Text("Stay here")).await;
    journey.wait_for_text_gone("Leave now").await;
    journey.wait_for_text(FULL).await;

    // Once there is room it is saved, and the way is gone by itself.
    journey.click(By::Text("Close this book")).await;
    journey.wait_for_text("Leave now").await;
    journey.wait_until("room", "return window.roomy = true").await;
    journey.click(By::Text("Try again")).await;
    journey.wait_for_text("Your books").await;
    journey.wait_until("nothing to be asked", &ASKS.replace("return event", "return !event")).await;
    journey.wait_for_text("14 drinks, changed 12:0").await;
    journey.click(By::Text("Marrowgate Juice Hall")).await;
    journey.click(By::Text("Buying")).await;
    journey.expect_value(APPLES, "44.25").await;
}

#[tokio::test]
async fn a_book_that_was_not_added_says_so_until_it_is() {
    let journey = Journey::start("not_added").await;
    journey.open().await;
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.wait_for_text("Saved").await;
    journey.click(By::Text("Book")).await;
    journey.wait_until("the device to be full", NO_ROOM).await;
    journey.click(By::Text("Start an empty book")).await;
    journey.wait_for_text("“My book” was not added: this device has no room left. Nothing was changed.").await;
    journey.wait_until("room", "return window.roomy = true").await;
    journey.click(By::Text("Start an empty book")).await;
    journey.wait_for_text("My book").await;
    journey.wait_for_text_gone("was not added").await;
}
