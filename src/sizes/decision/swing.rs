//! How far weeks usually swing, and how long a trial of a change takes.

use super::NoAnswer;
use super::menu::MenuToday;
use super::weekly::{COUNTED_WEEKS, Written};
use crate::foundation::measure::{Exact, Money, Overflow};
use crate::foundation::statistics::{MOST_MORE, Spread, numbers_to_tell};

/// How far the profit of a part of the menu swings from week to week.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Swing {
    /// How many weeks say so, two at least.
    pub weeks: u32,
    /// What a week brings on average.
    pub mean: Money,
    /// The standard deviation of what weeks bring: two of three weeks lie within it.
    pub deviation: Money,
}

impl Swing {
    /// Whether so many weeks are written down that their swing says something.
    pub fn is_well_known(&self) -> bool {
        usize::try_from(self.weeks).is_ok_and(|weeks| weeks >= COUNTED_WEEKS)
    }

    /// How many weeks before a change and as many after it tell a gain or a loss of so much a week, in four of
    /// five trials; an estimate. Returns `None` if nothing is gained or lost, or if two years are not enough.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn weeks_to_tell(&self, gain: Money) -> Result<Option<u32>, Overflow> {
        numbers_to_tell(self.deviation.major(), gain.major(), MOST_MORE)
    }
}

impl MenuToday<'_> {
    /// How far weeks swing: the last [`COUNTED_WEEKS`] written ones, from the first with a sale of this part of
    /// the menu, each with what was sold at the profit of today, so that an old price is no swing. What is no
    /// longer sold is left out.
    ///
    /// # Errors
    /// [`NoAnswer::NoWeeks`] or [`NoAnswer::OneWeek`].
    pub fn swing(&self) -> Result<Swing, NoAnswer> {
        let written = Written::of(self.book, self.day, &|offer| self.book.belongs(offer.drink, self.scope))?;
        let mut profits: Vec<Exact> = Vec::with_capacity(written.weeks.len());
        for week in written.weeks {
            let mut profit = None;
            for line in &week.sold {
                let Some(sold) = self.sold_as(line.offer()) else { continue };
                let more = sold.earns.profit.times(line.units)?;
                profit = Some(profit.unwrap_or(Money::ZERO).plus(more)?.as_part());
            }
            // Before the first sale nothing of it was written down.
            if profit.is_some() || !profits.is_empty() {
                profits.push(profit.unwrap_or(Money::ZERO).major());
            }
        }
        let Some(spread) = Spread::of(&profits)? else {
            return Err(if profits.is_empty() { NoAnswer::NoWeeks } else { NoAnswer::OneWeek });
        };
        Ok(Swing {
            weeks: spread.count,
            mean: Money::from_major(spread.mean.as_part()),
            deviation: Money::from_major(spread.deviation.as_part()),
        })
    }
}
