//! Confidence intervals of 95 % for a mean, and for the difference of two means.

use statrs::distribution::{ContinuousCDF, StudentsT};

use super::Spread;
use crate::foundation::measure::{Exact, Overflow};

/// How many more numbers of the second group [`more_until_clear`] looks ahead at most: two years of
/// weeks.
pub const MOST_MORE: u32 = 104;

/// The share below the upper end of a two-sided interval of 95 %.
const UPPER: f64 = 0.975;

/// The most degrees of freedom that are handed to the library, which is less exact for more. Beyond
/// this the quantile changes in its fifth digit at most.
const ENDLESS: f64 = 1e4;

/// A confidence interval of 95 % for the difference of two means: of 100 such intervals, 95 hold
/// the true difference on average.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Interval {
    /// Within each group all numbers are alike. There is no scatter to judge by, only the difference.
    Point(Exact),
    /// An interval with two ends.
    Range {
        /// The second mean less the first.
        difference: Exact,
        /// The lower end.
        low: Exact,
        /// The upper end.
        high: Exact,
        /// Degrees of freedom by Welch and Satterthwaite, 1 or more.
        degrees: Exact,
    },
}

impl Interval {
    /// The second mean less the first.
    pub const fn difference(&self) -> Exact {
        match self {
            Interval::Point(difference) | Interval::Range { difference, .. } => *difference,
        }
    }

    /// The lower and the upper end.
    pub const fn ends(&self) -> (Exact, Exact) {
        match self {
            Interval::Point(difference) => (*difference, *difference),
            Interval::Range { low, high, .. } => (*low, *high),
        }
    }

    /// Whether zero lies in it, ends included.
    pub fn spans_zero(&self) -> bool {
        let (low, high) = self.ends();
        low <= Exact::ZERO && high >= Exact::ZERO
    }
}

/// How many standard errors an interval of 95 % reaches to either side of a mean, by Student's t
/// distribution with this many degrees of freedom, which need not be whole. Returns `None` for fewer
/// than 1.
pub fn student_t(degrees: f64) -> Option<f64> {
    quantile(UPPER, degrees)
}

/// The quantile of Student's t distribution: the number that this share of it lies below. Returns
/// `None` for fewer than 1 degree of freedom.
pub(super) fn quantile(below: f64, degrees: f64) -> Option<f64> {
    if degrees.is_nan() || degrees < 1.0 {
        return None;
    }
    let distribution = StudentsT::new(0.0, 1.0, degrees.min(ENDLESS)).ok()?;
    Some(distribution.inverse_cdf(below)).filter(|quantile| quantile.is_finite())
}

/// The confidence interval of 95 % for the mean of numbers with this spread, as its lower and upper
/// end, by Student's t with one degree of freedom less than there are numbers. If all numbers are
/// alike, both ends are their mean.
///
/// # Errors
/// [`Overflow`] if a number leaves the range of [`Exact`].
pub fn mean_interval(spread: &Spread) -> Result<(Exact, Exact), Overflow> {
    let count = f64::from(spread.count);
    let reach = || Exact::from_estimate(student_t(count - 1.0)? * spread.deviation.to_estimate() / count.sqrt());
    let reach = reach().ok_or(Overflow::TooLarge)?;
    Ok((spread.mean.minus(reach)?, spread.mean.plus(reach)?))
}

/// Welch's confidence interval of 95 % for the mean of `after` less the mean of `before`. The variances
/// of the two need not be equal.
///
/// # Errors
/// [`Overflow`] if a number leaves the range of [`Exact`].
pub fn welch(before: &Spread, after: &Spread) -> Result<Interval, Overflow> {
    let difference = after.mean.minus(before.mean)?;
    if before.deviation.is_zero() && after.deviation.is_zero() {
        return Ok(Interval::Point(difference));
    }
    // The variance of each mean.
    let of_mean = |spread: &Spread| spread.deviation.to_estimate().powi(2) / f64::from(spread.count);
    let (first, second) = (of_mean(before), of_mean(after));
    let both = first + second;
    // Each as a share of both, so that no square overflows.
    let part = |of: f64, spread: &Spread| (of / both).powi(2) / (f64::from(spread.count) - 1.0);
    let degrees = 1.0 / (part(first, before) + part(second, after));
    // They are never fewer than those of the smaller group, but rounding may put them below 1.
    let degrees = degrees.max(1.0);
    let reach = || Exact::from_estimate(student_t(degrees)? * both.sqrt());
    let reach = reach().ok_or(Overflow::TooLarge)?;
    let degrees = Exact::from_estimate(degrees).ok_or(Overflow::TooLarge)?;
    Ok(Interval::Range { difference, low: difference.minus(reach)?, high: difference.plus(reach)?, degrees })
}

/// How many more numbers `after` needs, if its mean and deviation stay, until the interval no longer
/// spans zero. Returns `None` if [`MOST_MORE`] are not enough.
///
/// # Errors
/// [`Overflow`] if a number leaves the range of [`Exact`].
pub fn more_until_clear(before: &Spread, after: &Spread) -> Result<Option<u32>, Overflow> {
    for more in 1..=MOST_MORE {
        let longer = Spread { count: after.count.saturating_add(more), ..*after };
        if !welch(before, &longer)?.spans_zero() {
            return Ok(Some(more));
        }
    }
    Ok(None)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::exact;

    fn spread(numbers: &[&str]) -> Spread {
        let numbers: Vec<Exact> = numbers.iter().map(|number| exact(number)).collect();
        Spread::of(&numbers).unwrap().unwrap()
    }

    #[test]
    fn without_scatter_there_is_only_the_difference() {
        let interval = welch(&spread(&["5", "5"]), &spread(&["8", "8", "8"])).unwrap();
        assert_eq!(interval, Interval::Point(exact("3")));
        assert!(!interval.spans_zero());
        assert!(welch(&spread(&["5", "5"]), &spread(&["5", "5"])).unwrap().spans_zero());
    }

    #[test]
    fn one_group_without_scatter_leaves_the_degrees_of_the_other() {
        // Deviation 1 over two numbers: t with 1 degree of freedom, 12.7062 (NIST/SEMATECH
        // e-Handbook, 1.3.6.7.2: 12.706), times the root of a half.
        let scattered = Spread { count: 2, mean: exact("10"), deviation: Exact::ONE };
        let Interval::Range { degrees, low, high, difference } = welch(&scattered, &spread(&["12", "12"])).unwrap()
        else {
            panic!("a range");
        };
        assert_eq!((degrees, difference), (Exact::ONE, exact("2")));
        assert_eq!(high.minus(low).unwrap().over(exact("2")).unwrap().rounded(4), exact("8.9846"));
    }

    #[test]
    fn quantiles_need_a_degree_of_freedom() {
        for none in [0.0, 0.999, -3.0, f64::NAN] {
            assert_eq!(student_t(none), None, "{none}");
        }
        // Nearly the normal distribution's own, 1.959964 (tests/reference/spreads.rs).
        assert!((student_t(f64::INFINITY).unwrap() - 1.959_964).abs() < 3e-4);
    }

    #[test]
    fn more_numbers_make_it_clear() {
        let (before, after) = (spread(&["11", "13", "12", "12"]), spread(&["12", "16", "13"]));
        assert!(welch(&before, &after).unwrap().spans_zero());
        let more = more_until_clear(&before, &after).unwrap().unwrap();
        let with = |more| welch(&before, &Spread { count: after.count + more, ..after }).unwrap();
        assert!(!with(more).spans_zero());
        assert!((1..more).all(|fewer| with(fewer).spans_zero()));
        let level = Spread { mean: before.mean, ..after };
        assert_eq!(more_until_clear(&before, &level), Ok(None), "a difference of nothing stays unclear");
    }
}
