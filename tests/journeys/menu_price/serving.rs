//! The two sizes side by side, and the card at the counter.

use brimwright::say;

use crate::entering;
use crate::harness::{By, Journey};

pub async fn sizes_side_by_side(journey: &Journey) {
    journey.click(By::Text(say!(first::sizes))).await;
    journey.click(By::Text(say!(decide::compare_sizes))).await;
    entering::unfold(journey, say!(decide::drinks_and_sizes)).await;
    let compare = By::Label(say!(decide::which_drinks));
    journey.choose(compare, "Orchard Walk").await;
    journey.expect_each("main h1", &[&format!("Orchard Walk {}", say!(sales::side_by_side))]).await;
    for fold in
        [say!(sales::price_and_cost), say!(sales::cost_breakdown), say!(sales::by_volume), say!(sales::next_size_up)]
    {
        entering::unfold(journey, fold).await;
    }
    // A drink takes 75 s = 1.25 min of labor: 2.742318 / 1.25 and 3.526112 / 1.25.
    // Suggested as on the pages of the sizes.
    let per_drink: [&[&str]; 11] = [
        &["", "12 fl oz", "16 fl oz"],
        &[say!(common::fill), "12.0 fl oz", "16.2 fl oz"],
        &[say!(common::price), "$6.50", "$7.95"],
        &[say!(decide::before_tax), "$6.02", "$7.36"],
        &[say!(drinks::fees), "$0.29", "$0.33"],
        &[say!(common::full_cost), "$2.99", "$3.50"],
        &[say!(common::profit_per_drink), "$2.74", "$3.53"],
        &[say!(common::margin), "45.6%", "47.9%"],
        &[say!(sales::profit_per_labor_minute), "$2.19", "$2.82"],
        &[say!(common::suggested_price), "$5.95", "$6.95"],
        &[say!(sales::target), say!(first::on_target), say!(first::on_target)],
    ];
    journey.expect_rows(say!(sales::per_drink), &per_drink).await;
    // 7.95 - 6.50; 3.504449 - 2.987701; of 1.342592 more before tax, 0.107408 of tax less, 0.783794 are left, 0.58379,
    // and 0.04205 are fees.
    let whole = [
        say!(sales::price_rises, small = "12 fl oz", large = "16 fl oz", by = "$1.45"),
        say!(sales::cost_rises, by = "$0.52"),
        say!(sales::tax_rises, by = "$0.11"),
        say!(sales::fees_rise, by = "$0.04"),
        say!(sales::you_keep, kept = "$0.78", share = "58.4%"),
    ];
    journey.wait_for_text(&whole.join(" ")).await;
    // As on the pages of the sizes.
    let parts: [&[&str]; 7] = [
        &["", "12 fl oz", "16 fl oz"],
        &[say!(drinks::ingredients), "$1.525", "$2.011"],
        &[say!(common::packaging), "$0.610", "$0.625"],
        &[say!(drinks::labor), "$0.375", "$0.375"],
        &[say!(drinks::overhead), "$0.400", "$0.400"],
        &[say!(drinks::waste), "$0.078", "$0.093"],
        &[say!(common::cost), "$2.988", "$3.504"],
    ];
    journey.expect_rows(say!(sales::cost_breakdown), &parts).await;
    let biggest = say!(
        sales::biggest_cost_in_two,
        part = say!(drinks::ingredients),
        share = "51.0%",
        size = "12 fl oz",
        other_share = "57.4%",
        other = "16 fl oz"
    );
    journey.wait_for_text(&biggest).await;
    // The figures above over 12 and over 16.15; 0.492260 / 0.541667 = 0.90879.
    let per_ounce: [&[&str]; 5] = [
        &["", "12 fl oz", "16 fl oz"],
        &[say!(common::price), "$0.542", "$0.492"],
        &[say!(common::cost), "$0.249", "$0.217"],
        &[say!(sales::profit), "$0.229", "$0.218"],
        &[say!(sales::price_against_smallest), say!(sales::smallest), "90.9%"],
    ];
    journey.expect_rows(say!(sales::by_volume), &per_ounce).await;
    let pays = say!(sales::pays_most_and_least, most = "12 fl oz", high = "$0.542", least = "16 fl oz", low = "$0.492");
    journey.wait_for_text(&pays).await;
    // The only step is the whole one.
    let name = say!(sales::from_to, small = "12 fl oz", large = "16 fl oz");
    let step = [
        &*name,
        &say!(sales::price_up, by = "$1.45"),
        &say!(sales::cost_up, by = "$0.52"),
        &say!(sales::tax_rises, by = "$0.11"),
        &say!(sales::fees_rise, by = "$0.04"),
        &say!(sales::you_keep, kept = "$0.78", share = "58.4%"),
    ];
    journey.expect_lines(By::Item(&name), &[&step.join(" ")]).await;
    journey.screenshot("side_by_side").await;
}

pub async fn a_card_without_prices(journey: &Journey) {
    journey.click(By::Text(say!(first::counter))).await;
    journey.click(By::Text("Orchard Walk")).await;
    journey.click(By::Text("12 fl oz")).await;
    journey.wait_for_text(&say!(counter::fill_to_line, headspace = "0.80 fl oz")).await;
    // To use, as on the page of the size, to 0.01 in the unit that the recipe is written in. Grams
    // are no unit of a book in US units, so ginger is in ounces: 9.43931 / 28.3495 = 0.33296.
    let lines = ["7.08 fl oz Apples", "4.33 fl oz Carrots", "0.33 oz Ginger", "0.78 fl oz Lemons"];
    let lines = lines.map(|line| [line, say!(drinks::pressed)].join(" "));
    journey.expect_each(".recipe > li", &lines.each_ref().map(String::as_str)).await;
    journey.wait_for_text("12.0 fl oz").await;
    journey.wait_for_text(say!(counter::untreated_either)).await;
    let allergens = say!(labels::allergens_not_checked_sentence, names = "Apples, Carrots, Ginger, Lemons");
    journey.expect_each(".allergens", &[&allergens]).await;
    journey.wait_for_text_gone("$").await;
    journey.screenshot("card").await;
}
