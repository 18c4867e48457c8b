//! A drink packaged ahead of sale: what to fill, so that packages hold what they say
//! (calculations, 3).
//!
//! A help beside the work and no legal advice: what counts is the local code and the inspector's
//! own weighing.

use crate::book::{Book, Container, Edit, FillRule, Filling, Headspace, Offer, Record};
use crate::fill::{FillTarget, Packaged, Rule, tolerance};
use crate::label::{self, LabelError};
use crate::ledger::{Priced, Trouble, price_offer};
use crate::measure::{Amount, Density, Exact, Mass, Measure, Money, Overflow, TYPED_PLACES, Unit, Volume};
use crate::statistics::Spread;

#[cfg(test)]
mod tests;

/// Weeks in a year, for what is given away in it.
pub const WEEKS: Exact = Exact::new(52, 0);

/// What to fill a packaged drink to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PackagedFill {
    /// Declared size.
    pub nominal: Volume,
    /// What a single package may be short by; none where only the average counts.
    pub tolerance: Option<Volume>,
    /// The weighings: how many, their mean and standard deviation in millilitres.
    pub spread: Spread,
    /// The most that there is room for.
    pub room: Volume,
    /// The target, and what follows from it.
    pub target: FillTarget,
    /// What is poured as the book stands.
    pub poured: Volume,
    /// What is given away in a package, in ingredients.
    pub giveaway_cost: Money,
    /// What is given away in a year of 52 weeks.
    pub giveaway_in_a_year: Volume,
    /// The same in ingredients.
    pub giveaway_cost_in_a_year: Money,
}

/// Why there is no fill target.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PackagedError {
    /// The offer is not packaged ahead: it has no filling.
    NotPackaged,
    /// The container is declared to hold nothing.
    NothingDeclared,
    /// The rule has no tolerance for a size under 5 mL or over 10 L.
    NoTolerance,
    /// The variation that the user's own rule allows is not given.
    NoAllowance,
    /// A spread needs two weighings at least; so many are there.
    TooFewWeighings(usize),
    /// The offer cannot be computed.
    Offer(Trouble),
    /// Weights need a density of the drink, and an ingredient has none.
    Density(LabelError),
    /// The numbers leave the range that can be computed.
    Arithmetic(Overflow),
}

impl From<Overflow> for PackagedError {
    fn from(overflow: Overflow) -> PackagedError {
        PackagedError::Arithmetic(overflow)
    }
}

/// What to fill the packages of an offer to.
///
/// # Errors
/// A [`PackagedError`] that says what is missing.
pub fn packaged_fill(book: &Book, offer: &Offer) -> Result<PackagedFill, PackagedError> {
    let filling = offer.filling.as_ref().ok_or(PackagedError::NotPackaged)?;
    let priced = price_offer(book, offer).map_err(PackagedError::Offer)?;
    let container = book.container(offer.container).ok_or(PackagedError::NothingDeclared)?;
    let declared = container.declared.ok_or(PackagedError::NothingDeclared)?;
    let nominal = declared.volume()?.ok_or(PackagedError::NothingDeclared)?;
    let tolerance = allowed(filling, nominal)?;
    let spread = spread(book, filling, &priced)?;
    let least_headspace = match filling.least_headspace {
        Some(least) => least.volume()?.unwrap_or(Volume::ZERO),
        None => Volume::ZERO,
    };
    let room = priced.fill.brimful.minus(least_headspace)?;
    let deviation = Volume::from_millilitres(spread.deviation);
    let quantile = filling.accepted.quantile();
    let target = Packaged { nominal, tolerance, quantile, deviation, room }.target()?;
    let ingredients = priced.cost.lines.iter().try_fold(Money::ZERO, |sum, line| sum.plus(line.cost))?;
    let giveaway_cost = ingredients.times(target.giveaway.ratio_to(priced.fill.volume)?)?.as_part();
    let packages = offer.weekly.unwrap_or(Exact::ZERO).times(WEEKS)?;
    Ok(PackagedFill {
        nominal,
        tolerance,
        spread,
        room,
        target,
        poured: priced.fill.volume,
        giveaway_cost,
        giveaway_in_a_year: target.giveaway.times(packages)?,
        giveaway_cost_in_a_year: giveaway_cost.times(packages)?,
    })
}

/// What the rule allows a single package to be short by.
fn allowed(filling: &Filling, nominal: Volume) -> Result<Option<Volume>, PackagedError> {
    match filling.rule {
        FillRule::Average => Ok(None),
        FillRule::EuropeanOrBritish => {
            let tolerance = tolerance(Rule::Package, nominal)?.ok_or(PackagedError::NoTolerance)?;
            Ok(Some(tolerance.below))
        }
        FillRule::UnitedStates => {
            let allowed = filling.allowed.ok_or(PackagedError::NoAllowance)?;
            Ok(allowed.volume()?)
        }
    }
}

/// The spread of the weighings in millilitres; weights by the density of the drink as filled.
fn spread(book: &Book, filling: &Filling, priced: &Priced) -> Result<Spread, PackagedError> {
    let mut density = None;
    let mut nets = Vec::with_capacity(filling.nets.len());
    for net in &filling.nets {
        let volume = match net.measure()? {
            Measure::Volume(volume) => volume,
            Measure::Mass(mass) => {
                let drink = match density {
                    Some(known) => known,
                    None => *density.insert(density_of(book, priced)?),
                };
                drink.volume_of(mass)?
            }
            Measure::Count(_) => continue,
        };
        nets.push(volume.millilitres());
    }
    Spread::of(&nets)?.ok_or(PackagedError::TooFewWeighings(nets.len()))
}

/// The density of a drink as it is filled, with its air.
///
/// # Errors
/// [`PackagedError::Density`] names an ingredient that lacks a density or a piece weight.
pub fn density_of(book: &Book, priced: &Priced) -> Result<Density, PackagedError> {
    let listed = label::by_mass(book, &priced.scaled).map_err(PackagedError::Density)?;
    let mass = listed.iter().try_fold(Mass::ZERO, |sum, listed| sum.plus(listed.mass))?;
    let density = mass.grams().over(priced.fill.volume.millilitres())?;
    Ok(Density::from_grams_per_millilitre(density))
}

/// The edit that pours a container up to `volume`: its headspace as a volume in `unit`, so that
/// not less is poured. None where it does not fit.
pub fn pour(container: &Container, volume: Volume, unit: Unit) -> Option<Edit> {
    let brimful = container.brimful.volume().ok()??;
    let empty = brimful.minus(volume).ok()?.millilitres().over(unit.size()).ok()?;
    let places = Exact::new(10_i64.pow(TYPED_PLACES as u32), 0);
    let number = empty.times(places).ok()?.floor().over(places).ok()?;
    let headspace = Headspace::Volume(Amount::new(number, unit));
    (!number.is_negative()).then(|| Edit::Put(Record::Container(Container { headspace, ..container.clone() })))
}
