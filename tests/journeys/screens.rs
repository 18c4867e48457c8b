//! Every screen of the demo book, from the narrowest phone to a desk: nothing scrolls sideways,
//! the console stays quiet, and what is to be touched is large enough.

use serde_json::Value;

use crate::harness::{By, DEMO, Journey};

/// How many screens are looked at in one go.
const AT_ONCE: usize = 20;

#[tokio::test]
async fn every_screen_fits_a_narrow_phone() {
    every_screen_fits("screens_320", 320, 640).await;
}

#[tokio::test]
async fn every_screen_fits_a_phone() {
    every_screen_fits("screens_360", 360, 740).await;
}

#[tokio::test]
async fn every_screen_fits_a_tablet() {
    every_screen_fits("screens_768", 768, 1024).await;
}

#[tokio::test]
async fn every_screen_fits_a_desk() {
    every_screen_fits("screens_1440", 1440, 900).await;
}

/// WCAG 2.2, 1.4.4: text at twice its size.
#[tokio::test]
async fn every_screen_fits_a_phone_with_text_twice_as_large() {
    let journey = Journey::start("screens_twice").await;
    journey.open().await;
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.wait_for_text("Orchard Green").await;
    journey.wait_until("text twice as large", "document.documentElement.style.fontSize = '200%'; return true").await;
    let mut faults = Vec::new();
    let addresses = addresses();
    let addresses: Vec<&str> = addresses.iter().map(String::as_str).filter(|it| !it.starts_with("#/print")).collect();
    for some in addresses.chunks(AT_ONCE) {
        faults.extend(journey.faults_of_layout(some).await);
    }
    // A word of the bar below stays on its line.
    let broken = "return [...document.querySelectorAll('.bar a span')].every((it) => it.getClientRects().length === 1
        && it.getBoundingClientRect().height < 2 * parseFloat(getComputedStyle(it).fontSize))";
    journey.wait_until("the words of the bar whole", broken).await;
    assert!(faults.is_empty(), "{} faults:\n{}", faults.len(), faults.join("\n"));
}

async fn every_screen_fits(name: &'static str, width: u32, height: u32) {
    let journey = Journey::start(name).await;
    journey.open().await;
    journey.resize(width, height).await;
    // The choice of books, which has no address of its own.
    journey.wait_for_text("Start an empty book").await;
    let mut faults = journey.faults_of_layout(&[""]).await;
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.wait_for_text("Orchard Green").await;
    let addresses = addresses();
    let addresses: Vec<&str> = addresses.iter().map(String::as_str).collect();
    assert_eq!(addresses.len(), 18 + 14 + 39 + 45 + 19 + 9 + 14 + 5 + 39 + 2 + 14 + 14 + 3 + 4);
    for some in addresses.chunks(AT_ONCE) {
        faults.extend(journey.faults_of_layout(some).await);
    }
    // The sheet of a working, which has no address of its own.
    let working = addresses.last().expect("a working's page");
    journey.go(working.trim_end_matches("/working")).await;
    let opens = journey.lines_of_each(".figures .how").await;
    journey.click(By::Text(&opens[0])).await;
    journey.expect_count("dialog[open] .step-head", 1).await;
    faults.extend(journey.faults_of_layout(&[""]).await);
    // A buying list, made for a usual week, and its sheet.
    journey.go("#/buying/list").await;
    journey.enter(By::Label("And so many usual weeks"), "1").await;
    faults.extend(journey.faults_of_layout(&[""]).await);
    journey.click(By::Text("Make the list")).await;
    journey.wait_for_text("Done with this list").await;
    faults.extend(journey.faults_of_layout(&["", "#/print/list"]).await);
    // A scenario with a drink that is open to change.
    journey.go("#/sizes/scenarios").await;
    journey.click(By::Text("Copy today's menu")).await;
    faults.extend(journey.faults_of_layout(&[""]).await);
    journey.enter(By::Label("Name"), "Two sizes only").await;
    journey.click(By::Text("Change Orchard Green")).await;
    faults.extend(journey.faults_of_layout(&[""]).await);
    assert!(faults.is_empty(), "{} faults:\n{}", faults.len(), faults.join("\n"));
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
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
    // A label and a working for each drink: those of its other sizes look alike.
    let once = |page: &str| -> Vec<String> {
        let mut sizes = offers("#/drinks");
        sizes.dedup_by_key(|address| address.rsplit_once('/').map(|(drink, _)| drink.to_owned()));
        sizes.iter().map(|size| format!("{size}/{page}")).collect()
    };
    let firsts = [
        "#/drinks",
        "#/buying",
        "#/buying/containers",
        "#/buying/watch",
        "#/buying/ingredient/7/yields",
        "#/sizes",
        "#/sizes/switching",
        "#/sizes/price-point",
        "#/sizes/seen",
        "#/sizes/trials",
        "#/sizes/how-many",
        "#/sizes/scenarios",
        "#/sizes/trials/1",
        "#/sizes/scenarios/1",
        "#/counter",
        "#/print/prices",
        "#/print/cards",
        "#/book",
    ];
    let parts_of_the_menu = ["menu", "kind/pressed", "kind/blended", "kind/over-ice", "kind/shot"];
    [
        firsts.map(str::to_owned).to_vec(),
        each("drinks", "#/drinks"),
        offers("#/drinks"),
        each("ingredients", "#/buying/ingredient"),
        each("packagings", "#/buying/packaging"),
        each("containers", "#/buying/container"),
        each("drinks", "#/sizes/drink"),
        parts_of_the_menu.map(|part| format!("#/sizes/{part}")).to_vec(),
        offers("#/counter"),
        each("packaging-sets", "#/buying/set"),
        ["#/sizes/sales", "#/sizes/sales/2026-11-09", "#/sizes/sales/2026-11-30"].map(str::to_owned).to_vec(),
        ["#/counter/batches", "#/counter/batches/2026-11-26", "#/counter/on-hand", "#/print/batch/2026-11-26"]
            .map(str::to_owned)
            .to_vec(),
        once("label"),
        once("working"),
    ]
    .concat()
}
