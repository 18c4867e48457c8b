//! What to ask: tax at the till and inside the price, goods covered and everything.
//!
//! At F fl oz the recipe is taken k = (F - 0.75) / 14.89781 times: 0.755144 for 12, 1.033709 for
//! 16.15; 0.75 fl oz of lemon juice are fixed. What is used is 1 / 0.96 of what is in the drink.

use crate::harness::{By, Journey};

/// Opens one size of the drink from the list of drinks.
pub async fn open_size(journey: &Journey, container: &str) {
    journey.click(By::Text("Drinks")).await;
    journey.click(By::Text(container)).await;
    journey.wait_for_text("Menu price").await;
}

/// Tax of 8 % added at the till, so that R is the menu price; a fee of 2.9 % and 0.10; 18.00 an
/// hour; 0.40 overhead; 3 % thrown away.
pub async fn with_tax_at_the_till(journey: &Journey) {
    journey.click(By::Text("Book")).await;
    journey.enter(By::Label("Name"), "Two Gates, invented").await;
    journey.expect_value(By::Label("Target margin"), "65").await;
    journey.expect_value(By::Label("It must cover"), "Goods").await;
    journey.enter(By::Label("Prices may end in"), ".50 .95").await;
    journey.enter(By::Label("Tax rate"), "8").await;
    journey.choose(By::Label("Where the tax stands"), "Added at the till").await;
    journey.enter(By::Label("Payment fee"), "2.9").await;
    journey.enter(By::Label("And per payment"), "0.10").await;
    journey.enter(By::Label("Hourly wage, all included"), "18").await;
    journey.enter(By::Label("Overhead per drink"), "0.40").await;
    journey.enter(By::Label("Made but not sold"), "3").await;

    open_size(journey, "12 fl oz").await;
    journey.wait_for_text("Poured 12.0 fl oz: 12.8 fl oz to the rim less 0.80 fl oz left empty.").await;
    // 9 k and 5.5 k fl oz, 12 k = 9.0617 g = 0.31964 oz, 0.75 fl oz; beside it each over 0.96.
    let amounts: [&[&str]; 5] = [
        &["Ingredient", "In the drink", "To use"],
        &["Apples pressed", "6.8 fl oz", "7.1 fl oz"],
        &["Carrots pressed", "4.2 fl oz", "4.3 fl oz"],
        &["Ginger pressed", "0.3 oz", "0.3 oz"],
        &["Lemons pressed", "0.75 fl oz", "0.78 fl oz"],
    ];
    journey.expect_rows("What goes in", &amounts).await;
    // Apples 7.07948 fl oz * 0.110960, carrots 4.32635 * 0.103178, ginger 9.43931 g / 0.7 / 453.592
    // * 2.9, lemons 0.78125 * 0.264876. Bottle and cap. (45 + 600 / 20) s at 18 / 3600. Thrown away
    // 3/97 of 1.525070 + 0.61 + 0.375 + 0.40 = 2.910070.
    let costs: [&[&str]; 13] = [
        &["Part", "Cost", "Share"],
        &["Ingredients", "$1.525", "50.8 %"],
        &["Apples", "$0.786", ""],
        &["Carrots", "$0.446", ""],
        &["Ginger", "$0.086", ""],
        &["Lemons", "$0.207", ""],
        &["Container", "$0.610", "20.3 %"],
        &["Bottle, 12 fl oz", "$0.525", ""],
        &["Cap, 38 mm", "$0.085", ""],
        &["Labour", "$0.375", "12.5 %"],
        &["Overhead", "$0.400", "13.3 %"],
        &["Made but not sold", "$0.090", "3.0 %"],
        &["One drink, 12 fl oz", "$3.000", ""],
    ];
    journey.expect_rows("What it costs", &costs).await;
    journey.wait_for_text("Ingredients is the largest part, 50.8 % of the cost.").await;
    // Goods with what is thrown away of them: (1.525070 + 0.61) / 0.97 = 2.201103, / 0.35 = 6.28886.
    // Up to 6.50: 1 - 2.201103 / 6.5 = 0.66137.
    let asked = "Suggested: $6.50 brings 66.1 %. The target alone asks $6.289; the price is then raised to one of \
                 your endings.";
    journey.wait_for_text(asked).await;
    journey.expect_figures("Price", &price("none", "65.0 %", "none", "none")).await;
    journey.expect_lines(By::Text("no price yet"), &["no price yet"]).await;
    journey.click(By::Text("Ask $6.50")).await;
    journey.expect_value(By::Label("Menu price"), "6.50").await;
    // Left: 6.5 - 0.029 * 6.5 * 1.08 - 0.10 - 3.000072 = 3.19635. Paid: 6.5 * 1.08.
    journey.expect_figures("Price", &price("66.1 %", "65.0 %", "$3.20", "$7.02")).await;
    journey.expect_lines(By::Text("on target"), &["on target"]).await;
    journey.wait_for_text_gone("Ask $").await;
    journey.screenshot("size").await;

    open_size(journey, "16 fl oz").await;
    journey.wait_for_text("Poured 16.2 fl oz: 17.0 fl oz to the rim less 0.85 fl oz left empty.").await;
    // As above with k = 1.033709: 9.30338, 5.68540, 12.4045 g = 0.43756 oz, 0.75.
    let amounts: [&[&str]; 5] = [
        &["Ingredient", "In the drink", "To use"],
        &["Apples pressed", "9.3 fl oz", "9.7 fl oz"],
        &["Carrots pressed", "5.7 fl oz", "5.9 fl oz"],
        &["Ginger pressed", "0.4 oz", "0.5 oz"],
        &["Lemons pressed", "0.75 fl oz", "0.78 fl oz"],
    ];
    journey.expect_rows("What goes in", &amounts).await;
    let costs: [&[&str]; 13] = [
        &["Part", "Cost", "Share"],
        &["Ingredients", "$2.011", "57.2 %"],
        &["Apples", "$1.075", ""],
        &["Carrots", "$0.611", ""],
        &["Ginger", "$0.118", ""],
        &["Lemons", "$0.207", ""],
        &["Container", "$0.625", "17.8 %"],
        &["Bottle, 16 fl oz", "$0.540", ""],
        &["Cap, 38 mm", "$0.085", ""],
        &["Labour", "$0.375", "10.7 %"],
        &["Overhead", "$0.400", "11.4 %"],
        &["Made but not sold", "$0.106", "3.0 %"],
        &["One drink, 16 fl oz", "$3.517", ""],
    ];
    journey.expect_rows("What it costs", &costs).await;
    // 2.717850 / 0.35 = 7.76529, up to 7.95: 1 - 2.717850 / 7.95 = 0.65813.
    journey.wait_for_text("Suggested: $7.95 brings 65.8 %. The target alone asks $7.765;").await;
    journey.click(By::Text("Ask $7.95")).await;
    // 7.95 - 0.029 * 8.586 - 0.10 - 3.516820 = 4.08419; 7.95 * 1.08 = 8.586.
    journey.expect_figures("Price", &price("65.8 %", "65.0 %", "$4.08", "$8.59")).await;
}

/// The same prices with the tax inside: R is the price over 1.08, so less is left.
pub async fn with_tax_inside(journey: &Journey) {
    journey.click(By::Text("Book")).await;
    journey.choose(By::Label("Where the tax stands"), "Inside the menu price").await;
    open_size(journey, "12 fl oz").await;
    // R = 6.5 / 1.08 = 6.018519: 1 - 2.201103 / R = 0.63428; left R - 0.029 * 6.5 - 0.10 - 3.000072.
    journey.expect_figures("Price", &price("63.4 %", "65.0 %", "$2.73", "$6.50")).await;
    journey.expect_lines(By::Text("under target"), &["under target"]).await;
    // 6.28886 * 1.08 = 6.79197, up to 6.95: R 6.435185, 1 - 2.201103 / R = 0.65796.
    journey.wait_for_text("Suggested: $6.95 brings 65.8 %. The target alone asks $6.792;").await;
    open_size(journey, "16 fl oz").await;
    // R = 7.361111: 1 - 2.717850 / R = 0.63078; R - 0.029 * 7.95 - 0.10 - 3.516820 = 3.51374.
    journey.expect_figures("Price", &price("63.1 %", "65.0 %", "$3.51", "$7.95")).await;
    // 7.76529 * 1.08 = 8.38651, up to 8.50: R 7.870370, 1 - 2.717850 / R = 0.65467.
    journey.wait_for_text("Suggested: $8.50 brings 65.5 %. The target alone asks $8.387;").await;
}

/// A target of 40 % that covers everything: the price must bear the fees too.
pub async fn covering_everything(journey: &Journey) {
    journey.click(By::Text("Book")).await;
    journey.choose(By::Label("It must cover"), "Everything").await;
    journey.enter(By::Label("Target margin"), "40").await;
    open_size(journey, "12 fl oz").await;
    // Margin is now what is left over R: 2.729947 / 6.018519 = 0.45359.
    journey.expect_figures("Price", &price("45.4 %", "40.0 %", "$2.73", "$6.50")).await;
    // (3.000072 + 0.10) / (1 - 0.4 - 0.029 * 1.08) = 5.45081 * 1.08 = 5.88687, up to 5.95: R
    // 5.509259, (R - 0.029 * 5.95 - 0.10 - 3.000072) / R = 0.40598.
    journey.wait_for_text("Suggested: $5.95 brings 40.6 %. The target alone asks $5.887;").await;
    open_size(journey, "16 fl oz").await;
    // 3.513741 / 7.361111 = 0.47734. (3.516820 + 0.10) / 0.56868 * 1.08 = 6.86878, up to 6.95.
    journey.expect_figures("Price", &price("47.7 %", "40.0 %", "$3.51", "$7.95")).await;
    journey.wait_for_text("Suggested: $6.95 brings 40.7 %. The target alone asks $6.869;").await;
}

/// The figures beside a menu price.
fn price<'a>(margin: &'a str, target: &'a str, left: &'a str, pays: &'a str) -> [(&'a str, &'a str); 4] {
    [("Margin", margin), ("Target", target), ("Left after everything", left), ("Customer pays", pays)]
}
