//! A drink packaged ahead of sale: what to fill, so that packages hold what they say.
//!
//! A help beside the work and no legal advice: what counts is the local code and the inspector's
//! own weighing.
//!
//! The standard deviation `s` is that of the weighings, two at least; a weight is turned into a volume by
//! the density of the drink, with its air. Declared size and tolerance are turned into volumes at the
//! temperature at which the drink was measured, by the density of water at both temperatures
//! ([`Waters::as_measured`]). With them, the rule that is followed and the least headspace,
//! [`Packaged::target`] gives the mean to fill to. What is given away costs
//!
//! ```text
//! per package = ingredients * giveaway / F
//! in a year   = per package * weekly number * 52
//! ```
//!
//! with the fill `F`, and `ingredients` for what they cost in a drink of that fill. By hand: 5 mL given away
//! beside 500 mL that cost 2.00 are 0.02; at 100 packages a week, 104.00 in a year. The tests in
//! `src/drink/packaged/tests.rs` are worked by hand too.

use crate::book::{Book, Container, Edit, FillRule, Filling, Headspace, Offer, Record};
use crate::drink::fill::{BatchRisk, FillTarget, LEAST_SPREADS, Packaged, Rule, Single, tolerance};
use crate::drink::label::{self, LabelError, Law};
use crate::drink::ledger::{OfferError, Priced, price_offer};
use crate::foundation::measure::{
    Amount, Density, Exact, Mass, Measure, Money, Overflow, TYPED_PLACES, Temperature, Unit, Volume,
};
use crate::foundation::statistics::Spread;

mod measured;
#[cfg(test)]
mod tests;

pub use measured::{Waters, counted_at};

/// Weeks in a year, for what is given away in it.
pub const WEEKS: Exact = Exact::new(52, 0);

/// What to fill a packaged drink to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PackagedFill {
    /// Declared size, where the drink was measured.
    pub nominal: Volume,
    /// The temperature at which the law counts the declared size.
    pub counted_at: Temperature,
    /// The temperature at which the drink was measured, and water at both. It is `None` if nobody
    /// said; all volumes are then taken to be measured where the law counts them.
    pub measured: Option<(Temperature, Waters)>,
    /// What is asked of the average of a batch. It is `None` if nobody said how large a batch is.
    pub batch: Option<BatchRisk>,
    /// What is asked of single packages. It is `None` if only the average counts.
    pub single: Option<Single>,
    /// How many of the packages weighed hold less than any package may.
    pub too_short: usize,
    /// How many of them hold more than the container can.
    pub too_full: usize,
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

impl PackagedFill {
    /// What to pour. Returns `None` if that would lower the fill to the declared size, at which
    /// half of all batches are short on average.
    pub fn to_pour(&self) -> Option<Volume> {
        let lowers = self.target.target == self.nominal && self.poured > self.nominal;
        (!lowers).then_some(self.target.target)
    }
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
    Offer(OfferError),
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
    let declared = declared.volume()?.ok_or(PackagedError::NothingDeclared)?;
    let refrigerated = book.drink(offer.drink).is_some_and(|drink| drink.keep_refrigerated);
    let law = Law::of(book.settings());
    let waters = Waters::of(filling, law, refrigerated)?;
    let as_measured = |volume| waters.map_or(Ok(volume), |waters| waters.as_measured(volume));
    let nominal = as_measured(declared)?;
    let single = match single(filling, declared)? {
        Some(single) => Some(Single { tolerance: as_measured(single.tolerance)?, ..single }),
        None => None,
    };
    let batch = filling.batch.map(|packages| BatchRisk { packages, quantile: filling.batch_risk().quantile() });
    let nets = nets(book, filling, &priced)?;
    let spread = Spread::of(&nets)?.ok_or(PackagedError::TooFewWeighings(nets.len()))?;
    let too_short = match single {
        Some(single) => {
            let least = nominal.minus(single.tolerance)?;
            let least = if single.none_twice { least.minus(single.tolerance)? } else { least };
            nets.iter().filter(|net| **net < least.millilitres()).count()
        }
        None => 0,
    };
    let brimful = priced.fill.brimful.millilitres();
    let too_full = nets.iter().filter(|net| **net > brimful).count();
    let least_headspace = match filling.least_headspace {
        Some(least) => least.volume()?.unwrap_or(Volume::ZERO),
        None => Volume::ZERO,
    };
    let room = priced.fill.brimful.minus(least_headspace)?;
    let deviation = Volume::from_millilitres(spread.deviation);
    let target = Packaged { nominal, batch, single, deviation, room }.target()?;
    let ingredients = priced.cost.lines.iter().try_fold(Money::ZERO, |sum, line| sum.plus(line.cost))?;
    let giveaway_cost = ingredients.times(target.giveaway.ratio_to(priced.fill.volume)?)?.as_part();
    let packages = offer.weekly.unwrap_or(Exact::ZERO).times(WEEKS)?;
    Ok(PackagedFill {
        nominal,
        counted_at: counted_at(filling.rule, law, refrigerated),
        measured: filling.measured_at.zip(waters),
        batch,
        single,
        too_short,
        too_full,
        spread,
        room,
        target,
        poured: priced.fill.volume,
        giveaway_cost,
        giveaway_in_a_year: target.giveaway.times(packages)?,
        giveaway_cost_in_a_year: giveaway_cost.times(packages)?,
    })
}

/// What the rule asks of single packages of a declared size.
fn single(filling: &Filling, declared: Volume) -> Result<Option<Single>, PackagedError> {
    match filling.rule {
        FillRule::Average => Ok(None),
        FillRule::EuropeanOrBritish => {
            let tolerance = tolerance(Rule::Package, declared)?.ok_or(PackagedError::NoTolerance)?;
            let spreads = filling.accepted.quantile();
            Ok(Some(Single { tolerance: tolerance.below, spreads, none_twice: true }))
        }
        FillRule::UnitedStates => {
            let allowed = filling.allowed.ok_or(PackagedError::NoAllowance)?;
            let single = |tolerance| Single { tolerance, spreads: LEAST_SPREADS, none_twice: false };
            Ok(allowed.volume()?.map(single))
        }
    }
}

/// The weighings in millilitres; weights by the density of the drink as filled.
fn nets(book: &Book, filling: &Filling, priced: &Priced) -> Result<Vec<Exact>, PackagedError> {
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
    Ok(nets)
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

/// The edit that pours a container up to `volume`: its headspace as a volume in `unit`, so that not
/// less is poured. Returns `None` if it does not fit.
pub fn pour(container: &Container, volume: Volume, unit: Unit) -> Option<Edit> {
    let brimful = container.brimful.volume().ok()??;
    let empty = brimful.minus(volume).ok()?.millilitres().over(unit.size()).ok()?;
    let places = Exact::new(10_i64.pow(TYPED_PLACES as u32), 0);
    let number = empty.times(places).ok()?.floor().over(places).ok()?;
    let headspace = Headspace::Volume(Amount::new(number, unit));
    (!number.is_negative()).then(|| Edit::Put(Record::Container(Container { headspace, ..container.clone() })))
}
