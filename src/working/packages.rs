//! What to fill a packaged drink to, and what is given away.

use super::shown::Offered;
use super::{Fact, Figure, Name, OfOffer, OfPackaged, Rule, Shown, Step, recipe};
use crate::book::{FillRule, Filling, Key, Part};
use crate::drink::fill::{self, BatchRisk, Single, tolerance};
use crate::drink::ledger::OfferError;
use crate::drink::packaged::{PackagedFill, WEEKS, density_of, packaged_fill};
use crate::foundation::measure::{Amount, Density, Exact, Measure, Overflow, Volume};

/// An offer with its filling and its fill target.
struct Packages<'a> {
    offered: &'a Offered<'a>,
    filling: &'a Filling,
    fill: PackagedFill,
}

/// A number of a packaged drink. Returns `None` if it has no fill target: the screen says why.
pub fn packaged(offered: &Offered, of: OfPackaged) -> Result<Option<Step>, OfferError> {
    let Some(offer) = offered.book.offer(offered.id) else { return Ok(None) };
    let (Some(filling), Ok(fill)) = (&offer.filling, packaged_fill(offered.book, offer)) else { return Ok(None) };
    let packages = Packages { offered, filling, fill };
    packages.step(of).map(Some)
}

/// The density of a drink as it is filled. Returns `None` if an ingredient has no density.
pub fn density(offered: &Offered) -> Result<Option<Step>, OfferError> {
    let Ok(density) = density_of(offered.book, offered.priced) else { return Ok(None) };
    let from = vec![recipe::drink_mass(offered)?, offered.poured()];
    Ok(Some(Step::new(Name::DrinkDensity, Figure::Density(density), Rule::Quotient, from)))
}

const fn fine(volume: Volume) -> Figure {
    Figure::FineVolume(volume)
}

impl Packages<'_> {
    /// What was typed for the filling.
    fn given(&self, name: Name, figure: Figure) -> Step {
        Step::given(name, figure, Key::Offer(self.offered.id))
    }

    /// The declared size, where the drink was measured.
    fn declared(&self) -> Step {
        let key = Key::Container(self.offered.container.id);
        let figure = self.offered.container.declared.map_or(fine(self.fill.nominal), Figure::Amount);
        self.as_measured(Step::given(Name::Declared, figure, key), Name::DeclaredMeasured, self.fill.nominal)
    }

    /// A volume at the law's temperature that is `volume` at the temperature at which the drink was
    /// measured.
    fn as_measured(&self, counted: Step, name: Name, volume: Volume) -> Step {
        let Some((_, waters)) = self.fill.measured else { return counted };
        let water = |name, density: Density| Step::named_fact(name, Figure::Density(density), Fact::Water);
        let from = vec![counted, water(Name::WaterByLaw, waters.by_law), water(Name::WaterMeasured, waters.measured)];
        Step::new(name, fine(volume), Rule::Proportion, from)
    }

    fn figure(&self, of: OfPackaged) -> (Name, Figure) {
        let PackagedFill { spread, target, .. } = &self.fill;
        match of {
            OfPackaged::Target => (Name::FillTarget, Figure::Filled(target.target)),
            OfPackaged::Giveaway => (Name::Giveaway, fine(target.giveaway)),
            OfPackaged::Highest => (Name::Fullest, fine(target.highest)),
            OfPackaged::Room => (Name::Room, fine(self.fill.room)),
            OfPackaged::GiveawayCost => (Name::GiveawayCost, Figure::Money(self.fill.giveaway_cost)),
            OfPackaged::GiveawayCostInAYear => {
                (Name::GiveawayCostInAYear, Figure::Money(self.fill.giveaway_cost_in_a_year))
            }
            OfPackaged::Mean => (Name::Mean, fine(Volume::from_millilitres(spread.mean))),
            OfPackaged::Spread => (Name::Spread, fine(Volume::from_millilitres(spread.deviation))),
        }
    }

    fn opens(&self, of: OfPackaged) -> Step {
        let (name, figure) = self.figure(of);
        Step::opens(name, figure, Shown::Packaged(self.offered.id, of))
    }

    fn step(&self, of: OfPackaged) -> Result<Step, OfferError> {
        let (name, figure) = self.figure(of);
        let (rule, from) = match of {
            OfPackaged::Target => match (self.fill.single, self.fill.batch) {
                (Some(single), _) => (Rule::Larger, vec![self.for_average()?, self.with_spread(single)?]),
                (None, Some(batch)) => (Rule::Sum, vec![self.declared(), self.for_batch(batch)?]),
                (None, None) => (Rule::Sum, vec![self.declared()]),
            },
            OfPackaged::Giveaway => (Rule::Difference, vec![self.opens(OfPackaged::Target), self.declared()]),
            OfPackaged::Highest => {
                let over = self.fill.target.highest.minus(self.fill.target.target)?;
                let over = self.spreads(Name::OverTarget, over, Fact::UpToFullest);
                (Rule::Sum, vec![self.opens(OfPackaged::Target), over])
            }
            OfPackaged::Room => {
                let brimful = Figure::Volume(self.offered.priced.fill.brimful);
                let mut from = vec![Step::opens(Name::Brimful, brimful, Shown::Brimful(self.offered.container.id))];
                from.extend(self.filling.least_headspace.map(|it| self.given(Name::LeastEmpty, Figure::Amount(it))));
                (Rule::Difference, from)
            }
            OfPackaged::GiveawayCost => {
                let part = Part::Ingredients;
                let cost = Figure::Money(self.offered.priced.cost.part(part)?);
                let cost = Step::opens(Name::Part(part), cost, self.offered.shown(OfOffer::Part(part)));
                (Rule::Proportion, vec![cost, self.opens(OfPackaged::Giveaway), self.offered.poured()])
            }
            OfPackaged::GiveawayCostInAYear => {
                let weekly = self.offered.weekly().unwrap_or(Exact::ZERO);
                let from = vec![self.given(Name::Weekly, Figure::Number(weekly)), Step::fact(Fact::Year)];
                let yearly = Figure::Number(weekly.times(WEEKS)?);
                let yearly = Step::new(Name::Yearly, yearly, Rule::Product, from);
                (Rule::Product, vec![self.opens(OfPackaged::GiveawayCost), yearly])
            }
            OfPackaged::Mean => (Rule::Mean, self.nets()?),
            OfPackaged::Spread => (Rule::Deviation, self.nets()?),
        };
        Ok(Step::new(name, figure, rule, from))
    }

    /// So many standard deviations of the weighings.
    fn spreads(&self, name: Name, volume: Volume, times: Fact) -> Step {
        let from = vec![self.opens(OfPackaged::Spread), Step::fact(times)];
        Step::new(name, fine(volume), Rule::Product, from)
    }

    /// The average at which few batches are short; the declared size if nobody said how large a
    /// batch is.
    fn for_average(&self) -> Result<Step, Overflow> {
        let Some(batch) = self.fill.batch else { return Ok(self.declared()) };
        let average = self.fill.nominal.plus(self.fill.target.for_batch)?;
        let from = vec![self.declared(), self.for_batch(batch)?];
        Ok(Step::new(Name::ForAverage, Figure::Filled(average), Rule::Sum, from))
    }

    /// So much more for the average of a batch.
    fn for_batch(&self, batch: BatchRisk) -> Result<Step, Overflow> {
        let one = Volume::from_millilitres(self.fill.spread.deviation.times(batch.quantile)?);
        let packages = self.given(Name::BatchSize, Figure::Number(batch.packages));
        let from = vec![
            self.spreads(Name::ForSpread, one, Fact::Quantile(self.filling.batch_risk())),
            Step::new(Name::BatchRoot, Figure::Number(batch.root()?), Rule::Root, vec![packages]),
        ];
        Ok(Step::new(Name::ForBatch, Figure::Filled(self.fill.target.for_batch), Rule::Quotient, from))
    }

    /// The average at which few packages, or none, are short by more than is tolerated.
    fn with_spread(&self, single: Single) -> Result<Step, Overflow> {
        let (tolerated, times) =
            if let (FillRule::UnitedStates, Some(allowed)) = (self.filling.rule, self.filling.allowed) {
                (self.given(Name::Tolerated, Figure::Amount(allowed)), Fact::LeastSpreads)
            } else {
                let size = tolerance(fill::Rule::Package, self.declared_volume()?)?.map(|it| it.below);
                let figure = fine(size.unwrap_or(single.tolerance));
                let tolerated = Step::named_fact(Name::Tolerated, figure, Fact::TolerableError);
                (tolerated, Fact::Quantile(self.filling.accepted))
            };
        let tolerated = self.as_measured(tolerated, Name::ToleratedMeasured, single.tolerance);
        let least = self.fill.nominal.minus(single.tolerance)?;
        let more = self.fill.target.for_single;
        let from = vec![
            Step::new(Name::LeastInPackage, fine(least), Rule::Difference, vec![self.declared(), tolerated]),
            self.spreads(Name::ForSpread, more, times),
        ];
        Ok(Step::new(Name::WithSpread, Figure::Filled(least.plus(more)?), Rule::Sum, from))
    }

    fn declared_volume(&self) -> Result<Volume, Overflow> {
        let declared = self.offered.container.declared.map(Amount::volume).transpose()?;
        Ok(declared.flatten().unwrap_or(self.fill.nominal))
    }

    /// The weighings as volumes.
    fn nets(&self) -> Result<Vec<Step>, Overflow> {
        let density = density_of(self.offered.book, self.offered.priced);
        let net = |net: &Amount| -> Result<Step, Overflow> {
            let typed = self.given(Name::Net, Figure::Amount(*net));
            let (Measure::Mass(mass), Ok(density)) = (net.measure()?, &density) else { return Ok(typed) };
            let from = vec![
                typed,
                Step::opens(Name::DrinkDensity, Figure::Density(*density), self.offered.shown(OfOffer::Density)),
            ];
            Ok(Step::new(Name::NetVolume, fine(density.volume_of(mass)?), Rule::Quotient, from))
        };
        self.filling.nets.iter().map(net).collect()
    }
}
