//! How many of one drink the stock makes.

use super::{counted, goods_of, needed, reaches};
use crate::book::{Book, Goods, OfferId};
use crate::drink::ledger::Ledger;
use crate::drink::make::{Unmade, needs};
use crate::drink::yields::YieldError;
use crate::foundation::measure::{Exact, Overflow};

/// How many of one drink in a size what is here makes, if it is used for nothing else.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Makes {
    /// How many: a whole number, 0 or more.
    pub count: Exact,
    /// What runs out first. Of goods that run out together, the first by id.
    pub runs_out: Goods,
    /// The goods it takes that were not counted.
    pub not_counted: Vec<Goods>,
}

/// Why there is no such number.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NotMade {
    /// It cannot be made.
    Unmade(Unmade),
    /// Nothing that it takes was counted.
    NothingCounted,
    /// What it takes of an ingredient cannot be put in the unit in which that was counted.
    Unknown(YieldError),
}

impl From<Overflow> for NotMade {
    fn from(overflow: Overflow) -> NotMade {
        NotMade::Unknown(YieldError::Arithmetic(overflow))
    }
}

/// How many of one drink in a size what is here makes, if it is used for nothing else.
///
/// # Errors
/// A [`NotMade`]: if the drink cannot be made, if nothing that it takes was counted, or if an amount
/// cannot be put in the unit of its count.
pub fn makes(book: &Book, ledger: &Ledger, offer: OfferId) -> Result<Makes, NotMade> {
    let one = needs(book, ledger, &mut std::iter::once((offer, Exact::ONE)))?;
    if let Some((_, unmade)) = one.left_out.first() {
        return Err(NotMade::Unmade(*unmade));
    }
    let mut not_counted = Vec::new();
    let mut least: Option<(Exact, Goods)> = None;
    for goods in goods_of(&one) {
        let Some(counted) = counted(book, goods) else {
            not_counted.push(goods);
            continue;
        };
        let each = needed(book, &one, goods, counted.dimension).map_err(NotMade::Unknown)?;
        if !each.is_positive() {
            continue;
        }
        let count = whole(counted.here, each)?;
        if least.is_none_or(|(fewest, _)| count < fewest) {
            least = Some((count, goods));
        }
    }
    let (count, runs_out) = least.ok_or(NotMade::NothingCounted)?;
    Ok(Makes { count, runs_out, not_counted })
}

/// How many times `each` fits into what is here.
fn whole(here: Exact, each: Exact) -> Result<Exact, Overflow> {
    let count = here.over(each)?.floor();
    let more = count.plus(Exact::ONE)?;
    Ok(if reaches(each.times(more)?, here) { more } else { count })
}
