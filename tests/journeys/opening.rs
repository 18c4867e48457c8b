//! Opening the app, with and without a network.

use brimwright::say;

use crate::harness::{Engine, Journey, in_each_engine};

in_each_engine!(opens_and_shows_its_name);
in_each_engine!(opens_offline_after_first_load);

async fn opens_and_shows_its_name(engine: Engine) {
    let journey = Journey::start_in(engine, "opens_and_shows_its_name").await;
    journey.open().await;
    journey.wait_for_text(say!(first::app_name)).await;
    assert_eq!(journey.viewport().await, (360, 740));
    journey.screenshot("opened").await;
}

async fn opens_offline_after_first_load(engine: Engine) {
    let mut journey = Journey::start_in(engine, "opens_offline_after_first_load").await;
    journey.open().await;
    journey.wait_until_kept_offline().await;
    journey.close_site();
    journey.open().await;
    journey.wait_for_text(say!(first::app_name)).await;
    journey.screenshot("offline").await;
}
