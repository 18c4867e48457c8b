//! From 16 to 12 fl oz: how many must be sold then, what it costs once, the change made and taken
//! back; and a price that is given.
//!
//! Everything is invented. Each expected figure was worked out by hand, from the formulas that
//! stand beside it, logarithms with Python 3; none comes from the engine.

use brimwright::say;

use crate::entering;
use crate::harness::{By, Journey};

/// The label of the price in the new size.
fn price() -> String {
    say!(decide::new_price_of, drink = "Mango Lane")
}

#[tokio::test]
async fn a_smaller_size_takes_the_place_of_a_larger_one() {
    let journey = entering::empty_book("switching").await;
    open(&journey).await;
    journey.wait_for_text(say!(decide::switch_teach)).await;
    bought(&journey).await;
    // 1.20 of base, 2.00 of mango and 0.25 of cup: 4.55 of 8.00 are left.
    entering::drink(&journey, "Mango Lane", say!(first::type_blended), "16").await;
    entering::line(&journey, "Base", "12").await;
    entering::line(&journey, "Mango", "4").await;
    entering::sold_in(&journey, "Large cup").await;
    journey.enter(By::Label(say!(drinks::menu_price)), "8").await;
    unknown_sales(&journey).await;
    sells(&journey).await;
    loses(&journey).await;
    costs_once(&journey).await;
    sold_in_the_new_size(&journey).await;
    a_price_is_given(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

async fn bought(journey: &Journey) {
    entering::ingredient(journey, "Base", "100 fl oz", "10").await;
    entering::ingredient(journey, "Mango", "100 fl oz", "50").await;
    let vessel = say!(drinks::piece_vessel);
    entering::packaging(journey, "16 oz cup", vessel, "100", "25").await;
    entering::packaging(journey, "12 oz cup", vessel, "500", "100").await;
    for (name, rim, poured, cup, each) in [
        ("Large cup", "17", "16.0 fl oz", "16 oz cup", "$0.250"),
        ("Small cup", "13", "12.0 fl oz", "12 oz cup", "$0.200"),
    ] {
        entering::container(journey, name, rim, "1").await;
        journey.expect_figures(say!(common::fill), &[(say!(common::fill), poured)]).await;
        entering::belongs(journey, cup, "1").await;
        journey.wait_for_text(each).await;
    }
}

async fn open(journey: &Journey) {
    journey.go("#/sizes/switching").await;
}

/// Sentences one after the other.
fn sentences<const N: usize>(said: [String; N]) -> String {
    said.join(" ")
}

/// 0.9 of base, 1.50 of mango and 0.20 of cup: 2.60 / 0.35 = 7.43, so 7.50 is suggested and 4.90
/// left; 4.55 / 4.90 = 0.928571, ln of it / ln 0.9375 = 1.1483.
async fn unknown_sales(journey: &Journey) {
    open(journey).await;
    journey.expect_value(By::Label(say!(decide::current_size)), "Large cup").await;
    journey.expect_value(By::Label(say!(decide::new_size)), "Small cup").await;
    journey.expect_value(By::Label(&price()), "7.50").await;
    let note = sentences([say!(decide::price_now, price = "$8.00"), say!(decide::price_suggested).to_string()]);
    journey.expect_sentence(By::Label(&price()), &note).await;
    let sell = say!(decide::sell_per_hundred, then = "93", now = "100", change = "−7.1%");
    journey.expect_each(".switch-answer", &[&sell]).await;
    journey.wait_for_text(say!(decide::no_sales_entered)).await;
    let elasticity = sentences([
        say!(decide::break_even_cheaper_earns_more, price = "6.3%", customers = "7.1%"),
        say!(decide::elasticity, elasticity = "+1.15"),
    ]);
    journey.wait_for_text(&elasticity).await;
    journey.choose(By::Label(say!(decide::new_size)), "Large cup").await;
    journey.wait_for_text(&say!(decide::both_sizes_same, size = "Large cup")).await;
    journey.choose(By::Label(say!(decide::new_size)), "Small cup").await;
    journey.click(By::Text("Mango Lane")).await;
    journey.click(By::Text("Large cup")).await;
    journey.enter(By::Label(say!(common::drinks_sold_per_week)), "120").await;
}

/// At 6.00, 3.40 is left: 120 * 4.55 / 3.40 = 160.59; ln 1.338235 / ln 0.75 = -1.0128.
async fn sells(journey: &Journey) {
    open(journey).await;
    journey.type_into(By::Label(&price()), "6").await;
    let sell = say!(decide::sell_instead, then = "161", now = "120", change = "+33.8%");
    journey.expect_each(".switch-answer", &[&sell]).await;
    let formula = say!(decide::sell_math, sold = "120", now = "$4.55", then = "$3.40", drinks = "160.59");
    journey.wait_for_text(&formula).await;
    let elasticity = sentences([
        say!(decide::break_even_cheaper, price = "25.0%", customers = "33.8%"),
        say!(decide::break_even_cheaper_rate, each = "1.01%"),
        say!(decide::elasticity, elasticity = "−1.01"),
    ]);
    journey.wait_for_text(&elasticity).await;
    // 0.9 * 408.00 against 546.00; even at 546 / 408.
    journey.enter(By::Label(say!(decide::customers_who_stay)), "90").await;
    let stay = sentences([
        say!(decide::stay_earns_per_week, share = "90%", profit = "$367.20"),
        say!(decide::stay_less, profit = "$178.80", today = "$546.00"),
    ]);
    journey.wait_for_text(&stay).await;
    journey.wait_for_text(&say!(decide::curve_crosses, today = "$546.00", share = "133.8%")).await;
    let stays = ["70%", "80%", "90%", "100%", "110%", "120%", "130%"];
    let [s70, s80, s90, s100, s110, s120, s130] = stays.map(|share| say!(decide::share_stays, share = share));
    let rows: [&[&str]; 8] = [
        &["", say!(decide::sold), say!(decide::profit), say!(decide::versus_today)],
        &[&s70, "84", "$285.60", "−$260.40"],
        &[&s80, "96", "$326.40", "−$219.60"],
        &[&s90, "108", "$367.20", "−$178.80"],
        &[&s100, "120", "$408.00", "−$138.00"],
        &[&s110, "132", "$448.80", "−$97.20"],
        &[&s120, "144", "$489.60", "−$56.40"],
        &[&s130, "156", "$530.40", "−$15.60"],
    ];
    journey.expect_rows(say!(decide::if_sales_change), &rows).await;
    journey.screenshot("sells").await;
}

async fn loses(journey: &Journey) {
    journey.type_into(By::Label(&price()), "0").await;
    journey.expect_error(By::Label(&price()), &say!(book::price_above_zero, example = "9.50")).await;
    journey.wait_for_text(&say!(book::fix_field_to_see, field = price())).await;
    journey.wait_for_text_gone(&say!(decide::sell_instead, then = "161", now = "120", change = "+33.8%")).await;
    journey.type_into(By::Label(&price()), "2.50").await;
    journey.expect_each(".switch-answer", &[say!(decide::no_break_even)]).await;
    let loss = sentences([
        say!(decide::loss_in_size, what = "Mango Lane", size = "Small cup", loss = "$0.10", price = "$2.50"),
        say!(decide::losing_then).to_string(),
    ]);
    journey.wait_for_text(&loss).await;
    journey.screenshot("loses").await;
}

/// With the price suggested again 0.90 * 120 * 4.90 = 529.20 is less than today; all of it is
/// 588.00, 42.00 more: 100 for cups and 110 for labels are back in 5 weeks.
async fn costs_once(journey: &Journey) {
    journey.enter(By::Label(&price()), "").await;
    journey.expect_value(By::Label(&price()), "7.50").await;
    journey.wait_for_text(&say!(decide::first_order, name = "12 oz cup", packs = 1_usize, cost = "$100.00")).await;
    journey.enter(By::Label(say!(decide::labels_and_printing)), "110").await;
    let total = (say!(decide::one_time_total), "$210.00");
    let never = [total, (say!(decide::payback), say!(decide::payback_never))];
    journey.expect_figures(say!(decide::one_time_costs), &never).await;
    journey.enter(By::Label(say!(decide::customers_who_stay)), "100").await;
    let weeks = say!(decide::payback_weeks, weeks = "5.0");
    journey.expect_figures(say!(decide::one_time_costs), &[total, (say!(decide::payback), &weeks)]).await;
    journey.wait_for_text(&say!(decide::payback_math, cost = "$210.00", gain = "$42.00", weeks = "5.0")).await;
    journey.enter(By::Label(say!(decide::customers_who_stay)), "95").await;
}

async fn sold_in_the_new_size(journey: &Journey) {
    journey.click(By::Text(&say!(decide::switch_to, size = "Small cup"))).await;
    journey.wait_for_text(&say!(decide::now_sold_in, size = "Small cup")).await;
    journey.click(By::Text(say!(first::drinks))).await;
    journey.click(By::Text("Mango Lane")).await;
    journey.click(By::Text("Small cup")).await;
    journey.expect_value(By::Label(say!(drinks::menu_price)), "7.50").await;
    journey.expect_value(By::Label(say!(common::drinks_sold_per_week)), "114").await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.wait_for_text(say!(book::not_in_book)).await;
    journey.click(By::Text(say!(drinks::back_to_drink))).await;
    journey.click(By::Text("Large cup")).await;
    journey.expect_value(By::Label(say!(drinks::menu_price)), "8.00").await;
    journey.expect_value(By::Label(say!(common::drinks_sold_per_week)), "120").await;
}

/// What a size that does not fit is told.
fn given_up(saving: [&str; 3], pour: [&str; 3], mango: [&str; 2]) -> String {
    let [saving, share, cost] = saving;
    let [less, fill, now] = pour;
    let [mango, less_mango] = mango;
    sentences([
        say!(decide::save_on_ingredients, saving = saving, share = share, cost = cost),
        say!(decide::or_pour_less, less = less, fill = fill, now = now),
        say!(decide::cut_first, ingredient = "Mango", cost = mango, share = less_mango),
    ])
}

/// 6.50 * 0.35 less the cup leaves 2.025, 10.125 fl oz; with x fl oz of mango to 12 of base
/// 16 (0.5 x + 1.2) / (x + 12) = 2.025, x = 0.853556 of 4. In the small cup 2.075.
async fn a_price_is_given(journey: &Journey) {
    let limit = By::Label(say!(decide::sell_for_no_more_than));
    journey.go("#/sizes/price-point").await;
    journey.wait_for_text(say!(decide::type_a_price)).await;
    journey.enter(limit, "0").await;
    journey.wait_for_text(&say!(book::price_above_zero, example = "9.50")).await;
    journey.enter(limit, "6.50").await;
    journey.wait_for_text(&say!(decide::sizes_do_not_fit, price = "$6.50", over = 1_usize, sizes = "1")).await;
    let large = given_up(["$1.18", "36.7%", "$3.20"], ["5.9 fl oz", "10.1 fl oz", "16.0 fl oz"], ["$2.00", "78.7%"]);
    let below = say!(first::below_target);
    let figures = [
        (say!(decide::ingredient_limit), "$2.03"),
        (say!(decide::ingredients_now), "$3.20"),
        (say!(decide::largest_fill), "10.1 fl oz"),
    ];
    let figures = figures.map(|(name, figure)| format!("{name} {figure}")).join(" ");
    journey.expect_each(".give-up", &[&format!("Mango Lane, Large cup {below} {figures} {large}")]).await;
    journey.choose(By::Label(say!(decide::which_drinks)), "Mango Lane").await;
    journey.click(By::Text("Small cup")).await;
    // 12 (0.5 x + 1.2) / (x + 12) = 2.075, x = 2.675159: 33.1210% less; 2.075 / 0.2 = 10.375.
    let small = given_up(["$0.33", "13.5%", "$2.40"], ["1.7 fl oz", "10.3 fl oz", "12.0 fl oz"], ["$1.50", "33.2%"]);
    let sizes = [
        format!("Mango Lane, Large cup {below} {large}"),
        format!("Mango Lane, Small cup {} {below} {small}", say!(decide::not_sold_yet)),
    ];
    journey.expect_each(".give-up", &sizes.each_ref().map(String::as_str)).await;
    let per_unit = say!(decide::limit_per_unit, unit = "fl oz");
    let rows: [&[&str]; 7] = [
        &["", "Small cup", "Large cup"],
        &[say!(decide::cost_limit), "$2.28", "$2.28"],
        &[say!(decide::ingredient_limit), "$2.08", "$2.03"],
        &[&per_unit, "$0.173", "$0.127"],
        &[say!(decide::ingredients_now), "$2.40", "$3.20"],
        &[say!(decide::largest_fill), "10.4 fl oz", "10.1 fl oz"],
        &[say!(decide::at_this_price), below, below],
    ];
    journey.expect_rows(say!(decide::by_size), &rows).await;
    journey.screenshot("price_point").await;
    // 10.00 * 0.35 = 3.50: 0.10 and 0.90 to spare.
    journey.enter(limit, "10").await;
    journey.wait_for_text(&say!(decide::all_sizes_fit, price = "$10.00", sizes = 2_usize)).await;
    journey.wait_for_text(&say!(decide::fits_with_room, room = "$0.05")).await;
}
