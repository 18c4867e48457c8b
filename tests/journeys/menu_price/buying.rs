//! What is bought: ingredients by the pound, the kilogram and the piece; packaging by the case.

use brimwright::say;

use crate::harness::{By, Journey};

/// What is entered of an ingredient that is pressed.
struct Pressed<'a> {
    name: &'a str,
    holds: &'a str,
    price: &'a str,
    trimmed: &'a str,
    juice: &'a str,
    density: &'a str,
    piece: &'a str,
}

pub async fn ingredients(journey: &Journey) {
    journey.click(By::Text(say!(first::buying))).await;
    journey.wait_for_text(say!(market::first_ingredient)).await;
    let apples = Pressed {
        name: "Apples",
        holds: "40 lb",
        price: "38",
        trimmed: "90",
        juice: "65",
        density: "1.048",
        piece: "",
    };
    add(journey, apples).await;
    let (trimmed, juice) = (say!(goods::per_trimmed, amount = "lb"), say!(goods::per_of_juice, amount = "fl oz"));
    let bought = say!(goods::per_as_purchased, amount = "lb");
    // 38 / (40 * 0.9) = 1.0556 a trimmed lb. A fl oz of juice weighs 29.5735 * 1.048 = 30.9931 g;
    // of that much juice 30.9931 / (0.9 * 0.65) = 52.9796 g = 0.116800 lb are bought, at 0.95.
    journey.expect_figures(say!(common::cost), &[(&trimmed, "$1.056"), (&juice, "$0.111")]).await;

    let carrots = Pressed {
        name: "Carrots",
        holds: "12 kg",
        price: "18.60",
        trimmed: "88",
        juice: "52",
        density: "1.03",
        piece: "",
    };
    add(journey, carrots).await;
    // 1.55 a kg: 0.45359237 * 1.55 / 0.88 = 0.79894 a trimmed lb; 29.5735 * 1.03 / (0.88 * 0.52) =
    // 66.566 g at 0.00155 = 0.103178 a fl oz.
    journey.expect_figures(say!(common::cost), &[(&trimmed, "$0.799"), (&juice, "$0.103")]).await;

    let lemons = Pressed {
        name: "Lemons",
        holds: "115 ea",
        price: "44",
        trimmed: "",
        juice: "40",
        density: "1.03",
        piece: "110 g",
    };
    add(journey, lemons).await;
    // 44 / 115 = 0.382609 a piece of 110 g: 453.59237 / 110 of them are a lb, 1.57771; 29.5735 *
    // 1.03 / 0.4 = 76.1518 g = 0.692289 of one make a fl oz of juice, 0.264876.
    let costs = [(&*bought, "$1.578"), (&juice, "$0.265"), (say!(goods::per_piece), "$0.383")];
    journey.expect_figures(say!(common::cost), &costs).await;

    // Its juice has no density yet: by weight it has a cost (14.50 / 5), by volume it has none.
    let ginger =
        Pressed { name: "Ginger", holds: "5 lb", price: "14.50", trimmed: "", juice: "70", density: "", piece: "" };
    add(journey, ginger).await;
    journey.expect_figures(say!(common::cost), &[(&bought, "$2.900")]).await;
    journey.screenshot("ingredient").await;
}

async fn add(journey: &Journey, what: Pressed<'_>) {
    journey.click(By::Text(say!(first::buying))).await;
    journey.click(By::Text(say!(goods::add_ingredient))).await;
    journey.wait_for_text(say!(goods::new_ingredient)).await;
    journey.enter(By::Label(say!(common::name)), what.name).await;
    journey.enter(By::Label(say!(goods::pack_size)), what.holds).await;
    journey.enter(By::Label(say!(goods::case_price)), what.price).await;
    journey.enter(By::Label(say!(goods::trim_yield)), what.trimmed).await;
    journey.enter(By::Label(say!(goods::juice_yield)), what.juice).await;
    // The tables of densities are in g/mL; the field shows the weight of one cup.
    let density = if what.density.is_empty() { String::new() } else { format!("{} g/mL", what.density) };
    journey.enter(By::Label(say!(goods::juice_cup_weight)), &density).await;
    journey.enter(By::Label(say!(goods::piece_weight)), what.piece).await;
}

pub async fn packaging(journey: &Journey) {
    // (96 + 9 for delivery) / 200, 81 / 150 and 85 / 1000.
    let cases = [
        ("12 oz bottle", say!(drinks::piece_vessel), "200", "96", "9", "$0.525"),
        ("16 oz bottle", say!(drinks::piece_vessel), "150", "81", "", "$0.540"),
        ("Cap, 38 mm", say!(drinks::piece_closure), "1000", "85", "", "$0.085"),
    ];
    for (name, part, holds, price, delivery, each) in cases {
        journey.click(By::Text(say!(first::buying))).await;
        journey.click(By::Text(say!(goods::add_packaging))).await;
        journey.wait_for_text(say!(goods::new_packaging)).await;
        journey.enter(By::Label(say!(common::name)), name).await;
        journey.choose(By::Label(say!(goods::packaging_type)), part).await;
        journey.enter(By::Label(say!(goods::pack_size)), holds).await;
        journey.enter(By::Label(say!(goods::case_price)), price).await;
        journey.enter(By::Label(say!(goods::delivery_or_deposit)), delivery).await;
        journey.expect_figures(say!(common::cost), &[(say!(goods::per_piece), each)]).await;
    }
    // All of it by name, with the pack and when its price was heard.
    journey.click(By::Text(say!(first::buying))).await;
    let price = say!(market::price_of, name = "Apples");
    journey.expect_value(By::Label(&price), "38.00").await;
    let checked = |pack: &str| [pack, say!(goods::checked_today)].join(", ");
    journey.expect_lines(By::Item("Apples"), &["Apples", &checked("40 lb"), &price]).await;
    let price = say!(market::price_of, name = "12 oz bottle");
    journey.expect_lines(By::Item("12 oz bottle"), &["12 oz bottle", &checked("200 ea"), &price]).await;
}
