//! The morning at the press: what is made today, its sheet ticked off and found again after a
//! reload, short of carrots, a new count by the best use, taken back; what it used comes off the
//! shelf.
//!
//! Everything is invented. Each expected figure was worked out by hand, from the sums that stand
//! beside it; none comes from the engine.

use brimwright::say;

use crate::entering;
use crate::harness::{By, Journey};

/// How many of Copper and Palm Mix together are to be made, and how many are filled.
fn stands(planned: &str, made: &str) -> String {
    say!(counter::batch_totals, sizes = 2_usize, planned = planned, made = made)
}

#[tokio::test]
async fn the_morning_press() {
    let journey = entering::metric_book("morning_press").await;
    entered(&journey).await;
    plan(&journey).await;
    short_of_carrots(&journey).await;
    off_the_shelf(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// 300 mL bottles. Copper is carrot juice alone, Palm Mix a third of it; both juices are 4.00 a
/// litre.
async fn entered(journey: &Journey) {
    for juice in ["Carrot juice", "Coconut water"] {
        entering::ingredient(journey, juice, "10 L", "40").await;
    }
    entering::container(journey, "Small", "320", "20").await;
    for (name, lines, price) in [
        ("Copper", vec![("Carrot juice", "300")], "3"),
        ("Palm Mix", vec![("Carrot juice", "100"), ("Coconut water", "200")], "2.50"),
    ] {
        entering::drink(journey, name, say!(first::type_pressed), "300").await;
        for (juice, amount) in lines {
            entering::line(journey, juice, amount).await;
        }
        entering::sold_in(journey, "Small").await;
        journey.enter(By::Label(say!(drinks::menu_price)), price).await;
    }
}

async fn plan(journey: &Journey) {
    journey.click(By::Text(say!(first::counter))).await;
    journey.click(By::Text(say!(counter::batches))).await;
    journey.wait_for_text(say!(counter::first_batch)).await;
    journey.click(By::Text(say!(counter::start_empty_batch))).await;
    journey.wait_for_text(say!(counter::no_drinks_planned)).await;
    for (offer, count) in [("Copper, Small", "4"), ("Palm Mix, Small", "5")] {
        journey.choose(By::Label(say!(counter::add_to_batch)), offer).await;
        journey.enter(By::Label(&say!(counter::number_of, drink = offer)), count).await;
    }
    let number = say!(counter::number_of, drink = "Copper, Small");
    let number = By::Label(&number);
    journey.type_into(number, "3.5").await;
    journey.expect_error(number, &say!(refusals::not_whole, field = say!(counter::drinks_to_make))).await;
    journey.enter(number, "3").await;
    journey.click(By::Label(&say!(counter::one_more, drink = "Copper, Small"))).await;
    journey.wait_for_text(&stands("9", "0")).await;
    // 4 * 300 + 5 * 100 and 5 * 200 mL.
    let start = |amount: &str| format!("{} {amount}", say!(counter::start_with));
    entering::unfold(journey, say!(counter::amounts_needed)).await;
    journey.expect_each(".take-first", &[&start("1.7 L"), &start("1 L")]).await;
    let of = |name: &str| say!(counter::prep_of, ingredient = name, prep = say!(drinks::as_purchased));
    let (carrot, coconut) = (of("Carrot juice"), of("Coconut water"));
    journey.click(By::Label(&carrot)).await;
    journey.click(By::Label("Copper, Small")).await;
    journey.wait_for_text(&stands("9", "4")).await;
    journey.wait_until_saved().await;
    // Another start of the app finds the ticks again.
    journey.open().await;
    journey.click(By::Text(say!(first::counter))).await;
    journey.click(By::Text(say!(counter::batches))).await;
    journey.click(By::Text(&stands("9", "4"))).await;
    journey.expect_count(".take input:checked", 1).await;
    journey.expect_count(".make input:checked", 1).await;
    journey.screenshot("plan").await;
    journey.click(By::Text(say!(counter::print_sheet))).await;
    let done = |name: &str| format!("{name} {}", say!(counter::done));
    let (copper, carrot) = (done("Copper, Small"), done(&carrot));
    // Room for what was made, the lot and who made it.
    let heads = [
        say!(counter::to_fill),
        say!(counter::planned),
        say!(counter::made),
        say!(counter::lot),
        say!(counter::initials),
        say!(counter::use_by_date),
    ];
    journey.expect_each(".paper-table thead th", &heads).await;
    // Each caution once, with the drinks of which it holds.
    let cautions = [say!(counter::untreated_either), say!(labels::at_risk), say!(counter::may_be_low_acid)];
    let (fills, kept) = ([&*copper, "Palm Mix, Small"], ["Copper", "Palm Mix", "Copper", "Palm Mix"]);
    // What nobody counted may be short.
    let uncounted = say!(counter::items_not_counted, items = 2_usize);
    let lines = [&fills[..], &cautions, &[&*uncounted, &*carrot, &*coconut], &kept].concat();
    journey.expect_each(".paper-table tbody th", &lines).await;
    let kept = say!(labels::storage_not_entered);
    let not_checked = |names: &str| say!(labels::allergens_not_checked_sentence, names = names);
    let copper = [not_checked("Carrot juice"), say!(labels::others_not_checked).to_string()].join(" ");
    let palm = not_checked("Carrot juice, Coconut water");
    let fills = ["4", "", "", "", "", "5", "", "", "", ""];
    let (carrot, coconut) = (start("1.7 L"), start("1 L"));
    let (both, names) = (["Copper, Palm Mix"; 3], ["Carrot juice, Coconut water"]);
    let cells = [&fills[..], &both, &names, &[&carrot, &coconut, kept, kept, &copper, &palm]].concat();
    journey.expect_each(".paper-table td", &cells).await;
    journey.click(By::Text(say!(counter::batch))).await;
}

async fn short_of_carrots(journey: &Journey) {
    journey.click(By::Text(say!(counter::batches))).await;
    journey.click(By::Text(say!(counter::on_hand))).await;
    journey.click(By::Text(say!(counter::can_make))).await;
    journey.wait_for_text(say!(counter::count_to_see_drinks)).await;
    journey.click(By::Text(say!(counter::on_hand))).await;
    journey.enter(By::Label("Carrot juice"), "1").await;
    journey.expect_sentence(By::Label("Carrot juice"), &say!(counter::today_short, amount = "0.7 L")).await;
    journey.expect_sentence(By::Label("Coconut water"), say!(counter::today_needs_this)).await;
    // What is short comes first when the screen is opened anew.
    journey.enter(By::Label("Coconut water"), "3").await;
    journey.expect_sentence(By::Label("Coconut water"), "").await;
    journey.screenshot("on_hand").await;
    journey.enter(By::Label("Coconut water"), "").await;
    // 1 L makes three of 300 mL or ten of 100 mL.
    journey.click(By::Text(say!(counter::can_make))).await;
    // Coconut water is not counted: it may run out before.
    let most = format!("Small {}", say!(counter::at_most, number = "10"));
    journey.expect_each(".can-make-sizes .chip", &["Small 3", &most]).await;
    journey.wait_for_text(&say!(counter::runs_out_first, item = "Carrot juice")).await;
    journey.wait_for_text(&say!(counter::runs_out_first_of_rest, item = "Carrot juice")).await;
    journey.wait_for_text(&say!(counter::items_not_counted, items = 1_usize)).await;
    journey.screenshot("can_make").await;
    journey.click(By::Text(say!(counter::batches))).await;
    journey.click(By::Text(&stands("9", "4"))).await;
    // What is short stands first, with the drinks that it hits and what can be made all the same.
    journey.wait_for_text(&say!(counter::short_on, items = 1_usize)).await;
    let used_in = say!(counter::used_in, drinks = "Copper, Palm Mix");
    journey
        .expect_each(".shorts li", &[&format!("Carrot juice {} {used_in}", say!(counter::short, amount = "0.7 L"))])
        .await;
    journey.wait_for_text(&say!(counter::made_of_planned, made = "6", planned = "9")).await;
    journey.click(By::Text(say!(counter::best_plan))).await;
    // Copper leaves 3.00 - 1.20 = 1.80 of 300 mL, Palm Mix 2.50 - 1.20 = 1.30 of 100 mL of what is
    // short. Five of the one that leaves more of a litre, and one of the other: 8.30, and 200 mL
    // are left over. Four and two use them: 8.80.
    journey.wait_for_text(say!(counter::best_by_profit)).await;
    let plan = |planned, now| say!(counter::planned_and_now, planned = planned, now = now);
    journey.expect_each(".best-count", &[&plan("4", "2"), &plan("5", "4")]).await;
    journey.wait_for_text(&say!(counter::stock_left, item = "Carrot juice", amount = "0 L")).await;
    // Four Coppers in any case take 1.2 L.
    journey.click(By::Label(&say!(counter::make_all_of, unseen = "", drink = "Copper, Small"))).await;
    journey.wait_for_text(&say!(counter::checked_need_too_much, item = "Carrot juice")).await;
    journey.click(By::Label(&say!(counter::make_all_of, unseen = "", drink = "Copper, Small"))).await;
    journey.screenshot("best_use").await;
    journey.click(By::Text(say!(counter::use_this_plan))).await;
    journey.expect_value(By::Label(&say!(counter::number_of, drink = "Copper, Small")), "2").await;
    journey.wait_for_text(&stands("6", "0")).await;
    journey.wait_for_text(say!(counter::nothing_short)).await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.expect_value(By::Label(&say!(counter::number_of, drink = "Copper, Small")), "4").await;
    journey.wait_for_text(&stands("9", "4")).await;
}

async fn off_the_shelf(journey: &Journey) {
    // 4 * 300 mL of 1 L.
    journey.click(By::Text(say!(counter::deduct_from_stock))).await;
    journey.wait_for_text(&say!(counter::items_deducted, items = 1_usize)).await;
    journey.wait_for_text(&say!(counter::used_more_than_counted, items = "Carrot juice")).await;
    // What is left of the plan takes 5 * 100 mL, and nothing is there; the rest came off once.
    journey.wait_for_text(&say!(counter::short_of_rest, amount = "0.5 L")).await;
    journey.go("#/counter/batches").await;
    journey.click(By::Text(&stands("9", "4"))).await;
    journey.wait_for_text(say!(counter::all_deducted)).await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.wait_for_text(&say!(counter::short, amount = "0.7 L")).await;
    journey.click(By::Text(say!(counter::delete_batch))).await;
    journey.wait_for_text(say!(counter::first_batch)).await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.wait_for_text(&stands("9", "4")).await;
}
