//! The factor of a recipe whose lines in steps take whole numbers of steps.

use super::{ScaleError, TOLERANCE, Written};
use crate::book::{DrinkId, Scaling};
use crate::foundation::bisection::{Next, Until, bisect};
use crate::foundation::measure::{Exact, Overflow, Volume};

/// Bisections of the bracket. After so many it is far narrower than the distance between two jumps, and
/// still far wider than a rounding error of a division, so that lines which take a step at the same factor
/// take it together.
const BISECTIONS: u32 = 48;

/// The factor at which the lines in proportion and the lines in steps together fill `left`. `relaxed` is the
/// factor if steps need not be whole.
///
/// The space that the lines fill is a monotone function of the factor: linear, with a jump wherever one more
/// step is taken. Rounding to whole steps moves each line by at most half a step, which brackets the factor
/// around the relaxed one. The bracket is bisected. Then the linear piece on either side of what is left of
/// it is solved exactly.
///
/// # Errors
/// [`ScaleError::BetweenSteps`] if `left` falls in a jump; [`ScaleError::Arithmetic`] on overflow.
pub(super) fn factor_with_steps(
    drink: DrinkId,
    written: &[Written],
    left: Volume,
    relaxed: Exact,
) -> Result<Exact, ScaleError> {
    let mut scaling = Volume::ZERO;
    let mut half_steps = Volume::ZERO;
    let mut in_proportion = Volume::ZERO;
    for line in written.iter().filter(|line| line.line.scaling != Scaling::Fixed) {
        scaling = scaling.plus(line.space)?;
        half_steps = half_steps.plus(line.step_space()?.over(Exact::new(2, 0))?)?;
        if line.step.is_none() {
            in_proportion = in_proportion.plus(line.space)?;
        }
    }
    let in_steps = |factor: Exact| -> Result<Volume, Overflow> {
        written.iter().try_fold(Volume::ZERO, |sum, line| sum.plus(line.step_space()?.times(line.steps(factor)?)?))
    };
    let filled = |factor: Exact| in_steps(factor)?.plus(in_proportion.times(factor)?);

    let off = half_steps.ratio_to(scaling)?;
    let (lower, upper) = (relaxed.minus(off)?.max(Exact::ZERO), relaxed.plus(off)?);
    let (low, high) = bisect(lower, upper, Until::Halved(BISECTIONS), &mut |_, middle| {
        Ok(if filled(middle)? <= left { Next::Near(middle) } else { Next::Far(middle) })
    })?;
    for side in [low, high] {
        let steps = in_steps(side)?;
        let rest = left.minus(steps)?;
        if in_proportion.is_positive() {
            let factor = rest.ratio_to(in_proportion)?;
            if !factor.is_negative() && in_steps(factor)? == steps {
                return Ok(factor);
            }
        } else if Volume::from_millilitres(rest.millilitres().abs()) < TOLERANCE {
            return Ok(side);
        }
    }
    Err(ScaleError::BetweenSteps {
        drink,
        short: left.minus(filled(low)?)?.as_part(),
        over: filled(high)?.minus(left)?.as_part(),
    })
}
