//! What to set a filling line to, so that packages hold what they say (calculations, 3).
//!
//! A help beside the work: what counts is the local code and the inspector's own weighing.

use crate::measure::{Exact, Overflow, Volume};

/// A packaged drink: what is asked of its fill, and how evenly it is filled.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Packaged {
    /// Declared size, N.
    pub nominal: Volume,
    /// What a single package may be short by, T; none where only the average counts.
    pub tolerance: Option<Volume>,
    /// How many standard deviations below the mean the accepted share of a normal distribution
    /// begins, z.
    pub quantile: Exact,
    /// Standard deviation of the fill, s.
    pub deviation: Volume,
    /// The most that may be in the container: brimful less the least headspace.
    pub room: Volume,
}

/// Standard deviations over the target of the fullest package to expect: in a normal distribution
/// about one in 740 holds more.
pub const FULLEST_SPREADS: Exact = Exact::new(3, 0);

/// What to fill on average, and what follows from it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct FillTarget {
    /// The mean to fill to: N, or N - T + z * s where that is more.
    pub target: Volume,
    /// What is given away per package: target less N.
    pub giveaway: Volume,
    /// The fullest package to expect: target + 3 * s.
    pub highest: Volume,
    /// How much more that is than there is room for, if it is more: the container is too small
    /// for the declared size.
    pub over: Option<Volume>,
    /// How many standard deviations lie between the target and N - 2 * T, under which no package
    /// may be; none where there is no T, or no spread.
    pub spreads_to_double: Option<Exact>,
}

impl Packaged {
    /// The fill target.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn target(&self) -> Result<FillTarget, Overflow> {
        let target = match self.tolerance {
            Some(tolerance) => {
                let raised = self.nominal.minus(tolerance)?.plus(self.deviation.times(self.quantile)?)?;
                raised.max(self.nominal)
            }
            None => self.nominal,
        };
        let highest = target.plus(self.deviation.times(FULLEST_SPREADS)?)?;
        let spreads_to_double = match self.tolerance {
            Some(tolerance) if self.deviation.is_positive() => {
                let lowest = self.nominal.minus(tolerance)?.minus(tolerance)?;
                Some(target.minus(lowest)?.ratio_to(self.deviation)?)
            }
            _ => None,
        };
        Ok(FillTarget {
            target,
            giveaway: target.minus(self.nominal)?,
            highest,
            over: Some(highest.minus(self.room)?).filter(|over| over.is_positive()),
            spreads_to_double,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::{exact, millilitres};

    /// A bottle of 355 mL by the European rule, filled with a spread; it has room for 375 mL.
    fn bottle(deviation: &str) -> Packaged {
        Packaged {
            nominal: millilitres("355"),
            tolerance: Some(millilitres("10.7")),
            quantile: exact("1.959964"),
            deviation: millilitres(deviation),
            room: millilitres("375"),
        }
    }

    #[test]
    fn an_even_filler_is_set_to_what_is_declared() {
        // 355 - 10.7 + 1.959964 * 4 = 352.139856 is less than 355.
        let expected = FillTarget {
            target: millilitres("355"),
            giveaway: Volume::ZERO,
            highest: millilitres("367"),
            over: None,
            spreads_to_double: Some(exact("5.35")),
        };
        assert_eq!(bottle("4").target(), Ok(expected));
    }

    #[test]
    fn an_uneven_filler_gives_away() {
        // 355 - 10.7 + 1.959964 * 10 = 363.89964; up to 393.89964; (363.89964 - 333.6) / 10.
        let expected = FillTarget {
            target: millilitres("363.89964"),
            giveaway: millilitres("8.89964"),
            highest: millilitres("393.89964"),
            over: Some(millilitres("18.89964")),
            spreads_to_double: Some(exact("3.029964")),
        };
        assert_eq!(bottle("10").target(), Ok(expected));
    }

    #[test]
    fn the_target_leaves_the_declared_size_where_z_spreads_are_the_tolerance() {
        let just = |deviation: &str| Packaged { quantile: exact("2"), ..bottle(deviation) }.target().unwrap().giveaway;
        assert_eq!(just("5.35"), Volume::ZERO);
        assert_eq!(just("5.36"), millilitres("0.02"));
    }

    #[test]
    fn by_the_average_alone_it_is_what_is_declared() {
        let average = Packaged { tolerance: None, ..bottle("10") }.target().unwrap();
        assert_eq!((average.target, average.giveaway), (millilitres("355"), Volume::ZERO));
        assert_eq!((average.highest, average.over), (millilitres("385"), Some(millilitres("10"))));
        assert_eq!(average.spreads_to_double, None);
    }

    #[test]
    fn without_spread_every_package_is_the_target() {
        let even = bottle("0").target().unwrap();
        assert_eq!((even.target, even.highest), (millilitres("355"), millilitres("355")));
        assert_eq!((even.over, even.spreads_to_double), (None, None));
    }

    #[test]
    fn a_container_that_is_just_large_enough_is_not_too_small() {
        let over = |room| Packaged { room: millilitres(room), ..bottle("4") }.target().unwrap().over;
        assert_eq!(over("367"), None);
        assert_eq!(over("366.999999"), Some(millilitres("0.000001")));
    }
}
