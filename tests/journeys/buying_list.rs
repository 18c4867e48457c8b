//! The owner makes a list for tomorrow's batch of the demo book, ticks it off at the supplier's,
//! types what was paid, sends it, carries the price into the quotes, and is done.
//!
//! The expected figures were added up by hand from the demo's file: 86 bottles with cap and label
//! and 6 shots with theirs, each in packs of hundreds; the produce is here.

use crate::harness::{By, Journey};

const NO_SHARING: &str = "for (const name of ['share', 'clipboard'])
    Object.defineProperty(navigator, name, { value: undefined, configurable: true });
return true;";

/// Its words are only for those who cannot see the cross.
const TAKE_OUT: &str = "[...document.querySelectorAll('button')]
    .find((button) => button.textContent.trim() === 'Take out Shot label').click();
return true;";

#[tokio::test]
async fn a_list_is_made_ticked_off_and_done() {
    let journey = Journey::start("buying_list").await;
    journey.open().await;
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.wait_for_text("Orchard Green").await;
    make(&journey).await;
    work_it(&journey).await;
    share(&journey).await;
    carry(&journey).await;
    finish(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

async fn make(journey: &Journey) {
    journey.click(By::Text("Buying")).await;
    journey.click(By::Text("Buying list")).await;
    journey.choose_day(By::Label("Planned from"), "2026-11-26").await;
    // 46 + 58 + 42.50 + 16 + 36 + 30 for caps, labels, shot bottles, their caps and labels, bands.
    journey.expect_figures("What is missing", &[("To pay", "$228.50"), ("Lines", "6")]).await;
    journey
        .wait_for_text("86 ea needed, none counted here: 1 × 1,000 ea from Quillhaven Supply, 914 ea left over.")
        .await;
    journey.type_into(By::Label("And so many usual weeks"), "O").await;
    journey.expect_error(By::Label("And so many usual weeks"), "“O” is not a number. Type digits, such as 1.").await;
    journey.wait_for_text("Fix “And so many usual weeks” to see this.").await;
    journey.wait_for_text_gone("To pay").await;
    journey.type_into(By::Label("And so many usual weeks"), "0").await;
    journey.expect_figures("What is missing", &[("To pay", "$228.50"), ("Lines", "6")]).await;
    // Without the batch nothing is asked, so nothing is missing.
    journey.click(By::Text("Batch of 26 Nov 2026")).await;
    journey.wait_for_text_gone("To pay").await;
    journey.click(By::Text("Batch of 26 Nov 2026")).await;
    journey.click(By::Text("Make the list")).await;
    journey.wait_for_text("0 of 6 ticked").await;
}

async fn work_it(journey: &Journey) {
    journey.click(By::Label("Bottle cap 1 × 1,000 ea")).await;
    journey.wait_for_text("1 of 6 ticked").await;
    journey.wait_for_text("$228.50: $46.00 ticked, $182.50 left.").await;
    let paid = By::Label("Paid for one pack of Bottle cap");
    journey.type_into(paid, "5O").await;
    journey.expect_error(paid, "“5O” is not a number. Type digits, such as 9.50.").await;
    // No sum stands beside it.
    journey.wait_for_text_gone("ticked, $182.50 left.").await;
    journey.wait_for_text("Fix “Paid for one pack of Bottle cap” to see this.").await;
    journey.type_into(paid, "50.25").await;
    journey.expect_error(paid, "").await;
    journey.wait_for_text("$232.75: $50.25 ticked, $182.50 left.").await;
    // Two packs of labels, no shot labels, and mint by hand: + 58 - 36 + 9.50.
    journey.click(By::Text("Change Bottle label")).await;
    journey.enter(By::Label("Packs of Bottle label"), "0").await;
    journey.expect_error(By::Label("Packs of Bottle label"), "The number of packs must be more than zero.").await;
    journey.enter(By::Label("Packs of Bottle label"), "2").await;
    journey.wait_for_text("$290.75: $50.25 ticked, $240.50 left.").await;
    journey.click(By::Text("Change Shot label")).await;
    journey.wait_until("a way to take out shot labels", TAKE_OUT).await;
    journey.choose(By::Label("Add to the list"), "Mint, 1 lb from Tansywold Produce").await;
    journey.wait_for_text("1 of 6 ticked").await;
    journey.wait_for_text("$9.50: $0.00 ticked, $9.50 left.").await;
    journey.screenshot("worked").await;
    // It is kept.
    journey.open().await;
    journey.go("#/buying/list").await;
    journey.wait_for_text("1 of 6 ticked").await;
    journey.expect_value(paid, "50.25").await;
}

async fn share(journey: &Journey) {
    journey.wait_until("a browser that neither shares nor copies", NO_SHARING).await;
    journey.click(By::Text("Share as text")).await;
    journey
        .wait_for_text(
            "This browser neither shares nor copies by itself. The text stands below: select it and copy it.",
        )
        .await;
    let text = journey.value_of(By::Label("Buying list")).await;
    let lines: Vec<&str> = text.lines().skip(1).collect();
    let expected = [
        "",
        "Quillhaven Supply",
        "[x] Bottle cap, 1 × 1,000 ea",
        "[ ] Bottle label, 2 × 1,000 ea",
        "[ ] Shot bottle, 2 fl oz, 1 × 250 ea",
        "[ ] Shot cap, 1 × 500 ea",
        "[ ] Tamper band, 1 × 2,000 ea",
        "",
        "Tansywold Produce",
        "[ ] Mint, 1 × 1 lb",
    ];
    assert_eq!(lines, expected, "{text}");
}

async fn carry(journey: &Journey) {
    journey.wait_for_text("Bottle cap, 1,000 ea from Quillhaven Supply: $50.25 instead of $46.00").await;
    journey.click(By::Text("See what they move")).await;
    // Each of the 14 sizes of the menu in a bottle has a cap.
    journey.wait_for_text("1 price changes. 14 sizes move, none falls under target.").await;
    journey.click(By::Text("Carry the prices paid into the quotes")).await;
    journey.wait_for_text_gone("instead of $46.00").await;
    // The batch again, with the cap at its new price.
    journey.click(By::Text("Make another list")).await;
    journey.choose_day(By::Label("Planned from"), "2026-11-26").await;
    journey.expect_figures("What is missing", &[("To pay", "$232.75"), ("Lines", "6")]).await;
}

async fn finish(journey: &Journey) {
    journey
        .wait_for_text(
            "What is ticked, 1 line, is added to what is here; then the list is gone, with 5 lines that are not ticked. Undo takes all of it back.",
        )
        .await;
    journey.click(By::Text("Done with this list")).await;
    journey.wait_for_text("What is missing, in whole packs").await;
    journey.choose_day(By::Label("Planned from"), "2026-11-26").await;
    // A thousand caps are here now.
    journey.expect_figures("What is missing", &[("To pay", "$182.50"), ("Lines", "5")]).await;
    journey.click(By::Text("Undo")).await;
    journey.wait_for_text("1 of 6 ticked").await;
    journey.screenshot("back").await;
}
