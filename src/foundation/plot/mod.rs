//! Axes of charts: from what to what an axis runs, where its marks are, and where on it a number lies.

use crate::foundation::measure::{Exact, Overflow};

/// The most marks on an axis.
const MARKS: usize = 6;

/// An axis: from a round number to a round number, with a mark at each step between.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Scale {
    low: Exact,
    high: Exact,
    /// The numbers at its marks in rising order, with both ends.
    pub marks: Vec<Exact>,
}

impl Scale {
    /// The axis that shows all these numbers, and zero too if `from_zero`. Its steps are 1, 2 or 5 times
    /// a power of ten: the smallest that need at most six marks. If all numbers are equal, its step is
    /// at least 1.
    ///
    /// # Errors
    /// [`Overflow`] if a mark leaves the range of [`Exact`].
    pub fn of(numbers: impl IntoIterator<Item = Exact>, from_zero: bool) -> Result<Scale, Overflow> {
        let start = from_zero.then_some(Exact::ZERO);
        let all: Vec<Exact> = numbers.into_iter().chain(start).collect();
        let low = all.iter().copied().min().unwrap_or(Exact::ZERO);
        let high = all.iter().copied().max().unwrap_or(Exact::ZERO);
        let span = high.minus(low)?;
        let mut step = Exact::new(1, 6);
        let mut factors = [Exact::new(2, 0), Exact::new(25, 1), Exact::new(2, 0)].into_iter().cycle();
        loop {
            let marks = marks(low, high, step)?;
            if marks.len() <= MARKS && (span.is_positive() || step >= Exact::ONE) {
                let (first, last) = (marks.first().copied(), marks.last().copied());
                return Ok(Scale { low: first.unwrap_or(low), high: last.unwrap_or(high), marks });
            }
            step = step.times(factors.next().unwrap_or(Exact::ONE))?;
        }
    }

    /// How far along the axis a number lies: 0 at the low end, `parts` at the high end. A number beyond
    /// an end counts as that end.
    pub fn position(&self, number: Exact, parts: u32) -> u32 {
        let along = || number.minus(self.low).ok()?.over(self.high.minus(self.low).ok()?).ok();
        along().and_then(|along| along.max(Exact::ZERO).min(Exact::ONE).in_parts(parts)).unwrap_or(0)
    }
}

/// Multiples of `step` from at most `low` to at least `high`: at least two, and at most one more than
/// an axis may have.
fn marks(low: Exact, high: Exact, step: Exact) -> Result<Vec<Exact>, Overflow> {
    let mut mark = low.over(step)?.floor().times(step)?;
    let mut marks = vec![mark];
    while marks.len() <= MARKS && (mark < high || marks.len() < 2) {
        mark = mark.plus(step)?;
        marks.push(mark);
    }
    Ok(marks)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::exact;

    fn scale(numbers: &[&str], from_zero: bool) -> Scale {
        Scale::of(numbers.iter().map(|number| exact(number)), from_zero).unwrap()
    }

    fn marks(numbers: &[&str], from_zero: bool) -> Vec<String> {
        scale(numbers, from_zero).marks.iter().map(ToString::to_string).collect()
    }

    #[test]
    fn marks_are_round_and_few() {
        assert_eq!(marks(&["3.20", "9.75"], true), ["0", "2", "4", "6", "8", "10"]);
        assert_eq!(marks(&["236.6", "473.2"], false), ["200", "300", "400", "500"]);
        assert_eq!(marks(&["-120", "430"], false), ["-200", "0", "200", "400", "600"]);
        assert_eq!(marks(&["0.05", "0.052"], false), ["0.05", "0.0505", "0.051", "0.0515", "0.052"]);
    }

    #[test]
    fn a_single_number_and_none_have_an_axis_too() {
        assert_eq!(marks(&["7"], false), ["7", "8"]);
        assert_eq!(marks(&["7", "7"], true), ["0", "2", "4", "6", "8"]);
        assert_eq!(marks(&[], false), ["0", "1"]);
    }

    #[test]
    fn numbers_lie_along_the_axis() {
        let scale = scale(&["0", "10"], true);
        let at = |number: &str| scale.position(exact(number), 1000);
        assert_eq!([at("0"), at("2.5"), at("10"), at("-1"), at("11")], [0, 250, 1000, 0, 1000]);
    }
}
