//! A recipe solved for a fill: V_fixed + k * V_in_proportion = F.

use crate::book::{Book, Drink, DrinkId, IngredientId, Key, LineId, Scaling, Stage};
use crate::measure::{Exact, Measure, Overflow, Volume};
use crate::yields::{self, YieldError};

/// A recipe at one size.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Scaled {
    /// Lines in proportion are this many times what the recipe says.
    pub factor: Exact,
    /// Volume of the lines in proportion at this size.
    pub in_proportion: Volume,
    /// Volume of the fixed lines.
    pub fixed: Volume,
    /// The lines, in the order of adding.
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
    /// What is in the drink, in the dimension of the recipe.
    pub in_drink: Measure,
    /// What must be used, process loss included.
    pub to_use: Measure,
    /// The volume that it takes in the drink.
    pub volume: Volume,
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
    let mut fixed = Volume::ZERO;
    let mut at_reference = Volume::ZERO;
    let mut written = Vec::with_capacity(drink.lines.len());
    for line in &drink.lines {
        let missing = ScaleError::Missing(Key::Ingredient(line.ingredient));
        let ingredient = book.ingredient(line.ingredient).ok_or(missing)?;
        let amount = line.amount.measure()?;
        let takes = yields::volume_in_drink(ingredient, line.stage, amount)?;
        match line.scaling {
            Scaling::Fixed => fixed = fixed.plus(takes)?,
            Scaling::InProportion => at_reference = at_reference.plus(takes)?,
        }
        written.push((line, amount, takes));
    }
    let in_proportion = volume.minus(fixed)?;
    if in_proportion.is_negative() {
        return Err(ScaleError::FixedLinesOverflow { drink: drink.id, over: fixed.minus(volume)? });
    }
    let factor = if at_reference.is_positive() {
        in_proportion.ratio_to(at_reference)?
    } else if in_proportion.is_positive() {
        return Err(ScaleError::NothingScales { drink: drink.id, short: in_proportion });
    } else {
        Exact::ZERO
    };
    let kept = drink.process_loss.rest()?.fraction();
    let mut lines = Vec::with_capacity(written.len());
    for (line, amount, takes) in written {
        let by = match line.scaling {
            Scaling::Fixed => Exact::ONE,
            Scaling::InProportion => factor,
        };
        let in_drink = amount.times(by)?;
        let to_use = if kept == Exact::ONE { in_drink } else { in_drink.over(kept)? };
        lines.push(ScaledLine {
            line: line.id,
            ingredient: line.ingredient,
            stage: line.stage,
            scaling: line.scaling,
            in_drink,
            to_use,
            volume: takes.times(by)?,
        });
    }
    Ok(Scaled { factor, in_proportion, fixed, lines })
}

/// What the lines of a recipe add up to as written, in millilitres.
///
/// # Errors
/// As [`scale`].
pub fn written_volume(book: &Book, drink: &Drink) -> Result<Volume, ScaleError> {
    drink.lines.iter().try_fold(Volume::ZERO, |sum, line| {
        let missing = ScaleError::Missing(Key::Ingredient(line.ingredient));
        let ingredient = book.ingredient(line.ingredient).ok_or(missing)?;
        Ok(sum.plus(yields::volume_in_drink(ingredient, line.stage, line.amount.measure()?)?)?)
    })
}
