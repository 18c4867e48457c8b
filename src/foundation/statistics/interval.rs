//! The interval in which the difference of two means lies, 95 times of 100.

use statrs::distribution::{ContinuousCDF, StudentsT};

use super::Spread;
use crate::foundation::measure::{Exact, Overflow};

/// Numbers more in the second group that are looked ahead at most: two years of weeks.
pub const MOST_MORE: u32 = 104;

/// Where all but the largest twentieth of a two-sided distribution's tails begins.
const UPPER: f64 = 0.975;

/// Degrees of freedom beyond which the quantile changes in its fifth digit at most; the library is
/// less sure of many more.
const ENDLESS: f64 = 1e4;

/// In which range the difference of two means lies, 95 times of 100 that such a range is taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Interval {
    /// No number differs from another in its own group: there is no scatter to judge by, and only
    /// the difference itself.
    Point(Exact),
    /// From one end to the other.
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

    /// Whether zero lies within it, its ends included.
    pub fn spans_zero(&self) -> bool {
        let (low, high) = self.ends();
        low <= Exact::ZERO && high >= Exact::ZERO
    }
}

/// How many standard errors an interval of 95 % reaches to either side of a mean, by Student's t
/// distribution with so many degrees of freedom, which need not be whole. Returns `None` for fewer
/// than 1.
pub fn student_t(degrees: f64) -> Option<f64> {
    quantile(UPPER, degrees)
}

/// Where so large a share of Student's t distribution lies below. Returns `None` for fewer than 1
/// degree of freedom.
pub(super) fn quantile(below: f64, degrees: f64) -> Option<f64> {
    if degrees.is_nan() || degrees < 1.0 {
        return None;
    }
    let distribution = StudentsT::new(0.0, 1.0, degrees.min(ENDLESS)).ok()?;
    Some(distribution.inverse_cdf(below)).filter(|quantile| quantile.is_finite())
}

/// The interval of 95 % in which the mean lies that numbers of this spread are drawn about, by
/// Student's t with one degree of freedom less than there are numbers. Numbers that are all alike
/// have both ends at their mean.
///
/// # Errors
/// [`Overflow`].
pub fn mean_interval(spread: &Spread) -> Result<(Exact, Exact), Overflow> {
    let count = f64::from(spread.count);
    let reach = || Exact::from_estimate(student_t(count - 1.0)? * spread.deviation.to_estimate() / count.sqrt());
    let reach = reach().ok_or(Overflow::TooLarge)?;
    Ok((spread.mean.minus(reach)?, spread.mean.plus(reach)?))
}

/// Welch's interval of 95 % for the mean of `after` less the mean of `before`, whose scatters may
/// differ.
///
/// # Errors
/// [`Overflow`].
pub fn welch(before: &Spread, after: &Spread) -> Result<Interval, Overflow> {
    let difference = after.mean.minus(before.mean)?;
    if before.deviation.is_zero() && after.deviation.is_zero() {
        return Ok(Interval::Point(difference));
    }
    // The variance of each mean.
    let of_mean = |spread: &Spread| spread.deviation.to_estimate().powi(2) / f64::from(spread.count);
    let (first, second) = (of_mean(before), of_mean(after));
    let both = first + second;
    // Each as a share of both, so that no square leaves the range.
    let part = |of: f64, spread: &Spread| (of / both).powi(2) / (f64::from(spread.count) - 1.0);
    let degrees = 1.0 / (part(first, before) + part(second, after));
    // The degrees are never fewer than those of the smaller group; rounding may put them under.
    let degrees = degrees.max(1.0);
    let reach = || Exact::from_estimate(student_t(degrees)? * both.sqrt());
    let reach = reach().ok_or(Overflow::TooLarge)?;
    let degrees = Exact::from_estimate(degrees).ok_or(Overflow::TooLarge)?;
    Ok(Interval::Range { difference, low: difference.minus(reach)?, high: difference.plus(reach)?, degrees })
}

/// How many numbers more `after` likely needs, at its present mean and scatter, before the interval
/// no longer spans zero. Returns `None` if [`MOST_MORE`] are not enough.
///
/// # Errors
/// [`Overflow`].
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
