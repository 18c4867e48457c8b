//! A tapered cup, known by its measures: from a tape measure to a fill line on the card.
//!
//! Everything is invented. Each expected figure was worked out with fractions of whole numbers
//! from pi h / 12 (d0^2 + d0 d + d^2), d across the drink at height h, and a US fluid ounce of
//! 231/128 cubic inches (NIST Handbook 44, Appendix C); none comes from the engine.

use crate::entering;
use crate::harness::{By, Journey};

#[tokio::test]
async fn a_tapered_cup_shows_its_fill_line() {
    let journey = entering::empty_book("cup").await;
    // 6 / 50, 4 / 100 and 3 / 200.
    entering::packaging(&journey, "Paper cup", "Bottle, cup or jar", "50", "6").await;
    entering::packaging(&journey, "Dome lid", "Cap or lid", "100", "4").await;
    entering::packaging(&journey, "Paper straw", "Straw", "200", "3").await;
    measures(&journey).await;
    tolerances(&journey).await;
    try_out(&journey).await;
    a_shared_set(&journey).await;
    a_drink(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// 2 in across the base, 3 1/2 in across the rim, 5 in high: d = 2 + 0.3 h.
async fn measures(journey: &Journey) {
    entering::container(journey, "Large cup", "16", "1").await;
    journey.choose(By::Label("How you know what it holds"), "by its measures").await;
    for (label, typed, shown) in [
        ("Inside, across the base", "2", "2 in"),
        ("Inside, across the rim", "3 1/2 in", "3.5 in"),
        // The same 5 in.
        ("Inside, from base to rim", "127 mm", "127 mm"),
    ] {
        journey.enter(By::Label(label), typed).await;
        journey.expect_value(By::Label(label), shown).await;
    }
    // To the rim 9.6875 pi = 30.4342 cu in = 16.8640 fl oz; 15.8640 stand 4.8093 in.
    let by_volume = [
        ("Poured", "15.9 fl oz"),
        ("To the rim", "16.9 fl oz"),
        ("Fill line above the base", "4.81 in"),
        ("Fill line under the rim", "0.19 in"),
    ];
    journey.expect_figures("How full it is poured", &by_volume).await;
    journey.choose(By::Label("Left empty"), "as a height under the rim").await;
    journey.enter(By::Label("Height left empty"), "1/2").await;
    journey.expect_value(By::Label("Height left empty"), "0.5 in").await;
    // At 4.5 in it is 3.35 in across: 8.2209375 pi = 25.8268 cu in = 14.3110 fl oz.
    let by_height = [
        ("Poured", "14.3 fl oz"),
        ("To the rim", "16.9 fl oz"),
        ("Fill line above the base", "4.50 in"),
        ("Fill line under the rim", "0.50 in"),
    ];
    journey.expect_figures("How full it is poured", &by_height).await;
    journey.screenshot("measures").await;
}

async fn tolerances(journey: &Journey) {
    let declared = By::Label("Size it is declared as");
    journey.enter(declared, "16").await;
    // 16 - 14.3110.
    let short = "It is poured 1.7 fl oz less than its declared size. Local rules say what a declared size must hold.";
    journey.wait_for_text(short).await;
    journey.enter(declared, "14").await;
    journey.wait_for_text_gone("less than its declared size").await;
    journey.click(By::Text("What the standards allow")).await;
    // 14 fl oz are 414.029 mL: 3 % of it, up to 12.5 mL; 2 %, 8.28 mL; 2.5 % and 5 mL, 15.35 mL; 5 %
    // and 10 mL, 30.70 mL. (Read in 76/211/EEC, 75/107/EEC and OIML R 138.)
    let rows: [&[&str]; 5] = [
        &["", "Short by", "Over by"],
        &[
            "A single package Directive 76/211/EEC, Annex I, 2.4; on average packages may not be short",
            "0.42 fl oz",
            "no limit",
        ],
        &["A measuring container bottle, as made Directive 75/107/EEC, Annex I", "0.28 fl oz", "0.28 fl oz"],
        &["A glass or cup to drink from, to its line OIML R 138, 5.1.1", "0.52 fl oz", "0.52 fl oz"],
        &["A glass or cup to drink from, to its brim OIML R 138, 5.1.1", "nothing", "1.0 fl oz"],
    ];
    journey.expect_rows("How full it is poured", &rows).await;
    journey.screenshot("tolerances").await;
}

/// From a volume to its height and back, which changes nothing.
async fn try_out(journey: &Journey) {
    let steps = journey.title_of_undo().await;
    let (volume, height) = (By::Label("Volume in it"), By::Label("Height above the base"));
    journey.enter(volume, "12").await;
    // 12 fl oz are 6.8934 pi cu in: d^3 = 8 + 3.6 * 6.8934, d = 3.20157, (d - 2) / 0.3 = 4.0052.
    journey.expect_sentence(volume, "Stands 4.01 in above the base.").await;
    journey.enter(volume, "20").await;
    journey.expect_sentence(volume, "That is 3.1 fl oz more than Large cup holds to the rim. Check the volume.").await;
    // At 3 in it is 2.9 in across: 4.5525 pi = 14.3021 cu in = 7.9250 fl oz.
    journey.enter(height, "3").await;
    journey.expect_sentence(height, "Up to there it is 7.9 fl oz.").await;
    journey.enter(height, "6 in").await;
    journey.expect_sentence(height, "That is over the rim: up to the rim there is 16.9 fl oz.").await;
    assert_eq!(journey.title_of_undo().await, steps);
}

async fn a_shared_set(journey: &Journey) {
    entering::belongs(journey, "Paper cup", "1").await;
    journey.wait_for_text("$0.120").await;
    journey.choose(By::Label("Share a set"), "A new set").await;
    journey.enter(By::Label("Name of the set"), "Lid and straws").await;
    for piece in ["Dome lid", "Paper straw"] {
        entering::belongs(journey, piece, "1").await;
    }
    journey.enter(By::Label("How many of Paper straw"), "2").await;
    // 0.04 + 2 * 0.015.
    journey.wait_for_text("The set for one drink\n$0.070").await;
    journey.screenshot("set").await;
    journey.click(By::Text("Large cup")).await;
    journey.expect_each(".set-shared", &["Lid and straws $0.070 Take out Lid and straws"]).await;
}

async fn a_drink(journey: &Journey) {
    // 0.10 and 0.02 a fl oz.
    entering::ingredient(journey, "Apple juice", "128 fl oz", "12.80").await;
    entering::ingredient(journey, "Soda water", "128 fl oz", "2.56").await;
    entering::drink(journey, "Garden Cooler", "Over ice", "16").await;
    entering::line(journey, "Apple juice", "10").await;
    entering::line(journey, "Soda water", "6").await;
    entering::sold_in(journey, "Large cup").await;
    // 14.3110 fl oz, ten sixteenths and six sixteenths of it.
    let amounts: [&[&str]; 3] = [
        &["Ingredient", "In the drink", "To use"],
        &["Apple juice as bought", "8.9 fl oz", "same"],
        &["Soda water as bought", "5.4 fl oz", "same"],
    ];
    journey.expect_rows("What goes in", &amounts).await;
    // 8.94436 * 0.10 + 5.36662 * 0.02 = 1.001768, and 0.12 + 0.07 of 1.191768.
    let costs: [&[&str]; 9] = [
        &["Part", "Cost", "Share"],
        &["Ingredients", "$1.002", "84.1 %"],
        &["Apple juice", "$0.894", ""],
        &["Soda water", "$0.107", ""],
        &["Container", "$0.190", "15.9 %"],
        &["Paper cup", "$0.120", ""],
        &["Dome lid", "$0.040", ""],
        &["Paper straw", "$0.030", ""],
        &["One drink, Large cup", "$1.192", ""],
    ];
    journey.expect_rows("What it costs", &costs).await;
    journey.click(By::Text("Recipe card")).await;
    // 16.8640 - 14.3110 = 2.5530.
    journey.wait_for_text("Fill to here: 0.50 in under the rim, 2.6 fl oz left empty").await;
    journey.expect_each(".recipe > li", &["8.94 fl oz Apple juice as bought", "5.37 fl oz Soda water as bought"]).await;
    journey.expect_count(".recipe-fill svg .glass-line", 1).await;
    journey.screenshot("card").await;
}
