//! What an owner knows of the market and of a change: prices seen elsewhere, typed on a phone, and
//! a trial judged from weeks.
//!
//! Everything is invented. The figures come from outside: the prices lie on 3.00 times the root of
//! the size in hundreds of mL, worked out by hand; the trial is the first of
//! tests/reference/data/welch.csv, whose interval scipy computed.

use std::fs;
use std::path::Path;

use brimwright::book::{Book, Drink, DrinkKind, Record, Settings, Week};
use brimwright::exchange;
use brimwright::foundation::measure::System;
use fantoccini::key::Key;

use crate::entering;
use crate::harness::{By, Journey};
use crate::support::{book, container, day, drink, ingredient, line, offer, pack, seen_price, settings, sold};

const IMPORT: By<'_> = By::Label("Import a book file");
const DISH: &str = "Invented drink 1, Invented 400 mL 1";

/// A drink of ours in 400 mL at 6.60, one price seen, and weeks of sales.
fn bar() -> Book {
    let before = ["8.124", "7.901", "8.3525", "8.01", "8.226"];
    let after = ["8.613", "8.4075", "8.799", "8.582"];
    // The week of 2024-03-18 was not written down.
    let mondays = [0, 1, 3, 4, 5, 6, 7, 8, 9].map(|weeks| day("2024-03-04").plus_weeks(weeks));
    let weeks = mondays.into_iter().zip(before.into_iter().chain(after));
    let week = |(monday, one)| Record::Week(Week { monday, sold: vec![sold(1, 1, "100", one), sold(2, 1, "7", "1")] });
    let records = [
        Record::Ingredient(ingredient(1, [pack(1, "1 L", "4")])),
        Record::Container(container(1, "400 mL")),
        Record::Drink(drink(1, "1 L", [line(1, 1, "1 L")])),
        Record::Drink(Drink { kind: DrinkKind::Shot, ..drink(2, "1 L", [line(1, 1, "1 L")]) }),
        Record::Offer(offer(1, 1, Some("6.60"))),
        Record::SeenPrice(seen_price(1, "100 mL", "3")),
    ];
    let settings = Settings { units: System::Metric, ..settings() };
    book(settings, records.into_iter().chain(weeks.map(week)))
}

async fn opened(name: &'static str) -> Journey {
    let journey = entering::empty_book(name).await;
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("attached").join(name);
    fs::create_dir_all(&folder).expect("a folder");
    let file = folder.join("invented.json");
    fs::write(&file, exchange::write(&bar())).expect("the file is written");
    journey.click(By::Text("Book")).await;
    journey.attach(IMPORT, &file).await;
    journey.click(By::Text("Replace this book")).await;
    journey.wait_for_text_gone("in place of this book").await;
    journey
}

/// A size and its price; Enter adds them.
async fn seen(journey: &Journey, size: &str, price: &str) {
    journey.type_into(By::Label("Size"), size).await;
    journey.type_into(By::Label("Price there"), price).await;
    journey.press(By::Label("Price there"), Key::Enter).await;
    journey.expect_value(By::Label("Size"), "").await;
}

#[tokio::test]
async fn prices_seen_elsewhere_show_where_ours_stand() {
    let journey = opened("seen_prices").await;
    journey.go("#/sizes/seen").await;
    journey.wait_for_text("One price is seen so far.").await;
    mistyped(&journey).await;
    // The place by one tap, then size, price and Enter: four controls; the next at the same place
    // takes three, and the caret is in its size already.
    journey.click(By::Text("Invented place 1")).await;
    seen(&journey, "225", "4.50").await;
    journey.wait_until("the caret in the size", "return document.activeElement.labels[0].innerText === 'Size'").await;
    journey.wait_for_text("Two prices are seen so far.").await;
    seen(&journey, "400", "6").await;
    journey.type_into(By::Label("Place"), "Invented stall").await;
    seen(&journey, "625", "7.50").await;
    seen(&journey, "900", "9").await;
    // 3.00 times the root of 4 is 6.00, and 6.60 is a tenth more; the root of 2 is 1.414.
    let shown = format!(
        "Of 5 prices seen, from 100 mL to 900 mL: doubling the size raises the price by 41.4 % (R² 1.00). Your {DISH} asks 10.0 % more than the curve."
    );
    journey.wait_for_text(&shown).await;
    journey.wait_for_text("price = $3.00 × (size in hundreds of mL) to the power of 0.50").await;
    let head = ["", "Size", "You ask", "Per 100 mL", "Curve", "You are"];
    let row = [DISH, "400 mL", "$6.60", "$1.650", "$6.00", "10.0 % above"];
    journey.expect_rows("What they show", &[&head, &row]).await;
    journey.expect_count(".chart-drawing .series-guide", 1).await;
    journey.screenshot("market").await;
    fits_a_narrow_phone(&journey).await;
    // Another price by a tap on its row; taken out, and back by Undo.
    journey.click(By::Text("625 mL")).await;
    journey.enter(By::Label("Its price"), "0").await;
    journey.expect_error(By::Label("Its price"), "The menu price must be more than zero.").await;
    journey.click(By::Text("Remove this price")).await;
    journey.wait_for_text("Of 4 prices seen").await;
    journey.click(By::Text("Undo")).await;
    journey.wait_for_text("Of 5 prices seen").await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// With rows and figures, which the demo's screens do not have.
async fn fits_a_narrow_phone(journey: &Journey) {
    journey.resize(320, 640).await;
    assert_eq!(journey.faults_of_layout(&[""]).await, Vec::<String>::new());
    journey.resize(360, 740).await;
}

async fn mistyped(journey: &Journey) {
    journey.type_into(By::Label("Size"), "2 lb").await;
    journey.type_into(By::Label("Price there"), "0").await;
    journey.click(By::Text("Add this price")).await;
    journey.expect_sentence(By::Label("Place"), "The place is empty. Type at least one letter.").await;
    let no_volume = "“lb” measures a weight; here a volume is needed, such as 330 mL.";
    journey.expect_sentence(By::Label("Size"), no_volume).await;
    journey.expect_sentence(By::Label("Price there"), "The menu price must be more than zero.").await;
    journey.choose_day(By::Label("Seen on"), "9999-01-01").await;
    journey.wait_for_text("1 Jan 9999 is in the future. Keep it, or go back?").await;
    journey.click(By::Text("Back")).await;
    journey.wait_for_text_gone("is in the future").await;
    journey.expect_value(By::Label("Seen on"), "2026-11-26").await;
    journey.wait_for_text("One price is seen so far.").await;
}

#[tokio::test]
async fn a_trial_is_judged_from_weeks() {
    let journey = opened("trial").await;
    journey.go("#/sizes/trials").await;
    journey.wait_for_text("Did it work?").await;
    journey.click(By::Text("Start a trial")).await;
    journey.enter(By::Label("What changes"), "Invented larger cup").await;
    journey.wait_for_text("Not enough weeks").await;
    journey.choose(By::Label("Judged by the sales of"), "Invented drink 1").await;
    journey.choose_day(By::Label("First week before"), "2024-03-06").await;
    // A Wednesday: the week's Monday is in force.
    journey.expect_value(By::Label("First week before"), "2024-03-04").await;
    // The weeks before have been; a change may be planned.
    journey.choose_day(By::Label("First week before"), "2042-03-06").await;
    journey.wait_for_text("is in the future. Keep it, or go back?").await;
    journey.click(By::Text("Back")).await;
    journey.expect_value(By::Label("First week before"), "2024-03-04").await;
    journey.choose_day(By::Label("First week with the change"), "2042-03-03").await;
    journey.expect_value(By::Label("First week with the change"), "2042-03-03").await;
    journey.wait_for_text_gone("is in the future").await;
    journey.choose_day(By::Label("First week with the change"), "2024-04-15").await;
    journey.choose_day(By::Label("Last week"), "2024-04-08").await;
    journey
        .expect_sentence(
            By::Label("Last week"),
            "The last week must come after the weeks before it. Choose a later one.",
        )
        .await;
    journey.choose_day(By::Label("Last week"), "2024-04-15").await;
    journey
        .wait_for_text("A comparison needs two weeks on each side, to see how weeks scatter: 1 week more with it.")
        .await;
    journey.choose_day(By::Label("Last week"), "2024-05-06").await;
    journey.wait_for_text("Better").await;
    let figures = [("Difference a week", "+$47.77"), ("The true one likely lies", "from +$20.99 to +$74.55")];
    journey.expect_figures("Invented larger cup", &figures).await;
    journey.wait_for_text("Mean before $812.27 over 5 weeks, with the change $860.04 over 4 weeks: $47.77 more").await;
    journey.wait_for_text("Not written down, so left out: the week of 18 Mar 2024.").await;
    let rows: [&[&str]; 10] = [
        &["", "Side", "Sold", "Left after everything"],
        &["4 Mar 2024", "before", "100", "$812.40"],
        &["11 Mar 2024", "before", "100", "$790.10"],
        &["25 Mar 2024", "before", "100", "$835.25"],
        &["1 Apr 2024", "before", "100", "$801.00"],
        &["8 Apr 2024", "before", "100", "$822.60"],
        &["15 Apr 2024", "with it", "100", "$861.30"],
        &["22 Apr 2024", "with it", "100", "$840.75"],
        &["29 Apr 2024", "with it", "100", "$879.90"],
        &["6 May 2024", "with it", "100", "$858.20"],
    ];
    journey.expect_rows("Week by week", &rows).await;
    journey.screenshot("trial").await;
    fits_a_narrow_phone(&journey).await;
    journey.click(By::Text("Trials")).await;
    journey.wait_for_text("Invented drink 1, since 15 Apr 2024").await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}
