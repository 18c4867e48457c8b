//! The demo book after a market day: what would move if carrots went up, what did move since a
//! day, the biggest cost drivers; then carrots are weighed, and their yields adopted and taken back.
//!
//! Everything is invented. Each expected figure was worked out by hand, from the formulas that
//! stand beside it; none comes from the engine.

use brimwright::say;
use brimwright::words::texts::{HOLE, around};

use crate::entering;
use crate::harness::{By, Journey};

/// Where a weighing of juice is typed.
fn juice() -> By<'static> {
    By::Label(say!(goods::juice_weight))
}

/// The beginning of what is said of a weighing that stands apart.
fn unusual() -> String {
    around(&say!(goods::unusual_weighing, day = "Nov 18, 2026", share = HOLE, distance = "")).0
}

#[tokio::test]
async fn prices_are_followed_and_yields_weighed() {
    let journey = Journey::start("price_watch").await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.click(By::Text(say!(first::buying))).await;
    journey.click(By::Text(say!(goods::price_watch))).await;
    what_if(&journey).await;
    since(&journey).await;
    drivers(&journey).await;
    weighed(&journey).await;
    corrected(&journey).await;
    adopted(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// A millilitre of carrot juice costs 34 / (50 * 453.59237) * 0.998 / (0.89 * 0.55). Half of Copper
/// Morning and 2.5 of 16 parts of Garnet Row are carrots; 3% stays in the press, 5% is not sold and
/// 1% is free; 12.1, 16.1 and 32.2 fl oz are poured, 90, 34 and 6 and 31, 24 and 5 a week: 104.92 of
/// carrots, of which a fifth is 20.98.
async fn what_if(journey: &Journey) {
    let changed = say!(market::changed_prices);
    let heads = ["", say!(market::now), say!(market::new_price), say!(market::change)];
    let percent = By::Label(say!(market::percent_change));
    journey.click(By::Text(say!(market::what_if))).await;
    journey.wait_for_text(say!(market::choose_item_to_test)).await;
    journey.choose(By::Label(say!(market::add_item)), "Carrots").await;
    journey.wait_for_text(&say!(market::sizes_would_drop, sizes = 2)).await;
    entering::unfold(journey, changed).await;
    journey.expect_rows(changed, &[&heads, &["Carrots", "$34.00", "$40.80", "+20.0%"]]).await;
    // In 16 fl oz, 0.160 and 0.050 more of 8.50 leave Copper Morning 67.0% of 68.9%, and Garnet Row 67.5% of 68.1%.
    journey.wait_for_text(&say!(market::some_would_drop, sizes = 6, dropped = "2")).await;
    let change = "return document.body.innerText.includes('\u{2212}$20.98')";
    journey.wait_until("a week leaves 20.98 less", change).await;
    for (text, error) in [
        ("dear", say!(book::not_a_number, text = "dear", example = "20")),
        ("-101", say!(market::beyond_tested, least = "\u{2212}100", most = "1,000")),
    ] {
        journey.type_into(percent, text).await;
        journey.expect_error(percent, &error).await;
    }
    journey.enter(percent, "-50").await;
    journey.expect_rows(changed, &[&heads, &["Carrots", "$34.00", "$17.00", "\u{2212}50.0%"]]).await;
    journey.screenshot("what_if").await;
    assert_eq!(journey.title_of_undo().await, say!(first::undo_change, change = ""), "nothing was changed in the book");
}

async fn since(journey: &Journey) {
    let since = By::Label(say!(market::since));
    journey.click(By::Text(say!(market::price_changes))).await;
    journey.choose_day(since, "2026-11-12").await;
    // Prices of 12 November and of the 23rd: 2 / 24, 2.50 / 41.50, 1.50 / 27.50, 2.50 / 49.50,
    // 1.50 / 32.50, -3 / 41.
    let rows: [&[&str]; 7] = [
        &["", say!(market::before), say!(market::now), say!(market::change)],
        &["Kale", "$24.00", "$26.00", "+8.3%"],
        &["Lemons", "$41.50", "$44.00", "+6.0%"],
        &["Cucumbers", "$27.50", "$29.00", "+5.5%"],
        &["Ginger root", "$49.50", "$52.00", "+5.1%"],
        &["Carrots", "$32.50", "$34.00", "+4.6%"],
        &["Celery", "$41.00", "$38.00", "\u{2212}7.3%"],
    ];
    // In 32 fl oz, the two drinks of carrots fell from 68.2% to 67.6% and from 68.1% to 67.8%: the target is 68%. Of
    // what costs more, they take carrots, ginger and lemons, but no kale and no cucumbers.
    journey.wait_for_text(&say!(market::some_dropped_since, sizes = 2, day = "Nov 12, 2026")).await;
    let names = "Lemons, Ginger root, Carrots";
    journey.expect_each(".watch-said", &[&say!(market::dropped_with, sizes = 2, names = names)]).await;
    entering::unfold(journey, say!(market::changed_prices)).await;
    journey.expect_rows(say!(market::changed_prices), &rows).await;
    journey.choose_day(since, "2026-11-23").await;
    journey.wait_for_text(&say!(market::no_price_changed, day = "Nov 23, 2026")).await;
}

async fn drivers(journey: &Journey) {
    journey.click(By::Text(say!(market::cost_drivers))).await;
    journey.expect_lines(By::Item("Carrots"), &["Carrots", "6.4%"]).await;
    entering::unfold(journey, say!(market::driver_figures)).await;
    journey.wait_for_text("$104.92").await;
    journey.wait_for_text("\u{2212}$10.49").await;
    journey.screenshot("cost_drivers").await;
}

/// 2.95 US gallons of 3785.411784 mL at 0.998 g/mL are 11144.63 g, or 24.5697 lb.
async fn weighed(journey: &Journey) {
    journey.go("#/buying/ingredient/7").await;
    entering::unfold(journey, say!(goods::yields)).await;
    journey.click(By::Text(&say!(goods::yield_log_of, weighings = 6))).await;
    journey.wait_for_text(&unusual()).await;
    let trimmed = By::Label(say!(goods::trimmed_weight));
    journey.enter(trimmed, "51").await;
    journey.click(By::Text(say!(goods::add_weighing))).await;
    let bought = By::Label(say!(goods::weight_as_purchased));
    journey.expect_error(bought, &say!(goods::weight_needed, example = "12 lb")).await;
    journey.enter(bought, "50").await;
    let grown = say!(refusals::more_than_before, field = say!(goods::trimmed_weight));
    journey.expect_error(trimmed, &grown).await;
    journey.enter(trimmed, "44.6").await;
    journey.expect_error(trimmed, "").await;
    journey.enter(juice(), "2.95 gal").await;
    journey.wait_for_text(&say!(goods::counts_as_weight, weight = "24.5697 lb")).await;
    journey.choose_day(By::Label(say!(goods::weighed_on)), "2026-11-25").await;
    journey.click(By::Text(say!(goods::add_weighing))).await;
    // 44.6 / 50; 24.5697 / 44.6.
    journey.wait_for_text("55.1%").await;
    // Means of seven yields and Student's t with 6 degrees of freedom, by scipy.
    told(journey, ["89.1%", "88.6%", "89.6%"], ["53.2%", "49.1%", "57.2%"]).await;
    journey.screenshot("yield_log").await;
}

/// The juice of the 18th was 24.2 lb, not 19.2.
async fn corrected(journey: &Journey) {
    journey.click(By::Label(&say!(goods::correct_day, day = "Nov 18, 2026"))).await;
    journey.expect_value(juice(), "19.2 lb").await;
    journey.enter(juice(), "24.2").await;
    journey.click(By::Text(say!(goods::save_weighing))).await;
    journey.wait_for_text_gone(&unusual()).await;
    told(journey, ["89.1%", "88.6%", "89.6%"], ["54.8%", "54.3%", "55.3%"]).await;
    journey.expect_value(juice(), "").await;
}

/// The average of seven weighings and its range, of trimming and of pressing.
async fn told(journey: &Journey, trimming: [&str; 3], pressing: [&str; 3]) {
    let average = |average: &str| say!(goods::average_of, average = average, weighings = 7);
    let range = |low: &str, high: &str| say!(goods::range, low = low, high = high);
    let ([trimmed, trimmed_low, trimmed_high], [pressed, pressed_low, pressed_high]) = (trimming, pressing);
    let told = [
        (say!(goods::average), &average(trimmed)),
        (say!(goods::likely_range), &range(trimmed_low, trimmed_high)),
        (say!(goods::average), &average(pressed)),
        (say!(goods::likely_range), &range(pressed_low, pressed_high)),
    ];
    journey.expect_figures(say!(goods::measured_yields), &told.map(|(name, said)| (name, said.as_str()))).await;
}

/// 0.25% more carrots for the same juice: 0.89 * 0.55 / (0.891 * 0.548).
async fn adopted(journey: &Journey) {
    let undo = |change: &str| say!(first::undo_change, change = change);
    journey.wait_for_text(&say!(market::none_would_drop, sizes = 6)).await;
    journey.click(By::Text(say!(goods::use_yields))).await;
    journey.wait_for_text(say!(goods::yields_in_book)).await;
    assert_eq!(journey.title_of_undo().await, undo(say!(goods::use_measured_yields)));
    yields(journey, "89.1", "54.8").await;
    entering::book_part(journey, say!(book::restore_points)).await;
    journey.wait_for_text(say!(book::before_yields)).await;
    journey.click(By::Text(say!(first::undo))).await;
    yields(journey, "89", "55").await;
    assert_eq!(journey.title_of_undo().await, undo(say!(goods::correct_weighing)));
}

async fn yields(journey: &Journey, trimmed: &str, pressed: &str) {
    journey.go("#/buying/ingredient/7").await;
    entering::unfold(journey, say!(goods::yields)).await;
    journey.expect_value(By::Label(say!(goods::trim_yield)), trimmed).await;
    journey.expect_value(By::Label(say!(goods::juice_yield)), pressed).await;
}
