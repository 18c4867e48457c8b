//! What was used is deducted from what is here.

use super::{counted, goods_of, needed, reaches};
use crate::book::{Book, Edit, Goods, Ingredient, OnHand, Packaging, Record};
use crate::drink::make::Needs;
use crate::drink::yields::YieldError;
use crate::foundation::measure::{Amount, Exact, Overflow};

/// Decimals of what is left on the shelf.
const LEFT_PLACES: u32 = 3;

/// What was used, as an edit that deducts it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Used {
    /// Deducts it.
    pub edit: Edit,
    /// From how many goods it deducts.
    pub taken: usize,
    /// The goods of which more was used than was counted; their count becomes zero.
    pub below: Vec<Goods>,
}

/// Deducts what was used from what was counted. Nothing goes below zero. What is left is rounded
/// down to the thousandth of its unit, and the day of the count stays. Goods that were not counted,
/// or whose use cannot be put in the unit of the count, stay as they are.
///
/// # Errors
/// [`Overflow`] if an amount leaves the range of [`Exact`].
pub fn used(book: &Book, needs: &Needs) -> Result<Used, Overflow> {
    let (mut edits, mut below) = (Vec::new(), Vec::new());
    for goods in goods_of(needs) {
        let (Some(counted), Some(on_hand)) = (counted(book, goods), book.on_hand(goods)) else { continue };
        let needed = match needed(book, needs, goods, counted.dimension) {
            Ok(needed) => needed,
            Err(YieldError::Arithmetic(overflow)) => return Err(overflow),
            Err(_) => continue,
        };
        if !reaches(needed, counted.here) {
            below.push(goods);
        }
        let unit = on_hand.amount.unit;
        let left = counted.here.minus(needed)?.max(Exact::ZERO).over(unit.size())?;
        let amount = Amount::new(down(left)?, unit);
        edits.extend(put(book, goods, Some(OnHand { amount, ..on_hand })));
    }
    Ok(Used { taken: edits.len(), edit: Edit::Together(edits), below })
}

/// Rounded down to [`LEFT_PLACES`] decimals. A number within half a billionth of the next step
/// counts as that step.
fn down(number: Exact) -> Result<Exact, Overflow> {
    let parts = Exact::new(10_i64.pow(LEFT_PLACES), 0);
    number.rounded(super::COMPARED.saturating_add(LEFT_PLACES)).times(parts)?.floor().over(parts)
}

/// The edit that sets what is here of goods. Returns `None` if the book does not have them.
pub fn put(book: &Book, goods: Goods, on_hand: Option<OnHand>) -> Option<Edit> {
    Some(Edit::Put(match goods {
        Goods::Ingredient(id) => Record::Ingredient(Ingredient { on_hand, ..book.ingredient(id)?.clone() }),
        Goods::Packaging(id) => Record::Packaging(Packaging { on_hand, ..book.packaging(id)?.clone() }),
    }))
}
