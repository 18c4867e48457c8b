//! Which ways to a target stand first: those that an owner would try.

use std::collections::BTreeMap;

use super::{Lever, Way, ways};
use crate::book::{Book, Goods, IngredientId, Key, OfferId};
use crate::drink::cost::Cost;
use crate::drink::ledger::{OfferError, price_offer};
use crate::foundation::measure::{Exact, Money};

/// How many stand first.
const FIRST: usize = 3;

/// The largest change that is practical: a quarter.
const LARGEST: Exact = Exact::new(25, 2);

/// The largest change that can be thought of: a half. Nobody gets a case for a tenth of its price. Our own choice, no
/// source.
const LARGEST_OF_ALL: Exact = Exact::new(5, 1);

/// The ways to a target, the practical ones apart.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Ways {
    /// Up to three, the menu price ahead, then the fill, then the case price of the ingredient that
    /// costs most, then the smallest changes. Each closes the gap by at most a quarter and breaks no
    /// labeled size.
    pub practical: Vec<Way>,
    /// The others that close the gap by at most a half, and the menu price by as much as it takes, in the order of [`ways`]. What does not close it is no way.
    pub others: Vec<Way>,
}

/// The ways of an offer under its target. Empty for an offer on target or without a price.
///
/// # Errors
/// The [`OfferError`] of an offer that cannot be computed, or is not there.
pub fn practical_ways(book: &Book, offer: OfferId) -> Result<Ways, OfferError> {
    let mut others = ways(book, offer)?;
    let kept = book.offer(offer).ok_or(OfferError::Missing(Key::Offer(offer)))?;
    let dearest = dearest(&price_offer(book, kept)?.cost);
    let place = |way: &Way| match way.lever {
        Lever::MenuPrice(_) => 0,
        Lever::Fill(_) => 1,
        Lever::PackPrice(goods) if Some(goods) == dearest.map(Goods::Ingredient) => 2,
        _ => 3,
    };
    let mut found: Vec<(usize, usize)> = others
        .iter()
        .enumerate()
        .filter(|(_, way)| is_practical(way, book))
        .map(|(number, way)| (place(way), number))
        .collect();
    found.sort_unstable();
    found.truncate(FIRST);
    let practical = found.iter().filter_map(|(_, number)| others.get(*number).cloned()).collect();
    let mut number = 0..;
    others.retain(|way| {
        let number = number.next();
        is_thinkable(way) && found.iter().all(|(_, practical)| Some(*practical) != number)
    });
    Ok(Ways { practical, others })
}

/// Whether anybody would think of it: a menu price is the owner's own to set, also by more than a half.
fn is_thinkable(way: &Way) -> bool {
    let ours = matches!(way.lever, Lever::MenuPrice(_)) && way.closes.is_ok();
    ours || changes_at_most(way, LARGEST_OF_ALL)
}

/// Whether it closes the gap, by no more than this.
fn changes_at_most(way: &Way, most: Exact) -> bool {
    way.change().is_some_and(|change| change.fraction().abs() <= most)
}

fn is_practical(way: &Way, book: &Book) -> bool {
    changes_at_most(way, LARGEST) && way.under_declared(book).is_none()
}

/// The ingredient that costs most in a drink.
fn dearest(cost: &Cost) -> Option<IngredientId> {
    let mut sums: BTreeMap<IngredientId, Money> = BTreeMap::new();
    for line in &cost.lines {
        let sum = sums.entry(line.ingredient).or_insert(Money::ZERO);
        *sum = sum.plus(line.cost).unwrap_or(*sum);
    }
    sums.into_iter().max_by_key(|(_, sum)| *sum).map(|(ingredient, _)| ingredient)
}
