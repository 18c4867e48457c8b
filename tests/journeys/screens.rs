//! Every screen of the demo book, from the narrowest phone to a desk: nothing scrolls sideways,
//! the console stays quiet, and what is to be touched is large enough.

use serde_json::Value;

use crate::harness::{By, Journey};

const DEMO: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/public/books/marrowgate-juice-hall.json");

/// Widths and heights in CSS pixels.
const SCREENS: [(u32, u32); 4] = [(320, 640), (360, 740), (768, 1024), (1440, 900)];

#[tokio::test]
async fn every_screen_fits_every_width() {
    let journey = Journey::start("screens").await;
    journey.open().await;
    let mut faults = Vec::new();
    for (width, height) in SCREENS {
        journey.resize(width, height).await;
        faults.extend(faults_of(&journey, "the choice of books", width).await);
    }
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.wait_for_text("Orchard Green").await;
    for (width, height) in SCREENS {
        journey.resize(width, height).await;
        for address in addresses() {
            journey.go(&address).await;
            faults.extend(faults_of(&journey, &address, width).await);
        }
    }
    assert!(faults.is_empty(), "{} faults:\n{}", faults.len(), faults.join("\n"));
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// Sideways scrolling and what is too small to be touched, each with its screen.
async fn faults_of(journey: &Journey, screen: &str, width: u32) -> Vec<String> {
    let faults = journey.faults_of_layout().await.into_iter();
    faults.map(|fault| format!("{screen} at {width} px: {fault}")).collect()
}

/// The address of every screen that the demo book has.
fn addresses() -> Vec<String> {
    let book: Value = serde_json::from_slice(&std::fs::read(DEMO).expect("the demo's file")).expect("JSON");
    let list = |name: &str| book[name].as_array().expect("a list");
    let each = |name: &str, place: &str| -> Vec<String> {
        list(name).iter().map(|it| format!("{place}/{}", it["id"].as_str().expect("an id"))).collect()
    };
    let offers = |place: &str| -> Vec<String> {
        let id = |offer: &Value, of: &str| offer[of].as_str().expect("an id").to_owned();
        list("offers").iter().map(|it| format!("{place}/{}/{}", id(it, "drink"), id(it, "container"))).collect()
    };
    let firsts = ["#/drinks", "#/buying", "#/buying/containers", "#/sizes", "#/counter", "#/book"];
    [
        firsts.map(str::to_owned).to_vec(),
        each("drinks", "#/drinks"),
        offers("#/drinks"),
        each("ingredients", "#/buying/ingredient"),
        each("packagings", "#/buying/packaging"),
        each("containers", "#/buying/container"),
        each("drinks", "#/sizes"),
        offers("#/counter"),
    ]
    .concat()
}
