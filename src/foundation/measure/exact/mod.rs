//! The exact decimal behind every quantity, and how it is rounded.

#[cfg(test)]
mod tests;

use std::fmt;

use rust_decimal::Decimal;
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

/// Decimals of a computed part.
///
/// Every part of a cost is rounded to this many decimals once, when it is computed. So sums of parts are
/// exact.
pub const PART_PLACES: u32 = 12;

/// The most digits before the decimal sign that a typed or stored number may have.
pub const INTEGER_DIGITS: usize = 9;

/// The most digits after the decimal sign that a typed number may have. A stored share has two more,
/// since it is typed in percent.
pub const TYPED_PLACES: usize = 6;

/// The most digits after the decimal sign that any number has.
pub const MOST_PLACES: usize = 28;

/// The most digits after the decimal sign that a stored number may have.
pub(crate) const STORED_PLACES: usize = TYPED_PLACES.saturating_add(2);

/// Why exact arithmetic has no result.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Overflow {
    /// The result has more than 28 digits before the decimal sign, or exceeds another integer type.
    TooLarge,
    /// The divisor is zero.
    DivisionByZero,
    /// The square root is of a number below zero.
    RootOfNegative,
}

/// An exact decimal of up to 28 digits.
///
/// Sums, differences and products are exact while they fit in 28 digits; a quotient is rounded at the
/// 28th. Nothing here panics: a result out of range is an [`Overflow`].
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Exact(Decimal);

impl Exact {
    /// Zero.
    pub const ZERO: Exact = Exact(Decimal::ZERO);
    /// One.
    pub const ONE: Exact = Exact(Decimal::ONE);
    /// Pi to 27 decimals (OEIS A000796).
    pub const PI: Exact = Exact::from_digits(3_141_592_653_589_793_238_462_643_383, 27);

    /// `mantissa` divided by ten to the power of `places` (0 to 28).
    ///
    /// ```
    /// # use brimwright::foundation::measure::Exact;
    /// assert_eq!(Exact::new(125, 1).to_string(), "12.5");
    /// ```
    pub const fn new(mantissa: i64, places: u32) -> Exact {
        Exact(Decimal::from_parts(
            mantissa.unsigned_abs() as u32,
            (mantissa.unsigned_abs() >> 32) as u32,
            0,
            mantissa < 0,
            places,
        ))
    }

    /// One: the default of stored numbers that are left out if they are one.
    pub const fn one() -> Exact {
        Exact::ONE
    }

    /// Whether it is one.
    pub fn is_one(&self) -> bool {
        *self == Exact::ONE
    }

    /// `digits` (below 2 to the power of 96) divided by ten to the power of `places`.
    const fn from_digits(digits: u128, places: u32) -> Exact {
        Exact(Decimal::from_parts(digits as u32, (digits >> 32) as u32, (digits >> 64) as u32, false, places))
    }

    /// The sum.
    ///
    /// # Errors
    /// [`Overflow::TooLarge`].
    #[inline(never)]
    pub fn plus(self, other: Exact) -> Result<Exact, Overflow> {
        self.0.checked_add(other.0).map(Exact).ok_or(Overflow::TooLarge)
    }

    /// The difference.
    ///
    /// # Errors
    /// [`Overflow::TooLarge`].
    #[inline(never)]
    pub fn minus(self, other: Exact) -> Result<Exact, Overflow> {
        self.plus(other.negated())
    }

    /// The product. If it needs more than 28 digits it is rounded at the 28th, half to even.
    ///
    /// # Errors
    /// [`Overflow::TooLarge`].
    #[inline(never)]
    pub fn times(self, other: Exact) -> Result<Exact, Overflow> {
        self.0.checked_mul(other.0).map(Exact).ok_or(Overflow::TooLarge)
    }

    /// The quotient, rounded at the 28th digit, half to even.
    ///
    /// # Errors
    /// [`Overflow::DivisionByZero`] or [`Overflow::TooLarge`].
    #[inline(never)]
    pub fn over(self, other: Exact) -> Result<Exact, Overflow> {
        if other.is_zero() {
            return Err(Overflow::DivisionByZero);
        }
        self.0.checked_div(other.0).map(Exact).ok_or(Overflow::TooLarge)
    }

    /// The square root, to 28 digits or 28 decimals.
    ///
    /// By Newton's method from above: each guess is lower than the one before, until rounding stops it.
    ///
    /// # Errors
    /// [`Overflow::RootOfNegative`] if the number is below zero.
    pub fn square_root(self) -> Result<Exact, Overflow> {
        if self.is_negative() {
            return Err(Overflow::RootOfNegative);
        }
        if self.is_zero() {
            return Ok(self);
        }
        let mut guess = if self > Exact::ONE { self } else { Exact::ONE };
        loop {
            let step = guess.minus(self.over(guess)?)?.over(Exact::new(2, 0))?;
            let lower = guess.minus(step)?;
            if lower >= guess {
                return Ok(guess);
            }
            guess = lower;
        }
    }

    /// The number with the other sign.
    pub fn negated(self) -> Exact {
        let mut number = self.0;
        number.set_sign_negative(self.is_positive());
        Exact(number)
    }

    /// Rounded to `places` decimals, half away from zero.
    #[inline(never)]
    pub fn rounded(self, places: u32) -> Exact {
        self.divided_to(places).unwrap_or(self)
    }

    /// Rounded by one division of the digits. Returns `None` if there is nothing to round. The library's own
    /// rounding works digit group by digit group, and took a sixth of all computing time.
    fn divided_to(self, places: u32) -> Option<Exact> {
        let dropped = self.0.scale().checked_sub(places).filter(|dropped| *dropped > 0)?;
        let step = 10_u128.checked_pow(dropped)?;
        let digits = self.0.mantissa().unsigned_abs();
        let kept = digits.checked_div(step)?;
        let rest = digits.checked_sub(kept.checked_mul(step)?)?;
        let away = u128::from(rest >= step.checked_sub(rest)?);
        let kept = i128::try_from(kept.checked_add(away)?).ok()?;
        let signed = if self.0.is_sign_negative() { kept.checked_neg()? } else { kept };
        Decimal::try_from_i128_with_scale(signed, places).ok().map(Exact)
    }

    /// Rounded up to `places` decimals.
    ///
    /// # Errors
    /// [`Overflow::TooLarge`].
    pub fn rounded_up(self, places: u32) -> Result<Exact, Overflow> {
        let nearest = self.rounded(places);
        if nearest < self { nearest.plus(Exact::new(1, places)) } else { Ok(nearest) }
    }

    /// The smallest whole number that is not below it.
    pub fn ceiling(self) -> Exact {
        Exact(self.0.ceil())
    }

    /// The greatest whole number that is not above it.
    pub fn floor(self) -> Exact {
        Exact(self.0.floor())
    }

    /// Rounded to [`PART_PLACES`] decimals, as every computed part is.
    pub fn as_part(self) -> Exact {
        self.rounded(PART_PLACES)
    }

    /// The number without its sign.
    pub fn abs(self) -> Exact {
        if self.is_negative() { self.negated() } else { self }
    }

    /// Whether it is zero.
    pub fn is_zero(&self) -> bool {
        self.0.is_zero()
    }

    /// Whether it is below zero.
    pub fn is_negative(self) -> bool {
        self.0.is_sign_negative() && !self.is_zero()
    }

    /// Whether it is above zero.
    pub fn is_positive(self) -> bool {
        self.0.is_sign_positive() && !self.is_zero()
    }

    /// How many digits it has after the decimal sign, without trailing zeros.
    pub fn places(self) -> u32 {
        self.0.normalize().scale()
    }

    /// Reads plain digits with a point ("-12.5"), without exponent, group signs or blanks. Returns `None`
    /// for anything else, for more than [`INTEGER_DIGITS`] digits before the point, and for more than
    /// `places` after it.
    pub fn from_plain(text: &str, places: usize) -> Option<Exact> {
        let digits = text.strip_prefix('-').unwrap_or(text);
        let (whole, part) = match digits.split_once('.') {
            Some((_, "")) => return None,
            Some(halves) => halves,
            None => (digits, ""),
        };
        let all_digits = |half: &str| half.bytes().all(|byte| byte.is_ascii_digit());
        if whole.is_empty() || !all_digits(whole) || !all_digits(part) {
            return None;
        }
        if whole.trim_start_matches('0').len() > INTEGER_DIGITS || part.len() > places {
            return None;
        }
        Decimal::from_str_exact(text).ok().map(|value| Exact(value.normalize()))
    }

    /// Whether it has no more digits than a stored number may have.
    pub fn keeps(self) -> bool {
        let too_large = Exact::new(10_i64.pow(INTEGER_DIGITS as u32), 0);
        self.abs() < too_large && self.places() <= STORED_PLACES as u32
    }

    /// The number as a binary fraction, off by less than one part in 10^15. For estimates only.
    pub fn to_estimate(self) -> f64 {
        self.0.mantissa() as f64 / 10_f64.powi(i32::try_from(self.0.scale()).unwrap_or_default())
    }

    /// An estimate as a decimal, to fifteen digits and at most [`PART_PLACES`] decimals. Returns `None` if
    /// it is not finite, or has more than fifteen digits before the point.
    pub fn from_estimate(number: f64) -> Option<Exact> {
        let fits = |places: &u32| (number * 10_f64.powi(*places as i32)).abs() < 1e15;
        let places = (0..=PART_PLACES).rev().find(fits)?;
        Some(Exact::new((number * 10_f64.powi(places as i32)).round() as i64, places))
    }

    /// Rounded to as many decimals as a stored number may have.
    pub fn kept(self) -> Exact {
        self.rounded(STORED_PLACES as u32)
    }

    /// Rounded up to as many decimals as a stored number may have.
    ///
    /// # Errors
    /// [`Overflow::TooLarge`].
    pub fn kept_up(self) -> Result<Exact, Overflow> {
        let kept = self.kept();
        if kept >= self { Ok(kept) } else { kept.plus(Exact::new(1, STORED_PLACES as u32)) }
    }

    /// The number in units of its last decimal, rounded to `places` decimals: 1.25 with three places is
    /// 1250. Returns `None` if that is out of the range of `i128`.
    pub fn whole_parts(self, places: u32) -> Option<i128> {
        let rounded = self.rounded(places).0;
        let more = places.checked_sub(rounded.scale())?;
        rounded.mantissa().checked_mul(10_i128.checked_pow(more)?)
    }

    /// The number times `parts`, rounded to a whole number: for lengths in a drawing. Returns `None` if
    /// that is out of the range of `u32`.
    pub fn in_parts(self, parts: u32) -> Option<u32> {
        let whole = self.times(Exact::from(parts)).ok()?.rounded(0);
        u32::try_from(whole.0.mantissa()).ok()
    }
}

/// Plain digits with a point, without trailing zeros.
impl fmt::Display for Exact {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let value = self.0.normalize();
        write!(f, "{}", if value.is_zero() { Decimal::ZERO } else { value })
    }
}

impl From<u32> for Exact {
    fn from(whole: u32) -> Exact {
        Exact(Decimal::from(whole))
    }
}

impl Serialize for Exact {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Exact {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Exact, D::Error> {
        let text = std::borrow::Cow::<'de, str>::deserialize(deserializer)?;
        let read = Exact::from_plain(&text, STORED_PLACES);
        read.ok_or_else(|| {
            de::Error::custom(format_args!(
                "{text:?} is not a plain decimal of at most 9 digits before the point and 8 after it"
            ))
        })
    }
}
