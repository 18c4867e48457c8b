//! Ice: what a scoop weighs, and what it takes of the glass.

use super::ScaleError;
use crate::book::{Book, Drink, Ice, IcePlace, Ingredient, Key, Stage};
use crate::drink::yields::{self, YieldError};
use crate::foundation::measure::{Density, Exact, Mass, Measure, Overflow, Share, Volume};

/// The density of ice at 0 °C: 916.72 kg/m³ by IAPWS R10-06 (2009), to three digits.
pub const ICE_DENSITY: Density = Density::from_grams_per_millilitre(Exact::new(917, 3));

/// The mass of a scoop of cubes poured at random: its volume, the share that is ice, the density
/// of ice.
///
/// # Errors
/// [`Overflow`].
pub fn mass_of_scoop(scoop: Volume, packing: Share) -> Result<Mass, Overflow> {
    ICE_DENSITY.mass_of(scoop.times(packing.fraction())?)
}

/// The mass of an amount of ice: weighed, in scoops, or in pieces as bought.
///
/// # Errors
/// [`YieldError::NoPieceWeight`] for pieces without one.
pub fn mass_of_ice(ingredient: &Ingredient, ice: Ice, amount: Measure) -> Result<Mass, YieldError> {
    match amount {
        Measure::Volume(scoop) => Ok(mass_of_scoop(scoop, ice.packing)?),
        Measure::Mass(_) | Measure::Count(_) => yields::mass_at(ingredient, Stage::AsBought, amount),
    }
}

/// The volume that ice takes: its own if it is under the surface. If it floats, that of as much
/// liquid by mass.
///
/// # Errors
/// [`Overflow`].
pub(super) fn volume_taken(ice: Ice, mass: Mass, liquid: Density) -> Result<Volume, Overflow> {
    match ice.place {
        IcePlace::BlendedIn | IcePlace::HeldUnder => ICE_DENSITY.volume_of(mass),
        IcePlace::Floating => liquid.volume_of(mass),
    }
}

/// The density of what ice floats in: of the recipe as written, with its air and without the ice in
/// the glass. Only a drink with floating ice needs one; others have that of ice here.
///
/// # Errors
/// What an ingredient lacks.
pub fn liquid_density(book: &Book, drink: &Drink) -> Result<Density, ScaleError> {
    let floats = |ice: Option<Ice>| ice.is_some_and(|ice| ice.place == IcePlace::Floating);
    if !drink.lines.iter().any(|line| floats(line.ice)) {
        return Ok(ICE_DENSITY);
    }
    let (mut mass, mut volume) = (Mass::ZERO, Volume::ZERO);
    for line in &drink.lines {
        let amount = line.amount.measure()?;
        let ingredient = book.ingredient(line.ingredient);
        let ingredient = ingredient.ok_or(ScaleError::Missing(Key::Ingredient(line.ingredient)))?;
        match line.ice {
            Some(ice) if ice.place == IcePlace::BlendedIn => {
                let ice = mass_of_ice(ingredient, ice, amount)?;
                mass = mass.plus(ice)?;
                volume = volume.plus(ICE_DENSITY.volume_of(ice)?)?;
            }
            Some(_) => {}
            None => {
                mass = mass.plus(yields::mass_at(ingredient, line.stage, amount)?)?;
                volume = volume.plus(yields::volume_in_drink(ingredient, line.stage, amount)?)?;
            }
        }
    }
    let with_air = volume.times(Exact::ONE.plus(drink.air.fraction())?)?;
    if !mass.is_positive() {
        return Err(ScaleError::NothingToFloatIn(drink.id));
    }
    Ok(Density::from_grams_per_millilitre(mass.grams().over(with_air.millilitres())?))
}
