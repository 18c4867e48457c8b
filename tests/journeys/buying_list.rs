//! The owner makes a list for tomorrow's batch of the demo book, ticks it off at the supplier's,
//! types what was paid, sends it, carries the price into the quotes, and is done.
//!
//! The expected figures were added up by hand from the demo's file: 86 bottles with cap and label
//! and 6 shots with theirs, each in packs of hundreds; the produce is here.

use brimwright::say;
use brimwright::words::sharing::{Sharing, sharing};

use crate::harness::{By, Journey};

const NO_SHARING: &str = "for (const name of ['share', 'clipboard'])
    Object.defineProperty(navigator, name, { value: undefined, configurable: true });
return true;";

/// Its words are only for those who cannot see the cross.
fn take_out(name: &str) -> String {
    format!(
        "[...document.querySelectorAll('button')]
            .find((button) => button.textContent.trim() === '{}').click();
        return true;",
        say!(book::remove_named, name = name)
    )
}

/// How many of the list's six items are bought.
fn bought(bought: &str) -> String {
    say!(market::items_bought, bought = bought, items = 6)
}

/// What the items of a supplier cost, and how much of that is bought and to buy.
fn totals(total: &str, bought: &str, left: &str) -> String {
    say!(market::supplier_totals, total = total, bought = bought, left = left)
}

/// Waits for what the items to buy cost, and for how many they are.
async fn to_buy(journey: &Journey, cost: &str, items: &str) {
    let figures = [(say!(market::total_cost), cost), (say!(market::items), items)];
    journey.expect_figures(say!(market::what_to_buy), &figures).await;
}

#[tokio::test]
async fn a_list_is_made_ticked_off_and_done() {
    let journey = Journey::start("buying_list").await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    make(&journey).await;
    work_it(&journey).await;
    share(&journey).await;
    carry(&journey).await;
    finish(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

async fn make(journey: &Journey) {
    journey.click(By::Text(say!(first::buying))).await;
    journey.click(By::Text(say!(goods::buying_list))).await;
    journey.choose_day(By::Label(say!(market::batches_from)), "2026-11-26").await;
    // 46 + 4 * 58 + 42.50 + 16 + 36 + 30 for caps, labels, which are bought by fours, shot bottles, their caps and
    // labels, bands.
    to_buy(journey, "$402.50", "6").await;
    let needed = [
        &say!(market::amount_needed, amount = "86 ea"),
        say!(market::on_hand_not_counted),
        &say!(market::buy_packs_from, packs = "1 × 1,000 ea", supplier = "Quillhaven Supply"),
        &say!(market::left_over, amount = "914 ea"),
    ];
    // A thousand caps for 86: said in the row, and the sum behind it.
    let row = say!(market::packs_for_need, packs = "1 × 1,000 ea", amount = "86 ea");
    journey.wait_for_text(&row).await;
    journey.wait_for_text(say!(market::rows_rounded_up)).await;
    journey.click(By::Text("Bottle cap")).await;
    journey.wait_for_text(&needed.join(" ")).await;
    let weeks = By::Label(say!(market::weeks_of_sales));
    journey.type_into(weeks, "O").await;
    journey.expect_error(weeks, &say!(book::not_a_number, text = "O", example = "1")).await;
    journey.wait_for_text(&say!(book::fix_field_to_see, field = say!(market::weeks_of_sales))).await;
    journey.wait_for_text_gone(say!(market::total_cost)).await;
    journey.type_into(weeks, "0").await;
    to_buy(journey, "$402.50", "6").await;
    // Without the batch nothing is asked, so nothing is missing.
    let batch = say!(sales::batch_of, day = "Nov 26, 2026");
    journey.click(By::Text(&batch)).await;
    journey.wait_for_text_gone(say!(market::total_cost)).await;
    journey.click(By::Text(&batch)).await;
    let down = "scrollTo(0, document.documentElement.scrollHeight); return scrollY > 100";
    journey.wait_until("the page to be scrolled", down).await;
    journey.click(By::Text(say!(market::make_list))).await;
    journey.wait_for_text(&bought("0")).await;
    journey.wait_until("the list from its head", "return scrollY === 0").await;
}

async fn work_it(journey: &Journey) {
    journey.click(By::Label("Bottle cap 1 × 1,000 ea")).await;
    journey.wait_for_text(&bought("1")).await;
    journey.wait_for_text(&totals("$402.50", "$46.00", "$356.50")).await;
    let paid = say!(market::paid_per_pack, name = "Bottle cap");
    let fix = say!(book::fix_field_to_see, field = &paid);
    let paid = By::Label(&paid);
    journey.type_into(paid, "5O").await;
    journey.expect_error(paid, &say!(book::not_a_number, text = "5O", example = "38.50")).await;
    // No sum stands beside it.
    journey.wait_for_text_gone("$356.50").await;
    journey.wait_for_text(&fix).await;
    journey.type_into(paid, "50.25").await;
    journey.expect_error(paid, "").await;
    journey.wait_for_text(&totals("$406.75", "$50.25", "$356.50")).await;
    // Two packs of labels for four, no shot labels, and mint by hand: - 116 - 36 + 9.50.
    journey.click(By::Text(&say!(market::change_item, name = "Bottle label"))).await;
    let packs = say!(market::packs_of, name = "Bottle label");
    let packs = By::Label(&packs);
    journey.enter(packs, "0").await;
    journey.expect_error(packs, &say!(refusals::not_positive, field = say!(refusals::packs_to_buy))).await;
    journey.enter(packs, "2").await;
    journey.wait_for_text(&totals("$290.75", "$50.25", "$240.50")).await;
    journey.click(By::Text(&say!(market::change_item, name = "Shot label"))).await;
    journey.wait_until("a way to take out shot labels", &take_out("Shot label")).await;
    let mint = say!(market::item_in_pack_from, name = "Mint", pack = "1 lb", supplier = "Tansywold Produce");
    journey.choose(By::Label(say!(market::add_item)), &mint).await;
    journey.wait_for_text(&bought("1")).await;
    journey.wait_for_text(&totals("$9.50", "$0.00", "$9.50")).await;
    journey.screenshot("worked").await;
    // It is kept.
    journey.open().await;
    journey.go("#/buying/list").await;
    journey.wait_for_text(&bought("1")).await;
    journey.expect_value(paid, "50.25").await;
}

async fn share(journey: &Journey) {
    journey.wait_until("a browser that neither shares nor copies", NO_SHARING).await;
    journey.click(By::Text(say!(market::share_as_text))).await;
    journey.wait_for_text(sharing(Sharing::ToCopy)).await;
    let text = journey.value_of(By::Label(say!(goods::buying_list))).await;
    let lines: Vec<&str> = text.lines().skip(1).collect();
    let expected = [
        "",
        "Quillhaven Supply",
        "[ ] 2 oz shot bottle, 1 × 250 ea",
        "[x] Bottle cap, 1 × 1,000 ea",
        "[ ] Bottle label, 2 × 1,000 ea",
        "[ ] Shot cap, 1 × 500 ea",
        "[ ] Tamper band, 1 × 2,000 ea",
        "",
        "Tansywold Produce",
        "[ ] Mint, 1 × 1 lb",
    ];
    assert_eq!(lines, expected, "{text}");
}

async fn carry(journey: &Journey) {
    let caps = say!(market::item_in_pack_from, name = "Bottle cap", pack = "1,000 ea", supplier = "Quillhaven Supply");
    let paid = say!(market::paid_instead_of, item = caps, paid = "$50.25", quoted = "$46.00");
    journey.wait_for_text(&paid).await;
    journey.click(By::Text(say!(market::show_drinks_affected))).await;
    // Each of the 14 sizes of the menu in a bottle has a cap.
    let moves = [say!(market::prices_change, prices = 1), say!(market::none_would_drop, sizes = 14)];
    journey.wait_for_text(&moves.join(" ")).await;
    journey.click(By::Text(say!(market::save_prices_paid))).await;
    journey.wait_for_text_gone(&paid).await;
    // The batch again, with the cap at its new price.
    journey.click(By::Text(say!(market::replace_list))).await;
    journey.choose_day(By::Label(say!(market::batches_from)), "2026-11-26").await;
    to_buy(journey, "$406.75", "6").await;
}

async fn finish(journey: &Journey) {
    let ending = [
        &say!(market::bought_added, items = 1),
        &say!(market::list_deleted_with, items = 5),
        say!(market::undo_brings_back),
    ];
    journey.wait_for_text(&ending.join(" ")).await;
    journey.click(By::Text(say!(market::finish_list))).await;
    journey.wait_for_text(say!(market::no_list_yet)).await;
    journey.choose_day(By::Label(say!(market::batches_from)), "2026-11-26").await;
    // A thousand caps are here now.
    to_buy(journey, "$356.50", "5").await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.wait_for_text(&bought("1")).await;
    journey.screenshot("back").await;
}
