//! The two sizes side by side, and the card at the counter.

use crate::harness::{By, Journey};

pub async fn sizes_side_by_side(journey: &Journey) {
    journey.click(By::Text("Sizes")).await;
    journey.click(By::Text("Side by side What each size costs, earns and asks.")).await;
    journey.wait_for_text("1 drink is sold in all of these sizes. The figures are its own.").await;
    journey.choose(By::Label("What to compare"), "Orchard Walk").await;
    journey.expect_value(By::Label("What to compare"), "Orchard Walk").await;
    // A drink takes 75 s = 1.25 min of hands: 2.729947 / 1.25 and 3.513741 / 1.25.
    // Suggested as on the pages of the sizes.
    let per_drink: [&[&str]; 9] = [
        &["", "12 fl oz", "16 fl oz"],
        &["Poured", "12.0 fl oz", "16.2 fl oz"],
        &["Price", "$6.50", "$7.95"],
        &["Cost", "$3.00", "$3.52"],
        &["Left after everything", "$2.73", "$3.51"],
        &["Margin", "45.4 %", "47.7 %"],
        &["Left per minute of hands", "$2.18", "$2.81"],
        &["Suggested for the target", "$5.95", "$6.95"],
        &["Target", "on target", "on target"],
    ];
    journey.expect_rows("Per drink", &per_drink).await;
    // 7.95 - 6.50; 3.516820 - 3.000072; (3.513741 - 2.729947) / (7.361111 - 6.018519) = 0.58379.
    let whole = "From 12 fl oz to 16 fl oz the price rises by $1.45, the cost rises by $0.52: 58.4 % of the extra price \
                 is kept.";
    journey.wait_for_text(whole).await;
    // As on the pages of the sizes.
    let parts: [&[&str]; 7] = [
        &["", "12 fl oz", "16 fl oz"],
        &["Ingredients", "$1.525", "$2.011"],
        &["Container", "$0.610", "$0.625"],
        &["Labour", "$0.375", "$0.375"],
        &["Overhead", "$0.400", "$0.400"],
        &["Made but not sold", "$0.090", "$0.106"],
        &["Cost", "$3.000", "$3.517"],
    ];
    journey.expect_rows("What the cost is made of", &parts).await;
    journey.wait_for_text("Largest part of the cost: Ingredients, 50.8 % in 12 fl oz, 57.2 % in 16 fl oz.").await;
    // The figures above over 12 and over 16.15; 0.492260 / 0.541667 = 0.90879.
    let per_ounce: [&[&str]; 5] = [
        &["", "12 fl oz", "16 fl oz"],
        &["Price", "$0.542", "$0.492"],
        &["Cost", "$0.250", "$0.218"],
        &["Left after everything", "$0.227", "$0.218"],
        &["Price against the smallest", "the base", "90.9 %"],
    ];
    journey.expect_rows("Per fl oz", &per_ounce).await;
    journey
        .wait_for_text("By volume the customer pays most in 12 fl oz ($0.542) and least in 16 fl oz ($0.492).")
        .await;
    // The only step is the whole one.
    let step = "12 fl oz to 16 fl oz: asks $1.45 more, costs $0.52 more; 58.4 % of it is kept.";
    journey.expect_lines(By::Item("12 fl oz to 16 fl oz"), &[step]).await;
    journey.screenshot("side_by_side").await;
}

pub async fn a_card_without_prices(journey: &Journey) {
    journey.click(By::Text("Counter")).await;
    journey.click(By::Text("12 fl oz")).await;
    journey.wait_for_text("Fill to here: 0.80 fl oz left empty under the rim").await;
    // To use, as on the page of the size, to 0.01 in the unit that the recipe is written in. Grams
    // are no unit of a book in US units, so ginger is in ounces: 9.43931 / 28.3495 = 0.33296.
    let lines = [
        "7.08 fl oz Apples pressed",
        "4.33 fl oz Carrots pressed",
        "0.33 oz Ginger pressed",
        "0.78 fl oz Lemons pressed",
    ];
    journey.expect_each(".recipe > li", &lines).await;
    journey.wait_for_text("12.0 fl oz").await;
    journey
        .wait_for_text("Untreated juice: packaged ahead, each package must carry the warning label (United States).")
        .await;
    let allergens = "Not stated yet, so it may hold any: Apples, Carrots, Ginger, Lemons. Check the label of each, \
                     and enter it.";
    journey.expect_each(".allergens", &[allergens]).await;
    journey.wait_for_text_gone("$").await;
    journey.screenshot("card").await;
}
