//! What a week brings with what is tried, and sizes sold in other shares.

use crate::book::{ContainerId, OfferId};
use crate::drink::ledger::Ledger;
use crate::drink::price::Hands;
use crate::foundation::measure::{Exact, Money, Overflow, Share};

/// What sales bring in a week.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Week {
    /// Drinks sold.
    pub units: Exact,
    /// What they bring: profit that changes with the number of drinks, so without overhead.
    pub profit: Money,
}

/// Why sizes cannot be sold in these shares.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MixError {
    /// The shares sum to more than the whole.
    OverTheWhole,
    /// Every size has a share, and they sum to less than the whole.
    UnderTheWhole,
    /// No weekly sales are known.
    NoSales,
}

/// What these sales bring at the prices and costs of a ledger. What it cannot compute or has no price for
/// brings nothing.
///
/// # Errors
/// [`Overflow`].
pub fn week(ledger: &Ledger, sales: &[(OfferId, Exact)]) -> Result<Week, Overflow> {
    let mut week = Week::default();
    for (offer, units) in sales {
        let Some(Ok(priced)) = ledger.get(*offer) else { continue };
        let Some(each) = priced.profit_that_changes(Hands::Counted)? else { continue };
        week.units = week.units.plus(*units)?;
        week.profit = week.profit.plus(each.times(*units)?)?;
    }
    week.profit = week.profit.as_part();
    Ok(week)
}

/// The same number of drinks sold in other shares of the sizes. A size with a share of its own sells that
/// much of all; the others share the rest as today. Within a size each drink keeps its share; in a size that
/// nobody buys today, drinks sell as they do in all sizes together.
///
/// # Errors
/// A [`MixError`], or an [`Overflow`].
pub fn mixed(
    sales: &[(OfferId, Exact)],
    mix: &[(ContainerId, Share)],
) -> Result<Result<Vec<(OfferId, Exact)>, MixError>, Overflow> {
    if mix.is_empty() {
        return Ok(Ok(sales.to_vec()));
    }
    let share_of = |id: ContainerId| mix.iter().find(|(of, _)| *of == id).map(|(_, share)| share.fraction());
    let sum = |keep: &dyn Fn(OfferId) -> bool| {
        let kept = sales.iter().filter(|(offer, _)| keep(*offer)).map(|(_, units)| *units);
        kept.into_iter().try_fold(Exact::ZERO, Exact::plus)
    };
    let all = sum(&|_| true)?;
    let others = sum(&|offer| share_of(offer.container).is_none())?;
    let there = |id: ContainerId| sales.iter().any(|(offer, _)| offer.container == id);
    let taken = mix.iter().filter(|(id, _)| there(*id)).map(|(_, share)| share.fraction());
    let taken = taken.into_iter().try_fold(Exact::ZERO, Exact::plus)?;
    if !all.is_positive() {
        return Ok(Err(MixError::NoSales));
    }
    if taken > Exact::ONE {
        return Ok(Err(MixError::OverTheWhole));
    }
    if taken < Exact::ONE && !others.is_positive() {
        return Ok(Err(MixError::UnderTheWhole));
    }
    let rest = Exact::ONE.minus(taken)?;
    let mut then = Vec::with_capacity(sales.len());
    for (offer, units) in sales {
        let now = match share_of(offer.container) {
            None => all.times(rest)?.times(*units)?.over(others)?,
            Some(share) => {
                let here = sum(&|other| other.container == offer.container)?;
                let (part, whole) = if here.is_positive() {
                    (*units, here)
                } else {
                    let drinks = |other: OfferId| {
                        sales.iter().any(|(of, _)| of.container == offer.container && of.drink == other.drink)
                    };
                    (sum(&|other| other.drink == offer.drink)?, sum(&drinks)?)
                };
                if whole.is_positive() { all.times(share)?.times(part)?.over(whole)? } else { Exact::ZERO }
            }
        };
        then.push((*offer, now.as_part()));
    }
    Ok(Ok(then))
}
