//! What was used is taken off the shelf.

use super::{counted, goods_of, needed, reaches};
use crate::book::{Book, Edit, Goods, OnHand, Record};
use crate::drink::make::Needs;
use crate::drink::yields::YieldError;
use crate::foundation::measure::{Amount, Exact, Overflow};

/// Decimals of what is left on the shelf.
const LEFT_PLACES: u32 = 3;

/// What taking off the shelf comes to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Used {
    /// Takes it off.
    pub edit: Edit,
    /// How many goods are taken off.
    pub taken: usize,
    /// Of which more was used than was counted: nothing is left of them.
    pub below: Vec<Goods>,
}

/// Takes what was used off what was counted; nothing goes below zero. What is left is written down
/// to the thousandth of its unit, never more than there is. The day of the count stays. What was
/// not counted, or cannot be put in the unit of the count, stays as it is.
///
/// # Errors
/// [`Overflow`].
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

/// Down to so many decimals; a billionth under a step counts as the step.
fn down(number: Exact) -> Result<Exact, Overflow> {
    let parts = Exact::new(10_i64.pow(LEFT_PLACES), 0);
    number.rounded(super::COMPARED.saturating_add(LEFT_PLACES)).times(parts)?.floor().over(parts)
}

/// The edit that writes what is here of goods.
pub fn put(book: &Book, goods: Goods, on_hand: Option<OnHand>) -> Option<Edit> {
    Some(Edit::Put(match goods {
        Goods::Ingredient(id) => {
            Record::Ingredient(crate::book::Ingredient { on_hand, ..book.ingredient(id)?.clone() })
        }
        Goods::Packaging(id) => Record::Packaging(crate::book::Packaging { on_hand, ..book.packaging(id)?.clone() }),
    }))
}
