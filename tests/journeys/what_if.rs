//! What if: prices, fills and dearer ingredients tried for one drink. Nothing changes in the book
//! until they are used, in one step that can be taken back.
//!
//! Everything is invented. Each expected figure was worked out by hand, from the formulas that
//! stand beside it; none comes from the engine.

use std::sync::LazyLock;

use brimwright::words::texts::{HOLE, around};
use brimwright::{say, words};
use fantoccini::key::Key;

use crate::entering;
use crate::harness::{By, Journey};

static PRICE: LazyLock<String> = LazyLock::new(|| say!(sales::price_of, size = "Large"));
static FILL: LazyLock<String> = LazyLock::new(|| say!(sales::fill_of, size = "Small"));

fn ingredients() -> &'static str {
    say!(sales::ingredient_cost_change)
}

fn target() -> &'static str {
    say!(common::target_margin)
}

fn slider(field: &str) -> String {
    say!(book::slider_of_field, field = field)
}

/// What the head says Undo takes back.
fn undo(change: &str) -> String {
    say!(first::undo_change, change = change)
}

#[tokio::test]
async fn what_is_tried_changes_nothing_until_it_is_used() {
    let journey = entering::metric_book("what_if").await;
    entering::unfold(&journey, say!(common::target_margin)).await;
    journey.enter(By::Label(say!(common::target_margin)), "60").await;
    journey.enter(By::Label(say!(book::price_endings)), ".00 .25 .50 .75").await;
    entering::ingredient(&journey, "Coconut water", "10 L", "20").await;
    for (name, rim) in [("Small", "270"), ("Large", "520")] {
        entering::container(&journey, name, rim, "20").await;
    }
    entering::drink(&journey, "Still", say!(first::type_pressed), "250").await;
    entering::line(&journey, "Coconut water", "250").await;
    sold(&journey, "Small", "4").await;
    sold(&journey, "Large", "6").await;
    journey.click(By::Text(say!(drinks::compare_sizes))).await;

    today(&journey).await;
    journey.wait_for_text(say!(sales::no_week_known)).await;
    slid(&journey).await;
    tried(&journey).await;
    cannot_be(&journey).await;
    back_to_today(&journey).await;
    used_and_undone(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// A consultant at a desk changes a price, a fill and what one ingredient costs, and reads what a week brings
/// then, with nothing scrolled. 40 small ones at 4.00 - 0.50 and 20 large ones at 6.00 - 1.00 bring 240.00 a
/// week. With the large one at 5.50, the small one filled to 200 mL and the ingredient at 2.50 a liter, they
/// leave 3.50 and 4.25: 140.00 + 85.00 = 225.00. 240 / 225 = 1.0667: 7 more for each 100 buyers.
#[tokio::test]
async fn at_a_desk_the_difference_is_read_without_scrolling() {
    let journey = entering::metric_book("what_if_desk").await;
    entering::ingredient(&journey, "Coconut water", "10 L", "20").await;
    for (name, rim) in [("Small", "270"), ("Large", "520")] {
        entering::container(&journey, name, rim, "20").await;
    }
    entering::drink(&journey, "Still", say!(first::type_pressed), "250").await;
    entering::line(&journey, "Coconut water", "250").await;
    sold(&journey, "Small", "4").await;
    sold(&journey, "Large", "6").await;
    journey.go("#/sizes/sales").await;
    entering::unfold(&journey, say!(sales::typical_by_size)).await;
    journey.enter(By::Label("Small"), "40").await;
    journey.enter(By::Label("Large"), "20").await;
    journey.resize(1440, 900).await;
    journey.go("#/sizes/kind/pressed").await;
    entering::unfold(&journey, say!(decide::drinks_and_sizes)).await;
    journey.choose(By::Label(say!(decide::which_drinks)), "Still").await;
    expect_verdict(&journey, &say!(sales::week_earned, profit = "$240.00")).await;

    try_single(&journey).await;
    expect_verdict(&journey, &say!(sales::earns_less_a_week, profit = "$15.00")).await;
    let figures = [
        [say!(common::today), "$240.00"],
        [say!(sales::with_changes), "$225.00"],
        [say!(sales::difference), "−$15.00"],
    ];
    let figures = figures.map(|figure| figure.join(" "));
    journey.expect_each(".earned .answer-figures > div", &figures.each_ref().map(String::as_str)).await;
    let buyers = say!(sales::even_over, buyers = 7_usize);
    journey.wait_for_text(&[say!(sales::same_sales, drinks = 60_usize), buyers].join(" ")).await;
    let in_view = "const bar = document.querySelector('.earned').getBoundingClientRect();
        return scrollY === 0 && document.querySelector('.pane-asked').scrollTop === 0
            && bar.top >= 0 && bar.bottom <= innerHeight";
    journey.wait_until("nothing scrolled, and the answer in view", in_view).await;
    let ends = "return document.querySelector('.pane-asked').getBoundingClientRect().bottom <= innerHeight";
    journey.wait_until("what is asked to end on the screen", ends).await;
    journey.screenshot("desk").await;

    // What it changes in the book, and what it cannot, stands there before it is used.
    let offer = "Still, Large";
    let changes = [
        say!(sales::use_price, offer = offer, from = "$6.00", to = "$5.50"),
        say!(sales::use_fill, size = "Small", from = "250 mL", to = "200 mL", drinks = 1_usize),
    ];
    journey.expect_each(".uses-changes li", &changes.each_ref().map(String::as_str)).await;
    let left = say!(sales::leave_pack_price, goods = "Coconut water", price = "$25.00");
    journey.expect_each(".uses-left li", &[&left]).await;
    // Without the supplier's price: 40 * (4.00 - 0.40) and 20 * (5.50 - 1.00), 234.00.
    journey.expect_each(".uses-alone", &[&say!(sales::alone_less, profit = "$6.00")]).await;

    // Kept as a scenario, it holds all of it, and says what of it stays out of the menu.
    journey.click(By::Text(say!(decide::keep_as_scenario))).await;
    journey.wait_for_text(&say!(decide::scenario_earns_less, profit = "$15.00")).await;
    journey.expect_each(".uses-left li", &[&left]).await;
    journey.expect_each(".uses-alone", &[&say!(sales::alone_less, profit = "$6.00")]).await;
    journey.screenshot("kept").await;
    // At a desk the list of changes stands open.
    let price = say!(decide::use_price, offer = offer, now = "$6.00", then = "$5.50");
    journey.expect_each(".uses-changes li", &[&price, &changes[1]]).await;
    journey.click(By::Text(say!(sales::make_these_changes))).await;
    journey.wait_until_undo_is(&undo(say!(sales::scenario_made_menu))).await;
    // The scenario is kept. It still counts what the supplier might ask: 225.00 against 234.00 now.
    journey.go("#/sizes/scenarios").await;
    let less = say!(decide::scenario_earns_less, profit = "$9.00");
    let line = say!(sales::scenario_line, sizes = words::sizes(2), difference = less);
    let row = [say!(sales::what_if_of, drinks = "Still"), line, "$225.00".to_owned()].join(" ");
    journey.expect_each(".rows li", &[&row]).await;
    journey.wait_until_saved().await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// What reaches drinks that are not compared says what the whole menu earns; beside a field that cannot be read nobody
/// says so. 20 of one drink and 10 of another at 1.00 of ingredients: a quarter more is 5.00, and 2.50.
#[tokio::test]
async fn what_reaches_other_drinks_says_so() {
    let journey = entering::metric_book("what_if_menu").await;
    entering::ingredient(&journey, "Coconut water", "10 L", "20").await;
    entering::container(&journey, "Large", "520", "20").await;
    for name in ["Still", "Shade"] {
        entering::drink(&journey, name, say!(first::type_pressed), "250").await;
        entering::line(&journey, "Coconut water", "250").await;
        sold(&journey, "Large", "6").await;
    }
    journey.go("#/sizes/sales").await;
    entering::unfold(&journey, say!(sales::typical_by_size)).await;
    // In the order of their names: Shade, then Still.
    journey.enter(By::Nth(0, &By::Label("Large")), "10").await;
    journey.enter(By::Nth(1, &By::Label("Large")), "20").await;
    journey.go("#/sizes/menu").await;
    entering::unfold(&journey, say!(decide::drinks_and_sizes)).await;
    journey.choose(By::Label(say!(decide::which_drinks)), "Still").await;
    expect_verdict(&journey, &say!(sales::week_earned, profit = "$100.00")).await;

    // A price is that of the drink alone.
    let menu = say!(sales::menu_too_less, profit = "$7.50");
    journey.type_into(By::Label(&PRICE), "5.50").await;
    expect_verdict(&journey, &say!(sales::earns_less_a_week, profit = "$10.00")).await;
    journey.wait_for_text_gone(&around(&say!(sales::menu_too_less, profit = HOLE)).0).await;

    journey.type_into(By::Label(&PRICE), "6").await;
    expect_verdict(&journey, &say!(sales::week_earned, profit = "$100.00")).await;
    entering::unfold(&journey, say!(sales::costs_and_fees)).await;
    let dearer = By::Label(ingredients());
    journey.type_into(dearer, "25").await;
    expect_verdict(&journey, &say!(sales::earns_less_a_week, profit = "$5.00")).await;
    journey.wait_for_text(&menu).await;
    // What these gain and the whole menu loses is no gain: 20 * 0.30 less 5.00, and less 2.50.
    journey.type_into(By::Label(&PRICE), "6.30").await;
    expect_verdict(&journey, &say!(sales::menu_too_less, profit = "$1.50")).await;
    journey.wait_for_text(&say!(sales::these_sizes_more, profit = "$1.00")).await;
    journey.type_into(By::Label(&PRICE), "6").await;
    expect_verdict(&journey, &say!(sales::earns_less_a_week, profit = "$5.00")).await;
    journey.type_into(dearer, "25x").await;
    journey.wait_for_text(&say!(book::fix_field_to_see, field = ingredients())).await;
    journey.wait_for_text_gone(&menu).await;
    journey.expect_count(".uses-left li", 0).await;
    journey.press(dearer, Key::Escape).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

async fn expect_verdict(journey: &Journey, sentence: &str) {
    journey.expect_each(".earned .verdict", &[sentence]).await;
}

/// The chip of a size, among those that can be changed.
async fn change(journey: &Journey, size: &str) {
    journey.click(By::Text(size)).await;
}

async fn try_single(journey: &Journey) {
    change(journey, "Large").await;
    journey.enter(By::Label(&PRICE), "5.50").await;
    change(journey, "Small").await;
    journey.enter(By::Label(&FILL), "200").await;
    // By keys, as its first choice: choosing by name brings the list to the middle of the screen.
    journey.press(By::Label(say!(sales::goods_to_change)), Key::Down).await;
    // The caret stays in the last field: nothing else has to come into view.
    journey.type_into(By::Label(&say!(sales::pack_price_of, goods = "Coconut water")), "25").await;
}

async fn sold(journey: &Journey, container: &str, price: &str) {
    entering::sold_in(journey, container).await;
    journey.enter(By::Label(say!(drinks::menu_price)), price).await;
    journey.click(By::Text(say!(drinks::back_to_drink))).await;
    journey.wait_for_text(say!(drinks::sizes_you_sell)).await;
}

/// The figures of both sizes, those of the small one first.
struct Figures {
    fill: [String; 2],
    price: [String; 2],
    cost: [String; 2],
    profit: [String; 2],
    margin: [String; 2],
    suggested: [String; 2],
}

/// Figures that nothing is tried of.
fn plain(figures: [&str; 2]) -> [String; 2] {
    figures.map(str::to_owned)
}

/// A figure as it is and as it would be.
fn moved(was: &str, is: &str) -> String {
    [say!(sales::was_today), was, say!(sales::is_tried), is].join(" ")
}

async fn expect(journey: &Journey, figures: &Figures) {
    let none = plain([say!(common::none), say!(common::none)]);
    let on_target = plain([say!(first::on_target), say!(first::on_target)]);
    let rows = [
        ("", &plain(["Small", "Large"])),
        (say!(common::fill), &figures.fill),
        (say!(common::price), &figures.price),
        (say!(common::full_cost), &figures.cost),
        (say!(common::profit_per_drink), &figures.profit),
        (say!(common::margin), &figures.margin),
        (say!(sales::profit_per_labor_minute), &none),
        (say!(common::suggested_price), &figures.suggested),
        (say!(sales::target), &on_target),
    ];
    let rows = rows.map(|(name, [small, large])| [name, small.as_str(), large.as_str()]);
    let rows: Vec<&[&str]> = rows.iter().map(|row| row.as_slice()).collect();
    journey.expect_rows(say!(sales::per_drink), &rows).await;
}

/// 250 and 500 mL of 2.00 a litre: 0.50 of 4.00 and 1.00 of 6.00. At 60%: 1.25 and 2.50.
async fn today(journey: &Journey) {
    let figures = Figures {
        fill: plain(["250 mL", "500 mL"]),
        price: plain(["$4.00", "$6.00"]),
        cost: plain(["$0.50", "$1.00"]),
        profit: plain(["$3.50", "$5.00"]),
        margin: plain(["87.5%", "83.3%"]),
        suggested: plain(["$1.25", "$2.50"]),
    };
    expect(journey, &figures).await;
}

/// 200 mL and 500 mL of 2.50 a litre: 0.50 as before, and 1.25. 4.25 / 5.50 = 0.77273; 1.25 / 0.4 =
/// 3.125, up to 3.25.
fn as_tried() -> Figures {
    Figures {
        fill: [moved("250 mL", "200 mL"), "500 mL".into()],
        price: ["$4.00".into(), moved("$6.00", "$5.50")],
        cost: ["$0.50".into(), moved("$1.00", "$1.25")],
        profit: ["$3.50".into(), moved("$5.00", "$4.25")],
        margin: ["87.5%".into(), moved("83.3%", "77.3%")],
        suggested: ["$1.25".into(), moved("$2.50", "$3.25")],
    }
}

/// A step of a slider is five cents, or a millilitre.
async fn slid(journey: &Journey) {
    entering::unfold(journey, say!(sales::costs_and_fees)).await;
    for (size, field, key, value) in [
        ("Large", PRICE.as_str(), Key::Left, "5.95"),
        ("Small", FILL.as_str(), Key::Right, "251 mL"),
        ("Small", ingredients(), Key::Right, "1"),
        ("Small", target(), Key::Right, "61"),
    ] {
        change(journey, size).await;
        journey.press(By::Label(&slider(field)), key).await;
        journey.expect_value(By::Label(field), value).await;
    }
    nothing_changed(journey).await;
    journey.click(By::Text(say!(sales::clear_changes))).await;
    today(journey).await;
}

async fn nothing_changed(journey: &Journey) {
    let last = undo(say!(drinks::menu_price));
    assert_eq!(journey.title_of_undo().await, last, "nothing was changed in the book");
}

async fn try_all(journey: &Journey) {
    change(journey, "Large").await;
    journey.enter(By::Label(&PRICE), "5.50").await;
    change(journey, "Small").await;
    journey.enter(By::Label(&FILL), "200").await;
    entering::unfold(journey, say!(sales::costs_and_fees)).await;
    journey.enter(By::Label(ingredients()), "25").await;
}

async fn tried(journey: &Journey) {
    try_all(journey).await;
    expect(journey, &as_tried()).await;
    // 5.50 - 4.00; 1.25 - 0.50; (4.25 - 3.50) / 1.50.
    let step = [
        say!(sales::price_rises, small = "Small", large = "Large", by = "$1.50"),
        say!(sales::cost_rises, by = "$0.75"),
        say!(sales::you_keep, kept = "$0.75", share = "50.0%"),
    ];
    entering::unfold(journey, say!(sales::price_and_cost)).await;
    journey.wait_for_text(&step.join(" ")).await;
    nothing_changed(journey).await;
    journey.screenshot("what_if").await;
}

/// What cannot be is explained at its field, and what was tried before stays.
async fn cannot_be(journey: &Journey) {
    let (price, fill) = (PRICE.as_str(), FILL.as_str());
    for (field, text, error) in [
        (price, "0", say!(refusals::not_positive, field = say!(drinks::menu_price))),
        (price, "cheap", say!(book::not_a_number, text = "cheap", example = "9.50")),
        (fill, "271", say!(sales::over_brimful, brimful = "270 mL")),
        (fill, "0", say!(sales::nothing_filled).to_owned()),
        (ingredients(), "101", say!(sales::change_too_far, least = "−50", most = "100")),
        (target(), "100", say!(refusals::not_a_share, field = say!(common::target_margin))),
    ] {
        change(journey, if field == price { "Large" } else { "Small" }).await;
        let fix = say!(book::fix_field_to_see, field = field);
        let field = By::Label(field);
        journey.type_into(field, text).await;
        journey.expect_error(field, &error).await;
        // No figures stand beside an error.
        journey.wait_for_text(&fix).await;
        journey.wait_for_text_gone(say!(common::suggested_price)).await;
        journey.press(field, Key::Escape).await;
        journey.wait_for_text_gone(&fix).await;
    }
    expect(journey, &as_tried()).await;
    change(journey, "Large").await;
    journey.type_into(By::Label(price), "cheap").await;
    journey.wait_for_text(&say!(book::fix_field_to_see, field = price)).await;
}

async fn back_to_today(journey: &Journey) {
    journey.click(By::Text(say!(sales::clear_changes))).await;
    today(journey).await;
    journey.expect_value(By::Label(&PRICE), "6.00").await;
    journey.expect_error(By::Label(&PRICE), "").await;
    change(journey, "Small").await;
    journey.expect_value(By::Label(&FILL), "250 mL").await;
    entering::unfold(journey, say!(sales::costs_and_fees)).await;
    journey.expect_value(By::Label(target()), "60").await;
}

async fn used_and_undone(journey: &Journey) {
    try_all(journey).await;
    let left = say!(sales::leave_ingredients, change = "+25.0%");
    journey.expect_each(".uses-left li", &[&left]).await;
    journey.click(By::Text(say!(sales::use_changes))).await;
    // The cost of ingredients is not taken over: 200 and 500 mL of 2.00 a litre.
    let figures = Figures {
        fill: plain(["200 mL", "500 mL"]),
        price: plain(["$4.00", "$5.50"]),
        cost: plain(["$0.40", "$1.00"]),
        profit: plain(["$3.60", "$4.50"]),
        margin: plain(["90.0%", "81.8%"]),
        suggested: plain(["$1.00", "$2.50"]),
    };
    expect(journey, &figures).await;
    entering::unfold(journey, say!(sales::costs_and_fees)).await;
    journey.expect_value(By::Label(ingredients()), "0").await;
    assert_eq!(journey.title_of_undo().await, undo(say!(decide::use_what_if)));
    journey.wait_for_text(say!(decide::menu_changed)).await;
    journey.click(By::Text(say!(first::undo))).await;
    today(journey).await;
    nothing_changed(journey).await;
}
