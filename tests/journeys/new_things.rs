//! New things begin with empty fields, wait on the screen for what they lack, and are in the book
//! as one step once they lack nothing. From an empty book; everything is invented.

use fantoccini::key::Key;

use crate::entering;
use crate::harness::{By, Journey};

const NAME: By<'_> = By::Label("Name");
const HOLDS: By<'_> = By::Label("Holds");
const PRICE: By<'_> = By::Label("Price of the pack");

/// Presses the second of the crosses: that of the line that is not in the book.
const DROP: &str = "
    const crosses = [...document.querySelectorAll('.line .take-out')];
    crosses[1]?.click();
    return crosses.length === 2;";

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
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

async fn an_ingredient(journey: &Journey) {
    journey.click(By::Text("Buying")).await;
    journey.click(By::Text("Add an ingredient")).await;
    journey.expect_value(NAME, "").await;
    journey
        .wait_until("the caret in the name", "return document.activeElement.labels?.[0]?.innerText === 'Name'")
        .await;
    journey.wait_for_text("The new ingredient is not in the book yet. It still needs a name.").await;
    journey.screenshot("ingredient").await;
    // The field is not made anew under the typing when the first letter puts it into the book.
    journey.type_into(NAME, "Kale").await;
    journey.wait_for_text_gone("is not in the book yet. It still needs a name.").await;
    assert_eq!(journey.title_of_undo().await, "Undo: Add an ingredient");
}

async fn a_pack(journey: &Journey) {
    journey.expect_value(HOLDS, "").await;
    journey.expect_value(PRICE, "").await;
    journey.enter(PRICE, "12.50").await;
    let needs = "The new pack for Kale is not in the book yet. It still needs what it holds.";
    journey.wait_for_text(needs).await;
    journey.screenshot("pack").await;
    assert_eq!(journey.title_of_undo().await, "Undo: Add an ingredient");
    // Where it would be left behind it says so, and leads back.
    journey.go("#/drinks").await;
    journey.wait_for_text(needs).await;
    journey.screenshot("left_behind").await;
    journey.click(By::Text("Finish now")).await;
    journey.expect_value(PRICE, "12.50").await;
    journey.expect_value(HOLDS, "").await;
    journey.type_into(HOLDS, "10 lb").await;
    // 12.50 / 10.
    journey.expect_figures("Packs", &[("Per lb as bought", "$1.250")]).await;
    journey.wait_for_text_gone("is not in the book yet").await;
    assert_eq!(journey.title_of_undo().await, "Undo: Add a pack");
}

/// In the same visit it is taken out of the book again, and back in.
async fn a_pack_mistyped(journey: &Journey) {
    journey.type_into(HOLDS, "10 stone").await;
    let unknown = "“stone” is not a unit known here. Use one such as fl oz, mL, cup, lb, oz, g or ea: 12 lb.";
    journey.expect_sentence(HOLDS, unknown).await;
    journey.wait_for_text("It still needs what it holds.").await;
    assert_eq!(journey.title_of_undo().await, "Undo: Add an ingredient");
    journey.press(HOLDS, Key::Escape).await;
    journey.expect_value(HOLDS, "").await;
    journey.enter(HOLDS, "5 lb").await;
    // 12.50 / 5.
    journey.expect_figures("Packs", &[("Per lb as bought", "$2.500")]).await;
    journey.expect_value(HOLDS, "5 lb").await;
    // One step takes the pack out, and one brings it back.
    journey.click(By::Text("Undo")).await;
    journey.wait_for_text_gone("$2.500").await;
    assert_eq!(journey.title_of_undo().await, "Undo: Add an ingredient");
    journey.click(By::Text("Redo")).await;
    journey.expect_figures("Packs", &[("Per lb as bought", "$2.500")]).await;
}

async fn a_lower_price(journey: &Journey) {
    journey.click(By::Text("Lower prices for more")).await;
    let (from, price) =
        (By::Label("Lower price 1: from how many packs"), By::Label("Lower price 1: price of one pack"));
    journey.expect_value(from, "").await;
    journey.expect_value(price, "").await;
    journey.enter(from, "5").await;
    journey.wait_for_text("The new lower price for Kale is not in the book yet. It still needs a price.").await;
    journey.enter(price, "10").await;
    journey.wait_for_text_gone("is not in the book yet").await;
    assert_eq!(journey.title_of_undo().await, "Undo: Add a lower price");
}

async fn a_drink(journey: &Journey) {
    journey.click(By::Text("Drinks")).await;
    journey.click(By::Text("Add a drink")).await;
    let written_for = By::Label("Written for");
    journey.expect_value(written_for, "").await;
    journey.enter(NAME, "Hedge Green").await;
    journey.wait_for_text("The new drink is not in the book yet. It still needs the size that its recipe makes.").await;
    journey.screenshot("drink").await;
    journey.enter(written_for, "16").await;
    journey.expect_value(written_for, "16 fl oz").await;
    assert_eq!(journey.title_of_undo().await, "Undo: Add a drink");
}

async fn a_line(journey: &Journey) {
    let amount = By::Label("Amount of Kale");
    journey.choose(By::Label("Add to the recipe"), "Kale").await;
    journey.expect_value(amount, "").await;
    journey
        .wait_for_text("The new recipe line for Hedge Green is not in the book yet. It still needs an amount.")
        .await;
    journey.screenshot("line").await;
    assert_eq!(journey.title_of_undo().await, "Undo: Add a drink");
    journey.type_into(amount, "0.5 lb").await;
    journey.expect_value(By::Label("Stage of Kale"), "as bought").await;
    assert_eq!(journey.title_of_undo().await, "Undo: Add to a recipe");
    // Amounts stay as typed.
    journey.press(amount, Key::Tab).await;
    journey.expect_value(amount, "0.5 lb").await;
    // One that is not wanted is dropped.
    journey.choose(By::Label("Add to the recipe"), "Kale").await;
    journey.wait_for_text("is not in the book yet").await;
    journey.wait_until("a way to drop it", DROP).await;
    journey.wait_for_text_gone("is not in the book yet").await;
    journey.expect_value(amount, "0.5 lb").await;
}

/// An ingredient that nobody entered before is named where it is needed.
async fn something_new(journey: &Journey) {
    journey.choose(By::Label("Add to the recipe"), "Something new").await;
    let (name, amount) = (By::Label("Name of the new ingredient"), By::Label("Amount of the new ingredient"));
    journey.enter(name, "Pear juice").await;
    journey.wait_for_text("It still needs an amount.").await;
    journey.enter(amount, "8").await;
    journey.wait_for_text_gone("is not in the book yet").await;
    journey.expect_value(amount, "8 fl oz").await;
    journey.screenshot("recipe").await;
    // Both are one step.
    journey.click(By::Text("Undo")).await;
    journey.go("#/buying").await;
    journey.wait_for_text("Kale").await;
    journey.wait_for_text_gone("Pear juice").await;
    journey.click(By::Text("Redo")).await;
    journey.wait_for_text("Pear juice").await;
}
