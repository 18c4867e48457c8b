//! The same book open in two tabs.

use brimwright::say;

use crate::entering;
use crate::harness::{By, Engine, Journey, in_each_engine};

in_each_engine!(two_tabs_agree);

/// The price of this name, in Buying.
fn price_of(name: &str) -> String {
    say!(market::price_of, name = name)
}

fn apples() -> By<'static> {
    By::label(price_of("Apples"))
}

/// What undoes this.
fn undo_of(change: &str) -> String {
    say!(first::undo_change, change = change)
}

/// What another tab made of the price of apples, and what was typed here.
fn theirs_and_mine(theirs: &str, mine: &str) -> String {
    let field = say!(goods::case_price);
    say!(refusals::another_tab_changed_to, name = "Apples", field = field, theirs = theirs, mine = mine)
}

/// Opens the demo book in two tabs, each at the prices.
async fn both_at_the_prices(journey: &Journey) {
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.click(By::Text(say!(first::buying))).await;
    journey.expect_value(apples(), "38.00").await;
    journey.open_another_tab().await;
    journey.click(By::Text(say!(first::buying))).await;
    journey.expect_value(apples(), "38.00").await;
}

async fn two_tabs_agree(engine: Engine) {
    let journey = Journey::start_in(engine, "two_tabs").await;
    both_at_the_prices(&journey).await;
    // A mark that a reload would wipe away.
    journey.wait_until("the mark", "return window.never_loaded_again = true").await;

    journey.use_tab(0).await;
    journey.enter(apples(), "44.25").await;
    journey.wait_for_text(say!(first::saved)).await;

    journey.use_tab(1).await;
    journey.expect_value(apples(), "44.25").await;
    // 44.25 / (40 lb * 0.9 left after trimming * 0.65 pressed), 1.048 g/mL, by hand: 44.25 / 38 *
    // 0.11096 = 0.12921 a fl oz, and 44.25 / 36 a trimmed lb. Computed here anew, since only the price was sent over.
    journey.go("#/buying/ingredient/1").await;
    let (lb, fl_oz) = (say!(goods::per_trimmed, amount = "lb"), say!(goods::per_of_juice, amount = "fl oz"));
    journey.expect_figures(say!(common::cost), &[(&lb, "$1.229"), (&fl_oz, "$0.129")]).await;

    // And the other way, another kind of record.
    entering::book_part(&journey, say!(book::this_book)).await;
    journey.enter(By::Nth(0, &By::Label(say!(common::name))), "Marrowgate, west side").await;
    journey.wait_for_text(say!(first::saved)).await;
    journey.use_tab(0).await;
    journey.wait_for_text("Marrowgate, west side").await;
    journey.expect_value(apples(), "44.25").await;
    journey.use_tab(1).await;
    journey.wait_until("the page to be the same", "return window.never_loaded_again === true").await;
}

#[tokio::test]
async fn two_prices_of_one_pack_are_asked_about_and_nothing_else_is() {
    let journey = Journey::start("two_prices").await;
    both_at_the_prices(&journey).await;

    // The first tab cannot save for a while, and both change the same price.
    journey.use_tab(0).await;
    journey.wait_until("the device to be full", NO_ROOM).await;
    journey.enter(apples(), "44.25").await;
    journey.wait_for_text(say!(first::not_saved)).await;
    journey.use_tab(1).await;
    journey.enter(apples(), "41.00").await;
    journey.wait_for_text(say!(first::saved)).await;
    journey.use_tab(0).await;
    journey.wait_for_text(&theirs_and_mine("$41.00", "$44.25")).await;
    journey.expect_value(apples(), "44.25").await;
    journey.screenshot("asked").await;
    // Loaded again, it asks again: theirs is not overwritten unasked.
    journey.wait_until("room", "return window.roomy = true").await;
    journey.load_again().await;
    journey.wait_for_text(&theirs_and_mine("$41.00", "$44.25")).await;
    journey.expect_value(apples(), "44.25").await;
    journey.use_tab(1).await;
    journey.expect_value(apples(), "41.00").await;
    journey.use_tab(0).await;
    journey.click(By::Text(say!(book::keep_mine))).await;
    journey.wait_for_text_gone(say!(first::not_saved)).await;
    journey.wait_until_undo_is(&undo_of(&say!(refusals::keep_mine, step = price_of("Apples")))).await;
    journey.use_tab(1).await;
    journey.expect_value(apples(), "44.25").await;

    // And once more, the other way: what was given up is a step that is there when the page loads anew.
    journey.use_tab(0).await;
    journey.wait_until("the device to be full", NO_ROOM).await;
    journey.enter(apples(), "46.00").await;
    journey.wait_for_text(say!(first::not_saved)).await;
    journey.use_tab(1).await;
    journey.enter(apples(), "43.00").await;
    journey.wait_for_text(say!(first::saved)).await;
    journey.use_tab(0).await;
    journey.wait_for_text(&theirs_and_mine("$43.00", "$46.00")).await;
    journey.wait_until("room", "return window.roomy = true").await;
    journey.click(By::Text(say!(book::take_theirs))).await;
    journey.wait_until_saved().await;
    journey.open().await;
    journey.go("#/buying").await;
    journey.expect_value(apples(), "43.00").await;
    journey.wait_until_undo_is(&undo_of(&say!(refusals::take_theirs, step = price_of("Apples")))).await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.expect_value(apples(), "46.00").await;
}

/// From now on nothing can be stored in this tab; `window.roomy = true` ends that.
const NO_ROOM: &str = "
const put = IDBObjectStore.prototype.put;
IDBObjectStore.prototype.put = function (...what) {
    if (!window.roomy) throw new DOMException('no room', 'QuotaExceededError');
    return put.apply(this, what);
};
return true";

in_each_engine!(a_tab_that_loads_again_undoes_its_own_steps_only);

async fn a_tab_that_loads_again_undoes_its_own_steps_only(engine: Engine) {
    let journey = Journey::start_in(engine, "own_steps").await;
    both_at_the_prices(&journey).await;
    journey.enter(apples(), "44.25").await;
    journey.wait_until_saved().await;
    journey.use_tab(0).await;
    journey.expect_value(apples(), "44.25").await;
    journey.enter(By::Label(&price_of("Carrots")), "35").await;
    journey.wait_until_saved().await;

    // The other tab's step came last, and stays.
    journey.use_tab(1).await;
    journey.load_again().await;
    journey.expect_value(By::Label(&price_of("Carrots")), "35.00").await;
    journey.wait_until_undo_is(&undo_of(&price_of("Apples"))).await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.expect_value(apples(), "38.00").await;
    journey.wait_until_undo_is(&undo_of("")).await;
    journey.expect_value(By::Label(&price_of("Carrots")), "35.00").await;
    journey.wait_until_saved().await;

    // The other tab is gone: its step is anybody's.
    journey.use_tab(0).await;
    journey.close_tab().await;
    journey.use_tab(0).await;
    journey.load_again().await;
    journey.wait_until_undo_is(&undo_of(&price_of("Carrots"))).await;
}

in_each_engine!(a_price_that_another_tab_brings_is_typed_over);

async fn a_price_that_another_tab_brings_is_typed_over(engine: Engine) {
    let journey = Journey::start_in(engine, "brought").await;
    both_at_the_prices(&journey).await;
    // The caret is in the field, and what stands there selected.
    journey.click(apples()).await;
    journey.use_tab(0).await;
    journey.enter(apples(), "39").await;
    journey.wait_until_saved().await;
    journey.use_tab(1).await;
    journey.expect_value(apples(), "39.00").await;
    journey.type_on("41").await;
    journey.expect_value(apples(), "41").await;
    journey.wait_until_saved().await;
    // What is in force is shown, though the caret never left the field.
    journey.use_tab(0).await;
    journey.expect_value(apples(), "41.00").await;
    journey.enter(apples(), "43").await;
    journey.wait_until_saved().await;
    journey.use_tab(1).await;
    journey.expect_value(apples(), "43.00").await;
    journey.type_on("44").await;
    journey.expect_value(apples(), "44").await;
    journey.wait_until_saved().await;
    journey.use_tab(0).await;
    journey.expect_value(apples(), "44.00").await;
}
