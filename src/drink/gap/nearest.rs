//! The nearest value at which something holds, found by bisection.

use crate::foundation::bisection::{Next, Until, bisect};
use crate::foundation::measure::{Exact, Overflow};

/// Values from where a lever stands to as far as it goes, in steps of one in the last decimal.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Range {
    /// Where it stands.
    pub from: Exact,
    /// As far as it goes.
    pub to: Exact,
    /// Decimals of a value.
    pub places: u32,
}

/// What a value does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Outcome {
    /// It cannot be tried.
    Impossible,
    /// It is not enough.
    Misses,
    /// It is enough.
    Closes,
}

/// The value nearest to `from` that closes; the value one step before it does not. Returns `None`
/// if the furthest possible value does not close. If outcomes change more than once on the way, it
/// is at one of the changes.
///
/// # Errors
/// [`Overflow`].
pub(super) fn nearest(range: Range, mut outcome: impl FnMut(Exact) -> Outcome) -> Result<Option<Exact>, Overflow> {
    let places = range.places;
    let mut furthest = range.to;
    if outcome(furthest) == Outcome::Impossible {
        furthest = last_possible(range.from, furthest, places, &mut outcome)?;
    }
    if outcome(furthest) != Outcome::Closes {
        return Ok(None);
    }
    let (_, closes) = bisect(range.from, furthest, Until::Adjacent(places), &mut |near, middle| {
        Ok(match outcome(middle) {
            Outcome::Closes => Next::Far(middle),
            Outcome::Misses => Next::Near(middle),
            // In a gap where nothing can be made, its near edge tells on which side to go on.
            Outcome::Impossible => {
                let edge = last_possible(near, middle, places, &mut outcome)?;
                if outcome(edge) == Outcome::Closes { Next::Far(edge) } else { Next::Near(middle) }
            }
        })
    })?;
    Ok(Some(closes))
}

/// From `near`, which is possible, to `far`, which is not: the last value that is.
fn last_possible(
    near: Exact,
    far: Exact,
    places: u32,
    outcome: &mut impl FnMut(Exact) -> Outcome,
) -> Result<Exact, Overflow> {
    let (last, _) = bisect(near, far, Until::Adjacent(places), &mut |_, middle| {
        Ok(if outcome(middle) == Outcome::Impossible { Next::Far(middle) } else { Next::Near(middle) })
    })?;
    Ok(last)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::exact;

    fn range(from: &str, to: &str) -> Range {
        Range { from: exact(from), to: exact(to), places: 2 }
    }

    fn closes_if(closes: bool) -> Outcome {
        if closes { Outcome::Closes } else { Outcome::Misses }
    }

    #[test]
    fn the_first_value_that_closes_is_found_both_ways() {
        let down = nearest(range("38", "0"), |value| closes_if(value <= exact("33.105")));
        assert_eq!(down, Ok(Some(exact("33.1"))));
        let up = nearest(range("0.5", "999"), |value| closes_if(value >= exact("33.105")));
        assert_eq!(up, Ok(Some(exact("33.11"))));
        let one_step = nearest(range("1", "0.99"), |value| closes_if(value < exact("1")));
        assert_eq!(one_step, Ok(Some(exact("0.99"))));
    }

    #[test]
    fn what_does_not_close_at_its_furthest_does_not_close() {
        assert_eq!(nearest(range("38", "0"), |_| Outcome::Misses), Ok(None));
        assert_eq!(nearest(range("38", "0"), |_| Outcome::Impossible), Ok(None));
        assert_eq!(nearest(range("1", "1"), |_| Outcome::Misses), Ok(None));
    }

    #[test]
    fn the_furthest_is_what_is_possible() {
        let within = |limit: &'static str, closes: &'static str| {
            nearest(range("10", "0"), move |value| {
                if value < exact(limit) { Outcome::Impossible } else { closes_if(value <= exact(closes)) }
            })
        };
        assert_eq!(within("2.5", "4"), Ok(Some(exact("4"))));
        assert_eq!(within("2.5", "2.5"), Ok(Some(exact("2.5"))));
        assert_eq!(within("2.5", "2.49"), Ok(None));
    }

    #[test]
    fn a_gap_where_nothing_is_possible_hides_nothing() {
        let down = |gap: [&'static str; 2], closes: &'static str| {
            nearest(range("10", "0"), move |value| {
                let [low, high] = gap.map(exact);
                let impossible = low <= value && value < high;
                if impossible { Outcome::Impossible } else { closes_if(value <= exact(closes)) }
            })
        };
        // The middle lies in the gap: what closes before it is found, and what closes after it.
        assert_eq!(down(["4", "6"], "8"), Ok(Some(exact("8"))));
        assert_eq!(down(["4", "6"], "6"), Ok(Some(exact("6"))));
        assert_eq!(down(["4", "6"], "5"), Ok(Some(exact("3.99"))));
        assert_eq!(down(["4", "6"], "1"), Ok(Some(exact("1"))));
    }
}
