//! What cannot be read or does not hold in measures of cups, readings of bottles, lower prices,
//! steps, ice and air: explained beside the field, as in [`crate::typing`]. From an empty book;
//! everything is invented, every figure worked out by hand.

use fantoccini::key::Key;

use crate::entering;
use crate::harness::{By, Journey};
use crate::typing::{Case, explained};

#[tokio::test]
async fn measures_steps_and_tiers_that_do_not_hold_are_explained() {
    let journey = entering::empty_book("mistyped").await;
    entering::packaging(&journey, "Paper straw", "Straw", "200", "3").await;
    lower_prices(&journey).await;
    measures(&journey).await;
    readings(&journey).await;
    recipe(&journey).await;
}

/// 20 / 10 = 2.00 a lb.
async fn lower_prices(journey: &Journey) {
    entering::ingredient(journey, "Plums", "10 lb", "20").await;
    journey.click(By::Text("Lower prices for more")).await;
    let in_force = async || journey.expect_figures("Packs", &[("Per lb as bought", "$2.000")]).await;
    let (at_a_time, from) = (By::Label("Packs bought at a time"), By::Label("Lower price 1: from how many packs"));
    journey.enter(from, "5").await;
    journey.enter(By::Label("Lower price 1: price of one pack"), "20").await;
    let above = "The number a lower price begins at must be more than 1; the price of a single pack stands above.";
    let cases: [Case<'_>; 5] = [
        (at_a_time, "0", "The number bought at a time must be at least 1."),
        (at_a_time, "a few", "“a few” is not a number. Type digits, such as 1."),
        (from, "1", above),
        (from, "0", above),
        (
            By::Label("Lower price 1: price of one pack"),
            "-1",
            "This cannot be below zero. Type it without the minus sign: 38.50.",
        ),
    ];
    explained(journey, &cases, in_force).await;
    // What the pack costs waits for a lower price that cannot be read.
    let price = By::Label("Lower price 1: price of one pack");
    journey.type_into(price, "-1").await;
    journey.wait_for_text("Fix “Lower price 1: price of one pack” to see this.").await;
    journey.press(price, Key::Escape).await;
    in_force().await;
}

/// 2 in across the base, 3.5 across the rim, 5 high, poured to 4.5: 14.3110 of 16.8640 fl oz, by
/// pi h / 12 (d0^2 + d0 d + d^2) and 231/128 cubic inches.
async fn measures(journey: &Journey) {
    entering::container(journey, "Large cup", "16", "1").await;
    journey.choose(By::Label("How you know what it holds"), "by its measures").await;
    let (base, rim) = (By::Label("Inside, across the base"), By::Label("Inside, across the rim"));
    let (height, empty) = (By::Label("Inside, from base to rim"), By::Label("Height left empty"));
    journey.enter(base, "2").await;
    journey.enter(rim, "3.5").await;
    journey.enter(height, "5").await;
    journey.choose(By::Label("Left empty"), "as a height under the rim").await;
    journey.expect_value(empty, "").await;
    journey.enter(empty, "1/2").await;
    journey.expect_value(empty, "0.5 in").await;
    entering::belongs(journey, "Paper straw", "1").await;
    let figures = [
        ("Poured", "14.3 fl oz"),
        ("To the rim", "16.9 fl oz"),
        ("Fill line above the base", "4.50 in"),
        ("Fill line under the rim", "0.50 in"),
    ];
    let in_force = async || journey.expect_figures("How full it is poured", &figures).await;
    let no_length = "“stone” is not a unit of length known here. Use mm, cm or in, such as 3 1/2 in.";
    let cases: [Case<'_>; 7] = [
        (base, "3 stone", no_length),
        (base, "0", "The diameter at the base must be more than zero."),
        (rim, "-3", "This cannot be below zero. Type it without the minus sign: 3 1/2 in."),
        (height, "0 mm", "The height must be more than zero."),
        (height, "", "This is empty. Type a number, such as 3 1/2 in."),
        (empty, "6", "The headspace leaves no room for a drink. Make it smaller."),
        (By::Label("How many of Paper straw"), "0", "The number per drink must be more than zero."),
    ];
    explained(journey, &cases, in_force).await;
}

/// The same cup, with what stands half way up, 3.5547 pi cu in = 6.19 fl oz, and at the rim.
async fn readings(journey: &Journey) {
    journey.choose(By::Label("How you know what it holds"), "by pouring").await;
    let (height, volume) = (By::Label("Height of reading 1"), By::Label("Volume of reading 2"));
    let readings =
        [(height, "2.5"), (By::Label("Volume of reading 1"), "6.19"), (By::Label("Height of reading 2"), "5")];
    for (field, typed) in readings {
        journey.expect_value(field, "").await;
        journey.enter(field, typed).await;
    }
    let needs = "The new set of readings for Large cup is not in the book yet. It still needs the volume of reading 2.";
    journey.wait_for_text(needs).await;
    journey.enter(volume, "16.86").await;
    journey.wait_for_text_gone("is not in the book yet").await;
    journey.expect_value(volume, "16.86 fl oz").await;
    let in_force = async || journey.wait_for_text("To the rim\n16.9 fl oz").await;
    let falls = "A reading must be higher and hold more than the one before: number 2 does not. Measure it again.";
    let cases: [Case<'_>; 4] = [
        (volume, "6", falls),
        (volume, "1 lb", "“lb” measures a weight; here a volume is needed, such as 12 fl oz."),
        (height, "5", falls),
        (height, "0", "A reading must be more than zero."),
    ];
    explained(journey, &cases, in_force).await;
}

/// 8 fl oz of plums, and 4 of a scoop, 60 % of it ice that is held under: 10.4.
async fn recipe(journey: &Journey) {
    entering::ingredient(journey, "Ice", "20 lb", "3").await;
    entering::drink(journey, "Plum Shade", "Over ice", "16").await;
    entering::line(journey, "Plums", "8").await;
    journey.choose(By::Label("In other sizes: Plums"), "in steps").await;
    journey.expect_value(By::Label("In steps of, Plums"), "").await;
    journey.enter(By::Label("In steps of, Plums"), "1").await;
    entering::line(journey, "Ice", "4").await;
    journey.choose(By::Label("Stage of Ice"), "ice, held under the line").await;
    journey.expect_value(By::Label("Of a scoop of Ice, solid"), "60").await;
    journey.expect_value(By::Label("In steps of, Plums"), "1 fl oz").await;
    let written = By::Label("Written for");
    let in_force = async || journey.expect_sentence(written, "The lines below make 10.4 fl oz.").await;
    let packing = "The share of a scoop that is ice must be more than 0 % and at most 100 %. Cubes as they fall fill \
                   54 to 67 %: type 60.";
    let cases: [Case<'_>; 5] = [
        (
            By::Label("In steps of, Plums"),
            "5 g",
            "The step must be measured as the amount is: a weight for a weight, pieces for pieces.",
        ),
        (By::Label("In steps of, Plums"), "0", "The step must be more than zero."),
        (By::Label("Of a scoop of Ice, solid"), "0", packing),
        (By::Label("Of a scoop of Ice, solid"), "101", packing),
        (By::Label("Air beaten in"), "-1", "This cannot be below zero. Type it without the minus sign: 65."),
    ];
    explained(journey, &cases, in_force).await;
}
