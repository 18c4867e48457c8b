//! A size among the others of its drink.

use super::shown::Offered;
use super::{AtPrice, Fact, Figure, Name, OfOffer, OfPrice, OfSize, Rule, Shown, Step, cost, price};
use crate::book::{Book, OfferId, Scope};
use crate::drink::ledger::{Ledger, OfferError};
use crate::drink::price::Asked;
use crate::foundation::measure::{Amount, Money, Overflow};
use crate::sizes::side_by_side::{SizeRow, SoldSize, side_by_side, sold_in};

/// A number of a size among the others.
pub fn size(book: &Book, ledger: &Ledger, id: OfferId, of: OfSize) -> Result<Option<Step>, OfferError> {
    let offered = Offered::new(book, ledger, id)?;
    let drink = Scope::Drink(id.drink);
    let rows = side_by_side(book, ledger, drink, &sold_in(book, drink))?.sizes;
    let Some(place) = rows.iter().position(|row| row.container == id.container) else { return Ok(None) };
    let Some((row, smaller)) = rows.get(..=place).and_then(<[SizeRow]>::split_last) else { return Ok(None) };
    if of == OfSize::CostPerVolume {
        let figure = Figure::Money(row.cost_per_volume);
        let from = per_volume(&offered, cost::opens_total(&offered)?)?;
        return Ok(Some(Step::new(Name::CostPerVolume, figure, Rule::Proportion, from)));
    }
    let (Some(size), Some(asked)) = (row.sold, offered.priced.asked) else { return Ok(None) };
    let sold = Sold { offered: &offered, asked };
    let (name, figure, rule, from) = match of {
        OfSize::PricePerVolume | OfSize::CostPerVolume => {
            let from = per_volume(&offered, sold.menu())?;
            (Name::PricePerVolume, Figure::Money(size.price_per_volume), Rule::Proportion, from)
        }
        OfSize::ContributionPerVolume => {
            let from = per_volume(&offered, sold.contribution())?;
            (Name::ContributionPerVolume, Figure::Money(size.contribution_per_volume), Rule::Proportion, from)
        }
        OfSize::ContributionPerMinute => {
            let Some(money) = size.contribution_per_minute else { return Ok(None) };
            let time = Figure::Time(offered.priced.cost.time);
            let time = Step::opens(Name::Time, time, offered.shown(OfOffer::Time));
            let from = vec![sold.contribution(), Step::fact(Fact::Minute), time];
            (Name::ContributionPerMinute, Figure::Money(money), Rule::Proportion, from)
        }
        OfSize::AgainstSmallest => {
            let of_size = |container| OfferId { container, ..id };
            let priced = |row: &SizeRow| Some(opens_per_volume(of_size(row.container), row.sold?));
            let mut from = vec![opens_per_volume(id, size)];
            from.extend(rows.iter().find_map(priced));
            (Name::AgainstSmallest, Figure::Share(size.against_smallest), Rule::Quotient, from)
        }
        OfSize::ExtraPrice | OfSize::ExtraCost | OfSize::Kept => {
            let Some(smaller) = smaller.iter().rfind(|row| row.sold.is_some()) else { return Ok(None) };
            let smaller = Offered::new(book, ledger, OfferId { container: smaller.container, ..id })?;
            let Some(asked) = smaller.priced.asked else { return Ok(None) };
            return Ok(extra(&sold, &Sold { offered: &smaller, asked }, row, of)?);
        }
    };
    Ok(Some(Step::new(name, figure, rule, from)))
}

/// For 1 fl oz or 100 mL.
fn per_volume(offered: &Offered, money: Step) -> Result<Vec<Step>, Overflow> {
    let units = offered.book.settings().units;
    let unit = units.drink_unit();
    let per = Amount::new(units.price_volume().millilitres().over(unit.size())?, unit);
    Ok(vec![money, Step::shown_for(Name::Fact(Fact::Shown), Figure::Amount(per)), offered.poured()])
}

fn opens_per_volume(id: OfferId, size: SoldSize) -> Step {
    let figure = Figure::Money(size.price_per_volume);
    Step::opens(Name::PricePerVolume, figure, Shown::Size(id, OfSize::PricePerVolume))
}

/// An offer with its price.
struct Sold<'a> {
    offered: &'a Offered<'a>,
    asked: Asked,
}

impl Sold<'_> {
    fn menu(&self) -> Step {
        price::menu(self.offered.id, self.asked.menu)
    }

    fn contribution(&self) -> Step {
        self.opens(Name::Contribution, self.asked.contribution, OfPrice::Contribution)
    }

    fn without_tax(&self) -> Step {
        self.opens(Name::WithoutTax, self.asked.without_tax, OfPrice::WithoutTax)
    }

    fn opens(&self, name: Name, money: Money, of: OfPrice) -> Step {
        Step::opens(name, Figure::Money(money), self.offered.shown(OfOffer::At(AtPrice::Asked, of)))
    }
}

/// From the next smaller size that has a price.
fn extra(large: &Sold, small: &Sold, row: &SizeRow, of: OfSize) -> Result<Option<Step>, Overflow> {
    let Some(step) = row.step else { return Ok(None) };
    let more = |name, money, from| Step::new(name, Figure::Money(money), Rule::Difference, from);
    Ok(match of {
        OfSize::ExtraPrice => Some(more(Name::ExtraPrice, step.extra_price, vec![large.menu(), small.menu()])),
        OfSize::Kept => {
            let Some(kept) = step.kept else { return Ok(None) };
            let contribution = large.asked.contribution.minus(small.asked.contribution)?;
            let without_tax = large.asked.without_tax.minus(small.asked.without_tax)?;
            let from = vec![
                more(Name::ExtraContribution, contribution, vec![large.contribution(), small.contribution()]),
                more(Name::ExtraWithoutTax, without_tax, vec![large.without_tax(), small.without_tax()]),
            ];
            Some(Step::new(Name::KeptOfExtra, Figure::Share(kept), Rule::Quotient, from))
        }
        _ => {
            let costs = vec![cost::opens_total(large.offered)?, cost::opens_total(small.offered)?];
            Some(more(Name::ExtraCost, step.extra_cost, costs))
        }
    })
}
