//! Every screen of the demo book, from the narrowest phone to a desk: nothing scrolls sideways,
//! the console stays quiet, and what is to be touched is large enough.

use serde_json::Value;

use brimwright::{say, words};

use crate::entering;
use crate::harness::{By, DEMO, Journey, Screen};
use crate::support::day;

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
async fn every_screen_fits_a_tablet_on_its_side() {
    every_screen_fits("screens_1024", 1024, 768).await;
}

#[tokio::test]
async fn every_screen_fits_a_desk() {
    every_screen_fits("screens_1440", 1440, 900).await;
}

#[tokio::test]
async fn every_screen_fits_a_phone_with_text_twice_as_large() {
    fits_with_text_twice_as_large("screens_twice", 360, 740).await;
}

#[tokio::test]
async fn every_screen_fits_a_narrow_phone_with_text_twice_as_large() {
    fits_with_text_twice_as_large("screens_twice_320", 320, 640).await;
}

#[tokio::test]
async fn every_screen_fits_a_tablet_with_text_twice_as_large() {
    fits_with_text_twice_as_large("screens_twice_768", 768, 1024).await;
}

#[tokio::test]
async fn every_screen_fits_a_tablet_on_its_side_with_text_twice_as_large() {
    fits_with_text_twice_as_large("screens_twice_1024", 1024, 768).await;
}

/// WCAG 2.2, 1.4.4: text at twice its size.
async fn fits_with_text_twice_as_large(name: &'static str, width: u32, height: u32) {
    let journey = Journey::start(name).await;
    journey.open().await;
    journey.resize(width, height).await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    journey.wait_until("text twice as large", "document.documentElement.style.fontSize = '200%'; return true").await;
    let mut faults = Vec::new();
    let mut screens = screens();
    screens.retain(|screen| !screen.address.starts_with("#/print"));
    for some in screens.chunks(AT_ONCE) {
        faults.extend(journey.faults_of_screens(some).await);
    }
    // A word of the bar below stays on its line.
    let broken = "return [...document.querySelectorAll('.bar a span')].every((it) => it.getClientRects().length === 1
        && it.getBoundingClientRect().height < 2 * parseFloat(getComputedStyle(it).fontSize))";
    journey.wait_until("the words of the bar whole", broken).await;
    assert!(faults.is_empty(), "{} faults:\n{}", faults.len(), faults.join("\n"));
}

async fn every_screen_fits(name: &'static str, width: u32, height: u32) {
    let journey = Journey::start(name).await;
    let faults = faults_of_every_screen(&journey, width, height).await;
    assert!(faults.is_empty(), "{} faults:\n{}", faults.len(), faults.join("\n"));
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// What is wrong with any screen in a window of this size.
pub async fn faults_of_every_screen(journey: &Journey, width: u32, height: u32) -> Vec<String> {
    journey.open().await;
    journey.resize(width, height).await;
    // The choice of books, which has no address of its own.
    journey.wait_for_text(say!(first::start_book)).await;
    let mut faults = journey.faults_of_layout(&[""]).await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    let screens = screens();
    assert_eq!(screens.len(), 9 + 20 + 14 + 39 + 45 + 19 + 9 + 14 + 5 + 39 + 2 + 14 + 14 + 4 + 4);
    for some in screens.chunks(AT_ONCE) {
        faults.extend(journey.faults_of_screens(some).await);
    }
    // The sheet of a working, which has no address of its own.
    let working = screens.last().expect("a working's page");
    journey.go(working.address.trim_end_matches("/working")).await;
    let opens = journey.lines_of_each("main .how").await;
    journey.click(By::Text(&opens[0])).await;
    journey.expect_count("dialog[open] .step-head", 1).await;
    faults.extend(journey.faults_of_layout(&[""]).await);
    // A buying list, made for a usual week, and its sheet.
    journey.go("#/buying/list").await;
    journey.enter(By::Label(say!(market::weeks_of_sales)), "1").await;
    faults.extend(journey.faults_of_layout(&[""]).await);
    journey.click(By::Text(say!(market::make_list))).await;
    journey.wait_for_text(say!(market::finish_list)).await;
    faults.extend(journey.faults_of_layout(&["", "#/print/list"]).await);
    // A scenario with a drink that is open to change.
    journey.go("#/sizes/scenarios").await;
    journey.click(By::Text(say!(sales::copy_menu))).await;
    faults.extend(journey.faults_of_layout(&[""]).await);
    journey.enter(By::Label(say!(common::name)), "Two sizes only").await;
    entering::unfold(journey, say!(sales::drinks_as_today)).await;
    journey.click(By::Label(&say!(sales::change_drink, drink = "Orchard Green"))).await;
    faults.extend(journey.faults_of_layout(&[""]).await);
    faults
}

/// Every screen that the demo book has, with what tells it from the others.
fn screens() -> Vec<Screen> {
    let book: Value = serde_json::from_slice(&std::fs::read(DEMO).expect("the demo's file")).expect("JSON");
    let list = |name: &str| book[name].as_array().expect("a list");
    let word = |record: &Value, field: &str| record[field].as_str().expect("a text").to_owned();
    let name_of = |records: &str, id: &str| {
        let record = list(records).iter().find(|record| record["id"] == id).expect("a record of that id");
        word(record, "name")
    };
    let screen = |address: String, heading: String, text| Screen { address, heading, text };
    let each = |records: &str, place: &str, after: &str| -> Vec<Screen> {
        let of = |record: &Value| {
            let (id, name) = (word(record, "id"), word(record, "name"));
            screen(format!("{place}/{id}"), format!("{name}{after}"), "")
        };
        list(records).iter().map(of).collect()
    };
    let offers = |place: &str, page: &str, text| -> Vec<Screen> {
        let of = |offer: &Value| {
            let (drink, container) = (word(offer, "drink"), word(offer, "container"));
            let heading = format!("{} {}", name_of("drinks", &drink), name_of("containers", &container));
            screen(format!("{place}/{drink}/{container}{page}"), heading, text)
        };
        list("offers").iter().map(of).collect()
    };
    // A label and a working for each drink: those of its other sizes look alike.
    let once = |page: &str, text| -> Vec<Screen> {
        let mut sizes = offers("#/drinks", page, text);
        sizes.dedup_by_key(|screen| screen.address.split('/').nth(2).map(str::to_owned));
        sizes
    };
    let two = |first: &str, second: &str| [first, second].join(" ");
    let side_by_side = |of: &str| two(of, say!(sales::side_by_side));
    let of_pressed = |asked: String| two(&asked, say!(first::type_pressed));
    let week = |monday: &str| two(&words::week(day(monday)), say!(sales::monday_to_sunday));
    let firsts = [
        ("#/drinks", say!(first::drinks)),
        ("#/shop", say!(setup::your_shop)),
        ("#/first-price/ingredients/1", say!(setup::what_goes_in)),
        ("#/first-price/size/1", say!(setup::which_size)),
        ("#/first-price/amounts/1", say!(setup::how_much)),
        ("#/first-price/price/1", say!(setup::what_to_charge)),
        ("#/first-price/another-size/1", say!(setup::another_size)),
        ("#/buying", say!(first::buying)),
        ("#/buying/watch", say!(goods::price_watch)),
        ("#/buying/check", say!(starter::figures_to_check)),
        ("#/buying/ingredient/7/yields", &two("Carrots", say!(goods::yield_log))),
        ("#/sizes", say!(first::sizes)),
        (
            "#/sizes/decide/kind/pressed/4-3",
            &of_pressed(say!(decide::decide_switch, from = "16 oz bottle", to = "12 oz bottle")),
        ),
        ("#/sizes/decide/kind/pressed/2-", &of_pressed(say!(decide::decide_drop, size = "8 oz bottle"))),
        ("#/sizes/decide/kind/pressed/-9", &of_pressed(say!(decide::decide_add, size = "24 oz cup"))),
        ("#/sizes/price-point/kind/pressed", say!(decide::sell_under)),
        ("#/sizes/seen", say!(decide::local_prices)),
        ("#/sizes/trials", say!(sales::trials)),
        ("#/sizes/how-many/kind/pressed", say!(decide::how_many_sizes)),
        ("#/sizes/scenarios", say!(sales::scenarios)),
        ("#/sizes/trials/1", "Blended drinks up 25 cents"),
        ("#/sizes/scenarios/1", "Without the 24 oz cup"),
        ("#/sizes/menu", &side_by_side(say!(sales::whole_menu))),
        ("#/sizes/kind/pressed", &side_by_side(say!(first::type_pressed))),
        ("#/sizes/kind/blended", &side_by_side(say!(first::type_blended))),
        ("#/sizes/kind/over-ice", &side_by_side(say!(first::type_over_ice))),
        ("#/sizes/kind/shot", &side_by_side(say!(first::type_shot))),
        ("#/sizes/sales", say!(sales::sales)),
        ("#/sizes/sales/2026-11-09", &week("2026-11-09")),
        ("#/sizes/sales/2026-11-30", &week("2026-11-30")),
        ("#/counter", say!(first::counter)),
        ("#/counter/batches", say!(counter::batches)),
        ("#/counter/batches/2026-11-26", &words::batch(day("2026-11-26"))),
        ("#/counter/on-hand", say!(counter::on_hand)),
        ("#/counter/can-make", say!(counter::can_make)),
        ("#/counter/batches/2026-11-26/1/4", "Orchard Green 16 oz bottle"),
        ("#/print/prices", say!(counter::price_sheet)),
        ("#/print/cards", say!(common::recipe_cards)),
        ("#/print/batch/2026-11-26", say!(counter::batch_sheet)),
        ("#/print/report", say!(sales::client_report)),
        ("#/book", "Marrowgate Juice Hall"),
    ];
    let containers = say!(goods::packaging_kits);
    [
        firsts.map(|(address, heading)| screen(address.to_owned(), heading.to_owned(), "")).into(),
        vec![screen("#/buying/containers".to_owned(), say!(first::buying).to_owned(), containers)],
        each("drinks", "#/drinks", ""),
        offers("#/drinks", "", say!(drinks::price_goes)),
        each("ingredients", "#/buying/ingredient", ""),
        each("packagings", "#/buying/packaging", ""),
        each("containers", "#/buying/container", ""),
        each("drinks", "#/sizes/drink", &side_by_side("")),
        offers("#/counter", "", say!(counter::all_cards)),
        each("packaging-sets", "#/buying/set", ""),
        once("/label", say!(labels::label_facts)),
        once("/working", say!(working::about)),
    ]
    .into_iter()
    .flatten()
    .collect()
}
