//! What is sold in a week: typed, taken from a till's list, averaged, and taken back. All weeks
//! lie in the past, so that the day on which this runs does not matter.

use std::fs;
use std::path::{Path, PathBuf};

use brimwright::say;
use fantoccini::key::Key;
use serde_json::{Value, json};

use crate::entering;
use crate::harness::{By, DEMO, Journey};

/// The first drink by name that is sold in cups: Berry Lantern.
const SMALL: By<'_> = By::Nth(0, &By::Label("12 oz cup"));
const MEDIUM: By<'_> = By::Nth(0, &By::Label("16 oz cup"));

/// Two good rows and two bad ones; the fifteenth tells that the day comes first.
const LIST: &str = "Sold on;Item;Size;Number\r\n\
    08/01/2024;berry  LANTERN;12 oz cup;30\r\n\
    15/01/2024;Berry Lantern;16 OZ Cup;12\r\n\
    08/01/2024;Berry Lantern;40 oz cup;2\r\n\
    15/01/2024;Cocoa Cart;12 oz cup;-1\r\n";

/// One Berry Lantern contributes 1.65271872 in 12 fl oz and 2.68643972 in 16, as `cargo dev price`
/// prints and `tests/reference/data/demo_books.py` counts; the products and averages below are by hand.
#[tokio::test]
async fn a_week_is_typed_and_others_come_from_the_till() {
    let journey = without_weeks("sales").await;
    journey.go("#/sizes/sales").await;
    // 939 is the sum of the demo's usual weeks; times what each contributes, by Python's decimal.
    let typical = [(say!(common::drinks_sold_per_week), "939"), (say!(common::profit_per_week), "$1,919.98")];
    journey.expect_figures(say!(sales::typical_week), &typical).await;
    let jug = say!(sales::size_without_price, size = "Orchard Green, 64 oz jug");
    entering::unfold(&journey, say!(common::show_the_math)).await;
    journey.wait_for_text(&say!(sales::not_counted, sizes = jug)).await;
    journey.wait_for_text(say!(sales::no_weeks_yet)).await;
    journey.screenshot("empty").await;

    journey.go("#/sizes/sales/2024-01-01").await;
    let first_week = say!(sales::week_of, day = "Jan 1, 2024");
    let heading = [&*first_week, say!(sales::monday_to_sunday)].join(" ");
    journey.wait_for_text(&first_week).await;
    journey.enter(SMALL, "20").await;
    let figures = [(say!(sales::drinks_sold), "20"), (say!(sales::profit), "$33.05")];
    journey.expect_figures(&heading, &figures).await;
    // A week is no average: its drinks are whole, and others are asked about.
    journey.enter(SMALL, "1.5").await;
    journey.wait_for_text(say!(book::check_this)).await;
    journey.screenshot("asked").await;
    journey.click(By::Text(say!(book::back))).await;
    journey.expect_figures(&heading, &figures).await;
    let jug = "64 oz jug";
    journey.enter(By::Label(jug), "3").await;
    assert_eq!(journey.sentence_of(By::Label(jug)).await, say!(sales::no_price_yet));
    journey.wait_for_text(&say!(book::fix_field_to_see, field = jug)).await;
    journey.press(By::Label(jug), Key::Escape).await;
    journey.expect_figures(&heading, &figures).await;
    journey.screenshot("week").await;

    journey.click(By::Text(say!(sales::sales))).await;
    entering::unfold(&journey, say!(sales::register_sales)).await;
    let register = By::Label(say!(sales::sales_file));
    journey.attach(register, &file("letter.csv", "A letter to my aunt")).await;
    journey.wait_for_text(say!(sales::file_without_columns)).await;

    let list = file("list.csv", LIST);
    journey.attach(register, &list).await;
    journey.wait_for_text(say!(sales::choose_columns)).await;
    for (column, head) in [
        (say!(sales::column_drink), "Item"),
        (say!(sales::column_size), "Size"),
        (say!(sales::column_quantity), "Number"),
        (say!(sales::column_date), "Sold on"),
    ] {
        journey.choose(By::Label(column), head).await;
    }
    let two_and_two = [say!(sales::rows_ready, rows = 2_usize), say!(sales::rows_to_skip, rows = 2_usize)].join(" ");
    journey.wait_for_text(&two_and_two).await;
    let week = |day: &str, drinks: usize, profit: &str| {
        say!(sales::week_to_import, day = day, drinks = drinks, profit = profit)
    };
    let weeks = [week("Jan 8, 2024", 30, "$49.58"), week("Jan 15, 2024", 12, "$32.24")];
    journey.expect_each(".till-weeks li", &weeks.each_ref().map(String::as_str)).await;
    let unknown = say!(sales::row_of_unknown_size, drink = "Berry Lantern", size = "40 oz cup");
    let bad = [
        say!(sales::row_skipped, line = "4", row = "08/01/2024 | Berry Lantern | 40 oz cup | 2", why = unknown),
        say!(
            sales::row_skipped,
            line = "5",
            row = "15/01/2024 | Cocoa Cart | 12 oz cup | -1",
            why = say!(sales::row_below_zero)
        ),
    ];
    journey.expect_each(".till-bad li", &bad.each_ref().map(String::as_str)).await;
    journey.screenshot("till").await;
    journey.click(By::Text(say!(sales::import_sales))).await;
    let imported = [
        say!(sales::rows_imported, rows = 2_usize),
        say!(sales::rows_skipped, rows = 2_usize),
        say!(sales::undo_import).to_owned(),
    ];
    journey.wait_for_text(&imported.join(" ")).await;
    let row = |day: &str, drinks: usize, profit: &str| {
        let (week, sold) = (say!(sales::week_of, day = day), say!(sales::drinks_in_week, drinks = drinks));
        [week, sold, profit.to_owned()].join(" ")
    };
    let written =
        [row("Jan 15, 2024", 12, "$32.24"), row("Jan 8, 2024", 30, "$49.58"), row("Jan 1, 2024", 20, "$33.05")];
    let written = written.each_ref().map(String::as_str);
    journey.expect_each(".rows li", &written).await;

    // The columns are remembered.
    journey.attach(register, &list).await;
    journey.expect_value(By::Label(say!(sales::column_quantity)), "Number").await;
    journey.wait_for_text(&two_and_two).await;
    journey.click(By::Text(say!(first::cancel))).await;

    over_time(&journey).await;
    // (20 + 30 + 0) / 3 and (0 + 0 + 12) / 3.
    entering::unfold(&journey, say!(sales::typical_by_size)).await;
    journey.expect_value(SMALL, "34").await;
    journey.click(By::Text(say!(sales::use_average))).await;
    journey.expect_value(SMALL, "16.7").await;
    journey.expect_value(MEDIUM, "4").await;
    journey.screenshot("averaged").await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.expect_value(SMALL, "34").await;
    journey.expect_value(MEDIUM, "42").await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.expect_each(".rows li", &written[2..]).await;
    journey.wait_until_saved().await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// The chart of the weeks is read by its keys, and its figures stand in a table.
async fn over_time(journey: &Journey) {
    let chart = say!(sales::chart_of, what = say!(sales::profit));
    let read = |day: &str, profit: &str| {
        let week = say!(sales::named_figure, name = say!(sales::week_beginning), figure = day);
        let profit = say!(sales::named_figure, name = say!(sales::profit), figure = profit);
        [week, profit].join(" · ")
    };
    let weeks = [read("Jan 1", "$33.05"), read("Jan 8", "$49.58"), read("Jan 15", "$32.24")];
    for (key, shown) in [
        (Key::Home, &weeks[0]),
        (Key::Right, &weeks[1]),
        (Key::End, &weeks[2]),
        (Key::Right, &weeks[2]),
        (Key::Left, &weeks[1]),
    ] {
        journey.press(By::Label(&chart), key).await;
        journey.expect_each(".chart-reading", &[shown]).await;
    }
    journey.expect_count(".chart-cross circle", 1).await;
    journey.press(By::Label(&chart), Key::Escape).await;
    journey.expect_each(".chart-reading", &[""]).await;
    entering::unfold(journey, say!(sales::chart_figures)).await;
    let (week, profit) = (say!(sales::week_beginning), say!(sales::profit));
    let rows: [&[&str]; 4] = [&[week, profit], &["Jan 1", "$33.05"], &["Jan 8", "$49.58"], &["Jan 15", "$32.24"]];
    journey.expect_rows(say!(sales::chart_figures), &rows).await;
}

/// The demo book before anybody wrote a week down.
async fn without_weeks(name: &'static str) -> Journey {
    let journey = Journey::start(name).await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    let mut book: Value = serde_json::from_slice(&fs::read(DEMO).expect("the demo's file")).expect("JSON");
    book["weeks"] = json!([]);
    journey.click(By::Text(say!(first::book))).await;
    journey.attach(By::Label(say!(book::import_book_file)), &file("book.json", &book.to_string())).await;
    journey.click(By::Text(say!(book::replace_book))).await;
    journey.wait_for_text_gone(say!(book::replace_book)).await;
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
