//! A recipe solved for a fill: V_fixed + k * V_in_proportion + V_stepped(k) + V_top_up = F.
//!
//! Volumes are those in the glass: what is mixed counts with the air beaten into it, ice in the
//! glass without.

#[cfg(test)]
mod tests;

use super::ice;
use crate::book::{Book, Drink, DrinkId, Ice, IcePlace, IngredientId, Key, Line, LineId, Scaling, Stage};
use crate::drink::yields::{self, YieldError};
use crate::foundation::bisection::{Next, Until, bisect};
use crate::foundation::measure::{Exact, Measure, Overflow, Volume};

/// A recipe at one size.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Scaled {
    /// Lines in proportion are this many times what the recipe says.
    pub factor: Exact,
    /// Space that the fixed lines take, with their air.
    pub fixed: Volume,
    /// Air beaten into what is mixed.
    pub air: Volume,
    /// The lines, in the order of adding. Their volumes and the air fill the size.
    pub lines: Vec<ScaledLine>,
}

/// A line at one size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ScaledLine {
    /// The line.
    pub line: LineId,
    /// Of what.
    pub ingredient: IngredientId,
    /// At which stage the amounts are meant.
    pub stage: Stage,
    /// How it follows the size.
    pub scaling: Scaling,
    /// How it stands in the glass, where it is ice.
    pub ice: Option<Ice>,
    /// What is in the drink, in the dimension of the recipe.
    pub in_drink: Measure,
    /// What must be used, process loss included.
    pub to_use: Measure,
    /// The volume that it takes in the drink, without air.
    pub volume: Volume,
}

impl ScaledLine {
    /// What is used as it is bought for: the mass of a scoop of ice, else what is used.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn bought_as(&self) -> Result<Measure, Overflow> {
        match (self.ice, self.to_use) {
            (Some(ice), Measure::Volume(scoop)) => ice::mass_of_scoop(scoop, ice.packing).map(Measure::Mass),
            _ => Ok(self.to_use),
        }
    }
}

/// Why a recipe does not make a size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ScaleError {
    /// The recipe has no lines.
    NoLines(DrinkId),
    /// The fixed lines alone are more than fits.
    FixedLinesOverflow {
        /// The drink.
        drink: DrinkId,
        /// By how much.
        over: Volume,
    },
    /// All lines are fixed and do not fill the size.
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
    /// No number of steps meets the size, and no line takes what is left.
    BetweenSteps {
        /// The drink.
        drink: DrinkId,
        /// How much is missing before the next step.
        short: Volume,
        /// How much is too many after it.
        over: Volume,
    },
    /// Ice floats, but there is nothing for it to float in.
    NothingToFloatIn(DrinkId),
    /// A line needs an ingredient that the book does not have.
    Missing(Key),
    /// An ingredient lacks something.
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

/// The recipe of `drink` solved so that its lines fill `volume`.
///
/// # Errors
/// A [`ScaleError`], with the volume by which the recipe misses the size.
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
    let even = if scales.is_positive() {
        left.ratio_to(scales)?
    } else if left.is_positive() {
        return Err(ScaleError::NothingScales { drink: drink.id, short: left });
    } else {
        Exact::ZERO
    };
    let steps = written.iter().any(|line| line.step.is_some());
    let tops_up = written.iter().any(|line| line.line.scaling == Scaling::TopUp);
    let factor = if steps && !tops_up { between_steps(drink.id, &written, left, even)? } else { even };
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
        let to_use = if kept == Exact::ONE { in_drink } else { in_drink.over(kept)? };
        let volume = unit.volume.times(by)?;
        if line.is_mixed() {
            air = air.plus(volume.times(drink.air.fraction())?)?;
        }
        let Line { id, ingredient, stage, scaling, ice, .. } = *line.line;
        lines.push(ScaledLine { line: id, ingredient, stage, scaling, ice, in_drink, to_use, volume });
    }
    Ok(Scaled { factor, fixed, air, lines })
}

/// What the lines of a recipe fill as written, in millilitres, air and ice with them.
///
/// # Errors
/// As [`scale`].
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

/// A line as the recipe says.
struct Written<'a> {
    line: &'a Line,
    whole: Part,
    /// Space in the glass, with the air beaten in.
    space: Volume,
    /// One step, where it follows in steps.
    step: Option<Part>,
}

impl Written<'_> {
    /// Whether air is beaten into it.
    fn is_mixed(&self) -> bool {
        self.line.ice.is_none_or(|ice| ice.place == IcePlace::BlendedIn)
    }

    /// How many steps it takes at `factor` times the recipe: the nearest whole number, half a
    /// step upwards. A factor ends at its 28th digit, so half a step is what is half a step to
    /// twenty decimals.
    fn steps(&self, factor: Exact) -> Result<Exact, Overflow> {
        let Some(step) = self.step else { return Ok(Exact::ZERO) };
        Ok(factor.times(self.whole.amount.base())?.over(step.amount.base())?.rounded(20).rounded(0))
    }

    /// The space of one step, air with it.
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

/// How many times the written top-up takes what the other lines leave of `left`.
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
    if over >= NOTHING {
        return Err(ScaleError::TopUpNegative { drink, over });
    }
    Ok(rest.max(Volume::ZERO).ratio_to(whole)?)
}

/// Halvings of the range of factors: down to far less than lies between two steps, and still far
/// more than division leaves, so that lines which take a step at the same factor take it together.
const HALVINGS: u32 = 48;

/// Volumes that differ by less are the same: what division leaves at its 28th digit.
const NOTHING: Volume = Volume::from_millilitres(Exact::new(1, 9));

/// The factor at which lines in proportion and lines in steps fill `left` together; `even` is
/// what it would be without steps. Space grows with the factor, and jumps where a step more is
/// taken: the factor is enclosed, then solved exactly for the steps on either side.
fn between_steps(drink: DrinkId, written: &[Written], left: Volume, even: Exact) -> Result<Exact, ScaleError> {
    let mut flexible = Volume::ZERO;
    let mut half_steps = Volume::ZERO;
    let mut in_proportion = Volume::ZERO;
    for line in written.iter().filter(|line| line.line.scaling != Scaling::Fixed) {
        flexible = flexible.plus(line.space)?;
        half_steps = half_steps.plus(line.step_space()?.over(Exact::new(2, 0))?)?;
        if line.step.is_none() {
            in_proportion = in_proportion.plus(line.space)?;
        }
    }
    let in_steps = |factor: Exact| -> Result<Volume, Overflow> {
        written.iter().try_fold(Volume::ZERO, |sum, line| sum.plus(line.step_space()?.times(line.steps(factor)?)?))
    };
    let filled = |factor: Exact| in_steps(factor)?.plus(in_proportion.times(factor)?);

    let off = half_steps.ratio_to(flexible)?;
    let (least, most) = (even.minus(off)?.max(Exact::ZERO), even.plus(off)?);
    let (low, high) = bisect(least, most, Until::Halved(HALVINGS), &mut |_, middle| {
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
        } else if Volume::from_millilitres(rest.millilitres().abs()) < NOTHING {
            return Ok(side);
        }
    }
    Err(ScaleError::BetweenSteps {
        drink,
        short: left.minus(filled(low)?)?.as_part(),
        over: filled(high)?.minus(left)?.as_part(),
    })
}
