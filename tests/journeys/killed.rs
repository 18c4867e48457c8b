//! The browser's process killed by SIGKILL, at once after "Saved".

use crate::harness::{By, Journey};

#[tokio::test]
async fn nothing_saved_is_lost_when_the_browser_is_killed() {
    let mut journey = Journey::start("killed").await;
    journey.open().await;
    journey.wait_until_kept_offline().await;
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.click(By::Text("Buying")).await;
    journey.close_site();

    // Each round: the goods, their new price, and those of the rounds before.
    let rounds = [
        ("Price of Apples", "41.37"),
        ("Price of Carrots", "29.80"),
        ("Price of Apples", "39.99"),
        ("Price of Ginger root", "61.25"),
        ("Price of Water", "0.01"),
    ];
    let mut kept: Vec<(&str, &str)> = Vec::new();
    for (goods, price) in rounds {
        journey.type_into(By::Label(goods), price).await;
        kept.retain(|(before, _)| *before != goods);
        kept.push((goods, price));
        // The first letters are saved on their own; the mark speaks for all of them.
        journey.wait_until_saved().await;
        journey.kill_browser();

        journey.start_browser().await;
        journey.open().await;
        open_the_book(&journey).await;
        journey.click(By::Text("Buying")).await;
        for (goods, price) in &kept {
            journey.expect_value(By::Label(goods), price).await;
        }
        // The rest of the demo book is there: as many as its file has.
        journey.expect_value(By::Label("Price of Oranges"), "33.00").await;
        // Of its 45 ingredients and 18 packagings the first 60 are listed.
        journey.expect_count(".price-row", 60).await;
        journey.click(By::Text("Drinks")).await;
        journey.expect_count(".card", 14).await;
        journey.click(By::Text("Buying")).await;
    }
}

/// Which book was open last is noted where the browser writes it seconds later: after a kill the
/// person may have to choose the book again, and nothing more.
async fn open_the_book(journey: &Journey) {
    journey
        .wait_until("a book, or the choice of one", "return !!document.querySelector('.bar, .welcome .books button')")
        .await;
    if journey.lines_of_each(".bar").await.is_empty() {
        journey.click(By::Text("Marrowgate Juice Hall invented data")).await;
    }
}
