//! Bisection: finding a number in a span by halving it again and again.

use super::measure::{Exact, Overflow};

/// When the bisection ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Until {
    /// After this many halvings.
    Halved(u32),
    /// When the two ends are at most this far apart.
    Within(Exact),
    /// When no number with this many decimals is between the two ends. Only such numbers are tried.
    Adjacent(u32),
}

/// How to go on after a number was tried.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Next {
    /// The near end moves here.
    Near(Exact),
    /// The far end moves here.
    Far(Exact),
    /// This is the number that is looked for.
    Found(Exact),
}

/// Bisects the span between `near` and `far`, either of which may be the larger one, and returns the two ends
/// that are left, or twice the number that was found. `try_out` is called with the near end and the number in
/// the middle.
///
/// # Errors
/// [`Overflow`] of the middle, or of `try_out`.
pub fn bisect(
    near: Exact,
    far: Exact,
    until: Until,
    try_out: &mut dyn FnMut(Exact, Exact) -> Result<Next, Overflow>,
) -> Result<(Exact, Exact), Overflow> {
    let (mut near, mut far) = (near, far);
    let mut halved: u32 = 0;
    loop {
        let mut middle = near.plus(far)?.over(Exact::new(2, 0))?;
        let is_close = match until {
            Until::Halved(times) => halved >= times,
            Until::Within(distance) => far.minus(near)?.abs() <= distance,
            Until::Adjacent(places) => {
                middle = middle.rounded(places);
                middle == near || middle == far
            }
        };
        if is_close {
            return Ok((near, far));
        }
        match try_out(near, middle)? {
            Next::Near(here) => near = here,
            Next::Far(here) => far = here,
            Next::Found(here) => return Ok((here, here)),
        }
        halved = halved.saturating_add(1);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::exact;

    /// The ends around the root of a number, and how many numbers were tried.
    fn root_of(number: &str, near: &str, far: &str, until: Until) -> ((Exact, Exact), usize) {
        let rises = exact(near) < exact(far);
        let mut tried = 0;
        let ends = bisect(exact(near), exact(far), until, &mut |_, middle| {
            tried += 1;
            let is_under = middle.times(middle)? < exact(number);
            Ok(if is_under == rises { Next::Near(middle) } else { Next::Far(middle) })
        });
        (ends.unwrap(), tried)
    }

    #[test]
    fn each_halving_halves_the_span() {
        // By hand: of 1 to 2 the root of 2 is in 1 to 1.5, 1.25 to 1.5, 1.375 to 1.5.
        let three = ((exact("1.375"), exact("1.5")), 3);
        assert_eq!(root_of("2", "1", "2", Until::Halved(3)), three);
        assert_eq!(root_of("2", "1", "2", Until::Halved(0)), ((exact("1"), exact("2")), 0));
        let down = ((exact("1.5"), exact("1.375")), 3);
        assert_eq!(root_of("2", "2", "1", Until::Halved(3)), down);
    }

    #[test]
    fn the_ends_come_as_close_as_is_asked() {
        assert_eq!(root_of("2", "1", "2", Until::Within(exact("0.125"))), ((exact("1.375"), exact("1.5")), 3));
        assert_eq!(root_of("2", "2", "1", Until::Within(exact("0.2"))), ((exact("1.5"), exact("1.375")), 3));
        assert_eq!(root_of("2", "1", "2", Until::Within(exact("1"))), ((exact("1"), exact("2")), 0));
    }

    #[test]
    fn adjacent_ends_have_no_number_between_them() {
        // The root of 2 is 1.41421...
        assert_eq!(root_of("2", "1", "2", Until::Adjacent(2)).0, (exact("1.41"), exact("1.42")));
        assert_eq!(root_of("2", "2", "1", Until::Adjacent(2)).0, (exact("1.42"), exact("1.41")));
        assert_eq!(root_of("2", "1", "1.01", Until::Adjacent(2)), ((exact("1"), exact("1.01")), 0));
        assert_eq!(root_of("2", "1", "1", Until::Adjacent(2)), ((exact("1"), exact("1")), 0));
    }

    #[test]
    fn what_is_found_ends_the_search() {
        let mut tried = Vec::new();
        let found = bisect(exact("0"), exact("8"), Until::Halved(9), &mut |near, middle| {
            tried.push((near, middle));
            Ok(if middle == exact("6") { Next::Found(exact("6.5")) } else { Next::Near(middle) })
        });
        assert_eq!(found, Ok((exact("6.5"), exact("6.5"))));
        assert_eq!(tried, [(exact("0"), exact("4")), (exact("4"), exact("6"))]);
    }

    #[test]
    fn what_cannot_be_tried_ends_it_too() {
        let fails = bisect(Exact::ZERO, Exact::ONE, Until::Halved(9), &mut |_, _| Err(Overflow::DivisionByZero));
        assert_eq!(fails, Err(Overflow::DivisionByZero));
    }
}
