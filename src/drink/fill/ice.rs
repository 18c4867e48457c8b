//! Ice: what a scoop weighs, and what it takes of the glass.

use crate::book::{Ice, Ingredient, Stage};
use crate::drink::yields::{self, YieldError};
use crate::foundation::measure::{Density, Exact, Mass, Measure, Overflow, Share, Volume};

/// The density of ice at 0 °C: 916.72 kg/m³ by IAPWS R10-06 (2009), to three digits.
pub const ICE_DENSITY: Density = Density::from_grams_per_millilitre(Exact::new(917, 3));

/// The density of ice that melted: 998.2 kg/m³, that of water at 20 °C by IAPWS R6-95 (2018), to four digits.
pub const MELTED_DENSITY: Density = Density::from_grams_per_millilitre(Exact::new(9982, 4));

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

/// The volume of ice by itself: what melts while it is blended in takes the volume of water.
///
/// # Errors
/// [`Overflow`].
pub fn own_volume(ice: Ice, mass: Mass) -> Result<Volume, Overflow> {
    let melted = mass.times(ice.melts().fraction())?;
    MELTED_DENSITY.volume_of(melted)?.plus(ICE_DENSITY.volume_of(mass.minus(melted)?)?)
}
