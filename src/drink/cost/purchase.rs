//! What a usable amount costs: paid * bought / contents.

use super::CostError;
use crate::book::{Goods, Ingredient, Pack, Packaging, Stage};
use crate::drink::yields::{self, Bought};
use crate::foundation::measure::{Exact, Measure, Money, Overflow};

/// What is paid for a pack as it is bought: the price of its tier, and the surcharge.
///
/// # Errors
/// [`Overflow`].
pub fn paid(pack: &Pack) -> Result<Money, Overflow> {
    pack.price_now().plus(pack.surcharge)
}

/// What is paid for so many packs bought at a time: the price for so many, and the surcharge of
/// each.
///
/// # Errors
/// [`Overflow`].
pub fn paid_for(pack: &Pack, packs: Exact) -> Result<Money, Overflow> {
    paid_each(pack.price_at(packs), pack.surcharge, packs)
}

/// What is paid for so many packs, of which each costs so much and its surcharge.
///
/// # Errors
/// [`Overflow`].
pub fn paid_each(price: Money, surcharge: Money, packs: Exact) -> Result<Money, Overflow> {
    price.plus(surcharge)?.times(packs)
}

/// The cost of an amount bought out of a pack, in the pack's own dimension (base unit).
///
/// # Errors
/// [`Overflow`], also for a pack without contents.
pub fn bought_cost(pack: &Pack, bought: Exact) -> Result<Money, Overflow> {
    cost_out_of(pack, Bought { dividend: bought, divisor: Exact::ONE })
}

/// Multiplied before it is divided, divided once, rounded once.
fn cost_out_of(pack: &Pack, bought: Bought) -> Result<Money, Overflow> {
    let contents = pack.contents.measure()?.base();
    Ok(paid(pack)?.times(bought.dividend)?.over(contents.times(bought.divisor)?)?.as_part())
}

/// The cost of an amount of `ingredient` meant at `stage`, bought in `pack`.
///
/// # Errors
/// What the ingredient lacks.
///
/// ```
/// # use brimwright::{book::*, drink::cost::usable_cost, foundation::measure::*};
/// // A case of apples, 40 lb for 38.00, 90 % left after trimming: 38 / (40 * 0.9) a pound.
/// let exact = |text| Exact::from_plain(text, 6).unwrap_or_default();
/// let apples: Ingredient = serde_json::from_str(
///     r#"{"id": "a1", "name": "Apples", "trim-yield": "0.9",
///         "packs": [{"id": "1", "contents": "40 lb", "price": "38"}]}"#,
/// )
/// .map_err(|_| "a valid ingredient")?;
/// let pound = Amount::new(Exact::ONE, Unit::Pound).measure().map_err(|_| "small")?;
/// let cost = usable_cost(&apples, &apples.packs[0], Stage::Trimmed, pound);
/// assert_eq!(cost, Ok(Money::from_major(Exact::new(1_055_555_555_556, 12))));
/// # Ok::<(), &'static str>(())
/// ```
pub fn usable_cost(ingredient: &Ingredient, pack: &Pack, stage: Stage, amount: Measure) -> Result<Money, CostError> {
    let bought = yields::bought_for(ingredient, stage, amount, pack.contents.unit.dimension())?;
    Ok(cost_out_of(pack, bought)?)
}

/// The cost of `count` pieces of packaging from the pack that it is bought in now.
///
/// # Errors
/// [`CostError::NoPack`] where it has none.
pub fn piece_cost(packaging: &Packaging, count: Exact) -> Result<Money, CostError> {
    let pack = packaging.packs.first().ok_or(CostError::NoPack(Goods::Packaging(packaging.id)))?;
    Ok(bought_cost(pack, count)?)
}
