//! How many to sell to earn the same.

use crate::foundation::measure::{Exact, Money, Overflow, Share};
use crate::foundation::statistics::natural_logarithm;

/// What drinks earn in the old or the new size: one drink, or all that are sold in a week.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Earnings {
    /// The menu price.
    pub price: Money,
    /// What is left of it after everything.
    pub contribution: Money,
}

/// In which size nothing is left of the price, so that no number of drinks earns the same.
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
    /// The price elasticity at which it breaks even, an estimate: ln(q_b / q_a) / ln(P_b / P_a). It
    /// is `None` if both prices are the same.
    pub elasticity: Option<Exact>,
}

impl BreakEven {
    /// The break-even between two sides, or where nothing is left of the price.
    ///
    /// # Errors
    /// [`Overflow`], also for a price of zero that leaves something.
    pub fn of(now: Earnings, then: Earnings) -> Result<Result<BreakEven, Losing>, Overflow> {
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
        let elasticity = elasticity(ratio, prices);
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

/// What the number of drinks does for each 1 % of the price, by the ratios of both.
fn elasticity(units: Exact, prices: Exact) -> Option<Exact> {
    let logarithm = |ratio: Exact| natural_logarithm(ratio.to_estimate());
    let elasticity = logarithm(units)? / logarithm(prices)?;
    Exact::from_estimate(elasticity).filter(|_| prices != Exact::ONE)
}
