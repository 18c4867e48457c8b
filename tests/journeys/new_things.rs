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
    a_step(&journey).await;
    measures(&journey).await;
    headspace(&journey).await;
    packaging(&journey).await;
    a_scenario(&journey).await;
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
    // By its whole name, not by the first letter.
    journey.wait_for_text("The new pack for Kale is not in the book yet.").await;
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
    journey.wait_for_text("The new volume price for Kale is not in the book yet. It still needs a price.").await;
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

/// A line goes on in proportion until its step is typed.
async fn a_step(journey: &Journey) {
    journey.click(By::Text("Drinks")).await;
    journey.click(By::Text("Hedge Green")).await;
    let (scaling, step) = (By::Label("In other sizes: Kale"), By::Label("In steps of, Kale"));
    let needs = "The new step for Hedge Green is not in the book yet. It still needs its size.";
    let before = journey.title_of_undo().await;
    journey.choose(scaling, "in steps").await;
    journey.wait_for_text(needs).await;
    journey.expect_value(step, "").await;
    journey.choose(scaling, "fixed").await;
    journey.wait_for_text_gone(needs).await;
    assert_eq!(journey.title_of_undo().await, "Undo: Recipe scaling");
    journey.click(By::Text("Undo")).await;
    journey.expect_value(scaling, "in proportion").await;
    assert_eq!(journey.title_of_undo().await, before, "nothing was guessed");
    journey.choose(scaling, "in steps").await;
    journey.enter(step, "0.25").await;
    journey.wait_for_text_gone(needs).await;
    journey.expect_value(step, "0.25 lb").await;
    journey.screenshot("step").await;
    journey.click(By::Text("Undo")).await;
    journey.expect_value(scaling, "in proportion").await;
}

/// What was weighed is in force until all three measures are typed. 2 in across the base, 3.5 across
/// the rim, 5 high: 16.8640 fl oz, as in [`crate::cup`].
async fn measures(journey: &Journey) {
    entering::container(journey, "Large cup", "16", "1").await;
    let known = By::Label("How you know what it holds");
    journey.choose(known, "by its measures").await;
    let (base, rim, height) = (
        By::Label("Inside, across the base"),
        By::Label("Inside, across the rim"),
        By::Label("Inside, from base to rim"),
    );
    for field in [base, rim, height] {
        journey.expect_value(field, "").await;
    }
    let (needs, needs_height) = (
        "The new set of measures for Large cup is not in the book yet. It still needs the width across the base, the \
         width across the rim and the height inside.",
        "The new set of measures for Large cup is not in the book yet. It still needs the height inside.",
    );
    journey.wait_for_text(needs).await;
    journey.enter(base, "2").await;
    journey.enter(rim, "3 1/2").await;
    journey.wait_for_text(needs_height).await;
    journey.expect_value(rim, "3.5 in").await;
    journey.expect_figures("How full it is poured", &[("Poured", "15.0 fl oz")]).await;
    assert_eq!(journey.title_of_undo().await, "Undo: Add a container");
    journey.screenshot("measures").await;
    // Another way drops what is typed of this one.
    journey.choose(known, "by pouring").await;
    journey.wait_for_text_gone("set of measures").await;
    journey.click(By::Text("Discard this set of readings")).await;
    journey.expect_value(known, "weighed with water").await;
    journey.expect_value(By::Label("Volume to the rim"), "16 fl oz").await;
    journey.choose(known, "by its measures").await;
    journey.expect_value(base, "").await;
    journey.enter(base, "2").await;
    journey.enter(rim, "3 1/2").await;
    journey.type_into(height, "5").await;
    // The field is not made anew under the typing.
    journey.wait_for_text_gone("is not in the book yet").await;
    journey.type_on("0").await;
    journey.expect_value(height, "50 in").await;
    journey.type_into(height, "5").await;
    let figures = [
        ("Poured", "15.9 fl oz"),
        ("To the rim", "16.9 fl oz"),
        ("Fill line above the base", "4.81 in"),
        ("Fill line under the rim", "0.19 in"),
    ];
    journey.expect_figures("How full it is poured", &figures).await;
    assert_eq!(journey.title_of_undo().await, "Undo: Brimful capacity");
    // One step goes back, and may be typed anew.
    journey.click(By::Text("Undo")).await;
    journey.expect_value(known, "weighed with water").await;
    journey.click(By::Text("Redo")).await;
    journey.expect_value(height, "5 in").await;
    journey.choose(known, "weighed with water").await;
    journey.expect_value(By::Label("Volume to the rim"), "").await;
    journey.enter(By::Label("Volume to the rim"), "17").await;
    journey.expect_figures("How full it is poured", &[("Poured", "16.0 fl oz")]).await;
}

async fn headspace(journey: &Journey) {
    let way = By::Label("Left empty");
    journey.choose(way, "as a share of the brim").await;
    journey.expect_value(By::Label("Share left empty"), "").await;
    journey
        .wait_for_text("The new headspace for Large cup is not in the book yet. It still needs what is left empty.")
        .await;
    journey.expect_figures("How full it is poured", &[("Poured", "16.0 fl oz")]).await;
    journey.enter(By::Label("Share left empty"), "10").await;
    // 17 * 0.9.
    journey.expect_figures("How full it is poured", &[("Poured", "15.3 fl oz")]).await;
    journey.choose(way, "as a volume").await;
    journey.expect_value(By::Label("Volume left empty"), "").await;
    journey.enter(By::Label("Volume left empty"), "2").await;
    journey.expect_figures("How full it is poured", &[("Poured", "15.0 fl oz")]).await;
}

async fn packaging(journey: &Journey) {
    entering::packaging(journey, "Paper straw", "Straw", "200", "3").await;
    journey.click(By::Text("Buying")).await;
    journey.click(By::Text("Containers")).await;
    journey.click(By::Text("Large cup")).await;
    journey.choose(By::Label("Add to it"), "Paper straw").await;
    let needs = "The new packaging for Large cup is not in the book yet. It still needs how many one drink takes.";
    journey.wait_for_text(needs).await;
    journey.expect_value(By::Label("How many of Paper straw"), "").await;
    journey.enter(By::Label("How many of Paper straw"), "2").await;
    journey.wait_for_text_gone(needs).await;
    journey.wait_for_text("$0.030").await;
    assert_eq!(journey.title_of_undo().await, "Undo: Add to a container set");
}

async fn a_scenario(journey: &Journey) {
    journey.go("#/sizes/scenarios").await;
    journey.click(By::Text("Copy today's menu")).await;
    journey.wait_for_text("The new scenario is not in the book yet. It still needs a name.").await;
    journey.expect_value(NAME, "").await;
    assert_eq!(journey.title_of_undo().await, "Undo: Add to a container set");
    journey.enter(NAME, "Two sizes only").await;
    journey.wait_for_text("Adopting makes these the drinks and sizes you sell").await;
    assert_eq!(journey.title_of_undo().await, "Undo: Copy today's menu");
}
