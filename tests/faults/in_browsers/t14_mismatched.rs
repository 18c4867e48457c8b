//! T14: a script and wasm of different builds, and wasm that is cut off: a sentence to read, the data untouched, and the
//! app starts once it is whole.

use super::stored;
use brimwright::say;

use crate::harness::{By, Engine, Journey, Publisher, in_each_engine};
use crate::support::runs::Runs;

in_each_engine!(t14_what_does_not_fit_is_said_and_data_is_untouched);

async fn t14_what_does_not_fit_is_said_and_data_is_untouched(engine: Engine) {
    let mut runs = Runs::of("T14");
    let publisher = Publisher::new(&format!("mismatched-{engine}"));
    publish(&publisher);
    let journey = Journey::start_in_on(engine, "mismatched", publisher.address()).await;
    journey.open().await;
    journey.click(By::Text(say!(first::start_book))).await;
    journey.wait_for_text(say!(first::first_price_steps)).await;
    let before = stored(&journey).await;
    let wasm = publisher.read("brimwright_bg");
    let other_build = {
        // What the script gives to the wasm has another name in another build.
        let mut bytes = wasm.clone();
        let name = b"__wbindgen";
        let at = bytes.windows(name.len()).position(|window| window == name).expect("a name that is imported");
        bytes[at] = b'x';
        bytes
    };
    let cut = wasm[..wasm.len() / 2].to_vec();
    for spoilt in [other_build, cut, Vec::new(), b"<!doctype html><title>Not here</title>".to_vec()] {
        runs.begin();
        publisher.spoil("brimwright_bg", &spoilt);
        journey.try_to_open().await.expect("the page loads");
        let sentence = say!(start::could_not_start);
        assert_eq!(journey.text_of(By::Text(sentence)).await, sentence);
        assert_eq!(stored(&journey).await, before, "to the byte");
        publish(&publisher);
        journey.click(By::Text(say!(start::reload))).await;
        journey.wait_until_started().await;
        journey.wait_for_text(say!(first::first_price_steps)).await;
        runs.held();
    }
}

/// The app as it was built, with nothing kept on the device: what is kept is never of two builds.
fn publish(publisher: &Publisher) {
    publisher.publish("one");
    publisher.spoil("manifest", b"{}");
}
