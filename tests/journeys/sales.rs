//! What is sold in a week: typed, taken from a till's list, averaged, and taken back. All weeks
//! lie in the past, so that the day on which this runs does not matter.

use std::fs;
use std::path::{Path, PathBuf};

use fantoccini::key::Key;
use serde_json::{Value, json};

use crate::harness::{By, DEMO, Journey};

/// The first drink by name that is sold in cups: Berry Lantern.
const SMALL: By<'_> = By::Nth(0, &By::Label("Cup, 12 fl oz"));
const MEDIUM: By<'_> = By::Nth(0, &By::Label("Cup, 16 fl oz"));

const TILL: By<'_> = By::Label("List of sales (CSV)");

/// Two good rows and two bad ones; the fifteenth tells that the day comes first.
const LIST: &str = "Sold on;Item;Size;Number\r\n\
    08/01/2024;berry  LANTERN;Cup, 12 fl oz;30\r\n\
    15/01/2024;Berry Lantern;cup, 16 fl oz;12\r\n\
    08/01/2024;Berry Lantern;Cup, 40 fl oz;2\r\n\
    15/01/2024;Cocoa Cart;Cup, 12 fl oz;-1\r\n";

/// One Berry Lantern contributes 2.79429115 in 12 fl oz and 3.86698502 in 16, as `cargo dev price`
/// prints; the products and averages below are by hand.
#[tokio::test]
async fn a_week_is_typed_and_others_come_from_the_till() {
    let journey = without_weeks("sales").await;
    journey.go("#/sizes/sales").await;
    // 939 is the sum of the demo's usual weeks; times what each contributes, by Python's decimal.
    journey.expect_figures("A usual week", &[("Drinks a week", "939"), ("Contribution a week", "$3,346.37")]).await;
    journey.wait_for_text("Not counted: Orchard Green, Jug, 64 fl oz (no price yet).").await;
    journey.wait_for_text("No week yet.").await;
    journey.screenshot("empty").await;

    journey.go("#/sizes/sales/2024-01-01").await;
    journey.wait_for_text("Week of 1 Jan 2024").await;
    journey.enter(SMALL, "20").await;
    let figures = [("Drinks sold", "20"), ("Contribution", "$55.89")];
    journey.expect_figures("Week of 1 Jan 2024 Mon to Sun", &figures).await;
    let jug = By::Label("Jug, 64 fl oz");
    journey.enter(jug, "3").await;
    let no_price = "This size has no price yet, so nobody knows what one brings. Give it a menu price first.";
    assert_eq!(journey.sentence_of(jug).await, no_price);
    journey.wait_for_text("Fix “Jug, 64 fl oz” to see this.").await;
    journey.press(jug, Key::Escape).await;
    journey.expect_figures("Week of 1 Jan 2024 Mon to Sun", &figures).await;
    journey.screenshot("week").await;

    journey.click(By::Text("Sales")).await;
    journey.attach(TILL, &file("letter.csv", "A letter to my aunt")).await;
    let no_columns =
        "The file has no columns: no comma, semicolon or tab stands in its first line. Save the list as CSV.";
    journey.wait_for_text(no_columns).await;

    let list = file("list.csv", LIST);
    journey.attach(TILL, &list).await;
    journey.wait_for_text("Choose which column says what was sold and which how many.").await;
    for (column, head) in
        [("Drink, or drink and size", "Item"), ("Size", "Size"), ("How many", "Number"), ("Day", "Sold on")]
    {
        journey.choose(By::Label(column), head).await;
    }
    journey.wait_for_text("2 rows can be taken in; 2 rows will be left out:").await;
    let weeks =
        ["Week of 8 Jan 2024: 30 sold, contribution $83.83", "Week of 15 Jan 2024: 12 sold, contribution $46.40"];
    journey.expect_each(".till-weeks li", &weeks).await;
    let bad = [
        "Line 4: “08/01/2024 | Berry Lantern | Cup, 40 fl oz | 2”. Berry Lantern is not sold in “Cup, 40 fl oz”.",
        "Line 5: “15/01/2024 | Cocoa Cart | Cup, 12 fl oz | -1”. The number is below zero, as for returns. \
         Take returns off what was sold, in the list.",
    ];
    journey.expect_each(".till-bad li", &bad).await;
    journey.screenshot("till").await;
    journey.click(By::Text("Take these sales in")).await;
    journey.wait_for_text("2 rows taken in. 2 rows left out. Undo takes them out again.").await;
    let written = [
        "Week of 15 Jan 2024 12 sold $46.40",
        "Week of 8 Jan 2024 30 sold $83.83",
        "Week of 1 Jan 2024 20 sold $55.89",
    ];
    journey.expect_each(".rows li", &written).await;

    // The columns are remembered.
    journey.attach(TILL, &list).await;
    journey.expect_value(By::Label("How many"), "Number").await;
    journey.wait_for_text("2 rows can be taken in; 2 rows will be left out:").await;
    journey.click(By::Text("Leave it")).await;

    // (20 + 30 + 0) / 3 and (0 + 0 + 12) / 3.
    journey.expect_value(SMALL, "34").await;
    journey.click(By::Text("Use the average of the last 4 weeks as the usual week")).await;
    journey.expect_value(SMALL, "16.7").await;
    journey.expect_value(MEDIUM, "4").await;
    journey.screenshot("averaged").await;
    journey.click(By::Text("Undo")).await;
    journey.expect_value(SMALL, "34").await;
    journey.expect_value(MEDIUM, "42").await;
    journey.click(By::Text("Undo")).await;
    journey.expect_each(".rows li", &written[2..]).await;
    journey.wait_until_saved().await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// The demo book before anybody wrote a week down.
async fn without_weeks(name: &'static str) -> Journey {
    let journey = Journey::start(name).await;
    journey.open().await;
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.wait_for_text("Orchard Green").await;
    let mut book: Value = serde_json::from_slice(&fs::read(DEMO).expect("the demo's file")).expect("JSON");
    book["weeks"] = json!([]);
    journey.click(By::Text("Book")).await;
    journey.attach(By::Label("Import a book file"), &file("book.json", &book.to_string())).await;
    journey.click(By::Text("Replace this book")).await;
    journey.wait_for_text_gone("in place of this book").await;
    journey
}

/// A file to be attached.
fn file(name: &str, text: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("attached").join("sales");
    fs::create_dir_all(&folder).expect("a folder");
    let path = folder.join(name);
    fs::write(&path, text).expect("the file is written");
    path
}
