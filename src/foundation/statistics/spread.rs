//! Mean and standard deviation of a sample.

use crate::foundation::measure::{Exact, Overflow};

/// Mean and standard deviation of a sample, such as weighings or weeks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Spread {
    /// How many numbers; at least 2.
    pub count: u32,
    /// Their mean.
    pub mean: Exact,
    /// Their sample standard deviation: the sum of squares is divided by one less than the count.
    pub deviation: Exact,
}

impl Spread {
    /// The spread of `values`. Returns `None` if there are fewer than two.
    ///
    /// # Errors
    /// [`Overflow`] if a number leaves the range of [`Exact`].
    pub fn of(values: &[Exact]) -> Result<Option<Spread>, Overflow> {
        let count = u32::try_from(values.len()).map_err(|_| Overflow::TooLarge)?;
        let Some(free) = count.checked_sub(1).filter(|free| *free > 0) else { return Ok(None) };
        let sum = values.iter().try_fold(Exact::ZERO, |sum, value| sum.plus(*value))?;
        let mean = sum.over(Exact::from(count))?;
        let squares = values.iter().try_fold(Exact::ZERO, |sum, value| {
            let off = value.minus(mean)?;
            sum.plus(off.times(off)?)
        })?;
        let deviation = squares.over(Exact::from(free))?.square_root()?;
        Ok(Some(Spread { count, mean, deviation }))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::exact;

    #[test]
    fn fewer_than_two_have_no_spread() {
        assert_eq!(Spread::of(&[]), Ok(None));
        assert_eq!(Spread::of(&[exact("355")]), Ok(None));
    }

    #[test]
    fn equal_weighings_have_none_either() {
        let even = Spread { count: 3, mean: exact("355.2"), deviation: Exact::ZERO };
        assert_eq!(Spread::of(&[exact("355.2"); 3]), Ok(Some(even)));
    }

    #[test]
    fn two_lie_half_their_distance_times_the_root_of_two_from_their_mean() {
        let spread = Spread::of(&[exact("350"), exact("356")]).unwrap().unwrap();
        assert_eq!(spread.mean, exact("353"));
        assert_eq!(spread.deviation, exact("18").square_root().unwrap());
    }
}
