//! T3: three tabs of a browser, edited in any order: every edit is in all of them and in the store. (Edits of one field
//! in several tabs at once, and large numbers of edits, are tried natively beside the store.)

use std::collections::BTreeMap;

use brimwright::say;

use super::{demo, every_price};
use crate::harness::{By, Engine, in_each_engine};
use crate::support::dice::Dice;
use crate::support::runs::Runs;

in_each_engine!(t03_every_edit_is_in_every_tab);

const GOODS: [&str; 6] = ["Apples", "Carrots", "Ginger root", "Oranges", "Water", "Lemons"];
const TABS: usize = 3;

async fn t03_every_edit_is_in_every_tab(engine: Engine) {
    let mut runs = Runs::of("T3");
    let mut dice = Dice::new(26);
    let journey = demo(engine, "tabs_at_random").await;
    journey.go("#/buying").await;
    every_price(&journey).await;
    for _ in 1..TABS {
        journey.open_another_tab().await;
        journey.go("#/buying").await;
        every_price(&journey).await;
    }
    let mut prices: BTreeMap<&str, String> = BTreeMap::new();
    let mut changed_in: BTreeMap<&str, usize> = BTreeMap::new();
    for round in 0..Runs::asked_for(12) {
        runs.begin();
        let tab = dice.below(TABS as u64) as usize;
        let goods = GOODS[dice.below(GOODS.len() as u64) as usize];
        let price = format!("{}.{:02}", 30 + round % 30, 1 + round % 99);
        journey.use_tab(tab).await;
        let field = say!(market::price_of, name = goods);
        // Two tabs that change one field at one time ask the person; that is tried elsewhere.
        if let Some(before) = prices.get(goods).filter(|_| changed_in.get(goods) != Some(&tab)) {
            journey.expect_value(By::Label(&field), before).await;
        }
        journey.enter(By::Label(&field), &price).await;
        prices.insert(goods, price);
        changed_in.insert(goods, tab);
        runs.held();
    }
    for tab in 0..TABS {
        journey.use_tab(tab).await;
        for (goods, price) in &prices {
            journey.expect_value(By::Label(&say!(market::price_of, name = *goods)), price).await;
        }
        journey.wait_until_saved().await;
    }
    journey.open().await;
    journey.go("#/buying").await;
    every_price(&journey).await;
    for (goods, price) in &prices {
        journey.expect_value(By::Label(&say!(market::price_of, name = *goods)), price).await;
    }
}
