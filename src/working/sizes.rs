//! A size among the others of its drink.

use super::shown::Offered;
use super::{AtPrice, Fact, Figure, Name, OfOffer, OfPrice, OfSize, Rule, Shown, Step, cost, price};
use crate::book::{Book, OfferId};
use crate::ledger::{Ledger, Trouble};
use crate::measure::{Amount, Exact, Money, Overflow};
use crate::sizes::{SizeRow, SoldSize, side_by_side};

/// A number of a size among the others.
pub fn size(book: &Book, ledger: &Ledger, id: OfferId, of: OfSize) -> Result<Option<Step>, Trouble> {
    let offered = Offered::new(book, ledger, id)?;
    let rows = side_by_side(book, ledger, id.drink)?;
    let Some(place) = rows.iter().position(|row| row.offer == id) else { return Ok(None) };
    let Some((row, smaller)) = rows.get(..=place).and_then(<[SizeRow]>::split_last) else { return Ok(None) };
    if of == OfSize::CostPerVolume {
        let figure = Figure::Money(row.cost_per_volume);
        let from = per_volume(&offered, cost::opens_total(&offered)?)?;
        return Ok(Some(Step::new(Name::CostPerVolume, figure, Rule::Proportion, from)));
    }
    let Some(sold) = row.sold else { return Ok(None) };
    let step = match of {
        OfSize::PricePerVolume | OfSize::CostPerVolume => {
            let from = per_volume(&offered, price::menu(id, sold.price))?;
            Some((Name::PricePerVolume, Figure::Money(sold.price_per_volume), Rule::Proportion, from))
        }
        OfSize::ContributionPerVolume => {
            let from = per_volume(&offered, contribution(&offered)?)?;
            Some((Name::ContributionPerVolume, Figure::Money(sold.contribution_per_volume), Rule::Proportion, from))
        }
        OfSize::ContributionPerMinute => per_minute(&offered, &sold)?,
        OfSize::AgainstSmallest => {
            let of = |row: &SizeRow| Some(opens_per_volume(row.offer, row.sold?));
            let from = rows.iter().find_map(of).into_iter().collect::<Vec<Step>>();
            let from = std::iter::once(opens_per_volume(id, sold)).chain(from).collect();
            Some((Name::AgainstSmallest, Figure::Share(sold.against_smallest), Rule::Quotient, from))
        }
        OfSize::ExtraPrice | OfSize::ExtraCost | OfSize::Kept => match smaller.iter().rfind(|row| row.sold.is_some()) {
            Some(smaller) => extra(&Offered::new(book, ledger, smaller.offer)?, &offered, row, of)?,
            None => None,
        },
    };
    Ok(step.map(|(name, figure, rule, from)| Step::new(name, figure, rule, from)))
}

type Parts = Option<(Name, Figure, Rule, Vec<Step>)>;

/// For 1 fl oz or 100 mL.
fn per_volume(offered: &Offered, money: Step) -> Result<Vec<Step>, Overflow> {
    let units = offered.book.settings().units;
    let unit = units.drink_unit();
    let per = Amount::new(units.price_volume().millilitres().over(unit.size())?, unit);
    Ok(vec![money, Step::shown_for(Name::Fact(Fact::Shown), Figure::Amount(per)), offered.poured()])
}

fn per_minute(offered: &Offered, sold: &SoldSize) -> Result<Parts, Overflow> {
    let Some(money) = sold.contribution_per_minute else { return Ok(None) };
    let time = Step::opens(Name::Time, Figure::Time(offered.priced.cost.time), offered.shown(OfOffer::Time));
    let from = vec![contribution(offered)?, Step::fact(Fact::Minute), time];
    Ok(Some((Name::ContributionPerMinute, Figure::Money(money), Rule::Proportion, from)))
}

fn opens_per_volume(id: OfferId, sold: SoldSize) -> Step {
    let figure = Figure::Money(sold.price_per_volume);
    Step::opens(Name::PricePerVolume, figure, Shown::Size(id, OfSize::PricePerVolume))
}

/// What is left of a drink that has a price.
fn contribution(offered: &Offered) -> Result<Step, Overflow> {
    opens_at(offered, OfPrice::Contribution)
}

fn opens_at(offered: &Offered, of: OfPrice) -> Result<Step, Overflow> {
    let asked = offered.priced.asked.ok_or(Overflow::DivisionByZero)?;
    let (name, money) = match of {
        OfPrice::WithoutTax => (Name::WithoutTax, asked.without_tax),
        _ => (Name::Contribution, asked.contribution),
    };
    Ok(Step::opens(name, Figure::Money(money), offered.shown(OfOffer::At(AtPrice::Asked, of))))
}

/// From the next smaller size that has a price.
fn extra(small: &Offered, large: &Offered, row: &SizeRow, of: OfSize) -> Result<Parts, Overflow> {
    let Some(step) = row.step else { return Ok(None) };
    let both = |step: &dyn Fn(&Offered) -> Result<Step, Overflow>| Ok::<_, Overflow>(vec![step(large)?, step(small)?]);
    let more = |name, of| -> Result<Step, Overflow> {
        let from = both(&|offered| opens_at(offered, of))?;
        let figure = difference(&from)?;
        Ok(Step::new(name, Figure::Money(Money::from_major(figure)), Rule::Difference, from))
    };
    Ok(match of {
        OfSize::ExtraPrice => {
            let menu = |offered: &Offered| {
                let price = offered.priced.asked.ok_or(Overflow::DivisionByZero)?.menu;
                Ok(price::menu(offered.id, price))
            };
            Some((Name::ExtraPrice, Figure::Money(step.extra_price), Rule::Difference, both(&menu)?))
        }
        OfSize::Kept => match step.kept {
            Some(kept) => {
                let from = vec![
                    more(Name::ExtraContribution, OfPrice::Contribution)?,
                    more(Name::ExtraWithoutTax, OfPrice::WithoutTax)?,
                ];
                Some((Name::KeptOfExtra, Figure::Share(kept), Rule::Quotient, from))
            }
            None => None,
        },
        _ => Some((Name::ExtraCost, Figure::Money(step.extra_cost), Rule::Difference, both(&cost::opens_total)?)),
    })
}

fn difference(from: &[Step]) -> Result<Exact, Overflow> {
    let [large, small] = from else { return Ok(Exact::ZERO) };
    large.figure.base()?.minus(small.figure.base()?)
}
