//! A tapered cup, known by its measures: from a tape measure to a fill line on the card.
//!
//! Everything is invented. Each expected figure was worked out with fractions of whole numbers
//! from pi h / 12 (d0^2 + d0 d + d^2), d across the drink at height h, and a US fluid ounce of
//! 231/128 cubic inches (NIST Handbook 44, Appendix C); none comes from the engine.

use brimwright::say;

use crate::entering;
use crate::harness::{By, Journey};

#[tokio::test]
async fn a_tapered_cup_shows_its_fill_line() {
    let journey = entering::empty_book("cup").await;
    // 6 / 50, 4 / 100 and 3 / 200.
    entering::packaging(&journey, "Paper cup", say!(drinks::piece_vessel), "50", "6").await;
    entering::packaging(&journey, "Dome lid", say!(drinks::piece_closure), "100", "4").await;
    entering::packaging(&journey, "Paper straw", say!(drinks::piece_straw), "200", "3").await;
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
    journey.choose(By::Label(say!(goods::how_measured)), say!(drinks::by_measures)).await;
    for (label, typed, shown) in [
        (say!(goods::base_width), "2", "2 in"),
        (say!(goods::rim_width), "3 1/2 in", "3 1/2 in"),
        // The same 5 in.
        (say!(goods::inside_height), "127 mm", "127 mm"),
    ] {
        journey.enter(By::Label(label), typed).await;
        journey.expect_value(By::Label(label), shown).await;
    }
    // To the rim 9.6875 pi = 30.4342 cu in = 16.8640 fl oz; 15.8640 stand 4.8093 in.
    let by_volume = [
        (say!(common::fill), "15.9 fl oz"),
        (say!(goods::brimful_capacity), "16.9 fl oz"),
        (say!(labels::fill_line_above_base), "4 13/16 in"),
        (say!(labels::fill_line_below_rim), "3/16 in"),
    ];
    journey.expect_figures(say!(common::fill), &by_volume).await;
    journey.choose(By::Label(say!(labels::headspace_by)), say!(labels::by_height)).await;
    journey.enter(By::Label(say!(labels::headspace)), "1/2").await;
    journey.expect_value(By::Label(say!(labels::headspace)), "1/2 in").await;
    // At 4.5 in it is 3.35 in across: 8.2209375 pi = 25.8268 cu in = 14.3110 fl oz.
    let by_height = [
        (say!(common::fill), "14.3 fl oz"),
        (say!(goods::brimful_capacity), "16.9 fl oz"),
        (say!(labels::fill_line_above_base), "4 1/2 in"),
        (say!(labels::fill_line_below_rim), "1/2 in"),
    ];
    journey.expect_figures(say!(common::fill), &by_height).await;
    journey.screenshot("measures").await;
}

async fn tolerances(journey: &Journey) {
    let declared = By::Label(say!(labels::labeled_size));
    journey.enter(declared, "16").await;
    // 16 - 14.3110.
    let short = &say!(labels::container_fill_below_labeled_size, short = "1.7 fl oz");
    journey.wait_for_text(short).await;
    journey.enter(declared, "14").await;
    journey.wait_for_text_gone(short).await;
    journey.click(By::Text(say!(labels::standards_allow))).await;
    // 14 fl oz are 414.029 mL: 2.5% of it and 5 mL, 15.35 mL; 5% and 10 mL, 30.70 mL. (Read in OIML
    // R 138.) The two directives of the European Union are none of a US book's.
    let rule = |rule: &str, source: &str| format!("{rule} {source}");
    let to_line = rule(say!(labels::drinking_glass_to_line), say!(labels::source_measures));
    let to_brim = rule(say!(labels::drinking_glass_to_brim), say!(labels::source_measures));
    let rows: [&[&str]; 3] = [
        &["", say!(labels::short_by), say!(labels::over_by)],
        &[&to_line, "0.52 fl oz", "0.52 fl oz"],
        &[&to_brim, say!(labels::nothing), "1.0 fl oz"],
    ];
    journey.expect_rows(say!(common::fill), &rows).await;
    journey.screenshot("tolerances").await;
}

/// From a volume to its height and back, which changes nothing.
async fn try_out(journey: &Journey) {
    let steps = journey.title_of_undo().await;
    let (volume, height) = (By::Label(say!(goods::volume)), By::Label(say!(goods::height)));
    journey.enter(volume, "12").await;
    // 12 fl oz are 6.8934 pi cu in: d^3 = 8 + 3.6 * 6.8934, d = 3.20157, (d - 2) / 0.3 = 4.0052.
    journey.expect_sentence(volume, &say!(goods::height_of_volume, height = "4 in")).await;
    journey.enter(volume, "20").await;
    let over = say!(drinks::over_the_brim, over = "3.1 fl oz", container = "Large cup");
    journey.expect_sentence(volume, &over).await;
    // At 3 in it is 2.9 in across: 4.5525 pi = 14.3021 cu in = 7.9250 fl oz.
    journey.enter(height, "3").await;
    journey.expect_sentence(height, &say!(goods::volume_of_height, volume = "7.9 fl oz")).await;
    journey.enter(height, "6 in").await;
    journey.expect_sentence(height, &say!(goods::above_rim, volume = "16.9 fl oz")).await;
    assert_eq!(journey.title_of_undo().await, steps);
}

async fn a_shared_set(journey: &Journey) {
    entering::belongs(journey, "Paper cup", "1").await;
    journey.wait_for_text("$0.120").await;
    journey.choose(By::Label(say!(goods::add_kit)), say!(goods::new_kit)).await;
    journey.enter(By::Label(say!(goods::kit_name)), "Lid and straws").await;
    for piece in ["Dome lid", "Paper straw"] {
        entering::belongs(journey, piece, "1").await;
    }
    journey.enter(By::Label(&say!(goods::per_drink, name = "Paper straw")), "2").await;
    // 0.04 + 2 * 0.015.
    journey.wait_for_text(&format!("{}\n$0.070", say!(goods::cost_per_drink))).await;
    journey.screenshot("set").await;
    journey.click(By::Text("Large cup")).await;
    entering::unfold(journey, say!(goods::packaging_kits)).await;
    let remove = say!(book::remove_named, name = "Lid and straws");
    journey.expect_each(".set-shared", &[&*format!("Lid and straws $0.070 {remove}")]).await;
}

async fn a_drink(journey: &Journey) {
    // 0.10 and 0.02 a fl oz.
    entering::ingredient(journey, "Apple juice", "128 fl oz", "12.80").await;
    entering::ingredient(journey, "Soda water", "128 fl oz", "2.56").await;
    entering::drink(journey, "Garden Cooler", say!(first::type_over_ice), "16").await;
    entering::line(journey, "Apple juice", "10").await;
    entering::line(journey, "Soda water", "6").await;
    entering::sold_in(journey, "Large cup").await;
    // 14.3110 fl oz, ten sixteenths and six sixteenths of it.
    let used = |name: &str| format!("{name} {}", say!(drinks::as_purchased));
    let (juice, soda, same) = (used("Apple juice"), used("Soda water"), say!(drinks::same_amount));
    let amounts: [&[&str]; 3] = [
        &[say!(drinks::ingredient), say!(drinks::in_the_drink), say!(drinks::amount_needed)],
        &[&juice, "8.9 fl oz", same],
        &[&soda, "5.4 fl oz", same],
    ];
    entering::unfold(journey, say!(drinks::recipe)).await;
    journey.expect_rows(say!(drinks::recipe), &amounts).await;
    // 8.94436 * 0.10 + 5.36662 * 0.02 = 1.001768, and 0.12 + 0.07 of 1.191768.
    let costs: [&[&str]; 9] = [
        &[say!(drinks::part), say!(common::cost), say!(drinks::share)],
        &[say!(drinks::ingredients), "$1.002", "84.1%"],
        &["Apple juice", "$0.894", ""],
        &["Soda water", "$0.107", ""],
        &[say!(common::packaging), "$0.190", "15.9%"],
        &["Paper cup", "$0.120", ""],
        &["Dome lid", "$0.040", ""],
        &["Paper straw", "$0.030", ""],
        &[say!(drinks::on_goods), "$1.192", ""],
    ];
    entering::unfold(journey, say!(common::cost)).await;
    journey.expect_rows(say!(common::cost), &costs).await;
    journey.click(By::Text(say!(drinks::recipe_card))).await;
    // 16.8640 - 14.3110 = 2.5530.
    journey.wait_for_text(&say!(counter::fill_to_line_below_rim, below = "1/2 in", headspace = "2.6 fl oz")).await;
    journey.expect_each(".recipe > li", &["8.94 fl oz Apple juice", "5.37 fl oz Soda water"]).await;
    journey.expect_count(".recipe-fill svg .glass-line", 1).await;
    journey.screenshot("card").await;
}

/// A cup of the measures above holds 16.8640 fl oz. A pound of water is 453.592 g and so many milliliters: to a
/// tenth 453.6 mL, 15.3381 fl oz.
#[tokio::test]
async fn a_new_container_is_known_by_its_measures_or_by_the_weight_of_its_water() {
    let journey = entering::empty_book("cup_first").await;
    journey.click(By::Text(say!(first::buying))).await;
    journey.click(By::Text(say!(first::containers))).await;
    journey.click(By::Text(say!(labels::add_container))).await;
    journey.wait_for_text(say!(labels::new_container)).await;
    let how = By::Label(say!(goods::how_measured));
    journey.expect_value(how, say!(drinks::by_water_weight)).await;
    for way in [say!(drinks::by_pouring), say!(drinks::by_measures)] {
        journey.choose(how, way).await;
        journey.expect_value(how, way).await;
    }
    journey.enter(By::Label(say!(labels::menu_name)), "Tapered cup").await;
    journey.enter(By::Label(say!(goods::base_width)), "2").await;
    journey.enter(By::Label(say!(goods::rim_width)), "3.5").await;
    journey.enter(By::Label(say!(goods::inside_height)), "5").await;
    journey.enter(By::Label(say!(labels::headspace)), "1").await;
    journey.wait_for_text("16.9 fl oz").await;
    journey.expect_value(how, say!(drinks::by_measures)).await;
    entering::container(&journey, "Jar", "1 lb", "0.5").await;
    journey.wait_for_text("15.3 fl oz").await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}
