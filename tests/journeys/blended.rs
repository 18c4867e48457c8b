//! A smoothie in halves of a banana with ice and air in it, and a drink over ice: at sizes typed
//! on the spot, and on the card with its allergens.
//!
//! Everything is invented. Each expected figure was worked out by hand, from the formulas that
//! stand beside it; none comes from the engine. Ice weighs 0.917 g/mL (IAPWS R10-06).

use brimwright::say;

use crate::entering;
use crate::harness::{By, Journey};

fn size() -> By<'static> {
    By::Label(say!(drinks::try_a_size))
}

fn head() -> [&'static str; 3] {
    [say!(drinks::ingredient), say!(drinks::in_the_drink), say!(drinks::amount_needed)]
}

/// A name, and how it is used.
fn used(name: &str, prep: &str) -> String {
    format!("{name} {prep}")
}

/// The names in the first column of the smoothie's recipe.
fn smoothie() -> [String; 5] {
    [
        used("Banana", say!(drinks::trimmed)),
        used("Whole milk", say!(drinks::as_purchased)),
        used("Ice", say!(drinks::ice_blended_in)),
        used("Yoghurt", say!(drinks::as_purchased)),
        used(say!(drinks::air_row), say!(drinks::air_row_about)),
    ]
}

/// The smoothie's recipe, with these amounts in the drink; air is not added.
fn rows<'a>(head: &'a [&'a str], names: &'a [String; 5], amounts: [&'a str; 5]) -> Vec<Vec<&'a str>> {
    let row = |(name, amount): (&'a String, &'a str)| vec![name.as_str(), amount, say!(drinks::same_amount)];
    let mut rows: Vec<Vec<&str>> = [head.to_vec()].into_iter().chain(names.iter().zip(amounts).map(row)).collect();
    rows[5][2] = "";
    rows
}

async fn expect_recipe(journey: &Journey, amounts: [&str; 5]) {
    let (head, names) = (head(), smoothie());
    let rows = rows(&head, &names, amounts);
    let rows: Vec<&[&str]> = rows.iter().map(Vec::as_slice).collect();
    journey.expect_rows(say!(drinks::try_a_size), &rows).await;
}

#[tokio::test]
async fn drinks_with_ice_and_air_and_halves_of_a_banana() {
    let journey = entering::metric_book("blended").await;
    bought(&journey).await;
    a_smoothie(&journey).await;
    sizes_on_the_spot(&journey).await;
    between_two_steps(&journey).await;
    a_card_with_allergens(&journey).await;
    over_ice(&journey).await;
    what_a_line_lacks(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

async fn bought(journey: &Journey) {
    // A banana of 150 g leaves 96 g, 100 mL once puréed.
    entering::ingredient(journey, "Banana", "12 kg", "24").await;
    journey.enter(By::Label(say!(goods::trim_yield)), "64").await;
    journey.enter(By::Label(say!(goods::drink_density)), "0.96").await;
    journey.enter(By::Label(say!(goods::piece_weight)), "150").await;
    for (name, holds, price) in [("Whole milk", "10 L", "15"), ("Yoghurt", "5 L", "20")] {
        entering::ingredient(journey, name, holds, price).await;
        journey.wait_for_text(say!(labels::ingredient_not_checked)).await;
        journey.click(By::Text(say!(labels::milk))).await;
        journey.wait_for_text(&say!(labels::ingredient_contains, allergens = say!(labels::milk))).await;
    }
    entering::ingredient(journey, "Ice", "10 kg", "2").await;
    journey.click(By::Text(say!(labels::none_of_these))).await;
    journey.wait_for_text(say!(labels::ingredient_contains_none)).await;
    entering::container(journey, "Tumbler", "350", "20").await;
    journey.expect_figures(say!(common::fill), &[(say!(common::fill), "330 mL")]).await;
}

/// 100 mL of banana, 150 of milk, 91.7 g = 100 mL of ice and 50 mL of yoghurt, and a tenth of it
/// air: 440 mL.
async fn a_smoothie(journey: &Journey) {
    entering::drink(journey, "Cloud Nine", say!(first::type_blended), "440").await;
    entering::line(journey, "Banana", "1 ea").await;
    journey.expect_value(By::Label(&prep_of("Banana")), say!(drinks::trimmed)).await;
    journey.choose(By::Label(&scaling_of("Banana")), say!(drinks::by_the_piece)).await;
    let piece = say!(drinks::piece_size_of, name = "Banana");
    journey.enter(By::Label(&piece), "0.5").await;
    journey.expect_value(By::Label(&piece), "1/2 ea").await;
    entering::line(journey, "Whole milk", "150").await;
    journey.choose(By::Label(&scaling_of("Whole milk")), say!(drinks::fill_to_the_line)).await;
    entering::line(journey, "Ice", "91.7 g").await;
    journey.choose(By::Label(&prep_of("Ice")), say!(drinks::use_ice_blended_in)).await;
    entering::line(journey, "Yoghurt", "50").await;
    let makes = By::Label(say!(drinks::recipe_makes));
    journey.expect_sentence(makes, &say!(drinks::ingredients_make, volume = "400 mL")).await;
    entering::unfold(journey, say!(drinks::making)).await;
    journey.enter(By::Label(say!(drinks::air)), "10").await;
    journey.expect_sentence(makes, &say!(drinks::ingredients_make, volume = "440 mL")).await;
    journey.screenshot("recipe").await;
}

fn prep_of(name: &str) -> String {
    say!(drinks::prep_of, name = name)
}

fn scaling_of(name: &str) -> String {
    say!(drinks::scaling_of, name = name)
}

async fn sizes_on_the_spot(journey: &Journey) {
    let steps = journey.title_of_undo().await;
    entering::unfold(journey, say!(drinks::try_a_size)).await;
    journey.type_into(size(), "220").await;
    // Half of all: half a banana is a step.
    expect_recipe(journey, ["1/2 ea", "75 mL", "46 g", "25 mL", "20 mL"]).await;
    journey.type_into(size(), "330").await;
    // Three quarters: 1.5 steps, up to a whole banana, 110 mL with its air. Ice 68.775 g, 82.5 mL,
    // yoghurt 37.5, 41.25; of 330 that leaves 96.25, of which 87.5 are milk. Air: 330 / 11.
    expect_recipe(journey, ["1 ea", "88 mL", "69 g", "38 mL", "30 mL"]).await;
    journey.screenshot("size_typed").await;
    journey.type_into(size(), "0").await;
    journey.expect_sentence(size(), &say!(drinks::size_too_small, example = "330 mL")).await;
    assert_eq!(journey.title_of_undo().await, steps);
}

/// Without a top-up: at three quarters of the recipe the banana jumps from one half to two, and what is made with
/// all the rest as nearly from 302.5 mL to 357.5. Between the two, the rest takes up what halves leave.
async fn between_two_steps(journey: &Journey) {
    let scaling = scaling_of("Whole milk");
    let way = By::Label(&scaling);
    journey.choose(way, say!(drinks::scale_with_size)).await;
    journey.type_into(size(), "320").await;
    // 320 of 440 mL are nearer to one half, and (320 - 55) / 330 = 0.80303 times 150 mL, 91.7 g and 50 mL.
    journey.expect_sentence(size(), "").await;
    expect_recipe(journey, ["1/2 ea", "120 mL", "74 g", "40 mL", "29 mL"]).await;
    let names = say!(refusals::and_list, before = "Whole milk, Ice", last = "Yoghurt");
    journey.wait_for_text(&say!(drinks::take_up_rest, names = names)).await;
    // 330 are half way, and half a step is taken upwards: (330 - 110) / 330 = 0.66667 times the rest.
    journey.type_into(size(), "330").await;
    expect_recipe(journey, ["1 ea", "100 mL", "61 g", "33 mL", "30 mL"]).await;
    // 302.5 - 55 = 0.75 * 330: just before the jump.
    journey.type_into(size(), "300").await;
    journey.expect_sentence(size(), "").await;
    // (300 - 55) / 330 = 0.742424 times 150 mL, 91.7 g and 50 mL.
    expect_recipe(journey, ["1/2 ea", "111 mL", "68 g", "37 mL", "27 mL"]).await;
    journey.choose(By::Label(say!(drinks::add_size)), "Tumbler").await;
    journey.choose(way, say!(drinks::fill_to_the_line)).await;
    journey.click(By::Text("Tumbler")).await;
    let fill = say!(drinks::fill_from, fill = "330 mL", brimful = "350 mL", headspace = "20 mL");
    entering::unfold(journey, say!(common::fill)).await;
    journey.wait_for_text(&fill).await;
}

async fn a_card_with_allergens(journey: &Journey) {
    journey.click(By::Text(say!(drinks::recipe_card))).await;
    // What nobody trims is taken as it was purchased, and the card does not say so. 68.775 g of ice are shown as 68.78,
    // 0.0055 mL more; milk is rounded last and has 87.4945 mL left.
    let lines = [
        used("1 Banana", say!(drinks::trimmed)),
        used("68.78 g Ice", say!(drinks::ice_blended_in)),
        "37.5 mL Yoghurt".to_owned(),
        // Air is blended in after it, so it is measured.
        "87.49 mL Whole milk".to_owned(),
    ];
    journey.expect_each(".recipe > li", &lines.each_ref().map(String::as_str)).await;
    let milk = say!(labels::allergen_with_ingredients, allergen = say!(labels::milk), names = "Whole milk, Yoghurt");
    let contains = say!(labels::contains, allergens = milk);
    let not_checked = say!(labels::allergens_not_checked_sentence, names = "Banana");
    journey.expect_each(".allergens", &[&*[&*not_checked, &contains].join(" ")]).await;
    journey.screenshot("card").await;
    journey.click(By::Text(say!(first::buying))).await;
    journey.click(By::Text("Banana")).await;
    entering::unfold(journey, say!(labels::allergens)).await;
    journey.click(By::Text(say!(labels::none_of_these))).await;
    journey.wait_for_text(say!(labels::ingredient_contains_none)).await;
    journey.click(By::Text(say!(first::counter))).await;
    journey.click(By::Text("Cloud Nine")).await;
    journey.click(By::Text("Tumbler")).await;
    journey.expect_each(".allergens", &[&*contains]).await;
}

/// Of 330 mL ice takes its own volume where it is held under, and that of its weight in tea of
/// 1.05 g/mL where it floats.
async fn over_ice(journey: &Journey) {
    entering::ingredient(journey, "Apple tea", "10 L", "8").await;
    journey.enter(By::Label(say!(goods::drink_density)), "1.05").await;
    entering::drink(journey, "Long Shade", say!(first::type_over_ice), "330").await;
    entering::line(journey, "Apple tea", "230").await;
    entering::line(journey, "Ice", "105 g").await;
    journey.choose(By::Label(&scaling_of("Ice")), say!(drinks::fixed_amount)).await;
    journey.choose(By::Label(&prep_of("Ice")), say!(drinks::use_ice_floating)).await;
    entering::unfold(journey, say!(drinks::try_a_size)).await;
    journey.type_into(size(), "330").await;
    // 105 / 1.05 = 100.
    over(journey, "230 mL", say!(drinks::ice_floating), "105 g").await;
    // 105 / 0.917 = 114.504.
    journey.choose(By::Label(&prep_of("Ice")), say!(drinks::use_ice_under_line)).await;
    over(journey, "215 mL", say!(drinks::ice_under_line), "105 g").await;
    // A scoop of 200 mL, 60% of it ice: 110.04 g, 120 mL.
    journey.enter(By::Label(&say!(drinks::amount_of, name = "Ice")), "200 mL").await;
    let packing = say!(drinks::ice_packing_of, name = "Ice");
    journey.expect_value(By::Label(&packing), "60").await;
    over(journey, "210 mL", say!(drinks::ice_under_line), "200 mL").await;
    // 200 * 0.55 * 0.917 = 100.87 g, of which 1.05 take a millilitre: 96.067.
    journey.enter(By::Label(&packing), "55").await;
    journey.choose(By::Label(&prep_of("Ice")), say!(drinks::use_ice_floating)).await;
    over(journey, "234 mL", say!(drinks::ice_floating), "200 mL").await;
    journey.screenshot("over_ice").await;
}

async fn over(journey: &Journey, tea: &str, place: &str, ice: &str) {
    let (apple_tea, name) = (used("Apple tea", say!(drinks::as_purchased)), used("Ice", place));
    let (head, same) = (head(), say!(drinks::same_amount));
    let rows: [&[&str]; 3] = [&head, &[&apple_tea, tea, same], &[&name, ice, same]];
    journey.expect_rows(say!(drinks::try_a_size), &rows).await;
}

/// What a line lacks is a field where the line stands: typed there, or the figure that all share is taken. And peel
/// is asked about: of 200 g with the peel, 70% is drink.
async fn what_a_line_lacks(journey: &Journey) {
    entering::ingredient(journey, "Mango", "10 kg", "30").await;
    journey.enter(By::Label(say!(goods::trim_yield)), "70").await;
    entering::drink(journey, "Slow Noon", say!(first::type_blended), "300").await;
    entering::line(journey, "Mango", "200 g").await;
    journey.expect_value(By::Label(&prep_of("Mango")), say!(drinks::trimmed)).await;
    let makes = By::Label(say!(drinks::recipe_makes));
    journey.expect_sentence(makes, &say!(drinks::needs_density, name = "Mango")).await;
    let figure = "1 g/mL";
    journey.click(By::Text(&say!(drinks::use_as_water, figure = figure))).await;
    journey.expect_sentence(makes, &say!(drinks::ingredients_make, volume = "200 mL")).await;
    journey.wait_for_text(&say!(drinks::starting_figure_assumed, figure = figure)).await;
    // 200 / 0.8 = 250. The field stays where it is.
    let density = say!(drinks::density_of, name = "Mango");
    journey.enter(By::Label(&density), "0.8").await;
    journey.expect_sentence(makes, &say!(drinks::ingredients_make, volume = "250 mL")).await;
    journey.choose(By::Label(&prep_of("Mango")), say!(drinks::as_purchased)).await;
    journey.wait_for_text(&say!(drinks::peel_asked, name = "Mango")).await;
    journey.screenshot("asked_in_the_line").await;
    journey.click(By::Text(say!(drinks::weighed_with_peel))).await;
    // 140 / 0.8 = 175.
    journey.expect_value(By::Label(&say!(drinks::amount_of, name = "Mango")), "140 g").await;
    journey.expect_value(By::Label(&prep_of("Mango")), say!(drinks::trimmed)).await;
    journey.expect_sentence(makes, &say!(drinks::ingredients_make, volume = "175 mL")).await;
}
