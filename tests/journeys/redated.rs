//! The day of a price that was quoted is put right: the history stays in order, a day in the
//! future is asked about, and Undo takes it back.

use brimwright::{say, words};

use crate::entering;
use crate::harness::{By, Journey};
use crate::support::day;

fn quoted_on() -> By<'static> {
    By::Label(say!(market::quoted_on))
}

/// A day as it is shown.
fn shown(date: &str) -> String {
    words::day(day(date)).replace('\u{a0}', " ")
}

/// The label of what changes the day of a price.
fn change_date(date: &str) -> String {
    say!(market::change_date_of, price = say!(market::price_on, day = shown(date)))
}

#[tokio::test]
async fn the_day_of_a_quoted_price_is_put_right() {
    let journey = Journey::start("redated").await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    journey.go("#/buying/ingredient/1").await;
    entering::unfold(&journey, say!(market::price_history)).await;
    days(&journey, &["2026-11-23", "2026-11-09", "2026-10-26", "2026-10-12", "2026-09-21"]).await;
    journey.click(By::Label(&change_date("2026-10-26"))).await;
    journey.expect_value(quoted_on(), "2026-10-26").await;
    set(&journey, "2026-11-09").await;
    journey.wait_for_text(&say!(goods::day_taken, day = shown("2026-11-09"))).await;
    // A day in the future is asked about.
    journey.choose_day(quoted_on(), "2026-12-24").await;
    journey.wait_for_text(&say!(decide::date_ahead, date = shown("2026-12-24"))).await;
    journey.screenshot("asked").await;
    journey.click(By::Text(say!(book::back))).await;
    journey.expect_value(quoted_on(), "2026-11-09").await;
    journey.choose_day(quoted_on(), "2026-12-24").await;
    journey.click(By::Text(say!(book::keep))).await;
    journey.expect_value(quoted_on(), "2026-12-24").await;
    journey.click(By::Text(say!(market::set_date))).await;
    journey.wait_for_text(&say!(goods::day_too_late, day = shown("2026-11-23"))).await;
    set(&journey, "2026-10-01").await;
    days(&journey, &["2026-11-23", "2026-11-09", "2026-10-12", "2026-10-01", "2026-09-21"]).await;
    let undo = say!(first::undo_change, change = say!(market::change_quote_date));
    assert_eq!(journey.title_of_undo().await, undo);
    // The price paid now, but not to before the one that it followed.
    journey.click(By::Label(&change_date("2026-11-23"))).await;
    set(&journey, "2026-11-08").await;
    journey.wait_for_text(&say!(goods::day_too_early, day = shown("2026-11-09"))).await;
    set(&journey, "2026-11-20").await;
    days(&journey, &["2026-11-20", "2026-11-09", "2026-10-12", "2026-10-01", "2026-09-21"]).await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.click(By::Text(say!(first::undo))).await;
    days(&journey, &["2026-11-23", "2026-11-09", "2026-10-26", "2026-10-12", "2026-09-21"]).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

async fn set(journey: &Journey, day: &str) {
    journey.choose_day(quoted_on(), day).await;
    journey.click(By::Text(say!(market::set_date))).await;
}

/// Waits until these are the days of the first pack's prices, the latest on top.
async fn days(journey: &Journey, dates: &[&str]) {
    let days = dates.iter().map(|date| shown(date)).collect::<Vec<String>>().join("; ");
    let script = format!(
        "const heads = [...document.querySelector('.heard').querySelectorAll('tbody th')];
         return heads.map((head) => head.innerText.replaceAll('\\u00a0', ' ')).join('; ') === '{days}'"
    );
    journey.wait_until(&format!("the days {days}"), &script).await;
}
