//! Opening the app, with and without a network.

use crate::harness::Journey;

#[tokio::test]
async fn opens_and_shows_its_name() {
    let journey = Journey::start("opens_and_shows_its_name").await;
    journey.open().await;
    journey.wait_for_text("Brimwright").await;
    assert_eq!(journey.viewport().await, (360, 740));
    journey.screenshot("opened").await;
}

#[tokio::test]
async fn opens_offline_after_first_load() {
    let mut journey = Journey::start("opens_offline_after_first_load").await;
    journey.open().await;
    journey.wait_until_kept_offline().await;
    journey.close_site();
    journey.open().await;
    journey.wait_for_text("Brimwright").await;
    journey.screenshot("offline").await;
}
