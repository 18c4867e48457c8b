//! The large generated book, as the bench has it.

use brimwright::book::{Edit, Goods};
use brimwright::drink::ledger::Ledger;
use brimwright::foundation::measure::Money;

#[path = "../bench/generated.rs"]
#[allow(dead_code, reason = "shared with the benches, which use the rest")]
mod generated;

use crate::support::{exact, ingredient_id};

#[test]
fn one_price_in_a_large_book() {
    let mut book = generated::book();
    let mut ledger = Ledger::of(&book);
    assert_eq!(book.drinks().count() as u64, generated::DRINKS);
    assert_eq!(ledger.offers().filter(|(_, result)| result.is_ok()).count(), 1500);

    let goods = Goods::Ingredient(ingredient_id(generated::INGREDIENTS));
    let pack = &book.packs(goods)[0];
    let price = pack.price.plus(Money::from_major(exact("20"))).unwrap();
    let applied = book.apply(&Edit::SetPackPrice { goods, pack: pack.id, price, day: None }).unwrap();
    let moves = ledger.refresh(&book, &applied.touched);
    let uses =
        |drink: &&brimwright::book::Drink| drink.lines.iter().any(|line| Goods::Ingredient(line.ingredient) == goods);
    assert_eq!(moves.len(), generated::SIZES.len() * book.drinks().filter(uses).count());
    assert!(!moves.is_empty());
    assert_eq!(ledger, Ledger::of(&book));
}
