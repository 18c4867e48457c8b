//! New things begin with empty fields, wait on the screen for what they lack, and are in the book
//! as one step once they lack nothing. From an empty book; everything is invented.

use brimwright::say;
use fantoccini::key::Key;

use crate::entering;
use crate::harness::{By, Journey};

/// Presses the second of the crosses: that of the line that is not in the book.
const DROP: &str = "
    const crosses = [...document.querySelectorAll('.line .take-out')];
    crosses[1]?.click();
    return crosses.length === 2;";

fn name() -> By<'static> {
    By::Label(say!(common::name))
}

fn holds() -> By<'static> {
    By::Label(say!(goods::pack_size))
}

fn price() -> By<'static> {
    By::Label(say!(goods::case_price))
}

/// That something new is not in the book, and what it needs.
fn waits(unsaved: &str, needs: &[&str]) -> String {
    [unsaved, &still_needs(needs)].join(" ")
}

fn still_needs(needs: &[&str]) -> String {
    say!(book::still_needs, fields = needs.len(), needs = needs.join(", "))
}

/// What the Undo of the head says of a step.
async fn expect_undo(journey: &Journey, step: &str) {
    assert_eq!(journey.title_of_undo().await, say!(first::undo_change, change = step));
}

/// What a pack of kale costs by the pound.
async fn expect_pound(journey: &Journey, cost: &str) {
    let pound = say!(goods::per_as_purchased, amount = "lb");
    journey.expect_figures(say!(common::cost), &[(&pound, cost)]).await;
}

#[tokio::test]
async fn a_new_thing_waits_until_it_lacks_nothing() {
    let journey = entering::empty_book("new_things").await;
    an_ingredient(&journey).await;
    a_pack(&journey).await;
    a_pack_mistyped(&journey).await;
    a_lower_price(&journey).await;
    a_drink(&journey).await;
    a_line(&journey).await;
    something_new(&journey).await;
    a_step(&journey).await;
    measures(&journey).await;
    headspace(&journey).await;
    no_sales(&journey).await;
    packaging(&journey).await;
    a_scenario(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

async fn an_ingredient(journey: &Journey) {
    journey.click(By::Text(say!(first::buying))).await;
    journey.click(By::Text(say!(goods::add_ingredient))).await;
    journey.expect_value(name(), "").await;
    let in_the_name = format!("return document.activeElement.labels?.[0]?.innerText === '{}'", say!(common::name));
    journey.wait_until("the caret in the name", &in_the_name).await;
    let needs = waits(say!(book::new_ingredient_unsaved), &[say!(book::needs_name)]);
    journey.wait_for_text(&needs).await;
    journey.screenshot("ingredient").await;
    // The field is not made anew under the typing when the first letter puts it into the book.
    journey.type_into(name(), "Kale").await;
    journey.wait_for_text_gone(&needs).await;
    // By its whole name, not by the first letter.
    journey.wait_for_text(&say!(book::new_pack_unsaved, of = "Kale")).await;
    expect_undo(journey, say!(goods::add_ingredient)).await;
}

async fn a_pack(journey: &Journey) {
    journey.expect_value(holds(), "").await;
    journey.expect_value(price(), "").await;
    journey.enter(price(), "12.50").await;
    let unsaved = say!(book::new_pack_unsaved, of = "Kale");
    let needs = waits(&unsaved, &[say!(book::needs_pack_size)]);
    journey.wait_for_text(&needs).await;
    journey.screenshot("pack").await;
    expect_undo(journey, say!(goods::add_ingredient)).await;
    // Where it would be left behind it says so, and leads back.
    journey.go("#/drinks").await;
    journey.wait_for_text(&needs).await;
    journey.screenshot("left_behind").await;
    journey.click(By::Text(say!(book::finish_now))).await;
    journey.expect_value(price(), "12.50").await;
    journey.expect_value(holds(), "").await;
    journey.type_into(holds(), "10 lb").await;
    // 12.50 / 10.
    expect_pound(journey, "$1.250").await;
    journey.wait_for_text_gone(&unsaved).await;
    expect_undo(journey, say!(goods::add_pack)).await;
}

/// In the same visit it is taken out of the book again, and back in.
async fn a_pack_mistyped(journey: &Journey) {
    journey.type_into(holds(), "10 stone").await;
    journey.expect_sentence(holds(), &say!(book::unknown_unit, unit = "stone", example = "12 lb")).await;
    journey.wait_for_text(&still_needs(&[say!(book::needs_pack_size)])).await;
    expect_undo(journey, say!(goods::add_ingredient)).await;
    journey.press(holds(), Key::Escape).await;
    journey.expect_value(holds(), "").await;
    journey.enter(holds(), "5 lb").await;
    // 12.50 / 5.
    expect_pound(journey, "$2.500").await;
    journey.expect_value(holds(), "5 lb").await;
    // One step takes the pack out, and one brings it back.
    journey.click(By::Text(say!(first::undo))).await;
    journey.wait_for_text_gone("$2.500").await;
    expect_undo(journey, say!(goods::add_ingredient)).await;
    journey.click(By::Text(say!(first::redo))).await;
    expect_pound(journey, "$2.500").await;
}

async fn a_lower_price(journey: &Journey) {
    journey.click(By::Text(say!(goods::add_volume_price))).await;
    let (from, price) = (say!(goods::minimum_packs_of, number = "1"), say!(goods::case_price_of, number = "1"));
    let (from, price) = (By::Label(&from), By::Label(&price));
    journey.expect_value(from, "").await;
    journey.expect_value(price, "").await;
    journey.enter(from, "5").await;
    let unsaved = say!(book::new_volume_price_unsaved, of = "Kale");
    journey.wait_for_text(&waits(&unsaved, &[say!(book::needs_case_price)])).await;
    journey.enter(price, "10").await;
    journey.wait_for_text_gone(&unsaved).await;
    expect_undo(journey, say!(goods::add_volume_price)).await;
}

async fn a_drink(journey: &Journey) {
    journey.click(By::Text(say!(first::drinks))).await;
    journey.click(By::Text(say!(first::add_drink))).await;
    let makes = By::Label(say!(drinks::recipe_makes));
    journey.expect_value(makes, "").await;
    journey.enter(name(), "Hedge Green").await;
    let needs = waits(say!(book::new_drink_unsaved), &[say!(book::needs_recipe_makes)]);
    journey.wait_for_text(&needs).await;
    journey.screenshot("drink").await;
    journey.enter(makes, "16").await;
    journey.expect_value(makes, "16 fl oz").await;
    expect_undo(journey, say!(first::add_drink)).await;
}

async fn a_line(journey: &Journey) {
    let amount = say!(drinks::amount_of, name = "Kale");
    let amount = By::Label(&amount);
    let add = By::Label(say!(drinks::add_ingredient));
    let unsaved = say!(book::new_recipe_line_unsaved, of = "Hedge Green");
    journey.choose(add, "Kale").await;
    journey.expect_value(amount, "").await;
    journey.wait_for_text(&waits(&unsaved, &[say!(book::needs_amount)])).await;
    journey.screenshot("line").await;
    expect_undo(journey, say!(first::add_drink)).await;
    journey.type_into(amount, "0.5 lb").await;
    let prep = say!(drinks::prep_of, name = "Kale");
    journey.expect_value(By::Label(&prep), say!(drinks::as_purchased)).await;
    expect_undo(journey, say!(drinks::add_to_recipe)).await;
    // Amounts stay as typed.
    journey.press(amount, Key::Tab).await;
    journey.expect_value(amount, "0.5 lb").await;
    // One that is not wanted is dropped.
    journey.choose(add, "Kale").await;
    journey.wait_for_text(&unsaved).await;
    journey.wait_until("a way to drop it", DROP).await;
    journey.wait_for_text_gone(&unsaved).await;
    journey.expect_value(amount, "0.5 lb").await;
}

/// An ingredient that nobody entered before is named where it is needed.
async fn something_new(journey: &Journey) {
    journey.choose(By::Label(say!(drinks::add_ingredient)), say!(drinks::new_ingredient)).await;
    let (name, amount) = (By::Label(say!(drinks::name_of_new)), By::Label(say!(drinks::amount_of_new)));
    journey.enter(name, "Pear juice").await;
    journey.wait_for_text(&still_needs(&[say!(book::needs_amount)])).await;
    journey.enter(amount, "8").await;
    journey.wait_for_text_gone(&say!(book::new_recipe_line_unsaved, of = "Hedge Green")).await;
    journey.expect_value(amount, "8 fl oz").await;
    journey.screenshot("recipe").await;
    // Both are one step.
    journey.click(By::Text(say!(first::undo))).await;
    journey.go("#/buying").await;
    journey.wait_for_text("Kale").await;
    journey.wait_for_text_gone("Pear juice").await;
    journey.click(By::Text(say!(first::redo))).await;
    journey.wait_for_text("Pear juice").await;
}

/// A line goes on in proportion until its step is typed.
async fn a_step(journey: &Journey) {
    journey.click(By::Text(say!(first::drinks))).await;
    journey.click(By::Text("Hedge Green")).await;
    let (scaling, step) = (say!(drinks::scaling_of, name = "Kale"), say!(drinks::piece_size_of, name = "Kale"));
    let (scaling, step) = (By::Label(&scaling), By::Label(&step));
    let needs = waits(&say!(book::new_piece_size_unsaved, of = "Hedge Green"), &[say!(book::needs_piece_size)]);
    let before = journey.title_of_undo().await;
    journey.choose(scaling, say!(drinks::by_the_piece)).await;
    journey.wait_for_text(&needs).await;
    journey.expect_value(step, "").await;
    journey.choose(scaling, say!(drinks::fixed_amount)).await;
    journey.wait_for_text_gone(&needs).await;
    expect_undo(journey, say!(drinks::scaling)).await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.expect_value(scaling, say!(drinks::scale_with_size)).await;
    assert_eq!(journey.title_of_undo().await, before, "nothing was guessed");
    journey.choose(scaling, say!(drinks::by_the_piece)).await;
    journey.enter(step, "0.25").await;
    journey.wait_for_text_gone(&needs).await;
    journey.expect_value(step, "0.25 lb").await;
    journey.screenshot("step").await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.expect_value(scaling, say!(drinks::scale_with_size)).await;
}

/// The fill of the container that is open.
async fn expect_fill(journey: &Journey, fill: &str) {
    journey.expect_figures(say!(common::fill), &[(say!(common::fill), fill)]).await;
}

/// What was weighed is in force until all three measures are typed. 2 in across the base, 3.5 across
/// the rim, 5 high: 16.8640 fl oz, as in [`crate::cup`].
async fn measures(journey: &Journey) {
    entering::container(journey, "Large cup", "16", "1").await;
    let known = By::Label(say!(goods::how_measured));
    journey.choose(known, say!(drinks::by_measures)).await;
    let (base, rim, height) =
        (By::Label(say!(goods::base_width)), By::Label(say!(goods::rim_width)), By::Label(say!(goods::inside_height)));
    for field in [base, rim, height] {
        journey.expect_value(field, "").await;
    }
    let unsaved = say!(book::new_capacity_unsaved, of = "Large cup");
    let (base_width, rim_width) = (say!(book::needs_base_width), say!(book::needs_rim_width));
    let inside_height = say!(book::needs_inside_height);
    journey.wait_for_text(&waits(&unsaved, &[base_width, rim_width, inside_height])).await;
    journey.enter(base, "2").await;
    journey.enter(rim, "3 1/2").await;
    journey.wait_for_text(&waits(&unsaved, &[inside_height])).await;
    journey.expect_value(rim, "3 1/2 in").await;
    expect_fill(journey, "15.0 fl oz").await;
    expect_undo(journey, say!(labels::add_container_step)).await;
    journey.screenshot("measures").await;
    // Another way drops what is typed of this one.
    journey.choose(known, say!(drinks::by_pouring)).await;
    let readings = [
        say!(book::needs_height_1),
        say!(book::needs_volume_1),
        say!(book::needs_height_2),
        say!(book::needs_volume_2),
    ];
    journey.wait_for_text(&waits(&unsaved, &readings)).await;
    journey.click(By::Text(say!(book::discard_draft))).await;
    journey.expect_value(known, say!(drinks::by_water_weight)).await;
    let capacity = By::Label(say!(goods::brimful_capacity));
    journey.expect_value(capacity, "16 fl oz").await;
    journey.choose(known, say!(drinks::by_measures)).await;
    journey.expect_value(base, "").await;
    journey.enter(base, "2").await;
    journey.enter(rim, "3 1/2").await;
    journey.type_into(height, "5").await;
    // The field is not made anew under the typing.
    journey.wait_for_text_gone(&unsaved).await;
    journey.type_on("0").await;
    journey.expect_value(height, "50 in").await;
    journey.type_into(height, "5").await;
    let figures = [
        (say!(common::fill), "15.9 fl oz"),
        (say!(goods::brimful_capacity), "16.9 fl oz"),
        (say!(labels::fill_line_above_base), "4 13/16 in"),
        (say!(labels::fill_line_below_rim), "3/16 in"),
    ];
    journey.expect_figures(say!(common::fill), &figures).await;
    expect_undo(journey, say!(goods::brimful_capacity)).await;
    // One step goes back, and may be typed anew.
    journey.click(By::Text(say!(first::undo))).await;
    journey.expect_value(known, say!(drinks::by_water_weight)).await;
    journey.click(By::Text(say!(first::redo))).await;
    journey.expect_value(height, "5 in").await;
    journey.choose(known, say!(drinks::by_water_weight)).await;
    journey.expect_value(capacity, "").await;
    journey.enter(capacity, "17").await;
    expect_fill(journey, "16.0 fl oz").await;
}

async fn headspace(journey: &Journey) {
    let (way, empty) = (By::Label(say!(labels::headspace_by)), By::Label(say!(labels::headspace)));
    journey.choose(way, say!(labels::by_share)).await;
    journey.expect_value(empty, "").await;
    let unsaved = say!(book::new_headspace_unsaved, of = "Large cup");
    journey.wait_for_text(&waits(&unsaved, &[say!(book::needs_headspace)])).await;
    expect_fill(journey, "16.0 fl oz").await;
    journey.enter(empty, "10").await;
    // 17 * 0.9.
    expect_fill(journey, "15.3 fl oz").await;
    journey.choose(way, say!(labels::by_volume)).await;
    journey.expect_value(empty, "").await;
    journey.enter(empty, "2").await;
    expect_fill(journey, "15.0 fl oz").await;
}

async fn packaging(journey: &Journey) {
    entering::packaging(journey, "Paper straw", say!(drinks::piece_straw), "200", "3").await;
    journey.click(By::Text(say!(first::buying))).await;
    journey.click(By::Text(say!(first::containers))).await;
    journey.click(By::Text("Large cup")).await;
    entering::unfold(journey, say!(common::packaging)).await;
    journey.choose(By::Label(say!(goods::add_packaging)), "Paper straw").await;
    let unsaved = say!(book::new_kit_item_unsaved, of = "Large cup");
    journey.wait_for_text(&waits(&unsaved, &[say!(book::needs_number_per_drink)])).await;
    let number = say!(goods::per_drink, name = "Paper straw");
    let number = By::Label(&number);
    journey.expect_value(number, "").await;
    journey.enter(number, "2").await;
    journey.wait_for_text_gone(&unsaved).await;
    journey.wait_for_text("$0.030").await;
    expect_undo(journey, say!(goods::add_packaging)).await;
    new_packaging(journey).await;
}

/// What is named on the page of a container gets its price right there: 20.00 for 500 is 0.04.
async fn new_packaging(journey: &Journey) {
    journey.choose(By::Label(say!(goods::add_packaging)), say!(goods::new_packaging)).await;
    // What is not in the book yet does not count.
    journey.wait_for_text(&say!(goods::items_and_cost, items = 1, cost = "$0.030")).await;
    journey.enter(By::Label(say!(goods::name_of_new_packaging)), "Paper lid").await;
    journey.enter(By::Label(say!(goods::new_packaging_per_drink)), "1").await;
    journey.wait_for_text(&say!(goods::items_and_cost, items = 2, cost = say!(goods::no_pack_yet))).await;
    journey.screenshot("new_packaging").await;
    journey.enter(holds(), "500").await;
    journey.enter(price(), "20").await;
    journey.wait_for_text("$0.040").await;
    journey.wait_for_text(&say!(goods::items_and_cost, items = 2, cost = "$0.070")).await;
    expect_undo(journey, say!(goods::add_pack)).await;
}

/// Before anything is sold the page of sales says so, and shows no sum of nothing; far too many are asked about.
async fn no_sales(journey: &Journey) {
    journey.click(By::Text(say!(first::drinks))).await;
    journey.click(By::Text("Hedge Green")).await;
    journey.choose(By::Label(say!(drinks::add_size)), "Large cup").await;
    journey.go("#/sizes/sales").await;
    journey.wait_for_text(say!(sales::no_sales_yet)).await;
    journey.wait_for_text_gone(say!(sales::same_terms)).await;
    entering::unfold(journey, say!(sales::typical_by_size)).await;
    let cups = By::Label("Large cup");
    journey.enter(cups, "99999999").await;
    journey.wait_for_text(say!(book::check_this)).await;
    journey.screenshot("rare_sales").await;
    journey.click(By::Text(say!(book::back))).await;
    journey.expect_value(cups, "").await;
    journey.enter(cups, "1.5").await;
    journey.wait_for_text_gone(say!(book::check_this)).await;
    journey.wait_for_text(say!(sales::same_terms)).await;
}

async fn a_scenario(journey: &Journey) {
    journey.go("#/sizes/scenarios").await;
    journey.click(By::Text(say!(sales::copy_menu))).await;
    journey.wait_for_text(&waits(say!(book::new_scenario_unsaved), &[say!(book::needs_name)])).await;
    journey.expect_value(name(), "").await;
    expect_undo(journey, say!(goods::add_pack)).await;
    journey.enter(name(), "Two sizes only").await;
    journey.wait_for_text(say!(sales::scenario_is_menu)).await;
    expect_undo(journey, say!(sales::copy_menu)).await;
}
