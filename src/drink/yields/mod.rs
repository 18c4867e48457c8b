//! An ingredient on its way from the supplier to the drink: trimmed, pressed, soaked or brewed.
//!
//! An amount in a recipe is meant at a [`Stage`]. The yield `y` of a stage is the mass at that stage over
//! the mass bought ([`yield_to`]):
//!
//! | stage | `y` | range |
//! |---|---|---|
//! | as bought | 1 | |
//! | trimmed | `t` | trim yield, above 0 and at most 1 |
//! | pressed | `t * p` | press yield, above 0 and at most 1 |
//! | soaked or brewed | `t * s` | soak yield, above 0; above 1 for what takes up water |
//!
//! What an amount takes out of a pack that is sold by mass ([`bought_for`]):
//!
//! | amount | grams bought |
//! |---|---|
//! | mass `m` in grams | `m / y` |
//! | volume `V` in millilitres | `V * rho / y` |
//! | `n` pieces | `n * w` |
//!
//! `rho` is a density in g/mL: of the juice for a volume of juice, of the ingredient in the drink for any
//! other. `w` is the weight in grams of one piece as bought. Out of a pack that is sold by volume, the grams
//! are divided by the ingredient's density; out of one that is sold by the piece, by `w`. Neither is needed for pieces out
//! of a pack of pieces, nor for a volume out of a pack by volume unless it is juice. What is needed and
//! lacking is named by a [`YieldError`].
//!
//! ```
//! use brimwright::book::{Ingredient, Stage};
//! use brimwright::drink::yields::bought_for;
//! use brimwright::foundation::measure::{Amount, Dimension, Exact, Unit};
//!
//! let carrots: Ingredient = serde_json::from_str(
//!     r#"{"id": "1", "name": "Carrots", "trim-yield": "0.8", "press-yield": "0.75", "juice-density": "1.05"}"#,
//! )
//! .unwrap();
//! // By hand: 200 mL of juice are 210 g, of 280 g trimmed, of 350 g bought.
//! let juice = Amount::new(Exact::from(200), Unit::Millilitre).measure().unwrap();
//! let bought = bought_for(&carrots, Stage::Pressed, juice, Dimension::Mass).unwrap();
//! assert_eq!(bought.amount(), Ok(Exact::from(350)));
//! ```

use crate::book::{Ingredient, IngredientId, Stage};
use crate::foundation::measure::{Density, Dimension, Exact, Mass, Measure, Overflow, Share, Volume};

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

    /// The amount, divided: to be shown.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn amount(self) -> Result<Exact, Overflow> {
        self.dividend.over(self.divisor)
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::drink::cost::{CostError, usable_cost};
    use crate::support::{density, grams, ingredient, ingredient_id, measure, millilitres, money, pack, share};

    /// 40 lb of apples at 38.00, 90 % after trimming, 65 % of that as juice at 1.048 g/mL (USDA
    /// SR28), 200 g a piece.
    fn apples() -> Ingredient {
        Ingredient {
            trim_yield: share("0.9"),
            press_yield: Some(share("0.65")),
            soak_yield: Some(share("2")),
            density: Some(density("0.8")),
            juice_density: Some(density("1.048")),
            piece_weight: Some(grams("200")),
            ..ingredient(1, [pack(1, "40 lb", "38")])
        }
    }

    fn cost_of(
        ingredient: &Ingredient,
        contents: &str,
        stage: Stage,
        amount: &str,
    ) -> Result<crate::foundation::measure::Money, CostError> {
        usable_cost(ingredient, &pack(1, contents, "38"), stage, measure(amount))
    }

    #[test]
    fn juice_costs_by_hand() {
        // 29.5735295625 mL * 1.048 / (0.9 * 0.65) bought, of 40 * 453.59237 g for 38.00:
        // 0.11095999829634..., computed in fractions.
        assert_eq!(cost_of(&apples(), "40 lb", Stage::Pressed, "1 fl oz"), Ok(money("0.110959998296")));
    }

    #[test]
    fn every_stage_and_pack_meet() {
        // Bought for 38.00; what is left of it costs 38.00 in all.
        for (contents, stage, amount) in [
            ("1 kg", Stage::AsBought, "1000 g"),
            ("1 kg", Stage::Trimmed, "900 g"),
            ("1 kg", Stage::Pressed, "585 g"),
            ("1 kg", Stage::SoakedOrBrewed, "1.8 kg"),
            ("1 kg", Stage::AsBought, "1.25 L"),
            ("1 kg", Stage::Trimmed, "1.125 L"),
            ("1.048 kg", Stage::Pressed, "585 mL"),
            ("1 kg", Stage::Pressed, "5 ea"),
            ("5 ea", Stage::Trimmed, "900 g"),
            ("5 ea", Stage::Pressed, "5 ea"),
            ("1.25 L", Stage::AsBought, "1 kg"),
            ("1 L", Stage::Trimmed, "900 mL"),
            ("1.25 L", Stage::Trimmed, "5 ea"),
            ("1.31 L", Stage::Pressed, "585 mL"),
        ] {
            let cost = cost_of(&apples(), contents, stage, amount);
            assert_eq!(cost, Ok(money("38")), "{amount} {stage:?} from {contents}");
        }
    }

    #[test]
    fn an_amount_takes_its_volume_in_the_drink() {
        for (stage, amount, volume) in [
            (Stage::AsBought, "100 mL", "100"),
            (Stage::Trimmed, "80 g", "100"),
            (Stage::Pressed, "104.8 g", "100"),
            (Stage::Trimmed, "1 ea", "225"),
            (Stage::SoakedOrBrewed, "1 ea", "450"),
        ] {
            let takes = volume_in_drink(&apples(), stage, measure(amount));
            assert_eq!(takes, Ok(millilitres(volume)), "{amount} {stage:?}");
        }
    }

    #[test]
    fn what_is_lacking_is_named() {
        let id = ingredient_id(1);
        let bare = Ingredient { density: None, ..ingredient(1, []) };
        for (contents, stage, amount, lacks) in [
            ("1 kg", Stage::Pressed, "1 g", YieldError::NoPressYield(id)),
            ("1 kg", Stage::SoakedOrBrewed, "1 g", YieldError::NoSoakYield(id)),
            ("1 kg", Stage::Trimmed, "1 mL", YieldError::NoDensity(id)),
            ("1 L", Stage::Trimmed, "1 g", YieldError::NoDensity(id)),
            ("1 kg", Stage::Pressed, "1 mL", YieldError::NoJuiceDensity(id)),
            ("1 kg", Stage::AsBought, "1 ea", YieldError::NoPieceWeight(id)),
            ("1 ea", Stage::AsBought, "1 g", YieldError::NoPieceWeight(id)),
        ] {
            let cost = cost_of(&bare, contents, stage, amount);
            assert_eq!(cost, Err(CostError::Yield(lacks)), "{amount} {stage:?} from {contents}");
        }
    }
}
