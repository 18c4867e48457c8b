//! Estimates from few numbers: their spread, a straight line through points, the interval in which
//! a mean or a difference of two lies, the number that stands apart from the others, and hints for
//! a program of whole numbers.
//!
//! What is estimated is computed in binary fractions; what comes out is always a finite number, or
//! a reason why there is none.

mod interval;
mod line;
mod outlier;
mod relaxed;
mod spread;

pub use interval::{Interval, MOST_MORE, mean_interval, more_until_clear, student_t, welch};
pub use line::{LEAST_POINTS, Line, NoLine, line};
pub use outlier::{Farthest, LEAST_TESTED, grubbs};
pub use relaxed::{Hints, Relaxed};
pub use spread::Spread;

/// The natural logarithm; none of what is not a finite number above zero.
pub fn natural_logarithm(number: f64) -> Option<f64> {
    (number > 0.0).then(|| number.ln()).filter(|logarithm| logarithm.is_finite())
}

/// The number whose natural logarithm this is; none where that is zero or endless as a binary
/// fraction.
pub fn exponential(logarithm: f64) -> Option<f64> {
    Some(logarithm.exp()).filter(|number| number.is_normal())
}
