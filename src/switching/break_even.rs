//! How many to sell to earn the same.

use crate::measure::{Exact, Money, Overflow, Share};

/// What drinks bring on one side of a switch: one drink, or all that are sold in a week.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Side {
    /// The menu price.
    pub price: Money,
    /// What is left of it after everything.
    pub contribution: Money,
}

/// On which side nothing is left of the price, so that no number of drinks earns the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Losing {
    /// In the size it is sold in.
    Now,
    /// In the size it is to be sold in.
    Then,
    /// In both.
    Both,
}

/// How many to sell in the new size for each one sold now.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BreakEven {
    /// q_b / q_a = c_a / c_b, above 0.
    pub ratio: Exact,
    /// P_b / P_a less 1.
    pub price_change: Share,
    /// The price elasticity at which it breaks even: ln(q_b / q_a) / ln(P_b / P_a). None where
    /// both prices are the same.
    pub elasticity: Option<Exact>,
}

impl BreakEven {
    /// The break-even between two sides, or where nothing is left of the price.
    ///
    /// # Errors
    /// [`Overflow`], also for a price of zero that leaves something.
    pub fn of(now: Side, then: Side) -> Result<Result<BreakEven, Losing>, Overflow> {
        let losing = match (now.contribution.is_positive(), then.contribution.is_positive()) {
            (true, true) => None,
            (false, true) => Some(Losing::Now),
            (true, false) => Some(Losing::Then),
            (false, false) => Some(Losing::Both),
        };
        if let Some(losing) = losing {
            return Ok(Err(losing));
        }
        let ratio = now.contribution.ratio_to(then.contribution)?;
        let prices = then.price.ratio_to(now.price)?;
        let elasticity = match (ratio.natural_logarithm()?, prices.natural_logarithm()?) {
            (Some(units), Some(price)) if !price.is_zero() => Some(units.over(price)?),
            _ => None,
        };
        let price_change = Share::from_fraction(prices.minus(Exact::ONE)?);
        Ok(Ok(BreakEven { ratio, price_change, elasticity }))
    }

    /// How many to sell instead of `now`.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn units(&self, now: Exact) -> Result<Exact, Overflow> {
        now.times(self.ratio)
    }

    /// How many to sell instead of `now` in whole drinks, rounded up.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn whole_units(&self, now: Exact) -> Result<Exact, Overflow> {
        Ok(self.units(now)?.as_part().ceiling())
    }

    /// The change in what must be sold, over what is sold now.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn change(&self) -> Result<Share, Overflow> {
        self.ratio.minus(Exact::ONE).map(Share::from_fraction)
    }
}
