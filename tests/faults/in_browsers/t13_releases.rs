//! T13: releases one after the other, the files of the one before gone, a page of HTML answering for what is missing,
//! no network in between: never a blank page, and HTML is never kept as a script or as wasm.

use brimwright::say;

use crate::harness::{By, Engine, Journey, Publisher, in_each_engine};
use crate::support::runs::Runs;
use crate::updating::{accept_update, is_release, one_waits};

in_each_engine!(t13_every_release_opens);

/// The kept files that are HTML by their type, but for the page itself.
const HTML_KEPT: &str = "
    const found = [];
    for (const name of await caches.keys()) {
        const cache = await caches.open(name);
        for (const request of await cache.keys()) {
            const type = (await cache.match(request)).headers.get('content-type') ?? '';
            if (type.startsWith('text/html') && !request.url.endsWith('/')) found.push(request.url);
        }
    }
    return found;";

async fn t13_every_release_opens(engine: Engine) {
    let mut runs = Runs::of("T13");
    let publisher = Publisher::new(&format!("releases-{engine}"));
    publisher.publish("one");
    let mut journey = Journey::start_in_on(engine, "releases", publisher.address()).await;
    journey.open().await;
    journey.click(By::Text(say!(first::start_book))).await;
    journey.wait_for_text(say!(first::first_price_steps)).await;
    journey.wait_until_kept_offline().await;
    let mut open = "one".to_owned();
    for round in 0..Runs::asked_for(2) {
        runs.begin();
        let next = format!("r{round}");
        publisher.publish(&next);
        publisher.answer_what_is_missing_with_a_page();
        // The old one goes on, with a network and without; nothing of it is on the host any more.
        opens_as(&journey, &open).await;
        assert!(one_waits(&journey).await, "the next release waits");
        journey.close_site();
        opens_as(&journey, &open).await;
        accept_update(&journey, &next).await;
        opens_as(&journey, &next).await;
        journey.open_site();
        opens_as(&journey, &next).await;
        assert_eq!(journey.run(HTML_KEPT).await, serde_json::json!([]));
        open = next;
        runs.held();
    }
}

/// The release opens, with the book in it.
async fn opens_as(journey: &Journey, mark: &str) {
    journey.open().await;
    is_release(journey, mark).await;
    journey.wait_for_text(say!(first::first_price_steps)).await;
    journey.click(By::Text(say!(first::sizes))).await;
    journey.expect_each("main h1", &[say!(first::sizes)]).await;
    journey.click(By::Text(say!(first::drinks))).await;
}
