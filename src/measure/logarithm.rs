//! Natural logarithms, without binary fractions.

use super::{Exact, Overflow};

/// Roots are taken until a number is this near to one.
const NEAR_ONE: Exact = Exact::new(1, 1);

impl Exact {
    /// The natural logarithm, to twelve decimals; none for zero and below.
    ///
    /// By roots until the number is near to one, ln x = 2 ln √x, and there by the series of
    /// ln x = 2 artanh((x - 1) / (x + 1)), whose terms fall below the last digit.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn natural_logarithm(self) -> Result<Option<Exact>, Overflow> {
        if !self.is_positive() {
            return Ok(None);
        }
        let (mut number, mut factor) = (self, Exact::new(2, 0));
        while number.minus(Exact::ONE)?.abs() > NEAR_ONE {
            number = number.square_root()?;
            factor = factor.times(Exact::new(2, 0))?;
        }
        let step = number.minus(Exact::ONE)?.over(number.plus(Exact::ONE)?)?;
        let squared = step.times(step)?;
        let (mut power, mut odd, mut sum) = (step, Exact::ONE, Exact::ZERO);
        while !power.is_zero() {
            sum = sum.plus(power.over(odd)?)?;
            power = power.times(squared)?;
            odd = odd.plus(Exact::new(2, 0))?;
        }
        Ok(Some(sum.times(factor)?.as_part()))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::exact;

    fn logarithm(number: &str) -> Option<Exact> {
        exact(number).natural_logarithm().unwrap()
    }

    #[test]
    fn logarithms_as_published() {
        // OEIS A002162, A002391, A016628, A002392: ln 2, ln 3, ln 5 and ln 10.
        for (number, expected) in [
            ("2", "0.693147180560"),
            ("3", "1.098612288668"),
            ("5", "1.609437912434"),
            ("10", "2.302585092994"),
            ("0.5", "-0.69314718056"),
            ("1", "0"),
        ] {
            assert_eq!(logarithm(number), Some(exact(expected)), "{number}");
        }
    }

    #[test]
    fn the_logarithm_of_a_product_is_the_sum() {
        // From a ten-thousandth to a hundred million: ln (10^n) is n ln 10 (OEIS A002392).
        let ten = "2.302585092994045684017991454";
        let ten = ten.split_once('.').map(|(_, part)| exact(&format!("2.{}", &part[..12]))).unwrap();
        for power in -4..=8_i64 {
            let number = match power {
                0.. => Exact::new(10_i64.pow(power as u32), 0),
                _ => Exact::new(1, power.unsigned_abs() as u32),
            };
            let expected = ten.times(Exact::new(power, 0)).unwrap();
            let off = number.natural_logarithm().unwrap().unwrap().minus(expected).unwrap().abs();
            assert!(off <= exact("0.00000000001"), "10^{power}: {off}");
        }
    }

    #[test]
    fn nothing_has_no_logarithm() {
        assert_eq!((logarithm("0"), logarithm("-1")), (None, None));
    }
}
