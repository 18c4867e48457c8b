//! The full cost of one drink, part by part.

use super::recipe::opens_space;
use super::shown::Offered;
use super::{Fact, Figure, Name, OfGoods, OfOffer, Rule, Step};
use crate::book::{CostBasis, Entered, FlatCost, Goods, IcePlace, Key, OverheadPer, Part};
use crate::drink::cost::{batch_time, is_made, liquid};
use crate::drink::ledger::OfferError;
use crate::foundation::measure::{Exact, Overflow};

/// The full cost: all parts.
pub fn total(offered: &Offered) -> Result<Step, OfferError> {
    let total = Figure::Money(offered.priced.cost.total());
    Ok(Step::new(Name::Cost, total, Rule::Sum, parts(offered, CostBasis::Everything, &|_| true)?))
}

/// The full cost, to be opened.
pub fn opens_total(offered: &Offered) -> Result<Step, Overflow> {
    let total = Figure::Money(offered.priced.cost.total());
    Ok(Step::opens(Name::Cost, total, offered.shown(OfOffer::Cost)))
}

/// The cost that the target must cover.
pub fn covered(offered: &Offered) -> Result<Step, OfferError> {
    let basis = offered.priced.terms.cost_basis;
    let figure = Figure::Money(offered.priced.cost.covered(basis));
    Ok(Step::new(Name::Covered(basis), figure, Rule::Sum, parts(offered, basis, &|_| true)?))
}

/// The cost that the target must cover, to be opened.
pub fn opens_covered(offered: &Offered) -> Result<Step, Overflow> {
    let basis = offered.priced.terms.cost_basis;
    let figure = Figure::Money(offered.priced.cost.covered(basis));
    if basis == CostBasis::Everything {
        return opens_total(offered);
    }
    Ok(Step::opens(Name::Covered(basis), figure, offered.shown(OfOffer::Covered)))
}

/// Those of the parts that `counts` names and that are above zero, as far as a margin on this cost
/// basis covers them.
pub(super) fn parts(offered: &Offered, basis: CostBasis, counts: &dyn Fn(Part) -> bool) -> Result<Vec<Step>, Overflow> {
    let mut parts = Vec::new();
    for part in Part::ALL.into_iter().filter(|part| counts(*part)) {
        let cost = offered.priced.cost.covered_part(basis, part)?;
        if cost.is_zero() {
            continue;
        }
        parts.push(match part {
            Part::Unsold if basis != CostBasis::Everything => unsold(offered, basis)?,
            Part::Free if basis != CostBasis::Everything => free(offered, basis)?,
            _ => Step::opens(Name::Part(part), Figure::Money(cost), offered.shown(OfOffer::Part(part))),
        });
    }
    Ok(parts)
}

/// One part.
pub fn part(offered: &Offered, part: Part) -> Result<Step, OfferError> {
    let cost = &offered.priced.cost;
    let settings = offered.book.settings();
    let figure = Figure::Money(cost.part(part)?);
    let name = Name::Part(part);
    let opens =
        |goods, money, shown| Step::opens(Name::Of(goods, OfGoods::Cost), Figure::Money(money), offered.shown(shown));
    Ok(match part {
        Part::Ingredients => {
            let line = |it: &crate::drink::cost::LineCost| {
                opens(Goods::Ingredient(it.ingredient), it.cost, OfOffer::LineCost(it.line))
            };
            Step::new(name, figure, Rule::Sum, cost.lines.iter().map(line).collect())
        }
        Part::ContainerSet => {
            let piece = |(place, it): (usize, &crate::drink::cost::PackagingCost)| {
                opens(Goods::Packaging(it.packaging), it.cost, OfOffer::PackagingCost(place))
            };
            Step::new(name, figure, Rule::Sum, cost.packaging.iter().enumerate().map(piece).collect())
        }
        Part::Labour => {
            let time = Step::opens(Name::Time, Figure::Time(cost.time), offered.shown(OfOffer::Time));
            let wage = Step::given(Name::Wage, Figure::Money(settings.wage), Key::Settings);
            Step::new(name, figure, Rule::Proportion, vec![time, wage, Step::fact(Fact::Hour)])
        }
        Part::Flat(FlatCost::Overhead) if settings.overhead_per == OverheadPer::Week => {
            overhead_of_week(offered, figure)?
        }
        Part::Flat(cost) => {
            let key = match cost.entered() {
                Entered::AtDrink(_) => Key::Drink(offered.drink.id),
                Entered::InSettings(_) => Key::Settings,
            };
            Step::given(name, figure, key)
        }
        Part::Unsold => Step { name, ..unsold(offered, CostBasis::Everything)? },
        Part::Free => Step { name, ..free(offered, CostBasis::Everything)? },
    })
}

/// The share that is made and not sold, and the rest of it.
pub(super) fn unsold_and_sold(offered: &Offered) -> Result<[Step; 2], Overflow> {
    let (unsold, key) = match offered.drink.unsold {
        Some(own) => (own, Key::Drink(offered.drink.id)),
        None => (offered.book.settings().unsold, Key::Settings),
    };
    let share = Step::given(Name::UnsoldShare, Figure::Share(unsold), key);
    let from = vec![Step::fact(Fact::Whole), share.clone()];
    Ok([share, Step::new(Name::SoldShare, Figure::Share(unsold.rest()?), Rule::Difference, from)])
}

/// The share that is handed out free, and the rest of it.
pub(super) fn free_and_paid(offered: &Offered) -> Result<[Step; 2], Overflow> {
    let free = offered.book.settings().reductions.free;
    let share = Step::given(Name::FreeShare, Figure::Share(free), Key::Settings);
    let from = vec![Step::fact(Fact::Whole), share.clone()];
    Ok([share, Step::new(Name::PaidShare, Figure::Share(free.rest()?), Rule::Difference, from)])
}

/// Overhead of a week over the drinks sold in one; nothing where it is not known how many are.
fn overhead_of_week(offered: &Offered, figure: Figure) -> Result<Step, Overflow> {
    let settings = offered.book.settings();
    let name = Name::Part(Part::Flat(FlatCost::Overhead));
    let sold = offered.book.sold_weekly();
    if !sold.is_positive() {
        return Ok(Step::new(name, figure, Rule::Sum, Vec::new()));
    }
    let weekly = offered.book.offers().filter_map(|offer| {
        let units = offer.weekly.filter(|units| units.is_positive())?;
        Some(Step::given(Name::Weekly, Figure::Number(units), Key::Offer(offer.id())))
    });
    let overhead = Step::given(Name::OverheadOfWeek, Figure::Money(settings.overhead), Key::Settings);
    let sold = Step::new(Name::SoldInWeek, Figure::Number(sold), Rule::Sum, weekly.collect());
    Ok(Step::new(name, figure, Rule::Quotient, vec![overhead, sold]))
}

/// What is handed out free, as far as a margin covers it.
fn free(offered: &Offered, basis: CostBasis) -> Result<Step, Overflow> {
    let cost = &offered.priced.cost;
    let settings = offered.book.settings();
    let before = |part| part == Part::Unsold || is_made(part, settings);
    let sum = Figure::Money(cost.covered_of(basis, &before)?);
    let before = Step::new(Name::BeforeFree(basis), sum, Rule::Sum, parts(offered, basis, &before)?);
    let [share, paid] = free_and_paid(offered)?;
    let figure = Figure::Money(cost.covered_part(basis, Part::Free)?);
    Ok(Step::new(Name::Free(basis), figure, Rule::Proportion, vec![before, share, paid]))
}

/// What is thrown away, as far as a margin covers it.
fn unsold(offered: &Offered, basis: CostBasis) -> Result<Step, Overflow> {
    let cost = &offered.priced.cost;
    let settings = offered.book.settings();
    let before = |part| is_made(part, settings);
    let sum = Figure::Money(cost.covered_of(basis, &before)?);
    let before = Step::new(Name::BeforeUnsold(basis), sum, Rule::Sum, parts(offered, basis, &before)?);
    let [share, sold] = unsold_and_sold(offered)?;
    let from = vec![before, share, sold];
    let figure = Figure::Money(cost.covered_part(basis, Part::Unsold)?);
    Ok(Step::new(Name::Unsold(basis), figure, Rule::Proportion, from))
}

/// What is poured, without ice in the glass.
fn without_ice(offered: &Offered) -> Result<Step, OfferError> {
    let mut from = vec![offered.poured()];
    for used in offered.lines().filter(|used| used.line.ice.is_some_and(|ice| ice.place != IcePlace::BlendedIn)) {
        from.push(opens_space(offered, &used)?);
    }
    if from.len() == 1 {
        return Ok(offered.poured());
    }
    let figure = Figure::Volume(liquid(&offered.priced.scaled, offered.priced.fill.volume)?);
    Ok(Step::new(Name::WithoutIce, figure, Rule::Difference, from))
}

/// Time of hands for one drink.
pub fn time(offered: &Offered) -> Result<Step, OfferError> {
    let labour = &offered.drink.labour;
    let poured = liquid(&offered.priced.scaled, offered.priced.fill.volume)?;
    let given = |name, figure| Step::given(name, figure, Key::Drink(offered.drink.id));
    let mut from = Vec::new();
    if labour.per_drink.is_positive() {
        from.push(given(Name::TimePerDrink, Figure::Time(labour.per_drink)));
    }
    if labour.per_litre.is_positive() {
        let litres = poured.millilitres().over(Exact::new(1000, 0))?;
        let per_litre = given(Name::TimePerLitre, Figure::Time(labour.per_litre));
        let parts = vec![per_litre, without_ice(offered)?, Step::fact(Fact::Litre)];
        let figure = Figure::Time(labour.per_litre.times(litres)?);
        from.push(Step::new(Name::TimeForVolume, figure, Rule::Proportion, parts));
    }
    if labour.per_batch.is_positive() {
        let per_batch = given(Name::TimePerBatch, Figure::Time(labour.per_batch));
        let (rule, parts) = match labour.batch_volume {
            Some(batch) => {
                let batch = given(Name::BatchVolume, Figure::Amount(batch));
                (Rule::Proportion, vec![per_batch, without_ice(offered)?, batch])
            }
            None => (Rule::Quotient, vec![per_batch, given(Name::Batch, Figure::Number(labour.batch))]),
        };
        from.push(Step::new(Name::TimeOfBatch, Figure::Time(batch_time(labour, poured)?), rule, parts));
    }
    Ok(Step::new(Name::Time, Figure::Time(offered.priced.cost.time), Rule::Sum, from))
}
