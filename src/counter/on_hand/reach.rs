//! Whether what is here reaches.

use super::{counted, goods_of, needed, reaches};
use crate::book::{Book, Goods};
use crate::drink::make::Needs;
use crate::drink::yields::YieldError;
use crate::foundation::measure::{Amount, Exact, Overflow};

/// Whether what is here of goods reaches.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Reached {
    /// What is needed.
    pub goods: Goods,
    /// Whether it reaches.
    pub reach: Reach,
}

/// Whether it reaches, in the unit that it was counted in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reach {
    /// Nobody counted it.
    NotCounted,
    /// It reaches, and this is left.
    Enough(Amount),
    /// This much is lacking.
    Short(Amount),
    /// What is needed cannot be put in the unit of the count.
    Unknown(YieldError),
}

/// Whether what is here reaches, for each of the goods that are needed, ingredients first.
///
/// # Errors
/// [`Overflow`].
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
    Ok(match reaches(needed, counted.here) {
        true => Reach::Enough(amount(counted.here.minus(needed)?)?),
        false => Reach::Short(amount(needed.minus(counted.here)?)?),
    })
}
