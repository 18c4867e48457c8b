//! Costs that vary: tax by kind, drinks per payment, a deposit, a batch by volume, overhead per week, a season.
//!
//! Everything is invented. Each expected figure was worked out by hand, from the formulas that stand beside it;
//! none comes from the engine.

use brimwright::say;

use crate::entering::{self, expect_ladder, unfold};
use crate::harness::{By, Journey};

#[tokio::test]
async fn costs_that_vary_are_typed_and_read_in_the_ladder() {
    let journey = entering::empty_book("varying_costs").await;
    terms(&journey).await;
    entering::ingredient(&journey, "Juice base", "128 fl oz", "12.80").await;
    entering::packaging(&journey, "Bottle", say!(drinks::piece_vessel), "100", "50").await;
    entering::container(&journey, "16 oz bottle", "17", "1").await;
    entering::belongs(&journey, "Bottle", "1").await;
    unfold(&journey, say!(goods::deposit)).await;
    journey.enter(By::Label(say!(goods::deposit)), "0.25").await;
    batch_by_volume(&journey).await;
    ladder(&journey).await;
    shown_to_customers(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// Tax of 8% added at the register, pressed drinks 5%; a fee of 3% and 0.30 for 1.5 drinks; 18.00 an hour; 200.00
/// of overhead a week.
async fn terms(journey: &Journey) {
    entering::book_part(journey, say!(common::sales_tax)).await;
    let rate = By::Label(say!(book::sales_tax_rate));
    journey.enter(rate, "8").await;
    // More than the whole price is asked about, and what was stays in force.
    journey.type_into(rate, "825").await;
    journey.expect_error(rate, &say!(book::did_you_mean, typed = "825%", other = "8.25%")).await;
    journey.click(By::Text(&say!(book::use_reading, reading = "8.25%"))).await;
    journey.expect_value(rate, "8.25").await;
    journey.enter(rate, "8").await;
    unfold(journey, say!(book::tax_by_kind)).await;
    journey.enter(By::Label(say!(first::type_pressed)), "5").await;
    journey.wait_for_text(&[say!(first::type_pressed), "5%"].join(" ")).await;

    unfold(journey, say!(drinks::fees)).await;
    journey.enter(By::Label(say!(book::card_fee)), "3").await;
    journey.enter(By::Label(say!(common::fee_per_transaction)), "0.30").await;
    let drinks = By::Label(say!(book::drinks_per_payment));
    journey.enter(drinks, "1.5").await;
    journey.type_into(drinks, "0").await;
    journey.expect_error(drinks, &say!(refusals::less_than_one, field = say!(book::drinks_per_payment))).await;
    journey.press(drinks, fantoccini::key::Key::Escape).await;
    journey.expect_value(drinks, "1.5").await;

    unfold(journey, say!(book::shop_costs)).await;
    journey.enter(By::Label(say!(book::hourly_wage)), "18").await;
    journey.wait_for_text(say!(drinks::no_overhead_yet)).await;
    journey.choose(By::Label(say!(book::overhead_per)), say!(book::each_week)).await;
    journey.enter(By::Label(say!(drinks::overhead)), "200").await;
    // No drink sells yet.
    journey.wait_for_text(say!(drinks::no_weekly_yet)).await;
    // Without sales no amount for a drink follows from that of a week, so the week stays.
    journey.choose(By::Label(say!(book::overhead_per)), say!(book::drink_sold)).await;
    journey.wait_for_text(say!(book::overhead_needs_sales)).await;
    journey.expect_value(By::Label(say!(book::overhead_per)), say!(book::each_week)).await;
    journey.screenshot("shop_costs").await;
}

/// 40 minutes for 320 fl oz: a drink of 16 fl oz bears a twentieth, 2 minutes, which is 0.60 at 18.00 an hour.
async fn batch_by_volume(journey: &Journey) {
    entering::drink(journey, "Base", say!(first::type_pressed), "16").await;
    entering::line(journey, "Juice base", "16").await;
    unfold(journey, say!(drinks::making)).await;
    journey.expect_value(By::Label(say!(drinks::split_batch)), say!(drinks::by_volume)).await;
    journey.enter(By::Label(say!(drinks::labor_per_batch)), "40:00").await;
    journey.enter(By::Label(say!(drinks::batch_volume)), "320").await;
    journey.wait_for_text(&say!(drinks::tax_rate_of_kind, rate = "5%", kind = say!(first::type_pressed))).await;
    journey.choose(By::Label(say!(drinks::add_size)), "16 oz bottle").await;
    let each = say!(drinks::labor_of_size, size = "16 oz bottle", time = "2:00", money = "$0.60");
    journey.wait_for_text(&each).await;
    // By drinks and back, a drink of the size of the recipe takes as long: 20 of them are the batch.
    journey.choose(By::Label(say!(drinks::split_batch)), say!(drinks::by_drinks)).await;
    journey.enter(By::Label(say!(drinks::drinks_per_batch)), "20").await;
    journey.wait_for_text(&each).await;
    journey.choose(By::Label(say!(drinks::split_batch)), say!(drinks::by_volume)).await;
    journey.expect_value(By::Label(say!(drinks::batch_volume)), "320 fl oz").await;
    journey.wait_for_text(&each).await;
    journey.screenshot("batch_by_volume").await;
    journey.click(By::Text("16 oz bottle")).await;
    journey.wait_for_text(say!(drinks::menu_price)).await;
}

/// Goods 16 * 0.10 + 0.50. Fee 0.03 * (8 * 1.05 + 0.25) + 0.30 / 1.5 = 0.4595: the deposit is no part of the price,
/// and of what the card fee is taken from. Overhead 200 / 100.
async fn ladder(journey: &Journey) {
    journey.enter(By::Label(say!(drinks::menu_price)), "8").await;
    journey.enter(By::Label(say!(common::drinks_sold_per_week)), "100").await;
    let margin = [say!(first::margin_on_goods), "73.8%"].join(" · ");
    let rows = [
        (say!(drinks::menu_price), "$8.00"),
        (say!(drinks::ingredients), "$1.60"),
        (say!(common::packaging), "$0.50"),
        (&margin, "$5.90"),
        (say!(drinks::labor), "$0.60"),
        (say!(drinks::card_fee), "$0.46"),
        (say!(drinks::profit_that_changes), "$4.84"),
        (say!(drinks::overhead), "$2.00"),
        (say!(common::profit_per_drink), "$2.84"),
    ];
    expect_ladder(journey, &rows).await;
    journey.wait_for_text(&say!(drinks::customer_pays_with_tax, price = "$8.40")).await;
    journey.wait_for_text(&say!(drinks::deposit_beside, deposit = "$0.25")).await;
    journey.screenshot("ladder").await;
    // Twice the sales bear half as much of the week.
    journey.enter(By::Label(say!(common::drinks_sold_per_week)), "200").await;
    journey.wait_for_text("$3.84").await;
}

async fn shown_to_customers(journey: &Journey) {
    entering::book_part(journey, say!(book::shop_costs)).await;
    journey.wait_for_text(&say!(book::overhead_of_week, each = "$1.00", money = "$200.00", drinks = 200_usize)).await;
    let prices = journey.printed("#/print/prices", "Letter").await;
    prices.has(&["$8.00", &say!(drinks::plus_deposit, deposit = "$0.25"), say!(counter::deposits_come_back)]);
    prices.has_not(&["$8.25"]);
}

#[tokio::test]
async fn a_season_says_what_is_in_force_this_month() {
    let journey = entering::metric_book("season").await;
    entering::ingredient(&journey, "Melon", "10 kg", "20").await;
    journey.enter(By::Label(say!(goods::trim_yield)), "50").await;
    unfold(&journey, say!(goods::season)).await;
    journey.choose(By::Label(say!(goods::season_starts)), "October").await;
    journey.choose(By::Label(say!(goods::season_ends)), "December").await;
    journey.enter(By::Label(say!(goods::season_trim_yield)), "40").await;
    // Journeys are walked on a day in November.
    let yields = say!(goods::trim_is, share = "40.0%");
    journey.wait_for_text(&say!(goods::season_in_force, month = "November", yields = yields)).await;
    journey.screenshot("season").await;
    journey.choose(By::Label(say!(goods::season_ends)), "October").await;
    let yields = say!(goods::trim_is, share = "50.0%");
    journey.wait_for_text(&say!(goods::season_not_in_force, month = "November", yields = yields)).await;
    journey.choose(By::Label(say!(goods::season_starts)), say!(goods::no_season)).await;
    journey.wait_for_text_gone(say!(goods::season_trim_yield)).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}
