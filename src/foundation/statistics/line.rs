//! A straight line through points by least squares.

/// The fewest points that a line is fitted to: two would always lie on it.
pub const LEAST_POINTS: usize = 3;

/// The line y = a + b x with the smallest sum of squared vertical distances from the points. All its
/// numbers are finite.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Line {
    /// a: its y at x = 0.
    pub intercept: f64,
    /// b: how far it rises while x grows by 1.
    pub slope: f64,
    /// R²: the share of the variance of y that the line explains, 0 to 1. `None` if every y is the
    /// same, so that there is nothing to explain.
    pub explained: Option<f64>,
}

/// Why there is no line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoLine {
    /// There are only this many points, fewer than [`LEAST_POINTS`].
    TooFew(usize),
    /// Every point has the same x.
    AllAtOne,
    /// The numbers leave the range of binary fractions.
    OutOfRange,
}

impl Line {
    /// Its y at x. Returns `None` if that is not a finite number.
    pub fn at(&self, x: f64) -> Option<f64> {
        Some(self.intercept + self.slope * x).filter(|y| y.is_finite())
    }
}

/// The line through points (x, y) by least squares, computed from their distances to their mean.
///
/// # Errors
/// A [`NoLine`] if the points are too few, if they all have the same x, or if a number leaves the range
/// of binary fractions.
pub fn line(points: &[(f64, f64)]) -> Result<Line, NoLine> {
    let first = points.first().ok_or(NoLine::TooFew(0))?;
    if points.len() < LEAST_POINTS {
        return Err(NoLine::TooFew(points.len()));
    }
    if points.iter().all(|(x, _)| *x == first.0) {
        return Err(NoLine::AllAtOne);
    }
    let count = points.len() as f64;
    let mean = |of: fn(&(f64, f64)) -> f64| points.iter().map(of).sum::<f64>() / count;
    let (x_mean, y_mean) = (mean(|point| point.0), mean(|point| point.1));
    let sum = |of: &dyn Fn(f64, f64) -> f64| points.iter().map(|(x, y)| of(x - x_mean, y - y_mean)).sum::<f64>();
    let (xx, xy, yy) = (sum(&|x, _| x * x), sum(&|x, y| x * y), sum(&|_, y| y * y));
    let slope = xy / xx;
    let intercept = y_mean - slope * x_mean;
    let varies = points.iter().any(|(_, y)| *y != first.1);
    let explained = varies.then(|| (slope * xy / yy).clamp(0.0, 1.0));
    let finite = [intercept, slope, explained.unwrap_or_default()].into_iter().all(f64::is_finite);
    if finite { Ok(Line { intercept, slope, explained }) } else { Err(NoLine::OutOfRange) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_missing_is_said() {
        assert_eq!(line(&[]), Err(NoLine::TooFew(0)));
        assert_eq!(line(&[(1.0, 2.0), (2.0, 3.0)]), Err(NoLine::TooFew(2)));
        // A third is no binary fraction: its mean with itself may be off by a digit.
        assert_eq!(line(&[(1.0 / 3.0, 1.0), (1.0 / 3.0, 2.0), (1.0 / 3.0, 4.0)]), Err(NoLine::AllAtOne));
        for wild in [f64::NAN, f64::INFINITY, 1e200] {
            assert_eq!(line(&[(0.0, 1.0), (wild, 2.0), (-wild, -1e200)]), Err(NoLine::OutOfRange), "{wild}");
        }
    }

    #[test]
    fn a_line_runs_through_points_that_lie_on_one() {
        let found = line(&[(0.0, 1.0), (2.0, 5.0), (3.0, 7.0), (10.0, 21.0)]).unwrap();
        assert_eq!(found, Line { intercept: 1.0, slope: 2.0, explained: Some(1.0) });
        assert_eq!(found.at(4.0), Some(9.0));
        assert_eq!(found.at(f64::INFINITY), None);
    }

    #[test]
    fn equal_heights_leave_nothing_to_explain() {
        let flat = line(&[(1.0, 0.1), (2.0, 0.1), (4.0, 0.1)]).unwrap();
        assert!((flat.slope.abs() < 1e-15) && (flat.intercept - 0.1).abs() < 1e-15);
        assert_eq!(flat.explained, None);
    }
}
