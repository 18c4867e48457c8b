//! The demo book after a market day: what would move if carrots went up, what did move since a
//! day, what the menu hangs on; then carrots are weighed, and their yields adopted and taken back.
//!
//! Everything is invented. Each expected figure was worked out by hand, from the formulas that
//! stand beside it; none comes from the engine.

use crate::harness::{By, Journey};

const CHANGE: By<'_> = By::Label("Changes by, in percent");
const TRIMMED: By<'_> = By::Label("Left after trimming");
const JUICE: By<'_> = By::Label("Juice, by weight or volume");

#[tokio::test]
async fn prices_are_followed_and_yields_weighed() {
    let journey = Journey::start("price_watch").await;
    journey.open().await;
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.click(By::Text("Buying")).await;
    journey.click(By::Text("Price watch")).await;
    what_if(&journey).await;
    since(&journey).await;
    hangs(&journey).await;
    weighed(&journey).await;
    corrected(&journey).await;
    adopted(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// A millilitre of carrot juice costs 34 / (50 * 453.59237) * 0.998 / (0.89 * 0.55). Half of Copper
/// Morning and 2.5 of 16 parts of Garnet Row are carrots; 3 % stays in the press and 4 % is not
/// sold; 12.1, 16.1 and 32.2 fl oz are poured, 90, 34 and 6 and 31, 24 and 5 a week: 102.79 of
/// carrots, of which a fifth is 20.56.
async fn what_if(journey: &Journey) {
    journey.click(By::Text("What if")).await;
    journey.wait_for_text("Choose what changes its price.").await;
    journey.choose(By::Label("Add what changes"), "Carrots").await;
    journey
        .expect_rows("Prices", &[&["", "Today", "Then", "Change"], &["Carrots", "$34.00", "$40.80", "+20.0 %"]])
        .await;
    // Nearest is Copper Morning in 16 fl oz: 0.156 more of 8.50 leaves 68.4 % of 70.2 %.
    journey.wait_for_text("6 sizes move: none falls under target.").await;
    let change = "return document.body.innerText.includes('\u{2212}$20.56')";
    journey.wait_until("a week leaves 20.56 less", change).await;
    for (text, error) in [
        ("dear", "“dear” is not a number. Type digits, such as 20."),
        ("-101", "Type from -100 to 1000, such as 20 for a fifth more or -10 for a tenth less."),
    ] {
        journey.type_into(CHANGE, text).await;
        journey.expect_error(CHANGE, error).await;
    }
    journey.enter(CHANGE, "-50").await;
    journey
        .expect_rows("Prices", &[&["", "Today", "Then", "Change"], &["Carrots", "$34.00", "$17.00", "\u{2212}50.0 %"]])
        .await;
    journey.screenshot("what_if").await;
    assert_eq!(journey.title_of_undo().await, "Undo: ", "nothing was changed in the book");
}

async fn since(journey: &Journey) {
    journey.click(By::Text("Since a day")).await;
    journey.choose_day(By::Label("Since"), "2026-11-12").await;
    // Prices of 12 November and of the 23rd: 2 / 24, 2.50 / 41.50, 1.50 / 27.50, 2.50 / 49.50,
    // 1.50 / 32.50, -3 / 41.
    let rows: [&[&str]; 7] = [
        &["", "Then", "Today", "Change"],
        &["Kale", "$24.00", "$26.00", "+8.3 %"],
        &["Lemons", "$41.50", "$44.00", "+6.0 %"],
        &["Cucumbers", "$27.50", "$29.00", "+5.5 %"],
        &["Ginger root", "$49.50", "$52.00", "+5.1 %"],
        &["Carrots", "$32.50", "$34.00", "+4.6 %"],
        &["Celery", "$41.00", "$38.00", "\u{2212}7.3 %"],
    ];
    journey.expect_rows("Prices", &rows).await;
    journey.choose_day(By::Label("Since"), "2026-11-23").await;
    journey.wait_for_text("No price of what you buy has changed since 23 Nov 2026, as far as the book knows.").await;
}

async fn hangs(journey: &Journey) {
    journey.click(By::Text("What the menu hangs on")).await;
    journey.expect_lines(By::Item("Carrots"), &["Carrots", "6.4 %"]).await;
    journey.wait_for_text("$102.79").await;
    journey.wait_for_text("\u{2212}$10.28").await;
    journey.screenshot("hangs_on").await;
}

/// 2.95 US gallons of 3785.411784 mL at 0.998 g/mL are 11144.63 g, or 24.5697 lb.
async fn weighed(journey: &Journey) {
    journey.go("#/buying/ingredient/7").await;
    journey.click(By::Text("Yield log: 6 weighings")).await;
    journey.wait_for_text("The weighing of 18 Nov 2026 stands apart").await;
    journey.enter(TRIMMED, "51").await;
    journey.click(By::Text("Write it down")).await;
    let bought = By::Label("Weighed in, as bought");
    journey.expect_error(bought, "Type what was weighed in as bought, such as 50 lb: a yield is a share of it.").await;
    journey.enter(bought, "50").await;
    let grown = "The weight after trimming is more than the weight before it: nothing grows by trimming or pressing. Weigh again.";
    journey.expect_error(TRIMMED, grown).await;
    journey.enter(TRIMMED, "44.6").await;
    journey.expect_error(TRIMMED, "").await;
    journey.enter(JUICE, "2.95 gal").await;
    journey.wait_for_text("Taken as 24.5697 lb of juice, by its density.").await;
    journey.choose_day(By::Label("Weighed on"), "2026-11-25").await;
    journey.click(By::Text("Write it down")).await;
    // 44.6 / 50; 24.5697 / 44.6.
    journey.wait_for_text("55.1 %").await;
    // Means of seven yields and Student's t with 6 degrees of freedom, by scipy.
    let told = [
        ("Mean", "89.1 % from 7 weighings"),
        ("True mean, likely within", "88.6 % to 89.6 %"),
        ("Mean", "53.2 % from 7 weighings"),
        ("True mean, likely within", "49.1 % to 57.2 %"),
    ];
    journey.expect_figures("What the weighings say", &told).await;
    journey.screenshot("yield_log").await;
}

/// The juice of the 18th was 24.2 lb, not 19.2.
async fn corrected(journey: &Journey) {
    journey.click(By::Label("Correct 18 Nov 2026")).await;
    journey.expect_value(JUICE, "19.2 lb").await;
    journey.enter(JUICE, "24.2").await;
    journey.click(By::Text("Correct it")).await;
    journey.wait_for_text_gone("stands apart").await;
    let told = [
        ("Mean", "89.1 % from 7 weighings"),
        ("True mean, likely within", "88.6 % to 89.6 %"),
        ("Mean", "54.8 % from 7 weighings"),
        ("True mean, likely within", "54.3 % to 55.3 %"),
    ];
    journey.expect_figures("What the weighings say", &told).await;
    journey.expect_value(JUICE, "").await;
}

/// 0.25 % more carrots for the same juice: 0.89 * 0.55 / (0.891 * 0.548).
async fn adopted(journey: &Journey) {
    journey.wait_for_text("6 sizes move: none falls under target.").await;
    journey.click(By::Text("Adopt")).await;
    journey.wait_for_text("The book has the yields that were weighed, to a tenth of a percent.").await;
    assert_eq!(journey.title_of_undo().await, "Undo: Adopt weighed yields");
    yields(journey, "89.1", "54.8").await;
    journey.go("#/book").await;
    journey.wait_for_text("Before weighed yields were adopted").await;
    journey.click(By::Text("Undo")).await;
    yields(journey, "89", "55").await;
    assert_eq!(journey.title_of_undo().await, "Undo: Correct a weighing");
}

async fn yields(journey: &Journey, trimmed: &str, pressed: &str) {
    journey.go("#/buying/ingredient/7").await;
    journey.expect_value(By::Label("Left after trimming"), trimmed).await;
    journey.expect_value(By::Label("Juice from what is trimmed"), pressed).await;
}
