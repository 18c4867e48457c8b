//! All drinks of a switch together, with their mix.

use super::{BreakEven, DrinkSwitch, Earnings, Losing, Sales};
use crate::foundation::measure::{Exact, Money, Overflow, Share};

/// How many of each are counted with where no sales are entered.
const EACH: Exact = Exact::new(100, 0);

/// The drinks of a switch in a week, each as often as it is sold now.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Together {
    /// How many are sold.
    pub units: Exact,
    /// What they bring now.
    pub now: Earnings,
    /// What as many would bring in the new size.
    pub then: Earnings,
    /// How many to sell in the new size for each one sold now, in the same mix.
    pub answer: Result<BreakEven, Losing>,
}

/// When a switch has paid back what it costs once.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Payback {
    /// After so many weeks.
    Weeks(Exact),
    /// At once: it costs nothing and brings more.
    AtOnce,
    /// It brings no more than today.
    Never,
}

impl Together {
    pub(super) fn of(drinks: &[DrinkSwitch], sales: Sales) -> Result<Option<Together>, Overflow> {
        let nothing = Earnings { price: Money::ZERO, contribution: Money::ZERO };
        let (mut units, mut now, mut then) = (Exact::ZERO, nothing, nothing);
        for drink in drinks {
            let (Ok(old), Ok(new)) = (drink.now, drink.then) else { continue };
            let sold = match sales {
                Sales::Entered { .. } => drink.weekly.unwrap_or_default(),
                Sales::NotEntered | Sales::NothingSold => EACH,
            };
            units = units.plus(sold)?;
            now = now.plus(old, sold)?;
            then = then.plus(new, sold)?;
        }
        if units.is_zero() {
            return Ok(None);
        }
        Ok(Some(Together { units, now, then, answer: BreakEven::of(now, then)? }))
    }

    /// What a week would bring with this share of the sales kept.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn with_kept(&self, kept: Share) -> Result<Money, Overflow> {
        Ok(self.then.contribution.times(kept.fraction())?.as_part())
    }

    /// What a week would bring more than today with this share of the sales kept.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn gain(&self, kept: Share) -> Result<Money, Overflow> {
        self.with_kept(kept)?.minus(self.now.contribution)
    }

    /// What a week would bring with from half to one and a half times the sales kept, in tenths.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn curve(&self) -> Result<Vec<(Share, Money)>, Overflow> {
        let kept = |tenths| Share::from_fraction(Exact::new(tenths, 1));
        (5..=15).map(|tenths| Ok((kept(tenths), self.with_kept(kept(tenths))?))).collect()
    }

    /// When what is paid once is back, with this share of the sales kept.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn payback(&self, kept: Share, once: Money) -> Result<Payback, Overflow> {
        let gain = self.gain(kept)?;
        Ok(match (gain.is_positive(), once.is_positive()) {
            (false, _) => Payback::Never,
            (true, false) => Payback::AtOnce,
            (true, true) => Payback::Weeks(once.ratio_to(gain)?),
        })
    }
}

impl Earnings {
    /// This, and so many times another.
    fn plus(self, other: Earnings, times: Exact) -> Result<Earnings, Overflow> {
        Ok(Earnings {
            price: self.price.plus(other.price.times(times)?.as_part())?,
            contribution: self.contribution.plus(other.contribution.times(times)?.as_part())?,
        })
    }
}
