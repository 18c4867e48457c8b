//! What to fill a packaged drink to, and what is given away.

use super::shown::Offered;
use super::{Fact, Figure, Name, OfOffer, OfPackaged, Rule, Shown, Step, recipe};
use crate::book::{FillRule, Filling, Key};
use crate::cost::Part;
use crate::ledger::Trouble;
use crate::measure::{Amount, Exact, Measure, Overflow, Volume};
use crate::packaged::{PackagedFill, WEEKS, density_of, packaged_fill};

/// An offer with its filling and its fill target.
struct Packages<'a> {
    offered: &'a Offered<'a>,
    filling: &'a Filling,
    fill: PackagedFill,
}

/// A number of a packaged drink; none where it has no fill target: the screen says why.
pub fn packaged(offered: &Offered, of: OfPackaged) -> Result<Option<Step>, Trouble> {
    let Some(offer) = offered.book.offer(offered.id) else { return Ok(None) };
    let (Some(filling), Ok(fill)) = (&offer.filling, packaged_fill(offered.book, offer)) else { return Ok(None) };
    let packages = Packages { offered, filling, fill };
    packages.step(of).map(Some)
}

/// The density of a drink as it is filled; none where an ingredient has no density.
pub fn density(offered: &Offered) -> Result<Option<Step>, Trouble> {
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

    fn declared(&self) -> Step {
        let key = Key::Container(self.offered.container.id);
        let figure = self.offered.container.declared.map_or(fine(self.fill.nominal), Figure::Amount);
        Step::given(Name::Declared, figure, key)
    }

    fn figure(&self, of: OfPackaged) -> (Name, Figure) {
        let PackagedFill { spread, target, .. } = &self.fill;
        match of {
            OfPackaged::Target => (Name::FillTarget, fine(target.target)),
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

    fn step(&self, of: OfPackaged) -> Result<Step, Trouble> {
        let (name, figure) = self.figure(of);
        let (rule, from) = match of {
            OfPackaged::Target => match self.fill.tolerance {
                None => (Rule::Sum, vec![self.declared()]),
                Some(tolerance) => (Rule::Larger, vec![self.declared(), self.with_spread(tolerance)?]),
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

    /// The average at which few packages are short by more than is tolerated.
    fn with_spread(&self, tolerance: Volume) -> Result<Step, Overflow> {
        let tolerated = match (self.filling.rule, self.filling.allowed) {
            (FillRule::UnitedStates, Some(allowed)) => self.given(Name::Tolerated, Figure::Amount(allowed)),
            _ => Step::named_fact(Name::Tolerated, fine(tolerance), Fact::TolerableError),
        };
        let least = self.fill.nominal.minus(tolerance)?;
        let accepted = self.filling.accepted;
        let more = Volume::from_millilitres(self.fill.spread.deviation.times(accepted.quantile())?);
        let from = vec![
            Step::new(Name::LeastInPackage, fine(least), Rule::Difference, vec![self.declared(), tolerated]),
            self.spreads(Name::ForSpread, more, Fact::Quantile(accepted)),
        ];
        Ok(Step::new(Name::WithSpread, fine(least.plus(more)?), Rule::Sum, from))
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
