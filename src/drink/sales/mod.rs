//! What is sold in a week, counted together: usual weeks and weeks that were written down.

mod write_down;

#[cfg(test)]
mod tests;

use crate::book::{Book, ContainerId, DrinkKind, Offer, OfferId, Scope, Sold, Week, units};
use crate::drink::ledger::{Ledger, OfferError};
use crate::drink::price::Hands;
use crate::foundation::measure::{Exact, Money, Overflow};

pub use write_down::{AVERAGED, Average, average, usual_week, week_so_far, write_down};

/// Decimals that a book keeps of money.
const KEPT_PLACES: u32 = 8;

/// Why it is not known what an offer brings.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unknown {
    /// The drink is not sold in this size.
    NotOffered,
    /// No price is asked yet.
    NoPrice,
    /// How many are usually sold is not known.
    NoWeekly,
    /// It cannot be computed.
    Stuck(OfferError),
}

/// What one sold now contributes, at the price asked, to the eight decimals that a book keeps.
///
/// # Errors
/// Why it is [`Unknown`].
pub fn contribution_now(ledger: &Ledger, offer: OfferId) -> Result<Money, Unknown> {
    let priced = ledger.get(offer).ok_or(Unknown::NotOffered)?;
    let asked = priced.as_ref().map_err(|error| Unknown::Stuck(*error))?.asked.ok_or(Unknown::NoPrice)?;
    Ok(Money::from_major(asked.contribution.major().rounded(KEPT_PLACES)))
}

/// A line of a week for an offer of which none is sold yet: with what one sold now contributes, and the overhead
/// that this bears.
///
/// # Errors
/// Why it is [`Unknown`].
pub fn line_now(ledger: &Ledger, offer: OfferId) -> Result<Sold, Unknown> {
    let contribution = contribution_now(ledger, offer)?;
    let priced = ledger.get(offer).and_then(|priced| priced.as_ref().ok());
    let before = priced.and_then(|priced| priced.profit_that_changes(Hands::Counted).ok().flatten());
    let overhead = before.and_then(|before| before.minus(contribution).ok());
    let overhead = overhead.map(|overhead| Money::from_major(overhead.major().rounded(KEPT_PLACES)));
    Ok(Sold { drink: offer.drink, container: offer.container, units: Exact::ZERO, contribution, overhead })
}

/// What a part of the menu sells and brings in a week.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Weekly {
    /// How many drinks.
    pub units: Exact,
    /// What they contribute, of those whose contribution is known.
    pub contribution: Money,
    /// The offers that are not counted, and why.
    pub unknown: Vec<(OfferId, Unknown)>,
}

/// What the offers of `scope` usually sell and contribute in a week.
///
/// # Errors
/// An [`Overflow`] where the numbers leave the range that can be computed.
pub fn weekly_contribution(book: &Book, ledger: &Ledger, scope: Scope) -> Result<Weekly, Overflow> {
    let mut weekly = Weekly { units: Exact::ZERO, contribution: Money::ZERO, unknown: Vec::new() };
    for offer in book.offers().filter(|offer| book.belongs(offer.drink, scope)) {
        let one = contribution_now(ledger, offer.id());
        match (offer.weekly, one) {
            (Some(units), Ok(one)) => {
                weekly.units = weekly.units.plus(units)?;
                weekly.contribution = weekly.contribution.plus(one.times(units)?)?;
            }
            (_, Err(unknown)) => weekly.unknown.push((offer.id(), unknown)),
            (None, Ok(_)) => weekly.unknown.push((offer.id(), Unknown::NoWeekly)),
        }
    }
    Ok(weekly)
}

/// How many were sold in a week and what they contributed then.
///
/// # Errors
/// An [`Overflow`] where the numbers leave the range that can be computed.
pub fn sold_in(week: &Week) -> Result<(Exact, Money), Overflow> {
    week.sold.iter().try_fold((Exact::ZERO, Money::ZERO), |(units, contribution), sold| {
        Ok((units.plus(sold.units)?, contribution.plus(sold.contribution.times(sold.units)?)?))
    })
}

/// The kind of drink that sells most in a usual week; of those that sell alike, or where nothing is
/// known, the first that is sold. Returns `None` if nothing is sold.
pub fn foremost_kind(book: &Book) -> Option<DrinkKind> {
    let sold = |kind: &DrinkKind| book.offers().any(|offer| book.belongs(offer.drink, Scope::Kind(*kind)));
    most(DrinkKind::ALL.iter().copied().filter(sold), |kind| {
        units(book.offers().filter(|offer| book.belongs(offer.drink, Scope::Kind(kind))))
    })
}

/// The container in which most of a part of the menu sells in a usual week. Returns `None` if
/// nothing is known.
pub fn foremost_size(book: &Book, scope: Scope) -> Option<ContainerId> {
    let sold = |container: ContainerId| {
        units(book.offers().filter(move |offer| offer.container == container && book.belongs(offer.drink, scope)))
    };
    most(book.containers().map(|container| container.id), sold).filter(|id| sold(*id).is_positive())
}

/// The first of those with the largest number.
fn most<T: Copy>(all: impl Iterator<Item = T>, number: impl Fn(T) -> Exact) -> Option<T> {
    let mut most: Option<(T, Exact)> = None;
    for one in all {
        let number = number(one);
        if most.is_none_or(|(_, before)| number > before) {
            most = Some((one, number));
        }
    }
    most.map(|(one, _)| one)
}

/// The offer with another usual week.
fn with_weekly(offer: &Offer, weekly: Option<Exact>) -> Offer {
    Offer { weekly, ..offer.clone() }
}
