//! From one plan to another: what it earns more, what it ties up, and when it pays for itself.

use super::Plan;
use crate::book::ContainerId;
use crate::drink::ledger::Ledger;
use crate::foundation::measure::{Exact, Money, Overflow};

/// From one plan to another.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Change {
    /// What the other leaves more in a week, before what its further sizes cost to keep.
    pub more: Money,
    /// What its further sizes cost to keep in a week; below zero where it has fewer.
    pub keeping: Money,
    /// What it gains in a week: the one less the other.
    pub gain: Money,
    /// What it takes more in opening stock.
    pub stock: Money,
    /// When that is paid back.
    pub paid_back: PaidBack,
    /// The further size, if one further size is the whole difference.
    pub further: Option<Further>,
}

/// When more stock is paid back by what is gained.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PaidBack {
    /// It takes no more stock.
    Nothing,
    /// After so many weeks.
    After(Exact),
    /// Nothing is gained to pay it with.
    Never,
}

/// One size more.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Further {
    /// The size.
    pub size: ContainerId,
    /// What is lost in a week by sales that move to it, and by keeping it; below zero where
    /// moving gains.
    pub lost: Money,
    /// What is left of one drink in it, on average. It is `None` if no drink can be sold in it.
    pub each: Option<Money>,
    /// Extra weekly sales in it from which it pays for itself.
    pub pays: PaysFrom,
}

/// Extra weekly sales from which a size pays for itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PaysFrom {
    /// It does with none: nothing is lost by it.
    Already,
    /// From so many drinks a week.
    Drinks(Exact),
    /// It never does: nothing is left of a drink in it.
    Never,
}

/// What changes from one plan to another, where a further size costs `keeping` (0 or more) in a
/// week. `ledger` has what both would offer.
///
/// # Errors
/// [`Overflow`].
pub fn change(ledger: &Ledger, from: &Plan, to: &Plan, keeping: Money) -> Result<Change, Overflow> {
    let count = |plan: &Plan| Exact::from(u32::try_from(plan.sizes.len()).unwrap_or(u32::MAX));
    let more = to.totals.contribution.minus(from.totals.contribution)?;
    let keeping = keeping.times(count(to).minus(count(from))?)?;
    let gain = more.minus(keeping)?;
    let stock = to.totals.cash.minus(from.totals.cash)?;
    let paid_back = if !stock.is_positive() {
        PaidBack::Nothing
    } else if gain.is_positive() {
        PaidBack::After(stock.ratio_to(gain)?.as_part())
    } else {
        PaidBack::Never
    };
    let further = match one_more(from, to) {
        Some(size) => {
            let lost = keeping.minus(more)?;
            let each = each(ledger, to, size)?;
            Some(Further { size, lost, each, pays: pays(lost, each)? })
        }
        None => None,
    };
    Ok(Change { more, keeping, gain, stock, paid_back, further })
}

/// The one size that a plan has besides all those of another.
fn one_more(from: &Plan, to: &Plan) -> Option<ContainerId> {
    let all = from.sizes.iter().all(|size| to.sizes.contains(size));
    let mut more = to.sizes.iter().filter(|size| !from.sizes.contains(size));
    let first = more.next().filter(|_| all)?;
    more.next().is_none().then_some(*first)
}

fn pays(lost: Money, each: Option<Money>) -> Result<PaysFrom, Overflow> {
    match each {
        _ if !lost.is_positive() => Ok(PaysFrom::Already),
        Some(each) if each.is_positive() => Ok(PaysFrom::Drinks(lost.ratio_to(each)?.as_part())),
        _ => Ok(PaysFrom::Never),
    }
}

/// What is left of one drink in a size of a plan: by the plan's weekly numbers, or the plain mean
/// where none is sold.
fn each(ledger: &Ledger, plan: &Plan, size: ContainerId) -> Result<Option<Money>, Overflow> {
    let (mut left, mut weighed) = (Money::ZERO, Exact::ZERO);
    let in_it = || plan.offers.iter().filter(|offer| offer.container == size);
    let any = in_it().any(|offer| offer.weekly.is_some_and(Exact::is_positive));
    for offer in in_it() {
        let Some(Ok(priced)) = ledger.get(offer.id()) else { continue };
        let Some(asked) = priced.asked else { continue };
        let weight = if any { offer.weekly.unwrap_or(Exact::ZERO) } else { Exact::ONE };
        left = left.plus(asked.contribution.times(weight)?)?;
        weighed = weighed.plus(weight)?;
    }
    if weighed.is_zero() { Ok(None) } else { Ok(Some(left.over(weighed)?.as_part())) }
}
