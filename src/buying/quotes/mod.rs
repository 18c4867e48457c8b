//! What suppliers quote: packs beside each other by what a usable amount costs out of them, how old a
//! price is, and goods found by a few letters.
//!
//! Packs of one ingredient are compared after yields, by what the same [`Usable`] amount costs out of each
//! ([`crate::drink::cost::usable_cost`]); packs of packaging by the piece.
//!
//! ```text
//! above_cheapest = cost / cost out of the cheapest - 1
//! ```
//!
//! By hand: of a case of 40 lb at 38.00 a pound costs 0.95, of a bag of 25 lb at 25.00 it costs 1.00: the bag
//! costs 5.26 % more. At a trim yield of 0.9 both costs are divided by it, and the share is the same.
//! `tests/reference/quotes.rs` compares with printed costs of edible cups.
//!
//! A price is old if it was heard more days ago than the owner's limit; without a limit none is.

mod age;
mod find;
mod history;
mod usable;

pub use age::{Age, age};
pub use find::{Found, find};
pub use history::{History, history};
pub use usable::{Usable, usable};

use crate::book::{Book, Goods, Pack, PackId};
use crate::drink::cost::{CostError, bought_cost, usable_cost};
use crate::foundation::in_order;
use crate::foundation::measure::{Exact, Money, Share};

/// A pack beside others of the same goods.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Compared {
    /// The pack.
    pub pack: PackId,
    /// What the usable amount of [`usable`] costs out of it, in the book's currency: its price as
    /// it is bought now with delivery and deposit, after yields. Or why that is not known.
    pub cost: Result<Money, CostError>,
    /// How much more that is than the cheapest, as a fraction of it. It is `None` if the cheapest
    /// is free or this one has no cost.
    pub above_cheapest: Option<Share>,
}

/// The packs of `goods`, the cheapest first. Packs that cost alike stay in the order of the book;
/// those that cannot be compared come last.
pub fn compared(book: &Book, goods: Goods) -> Vec<Compared> {
    let mut all: Vec<Compared> = Vec::new();
    let per = usable(book, goods);
    for pack in book.packs(goods) {
        let this = Compared { pack: pack.id, cost: cost_of(book, goods, pack, per), above_cheapest: None };
        in_order::insert(&mut all, this, |other, this| match (&other.cost, &this.cost) {
            (Ok(other), Ok(cost)) => other <= cost,
            (other, cost) => other.is_ok() || cost.is_err(),
        });
    }
    let cheapest = all.first().and_then(|first| first.cost.ok());
    for one in &mut all {
        one.above_cheapest = one.cost.ok().zip(cheapest).and_then(|(cost, cheapest)| more(cheapest, cost));
    }
    all
}

/// What a usable amount of `goods` costs out of a pack that is, or was, one of theirs.
///
/// # Errors
/// What the goods lack.
pub fn cost_of(book: &Book, goods: Goods, pack: &Pack, per: Usable) -> Result<Money, CostError> {
    match goods {
        Goods::Ingredient(id) => {
            let ingredient = book.ingredient_now(id).ok_or(CostError::Missing(goods.into()))?;
            usable_cost(&ingredient, pack, per.stage, per.amount.measure()?)
        }
        Goods::Packaging(_) => Ok(bought_cost(pack, Exact::ONE)?),
    }
}

/// How much more `to` is than `from`, as a fraction of it: below zero where it is less. Returns
/// `None` if nothing was paid.
pub fn more(from: Money, to: Money) -> Option<Share> {
    let change = to.minus(from).ok()?.ratio_to(from).ok()?;
    Some(Share::from_fraction(change.as_part()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Ingredient, Record, Stage, Tier};
    use crate::drink::yields::YieldError;
    use crate::support::{
        amount, book, density, exact, grams, ingredient, ingredient_id, money, pack, pack_id, packaging_id, settings,
        share, vessel,
    };

    fn apples() -> Goods {
        Goods::Ingredient(ingredient_id(1))
    }

    fn of(ingredient: Ingredient) -> Book {
        book(settings(), [Record::Ingredient(ingredient)])
    }

    fn order(book: &Book, goods: Goods) -> Vec<(PackId, Result<Money, CostError>)> {
        compared(book, goods).into_iter().map(|one| (one.pack, one.cost)).collect()
    }

    #[test]
    fn delivery_and_tiers_decide_with() {
        // A lb out of each, by hand: (20 + 2) / 10 = 2.20; 21 / 10 = 2.10; at five at a time
        // (19 + 1.5) / 10 = 2.05.
        let delivered = Pack { surcharge: money("2"), ..pack(1, "10 lb", "20") };
        let tiers = vec![Tier { from: exact("5"), price: money("19") }];
        let many = Pack { at_a_time: exact("5"), tiers, surcharge: money("1.5"), ..pack(3, "10 lb", "25") };
        let book = of(ingredient(1, [delivered, pack(2, "10 lb", "21"), many]));
        let expected = [(3, "2.05"), (2, "2.1"), (1, "2.2")].map(|(id, cost)| (pack_id(id), Ok(money(cost))));
        assert_eq!(order(&book, apples()), expected);
        // 2.10 / 2.05 and 2.20 / 2.05, less one.
        let above_cheapest: Vec<Option<Share>> =
            compared(&book, apples()).into_iter().map(|one| one.above_cheapest).collect();
        let expected = ["0", "0.024390243902", "0.073170731707"].map(|fraction| Some(share(fraction)));
        assert_eq!(above_cheapest, expected);
    }

    #[test]
    fn packs_by_weight_volume_and_piece_meet() {
        // 0.8 g/mL, 200 g a piece, half is left: a trimmed lb is 907.18474 g bought, for which
        // 907.18474 / 1000 kg at 4.00, 1.133980925 L at 3.00 and 4.5359237 pieces at 0.90 are paid.
        let mixed = Ingredient {
            trim_yield: share("0.5"),
            density: Some(density("0.8")),
            piece_weight: Some(grams("200")),
            ..ingredient(1, [pack(1, "5 ea", "4.5"), pack(2, "1 kg", "4"), pack(3, "1 L", "3")])
        };
        let book = of(mixed);
        assert_eq!(usable(&book, apples()), Usable { stage: Stage::Trimmed, amount: amount("1 lb") });
        let expected = [(3, "3.401942775"), (2, "3.62873896"), (1, "4.08233133")];
        assert_eq!(order(&book, apples()), expected.map(|(id, cost)| (pack_id(id), Ok(money(cost)))));
    }

    #[test]
    fn what_cannot_be_compared_stands_last_and_says_why() {
        let lacks = |error| Err(CostError::Yield(error));
        let bare = Ingredient {
            density: None,
            ..ingredient(1, [pack(1, "1 L", "3"), pack(2, "5 ea", "1"), pack(3, "1 lb", "4"), pack(4, "2 lb", "6")])
        };
        let book = of(bare);
        let expected = [
            (pack_id(4), Ok(money("3"))),
            (pack_id(3), Ok(money("4"))),
            (pack_id(1), lacks(YieldError::NoDensity(ingredient_id(1)))),
            (pack_id(2), lacks(YieldError::NoPieceWeight(ingredient_id(1)))),
        ];
        assert_eq!(order(&book, apples()), expected);
        assert_eq!(compared(&book, apples())[2].above_cheapest, None);
    }

    #[test]
    fn packaging_is_compared_by_the_piece_and_equals_stay_in_their_order() {
        let bottles = vessel(1, [pack(1, "100 ea", "20"), pack(2, "50 ea", "10"), pack(3, "10 ea", "1.9")]);
        let book = book(settings(), [Record::Packaging(bottles)]);
        let goods = Goods::Packaging(packaging_id(1));
        let expected = [(3, "0.19"), (1, "0.2"), (2, "0.2")].map(|(id, cost)| (pack_id(id), Ok(money(cost))));
        assert_eq!(order(&book, goods), expected);
    }

    #[test]
    fn what_is_free_and_what_has_no_pack_compare_to_nothing() {
        let book = of(ingredient(1, [pack(1, "1 lb", "2"), pack(2, "1 lb", "0")]));
        let found: Vec<_> = compared(&book, apples()).into_iter().map(|one| (one.pack, one.above_cheapest)).collect();
        assert_eq!(found, [(pack_id(2), None), (pack_id(1), None)]);
        assert_eq!(compared(&of(ingredient(1, [])), apples()), []);
        assert_eq!(compared(&book, Goods::Packaging(packaging_id(9))), []);
    }

    #[test]
    fn a_change_is_a_fraction_of_what_was_paid() {
        assert_eq!(more(money("40"), money("50")), Some(share("0.25")));
        assert_eq!(more(money("40"), money("30")), Some(share("-0.25")));
        assert_eq!(more(money("0"), money("30")), None);
    }
}
