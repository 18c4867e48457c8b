//! A drink: amounts by volume and by weight, in proportion and fixed, in two sizes.

use brimwright::say;

use crate::entering;
use crate::harness::{By, Journey};

pub async fn a_drink(journey: &Journey) {
    journey.click(By::Text(say!(first::drinks))).await;
    journey.click(By::Text(say!(first::add_drink))).await;
    journey.enter(By::Label(say!(common::name)), "Orchard Walk").await;
    journey.expect_value(By::Label(say!(drinks::recipe_makes)), "").await;
    journey.enter(By::Label(say!(drinks::recipe_makes)), "16").await;
    journey.expect_value(By::Label(say!(drinks::recipe_makes)), "16 fl oz").await;
    journey.expect_value(By::Label(say!(drinks::drink_type)), say!(first::type_pressed)).await;
    journey.choose(By::Label(say!(drinks::add_size)), "12 fl oz").await;
    journey.choose(By::Label(say!(drinks::add_size)), "16 fl oz").await;

    line(journey, "Apples", "9", "9 fl oz").await;
    line(journey, "Carrots", "5 1/2 fl oz", "5.5 fl oz").await;
    line(journey, "Ginger", "12 g", "12 g").await;
    let sentence = say!(drinks::needs_juice_cup_weight, name = "Ginger");
    journey.expect_sentence(By::Label(say!(drinks::recipe_makes)), &sentence).await;
    journey.expect_lines(By::Item("12 fl oz"), &["12 fl oz", say!(first::no_price), say!(first::needs_details)]).await;
    journey.screenshot("density_missing").await;

    journey.click(By::Text("Ginger")).await;
    entering::unfold(journey, say!(goods::weight_and_volume)).await;
    let cup = By::Label(say!(goods::juice_cup_weight));
    journey.enter(cup, "1.02 g/mL").await;
    // A cup of 236.5882 mL is 241.3200 g, 8.51231 oz of 28.34952 g.
    journey.expect_value(cup, "8.51").await;
    // 29.5735 * 1.02 / 0.7 = 43.0929 g = 0.0950034 lb at 2.90.
    let (bought, juice) = (say!(goods::per_as_purchased, amount = "lb"), say!(goods::per_of_juice, amount = "fl oz"));
    journey.expect_figures(say!(common::cost), &[(&bought, "$2.900"), (&juice, "$0.276")]).await;
    journey.click(By::Text(say!(first::drinks))).await;
    journey.click(By::Text("Orchard Walk")).await;
    // 9 + 5.5 + 12 / 1.02 / 29.5735 = 14.8978 fl oz.
    journey.expect_sentence(By::Label(say!(drinks::recipe_makes)), &makes("14.9 fl oz")).await;

    line(journey, "Lemons", "3/4", "0.75 fl oz").await;
    let scaling = |name: &str| say!(drinks::scaling_of, name = name);
    journey.choose(By::Label(&scaling("Lemons")), say!(drinks::fixed_amount)).await;
    journey.expect_value(By::Label(&scaling("Lemons")), say!(drinks::fixed_amount)).await;
    journey.expect_value(By::Label(&scaling("Apples")), say!(drinks::scale_with_size)).await;
    journey.expect_sentence(By::Label(say!(drinks::recipe_makes)), &makes("15.6 fl oz")).await;

    entering::unfold(journey, say!(drinks::making)).await;
    journey.enter(By::Label(say!(drinks::press_or_pour_loss)), "4").await;
    // Bare seconds, and minutes with them.
    for (label, typed, shown) in
        [(say!(drinks::labor_per_drink), "45", "0:45"), (say!(drinks::labor_per_batch), "10:00", "10:00")]
    {
        journey.enter(By::Label(label), typed).await;
        journey.expect_value(By::Label(label), shown).await;
    }
    journey.choose(By::Label(say!(drinks::split_batch)), say!(drinks::by_drinks)).await;
    journey.enter(By::Label(say!(drinks::drinks_per_batch)), "20").await;
    journey.screenshot("recipe").await;
}

/// What is said of the recipe as it is written.
fn makes(volume: &str) -> String {
    say!(drinks::ingredients_make, volume = volume)
}

/// Puts an ingredient in the recipe, pressed as its yields suggest.
async fn line(journey: &Journey, name: &str, typed: &str, shown: &str) {
    let amount = say!(drinks::amount_of, name = name);
    journey.choose(By::Label(say!(drinks::add_ingredient)), name).await;
    journey.expect_value(By::Label(say!(drinks::add_ingredient)), say!(drinks::choose_ingredient)).await;
    journey.expect_value(By::Label(&amount), "").await;
    journey.enter(By::Label(&amount), typed).await;
    journey.expect_value(By::Label(&say!(drinks::prep_of, name = name)), say!(drinks::pressed)).await;
    journey.expect_value(By::Label(&amount), shown).await;
}
