//! The best use of what is here when drinks share it.

use super::integer_program::{Constraint, IntegerProgram};
use super::makes::{NotMade, makes};
use super::{COMPARED, counted, goods_of, needed, reaches};
use crate::book::{Book, Goods, OfferId};
use crate::drink::ledger::Ledger;
use crate::drink::make::{Needs, Unmade, needs};
use crate::drink::yields::YieldError;
use crate::foundation::in_order;
use crate::foundation::measure::{Amount, Exact, Money, Overflow, PART_PLACES};

/// Nodes that the search explores before it returns the best that it found.
const NODE_LIMIT: u32 = 10_000;
/// Added to what is here, in parts of 10^-12. Amounts are compared to the millionth, so that up to
/// half a millionth more still counts as enough; the rest is for the rounding of what each drink
/// takes.
const TOLERANCE: i128 = 490_000;

/// How many of a drink in a size are wished for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wish {
    /// The drink and size.
    pub offer: OfferId,
    /// At least so many must be made: a whole number, 0 or more.
    pub least: Exact,
    /// At most so many: a whole number. Without one, as many as what is here makes.
    pub most: Option<Exact>,
}

/// The best use of what is here.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct BestUse {
    /// How many of each, in the order of the wishes.
    pub counts: Vec<(OfferId, Exact)>,
    /// What is not enough for all that is wished for, and what is left of it.
    pub scarce: Vec<Scarce>,
    /// Whether no other choice is better. If not, this is the best that was found within the limit
    /// of the search.
    pub proved: bool,
    /// Whether the most drinks were sought, not the most contribution: none of them has a price.
    pub by_number: bool,
    /// Drinks that have no price, or bring no contribution. They are made of what the others leave.
    pub for_nothing: Vec<OfferId>,
    /// Drinks of which none can be made, since this is used up. Only where the wish names no number.
    pub out: Vec<(OfferId, Goods)>,
    /// Drinks that cannot be made, and why.
    pub left_out: Vec<(OfferId, Unmade)>,
    /// Drinks without a limit: nothing that they take was counted, and the wish names no number.
    pub endless: Vec<OfferId>,
}

/// Goods of which there is not enough.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Scarce {
    /// What it is.
    pub goods: Goods,
    /// What is left of it, in the unit of the count.
    pub left: Amount,
}

/// Why there is no best use.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stopped {
    /// The least that must be made takes more of this than is here.
    LeastTooMany(Goods),
    /// What is needed of an ingredient cannot be put in the unit in which it was counted.
    Unknown(YieldError),
    /// The numbers leave the range that can be computed.
    Arithmetic(Overflow),
}

impl From<Overflow> for Stopped {
    fn from(overflow: Overflow) -> Stopped {
        Stopped::Arithmetic(overflow)
    }
}

impl From<YieldError> for Stopped {
    fn from(error: YieldError) -> Stopped {
        match error {
            YieldError::Arithmetic(overflow) => Stopped::Arithmetic(overflow),
            lacks => Stopped::Unknown(lacks),
        }
    }
}

/// A drink that can be made, with what one of it needs.
struct Candidate {
    offer: OfferId,
    least: Exact,
    most: Exact,
    needs: Needs,
}

/// The counts that bring the most contribution with what is here, or the most drinks if none of
/// them has a price. A drink whose contribution is zero or less counts as worth nothing, and is
/// made of what the others leave. Of counts that bring the same, the one with more of the earlier
/// wishes is taken.
///
/// # Errors
/// A [`Stopped`]: if the least that must be made takes more than is here, if an amount cannot be put
/// in the unit of its count, or on overflow.
pub fn best_use(book: &Book, ledger: &Ledger, wishes: &[Wish]) -> Result<BestUse, Stopped> {
    let mut best = BestUse::default();
    let mut candidates = Vec::with_capacity(wishes.len());
    for wish in wishes {
        let one = needs(book, ledger, &mut std::iter::once((wish.offer, Exact::ONE)))?;
        if let Some(unmade) = one.left_out.first() {
            best.left_out.push(*unmade);
            continue;
        }
        let most = match wish.most {
            Some(most) => most,
            None => match makes(book, ledger, wish.offer) {
                Ok(alone) => {
                    if alone.count.is_zero() {
                        best.out.push((wish.offer, alone.runs_out));
                    }
                    alone.count
                }
                Err(NotMade::Unknown(lacks)) => return Err(lacks.into()),
                Err(_) => {
                    best.endless.push(wish.offer);
                    continue;
                }
            },
        };
        candidates.push(Candidate { offer: wish.offer, least: wish.least, most: most.max(wish.least), needs: one });
    }
    let contribution = |offer| Some(ledger.get(offer)?.as_ref().ok()?.asked?.contribution);
    let brings: Vec<Option<Money>> = candidates.iter().map(|it| contribution(it.offer)).collect();
    best.by_number = brings.iter().all(Option::is_none);
    let mut objective = Vec::with_capacity(candidates.len());
    for (candidate, brings) in candidates.iter().zip(&brings) {
        let worth = if best.by_number { Exact::ONE } else { brings.unwrap_or(Money::ZERO).major().max(Exact::ZERO) };
        if worth.is_zero() {
            best.for_nothing.push(candidate.offer);
        }
        objective.push(parts(worth)?);
    }
    let (scarce, constraints) = scarce(book, &candidates)?;
    let upper: Result<Vec<i128>, Overflow> = candidates.iter().map(|it| whole(it.most.minus(it.least)?)).collect();
    let solved =
        IntegerProgram { objective, upper: upper?, constraints }.solve(NODE_LIMIT).ok_or(Overflow::TooLarge)?;
    best.proved = solved.proved;
    for (candidate, more) in candidates.iter().zip(&solved.units) {
        let more = i64::try_from(*more).map_err(|_| Overflow::TooLarge)?;
        best.counts.push((candidate.offer, candidate.least.plus(Exact::new(more, 0))?));
    }
    let takes = needs(book, ledger, &mut best.counts.iter().copied())?;
    for goods in scarce {
        let (Some(counted), Some(on_hand)) = (counted(book, goods), book.on_hand(goods)) else { continue };
        let takes = needed(book, &takes, goods, counted.dimension)?;
        if !reaches(takes, counted.here) {
            return Err(Stopped::Arithmetic(Overflow::TooLarge));
        }
        let unit = on_hand.amount.unit;
        let left = counted.here.minus(takes)?.max(Exact::ZERO).over(unit.size())?;
        best.scarce.push(Scarce { goods, left: Amount::new(left, unit) });
    }
    Ok(best)
}

/// The goods that are not enough for the most of every drink, each with its constraint on the
/// drinks beyond the least. No others can run out.
fn scarce(book: &Book, candidates: &[Candidate]) -> Result<(Vec<Goods>, Vec<Constraint>), Stopped> {
    let mut all: Vec<Goods> = Vec::new();
    for goods in candidates.iter().flat_map(|candidate| goods_of(&candidate.needs)) {
        in_order::insert_once(&mut all, goods);
    }
    let (mut scarce, mut constraints) = (Vec::new(), Vec::new());
    for goods in all {
        let Some(counted) = counted(book, goods) else { continue };
        let (mut least, mut most) = (Exact::ZERO, Exact::ZERO);
        let mut coefficients = Vec::with_capacity(candidates.len());
        for candidate in candidates {
            let each = needed(book, &candidate.needs, goods, counted.dimension)?;
            least = least.plus(each.times(candidate.least)?)?;
            most = most.plus(each.times(candidate.most)?)?;
            coefficients.push(parts(each)?);
        }
        if !reaches(least, counted.here) {
            return Err(Stopped::LeastTooMany(goods));
        }
        if reaches(most, counted.here) {
            continue;
        }
        let left = parts(counted.here.rounded(COMPARED).minus(least)?)?;
        let limit = left.checked_add(TOLERANCE).ok_or(Overflow::TooLarge)?.max(0);
        scarce.push(goods);
        constraints.push(Constraint { coefficients, limit });
    }
    Ok((scarce, constraints))
}

/// As a whole number of parts of 10^-12.
fn parts(number: Exact) -> Result<i128, Overflow> {
    number.whole_parts(PART_PLACES).ok_or(Overflow::TooLarge)
}

fn whole(number: Exact) -> Result<i128, Overflow> {
    number.whole_parts(0).ok_or(Overflow::TooLarge)
}
