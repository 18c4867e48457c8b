//! A drink: amounts by volume and by weight, in proportion and fixed, in two sizes.

use crate::harness::{By, Journey};

pub async fn a_drink(journey: &Journey) {
    journey.click(By::Text("Drinks")).await;
    journey.click(By::Text("Add a drink")).await;
    journey.enter(By::Label("Name"), "Orchard Walk").await;
    journey.expect_value(By::Label("Written for"), "").await;
    journey.enter(By::Label("Written for"), "16").await;
    journey.expect_value(By::Label("Written for"), "16 fl oz").await;
    journey.expect_value(By::Label("How it is made"), "Pressed").await;
    journey.choose(By::Label("Add a size"), "12 fl oz").await;
    journey.choose(By::Label("Add a size"), "16 fl oz").await;

    line(journey, "Apples", "9", "9 fl oz").await;
    line(journey, "Carrots", "5 1/2 fl oz", "5.5 fl oz").await;
    line(journey, "Ginger", "12 g", "12 g").await;
    let sentence = "The juice of Ginger is weighed in one place and poured by volume in another, so it needs a density. Enter its grams per mL.";
    journey.expect_sentence(By::Label("Written for"), sentence).await;
    journey.expect_lines(By::Item("12 fl oz"), &["12 fl oz", "no price", "cannot be computed"]).await;
    journey.screenshot("density_missing").await;

    journey.click(By::Text("Ginger")).await;
    journey.enter(By::Label("Density of the juice"), "1.02").await;
    // 29.5735 * 1.02 / 0.7 = 43.0929 g = 0.0950034 lb at 2.90.
    journey.expect_figures("Packs", &[("Per lb as bought", "$2.900"), ("Per fl oz pressed", "$0.276")]).await;
    journey.click(By::Text("Orchard Walk")).await;
    // 9 + 5.5 + 12 / 1.02 / 29.5735 = 14.8978 fl oz.
    journey.expect_sentence(By::Label("Written for"), "The lines below make 14.9 fl oz.").await;

    line(journey, "Lemons", "3/4", "0.75 fl oz").await;
    journey.choose(By::Label("In other sizes: Lemons"), "fixed").await;
    journey.expect_value(By::Label("In other sizes: Lemons"), "fixed").await;
    journey.expect_value(By::Label("In other sizes: Apples"), "in proportion").await;
    journey.expect_sentence(By::Label("Written for"), "The lines below make 15.6 fl oz.").await;

    journey.enter(By::Label("Stays in the press or jug"), "4").await;
    journey.enter(By::Label("Hands' time per drink"), "45").await;
    journey.enter(By::Label("And per batch"), "600").await;
    journey.enter(By::Label("Drinks in a batch"), "20").await;
    journey.screenshot("recipe").await;
}

/// Puts an ingredient in the recipe, pressed as its yields suggest.
async fn line(journey: &Journey, name: &str, typed: &str, shown: &str) {
    let amount = format!("Amount of {name}");
    journey.choose(By::Label("Add to the recipe"), name).await;
    journey.expect_value(By::Label("Add to the recipe"), "Choose an ingredient").await;
    journey.expect_value(By::Label(&amount), "").await;
    journey.enter(By::Label(&amount), typed).await;
    journey.expect_value(By::Label(&format!("Stage of {name}")), "pressed").await;
    journey.expect_value(By::Label(&amount), shown).await;
}
