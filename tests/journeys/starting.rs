//! Starting figures: brought by a few letters, marked, checked and confirmed; and typing that goes on where the list
//! does not come. From an empty book; everything is invented but what the list brings.

use brimwright::say;

use crate::entering;
use crate::harness::{By, Journey, Publisher};

fn name() -> By<'static> {
    By::Label(say!(common::name))
}

#[tokio::test]
async fn a_few_letters_bring_figures_that_wait_to_be_checked() {
    let journey = entering::empty_book("starting").await;
    picked_by_letters(&journey).await;
    confirmed_and_typed(&journey).await;
    allergens_are_offered(&journey).await;
    a_usual_bottle(&journey).await;
    in_a_recipe(&journey).await;
    all_to_check(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

async fn new_ingredient(journey: &Journey, letters: &str) {
    journey.click(By::Text(say!(first::buying))).await;
    journey.click(By::Text(say!(goods::add_ingredient))).await;
    journey.wait_for_text(say!(goods::new_ingredient)).await;
    journey.type_into(name(), letters).await;
}

async fn picked_by_letters(journey: &Journey) {
    new_ingredient(journey, "car").await;
    journey.wait_for_text("Carrots").await;
    journey.screenshot("matches").await;
    let first = journey.lines_of_each(".match").await;
    assert!(first.first().is_some_and(|it| it.starts_with("Carrots")), "{first:?}");
    journey.click(By::Text("Carrots")).await;
    journey.expect_value(name(), "Carrots").await;
    journey.expect_value(By::Label(say!(goods::trim_yield)), "89").await;
    journey.expect_value(By::Label(say!(goods::juice_yield)), "52.5").await;
    journey.expect_count(".mark-starting", 5).await;
    journey.wait_for_text(&say!(starter::from_sr28_item, number = "11124")).await;
    // A usual case is a suggestion beside an empty field.
    journey.expect_value(By::Label(say!(goods::pack_size)), "").await;
    journey.wait_for_text(&say!(starter::usual_case, size = "50 lb")).await;
    journey.enter(By::Label(say!(goods::pack_size)), "50 lb").await;
    journey.enter(By::Label(say!(goods::case_price)), "40").await;
    journey.screenshot("marked").await;
}

/// A mark ends by the button, and by typing.
async fn confirmed_and_typed(journey: &Journey) {
    let confirm = |figure| By::label(say!(starter::confirm_named, figure = figure));
    journey.click(confirm(say!(goods::trim_yield))).await;
    journey.expect_count(".mark-starting", 4).await;
    journey.expect_value(By::Label(say!(goods::trim_yield)), "89").await;
    journey.enter(By::Label(say!(goods::juice_yield)), "55").await;
    journey.expect_count(".mark-starting", 3).await;
    // 50 lb of 89% trimmed; a piece weight that stands on another trim yield is said.
    journey.enter(By::Label(say!(goods::trim_yield)), "70").await;
    journey.wait_for_text(&say!(starter::other_trim_yield, list = "89.0%", own = "70.0%")).await;
    journey.enter(By::Label(say!(goods::trim_yield)), "89").await;
    journey.wait_for_text_gone(&say!(starter::other_trim_yield, list = "89.0%", own = "70.0%")).await;
}

async fn allergens_are_offered(journey: &Journey) {
    new_ingredient(journey, "whole milk").await;
    journey.wait_for_text("Whole milk").await;
    journey.click(By::Text("Whole milk")).await;
    let milk = say!(labels::milk);
    journey.wait_for_text(&say!(starter::usually_contains, allergens = milk)).await;
    // Not said before the owner says it.
    journey.wait_for_text(say!(labels::ingredient_not_checked)).await;
    let contains = say!(starter::contains_it, allergens = milk);
    journey.screenshot("milk").await;
    journey.click(By::Text(&contains)).await;
    journey.wait_for_text(&say!(labels::ingredient_contains, allergens = milk)).await;
    journey.wait_for_text_gone(&say!(starter::usually_contains, allergens = milk)).await;
}

async fn a_usual_bottle(journey: &Journey) {
    journey.click(By::Text(say!(first::buying))).await;
    journey.click(By::Text(say!(first::containers))).await;
    journey.click(By::Text(say!(labels::add_container))).await;
    let bottle = say!(starter::bottle_of, size = "16 oz");
    journey.wait_for_text(&bottle).await;
    journey.wait_for_text(&say!(starter::holds, capacity = "16.8 fl oz")).await;
    journey.screenshot("sizes").await;
    journey.click(By::Text(&bottle)).await;
    journey.wait_for_text(say!(starter::usual_capacity)).await;
    journey.expect_value(By::Label(say!(goods::brimful_capacity)), "16.8 fl oz").await;
    journey.screenshot("bottle").await;
    // Weighed, it is the owner's.
    journey.enter(By::Label(say!(goods::brimful_capacity)), "16.9").await;
    journey.wait_for_text_gone(say!(starter::usual_capacity)).await;
}

async fn in_a_recipe(journey: &Journey) {
    entering::drink(journey, "Orange alone", say!(first::type_pressed), "16 fl oz").await;
    journey.choose(By::Label(say!(drinks::add_ingredient)), say!(drinks::new_ingredient)).await;
    journey.type_into(By::Label(say!(drinks::name_of_new)), "ora").await;
    journey.wait_for_text("Oranges").await;
    journey.screenshot("line").await;
    journey.click(By::Text("Oranges")).await;
    journey.enter(By::Label(say!(drinks::amount_of_new)), "16 fl oz").await;
    journey.wait_for_text("Oranges").await;
    // A container that is not there yet is made on its page, which leads back.
    journey.choose(By::Label(say!(drinks::add_size)), say!(labels::new_container)).await;
    journey.expect_each("main h1", &[say!(labels::new_container)]).await;
    let bottle = say!(starter::bottle_of, size = "12 oz");
    journey.click(By::Text(&bottle)).await;
    journey.wait_for_text(say!(starter::usual_capacity)).await;
    journey.click(By::Text(say!(labels::back_to_drink))).await;
    journey.expect_each("main h1", &["Orange alone"]).await;
    // It is a size of the drink already.
    journey.expect_count(".size-tags li", 1).await;
    journey.wait_for_text(&bottle).await;
    // Nobody looked at the oranges: the fold says so, and the way leads to the question, unfolded.
    journey.wait_for_text(say!(labels::not_checked)).await;
    entering::unfold(journey, say!(labels::allergens)).await;
    journey.run("document.querySelector('.fold[open] .actions a[href*=\"buying\"]').click()").await;
    journey.expect_each("main h1", &["Oranges"]).await;
    journey.wait_for_text(say!(labels::ingredient_not_checked)).await;
}

async fn all_to_check(journey: &Journey) {
    journey.click(By::Text(say!(first::buying))).await;
    let figures = journey.run("return +/\\d+/.exec([...document.querySelectorAll('a')].find((it) => it.hash === '#/buying/check').innerText)[0]").await;
    // Three of carrots, one of milk, five of oranges, one of the bottle.
    assert_eq!(figures, 10);
    journey.click(By::Text(&say!(starter::figures_of, figures = "10"))).await;
    journey.wait_for_text(say!(starter::figures_to_check)).await;
    journey.screenshot("to_check").await;
    journey.expect_count(".to-check-row", 10).await;
    for _ in 0..10 {
        journey.click(By::Nth(0, &By::Text(say!(starter::confirm)))).await;
        // Nothing moves under the finger: the row stays, with the way back.
        journey.expect_count(".to-check-row", 10).await;
    }
    journey.wait_for_text(say!(starter::none_left)).await;
    journey.click(By::Nth(0, &By::Text(say!(starter::undo)))).await;
    journey.wait_for_text_gone(say!(starter::none_left)).await;
    journey.click(By::Nth(0, &By::Text(say!(starter::confirm)))).await;
    journey.wait_for_text(say!(starter::none_left)).await;
}

/// Whoever saw the app once has the list without a network.
#[tokio::test]
async fn the_list_is_kept_for_use_offline() {
    let mut journey = entering::empty_book("starting_offline").await;
    journey.wait_until_kept_offline().await;
    journey.close_site();
    new_ingredient(&journey, "gin").await;
    journey.click(By::Text("Ginger root")).await;
    journey.expect_value(name(), "Ginger root").await;
    journey.expect_value(By::Label(say!(goods::trim_yield)), "93").await;
}

/// The list is a page of an error, or cut off, or not there: one quiet sentence, and typing goes on.
#[tokio::test]
async fn typing_goes_on_without_the_list() {
    for (name, spoilt) in
        [("page", "<!doctype html>\n<p>Not found</p>\n"), ("cut", "brimwright starter 1 253\napple\tAp")]
    {
        let publisher = Publisher::new(&format!("starting_{name}"));
        publisher.publish("one");
        publisher.replace("starter/ingredients.txt", spoilt);
        let journey = Journey::start_on(&format!("starting_{name}"), publisher.address()).await;
        journey.open().await;
        journey.click(By::Text(say!(first::start_book))).await;
        new_ingredient(&journey, "car").await;
        journey.wait_for_text(say!(starter::missing)).await;
        journey.type_on("rots").await;
        journey.expect_value(self::name(), "carrots").await;
        journey.screenshot("missing").await;
        assert_eq!(journey.console_errors().await, Vec::<String>::new());
    }
}
