//! Ice that floats takes as much of the glass as its mass of the drink would. How dense the drink is hangs on
//! what goes in at this size, and that on the room that the ice leaves: both are found together.

use super::{Factors, ScaleError, Whole, Written, whole_steps};
use crate::book::DrinkId;
use crate::foundation::measure::{Density, Exact, Mass, Overflow, Volume};

/// Decimals of a density that is found, in g/mL. Far more than a scale shows, and fewer than a division keeps.
const PLACES: u32 = 15;
/// Densities that differ by less than this, in g/mL, are the same.
const NEAR: Exact = Exact::new(1, 12);
/// The most tries. Few are needed: a drink hardly becomes denser by the room that ice takes of it. Only where a line
/// is about to be left out the density bends, and halving goes on to the end.
const MOST: u32 = 96;
const TWO: Exact = Exact::new(2, 0);

/// The density of the drink as it is poured, with its air, and so many steps of each line. The lines are left
/// with their floating ice at that density. Steps are counted anew only if they do not fit at it.
///
/// # Errors
/// Those of [`whole_steps`], and overflow.
pub(super) fn settle(
    drink: DrinkId,
    written: &mut [Written],
    volume: Volume,
    steps: &mut [Exact],
) -> Result<Density, ScaleError> {
    let as_written = density_of(written, &|_, _| Ok(Exact::ONE))?.ok_or(ScaleError::NothingToFloatIn(drink))?;
    loop {
        let found = poured(written, volume, steps, as_written)?;
        float(written, found)?;
        let whole = Whole::of(written, volume)?;
        let fits = Factors::of(written, &whole, steps)?.fit();
        let mut fewer = false;
        if !fits {
            // Never more than before, so that this ends.
            for (steps, counted) in steps.iter_mut().zip(whole_steps(drink, written, &whole)?) {
                fewer |= counted < *steps;
                *steps = counted.min(*steps);
            }
        }
        if !fewer {
            return Ok(found);
        }
    }
}

/// The density that leads to itself: lines that make room for ice of this density are of this density.
fn poured(written: &mut [Written], volume: Volume, steps: &[Exact], from: Density) -> Result<Density, ScaleError> {
    // By how much the lines are denser than what the ice was taken to float in.
    let mut off = |density: Exact| -> Result<Exact, Overflow> {
        float(written, Density::from_grams_per_millilitre(density))?;
        let whole = Whole::of(written, volume)?;
        let factors = Factors::of(written, &whole, steps)?;
        let found = density_of(written, &|line, place| {
            let by = factors.by(line, steps.get(place).copied().unwrap_or_default()).max(Exact::ZERO);
            let step = line.step.unwrap_or(line.whole).amount.base();
            by.times(step)?.over(line.whole.amount.base())
        })?;
        found.map_or(Ok(Exact::ZERO), |found| found.grams_per_millilitre().minus(density))
    };
    let mut before = from.grams_per_millilitre();
    let mut before_off = off(before)?;
    let mut here = before.plus(before_off)?.rounded(PLACES);
    // Densities on either side of the one that is sought.
    let (mut light, mut dense) = (None, None);
    *(if before_off.is_negative() { &mut dense } else { &mut light }) = Some(before);
    for turn in 0..MOST {
        let here_off = off(here)?;
        if here_off.abs() <= NEAR {
            break;
        }
        *(if here_off.is_negative() { &mut dense } else { &mut light }) = Some(here);
        let bend = here_off.minus(before_off)?;
        let step = if bend.is_zero() { here_off.negated() } else { here_off.times(here.minus(before)?)?.over(bend)? };
        let secant = here.minus(step)?.rounded(PLACES);
        // Every other time, and where the secant leaves what is known, half way between the sides.
        let next = match (light, dense) {
            (Some(light), Some(dense)) if turn % 2 == 1 || secant <= light || secant >= dense => {
                light.plus(dense)?.over(TWO)?.rounded(PLACES)
            }
            _ if secant.is_positive() => secant,
            _ => here.over(TWO)?,
        };
        (before, before_off, here) = (here, here_off, next);
    }
    Ok(Density::from_grams_per_millilitre(here))
}

/// How many times a line, which stands at a place of the recipe, is taken as written.
type Times<'a> = &'a dyn Fn(&Written, usize) -> Result<Exact, Overflow>;

/// The density of what is poured, without the ice in the glass, with air. Returns `None` if it weighs nothing.
pub(super) fn density_of(written: &[Written], times: Times) -> Result<Option<Density>, Overflow> {
    let (mut mass, mut space) = (Mass::ZERO, Volume::ZERO);
    for (place, line) in written.iter().enumerate().filter(|(_, line)| !line.line.is_ice_in_glass()) {
        let times = times(line, place)?;
        mass = mass.plus(line.whole.mass.times(times)?)?;
        space = space.plus(line.space.times(times)?)?;
    }
    if !mass.is_positive() || !space.is_positive() {
        return Ok(None);
    }
    Ok(Some(Density::from_grams_per_millilitre(mass.grams().over(space.millilitres())?)))
}

/// Floats the ice in a liquid of this density.
pub(super) fn float(written: &mut [Written], liquid: Density) -> Result<(), Overflow> {
    for line in written.iter_mut().filter(|line| line.floats()) {
        line.whole.volume = liquid.volume_of(line.whole.mass)?;
        line.space = line.whole.volume;
        if let Some(step) = &mut line.step {
            step.volume = liquid.volume_of(step.mass)?;
        }
    }
    Ok(())
}
