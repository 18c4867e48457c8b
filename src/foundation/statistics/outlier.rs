//! The outlier among numbers of one kind, by Grubbs' two-sided test at 5 % (NIST/SEMATECH e-Handbook of
//! Statistical Methods, 1.3.5.17.1).

use super::Spread;
use super::interval::quantile;
use crate::foundation::measure::{Exact, Overflow};

/// The fewest numbers that can be tested.
pub const LEAST_TESTED: usize = 3;

/// The level of the test: how often it finds an outlier where there is none.
const RISK: f64 = 0.05;

/// The number farthest from the mean of all, tested.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Farthest {
    /// Its place among the numbers, from 0. Of two that are equally far, the first.
    pub place: usize,
    /// G: how many standard deviations it is from the mean.
    pub statistic: Exact,
    /// The critical value: without an outlier G is below it 95 times of 100.
    pub critical: Exact,
}

impl Farthest {
    /// Whether the test calls it an outlier.
    pub fn is_outlier(&self) -> bool {
        self.statistic > self.critical
    }
}

/// Tests the number farthest from the mean of all. Returns `None` for fewer than three numbers, or if
/// all are alike. The test assumes that the numbers are normally distributed.
///
/// # Errors
/// [`Overflow`] if a number leaves the range of [`Exact`].
pub fn grubbs(values: &[Exact]) -> Result<Option<Farthest>, Overflow> {
    let Some(spread) = Spread::of(values)? else { return Ok(None) };
    if values.len() < LEAST_TESTED || spread.deviation.is_zero() {
        return Ok(None);
    }
    let mut farthest = (0, Exact::ZERO);
    for (place, value) in values.iter().enumerate() {
        let off = value.minus(spread.mean)?.abs();
        if off > farthest.1 {
            farthest = (place, off);
        }
    }
    let critical = critical(f64::from(spread.count)).and_then(Exact::from_estimate).ok_or(Overflow::TooLarge)?;
    let (place, off) = farthest;
    Ok(Some(Farthest { place, statistic: off.over(spread.deviation)?.as_part(), critical }))
}

/// The critical value for N numbers: (N - 1) / root N * root(t^2 / (N - 2 + t^2)), with t the upper
/// quantile at RISK / (2 N) of Student's t with N - 2 degrees of freedom.
fn critical(count: f64) -> Option<f64> {
    let free = count - 2.0;
    let square = quantile(1.0 - RISK / (2.0 * count), free)?.powi(2);
    Some((count - 1.0) / count.sqrt() * (square / (free + square)).sqrt())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::exact;

    fn tested(numbers: &[&str]) -> Option<Farthest> {
        grubbs(&numbers.iter().map(|number| exact(number)).collect::<Vec<_>>()).unwrap()
    }

    #[test]
    fn too_few_and_all_alike_are_not_tested() {
        for none in [&[][..], &["1"], &["1", "9"], &["0.9"; 5]] {
            assert_eq!(tested(none), None, "{none:?}");
        }
    }

    #[test]
    fn of_three_hardly_any_stands_apart() {
        // G of three can be 2 / root 3 = 1.1547 at most, which the critical value nearly is.
        let apart = tested(&["1", "1", "2"]).unwrap();
        assert_eq!((apart.place, apart.statistic.rounded(6), apart.is_outlier()), (2, exact("1.154701"), true));
        assert!(!tested(&["1", "1.2", "2"]).unwrap().is_outlier());
    }
}
