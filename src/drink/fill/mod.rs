//! What fits: how full a container is poured, and a recipe solved for that fill
//! (calculations, 3 and 4).

mod fill_target;
mod ice;
mod known;
mod line;
mod sample;
mod scale;
mod tolerance;

pub use fill_target::{BatchRisk, FULLEST_SPREADS, FillTarget, LEAST_SPREADS, Packaged, SPREADS_TO_DOUBLE, Single};
pub use ice::{ICE_DENSITY, liquid_density, mass_of_ice, mass_of_scoop};
pub use known::{Known, with_brimful};
pub use line::{FillLine, fill_line, height_of, inside, volume_to};
pub use sample::{UNDER_THREE_SPREADS, sample_risk};
pub use scale::{ScaleError, Scaled, ScaledLine, scale, written_volume};
pub use tolerance::{Rule, Tolerance, tolerance};

use crate::book::{Container, ContainerId, Headspace};
use crate::foundation::measure::{Amount, Overflow, Volume};

/// How full a container is poured.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Fill {
    /// Volume to the rim.
    pub brimful: Volume,
    /// What is left empty.
    pub headspace: Volume,
    /// What is poured: brimful less headspace.
    pub volume: Volume,
    /// How much less is poured than the container is declared to hold, if it is less.
    pub short_of_declared: Option<Volume>,
}

/// Why a container has no fill.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FillError {
    /// One of its sizes is not a volume.
    NotAVolume(ContainerId),
    /// Headspace leaves nothing.
    NothingFits(ContainerId),
    /// Headspace is a height, and no heights of the container are known.
    NoHeights(ContainerId),
    /// More is asked than the container holds.
    OverTheRim {
        /// The container.
        container: ContainerId,
        /// By how much.
        over: Volume,
    },
    /// The numbers leave the range that can be computed.
    Arithmetic(Overflow),
}

impl From<Overflow> for FillError {
    fn from(overflow: Overflow) -> FillError {
        FillError::Arithmetic(overflow)
    }
}

/// The fill of a container: brimful less headspace.
///
/// # Errors
/// A [`FillError`] that names the container.
pub fn fill(container: &Container) -> Result<Fill, FillError> {
    let volume_of = |amount: Amount| amount.volume()?.ok_or(FillError::NotAVolume(container.id));
    let brimful = container.brimful.volume()?.ok_or(FillError::NotAVolume(container.id))?;
    let headspace = match container.headspace {
        Headspace::Volume(amount) => volume_of(amount)?,
        Headspace::Share(share) => brimful.times(share.fraction())?,
        Headspace::Height(below) => {
            line::empty_under(container, below.length()?)?.ok_or(FillError::NoHeights(container.id))?
        }
    };
    let volume = brimful.minus(headspace)?;
    if !volume.is_positive() {
        return Err(FillError::NothingFits(container.id));
    }
    let short_of_declared = match container.declared {
        Some(declared) => Some(volume_of(declared)?.minus(volume)?).filter(|short| short.is_positive()),
        None => None,
    };
    Ok(Fill { brimful, headspace, volume, short_of_declared })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::{amount, container, container_id, millilitres, share};

    #[test]
    fn poured_is_brimful_less_headspace() {
        let bottle = Container { headspace: Headspace::Share(share("0.05")), ..container(1, "500 mL") };
        let expected = Fill {
            brimful: millilitres("500"),
            headspace: millilitres("25"),
            volume: millilitres("475"),
            short_of_declared: None,
        };
        assert_eq!(fill(&bottle), Ok(expected));
        let by_volume = Container { headspace: Headspace::Volume(amount("2.5 cL")), ..bottle };
        assert_eq!(fill(&by_volume), Ok(expected));
    }

    #[test]
    fn a_fill_short_of_what_is_declared_is_said() {
        let bottle = |declared| Container {
            declared: Some(amount(declared)),
            headspace: Headspace::Share(share("0.05")),
            ..container(1, "500 mL")
        };
        assert_eq!(fill(&bottle("476 mL")).unwrap().short_of_declared, Some(millilitres("1")));
        assert_eq!(fill(&bottle("475 mL")).unwrap().short_of_declared, None);
    }

    #[test]
    fn a_container_must_hold_something() {
        let full = Container { headspace: Headspace::Volume(amount("500 mL")), ..container(1, "500 mL") };
        assert_eq!(fill(&full), Err(FillError::NothingFits(container_id(1))));
        assert_eq!(fill(&container(1, "500 g")), Err(FillError::NotAVolume(container_id(1))));
    }
}
