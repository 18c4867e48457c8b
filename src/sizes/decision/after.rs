//! The menu with some of its sizes: who stays where they are, and who has to turn.

use super::line::Line;
use super::menu::{Arrival, Earns, MenuToday, SoldToday, nearest, times};
use crate::book::{ContainerId, OfferId};
use crate::drink::sales::Unknown;
use crate::foundation::measure::{Exact, Money, Overflow};

/// The menu with some of its sizes.
pub(super) struct After<'a> {
    /// What all of it brings in a week, by the share of those who have to turn that stay.
    pub line: Line,
    /// What the sizes that stay bring today.
    pub stayed: Money,
    /// Those who have to turn.
    pub turns: Vec<Turning<'a>>,
    /// What they cannot turn to, and why: they are counted as leaving.
    pub unknown: Vec<(OfferId, Unknown)>,
}

/// The buyers of an offer that goes.
pub(super) struct Turning<'a> {
    /// The offer.
    pub sold: &'a SoldToday,
    /// How many of its buyers have to turn: those without the ones who are expected in a size that comes.
    pub count: Exact,
    /// What they turn to.
    pub to: Option<Earns>,
    /// Whether the owner chose it.
    pub chosen: bool,
}

impl MenuToday<'_> {
    /// The menu with these sizes: some of today's, and some in which sales are expected.
    ///
    /// # Errors
    /// [`Overflow`].
    pub(super) fn after(&self, stays: &[ContainerId]) -> Result<After<'_>, Overflow> {
        let kept = times(self.told.keeping, difference(self.sizes().len(), stays.len())?)?;
        let mut after = After {
            line: Line { intercept: kept, slope: Money::ZERO },
            stayed: Money::ZERO,
            turns: Vec::new(),
            unknown: Vec::new(),
        };
        let arriving: Vec<&Arrival> =
            self.arrivals().iter().filter(|arrival| stays.contains(&arrival.earns.offer.container)).collect();
        let add = |sum: &mut Money, more: Money| sum.plus(more).map(|both| *sum = both);
        for arrival in &arriving {
            add(&mut after.line.intercept, times(arrival.earns.profit, arrival.expected)?)?;
        }
        for sold in self.sold() {
            let offer = sold.offer();
            let mut taken = arriving.iter().filter(|arrival| arrival.from == Some(offer)).map(|arrival| arrival.taken);
            let taken = taken.try_fold(Exact::ZERO, Exact::plus)?.min(sold.weekly.count());
            let count = sold.weekly.count().minus(taken)?;
            if stays.contains(&offer.container) {
                add(&mut after.line.intercept, times(sold.then.profit, count)?)?;
                add(&mut after.stayed, sold.profit()?)?;
                continue;
            }
            let (to, chosen) = if let Some(turn) = self.told.turn(offer) {
                (self.chosen(turn, offer, stays, &mut after.unknown)?, true)
            } else {
                let here = self.sold_of(offer.drink).iter().map(|other| &other.then);
                let new = arriving.iter().map(|arrival| &arrival.earns).filter(|it| it.offer.drink == offer.drink);
                let stay = here.filter(|other| stays.contains(&other.offer.container)).chain(new);
                (nearest(sold.earns.poured, stay)?.copied(), false)
            };
            if let Some(to) = to {
                add(&mut after.line.slope, times(to.profit, count)?)?;
            }
            after.turns.push(Turning { sold, count, to, chosen });
        }
        Ok(after)
    }

    /// Where the owner has the buyers of an offer turn.
    fn chosen(
        &self,
        turn: Option<ContainerId>,
        offer: OfferId,
        stays: &[ContainerId],
        unknown: &mut Vec<(OfferId, Unknown)>,
    ) -> Result<Option<Earns>, Overflow> {
        // A size that goes too is no choice.
        let goes = |size: &ContainerId| self.sizes().contains(size) && !stays.contains(size);
        let Some(container) = turn.filter(|to| !goes(to)) else { return Ok(None) };
        let there = OfferId { container, ..offer };
        match self.then(there)? {
            Ok(then) => Ok(Some(then)),
            Err(why) => {
                unknown.push((there, why));
                Ok(None)
            }
        }
    }
}

/// How many fewer there are then; below zero where there are more.
fn difference(now: usize, then: usize) -> Result<Exact, Overflow> {
    let exact = |count: usize| u32::try_from(count).map(Exact::from).map_err(|_| Overflow::TooLarge);
    exact(now)?.minus(exact(then)?)
}
