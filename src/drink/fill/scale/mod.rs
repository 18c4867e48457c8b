//! A recipe solved for a fill F: the factor k with V_fixed + k * V_in_proportion + V_stepped(k) + V_top_up =
//! F.
//!
//! Volumes are those in the glass. What is mixed counts with the air beaten into it; ice in the glass
//! counts without.

mod steps;
#[cfg(test)]
mod tests;

use super::ice;
use crate::book::{Book, Drink, DrinkId, Ice, IcePlace, IngredientId, Key, Line, LineId, Scaling, Stage};
use crate::drink::yields::{self, YieldError};
use crate::foundation::measure::{Exact, Measure, Overflow, Volume};
use steps::factor_with_steps;

/// A recipe at one size.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Scaled {
    /// The factor of the lines in proportion.
    pub factor: Exact,
    /// The volume of the fixed lines, with their air.
    pub fixed: Volume,
    /// The air beaten into what is mixed.
    pub air: Volume,
    /// The lines, in the order of adding. Their volumes and the air add up to the size.
    pub lines: Vec<ScaledLine>,
}

/// A line at one size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ScaledLine {
    /// The line.
    pub line: LineId,
    /// Its ingredient.
    pub ingredient: IngredientId,
    /// The stage at which the amounts are meant.
    pub stage: Stage,
    /// How it scales with the size.
    pub scaling: Scaling,
    /// How it is in the glass, if it is ice.
    pub ice: Option<Ice>,
    /// The amount in the drink, in the dimension of the recipe.
    pub in_drink: Measure,
    /// The amount to use: with the process loss, but for ice that is put into the glass.
    pub to_use: Measure,
    /// Its volume in the drink, without air.
    pub volume: Volume,
}

impl ScaledLine {
    /// The amount to use, as it is bought: the mass of a scoop of ice, and for all else [`ScaledLine::to_use`].
    ///
    /// # Errors
    /// [`Overflow`] if a number leaves the range of [`Exact`].
    pub fn bought_as(&self) -> Result<Measure, Overflow> {
        match (self.ice, self.to_use) {
            (Some(ice), Measure::Volume(scoop)) => ice::mass_of_scoop(scoop, ice.packing).map(Measure::Mass),
            _ => Ok(self.to_use),
        }
    }
}

/// Why a recipe cannot be scaled to a size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ScaleError {
    /// The recipe has no lines.
    NoLines(DrinkId),
    /// The fixed lines alone are more than the size.
    FixedLinesOverflow {
        /// The drink.
        drink: DrinkId,
        /// By how much.
        over: Volume,
    },
    /// All lines are fixed, and do not fill the size.
    NothingScales {
        /// The drink.
        drink: DrinkId,
        /// How much is missing.
        short: Volume,
    },
    /// Rounding to steps leaves less than nothing for the top-up.
    TopUpNegative {
        /// The drink.
        drink: DrinkId,
        /// By how much.
        over: Volume,
    },
    /// No whole numbers of steps fill the size, and no line takes what is left.
    BetweenSteps {
        /// The drink.
        drink: DrinkId,
        /// By how much the size is missed before the next step.
        short: Volume,
        /// By how much it is exceeded after that step.
        over: Volume,
    },
    /// Ice floats, but the recipe has no liquid.
    NothingToFloatIn(DrinkId),
    /// A line needs an ingredient that the book does not have.
    Missing(Key),
    /// An ingredient lacks what its volume takes.
    Yield(YieldError),
    /// The numbers leave the range that can be computed.
    Arithmetic(Overflow),
}

impl From<Overflow> for ScaleError {
    fn from(overflow: Overflow) -> ScaleError {
        ScaleError::Arithmetic(overflow)
    }
}

impl From<YieldError> for ScaleError {
    fn from(error: YieldError) -> ScaleError {
        ScaleError::Yield(error)
    }
}

/// The recipe of `drink`, scaled so that its lines fill `volume`.
///
/// # Errors
/// A [`ScaleError`], with the volume by which the recipe misses the size, if it can be scaled at all.
pub fn scale(book: &Book, drink: &Drink, volume: Volume) -> Result<Scaled, ScaleError> {
    if drink.lines.is_empty() {
        return Err(ScaleError::NoLines(drink.id));
    }
    let written = written(book, drink)?;
    let space = |scaling: fn(&Scaling) -> bool| {
        let lines = written.iter().filter(|line| scaling(&line.line.scaling));
        lines.map(|line| line.space).try_fold(Volume::ZERO, Volume::plus)
    };
    let fixed = space(|scaling| *scaling == Scaling::Fixed)?;
    let scales = space(|scaling| *scaling != Scaling::Fixed)?;
    let left = volume.minus(fixed)?;
    if left.is_negative() {
        return Err(ScaleError::FixedLinesOverflow { drink: drink.id, over: fixed.minus(volume)? });
    }
    let relaxed = if scales.is_positive() {
        left.ratio_to(scales)?
    } else if left.is_positive() {
        return Err(ScaleError::NothingScales { drink: drink.id, short: left });
    } else {
        Exact::ZERO
    };
    let steps = written.iter().any(|line| line.step.is_some());
    let tops_up = written.iter().any(|line| line.line.scaling == Scaling::TopUp);
    let factor = if steps && !tops_up { factor_with_steps(drink.id, &written, left, relaxed)? } else { relaxed };
    let top_up = if steps && tops_up { top_up(drink.id, &written, left, factor)? } else { factor };

    let kept = drink.process_loss.rest()?.fraction();
    let mut air = Volume::ZERO;
    let mut lines = Vec::with_capacity(written.len());
    for line in &written {
        let by = match line.line.scaling {
            Scaling::Fixed => Exact::ONE,
            Scaling::InProportion => factor,
            Scaling::TopUp => top_up,
            Scaling::Stepped(_) => line.steps(factor)?,
        };
        let unit = line.step.unwrap_or(line.whole);
        let in_drink = unit.amount.times(by)?;
        // Ice that is put into the glass was never in the press or jug.
        let to_use = if kept == Exact::ONE || !line.is_mixed() { in_drink } else { in_drink.over(kept)? };
        let volume = unit.volume.times(by)?;
        if line.is_mixed() {
            air = air.plus(volume.times(drink.air.fraction())?)?;
        }
        let Line { id, ingredient, stage, scaling, ice, .. } = *line.line;
        lines.push(ScaledLine { line: id, ingredient, stage, scaling, ice, in_drink, to_use, volume });
    }
    Ok(Scaled { factor, fixed, air, lines })
}

/// The volume that the lines of a recipe fill as written, with air and ice.
///
/// # Errors
/// A [`ScaleError`] if an ingredient is missing or lacks what its volume takes, or on overflow.
pub fn written_volume(book: &Book, drink: &Drink) -> Result<Volume, ScaleError> {
    let spaces = written(book, drink)?.into_iter().map(|line| line.space);
    Ok(spaces.into_iter().try_fold(Volume::ZERO, Volume::plus)?)
}

/// An amount of a line, and the volume that it takes without air.
#[derive(Clone, Copy)]
struct Part {
    amount: Measure,
    volume: Volume,
}

/// A line of the recipe as it is written.
struct Written<'a> {
    line: &'a Line,
    whole: Part,
    /// Its volume in the glass, with the air beaten in.
    space: Volume,
    /// One of its steps, if it has steps.
    step: Option<Part>,
}

impl Written<'_> {
    /// Whether air is beaten into it.
    fn is_mixed(&self) -> bool {
        self.line.ice.is_none_or(|ice| ice.place == IcePlace::BlendedIn)
    }

    /// How many steps it takes at `factor` times the recipe: the nearest whole number, half a step upwards.
    /// A factor is rounded at its 28th digit, so that the number is first rounded to twenty decimals.
    fn steps(&self, factor: Exact) -> Result<Exact, Overflow> {
        let Some(step) = self.step else { return Ok(Exact::ZERO) };
        Ok(factor.times(self.whole.amount.base())?.over(step.amount.base())?.rounded(20).rounded(0))
    }

    /// The volume of one step in the glass, with air.
    fn step_space(&self) -> Result<Volume, Overflow> {
        let Some(step) = self.step else { return Ok(Volume::ZERO) };
        self.space.times(step.amount.base())?.over(self.whole.amount.base())
    }
}

fn written<'a>(book: &Book, drink: &'a Drink) -> Result<Vec<Written<'a>>, ScaleError> {
    let liquid = ice::liquid_density(book, drink)?;
    let with_air = Exact::ONE.plus(drink.air.fraction())?;
    let mut lines = Vec::with_capacity(drink.lines.len());
    for line in &drink.lines {
        let ingredient = book.ingredient(line.ingredient);
        let ingredient = ingredient.ok_or(ScaleError::Missing(Key::Ingredient(line.ingredient)))?;
        let part = |amount: Measure| -> Result<Part, ScaleError> {
            let volume = match line.ice {
                Some(ice) => ice::volume_taken(ice, ice::mass_of_ice(ingredient, ice, amount)?, liquid)?,
                None => yields::volume_in_drink(ingredient, line.stage, amount)?,
            };
            Ok(Part { amount, volume })
        };
        let whole = part(line.amount.measure()?)?;
        let step = match line.scaling {
            Scaling::Stepped(step) => Some(part(step.measure()?)?),
            Scaling::InProportion | Scaling::Fixed | Scaling::TopUp => None,
        };
        let mut written = Written { line, whole, space: whole.volume, step };
        if written.is_mixed() && with_air != Exact::ONE {
            written.space = whole.volume.times(with_air)?;
        }
        lines.push(written);
    }
    Ok(lines)
}

/// Volumes that differ by less than this are the same: rounding errors of divisions are far smaller.
const TOLERANCE: Volume = Volume::from_millilitres(Exact::new(1, 9));

/// The factor of the top-up line, which takes what the other lines leave of `left`.
fn top_up(drink: DrinkId, written: &[Written], left: Volume, factor: Exact) -> Result<Exact, ScaleError> {
    let mut rest = left;
    let mut whole = Volume::ZERO;
    for line in written {
        match line.line.scaling {
            Scaling::Fixed => {}
            Scaling::InProportion => rest = rest.minus(line.space.times(factor)?)?,
            Scaling::Stepped(_) => rest = rest.minus(line.step_space()?.times(line.steps(factor)?)?)?,
            Scaling::TopUp => whole = line.space,
        }
    }
    let over = Volume::ZERO.minus(rest)?;
    if over >= TOLERANCE {
        return Err(ScaleError::TopUpNegative { drink, over });
    }
    Ok(rest.max(Volume::ZERO).ratio_to(whole)?)
}
