//! A consultant compares one size against two, keeps the two as a scenario, changes a price
//! there, adopts it, and takes that back.
//!
//! Everything is invented. Each expected figure was worked out by hand, from the sums that stand
//! beside it; none comes from the engine.

use crate::entering;
use crate::harness::{By, Journey};

#[tokio::test]
async fn one_size_against_two_as_a_scenario() {
    let journey = entering::metric_book("how_many").await;
    entered(&journey).await;
    compare(&journey).await;
    play(&journey).await;
    adopt_and_undo(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// A drink of 4.00 a litre; 300 and 500 mL bottles at 0.10 in packs of 100. 50 small at 3.00 are
/// sold a week.
async fn entered(journey: &Journey) {
    entering::ingredient(journey, "Coconut water", "10 L", "40").await;
    for (bottle, container, rim) in [("Small bottle", "Small", "320"), ("Large bottle", "Large", "520")] {
        entering::packaging(journey, bottle, "Bottle, cup or jar", "100", "10").await;
        entering::container(journey, container, rim, "20").await;
        entering::belongs(journey, bottle, "1").await;
        journey.wait_for_text("$0.100").await;
    }
    entering::drink(journey, "Palm Cooler", "Over ice", "500").await;
    entering::line(journey, "Coconut water", "500").await;
    entering::sold_in(journey, "Small").await;
    journey.enter(By::Label("Menu price"), "3").await;
    journey.enter(By::Label("Sold a week"), "50").await;
}

async fn compare(journey: &Journey) {
    journey.click(By::Text("Sizes")).await;
    journey.click(By::Text("How many sizes What one, two or three earn, and what they take to keep.")).await;
    journey.wait_for_text("Common practice, no source").await;
    journey.click(By::Text("Large")).await;
    // Small leaves 3.00 - 1.20 - 0.10 = 1.70, large 6.00 (2.10 / 0.35) - 2.10 = 3.90.
    // 60 % and 40 % of 50: 30 * 1.70 + 20 * 3.90 = 129.
    journey.type_into(By::Label("Small, % (today 100.0 %)"), "60").await;
    journey.wait_for_text("The shares add up to 60.0 %, not 100 %.").await;
    journey.type_into(By::Label("Large, % (today 0.0 %)"), "4O").await;
    journey.wait_for_text("“4O” is not a number.").await;
    journey.type_into(By::Label("Large, % (today 0.0 %)"), "40").await;
    journey.wait_for_text_gone("The shares add up to").await;
    // Four weeks of 50, 30 and 20: packs of 100.
    let plans: [&[&str]; 4] = [
        &["Plan", "Left a week", "Recipe cards", "Kinds of bottle or cup", "Kinds of lid", "Opening stock", "Lasts"],
        &["Large best of one size", "$195.00", "1", "1", "0", "$20.00", "4 weeks"],
        &["Small + Large best of two sizes", "$129.00", "2", "2", "0", "$30.00", "5 weeks"],
        &["Small today's sizes", "$85.00", "1", "1", "0", "$20.00", "4 weeks"],
    ];
    journey.expect_rows("Plans by what they bring in a week", &plans).await;
    journey
        .wait_for_text(
            "Large brings the most: $195.00 a week; today's sizes, with every drink in each of them, $85.00.",
        )
        .await;
    journey.expect_value(By::Label("Second plan"), "Small + Large").await;
    journey.choose(By::Label("First plan"), "Small").await;
    journey.enter(By::Label("Keeping one more size costs a week"), "4").await;
    // 129 - 85, less 4; 10.00 over 40.00.
    journey.wait_for_text("Two sizes earn $44.00 a week more than one ($40.00 more after $4.00 a week for keeping more sizes) and tie up $10.00 more in opening stock: paid back in 0.3 weeks. Large needs no extra sales to pay for itself: nothing is lost by having it.").await;
    // A tenth of all sales lost: 27 * 1.70 + 18 * 3.90.
    journey.enter(By::Label("Sales kept with the second, %"), "90").await;
    journey.wait_for_text("Two sizes earn $31.10 a week more than one").await;
    journey.enter(By::Label("Sales kept with the second, %"), "").await;
    journey.wait_for_text("Two sizes earn $44.00 a week more than one").await;
    journey.click(By::Text("How it came about: Small + Large")).await;
    journey.wait_for_text("Palm Cooler, Large: 20 a week at $6.00 (suggested), $3.90 left of each: $78.00.").await;
    journey.wait_for_text("Small bottle: 2 packs of 200 pieces in all, $20.00; 30 used a week, so 6.7 weeks.").await;
    journey.screenshot("plans").await;
    journey.click(By::Text("Keep the second as a scenario")).await;
}

async fn play(journey: &Journey) {
    journey.wait_for_text("$44.00 a week more than today.").await;
    journey.expect_value(By::Label("Name"), "Two sizes: Small + Large").await;
    let beside: [&[&str]; 8] = [
        &["", "Today", "Here", "Difference"],
        &["Left a week", "$85.00", "$129.00", "+$44.00"],
        &["Drinks sold a week", "50", "50", "0"],
        &["Different sizes", "1", "2", "+1"],
        &["Recipe cards to train", "1", "2", "+1"],
        // 1.30 of 3.00 is more than the 35 % that a target of 65 % leaves; 2.10 of 6.00 is not.
        &["Under their target", "1", "1", "0"],
        &["Opening stock", "$20.00", "$30.00", "+$10.00"],
        &["It lasts", "4 weeks", "5 weeks", ""],
    ];
    journey.expect_rows("Beside today's menu", &beside).await;
    journey.click(By::Text("Change Palm Cooler")).await;
    journey.enter(By::Label("Menu price of Palm Cooler, Large"), "5.50").await;
    // 20 * (5.50 - 2.10) + 30 * 1.70.
    journey.wait_for_text("$34.00 a week more than today.").await;
    let sizes = [
        "Small: $3.00, 30 a week, $51.00 left; today $3.00, 50 a week, $85.00 left.",
        "Large: $5.50, 20 a week, $68.00 left; not sold today.",
    ];
    journey.expect_each(".steps li", &sizes).await;
    journey.screenshot("scenario").await;
}

async fn adopt_and_undo(journey: &Journey) {
    journey.click(By::Text("Adopt")).await;
    journey.expect_count(".row", 2).await;
    journey.wait_for_text("$5.50").await;
    journey.click(By::Text("Undo")).await;
    journey.expect_count(".row", 1).await;
    journey.wait_for_text_gone("$5.50").await;
    journey.click(By::Text("Sizes")).await;
    journey.click(By::Text("Scenarios Another menu, beside today's.")).await;
    journey.wait_for_text("$34.00 a week more than today.").await;
    journey.click(By::Text("$119.00")).await;
    journey.expect_count(".steps li", 2).await;
    journey.click(By::Text("Drop")).await;
    journey.wait_for_text("What if the menu were another?").await;
    journey.click(By::Text("Undo")).await;
    journey.wait_for_text("$119.00").await;
}
