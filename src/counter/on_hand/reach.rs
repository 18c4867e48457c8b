//! Whether what is here is enough.

use super::{counted, goods_of, needed, reaches};
use crate::book::{Book, Goods};
use crate::drink::make::Needs;
use crate::drink::yields::YieldError;
use crate::foundation::measure::{Amount, Exact, Overflow};

/// Goods that are needed, and whether there is enough of them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Reached {
    /// The goods.
    pub goods: Goods,
    /// Whether there is enough.
    pub reach: Reach,
}

/// Whether there is enough of something. Amounts are in the unit in which it was counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reach {
    /// Nobody counted it.
    NotCounted,
    /// There is enough, and this is left.
    Enough(Amount),
    /// This much is missing.
    Short(Amount),
    /// What is needed cannot be put in the unit in which it was counted.
    Unknown(YieldError),
}

/// Whether there is enough of each of the goods that are needed, ingredients first.
///
/// # Errors
/// [`Overflow`] if an amount leaves the range of [`Exact`].
pub fn reach(book: &Book, needs: &Needs) -> Result<Vec<Reached>, Overflow> {
    goods_of(needs).map(|goods| Ok(Reached { goods, reach: one(book, needs, goods)? })).collect()
}

fn one(book: &Book, needs: &Needs, goods: Goods) -> Result<Reach, Overflow> {
    let (Some(counted), Some(on_hand)) = (counted(book, goods), book.on_hand(goods)) else {
        return Ok(Reach::NotCounted);
    };
    let needed = match needed(book, needs, goods, counted.dimension) {
        Ok(needed) => needed,
        Err(YieldError::Arithmetic(overflow)) => return Err(overflow),
        Err(lacks) => return Ok(Reach::Unknown(lacks)),
    };
    let unit = on_hand.amount.unit;
    let amount = |base: Exact| Ok::<Amount, Overflow>(Amount::new(base.max(Exact::ZERO).over(unit.size())?, unit));
    Ok(if reaches(needed, counted.here) {
        Reach::Enough(amount(counted.here.minus(needed)?)?)
    } else {
        Reach::Short(amount(needed.minus(counted.here)?)?)
    })
}
