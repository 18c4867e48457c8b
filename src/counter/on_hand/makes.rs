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
    /// How many.
    pub count: Exact,
    /// What runs out first; of several that run out together, the first by id.
    pub runs_out: Goods,
    /// What it takes that was not counted.
    pub not_counted: Vec<Goods>,
}

/// Why there is no such number.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NotMade {
    /// It cannot be made.
    Unmade(Unmade),
    /// Nothing that it takes was counted.
    NothingCounted,
    /// What it takes cannot be put in the unit of the count.
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
/// [`NotMade`].
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

/// How many of `each` what is here reaches for.
pub(super) fn whole(here: Exact, each: Exact) -> Result<Exact, Overflow> {
    let count = here.over(each)?.floor();
    let more = count.plus(Exact::ONE)?;
    Ok(if reaches(each.times(more)?, here) { more } else { count })
}
