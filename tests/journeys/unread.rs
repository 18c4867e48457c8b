//! While a field cannot be read, no answer that hangs on it stands beside the error: a sentence
//! takes its place, and what cannot be read waits in its field, also where the screen is left.

use brimwright::say;
use brimwright::words::texts::{HOLE, around};
use fantoccini::key::Key;

use crate::entering;
use crate::harness::{By, Journey};

/// Whether sizes are listed that a price moved.
const MOVED: &str = "return document.querySelector('.moved-row') !== null";

#[tokio::test]
async fn an_error_takes_the_place_of_the_answer() {
    let journey = Journey::start("unread").await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    offer(&journey).await;
    quick_price(&journey).await;
    ingredient(&journey).await;
    questions(&journey).await;
    card(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// Types what cannot be read, sees `answer` replaced, and brings it back by Escape.
async fn replaced(journey: &Journey, field: By<'_>, label: &str, text: &str, answer: &str) {
    journey.wait_for_text(answer).await;
    journey.type_into(field, text).await;
    journey.wait_for_text(&fix(label)).await;
    journey.wait_for_text_gone(answer).await;
    journey.press(field, Key::Escape).await;
    journey.wait_for_text(answer).await;
    journey.wait_for_text_gone(&fix(label)).await;
}

/// What stands in place of an answer while the field with this label cannot be read.
fn fix(label: &str) -> String {
    say!(book::fix_field_to_see, field = label)
}

/// What a text begins with, before what is drawn in it.
fn beginning(said: &str) -> String {
    around(said).0
}

async fn offer(journey: &Journey) {
    journey.go("#/drinks/1/3").await;
    let label = say!(drinks::menu_price);
    let price = By::Label(label);
    let suggested = beginning(&say!(drinks::lowest_on_target, price = HOLE, margin = "", exact = ""));
    replaced(journey, price, label, "free", say!(drinks::price_goes)).await;
    replaced(journey, price, label, "0", &suggested).await;
    journey.type_into(price, "6.95x").await;
    journey.wait_for_text_gone(say!(drinks::reach_target)).await;
    journey.screenshot("offer").await;
    // It waits in its field, with its sentence, where the screen is left.
    journey.go("#/drinks").await;
    journey.go("#/drinks/1/3").await;
    journey.expect_value(price, "6.95x").await;
    journey.expect_sentence(price, &say!(book::not_a_number, text = "6.95x", example = "9.50")).await;
    journey.wait_for_text(&fix(label)).await;
    journey.press(price, Key::Escape).await;
    journey.expect_value(price, "6.95").await;
}

async fn quick_price(journey: &Journey) {
    journey.go("#/buying").await;
    let label = say!(market::price_of, name = "Apples");
    let price = By::Label(&label);
    journey.type_into(price, "45").await;
    journey.click(By::Text(say!(market::show_drinks_affected))).await;
    journey.wait_until("what moved", MOVED).await;
    journey.type_into(price, "45q").await;
    journey.wait_for_text(&fix(&label)).await;
    journey.expect_count(".moved-row", 0).await;
    journey.screenshot("quick_price").await;
    journey.press(price, Key::Escape).await;
    journey.wait_for_text_gone(&fix(&label)).await;
}

async fn ingredient(journey: &Journey) {
    journey.go("#/buying/ingredient/1").await;
    let (holds, trimmed) = (say!(goods::pack_size), say!(goods::trim_yield));
    replaced(journey, By::Nth(0, &By::Label(holds)), holds, "40 stone", say!(goods::packs_compared)).await;
    entering::unfold(journey, say!(goods::yields)).await;
    replaced(journey, By::Label(trimmed), trimmed, "0", &say!(goods::per_trimmed, amount = "lb")).await;
}

/// No amounts stand beside a number of drinks that is none; a chip takes its place.
async fn card(journey: &Journey) {
    journey.go("#/counter/1/4").await;
    let label = say!(counter::how_many_drinks);
    let number = By::Label(label);
    journey.expect_count(".recipe > li", 5).await;
    for text in ["12 oz", "1/2", "0", "2.5", "1000000"] {
        journey.type_into(number, text).await;
        journey.wait_for_text(&fix(label)).await;
        journey.expect_count(".recipe > li", 0).await;
    }
    journey.expect_count(".how-many [aria-pressed=true]", 0).await;
    journey.screenshot("card").await;
    let two = say!(counter::for_drinks, drinks = 2);
    journey.click(By::Label(&two)).await;
    journey.expect_each(".recipe-for", &[&two]).await;
    journey.expect_count(".recipe > li", 5).await;
    journey.expect_value(number, "2").await;
    journey.expect_error(number, "").await;
    journey.type_into(number, "2x").await;
    journey.wait_for_text(&fix(label)).await;
    journey.type_into(number, "12").await;
    journey.expect_each(".recipe-for", &[&say!(counter::for_drinks, drinks = 12)]).await;
    journey.expect_count(".recipe > li", 5).await;
}

async fn questions(journey: &Journey) {
    journey.go("#/sizes/price-point/kind/pressed").await;
    let label = say!(decide::sell_for_no_more_than);
    journey.type_into(By::Label(label), "7").await;
    // The 16 oz and 32 oz bottles need more, and one of 12 oz; the jug has no price and is left out.
    let at_seven = say!(decide::some_sizes_fit, price = "$7.00", fit = 5, sizes = "12");
    replaced_by_hand(journey, By::Label(label), label, "seven", "7", &at_seven).await;
    journey.go("#/drinks/1/3").await;
    entering::unfold(journey, say!(drinks::work_back)).await;
    journey.type_into(By::Label(say!(drinks::sell_for_no_more_than)), "7").await;
    let label = say!(drinks::retailers_cut);
    replaced_by_hand(journey, By::Label(label), label, "100", "30", say!(drinks::highest_cost)).await;
    journey.go("#/sizes/drink/1").await;
    entering::unfold(journey, say!(sales::costs_and_fees)).await;
    let label = say!(common::target_margin);
    let target = By::Label(label);
    journey.type_into(target, "many").await;
    journey.wait_for_text(&fix(label)).await;
    journey.press(target, Key::Escape).await;
    journey.wait_for_text_gone(&fix(label)).await;
}

/// The same for a question, which Escape does not answer: what can be read is typed again.
async fn replaced_by_hand(journey: &Journey, field: By<'_>, label: &str, text: &str, good: &str, answer: &str) {
    journey.wait_for_text(answer).await;
    journey.type_into(field, text).await;
    journey.wait_for_text(&fix(label)).await;
    journey.wait_for_text_gone(answer).await;
    journey.type_into(field, good).await;
    journey.wait_for_text(answer).await;
}
