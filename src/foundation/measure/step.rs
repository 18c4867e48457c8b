//! Whole steps of a scale or a jug: what people can weigh and measure out.

use super::{Amount, Exact, Measure, Overflow};

/// Decimals to which steps are counted before they are rounded: thirds on the way would else be
/// a little under a half, or ask for a step more.
const STEP_PLACES: u32 = 9;

/// The whole number of steps nearest to an amount, half a step upwards, in the unit of the step.
///
/// Returns `None` if the step measures another kind of thing or is not above zero. It does so for
/// less than half a step too: none at all would leave the amount out, and a whole step can be many
/// times too much.
///
/// # Errors
/// [`Overflow`].
pub fn nearest_step(measure: Measure, step: Amount) -> Result<Option<Amount>, Overflow> {
    in_steps(measure, step, |steps| steps.rounded(0))
}

/// The least whole number of steps that is no less than an amount, in the unit of the step.
///
/// Returns `None` if the step measures another kind of thing or is not above zero, and for an
/// amount of nothing.
///
/// # Errors
/// [`Overflow`].
pub fn next_step(measure: Measure, step: Amount) -> Result<Option<Amount>, Overflow> {
    in_steps(measure, step, Exact::ceiling)
}

/// How many whole steps are at least `amount`.
///
/// # Errors
/// [`Overflow`], also for a step of nothing.
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
