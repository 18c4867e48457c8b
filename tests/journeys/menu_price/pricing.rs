//! What to ask: tax at the till and inside the price, goods covered and everything.
//!
//! At F fl oz the recipe is taken k = (F - 0.75) / 14.89781 times: 0.755144 for 12, 1.033709 for
//! 16.15; 0.75 fl oz of lemon juice are fixed. What is used is 1 / 0.96 of what is in the drink.

use brimwright::say;

use crate::entering::{self, expect_ladder, unfold};
use crate::harness::{By, Journey};

/// Opens one size of the drink from the list of drinks.
pub async fn open_size(journey: &Journey, container: &str) {
    journey.click(By::Text(say!(first::drinks))).await;
    journey.click(By::Text(container)).await;
    journey.wait_for_text(say!(drinks::menu_price)).await;
}

/// What is said of the price that is suggested.
pub fn suggested(price: &str, margin: &str, exact: &str) -> String {
    say!(drinks::suggested, price = price, margin = margin, exact = exact)
}

/// What is said of it where the price asked reaches the target.
pub fn lowest(price: &str, margin: &str, exact: &str) -> String {
    say!(drinks::lowest_on_target, price = price, margin = margin, exact = exact)
}

/// An ingredient in the table of amounts.
fn pressed(name: &str) -> String {
    [name, say!(drinks::pressed)].join(" ")
}

async fn is_marked(journey: &Journey, state: &str) {
    journey.expect_lines(By::Text(state), &[state]).await;
}

/// Tax of 8% added at the till, so that R is the menu price; a fee of 2.9% and 0.10; 18.00 an
/// hour; 0.40 overhead for a drink sold; 3% thrown away.
async fn terms(journey: &Journey) {
    journey.click(By::Text(say!(first::book))).await;
    let parts = [
        say!(book::this_book),
        say!(common::target_margin),
        say!(common::sales_tax),
        say!(drinks::fees),
        say!(book::shop_costs),
    ];
    for part in parts {
        unfold(journey, part).await;
    }
    journey.enter(By::Label(say!(common::name)), "Two Gates, invented").await;
    journey.expect_value(By::Label(say!(common::target_margin)), "65").await;
    journey.expect_value(By::Label(say!(book::margin_figured_on)), say!(drinks::on_goods)).await;
    journey.enter(By::Label(say!(book::price_endings)), ".50 .95").await;
    journey.enter(By::Label(say!(book::sales_tax_rate)), "8").await;
    journey.choose(By::Label(say!(common::sales_tax)), say!(drinks::tax_added)).await;
    journey.enter(By::Label(say!(book::card_fee)), "2.9").await;
    journey.enter(By::Label(say!(common::fee_per_transaction)), "0.10").await;
    journey.enter(By::Label(say!(book::hourly_wage)), "18").await;
    journey.enter(By::Label(say!(drinks::overhead)), "0.40").await;
    journey.enter(By::Label(say!(drinks::waste)), "3").await;
}

/// A size of 12 fl oz and one of 16 fl oz, each priced from its cost.
pub async fn with_tax_at_the_till(journey: &Journey) {
    terms(journey).await;

    open_size(journey, "12 fl oz").await;
    let fill = say!(drinks::fill_from, fill = "12.0 fl oz", brimful = "12.8 fl oz", headspace = "0.80 fl oz");
    unfold(journey, say!(common::fill)).await;
    journey.wait_for_text(&fill).await;
    unfold(journey, say!(drinks::recipe)).await;
    // 9 k and 5.5 k fl oz, 12 k = 9.0617 g = 0.31964 oz, 0.75 fl oz; beside it each over 0.96.
    let amounts: [&[&str]; 5] = [
        &[say!(drinks::ingredient), say!(drinks::in_the_drink), say!(drinks::amount_needed)],
        &[&pressed("Apples"), "6.8 fl oz", "7.1 fl oz"],
        &[&pressed("Carrots"), "4.2 fl oz", "4.3 fl oz"],
        &[&pressed("Ginger"), "0.3 oz", "0.3 oz"],
        &[&pressed("Lemons"), "0.75 fl oz", "0.78 fl oz"],
    ];
    journey.expect_rows(say!(drinks::recipe), &amounts).await;
    // Apples 7.07948 fl oz * 0.110960, carrots 4.32635 * 0.103178, ginger 9.43931 g / 0.7 / 453.592
    // * 2.9, lemons 0.78125 * 0.264876. Bottle and cap. Thrown away 3/97 of 1.525070 + 0.61 = 2.135070;
    // each over 2.201103.
    let costs: [&[&str]; 11] = [
        &[say!(drinks::part), say!(common::cost), say!(drinks::share)],
        &[say!(drinks::ingredients), "$1.525", "69.3%"],
        &["Apples", "$0.786", ""],
        &["Carrots", "$0.446", ""],
        &["Ginger", "$0.086", ""],
        &["Lemons", "$0.207", ""],
        &[say!(common::packaging), "$0.610", "27.7%"],
        &["12 oz bottle", "$0.525", ""],
        &["Cap, 38 mm", "$0.085", ""],
        &[say!(drinks::waste), "$0.066", "3.0%"],
        &[say!(drinks::on_goods), "$2.201", ""],
    ];
    unfold(journey, say!(common::cost)).await;
    journey.expect_rows(say!(common::cost), &costs).await;
    // Goods with what is thrown away of them: (1.525070 + 0.61) / 0.97 = 2.201103, / 0.35 = 6.28886.
    // Up to 6.50: 1 - 2.201103 / 6.5 = 0.66137.
    journey.wait_for_text(&suggested("$6.50", "66.1%", "$6.289")).await;
    let none = say!(common::none);
    goods(journey, say!(common::none_yet), none, none).await;
    is_marked(journey, say!(first::no_price_yet)).await;
    journey.click(By::Text(&say!(drinks::set_price, price = "$6.50"))).await;
    journey.expect_value(By::Label(say!(drinks::menu_price)), "6.50").await;
    // Left: 6.5 - 0.029 * 6.5 * 1.08 - 0.10 - 2.987701 = 3.20872. Paid: 6.5 * 1.08.
    goods(journey, "$6.50", "66.1%", "$3.21").await;
    // Labor (45 + 600 / 20) s at 18 / 3600, and 3/97 of it; fees 0.029 * 6.5 * 1.08 + 0.10;
    // overhead, which waste does not raise. The rows down to the margin leave 4.29, where 6.5 - 2.201103 is 4.30.
    let margin = [say!(first::margin_on_goods), "66.1%"].join(" · ");
    let rows = [
        (say!(drinks::menu_price), "$6.50"),
        (say!(drinks::ingredients), "$1.53"),
        (say!(common::packaging), "$0.61"),
        (say!(drinks::waste), "$0.07"),
        (&margin, "$4.30"),
        (say!(drinks::labor), "$0.38"),
        (say!(drinks::labor_waste), "$0.01"),
        (say!(drinks::card_fee), "$0.30"),
        (say!(drinks::profit_that_changes), "$3.61"),
        (say!(drinks::overhead), "$0.40"),
        (say!(common::profit_per_drink), "$3.21"),
    ];
    expect_ladder(journey, &rows).await;
    journey.wait_for_text(say!(drinks::rows_rounded)).await;
    journey.wait_for_text(&say!(drinks::customer_pays_with_tax, price = "$7.02")).await;
    is_marked(journey, say!(first::on_target)).await;
    journey.wait_for_text_gone(&say!(drinks::set_price, price = "")).await;
    journey.screenshot("size").await;

    open_size(journey, "16 fl oz").await;
    let fill = say!(drinks::fill_from, fill = "16.2 fl oz", brimful = "17.0 fl oz", headspace = "0.85 fl oz");
    unfold(journey, say!(common::fill)).await;
    journey.wait_for_text(&fill).await;
    unfold(journey, say!(drinks::recipe)).await;
    // As above with k = 1.033709: 9.30338, 5.68540, 12.4045 g = 0.43756 oz, 0.75.
    let amounts: [&[&str]; 5] = [
        &[say!(drinks::ingredient), say!(drinks::in_the_drink), say!(drinks::amount_needed)],
        &[&pressed("Apples"), "9.3 fl oz", "9.7 fl oz"],
        &[&pressed("Carrots"), "5.7 fl oz", "5.9 fl oz"],
        &[&pressed("Ginger"), "0.4 oz", "0.5 oz"],
        &[&pressed("Lemons"), "0.75 fl oz", "0.78 fl oz"],
    ];
    journey.expect_rows(say!(drinks::recipe), &amounts).await;
    // Each over (2.011315 + 0.625) / 0.97 = 2.717850.
    let costs: [&[&str]; 11] = [
        &[say!(drinks::part), say!(common::cost), say!(drinks::share)],
        &[say!(drinks::ingredients), "$2.011", "74.0%"],
        &["Apples", "$1.075", ""],
        &["Carrots", "$0.611", ""],
        &["Ginger", "$0.118", ""],
        &["Lemons", "$0.207", ""],
        &[say!(common::packaging), "$0.625", "23.0%"],
        &["16 oz bottle", "$0.540", ""],
        &["Cap, 38 mm", "$0.085", ""],
        &[say!(drinks::waste), "$0.082", "3.0%"],
        &[say!(drinks::on_goods), "$2.718", ""],
    ];
    unfold(journey, say!(common::cost)).await;
    journey.expect_rows(say!(common::cost), &costs).await;
    // 2.717850 / 0.35 = 7.76529, up to 7.95: 1 - 2.717850 / 7.95 = 0.65813.
    journey.wait_for_text(&suggested("$7.95", "65.8%", "$7.765")).await;
    journey.click(By::Text(&say!(drinks::set_price, price = "$7.95"))).await;
    // 7.95 - 0.029 * 8.586 - 0.10 - 3.504449 = 4.09656; 7.95 * 1.08 = 8.586.
    goods(journey, "$7.95", "65.8%", "$4.10").await;
    journey.wait_for_text(&say!(drinks::customer_pays_with_tax, price = "$8.59")).await;
}

/// The same prices with the tax inside: R is the price over 1.08, so less is left.
pub async fn with_tax_inside(journey: &Journey) {
    entering::book_part(journey, say!(common::sales_tax)).await;
    journey.choose(By::Label(say!(common::sales_tax)), say!(drinks::tax_included)).await;
    open_size(journey, "12 fl oz").await;
    // R = 6.5 / 1.08 = 6.018519: 1 - 2.201103 / R = 0.63428; left R - 0.029 * 6.5 - 0.10 - 2.987701.
    goods(journey, "$6.50", "63.4%", "$2.74").await;
    // The tax goes first: 6.5 - R; the card's 2.9 % are of 6.5.
    let margin = [say!(first::margin_on_goods), "63.4%"].join(" · ");
    let rows = [
        (say!(drinks::menu_price), "$6.50"),
        (say!(common::sales_tax), "$0.48"),
        (say!(drinks::ingredients), "$1.53"),
        (say!(common::packaging), "$0.61"),
        (say!(drinks::waste), "$0.07"),
        (&margin, "$3.82"),
        (say!(drinks::labor), "$0.38"),
        (say!(drinks::labor_waste), "$0.01"),
        (say!(drinks::card_fee), "$0.29"),
        (say!(drinks::profit_that_changes), "$3.14"),
        (say!(drinks::overhead), "$0.40"),
        (say!(common::profit_per_drink), "$2.74"),
    ];
    expect_ladder(journey, &rows).await;
    is_marked(journey, say!(first::below_target)).await;
    // 6.28886 * 1.08 = 6.79197, up to 6.95: R 6.435185, 1 - 2.201103 / R = 0.65796.
    journey.wait_for_text(&suggested("$6.95", "65.8%", "$6.792")).await;
    open_size(journey, "16 fl oz").await;
    // R = 7.361111: 1 - 2.717850 / R = 0.63078; R - 0.029 * 7.95 - 0.10 - 3.504449 = 3.52611.
    goods(journey, "$7.95", "63.1%", "$3.53").await;
    // 7.76529 * 1.08 = 8.38651, up to 8.50: R 7.870370, 1 - 2.717850 / R = 0.65467.
    journey.wait_for_text(&suggested("$8.50", "65.5%", "$8.387")).await;
}

/// A target of 40% that covers everything: the price must bear the fees too.
pub async fn covering_everything(journey: &Journey) {
    entering::book_part(journey, say!(common::target_margin)).await;
    journey.choose(By::Label(say!(book::margin_figured_on)), say!(drinks::on_all_costs)).await;
    journey.enter(By::Label(say!(common::target_margin)), "40").await;
    open_size(journey, "12 fl oz").await;
    // Margin is now what is left over R: 2.742318 / 6.018519 = 0.45565.
    let all = say!(first::margin_on_all);
    entering::expect_answer(journey, "$6.50", all, "45.6%", "$2.74").await;
    // The fees are the margin's now, and the waste of goods and labor is one: 2.510070 * 3 / 97.
    let profit = [say!(common::profit_per_drink), all, "45.6%"].join(" · ");
    let rows = [
        (say!(drinks::menu_price), "$6.50"),
        (say!(common::sales_tax), "$0.48"),
        (say!(drinks::card_fee), "$0.29"),
        (say!(drinks::ingredients), "$1.53"),
        (say!(common::packaging), "$0.61"),
        (say!(drinks::labor), "$0.38"),
        (say!(drinks::waste), "$0.08"),
        (say!(drinks::profit_that_changes), "$3.14"),
        (say!(drinks::overhead), "$0.40"),
        (&profit, "$2.74"),
    ];
    expect_ladder(journey, &rows).await;
    // (2.987701 + 0.10) / (1 - 0.4 - 0.029 * 1.08) = 5.42959 * 1.08 = 5.86396, up to 5.95: R
    // 5.509259, (R - 0.029 * 5.95 - 0.10 - 2.987701) / R = 0.40822.
    journey.wait_for_text(&lowest("$5.95", "40.8%", "$5.864")).await;
    open_size(journey, "16 fl oz").await;
    // 3.526112 / 7.361111 = 0.47902. (3.504449 + 0.10) / 0.56868 * 1.08 = 6.84534, up to 6.95.
    entering::expect_answer(journey, "$7.95", all, "47.9%", "$3.53").await;
    journey.wait_for_text(&lowest("$6.95", "40.9%", "$6.845")).await;
    // No press offers a price that earns less.
    journey.wait_for_text_gone(&say!(drinks::set_price, price = "")).await;
}

/// What stays in view while the margin covers goods.
async fn goods(journey: &Journey, price: &str, margin: &str, profit: &str) {
    entering::expect_answer(journey, price, say!(first::margin_on_goods), margin, profit).await;
}
