//! From the cost to a price, and what a price brings.

use super::shown::Offered;
use super::{AtPrice, Fact, Figure, Name, OfOffer, OfPrice, Rule, Step, cost};
use crate::book::{Covers, Key, TaxPlace};
use crate::ledger::Trouble;
use crate::measure::{Money, Overflow, Share};
use crate::price::{Asked, Suggestion, asked};

fn setting(name: Name, figure: Figure) -> Step {
    Step::given(name, figure, Key::Settings)
}

fn covers_fees(offered: &Offered) -> bool {
    offered.priced.terms.covers == Covers::Everything
}

/// 100 % and the tax.
fn with_tax(offered: &Offered) -> Result<Step, Overflow> {
    let rate = offered.priced.terms.tax.rate;
    let from = vec![Step::fact(Fact::Whole), setting(Name::Tax, Figure::Share(rate))];
    Ok(Step::new(Name::WithTax, Figure::Share(Share::WHOLE.plus(rate)?), Rule::Sum, from))
}

fn suggestion<'a>(offered: &Offered<'a>) -> Option<&'a Suggestion> {
    offered.priced.suggestion.as_ref().ok()
}

/// The price without tax that gives the target: what it must bear, over the share that is left
/// for it.
pub fn target_without_tax(offered: &Offered) -> Result<Option<Step>, Trouble> {
    let terms = &offered.priced.terms;
    let Some(suggestion) = suggestion(offered) else { return Ok(None) };
    let mut bear = cost::opens_covered(offered)?;
    let settings = |given: Option<Share>| given.map_or(Key::Settings, |_| Key::Drink(offered.drink.id));
    let target = Step::given(Name::Target, Figure::Share(terms.target), settings(offered.drink.target));
    let mut share = terms.target.rest()?;
    let mut taken = vec![Step::fact(Fact::Whole), target];
    if covers_fees(offered) {
        if terms.fee.fixed.is_positive() {
            let sum = offered.priced.cost.covered(terms.covers)?.plus(terms.fee.fixed)?;
            let from = vec![bear, setting(Name::FixedFee, Figure::Money(terms.fee.fixed))];
            bear = Step::new(Name::MustBear, Figure::Money(sum), Rule::Sum, from);
        }
        if terms.commission.is_positive() {
            share = share.minus(terms.commission)?;
            taken.push(setting(Name::CommissionShare, Figure::Share(terms.commission)));
        }
        if terms.fee.share.is_positive() {
            let fee = terms.fee.share.times(Share::WHOLE.plus(terms.tax.rate)?.fraction())?;
            share = share.minus(fee)?;
            let from = vec![setting(Name::FeeShare, Figure::Share(terms.fee.share)), with_tax(offered)?];
            taken.push(Step::new(Name::FeeOfPrice, Figure::Share(fee), Rule::Product, from));
        }
    }
    let left = Step::new(Name::LeftShare, Figure::Share(share), Rule::Difference, taken);
    let figure = Figure::Money(suggestion.without_tax);
    Ok(Some(Step::new(Name::TargetWithoutTax, figure, Rule::Quotient, vec![bear, left])))
}

/// The menu price that gives the target, before its ending.
pub fn exact(offered: &Offered) -> Result<Option<Step>, Trouble> {
    let Some(suggestion) = suggestion(offered) else { return Ok(None) };
    let shown = offered.shown(OfOffer::TargetWithoutTax);
    let without_tax = Step::opens(Name::TargetWithoutTax, Figure::Money(suggestion.without_tax), shown);
    Ok(Some(taxed(offered, Name::Exact, suggestion.exact, without_tax, TaxPlace::InThePrice)?))
}

/// A price, with the tax on it where it stands at `place`.
fn taxed(offered: &Offered, name: Name, price: Money, base: Step, place: TaxPlace) -> Result<Step, Overflow> {
    let tax = offered.priced.terms.tax;
    let figure = Figure::Money(price);
    if tax.rate.is_zero() || tax.place != place {
        return Ok(Step::new(name, figure, Rule::Sum, vec![base]));
    }
    Ok(Step::new(name, figure, Rule::Product, vec![base, with_tax(offered)?]))
}

/// The suggested menu price.
pub fn suggested(offered: &Offered) -> Option<Step> {
    let suggestion = suggestion(offered)?;
    let exact = Step::opens(Name::Exact, Figure::Money(suggestion.exact), offered.shown(OfOffer::Exact));
    Some(Step::new(Name::Suggested, Figure::Money(suggestion.menu), Rule::UpToEnding, vec![exact]))
}

/// What the price asked or suggested brings.
pub fn at(offered: &Offered, which: AtPrice, of: OfPrice) -> Result<Option<Step>, Trouble> {
    let asked = match which {
        AtPrice::Asked => offered.priced.asked,
        AtPrice::Suggested => match suggestion(offered) {
            Some(it) => Some(asked(&offered.priced.cost, &offered.priced.terms, it.menu)?),
            None => None,
        },
    };
    asked.map(|asked| At { offered, which, asked }.step(of)).transpose()
}

/// The menu price asked, as it was typed.
pub fn menu(id: crate::book::OfferId, price: Money) -> Step {
    Step::given(Name::Menu, Figure::Money(price), Key::Offer(id))
}

struct At<'a> {
    offered: &'a Offered<'a>,
    which: AtPrice,
    asked: Asked,
}

impl At<'_> {
    fn menu(&self) -> Step {
        match self.which {
            AtPrice::Asked => menu(self.offered.id, self.asked.menu),
            AtPrice::Suggested => {
                let shown = self.offered.shown(OfOffer::Suggested);
                Step::opens(Name::Suggested, Figure::Money(self.asked.menu), shown)
            }
        }
    }

    fn figure(&self, of: OfPrice) -> (Name, Figure) {
        let asked = &self.asked;
        match of {
            OfPrice::WithoutTax => (Name::WithoutTax, Figure::Money(asked.without_tax)),
            OfPrice::CustomerPays => (Name::CustomerPays, Figure::Money(asked.customer_pays)),
            OfPrice::Fees => (Name::Fees, Figure::Money(asked.fees)),
            OfPrice::Margin => (Name::Margin, Figure::Share(asked.margin)),
            OfPrice::Contribution => (Name::Contribution, Figure::Money(asked.contribution)),
        }
    }

    fn opens(&self, of: OfPrice) -> Step {
        let (name, figure) = self.figure(of);
        Step::opens(name, figure, self.offered.shown(OfOffer::At(self.which, of)))
    }

    fn step(&self, of: OfPrice) -> Result<Step, Trouble> {
        let (offered, asked) = (self.offered, &self.asked);
        let tax = offered.priced.terms.tax;
        let (name, figure) = self.figure(of);
        let (rule, from) = match of {
            OfPrice::WithoutTax if tax.place == TaxPlace::AddedAtTheTill || tax.rate.is_zero() => {
                (Rule::Sum, vec![self.menu()])
            }
            OfPrice::WithoutTax => (Rule::Quotient, vec![self.menu(), with_tax(offered)?]),
            OfPrice::CustomerPays => {
                return Ok(taxed(offered, name, asked.customer_pays, self.menu(), TaxPlace::AddedAtTheTill)?);
            }
            OfPrice::Fees => (Rule::Sum, self.fees()?),
            OfPrice::Margin => {
                let mut left = asked.without_tax.minus(offered.priced.cost.covered(offered.priced.terms.covers)?)?;
                let mut from = vec![self.opens(OfPrice::WithoutTax), cost::opens_covered(offered)?];
                if covers_fees(offered) && asked.fees.is_positive() {
                    left = left.minus(asked.fees)?;
                    from.push(self.opens(OfPrice::Fees));
                }
                let left = Step::new(Name::LeftAfterCovered, Figure::Money(left), Rule::Difference, from);
                (Rule::Quotient, vec![left, self.opens(OfPrice::WithoutTax)])
            }
            OfPrice::Contribution => {
                let mut from = vec![self.opens(OfPrice::WithoutTax), cost::opens_total(offered)?];
                if asked.fees.is_positive() {
                    from.push(self.opens(OfPrice::Fees));
                }
                (Rule::Difference, from)
            }
        };
        Ok(Step::new(name, figure, rule, from))
    }

    fn fees(&self) -> Result<Vec<Step>, Overflow> {
        let terms = &self.offered.priced.terms;
        let mut fees = Vec::new();
        let share = |name, base: Money, base_step, of, share: Share| -> Result<Step, Overflow> {
            let figure = Figure::Money(base.times(share.fraction())?);
            let from = vec![base_step, setting(of, Figure::Share(share))];
            Ok(Step::new(name, figure, Rule::Product, from))
        };
        if terms.fee.share.is_positive() {
            let pays = self.opens(OfPrice::CustomerPays);
            fees.push(share(Name::Fee, self.asked.customer_pays, pays, Name::FeeShare, terms.fee.share)?);
        }
        if terms.fee.fixed.is_positive() {
            fees.push(setting(Name::FixedFee, Figure::Money(terms.fee.fixed)));
        }
        if terms.commission.is_positive() {
            let price = self.opens(OfPrice::WithoutTax);
            fees.push(share(Name::Commission, self.asked.without_tax, price, Name::CommissionShare, terms.commission)?);
        }
        Ok(fees)
    }
}
