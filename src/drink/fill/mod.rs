//! What fits: how full a container is poured, and a recipe solved for that fill.
//!
//! All volumes are in millilitres.
//!
//! # Fill
//!
//! ```text
//! F = B - headspace
//! ```
//!
//! `B` is the volume to the rim, and `F` the fill, above 0 ([`fill()`]). Headspace is a volume, a share of
//! `B`, or a height under the rim. A height needs a container of a known shape
//! ([`crate::foundation::shape`]).
//!
//! # A recipe at a fill
//!
//! A recipe is written once, at a size of its own. [`scale`] solves it for the factor `k`:
//!
//! ```text
//! V_fixed + V_in_proportion * k + V_stepped + V_top_up = F
//! ```
//!
//! These are volumes in the glass: what is mixed counts with its air, `V * (1 + air)`, and what goes straight
//! into the glass without. A line in steps takes the whole number of steps that is nearest to `k` times its
//! amount, half a step upwards. What that rounding leaves goes to the top-up, or without one to all lines in
//! proportion alike. Where no `k` fills the size, since one more step would pass it, that step is taken if the
//! recipe is nearer to it without rounding, and if it fits: a size is never refused over a rounding, and a larger
//! fill never takes fewer steps. Only where steps alone must fill a size, one that falls between two steps is
//! refused ([`ScaleError::BetweenSteps`]). Without lines in steps, a top-up is in proportion like any other line.
//! What is to be used of each line is its amount in the drink over `1 - process loss`; what is put into the glass
//! was never in the press or jug, and is used as it is.
//!
//! # Ice
//!
//! ```text
//! mass of a scoop = volume of the scoop * share of it that is ice * 0.917 g/mL
//! volume taken    = mass / 0.917 g/mL, blended in or held under the surface
//!                 = mass / density of the drink, floating
//! of what melts   = mass / 0.9982 g/mL, blended in
//! ```
//!
//! The density of the drink is that of what is poured at this size, with its air and without the ice in the
//! glass ([`Scaled::liquid`]). How many steps are taken is found with that of the recipe as written.
//!
//! ```
//! use brimwright::drink::fill::mass_of_scoop;
//! use brimwright::foundation::measure::{Exact, Mass, Share, Volume};
//!
//! // By hand: 200 mL * 0.6 = 120 mL of ice, at 0.917 g/mL.
//! let mass = mass_of_scoop(Volume::from_millilitres(Exact::from(200)), Share::from_fraction(Exact::new(6, 1)));
//! assert_eq!(mass, Ok(Mass::from_grams(Exact::new(11_004, 2))));
//! ```
//!
//! # What to fill packages to
//!
//! Packages that are declared as `N` are filled with a standard deviation of `s`, in batches of `n`
//! ([`Packaged::target`]):
//!
//! ```text
//! target          = max(N + z * s / sqrt(n), N - T + z' * s)
//! giveaway        = target - N
//! fullest package = target + 3 * s
//! ```
//!
//! A single package may be short by `T`. `z` is the quantile of the normal distribution for the share of
//! batches that may be short on average. `z'` is that for the share of packages that may be short by more
//! than `T`, or [`LEAST_SPREADS`] if none may be. If it is not known how many packages are in a batch, its
//! term is `N`; if there is no rule for single packages, there is no second term. The container is too small
//! if the fullest package takes more than there is room for.
//!
//! If a share `p` of all packages is too short, a sample of `j` of them has at least one with the probability
//! `1 - (1 - p)^j` ([`sample_risk`]).
//!
//! ```
//! use brimwright::book::Accepted;
//! use brimwright::drink::fill::{BatchRisk, Packaged, Rule, Single, tolerance};
//! use brimwright::foundation::measure::{Exact, Volume};
//!
//! let millilitres = |text| Volume::from_millilitres(Exact::from_plain(text, 6).unwrap());
//! let nominal = millilitres("500");
//! // Directive 76/211/EEC, Annex I: 15 mL of 500. The quantile for 2.5 % is 1.959964.
//! let tolerance = tolerance(Rule::Package, nominal)?.unwrap().below;
//! let quantile = Accepted::TwoAndAHalfPercent.quantile();
//! let packaged = Packaged {
//!     nominal,
//!     batch: Some(BatchRisk { packages: Exact::from(100), quantile }),
//!     single: Some(Single { tolerance, spreads: quantile, none_twice: true }),
//!     deviation: millilitres("10"),
//!     room: millilitres("530"),
//! };
//! // By hand: 500 + 1.959964 * 10 / 10 is less than 500 - 15 + 1.959964 * 10. The fullest package
//! // takes 504.59964 + 30, and there is room for 530.
//! let target = packaged.target()?;
//! assert_eq!(target.target, millilitres("504.59964"));
//! assert_eq!(target.giveaway, millilitres("4.59964"));
//! assert_eq!(target.over, Some(millilitres("4.59964")));
//! # Ok::<(), brimwright::foundation::measure::Overflow>(())
//! ```

mod fill_target;
mod ice;
mod known;
mod line;
mod sample;
mod scale;
mod tolerance;

pub use fill_target::{BatchRisk, FULLEST_SPREADS, FillTarget, LEAST_SPREADS, Packaged, SPREADS_TO_DOUBLE, Single};
pub use ice::{ICE_DENSITY, MELTED_DENSITY, mass_of_ice, mass_of_scoop, own_volume};
pub use known::{Known, with_brimful};
pub use line::{FillLine, fill_line, height_of, inside, volume_to};
pub use sample::{UNDER_THREE_SPREADS, sample_risk};
pub use scale::{Recipe, ScaleError, Scaled, ScaledLine, scale, written_volume};
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
