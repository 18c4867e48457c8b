use super::*;
use crate::foundation::measure::Money;

/// What the first pack of carrots cost before today's steps, where nobody had dated it.
fn before(tab: &Tab, since: u64) -> Option<Money> {
    tab.history.borrow().undated_price(Goods::Ingredient(ingredient_id(CARROT)), pack_id(1), since)
}

fn quoted(price: &str) -> Edit {
    Edit::SetPackPrice {
        goods: Goods::Ingredient(ingredient_id(CARROT)),
        pack: pack_id(1),
        price: money(price),
        day: Some(crate::support::day("2026-11-26")),
    }
}

#[test]
fn the_first_step_of_a_day_knows_a_price_that_nobody_had_dated() {
    let storage = storage();
    let tab = Tab::open(&storage, 1);
    assert_eq!(before(&tab, NOON), None);
    tab.apply("Price of Carrots", &quoted("31"));
    tab.apply("Price of Carrots", &quoted("32"));
    assert_eq!(before(&tab, NOON), Some(money("30")));
    assert_eq!(before(&tab, NOON + 3_600_000), None, "nothing since then");
    tab.undo();
    assert_eq!(before(&tab, NOON), Some(money("30")));
    tab.undo();
    assert_eq!(before(&tab, NOON), None);
    // From yesterday the price has a day: the book itself keeps the one before.
    tab.redo();
    storage.run();
    let again = Tab::open(&storage, 2);
    again.now.set(NOON + 86_400_000);
    again.apply("Price of Carrots", &quoted("35"));
    assert_eq!(before(&again, NOON + 86_400_000), Some(money("31")));
    assert_eq!(before(&again, NOON), Some(money("30")));
}
