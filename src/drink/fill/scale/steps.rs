//! How many steps are taken of each line in steps.

use super::{ScaleError, TOLERANCE, Whole, Written};
use crate::book::DrinkId;
use crate::foundation::bisection::{Next, Until, bisect};
use crate::foundation::measure::{Exact, Overflow, Volume};

/// Bisections of the bracket. After so many it is far narrower than the distance between two jumps, and
/// still far wider than a rounding error of a division, so that lines which take a step at the same factor
/// take it together.
const BISECTIONS: u32 = 48;

/// How many steps each line takes to fill the size; 0 for a line without steps.
///
/// What the lines fill is a function of the factor that only rises: linear, with a jump wherever one more step
/// is taken. Either the size is met where steps are the nearest to the factor of the lines in proportion, or
/// it lies in a jump. There the steps of that jump are taken from half a step of the unrounded factor on, one
/// line after another as long as they fit, and the lines in proportion take up the rest. So a larger fill never
/// takes fewer steps. With a top-up the factor is the unrounded one, and steps that do not fit are left out.
///
/// # Errors
/// [`ScaleError::BetweenSteps`] if no other line takes what steps leave; [`ScaleError::Arithmetic`] on overflow.
pub(super) fn whole_steps(drink: DrinkId, written: &[Written], whole: &Whole) -> Result<Vec<Exact>, ScaleError> {
    let at = |factor: Exact| steps_at(written, factor);
    if !written.iter().any(|line| line.step.is_some()) || !whole.unrounded.is_positive() {
        return Ok(at(Exact::ZERO)?);
    }
    if whole.space.tops_up {
        return Ok(under_a_top_up(written, whole)?);
    }
    let slope = whole.space.in_proportion;
    let (low, high) = around(written, whole, whole.left, slope)?;
    for side in [low, high] {
        let steps = at(side)?;
        let rest = whole.left.minus(space(written, &steps)?)?;
        if slope.is_positive() {
            let factor = rest.ratio_to(slope)?;
            if !factor.is_negative() && at(factor)? == steps {
                return Ok(steps);
            }
        } else if Volume::from_millilitres(rest.millilitres().abs()) < TOLERANCE {
            return Ok(steps);
        }
    }
    if !slope.is_positive() {
        return Err(ScaleError::BetweenSteps {
            drink,
            short: whole.left.minus(space(written, &at(low)?)?)?.as_part(),
            over: space(written, &at(high)?)?.minus(whole.left)?.as_part(),
        });
    }
    let nearest = at(whole.unrounded)?;
    let (before, after) = (at(low)?, at(high)?);
    let is_near =
        |line: usize| matches!((nearest.get(line), after.get(line)), (Some(near), Some(after)) if near >= after);
    Ok(as_fit(written, before, &after, whole.left, &is_near)?)
}

/// The steps of each line at a factor.
fn steps_at(written: &[Written], factor: Exact) -> Result<Vec<Exact>, Overflow> {
    let mut steps = Vec::with_capacity(written.len());
    for line in written {
        steps.push(line.steps(factor)?);
    }
    Ok(steps)
}

/// The steps nearest to the unrounded factor, or as many of them as the lines in proportion leave room for.
fn under_a_top_up(written: &[Written], whole: &Whole) -> Result<Vec<Exact>, Overflow> {
    let at = |factor: Exact| steps_at(written, factor);
    let room = whole.left.minus(whole.space.in_proportion.times(whole.unrounded)?)?;
    let nearest = at(whole.unrounded)?;
    if space(written, &nearest)? < room.plus(TOLERANCE)? {
        return Ok(nearest);
    }
    let (low, high) = bisect(Exact::ZERO, whole.unrounded, Until::Halved(BISECTIONS), &mut |_, middle| {
        Ok(if space(written, &at(middle)?)? < room.plus(TOLERANCE)? { Next::Near(middle) } else { Next::Far(middle) })
    })?;
    as_fit(written, at(low)?, &at(high)?, room, &|_| true)
}

/// The bracket around the factor at which the lines in proportion and the steps together fill the size. Rounding
/// to whole steps moves each line by at most half a step, which brackets it around the unrounded one.
fn around(written: &[Written], whole: &Whole, left: Volume, slope: Volume) -> Result<(Exact, Exact), Overflow> {
    let mut half_steps = Volume::ZERO;
    for line in written {
        half_steps = half_steps.plus(line.step_space()?.over(Exact::new(2, 0))?)?;
    }
    let off = half_steps.ratio_to(whole.space.scales)?;
    let (lower, upper) = (whole.unrounded.minus(off)?.max(Exact::ZERO), whole.unrounded.plus(off)?);
    bisect(lower, upper, Until::Halved(BISECTIONS), &mut |_, middle| {
        let filled = space(written, &steps_at(written, middle)?)?.plus(slope.times(middle)?)?;
        Ok(if filled <= left { Next::Near(middle) } else { Next::Far(middle) })
    })
}

/// The steps before a jump, with those of the jump that are near enough, in the order of the lines up to the
/// first that does not fit: a line further down never takes the room of one before it.
fn as_fit(
    written: &[Written],
    before: Vec<Exact>,
    after: &[Exact],
    room: Volume,
    is_near: &dyn Fn(usize) -> bool,
) -> Result<Vec<Exact>, Overflow> {
    let mut steps = before;
    let mut taken = space(written, &steps)?;
    for (place, (line, (steps, after))) in written.iter().zip(steps.iter_mut().zip(after)).enumerate() {
        if steps == after {
            continue;
        }
        let then = taken.plus(line.step_space()?.times(after.minus(*steps)?)?)?;
        if !is_near(place) || then >= room.plus(TOLERANCE)? {
            break;
        }
        (*steps, taken) = (*after, then);
    }
    Ok(steps)
}

/// What so many steps take in the glass.
fn space(written: &[Written], steps: &[Exact]) -> Result<Volume, Overflow> {
    written.iter().zip(steps).try_fold(Volume::ZERO, |sum, (line, steps)| sum.plus(line.step_space()?.times(*steps)?))
}
