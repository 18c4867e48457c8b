//! Languages that there may be: a longer one, and one whose letters run from right to left. Both are made of the English
//! texts, each letter with a mark, so that a text from elsewhere is seen.

use brimwright::words::voice;

use crate::harness::{Journey, Publisher, pseudo};
use crate::screens::faults_of_every_screen;

/// The app's own name, a kind of paper, and what is typed on the way.
const EVERYWHERE: [&str; 3] = ["Brimwright", "A", "Two sizes only"];

#[tokio::test]
async fn a_longer_language_fits_a_narrow_phone() {
    every_screen_fits("longer_320", 320, 640, false).await;
}

#[tokio::test]
async fn a_longer_language_fits_a_phone() {
    every_screen_fits("longer_360", 360, 740, false).await;
}

#[tokio::test]
async fn a_language_from_right_to_left_fits_a_narrow_phone() {
    every_screen_fits("mirrored_320", 320, 640, true).await;
}

#[tokio::test]
async fn a_language_from_right_to_left_fits_a_phone() {
    every_screen_fits("mirrored_360", 360, 740, true).await;
}

async fn every_screen_fits(name: &str, width: u32, height: u32, mirrored: bool) {
    let publisher = Publisher::new(name);
    publisher.publish("");
    pseudo::speak(&publisher);
    voice::mirror(mirrored);
    if mirrored {
        // The page knows the direction by the language's tag.
        let page = String::from_utf8(publisher.read("index.html")).expect("a page");
        assert!(page.contains("data-right-to-left=\"ar "));
        publisher.replace("index.html", &page.replace("data-right-to-left=\"ar ", "data-right-to-left=\"en "));
    }
    let mut unmarked = pseudo::unmarked();
    unmarked.extend(EVERYWHERE.map(str::to_owned));
    let journey = Journey::start_on(name, publisher.address()).await.with_marked_texts(unmarked);
    let faults = faults_of_every_screen(&journey, width, height).await;
    for (picture, address) in PICTURES {
        journey.go(address).await;
        journey.screenshot(picture).await;
    }
    assert!(faults.is_empty(), "{} faults:\n{}", faults.len(), faults.join("\n"));
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
    let order = "
        const left = (what) => document.querySelector(what).getBoundingClientRect().left;
        const after = (one, other) => Math.sign(left(other) - left(one));
        return [after('.head-name', '.head-steps'), after('.bar li:first-child', '.bar li:last-child')]";
    let onward = if mirrored { -1 } else { 1 };
    assert_eq!(journey.run(order).await, serde_json::json!([onward, onward]));
    // Names and amounts keep their own direction within a sentence, and need no marks for it from left to right.
    let isolated = "return /\u{2068}[^\u{2068}\u{2069}]+\u{2069}/u.test(document.querySelector('main').textContent)";
    assert_eq!(journey.run(isolated).await, serde_json::json!(mirrored));
}

/// What is looked at by eye.
const PICTURES: [(&str, &str); 10] = [
    ("drinks", "#/drinks"),
    ("drink", "#/drinks/1"),
    ("offer", "#/drinks/1/3"),
    ("buying", "#/buying"),
    ("ingredient", "#/buying/ingredient/1"),
    ("sizes", "#/sizes"),
    ("switching", "#/sizes/decide/kind/pressed/4-3"),
    ("card", "#/counter/1/4"),
    ("batch", "#/counter/batches/2026-11-26"),
    ("book", "#/book"),
];
