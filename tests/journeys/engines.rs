//! The main screens in every engine: they open, fit a phone, and leave pictures to look at; and what was once drawn
//! otherwise in one of them.

use brimwright::say;

use crate::harness::{By, Engine, Journey, in_each_engine};

in_each_engine!(the_main_screens_open_and_fit);
in_each_engine!(a_number_that_opens_has_a_dotted_line);

/// The name of each picture, and the address of its screen.
const SCREENS: [(&str, &str); 14] = [
    ("drinks", "#/drinks"),
    ("drink", "#/drinks/1"),
    ("offer", "#/drinks/1/3"),
    ("buying", "#/buying"),
    ("ingredient", "#/buying/ingredient/1"),
    ("container", "#/buying/container/3"),
    ("watch", "#/buying/watch"),
    ("sizes", "#/sizes"),
    ("switching", "#/sizes/decide/kind/pressed/4-3"),
    ("scenarios", "#/sizes/scenarios"),
    ("counter", "#/counter"),
    ("card", "#/counter/1/4"),
    ("batch", "#/counter/batches/2026-11-26"),
    ("book", "#/book"),
];

async fn demo(engine: Engine, name: &str) -> Journey {
    let journey = Journey::start_in(engine, name).await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    journey
}

async fn the_main_screens_open_and_fit(engine: Engine) {
    let journey = demo(engine, "main_screens").await;
    let mut faults = Vec::new();
    for (name, address) in SCREENS {
        journey.go(address).await;
        journey.wait_until("a heading", "return document.querySelector('main h1')?.innerText.trim().length > 0").await;
        faults.extend(journey.faults_of_layout(&[""]).await);
        journey.screenshot(name).await;
    }
    assert!(faults.is_empty(), "{} faults:\n{}", faults.len(), faults.join("\n"));
}

/// WebKit draws no line where its kind, style and colour stand in one declaration.
async fn a_number_that_opens_has_a_dotted_line(engine: Engine) {
    let journey = demo(engine, "dotted_line").await;
    journey.go("#/drinks/1/3").await;
    let dotted = "
        const { textDecorationLine, textDecorationStyle } = getComputedStyle(document.querySelector('.answer-figures .how'));
        return textDecorationLine === 'underline' && textDecorationStyle === 'dotted'";
    journey.wait_until("a dotted line under a number that opens", dotted).await;
}
