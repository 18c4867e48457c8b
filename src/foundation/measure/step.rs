//! Whole steps of a scale or jug: the amounts that people can measure out.

use super::{Amount, Exact, Measure, Overflow};

/// Decimals to which steps are rounded before they are counted. Without that, a third that was rounded on
/// the way could be just below half a step, or ask for one step more.
const STEP_PLACES: u32 = 9;

/// The whole number of steps nearest to an amount, with half a step rounded up, in the unit of the step.
///
/// Returns `None` if the step has another dimension, or is not above zero. It also does for less than half
/// a step: no step at all would leave it out, and a whole one can be many times too much.
///
/// # Errors
/// [`Overflow`] if a number leaves the range of [`Exact`].
pub fn nearest_step(measure: Measure, step: Amount) -> Result<Option<Amount>, Overflow> {
    in_steps(measure, step, |steps| steps.rounded(0))
}

/// The smallest whole number of steps that is at least an amount, in the unit of the step.
///
/// Returns `None` if the step has another dimension, or is not above zero, and if the amount is zero.
///
/// # Errors
/// [`Overflow`] if a number leaves the range of [`Exact`].
pub fn next_step(measure: Measure, step: Amount) -> Result<Option<Amount>, Overflow> {
    in_steps(measure, step, Exact::ceiling)
}

/// The smallest number of whole steps that is at least `amount`.
///
/// # Errors
/// [`Overflow`] if a number leaves the range of [`Exact`], or if the step is zero.
pub fn whole_steps(amount: Exact, step: Exact) -> Result<Exact, Overflow> {
    Ok(steps(amount, step)?.ceiling())
}

fn steps(amount: Exact, step: Exact) -> Result<Exact, Overflow> {
    Ok(amount.over(step)?.rounded(STEP_PLACES))
}

fn in_steps(measure: Measure, step: Amount, whole: fn(Exact) -> Exact) -> Result<Option<Amount>, Overflow> {
    if step.unit.dimension() != measure.dimension() || !step.number.is_positive() {
        return Ok(None);
    }
    let whole = whole(steps(measure.base(), step.measure()?.base())?);
    Ok(if whole.is_positive() { Some(Amount::new(whole.times(step.number)?, step.unit)) } else { None })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::{amount, measure};

    #[test]
    fn nearest_is_half_a_step_upwards() {
        // By hand.
        for (taken, step, steps) in [
            ("12 g", "5 g", Some("10 g")),
            ("12.5 g", "5 g", Some("15 g")),
            ("2.5 g", "5 g", Some("5 g")),
            ("2.49 g", "5 g", None),
            ("1 lb", "0.1 oz", Some("16 oz")),
            ("28.3495 g", "0.25 oz", Some("1 oz")),
            ("0.77 fl oz", "0.5 fl oz", Some("1 fl oz")),
            ("100 mL", "5 g", None),
            ("1 ea", "5 g", None),
            ("0.51 ea", "0.5 ea", Some("0.5 ea")),
            ("0 g", "5 g", None),
        ] {
            assert_eq!(nearest_step(measure(taken), amount(step)), Ok(steps.map(amount)), "{taken} in {step}");
        }
    }

    #[test]
    fn the_next_step_is_never_less() {
        // By hand.
        for (taken, step, steps) in [
            ("12 g", "5 g", Some("15 g")),
            ("15 g", "5 g", Some("15 g")),
            ("0.003 oz", "0.1 oz", Some("0.1 oz")),
            ("0 g", "5 g", None),
            ("100 mL", "5 g", None),
        ] {
            assert_eq!(next_step(measure(taken), amount(step)), Ok(steps.map(amount)), "{taken} in {step}");
        }
    }

    #[test]
    fn what_division_leaves_is_forgiven() {
        assert_eq!(next_step(measure("200.000000000001 g"), amount("5 g")), Ok(Some(amount("200 g"))));
        assert_eq!(nearest_step(measure("12.499999999999 g"), amount("5 g")), Ok(Some(amount("15 g"))));
    }

    #[test]
    fn a_step_of_nothing_is_none() {
        assert_eq!(nearest_step(measure("12 g"), amount("0 g")), Ok(None));
    }
}
