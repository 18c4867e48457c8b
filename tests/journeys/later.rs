//! The part of the app that is not in the first load: offline, on its way, and out of reach.

use brimwright::say;

use crate::harness::{By, Journey, Publisher};
use crate::updating::look_for_a_version;

const PART: &str = "split_later";

const RELOAD: &str = "
    if (sessionStorage.reloaded) return !window.before;
    sessionStorage.reloaded = 'once';
    window.before = true;
    location.reload();
    return false;";

/// The heading of the screen that is shown.
async fn expect_heading(journey: &Journey, heading: &str) {
    journey.expect_each("main h1", &[heading]).await;
}

#[tokio::test]
async fn after_the_first_load_every_screen_opens_without_a_network() {
    let mut journey = Journey::start("later_offline").await;
    journey.open().await;
    journey.wait_until_kept_offline().await;
    journey.close_site();
    journey.click(By::Text(say!(first::start_book))).await;
    journey.click(By::Text(say!(first::sizes))).await;
    expect_heading(&journey, say!(first::sizes)).await;
    // From the start, with nothing in memory, and at the address of such a screen.
    journey.open().await;
    journey.go("#/counter").await;
    expect_heading(&journey, say!(first::counter)).await;
    journey.wait_until("the page to be loaded anew", RELOAD).await;
    expect_heading(&journey, say!(first::counter)).await;
}

#[tokio::test]
async fn a_part_that_does_not_arrive_is_said_and_asked_for_again() {
    let publisher = Publisher::new("later_lost");
    publisher.publish("one");
    // Nothing is kept on the device.
    publisher.spoil("manifest", "{}");
    publisher.spoil(PART, "cut off");
    let mut journey = Journey::start_on("later_lost", publisher.address()).await;
    journey.open().await;
    // A new book needs what keeps it.
    journey.click(By::Text(say!(first::start_book))).await;
    assert_eq!(journey.text_of(By::Text(say!(first::part_missing))).await, say!(first::part_missing));
    publisher.publish("one");
    publisher.spoil("manifest", "{}");
    journey.click(By::Text(say!(first::try_again))).await;
    journey.wait_for_text(say!(first::first_price_steps)).await;
    journey.wait_until_saved().await;
    // The book opens without the part.
    publisher.spoil(PART, "cut off");
    journey.open().await;
    journey.wait_for_text(say!(first::first_price_steps)).await;
    journey.click(By::Text(say!(first::sizes))).await;
    assert_eq!(journey.text_of(By::Text(say!(first::part_missing))).await, say!(first::part_missing));
    journey.screenshot("sentence").await;
    // What is here can be gone back to, and the sentence goes.
    journey.click(By::Text(say!(first::drinks))).await;
    journey.wait_for_text(say!(first::first_price_steps)).await;
    journey.wait_for_text_gone(say!(first::part_missing)).await;
    journey.close_site();
    journey.click(By::Text(say!(first::sizes))).await;
    journey.wait_for_text(say!(first::part_missing)).await;
    journey.click(By::Text(say!(first::try_again))).await;
    journey.wait_for_text(say!(first::part_missing)).await;
    journey.open_site();
    publisher.publish("one");
    journey.click(By::Text(say!(first::try_again))).await;
    expect_heading(&journey, say!(first::sizes)).await;
    journey.wait_for_text_gone(say!(first::part_missing)).await;
}

/// The rest of the style comes with the part: without it no screen of the part is shown.
#[tokio::test]
async fn a_part_without_its_style_has_not_arrived() {
    let publisher = Publisher::new("later_bare");
    publisher.publish("one");
    // Nothing is kept on the device.
    publisher.spoil("manifest", "{}");
    publisher.remove("style-rest");
    let journey = Journey::start_on("later_bare", publisher.address()).await;
    journey.open().await;
    journey.go("#/sizes").await;
    journey.click(By::Text(say!(first::start_book))).await;
    journey.wait_for_text(say!(first::part_missing)).await;
    journey.expect_count("main .section", 0).await;
    publisher.publish("one");
    publisher.spoil("manifest", "{}");
    journey.click(By::Text(say!(first::try_again))).await;
    journey.wait_for_text_gone(say!(first::part_missing)).await;
    let styled =
        "return [...document.styleSheets].some((sheet) => sheet.href?.includes('style-rest') && sheet.cssRules.length)";
    journey.wait_until("the rest of the style to be in force", styled).await;
}

const TAKEN_UP: &str = "
    return performance.getEntriesByType('resource').some((it) => it.name.includes('split_later') && it.responseEnd)";
const NOT_ASKED_FOR: &str = "
    return !performance.getEntriesByType('resource').some((it) => it.name.includes('split_later'))";

/// Holds back the answer to the page's request for the part until `release()`.
const HOLD: &str = "
    const fetchNow = window.fetch;
    window.fetch = (address, ...rest) => String(address).includes('split_later')
        ? new Promise((done) => (window.release = () => done(fetchNow(address, ...rest))))
        : fetchNow(address, ...rest);
    return true;";

#[tokio::test]
async fn while_a_part_is_on_its_way_the_screen_stays_and_the_last_wish_counts() {
    let publisher = Publisher::new("later_slow");
    publisher.publish("one");
    // Nothing is kept on the device, so that nothing is taken up before it is asked for.
    publisher.spoil("manifest", "{}");
    let journey = Journey::start_on("later_slow", publisher.address()).await;
    journey.open().await;
    // The choice of books does not need it: it is no part of the first load.
    journey.wait_until("nothing to have asked for the part", NOT_ASKED_FOR).await;
    journey.click(By::Text(say!(first::start_book))).await;
    journey.wait_for_text(say!(first::first_price_steps)).await;
    journey.wait_until_saved().await;
    journey.open().await;
    journey.wait_for_text(say!(first::first_price_steps)).await;
    // Nor does the list.
    journey.wait_until("nothing to have asked for the part", NOT_ASKED_FOR).await;
    journey.wait_until("the network to be slow", HOLD).await;
    let go = async |address: &str| {
        let script = format!("location.hash = '{address}'; return true");
        journey.wait_until("the address to change", &script).await;
    };
    go("#/sizes").await;
    journey.wait_for_text(say!(first::opening)).await;
    expect_heading(&journey, say!(first::drinks)).await;
    journey.screenshot("opening").await;
    go("#/drinks").await;
    journey.wait_for_text_gone(say!(first::opening)).await;
    go("#/sizes").await;
    go("#/counter").await;
    journey.wait_for_text(say!(first::opening)).await;
    expect_heading(&journey, say!(first::drinks)).await;
    journey.wait_until("the part to arrive", "release(); return true").await;
    expect_heading(&journey, say!(first::counter)).await;
    journey.wait_for_text_gone(say!(first::opening)).await;
}

#[tokio::test]
async fn a_page_of_the_version_before_has_all_of_its_own_version() {
    let publisher = Publisher::new("later_old");
    publisher.publish("one");
    let mut journey = Journey::start_on("later_old", publisher.address()).await;
    journey.open().await;
    journey.click(By::Text(say!(first::start_book))).await;
    journey.wait_for_text(say!(first::first_price_steps)).await;
    journey.wait_until_kept_offline().await;
    publisher.publish("two");
    look_for_a_version(&journey).await;
    journey.wait_until("the app to be told", "return heard.includes('ready')").await;
    // As on a host that has the newest files only.
    publisher.spoil(PART, "of another version");
    journey.open().await;
    journey.click(By::Text(say!(first::sizes))).await;
    expect_heading(&journey, say!(first::sizes)).await;
    // Another tab agrees to the update: the kept files of this page's version go. By then it has
    // taken up what it was not asked for yet.
    journey.open().await;
    journey.wait_until("the part to be taken up", TAKEN_UP).await;
    journey.open_another_tab().await;
    journey
        .wait_until(
            "the new version to take over",
            "navigator.serviceWorker.getRegistration().then(({ waiting }) => waiting?.postMessage({ type: 'accept-update' }));
             window.names ??= []; caches.keys().then((all) => (window.names = all.filter((name) => name.startsWith('brimwright '))));
             return names.length === 1 && names[0].includes(' two-')",
        )
        .await;
    journey.close_site();
    journey.use_tab(0).await;
    journey.click(By::Text(say!(first::counter))).await;
    expect_heading(&journey, say!(first::counter)).await;
}
