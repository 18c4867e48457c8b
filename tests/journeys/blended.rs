//! A smoothie in halves of a banana with ice and air in it, and a drink over ice: at sizes typed
//! on the spot, and on the card with its allergens.
//!
//! Everything is invented. Each expected figure was worked out by hand, from the formulas that
//! stand beside it; none comes from the engine. Ice weighs 0.917 g/mL (IAPWS R10-06).

use crate::entering;
use crate::harness::{By, Journey};

const SIZE: By<'_> = By::Label("What a drink of this size takes");
const HEAD: &[&str] = &["Ingredient", "In the drink", "To use"];

#[tokio::test]
async fn drinks_with_ice_and_air_and_halves_of_a_banana() {
    let journey = entering::metric_book("blended").await;
    bought(&journey).await;
    a_smoothie(&journey).await;
    sizes_on_the_spot(&journey).await;
    between_two_steps(&journey).await;
    a_card_with_allergens(&journey).await;
    over_ice(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

async fn bought(journey: &Journey) {
    // A banana of 150 g leaves 96 g, 100 mL once puréed.
    entering::ingredient(journey, "Banana", "12 kg", "24").await;
    journey.enter(By::Label("Left after trimming"), "64").await;
    journey.enter(By::Label("Density in the drink"), "0.96").await;
    journey.enter(By::Label("Weight of one piece as bought"), "150").await;
    for (name, holds, price) in [("Whole milk", "10 L", "15"), ("Yoghurt", "5 L", "20")] {
        entering::ingredient(journey, name, holds, price).await;
        journey.wait_for_text("Not yet looked at. A drink with it cannot say what it holds.").await;
        journey.click(By::Text("Milk")).await;
        journey.wait_for_text("It holds: Milk.").await;
    }
    entering::ingredient(journey, "Ice", "10 kg", "2").await;
    journey.click(By::Text("None of these")).await;
    journey.wait_for_text("It holds none of these.").await;
    entering::container(journey, "Tumbler", "350", "20").await;
    journey.expect_figures("How full it is poured", &[("Poured", "330 mL")]).await;
}

/// 100 mL of banana, 150 of milk, 91.7 g = 100 mL of ice and 50 mL of yoghurt, and a tenth of it
/// air: 440 mL.
async fn a_smoothie(journey: &Journey) {
    entering::drink(journey, "Cloud Nine", "Blended", "440").await;
    entering::line(journey, "Banana", "1 ea").await;
    journey.expect_value(By::Label("Stage of Banana"), "trimmed").await;
    journey.choose(By::Label("In other sizes: Banana"), "in steps").await;
    journey.enter(By::Label("In steps of, Banana"), "0.5").await;
    journey.expect_value(By::Label("In steps of, Banana"), "0.5 ea").await;
    entering::line(journey, "Whole milk", "150").await;
    journey.choose(By::Label("In other sizes: Whole milk"), "top-up").await;
    entering::line(journey, "Ice", "91.7 g").await;
    journey.choose(By::Label("Stage of Ice"), "ice, blended in").await;
    entering::line(journey, "Yoghurt", "50").await;
    journey.expect_sentence(By::Label("Written for"), "The lines below make 400 mL.").await;
    journey.enter(By::Label("Air beaten in"), "10").await;
    journey.expect_sentence(By::Label("Written for"), "The lines below make 440 mL.").await;
    journey.screenshot("recipe").await;
}

async fn sizes_on_the_spot(journey: &Journey) {
    let steps = journey.title_of_undo().await;
    journey.type_into(SIZE, "220").await;
    // Half of all: half a banana is a step.
    let half: [&[&str]; 6] = [
        HEAD,
        &["Banana trimmed", "0.5 ea", "same"],
        &["Whole milk as bought", "75 mL", "same"],
        &["Ice blended in", "46 g", "same"],
        &["Yoghurt as bought", "25 mL", "same"],
        &["Air beaten in", "20 mL", ""],
    ];
    journey.expect_rows("Recipe", &half).await;
    journey.type_into(SIZE, "330").await;
    // Three quarters: 1.5 steps, up to a whole banana, 110 mL with its air. Ice 68.775 g, 82.5 mL,
    // yoghurt 37.5, 41.25; of 330 that leaves 96.25, of which 87.5 are milk. Air: 330 / 11.
    let three_quarters: [&[&str]; 6] = [
        HEAD,
        &["Banana trimmed", "1 ea", "same"],
        &["Whole milk as bought", "88 mL", "same"],
        &["Ice blended in", "69 g", "same"],
        &["Yoghurt as bought", "38 mL", "same"],
        &["Air beaten in", "30 mL", ""],
    ];
    journey.expect_rows("Recipe", &three_quarters).await;
    journey.screenshot("size_typed").await;
    journey.type_into(SIZE, "0").await;
    journey.expect_sentence(SIZE, "A drink is more than nothing. Type a size such as 330 mL.").await;
    assert_eq!(journey.title_of_undo().await, steps);
}

/// Without a top-up: at three quarters of the recipe the banana jumps from one half to two, and
/// what is made from 302.5 mL to 357.5.
async fn between_two_steps(journey: &Journey) {
    let way = By::Label("In other sizes: Whole milk");
    journey.choose(way, "in proportion").await;
    journey.type_into(SIZE, "320").await;
    // 320 - 302.5 and 357.5 - 320.
    let sentence = "No whole number of steps fills this size: 18 mL would stay empty, and with one step more 38 mL \
                    would be too much. Let one ingredient be the top-up.";
    journey.expect_sentence(SIZE, sentence).await;
    // 302.5 - 55 = 0.75 * 330: just before the jump.
    journey.type_into(SIZE, "300").await;
    journey.expect_sentence(SIZE, "").await;
    // (300 - 55) / 330 = 0.742424 times 150 mL, 91.7 g and 50 mL.
    let before: [&[&str]; 6] = [
        HEAD,
        &["Banana trimmed", "0.5 ea", "same"],
        &["Whole milk as bought", "111 mL", "same"],
        &["Ice blended in", "68 g", "same"],
        &["Yoghurt as bought", "37 mL", "same"],
        &["Air beaten in", "27 mL", ""],
    ];
    journey.expect_rows("Recipe", &before).await;
    // A size that is sold says the same: 330 - 302.5 and 357.5 - 330.
    journey.choose(By::Label("Add a size"), "Tumbler").await;
    journey.expect_lines(By::Item("Tumbler"), &["Tumbler", "no price", "cannot be computed"]).await;
    journey.click(By::Text("Tumbler")).await;
    journey
        .wait_for_text(
            "No whole number of steps fills this size: 28 mL would stay empty, and with one step more 28 mL would be \
             too much. Let one ingredient be the top-up.",
        )
        .await;
    journey.click(By::Text("The drink")).await;
    journey.choose(way, "top-up").await;
    journey.click(By::Text("Tumbler")).await;
    journey.wait_for_text("Poured 330 mL: 350 mL to the rim less 20 mL left empty.").await;
}

async fn a_card_with_allergens(journey: &Journey) {
    journey.click(By::Text("Recipe card")).await;
    let lines = [
        "1 ea Banana trimmed, in steps of 0.5 ea",
        "87.5 mL Whole milk as bought, top-up: more or less of it meets the line",
        "68.78 g Ice blended in",
        "37.5 mL Yoghurt as bought",
    ];
    journey.expect_each(".recipe > li", &lines).await;
    let open = "Contains Milk (Whole milk, Yoghurt). Not stated yet, so it may hold any: Banana. Check the label of \
                each, and enter it.";
    journey.expect_each(".allergens", &[open]).await;
    journey.screenshot("card").await;
    journey.click(By::Text("Buying")).await;
    journey.click(By::Text("Banana")).await;
    journey.click(By::Text("None of these")).await;
    journey.wait_for_text("It holds none of these.").await;
    journey.click(By::Text("Counter")).await;
    journey.click(By::Text("Tumbler")).await;
    journey.expect_each(".allergens", &["Contains Milk (Whole milk, Yoghurt)."]).await;
}

/// Of 330 mL ice takes its own volume where it is held under, and that of its weight in tea of
/// 1.05 g/mL where it floats.
async fn over_ice(journey: &Journey) {
    entering::ingredient(journey, "Apple tea", "10 L", "8").await;
    journey.enter(By::Label("Density in the drink"), "1.05").await;
    entering::drink(journey, "Long Shade", "Over ice", "330").await;
    entering::line(journey, "Apple tea", "230").await;
    entering::line(journey, "Ice", "105 g").await;
    journey.choose(By::Label("In other sizes: Ice"), "fixed").await;
    journey.choose(By::Label("Stage of Ice"), "ice, floating").await;
    journey.type_into(SIZE, "330").await;
    // 105 / 1.05 = 100.
    over(journey, "230 mL", "floating", "105 g").await;
    // 105 / 0.917 = 114.504.
    journey.choose(By::Label("Stage of Ice"), "ice, held under the line").await;
    over(journey, "215 mL", "held under the line", "105 g").await;
    // A scoop of 200 mL, 60 % of it ice: 110.04 g, 120 mL.
    journey.enter(By::Label("Amount of Ice"), "200 mL").await;
    journey.expect_value(By::Label("Of a scoop of Ice, solid"), "60").await;
    over(journey, "210 mL", "held under the line", "200 mL").await;
    // 200 * 0.55 * 0.917 = 100.87 g, of which 1.05 take a millilitre: 96.067.
    journey.enter(By::Label("Of a scoop of Ice, solid"), "55").await;
    journey.choose(By::Label("Stage of Ice"), "ice, floating").await;
    over(journey, "234 mL", "floating", "200 mL").await;
    journey.screenshot("over_ice").await;
}

async fn over(journey: &Journey, tea: &str, place: &str, ice: &str) {
    let name = format!("Ice {place}");
    let rows: [&[&str]; 3] = [HEAD, &["Apple tea as bought", tea, "same"], &[&name, ice, "same"]];
    journey.expect_rows("Recipe", &rows).await;
}
