//! The full cost of one drink, part by part.

use super::shown::Offered;
use super::{Fact, Figure, Name, OfGoods, OfOffer, Rule, Step};
use crate::book::{CostBasis, Entered, Goods, Key, Part};
use crate::drink::ledger::OfferError;
use crate::foundation::measure::{Exact, Overflow};

/// The full cost: all parts.
pub fn total(offered: &Offered) -> Result<Step, OfferError> {
    let total = Figure::Money(offered.priced.cost.total()?);
    Ok(Step::new(Name::Cost, total, Rule::Sum, parts(offered, CostBasis::Everything, |_| true)?))
}

/// The full cost, to be opened.
pub fn opens_total(offered: &Offered) -> Result<Step, Overflow> {
    let total = Figure::Money(offered.priced.cost.total()?);
    Ok(Step::opens(Name::Cost, total, offered.shown(OfOffer::Cost)))
}

/// The cost that the target must cover.
pub fn covered(offered: &Offered) -> Result<Step, OfferError> {
    let basis = offered.priced.terms.cost_basis;
    let figure = Figure::Money(offered.priced.cost.covered(basis)?);
    Ok(Step::new(Name::Covered(basis), figure, Rule::Sum, parts(offered, basis, |_| true)?))
}

/// The cost that the target must cover, to be opened.
pub fn opens_covered(offered: &Offered) -> Result<Step, Overflow> {
    let basis = offered.priced.terms.cost_basis;
    let figure = Figure::Money(offered.priced.cost.covered(basis)?);
    if basis == CostBasis::Everything {
        return opens_total(offered);
    }
    Ok(Step::opens(Name::Covered(basis), figure, offered.shown(OfOffer::Covered)))
}

/// Those of the parts that `counts` names and that are above zero, as far as a margin on this cost
/// basis covers them.
pub(super) fn parts(offered: &Offered, basis: CostBasis, counts: fn(Part) -> bool) -> Result<Vec<Step>, Overflow> {
    let mut parts = Vec::new();
    for part in Part::ALL.into_iter().filter(|part| counts(*part)) {
        let cost = offered.priced.cost.covered_part(basis, part)?;
        if cost.is_zero() {
            continue;
        }
        parts.push(if part == Part::Unsold && basis != CostBasis::Everything {
            unsold(offered, basis)?
        } else {
            Step::opens(Name::Part(part), Figure::Money(cost), offered.shown(OfOffer::Part(part)))
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
        Part::Flat(cost) => {
            let key = match cost.entered() {
                Entered::AtDrink(_) => Key::Drink(offered.drink.id),
                Entered::InSettings(_) => Key::Settings,
            };
            Step::given(name, figure, key)
        }
        Part::Unsold => Step { name, ..unsold(offered, CostBasis::Everything)? },
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

/// What is thrown away, as far as a margin covers it.
fn unsold(offered: &Offered, basis: CostBasis) -> Result<Step, Overflow> {
    let cost = &offered.priced.cost;
    let before = |part| part != Part::Unsold;
    let sum = Figure::Money(cost.covered_of(basis, &before)?);
    let before = Step::new(Name::BeforeUnsold(basis), sum, Rule::Sum, parts(offered, basis, before)?);
    let [share, sold] = unsold_and_sold(offered)?;
    let from = vec![before, share, sold];
    let figure = Figure::Money(cost.covered_part(basis, Part::Unsold)?);
    Ok(Step::new(Name::Unsold(basis), figure, Rule::Proportion, from))
}

/// Time of hands for one drink.
pub fn time(offered: &Offered) -> Result<Step, OfferError> {
    let labour = &offered.drink.labour;
    let given = |name, figure| Step::given(name, figure, Key::Drink(offered.drink.id));
    let mut from = Vec::new();
    if labour.per_drink.is_positive() {
        from.push(given(Name::TimePerDrink, Figure::Time(labour.per_drink)));
    }
    if labour.per_litre.is_positive() {
        let litres = offered.priced.fill.volume.millilitres().over(Exact::new(1000, 0))?;
        let per_litre = given(Name::TimePerLitre, Figure::Time(labour.per_litre));
        let parts = vec![per_litre, offered.poured(), Step::fact(Fact::Litre)];
        let figure = Figure::Time(labour.per_litre.times(litres)?);
        from.push(Step::new(Name::TimeForVolume, figure, Rule::Proportion, parts));
    }
    if labour.per_batch.is_positive() {
        let batch = given(Name::Batch, Figure::Number(labour.batch));
        let parts = vec![given(Name::TimePerBatch, Figure::Time(labour.per_batch)), batch];
        let figure = Figure::Time(labour.per_batch.over(labour.batch)?);
        from.push(Step::new(Name::TimeOfBatch, figure, Rule::Quotient, parts));
    }
    Ok(Step::new(Name::Time, Figure::Time(offered.priced.cost.time), Rule::Sum, from))
}
