//! The harness tried on a page of its own, so that a journey that passes means something.

use crate::harness::{By, Engine, Journey, in_each_engine};

in_each_engine!(the_harness_finds_types_clicks_and_reads);
in_each_engine!(a_killed_browser_starts_again_on_the_same_profile, not WebKit: "the browser of WebKitGTK keeps nothing on the disk when it is driven");
in_each_engine!(a_closed_site_is_gone_and_opens_again_at_the_same_address);

const PAGE: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/harness/page");

async fn the_harness_finds_types_clicks_and_reads(engine: Engine) {
    let journey = Journey::start_in_on(engine, "harness_finds", PAGE).await;
    journey.open().await;
    journey.type_into(By::Label("Fruit"), "Ugli").await;
    journey.type_into(By::Label("Colour"), "first").await;
    journey.type_into(By::Label("Colour"), "green").await;
    journey.click(By::Text("Keep it")).await;
    journey.wait_for_text("Kept: Ugli, green").await;
    journey.wait_for_text_gone("Nothing kept").await;
    assert_eq!(journey.text_of(By::TestId("kept")).await, "Kept: Ugli, green");
    assert_eq!(journey.local_storage("kept").await, Some("Ugli, green".to_owned()));
    assert_eq!(journey.local_storage("other").await, None);
}

async fn a_killed_browser_starts_again_on_the_same_profile(engine: Engine) {
    let mut journey = Journey::start_in_on(engine, "harness_kills", PAGE).await;
    journey.open().await;
    journey.click(By::Text("Write to the database")).await;
    journey.wait_for_text("Written").await;
    journey.kill_browser();
    journey.start_browser().await;
    journey.open().await;
    journey.click(By::Text("Read the database")).await;
    journey.wait_for_text("Read: a mango").await;
}

async fn a_closed_site_is_gone_and_opens_again_at_the_same_address(engine: Engine) {
    let mut journey = Journey::start_in_on(engine, "harness_closes", PAGE).await;
    journey.open().await;
    journey.close_site();
    // A browser says so by an error, or on a page of its own.
    journey.try_to_open().await.ok();
    journey.wait_for_text_gone("Nothing kept").await;
    journey.open_site();
    journey.open().await;
    journey.wait_for_text("Nothing kept").await;
}

#[tokio::test]
#[should_panic(expected = "waited for the text \"Never there\"")]
async fn a_text_that_never_comes_fails_the_journey() {
    let journey = Journey::start_on("harness_fails", PAGE).await.impatient();
    journey.open().await;
    journey.wait_for_text("Never there").await;
}

#[tokio::test]
#[should_panic(expected = "waited for the text \"Hidden\"")]
async fn a_hidden_text_does_not_count() {
    let journey = Journey::start_on("harness_hidden", PAGE).await.impatient();
    journey.open().await;
    journey.wait_for_text("Hidden").await;
}
