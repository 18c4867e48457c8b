//! T15: each file of a new release blocked in turn: the old one goes on. Then the update, with one tab and with two:
//! one press ends in the new version. (That half-typed text survives it is walked in `updating`.)

use brimwright::say;

use crate::harness::{By, Engine, Journey, Publisher, in_each_engine};
use crate::support::runs::Runs;
use crate::updating::{is_release, one_waits};

in_each_engine!(t15_a_release_that_is_not_whole_is_not_taken);
in_each_engine!(t15_one_press_ends_in_the_new_version);

async fn t15_a_release_that_is_not_whole_is_not_taken(engine: Engine) {
    let mut runs = Runs::of("T15");
    let publisher = Publisher::new(&format!("blocked-{engine}"));
    publisher.publish("one");
    let journey = Journey::start_in_on(engine, "blocked", publisher.address()).await;
    journey.open().await;
    journey.wait_until_kept_offline().await;
    for (place, name) in publisher.kept().into_iter().enumerate() {
        // Of the tables of texts those of the language that is read here are kept.
        if name.starts_with("words-") && !name.starts_with("words-en-US") {
            continue;
        }
        runs.begin();
        let missing = publisher.publish_without(&format!("b{place}"), place);
        assert!(!one_waits(&journey).await, "it is not whole without {missing}");
        journey.open().await;
        is_release(&journey, "one").await;
        runs.held();
    }
    // Nothing of this stands in the way of a whole release.
    publisher.publish("two");
    assert!(one_waits(&journey).await, "the whole release waits");
}

async fn t15_one_press_ends_in_the_new_version(engine: Engine) {
    let mut runs = Runs::of("T15");
    let publisher = Publisher::new(&format!("one_press-{engine}"));
    publisher.publish("one");
    let journey = Journey::start_in_on(engine, "one_press", publisher.address()).await;
    journey.open().await;
    journey.wait_until_kept_offline().await;
    let mut open = "one".to_owned();
    for tabs in 1..=2 {
        runs.begin();
        let next = format!("r{tabs}");
        if tabs == 2 {
            journey.open_another_tab().await;
            journey.use_tab(0).await;
        }
        is_release(&journey, &open).await;
        publisher.publish(&next);
        assert!(one_waits(&journey).await, "the next release waits");
        journey.click(By::Text(say!(first::update_now))).await;
        is_release(&journey, &next).await;
        journey.wait_until_started().await;
        if tabs == 2 {
            // The other tab stays as it is until the person agrees there too.
            journey.use_tab(1).await;
            is_release(&journey, &open).await;
            journey.click(By::Text(say!(first::update_now))).await;
            is_release(&journey, &next).await;
        }
        open = next;
        runs.held();
    }
}
