//! A recipe solved for a fill F: the factor k with V_fixed + k * V_in_proportion + V_stepped + V_top_up = F.
//!
//! Volumes are those in the glass. What is mixed counts with the air beaten into it; what goes straight into
//! the glass counts without.

mod afloat;
mod steps;
#[cfg(test)]
mod tests;

use super::ice;
use crate::book::{Book, Drink, DrinkId, Ice, IngredientId, Key, Line, LineId, Scaling, Stage};
use crate::drink::yields::{self, YieldError};
use crate::foundation::measure::{Density, Exact, Mass, Measure, Overflow, Volume};
use afloat::{density_of, settle};
use steps::whole_steps;

/// A recipe at one size.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Scaled {
    /// The factor of the lines in proportion.
    pub factor: Exact,
    /// The factor if steps need not be whole: steps are rounded from it.
    pub unrounded: Exact,
    /// The volume of the fixed lines, with their air.
    pub fixed: Volume,
    /// The air beaten into what is mixed.
    pub air: Volume,
    /// The density of the drink as it is poured at this size, or `None` if no ice floats in it.
    pub liquid: Option<Density>,
    /// The lines, in the order of adding. Their volumes and the air add up to the size.
    pub lines: Vec<ScaledLine>,
}

impl Scaled {
    /// The lines in proportion that take up what whole steps leave; none where nothing is left, or where a
    /// line tops up.
    pub fn takes_up(&self) -> impl Iterator<Item = &ScaledLine> {
        let left = self.factor.rounded(COUNTED_PLACES) != self.unrounded.rounded(COUNTED_PLACES);
        self.lines.iter().filter(move |line| left && line.scaling == Scaling::InProportion)
    }
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
    /// Whether it is mixed in the press or jug: air is beaten into it, and some of it stays behind.
    pub mixed: bool,
    /// The amount in the drink, in the dimension of the recipe.
    pub in_drink: Measure,
    /// The amount to use: with the process loss of what is mixed.
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
    /// No whole numbers of steps fill the size, and no other line takes what is left.
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
    Recipe::of(book, drink)?.scaled(volume)
}

/// A recipe as it is written: what all its sizes have in common.
pub struct Recipe<'a> {
    drink: &'a Drink,
    lines: Vec<Written<'a>>,
    space: Space,
}

impl<'a> Recipe<'a> {
    /// The recipe of `drink`.
    ///
    /// # Errors
    /// A [`ScaleError`] if it has no lines, or if an ingredient is missing or lacks what its volume takes.
    pub fn of(book: &Book, drink: &'a Drink) -> Result<Recipe<'a>, ScaleError> {
        if drink.lines.is_empty() {
            return Err(ScaleError::NoLines(drink.id));
        }
        let lines = written(book, drink)?;
        Ok(Recipe { drink, space: Space::of(&lines)?, lines })
    }

    /// The drink.
    pub fn drink(&self) -> &'a Drink {
        self.drink
    }

    /// Scaled so that its lines fill `volume`.
    ///
    /// # Errors
    /// A [`ScaleError`], with the volume by which the recipe misses the size.
    pub fn scaled(&self, volume: Volume) -> Result<Scaled, ScaleError> {
        let drink = self.drink;
        let mut whole = self.space.against(volume)?;
        let mut steps = whole_steps(drink.id, &self.lines, &whole)?;
        let (mut liquid, mut floating) = (None, Vec::new());
        let mut written = self.lines.as_slice();
        if written.iter().any(Written::floats) {
            floating.extend_from_slice(written);
            liquid = Some(settle(drink.id, &mut floating, volume, &mut steps)?);
            written = &floating;
            whole = Whole::of(written, volume)?;
            // Steps alone must fill the size with the ice as it floats.
            if !whole.space.tops_up && !whole.space.in_proportion.is_positive() {
                steps = whole_steps(drink.id, written, &whole)?;
            }
        }
        if whole.left.is_negative() {
            return Err(ScaleError::FixedLinesOverflow { drink: drink.id, over: Volume::ZERO.minus(whole.left)? });
        }
        if !whole.space.scales.is_positive() && whole.left.is_positive() {
            return Err(ScaleError::NothingScales { drink: drink.id, short: whole.left });
        }
        let factors = Factors::of(written, &whole, &steps)?;

        let kept = drink.process_loss.rest()?.fraction();
        let mut air = Volume::ZERO;
        let mut lines = Vec::with_capacity(written.len());
        for (line, steps) in written.iter().zip(&steps) {
            let unit = line.step.unwrap_or(line.whole);
            let by = factors.by(line, *steps);
            let in_drink = unit.amount.times(by)?;
            let mixed = line.line.is_mixed();
            let to_use = if kept == Exact::ONE || !mixed { in_drink } else { in_drink.over(kept)? };
            let volume = unit.volume.times(by)?;
            if mixed && !drink.air.is_zero() {
                air = air.plus(volume.times(drink.air.fraction())?)?;
            }
            let Line { id, ingredient, stage, scaling, ice, .. } = *line.line;
            lines.push(ScaledLine { line: id, ingredient, stage, scaling, ice, mixed, in_drink, to_use, volume });
        }
        let Space { fixed, .. } = whole.space;
        Ok(Scaled { factor: factors.in_proportion, unrounded: whole.unrounded, fixed, air, liquid, lines })
    }
}

/// What the lines of a recipe take as written.
#[derive(Clone, Copy)]
struct Space {
    /// What the fixed lines take.
    fixed: Volume,
    /// What all others take.
    scales: Volume,
    /// What the lines in proportion take.
    in_proportion: Volume,
    /// Whether a line tops up.
    tops_up: bool,
}

impl Space {
    fn of(written: &[Written]) -> Result<Space, Overflow> {
        let space = |scaling: fn(&Scaling) -> bool| {
            let lines = written.iter().filter(|line| scaling(&line.line.scaling));
            lines.map(|line| line.space).try_fold(Volume::ZERO, Volume::plus)
        };
        Ok(Space {
            fixed: space(|scaling| *scaling == Scaling::Fixed)?,
            scales: space(|scaling| *scaling != Scaling::Fixed)?,
            in_proportion: space(|scaling| *scaling == Scaling::InProportion)?,
            tops_up: written.iter().any(|line| line.line.scaling == Scaling::TopUp),
        })
    }

    fn against(self, volume: Volume) -> Result<Whole, Overflow> {
        let left = volume.minus(self.fixed)?;
        let fits = self.scales.is_positive() && left.is_positive();
        Ok(Whole { space: self, left, unrounded: if fits { left.ratio_to(self.scales)? } else { Exact::ZERO } })
    }
}

/// A recipe as a whole, against the size that it is to fill.
struct Whole {
    space: Space,
    /// What the fixed lines leave; below zero where they are too much.
    left: Volume,
    /// The factor if steps need not be whole; 0 where nothing is left.
    unrounded: Exact,
}

impl Whole {
    fn of(written: &[Written], volume: Volume) -> Result<Whole, Overflow> {
        Space::of(written)?.against(volume)
    }
}

/// How many times lines are taken that are neither fixed nor in steps.
struct Factors {
    in_proportion: Exact,
    top_up: Exact,
}

impl Factors {
    /// With so many steps of each line: the top-up takes what they leave, or the lines in proportion do. Below
    /// zero where they leave less than nothing.
    fn of(written: &[Written], whole: &Whole, steps: &[Exact]) -> Result<Factors, Overflow> {
        let unrounded = whole.unrounded;
        let mut factors = Factors { in_proportion: unrounded, top_up: unrounded };
        if !written.iter().any(|line| line.step.is_some()) {
            return Ok(factors);
        }
        let mut rest = whole.left;
        for (line, steps) in written.iter().zip(steps) {
            rest = rest.minus(line.step_space()?.times(*steps)?)?;
        }
        let is_nothing = rest.is_negative() && rest > Volume::ZERO.minus(TOLERANCE)?;
        let rest = if is_nothing { Volume::ZERO } else { rest };
        if let Some(line) = written.iter().find(|line| line.line.scaling == Scaling::TopUp) {
            let rest = rest.minus(whole.space.in_proportion.times(unrounded)?)?;
            let is_nothing = rest.is_negative() && rest > Volume::ZERO.minus(TOLERANCE)?;
            factors.top_up = if is_nothing { Exact::ZERO } else { rest.ratio_to(line.space)? };
        } else if whole.space.in_proportion.is_positive() {
            factors.in_proportion = rest.ratio_to(whole.space.in_proportion)?;
        }
        Ok(factors)
    }

    /// Whether no line is taken less than not at all.
    fn fit(&self) -> bool {
        !self.in_proportion.is_negative() && !self.top_up.is_negative()
    }

    /// How many times a line is taken, or how many of its steps.
    fn by(&self, line: &Written, steps: Exact) -> Exact {
        match line.line.scaling {
            Scaling::Fixed => Exact::ONE,
            Scaling::InProportion => self.in_proportion,
            Scaling::TopUp => self.top_up,
            Scaling::Stepped(_) => steps,
        }
    }
}

/// The volume that the lines of a recipe fill as written, with air and ice.
///
/// # Errors
/// A [`ScaleError`] if an ingredient is missing or lacks what its volume takes, or on overflow.
pub fn written_volume(book: &Book, drink: &Drink) -> Result<Volume, ScaleError> {
    let spaces = written(book, drink)?.into_iter().map(|line| line.space);
    Ok(spaces.into_iter().try_fold(Volume::ZERO, Volume::plus)?)
}

/// An amount of a line, its mass, and the volume that it takes without air.
#[derive(Clone, Copy)]
struct Part {
    amount: Measure,
    /// Zero where no ice floats in the drink: nothing else needs it.
    mass: Mass,
    volume: Volume,
}

/// A line of the recipe as it is written.
#[derive(Clone, Copy)]
struct Written<'a> {
    line: &'a Line,
    whole: Part,
    /// Its volume in the glass, with the air beaten in.
    space: Volume,
    /// One of its steps, if it has steps.
    step: Option<Part>,
}

impl Written<'_> {
    fn floats(&self) -> bool {
        self.line.ice.is_some_and(Ice::floats)
    }

    /// How many steps it takes at `factor` times the recipe: the nearest whole number, half a step upwards.
    /// A factor is rounded at its 28th digit, so that the number is first rounded to twenty decimals.
    fn steps(&self, factor: Exact) -> Result<Exact, Overflow> {
        let Some(step) = self.step else { return Ok(Exact::ZERO) };
        let steps = factor.times(self.whole.amount.base())?.over(step.amount.base())?;
        Ok(steps.rounded(COUNTED_PLACES).rounded(0))
    }

    /// The volume of one step in the glass, with air.
    fn step_space(&self) -> Result<Volume, Overflow> {
        let Some(step) = self.step else { return Ok(Volume::ZERO) };
        self.space.times(step.amount.base())?.over(self.whole.amount.base())
    }
}

/// Decimals that factors are compared at: rounding errors of divisions are far smaller.
const COUNTED_PLACES: u32 = 20;

/// Volumes that differ by less than this are the same: rounding errors of divisions are far smaller.
const TOLERANCE: Volume = Volume::from_millilitres(Exact::new(1, 9));

/// The lines as written. Floating ice takes the volume that it takes in the recipe as written.
fn written<'a>(book: &Book, drink: &'a Drink) -> Result<Vec<Written<'a>>, ScaleError> {
    let has_floating = drink.lines.iter().any(|line| line.ice.is_some_and(Ice::floats));
    let with_air = Exact::ONE.plus(drink.air.fraction())?;
    let mut lines = Vec::with_capacity(drink.lines.len());
    for line in &drink.lines {
        let ingredient = book.ingredient_now(line.ingredient);
        let ingredient = ingredient.ok_or(ScaleError::Missing(Key::Ingredient(line.ingredient)))?;
        let part = |amount: Measure| -> Result<Part, ScaleError> {
            let (mass, volume) = if let Some(ice) = line.ice {
                let mass = ice::mass_of_ice(&ingredient, ice, amount)?;
                (mass, ice::own_volume(ice, mass)?)
            } else {
                let volume = yields::volume_in_drink(&ingredient, line.stage, amount)?;
                let mass = has_floating.then(|| yields::mass_at(&ingredient, line.stage, amount));
                (mass.transpose()?.unwrap_or(Mass::ZERO), volume)
            };
            Ok(Part { amount, mass, volume })
        };
        let whole = part(line.amount.measure()?)?;
        let step = match line.scaling {
            Scaling::Stepped(step) => Some(part(step.measure()?)?),
            Scaling::InProportion | Scaling::Fixed | Scaling::TopUp => None,
        };
        let mut written = Written { line, whole, space: whole.volume, step };
        if line.is_mixed() && with_air != Exact::ONE {
            written.space = whole.volume.times(with_air)?;
        }
        lines.push(written);
    }
    if has_floating {
        let liquid = density_of(&lines, &|_, _| Ok(Exact::ONE))?.ok_or(ScaleError::NothingToFloatIn(drink.id))?;
        afloat::float(&mut lines, liquid)?;
    }
    Ok(lines)
}
