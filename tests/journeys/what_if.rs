//! What if: prices, fills and dearer ingredients tried for one drink. Nothing changes in the book
//! until they are used, in one step that can be taken back.
//!
//! Everything is invented. Each expected figure was worked out by hand, from the formulas that
//! stand beside it; none comes from the engine.

use fantoccini::key::Key;

use crate::entering;
use crate::harness::{By, Journey};

const PRICE: By<'_> = By::Label("Large: price");
const POURED: By<'_> = By::Label("Small: poured");
const INGREDIENTS: By<'_> = By::Label("Ingredients cost more by");
const TARGET: By<'_> = By::Label("Target margin");

#[tokio::test]
async fn what_is_tried_changes_nothing_until_it_is_used() {
    let journey = entering::metric_book("what_if").await;
    journey.enter(TARGET, "60").await;
    journey.enter(By::Label("Prices may end in"), ".00 .25 .50 .75").await;
    entering::ingredient(&journey, "Coconut water", "10 L", "20").await;
    for (name, rim) in [("Small", "270"), ("Large", "520")] {
        entering::container(&journey, name, rim, "20").await;
    }
    entering::drink(&journey, "Still", "Pressed", "250").await;
    entering::line(&journey, "Coconut water", "250").await;
    sold(&journey, "Small", "4").await;
    sold(&journey, "Large", "6").await;
    journey.click(By::Text("Sizes side by side")).await;

    today(&journey).await;
    journey.click(By::Text("What if")).await;
    slid(&journey).await;
    tried(&journey).await;
    cannot_be(&journey).await;
    back_to_today(&journey).await;
    used_and_undone(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

async fn sold(journey: &Journey, container: &str, price: &str) {
    entering::sold_in(journey, container).await;
    journey.enter(By::Label("Menu price"), price).await;
    journey.click(By::Text("The drink")).await;
    journey.wait_for_text("Sizes it is sold in").await;
}

/// 250 and 500 mL of 2.00 a litre: 0.50 of 4.00 and 1.00 of 6.00. At 60 %: 1.25 and 2.50.
async fn today(journey: &Journey) {
    let rows: [&[&str]; 9] = [
        &["", "Small", "Large"],
        &["Poured", "250 mL", "500 mL"],
        &["Price", "$4.00", "$6.00"],
        &["Cost", "$0.50", "$1.00"],
        &["Left after everything", "$3.50", "$5.00"],
        &["Margin", "87.5 %", "83.3 %"],
        &["Left per minute of hands", "none", "none"],
        &["Suggested for the target", "$1.25", "$2.50"],
        &["Target", "on target", "on target"],
    ];
    journey.expect_rows("Per drink", &rows).await;
}

/// 200 mL and 500 mL of 2.50 a litre: 0.50 as before, and 1.25. 4.25 / 5.50 = 0.77273; 1.25 / 0.4 =
/// 3.125, up to 3.25.
const TRIED: [&[&str]; 9] = [
    &["", "Small", "Large"],
    &["Poured", "today 250 mL tried 200 mL", "500 mL"],
    &["Price", "$4.00", "today $6.00 tried $5.50"],
    &["Cost", "$0.50", "today $1.00 tried $1.25"],
    &["Left after everything", "$3.50", "today $5.00 tried $4.25"],
    &["Margin", "87.5 %", "today 83.3 % tried 77.3 %"],
    &["Left per minute of hands", "none", "none"],
    &["Suggested for the target", "$1.25", "today $2.50 tried $3.25"],
    &["Target", "on target", "on target"],
];

/// A step of a slider is five cents, or a millilitre.
async fn slid(journey: &Journey) {
    journey.press(By::Label("Large: price, as a slider"), Key::Left).await;
    journey.expect_value(PRICE, "5.95").await;
    journey.press(By::Label("Small: poured, as a slider"), Key::Right).await;
    journey.expect_value(POURED, "251 mL").await;
    journey.press(By::Label("Ingredients cost more by, as a slider"), Key::Right).await;
    journey.expect_value(INGREDIENTS, "1").await;
    journey.press(By::Label("Target margin, as a slider"), Key::Right).await;
    journey.expect_value(TARGET, "61").await;
    assert_eq!(journey.title_of_undo().await, "Undo: Menu price", "nothing was changed in the book");
    journey.click(By::Text("Back to today's")).await;
    today(journey).await;
}

async fn tried(journey: &Journey) {
    journey.enter(PRICE, "5.50").await;
    journey.enter(POURED, "200").await;
    journey.enter(INGREDIENTS, "25").await;
    journey.expect_rows("Per drink", &TRIED).await;
    // 5.50 - 4.00; 1.25 - 0.50; (4.25 - 3.50) / 1.50.
    let step =
        "From Small to Large the price rises by $1.50, the cost rises by $0.75: 50.0 % of the extra price is kept.";
    journey.wait_for_text(step).await;
    assert_eq!(journey.title_of_undo().await, "Undo: Menu price", "nothing was changed in the book");
    journey.screenshot("what_if").await;
}

/// What cannot be is explained at its field, and what was tried before stays.
async fn cannot_be(journey: &Journey) {
    for (field, text, error) in [
        (PRICE, "0", "The menu price must be more than zero."),
        (PRICE, "cheap", "“cheap” is not a number. Type digits, such as 9.50."),
        (POURED, "271", "The container holds 270 mL to the rim. Type less."),
        (POURED, "0", "Something must be poured. Type more than zero."),
        (INGREDIENTS, "101", "Type from -50 to 100, such as 20 for a fifth more."),
        (TARGET, "100", "The target margin must be at least 0 % and under 100 %. Type 65 for 65 %."),
    ] {
        journey.type_into(field, text).await;
        journey.expect_error(field, error).await;
        // No figures stand beside an error.
        journey.wait_for_text("to see this.").await;
        journey.wait_for_text_gone("Suggested for the target").await;
        journey.press(field, Key::Escape).await;
        journey.wait_for_text_gone("to see this.").await;
    }
    journey.expect_rows("Per drink", &TRIED).await;
    journey.type_into(PRICE, "cheap").await;
    journey.wait_for_text("to see this.").await;
}

async fn back_to_today(journey: &Journey) {
    journey.click(By::Text("Back to today's")).await;
    today(journey).await;
    journey.expect_value(PRICE, "6.00").await;
    journey.expect_error(PRICE, "").await;
    journey.expect_value(POURED, "250 mL").await;
    journey.expect_value(TARGET, "60").await;
}

async fn used_and_undone(journey: &Journey) {
    journey.enter(PRICE, "5.50").await;
    journey.enter(POURED, "200").await;
    journey.enter(INGREDIENTS, "25").await;
    journey.click(By::Text("Use this")).await;
    // The cost of ingredients is not taken over: 200 and 500 mL of 2.00 a litre.
    let rows: [&[&str]; 9] = [
        &["", "Small", "Large"],
        &["Poured", "200 mL", "500 mL"],
        &["Price", "$4.00", "$5.50"],
        &["Cost", "$0.40", "$1.00"],
        &["Left after everything", "$3.60", "$4.50"],
        &["Margin", "90.0 %", "81.8 %"],
        &["Left per minute of hands", "none", "none"],
        &["Suggested for the target", "$1.00", "$2.50"],
        &["Target", "on target", "on target"],
    ];
    journey.expect_rows("Per drink", &rows).await;
    journey.expect_value(INGREDIENTS, "0").await;
    assert_eq!(journey.title_of_undo().await, "Undo: What you tried");
    journey.click(By::Text("Undo")).await;
    today(journey).await;
    assert_eq!(journey.title_of_undo().await, "Undo: Menu price");
}
