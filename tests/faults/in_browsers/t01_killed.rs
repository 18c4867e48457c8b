//! T1: the browser's process killed by SIGKILL at once after "Saved": nothing that was called saved is lost, and every
//! book opens.

use std::collections::BTreeMap;

use brimwright::say;

use super::every_price;
use crate::harness::{By, Engine, Journey, in_each_engine};
use crate::support::runs::Runs;

in_each_engine!(
    t01_nothing_saved_is_lost,
    not WebKit: "the browser of WebKitGTK keeps nothing on the disk while it is driven"
);

/// Goods whose prices are typed, one after the other.
const GOODS: [&str; 5] = ["Apples", "Carrots", "Ginger root", "Oranges", "Water"];

async fn t01_nothing_saved_is_lost(engine: Engine) {
    let mut runs = Runs::of("T1");
    let mut journey = Journey::start_in(engine, "killed").await;
    journey.open().await;
    journey.wait_until_kept_offline().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.click(By::Text(say!(first::buying))).await;
    every_price(&journey).await;
    journey.close_site();

    let mut kept: BTreeMap<&str, String> = BTreeMap::new();
    let mut goods = GOODS.iter().cycle();
    for round in 0..Runs::asked_for(4) {
        runs.begin();
        let goods = goods.next().expect("they begin again");
        // From 20.01 up: near enough to what was asked before, so that nothing is asked about.
        let price = format!("{}.{:02}", 20 + round % 40, 1 + round % 99);
        journey.type_into(By::Label(&say!(market::price_of, name = *goods)), &price).await;
        kept.insert(goods, price);
        // The first letters are saved on their own; the mark speaks for all of them.
        journey.wait_until_saved().await;
        journey.kill_browser();

        journey.start_browser().await;
        journey.open().await;
        open_the_book(&journey).await;
        journey.click(By::Text(say!(first::buying))).await;
        every_price(&journey).await;
        for (goods, price) in &kept {
            journey.expect_value(By::Label(&say!(market::price_of, name = *goods)), price).await;
        }
        // The rest of the demo book is there: 64 packs of its goods are bought now, 13 are quoted besides.
        journey.expect_count(".price-row", 77).await;
        journey.click(By::Text(say!(first::drinks))).await;
        journey.expect_count(".menu tbody tr", 14).await;
        journey.click(By::Text(say!(first::buying))).await;
        every_price(&journey).await;
        runs.held();
    }
}

/// Which book was open last is noted where the browser writes it seconds later: after a kill the
/// person may have to choose the book again, and nothing more.
async fn open_the_book(journey: &Journey) {
    journey
        .wait_until("a book, or the choice of one", "return !!document.querySelector('.bar, .welcome .books button')")
        .await;
    if journey.lines_of_each(".bar").await.is_empty() {
        journey.click(By::Item("Marrowgate Juice Hall")).await;
    }
}
