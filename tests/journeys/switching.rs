//! From 16 to 12 fl oz: how many must be sold then, what it costs once, the change made and taken
//! back; and a price that is given.
//!
//! Everything is invented. Each expected figure was worked out by hand, from the formulas that
//! stand beside it, logarithms with Python 3; none comes from the engine.

use crate::entering;
use crate::harness::{By, Journey};

const PRICE: By<'_> = By::Label("New price of Mango Lane");

#[tokio::test]
async fn a_smaller_size_takes_the_place_of_a_larger_one() {
    let journey = entering::empty_book("switching").await;
    open(&journey).await;
    journey.wait_for_text("Would another size earn as much?").await;
    bought(&journey).await;
    // 1.20 of base, 2.00 of mango and 0.25 of cup: 4.55 of 8.00 are left.
    entering::drink(&journey, "Mango Lane", "Blended", "16").await;
    entering::line(&journey, "Base", "12").await;
    entering::line(&journey, "Mango", "4").await;
    entering::sold_in(&journey, "Large cup").await;
    journey.enter(By::Label("Menu price"), "8").await;
    unknown_sales(&journey).await;
    sells(&journey).await;
    loses(&journey).await;
    costs_once(&journey).await;
    sold_in_the_new_size(&journey).await;
    a_price_is_given(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

async fn bought(journey: &Journey) {
    entering::ingredient(journey, "Base", "100 fl oz", "10").await;
    entering::ingredient(journey, "Mango", "100 fl oz", "50").await;
    entering::packaging(journey, "16 oz cup", "Bottle, cup or jar", "100", "25").await;
    entering::packaging(journey, "12 oz cup", "Bottle, cup or jar", "500", "100").await;
    for (name, rim, poured, cup, each) in [
        ("Large cup", "17", "16.0 fl oz", "16 oz cup", "$0.250"),
        ("Small cup", "13", "12.0 fl oz", "12 oz cup", "$0.200"),
    ] {
        entering::container(journey, name, rim, "1").await;
        journey.expect_figures("How full it is poured", &[("Poured", poured)]).await;
        entering::belongs(journey, cup, "1").await;
        journey.wait_for_text(each).await;
    }
}

async fn open(journey: &Journey) {
    journey.go("#/sizes/switching").await;
}

/// 0.9 of base, 1.50 of mango and 0.20 of cup: 2.60 / 0.35 = 7.43, so 7.50 is suggested and 4.90
/// left; 4.55 / 4.90 = 0.928571, ln of it / ln 0.9375 = 1.1483.
async fn unknown_sales(journey: &Journey) {
    open(journey).await;
    journey.expect_value(By::Label("Sold now in"), "Large cup").await;
    journey.expect_value(By::Label("To be sold in"), "Small cup").await;
    journey.expect_value(PRICE, "7.50").await;
    journey.expect_sentence(PRICE, "now $8.00; suggested for the target").await;
    journey.expect_each(".switch-answer", &["Sell 93 for every 100 sold now (−7.1 %)"]).await;
    journey.wait_for_text("No weekly sales are entered, so 100 of each drink are counted with").await;
    journey
        .wait_for_text(
            "Each drink earns more although its price is 6.3 % lower: it breaks even with 7.1 % fewer buyers. \
             Price elasticity at break-even: +1.15.",
        )
        .await;
    journey.choose(By::Label("To be sold in"), "Large cup").await;
    journey.wait_for_text("Both sizes are Large cup. Choose another one to go to.").await;
    journey.choose(By::Label("To be sold in"), "Small cup").await;
    journey.click(By::Text("Mango Lane")).await;
    journey.click(By::Text("Large cup")).await;
    journey.enter(By::Label("Sold a week"), "120").await;
}

/// At 6.00, 3.40 is left: 120 * 4.55 / 3.40 = 160.59; ln 1.338235 / ln 0.75 = -1.0128.
async fn sells(journey: &Journey) {
    open(journey).await;
    journey.type_into(PRICE, "6").await;
    journey.expect_each(".switch-answer", &["Sell 161 instead of 120 a week (+33.8 %)"]).await;
    journey.wait_for_text("120 sold now × $4.55 left of each ÷ $3.40 left of each in the new size = 160.59").await;
    journey
        .wait_for_text(
            "It breaks even if the price, 25.0 % lower, brings 33.8 % more buyers: about 1.01 % more for each 1 % off. \
             Price elasticity at break-even: −1.01.",
        )
        .await;
    // 0.9 * 408.00 against 546.00; even at 546 / 408.
    journey.enter(By::Label("Sales kept"), "90").await;
    journey.wait_for_text("With 90 % of the sales kept, a week brings $367.20, today $546.00: $178.80 less.").await;
    journey.wait_for_text("It crosses today's $546.00 at 133.8 %: above that the new size earns more.").await;
    let rows: [&[&str]; 8] = [
        &["", "Sold", "Left", "More than today"],
        &["70 % kept", "84", "$285.60", "−$260.40"],
        &["80 % kept", "96", "$326.40", "−$219.60"],
        &["90 % kept", "108", "$367.20", "−$178.80"],
        &["100 % kept", "120", "$408.00", "−$138.00"],
        &["110 % kept", "132", "$448.80", "−$97.20"],
        &["120 % kept", "144", "$489.60", "−$56.40"],
        &["130 % kept", "156", "$530.40", "−$15.60"],
    ];
    journey.expect_rows("If fewer or more are sold", &rows).await;
    journey.screenshot("sells").await;
}

async fn loses(journey: &Journey) {
    journey.type_into(PRICE, "0").await;
    journey.expect_error(PRICE, "The price must be more than zero.").await;
    journey.wait_for_text("Fix “New price of Mango Lane” to see this.").await;
    journey.wait_for_text_gone("Sell 161 instead of 120 a week").await;
    journey.type_into(PRICE, "2.50").await;
    journey.expect_each(".switch-answer", &["No number of drinks earns the same"]).await;
    journey
        .wait_for_text(
            "Mango Lane: −$0.10 is left of $2.50 in Small cup, a loss. However many are sold, it does not earn what it \
             earns now. Ask more in the new size, or make it for less.",
        )
        .await;
    journey.screenshot("loses").await;
}

/// With the price suggested again 0.90 * 120 * 4.90 = 529.20 is less than today; all of it is
/// 588.00, 42.00 more: 100 for cups and 110 for labels are back in 5 weeks.
async fn costs_once(journey: &Journey) {
    journey.enter(PRICE, "").await;
    journey.expect_value(PRICE, "7.50").await;
    journey.wait_for_text("12 oz cup: 1 pack at first, $100.00.").await;
    journey.enter(By::Label("Labels and printing"), "110").await;
    let figures = |weeks| [("Once, all together", "$210.00"), ("Pays back after", weeks)];
    journey.expect_figures("What it costs once", &figures("does not pay back")).await;
    journey.enter(By::Label("Sales kept"), "100").await;
    journey.expect_figures("What it costs once", &figures("5.0 weeks")).await;
    journey.wait_for_text("$210.00 once ÷ $42.00 more a week = 5.0 weeks.").await;
    journey.enter(By::Label("Sales kept"), "95").await;
}

async fn sold_in_the_new_size(journey: &Journey) {
    journey.click(By::Text("Sell it in Small cup instead")).await;
    journey.wait_for_text("Sold in Small cup from now on. Undo takes it back.").await;
    journey.click(By::Text("Drinks")).await;
    journey.click(By::Text("Mango Lane")).await;
    journey.click(By::Text("Small cup")).await;
    journey.expect_value(By::Label("Menu price"), "7.50").await;
    journey.expect_value(By::Label("Sold a week"), "114").await;
    journey.click(By::Text("Undo")).await;
    journey.wait_for_text("Not in the book").await;
    journey.click(By::Text("The drink")).await;
    journey.click(By::Text("Large cup")).await;
    journey.expect_value(By::Label("Menu price"), "8.00").await;
    journey.expect_value(By::Label("Sold a week"), "120").await;
}

/// 6.50 * 0.35 less the cup leaves 2.025, 10.125 fl oz; with x fl oz of mango to 12 of base
/// 16 (0.5 x + 1.2) / (x + 12) = 2.025, x = 0.853556 of 4. In the small cup 2.075.
async fn a_price_is_given(journey: &Journey) {
    journey.go("#/sizes/price-point").await;
    journey.wait_for_text("Type a price to see what fits.").await;
    journey.enter(By::Label("It must not cost more than"), "0").await;
    journey.wait_for_text("The price must be more than zero.").await;
    journey.enter(By::Label("It must not cost more than"), "6.50").await;
    journey.wait_for_text("At $6.50, 1 of 1 would have to give something up.").await;
    let large = "It has to save $1.18 on ingredients: 36.7 % of the $3.20 that they cost. \
                 Or pour 5.9 fl oz less: 10.1 fl oz instead of 16.0 fl oz. \
                 Look first at Mango, $2.00 of it: 78.7 % less of it would do alone, the rest of the recipe filling the size.";
    let figures = "Ingredients may cost $2.03 They cost now $3.20 Largest fill 10.1 fl oz";
    journey.expect_each(".give-up", &[&format!("Mango Lane, Large cup under target {figures} {large}")]).await;
    journey.choose(By::Label("For which drinks"), "Mango Lane").await;
    journey.click(By::Text("Small cup")).await;
    // 12 (0.5 x + 1.2) / (x + 12) = 2.075, x = 2.675159: 33.1210 % less; 2.075 / 0.2 = 10.375.
    let small = "It has to save $0.33 on ingredients: 13.5 % of the $2.40 that they cost. \
                 Or pour 1.7 fl oz less: 10.3 fl oz instead of 12.0 fl oz. \
                 Look first at Mango, $1.50 of it: 33.2 % less of it would do alone, the rest of the recipe filling the size.";
    let sizes = [
        format!("Mango Lane, Large cup under target {large}"),
        format!("Mango Lane, Small cup (not sold in it) under target {small}"),
    ];
    journey.expect_each(".give-up", &sizes.each_ref().map(String::as_str)).await;
    let rows: [&[&str]; 7] = [
        &["", "Small cup", "Large cup"],
        &["It may cost", "$2.28", "$2.28"],
        &["Of that, ingredients", "$2.08", "$2.03"],
        &["Ingredients per fl oz", "$0.173", "$0.127"],
        &["Ingredients now", "$2.40", "$3.20"],
        &["Largest fill", "10.4 fl oz", "10.1 fl oz"],
        &["At this price", "under target", "under target"],
    ];
    journey.expect_rows("Size by size", &rows).await;
    journey.screenshot("price_point").await;
    // 10.00 * 0.35 = 3.50: 0.10 and 0.90 to spare.
    journey.enter(By::Label("It must not cost more than"), "10").await;
    journey.wait_for_text("At $10.00, none of 2 would have to give anything up.").await;
    journey.wait_for_text("It fits: $0.05 more may go into ingredients.").await;
}
