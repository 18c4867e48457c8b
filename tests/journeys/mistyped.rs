//! What cannot be read or does not hold in measures of cups, readings of bottles, lower prices,
//! steps, ice and air: explained beside the field, as in [`crate::typing`]. From an empty book;
//! everything is invented, every figure worked out by hand.

use brimwright::say;
use fantoccini::key::Key;

use crate::entering;
use crate::harness::{By, Journey};
use crate::typing::{Case, explained, not_a_number, not_positive, nothing};

#[tokio::test]
async fn measures_steps_and_tiers_that_do_not_hold_are_explained() {
    let journey = entering::empty_book("mistyped").await;
    entering::packaging(&journey, "Paper straw", say!(drinks::piece_straw), "200", "3").await;
    lower_prices(&journey).await;
    measures(&journey).await;
    readings(&journey).await;
    recipe(&journey).await;
}

/// 20 / 10 = 2.00 a lb.
async fn lower_prices(journey: &Journey) {
    entering::ingredient(journey, "Plums", "10 lb", "20").await;
    journey.click(By::Text(say!(goods::add_volume_price))).await;
    let pound = say!(goods::per_as_purchased, amount = "lb");
    let in_force = async || journey.expect_figures(say!(common::cost), &[(&pound, "$2.000")]).await;
    let (from, label) = (say!(goods::minimum_packs_of, number = "1"), say!(goods::case_price_of, number = "1"));
    let (at_a_time, from, price) = (By::Label(say!(goods::packs_per_order)), By::Label(&from), By::Label(&label));
    journey.enter(from, "5").await;
    journey.enter(price, "20").await;
    let above = say!(refusals::not_above_one, field = say!(goods::minimum_packs));
    let cases: [Case<'_>; 5] = [
        (at_a_time, "0", &say!(refusals::less_than_one, field = say!(goods::packs_per_order))),
        (at_a_time, "a few", &not_a_number("a few", "1")),
        (from, "1", &above),
        (from, "0", &above),
        (price, "-1", &say!(book::no_minus, example = "36.00")),
    ];
    explained(journey, &cases, in_force).await;
    // What the pack costs waits for a lower price that cannot be read.
    journey.type_into(price, "-1").await;
    journey.wait_for_text(&say!(book::fix_field_to_see, field = label.as_str())).await;
    journey.press(price, Key::Escape).await;
    in_force().await;
}

/// 2 in across the base, 3.5 across the rim, 5 high, poured to 4.5: 14.3110 of 16.8640 fl oz, by
/// pi h / 12 (d0^2 + d0 d + d^2) and 231/128 cubic inches.
async fn measures(journey: &Journey) {
    entering::container(journey, "Large cup", "16", "1").await;
    journey.choose(By::Label(say!(goods::how_measured)), say!(drinks::by_measures)).await;
    let (base, rim) = (By::Label(say!(goods::base_width)), By::Label(say!(goods::rim_width)));
    let (height, empty) = (By::Label(say!(goods::inside_height)), By::Label(say!(labels::headspace)));
    journey.enter(base, "2").await;
    journey.enter(rim, "3.5").await;
    journey.enter(height, "5").await;
    journey.choose(By::Label(say!(labels::headspace_by)), say!(labels::by_height)).await;
    journey.expect_value(empty, "").await;
    journey.enter(empty, "1/2").await;
    journey.expect_value(empty, "1/2 in").await;
    entering::belongs(journey, "Paper straw", "1").await;
    let figures = [
        (say!(common::fill), "14.3 fl oz"),
        (say!(goods::brimful_capacity), "16.9 fl oz"),
        (say!(labels::fill_line_above_base), "4 1/2 in"),
        (say!(labels::fill_line_below_rim), "1/2 in"),
    ];
    let in_force = async || journey.expect_figures(say!(common::fill), &figures).await;
    // Each width and the height has an example of its own.
    let [of_base, of_rim, of_height] = ["2 1/2 in", "3 1/2 in", "4 3/4 in"];
    let straws = say!(goods::per_drink, name = "Paper straw");
    let cases: [Case<'_>; 7] = [
        (base, "3 stone", &say!(book::not_a_length, unit = "stone", example = of_base)),
        (base, "0", &not_positive(say!(goods::base_width))),
        (rim, "-3", &say!(book::no_minus, example = of_rim)),
        (height, "0 mm", &not_positive(say!(goods::inside_height))),
        (height, "", &nothing(of_height)),
        (empty, "6", &say!(refusals::nothing_fits, field = say!(labels::headspace))),
        (By::Label(&straws), "0", &not_positive(say!(goods::amount_per_drink))),
    ];
    explained(journey, &cases, in_force).await;
}

/// The same cup, with what stands half way up, 3.5547 pi cu in = 6.19 fl oz, and at the rim.
async fn readings(journey: &Journey) {
    journey.choose(By::Label(say!(goods::how_measured)), say!(drinks::by_pouring)).await;
    let heights = ["1", "2"].map(|number| say!(goods::height_of_reading, number = number));
    let volumes = ["1", "2"].map(|number| say!(goods::volume_of_reading, number = number));
    let (height, volume) = (By::Label(&heights[0]), By::Label(&volumes[1]));
    let readings = [(height, "2.5"), (By::Label(&volumes[0]), "6.19"), (By::Label(&heights[1]), "5")];
    for (field, typed) in readings {
        journey.expect_value(field, "").await;
        journey.enter(field, typed).await;
    }
    let unsaved = say!(book::new_capacity_unsaved, of = "Large cup");
    let needs = say!(book::still_needs, fields = 1_usize, needs = say!(book::needs_volume_2));
    journey.wait_for_text(&[&*unsaved, &needs].join(" ")).await;
    journey.enter(volume, "16.86").await;
    journey.wait_for_text_gone(&unsaved).await;
    journey.expect_value(volume, "16.86 fl oz").await;
    let capacity = [say!(goods::brimful_capacity), "16.9 fl oz"].join("\n");
    let in_force = async || journey.wait_for_text(&capacity).await;
    let reading = say!(refusals::reading);
    let falls = say!(refusals::falls, field = reading, number = "2");
    let a_volume = [say!(book::unit_of_weight, unit = "lb"), say!(book::type_a_volume, example = "12 fl oz")].join(" ");
    let cases: [Case<'_>; 4] = [
        (volume, "6", &falls),
        (volume, "1 lb", &a_volume),
        (height, "5", &falls),
        (height, "0", &not_positive(reading)),
    ];
    explained(journey, &cases, in_force).await;
}

/// 8 fl oz of plums, and 4 of a scoop, 60% of it ice that is held under: 10.4.
async fn recipe(journey: &Journey) {
    entering::ingredient(journey, "Ice", "20 lb", "3").await;
    entering::drink(journey, "Plum Shade", say!(first::type_over_ice), "16").await;
    entering::line(journey, "Plums", "8").await;
    let scaling = say!(drinks::scaling_of, name = "Plums");
    let step = say!(drinks::piece_size_of, name = "Plums");
    let step = By::Label(&step);
    journey.choose(By::Label(&scaling), say!(drinks::by_the_piece)).await;
    journey.expect_value(step, "").await;
    journey.enter(step, "1").await;
    entering::line(journey, "Ice", "4").await;
    let (prep, packing) = (say!(drinks::prep_of, name = "Ice"), say!(drinks::ice_packing_of, name = "Ice"));
    let packing = By::Label(&packing);
    journey.choose(By::Label(&prep), say!(drinks::use_ice_under_line)).await;
    journey.expect_value(packing, "60").await;
    journey.expect_value(step, "1 fl oz").await;
    let sum = say!(drinks::ingredients_make, volume = "10.4 fl oz");
    let in_force = async || journey.expect_sentence(By::Label(say!(drinks::recipe_makes)), &sum).await;
    entering::unfold(journey, say!(drinks::making)).await;
    let no_packing = say!(refusals::not_a_packing, field = say!(drinks::ice_packing));
    let cases: [Case<'_>; 5] = [
        (step, "5 g", &say!(refusals::another_kind, field = say!(drinks::piece_size))),
        (step, "0", &not_positive(say!(drinks::piece_size))),
        (packing, "0", &no_packing),
        (packing, "101", &no_packing),
        (By::Label(say!(drinks::air)), "-1", &say!(book::no_minus, example = "5")),
    ];
    explained(journey, &cases, in_force).await;
}
