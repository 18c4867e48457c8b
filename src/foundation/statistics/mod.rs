//! Estimates from few numbers: their spread, a straight line through points, the interval in which
//! a mean or a difference of two lies, how many numbers it takes to tell one, the number that stands apart from
//! the others; and a linear
//! program, the relaxation of one in whole numbers.
//!
//! Estimates are computed in binary fractions. What comes out is always a finite number, or a reason
//! why there is none.

mod interval;
mod line;
mod linear_program;
mod outlier;
mod spread;
mod to_tell;

pub use interval::{Interval, MOST_MORE, mean_interval, more_until_clear, student_t, welch};
pub use line::{LEAST_POINTS, Line, NoLine, line};
pub use linear_program::{LinearProgram, LpSolution};
pub use outlier::{Farthest, LEAST_TESTED, grubbs};
pub use spread::Spread;
pub use to_tell::numbers_to_tell;

/// The natural logarithm. Returns `None` if the number is not finite and above zero.
pub fn natural_logarithm(number: f64) -> Option<f64> {
    (number > 0.0).then(|| number.ln()).filter(|logarithm| logarithm.is_finite())
}

/// The number whose natural logarithm this is. Returns `None` if that is too small or too large
/// for a binary fraction.
pub fn exponential(logarithm: f64) -> Option<f64> {
    Some(logarithm.exp()).filter(|number| number.is_normal())
}
