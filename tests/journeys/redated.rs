//! The day of a price that was quoted is put right: the history stays in order, a day in the
//! future is asked about, and Undo takes it back.

use crate::harness::{By, Journey};

const ON: By<'_> = By::Label("Quoted on");

#[tokio::test]
async fn the_day_of_a_quoted_price_is_put_right() {
    let journey = Journey::start("redated").await;
    journey.open().await;
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.wait_for_text("Orchard Green").await;
    journey.go("#/buying/ingredient/1").await;
    journey.click(By::Nth(0, &By::Text("Prices heard"))).await;
    days(&journey, "23 Nov 2026; 9 Nov 2026; 26 Oct 2026; 12 Oct 2026; 21 Sep 2026").await;
    journey.click(By::Text("Change day of the price of 26 Oct 2026")).await;
    journey.expect_value(ON, "2026-10-26").await;
    set(&journey, "2026-11-09").await;
    journey
        .wait_for_text("A price of 9 Nov 2026 is there already. Choose another day, or take that price out first.")
        .await;
    // A day in the future is asked about.
    journey.choose_day(ON, "2026-12-24").await;
    journey.wait_for_text("24 Dec 2026 is in the future. Keep it, or go back?").await;
    journey.screenshot("asked").await;
    journey.click(By::Text("Back")).await;
    journey.expect_value(ON, "2026-11-09").await;
    journey.choose_day(ON, "2026-12-24").await;
    journey.click(By::Text("Keep")).await;
    journey.expect_value(ON, "2026-12-24").await;
    journey.click(By::Text("Set day")).await;
    journey.wait_for_text("The price you pay now is of 23 Nov 2026. Choose an earlier day.").await;
    set(&journey, "2026-10-01").await;
    days(&journey, "23 Nov 2026; 9 Nov 2026; 12 Oct 2026; 1 Oct 2026; 21 Sep 2026").await;
    assert_eq!(journey.title_of_undo().await, "Undo: Day of a price");
    // The price paid now, but not to before the one that it followed.
    journey.click(By::Text("Change day of the price of 23 Nov 2026")).await;
    set(&journey, "2026-11-08").await;
    journey
        .wait_for_text("The price before it is of 9 Nov 2026. Choose a later day, or take that price out first.")
        .await;
    set(&journey, "2026-11-20").await;
    days(&journey, "20 Nov 2026; 9 Nov 2026; 12 Oct 2026; 1 Oct 2026; 21 Sep 2026").await;
    journey.click(By::Text("Undo")).await;
    journey.click(By::Text("Undo")).await;
    days(&journey, "23 Nov 2026; 9 Nov 2026; 26 Oct 2026; 12 Oct 2026; 21 Sep 2026").await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

async fn set(journey: &Journey, day: &str) {
    journey.choose_day(ON, day).await;
    journey.click(By::Text("Set day")).await;
}

/// Waits until these are the days of the first pack's prices, the latest on top.
async fn days(journey: &Journey, days: &str) {
    let script = format!(
        "const heads = [...document.querySelector('.heard').querySelectorAll('tbody th')];
         return heads.map((head) => head.innerText.replaceAll('\\u00a0', ' ')).join('; ') === '{days}'"
    );
    journey.wait_until(&format!("the days {days}"), &script).await;
}
