//! How many weeks a trial takes to tell a difference.

use crate::foundation::measure::{Exact, Overflow};

/// The quantile of the normal distribution that 97.5 % lie below: a two-sided test at 95 %.
const TWO_SIDED: f64 = 1.959_963_984_540_054;

/// The quantile that 80 % lie below: the power, the share of trials that find a difference that is there.
const POWER: f64 = 0.841_621_233_572_914_3;

/// How many numbers a side it takes, before and after, so that a difference of the means is found in four of
/// five trials, at a two-sided level of 95 %, by the normal approximation:
/// n = 2 (z.975 + z.80)^2 s^2 / d^2, rounded up, two at least. Returns `None` if there is no difference, or if it
/// takes more than `most`.
///
/// # Errors
/// [`Overflow`] if a number leaves the range of [`Exact`].
pub fn numbers_to_tell(deviation: Exact, difference: Exact, most: u32) -> Result<Option<u32>, Overflow> {
    if difference.is_zero() {
        return Ok(None);
    }
    let spreads = deviation.over(difference)?.to_estimate();
    let needed = (2.0 * ((TWO_SIDED + POWER) * spreads).powi(2)).ceil().max(2.0);
    Ok((needed <= f64::from(most)).then_some(needed as u32))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::exact;

    #[test]
    fn a_difference_of_one_deviation_takes_sixteen_a_side() {
        // By hand: 2 * (1.96 + 0.84)^2 = 15.7.
        assert_eq!(numbers_to_tell(exact("100"), exact("100"), 104), Ok(Some(16)));
        assert_eq!(numbers_to_tell(exact("100"), exact("-100"), 104), Ok(Some(16)), "a loss is told as a gain");
        assert_eq!(numbers_to_tell(exact("0"), exact("5"), 104), Ok(Some(2)), "two at least");
    }

    #[test]
    fn nothing_to_tell_or_too_little_of_it_takes_no_number() {
        assert_eq!(numbers_to_tell(exact("100"), exact("0"), 104), Ok(None));
        // Half the difference takes four times as many: 63; a third 142.
        assert_eq!(numbers_to_tell(exact("100"), exact("50"), 104), Ok(Some(63)));
        assert_eq!(numbers_to_tell(exact("100"), exact("33.3"), 104), Ok(None));
    }
}
