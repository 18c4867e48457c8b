//! An ingredient on its way from the supplier to the drink: trimmed, pressed, soaked
//! (calculations, 2).

use crate::book::{Ingredient, IngredientId, Stage};
use crate::measure::{Density, Dimension, Exact, Mass, Measure, Overflow, Share, Volume};

/// What an ingredient lacks for a conversion.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum YieldError {
    /// The ingredient has no press yield, yet a recipe takes its juice.
    NoPressYield(IngredientId),
    /// The ingredient has no soaking or brewing yield, yet a recipe takes it soaked or brewed.
    NoSoakYield(IngredientId),
    /// Mass and volume meet, and the ingredient has no density.
    NoDensity(IngredientId),
    /// Mass and volume of juice meet, and the ingredient has no juice density.
    NoJuiceDensity(IngredientId),
    /// Pieces meet a mass or a volume, and the ingredient has no piece weight.
    NoPieceWeight(IngredientId),
    /// The numbers leave the range that can be computed.
    Arithmetic(Overflow),
}

impl From<Overflow> for YieldError {
    fn from(overflow: Overflow) -> YieldError {
        YieldError::Arithmetic(overflow)
    }
}

/// Mass at `stage` over bought mass.
///
/// # Errors
/// [`YieldError::NoPressYield`] or [`YieldError::NoSoakYield`] where the stage needs one.
pub fn yield_to(ingredient: &Ingredient, stage: Stage) -> Result<Share, YieldError> {
    let trim = ingredient.trim_yield;
    match stage {
        Stage::AsBought => Ok(Share::WHOLE),
        Stage::Trimmed => Ok(trim),
        Stage::Pressed => {
            let press = ingredient.press_yield.ok_or(YieldError::NoPressYield(ingredient.id))?;
            Ok(trim.times(press.fraction())?)
        }
        Stage::SoakedOrBrewed => {
            let soak = ingredient.soak_yield.ok_or(YieldError::NoSoakYield(ingredient.id))?;
            Ok(trim.times(soak.fraction())?)
        }
    }
}

/// Density at `stage`: of the juice once pressed, in the drink otherwise.
///
/// # Errors
/// [`YieldError::NoJuiceDensity`] or [`YieldError::NoDensity`].
pub fn density_at(ingredient: &Ingredient, stage: Stage) -> Result<Density, YieldError> {
    match stage {
        Stage::Pressed => ingredient.juice_density.ok_or(YieldError::NoJuiceDensity(ingredient.id)),
        Stage::AsBought | Stage::Trimmed | Stage::SoakedOrBrewed => {
            ingredient.density.ok_or(YieldError::NoDensity(ingredient.id))
        }
    }
}

/// The mass at `stage` of an amount meant at `stage`; pieces are pieces as bought.
///
/// # Errors
/// What the ingredient lacks.
pub fn mass_at(ingredient: &Ingredient, stage: Stage, amount: Measure) -> Result<Mass, YieldError> {
    match amount {
        Measure::Mass(mass) => Ok(mass),
        Measure::Volume(volume) => Ok(density_at(ingredient, stage)?.mass_of(volume)?),
        Measure::Count(count) => {
            let bought = piece_weight(ingredient)?.times(count.pieces())?;
            Ok(bought.times(yield_to(ingredient, stage)?.fraction())?)
        }
    }
}

/// The volume that an amount meant at `stage` takes in the drink, in millilitres.
///
/// # Errors
/// What the ingredient lacks.
pub fn volume_in_drink(ingredient: &Ingredient, stage: Stage, amount: Measure) -> Result<Volume, YieldError> {
    match amount {
        Measure::Volume(volume) => Ok(volume),
        Measure::Mass(_) | Measure::Count(_) => {
            let mass = mass_at(ingredient, stage, amount)?;
            Ok(density_at(ingredient, stage)?.volume_of(mass)?)
        }
    }
}

/// How much must be bought, as a fraction that is not divided yet: what costs are computed from
/// is then rounded once, at the end.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bought {
    /// In the base unit of the pack's dimension, before it is divided.
    pub dividend: Exact,
    /// Above zero.
    pub divisor: Exact,
}

impl Bought {
    const fn whole(dividend: Exact) -> Bought {
        Bought { dividend, divisor: Exact::ONE }
    }

    fn divided_by(self, divisor: Exact) -> Result<Bought, Overflow> {
        Ok(Bought { dividend: self.dividend, divisor: self.divisor.times(divisor)? })
    }
}

/// How much must be bought for an amount meant at `stage`, in the dimension of the pack.
///
/// # Errors
/// What the ingredient lacks.
pub fn bought_for(
    ingredient: &Ingredient,
    stage: Stage,
    amount: Measure,
    pack: Dimension,
) -> Result<Bought, YieldError> {
    match (pack, amount) {
        (Dimension::Count, Measure::Count(count)) => Ok(Bought::whole(count.pieces())),
        (Dimension::Volume, Measure::Volume(volume)) if stage != Stage::Pressed => {
            Ok(Bought { dividend: volume.millilitres(), divisor: yield_to(ingredient, stage)?.fraction() })
        }
        (Dimension::Mass, _) => bought_mass(ingredient, stage, amount),
        (Dimension::Count, _) => {
            Ok(bought_mass(ingredient, stage, amount)?.divided_by(piece_weight(ingredient)?.grams())?)
        }
        (Dimension::Volume, _) => {
            let density = density_at(ingredient, Stage::AsBought)?;
            Ok(bought_mass(ingredient, stage, amount)?.divided_by(density.grams_per_millilitre())?)
        }
    }
}

fn bought_mass(ingredient: &Ingredient, stage: Stage, amount: Measure) -> Result<Bought, YieldError> {
    if let Measure::Count(count) = amount {
        return Ok(Bought::whole(piece_weight(ingredient)?.times(count.pieces())?.grams()));
    }
    let mass = mass_at(ingredient, stage, amount)?;
    Ok(Bought { dividend: mass.grams(), divisor: yield_to(ingredient, stage)?.fraction() })
}

fn piece_weight(ingredient: &Ingredient) -> Result<Mass, YieldError> {
    ingredient.piece_weight.ok_or(YieldError::NoPieceWeight(ingredient.id))
}
