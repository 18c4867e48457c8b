//! From the cost to a price, and what a price brings.

use super::shown::Offered;
use super::{AtPrice, Fact, Figure, Name, OfOffer, OfPrice, Rule, Step, cost};
use crate::book::{Key, Part, TaxPlace};
use crate::drink::ledger::OfferError;
use crate::drink::price::{Asked, Ceiling, Suggestion, asked, ceiling};
use crate::foundation::measure::{Money, Overflow, Share};

fn setting(name: Name, figure: Figure) -> Step {
    Step::given(name, figure, Key::Settings)
}

fn covers_fees(offered: &Offered) -> bool {
    offered.priced.terms.cost_basis.has_fees()
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
pub fn target_without_tax(offered: &Offered) -> Result<Option<Step>, OfferError> {
    let terms = &offered.priced.terms;
    let Some(suggestion) = suggestion(offered) else { return Ok(None) };
    let mut bear = cost::opens_covered(offered)?;
    if let Some(fixed) = fixed_fee(offered) {
        let sum = offered.priced.cost.covered(terms.cost_basis)?.plus(terms.fee.fixed)?;
        bear = Step::new(Name::MustBear, Figure::Money(sum), Rule::Sum, vec![bear, fixed]);
    }
    let figure = Figure::Money(suggestion.without_tax);
    Ok(Some(Step::new(Name::TargetWithoutTax, figure, Rule::Quotient, vec![bear, left_share(offered)?.0])))
}

/// The fixed part of the payment fee, where the target covers it.
fn fixed_fee(offered: &Offered) -> Option<Step> {
    let fixed = offered.priced.terms.fee.fixed;
    (covers_fees(offered) && fixed.is_positive()).then(|| setting(Name::FixedFee, Figure::Money(fixed)))
}

/// The share of a price that is left for what it must bear.
fn left_share(offered: &Offered) -> Result<(Step, Share), Overflow> {
    let terms = &offered.priced.terms;
    let key = offered.drink.target.map_or(Key::Settings, |_| Key::Drink(offered.drink.id));
    let target = Step::given(Name::Target, Figure::Share(terms.target), key);
    let mut share = terms.target.rest()?;
    let mut taken = vec![Step::fact(Fact::Whole), target];
    if covers_fees(offered) {
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
    Ok((Step::new(Name::LeftShare, Figure::Share(share), Rule::Difference, taken), share))
}

/// The menu price that gives the target, before its ending.
pub fn exact(offered: &Offered) -> Result<Option<Step>, OfferError> {
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

/// What a menu price brings, and what it leaves to spend.
pub fn at(offered: &Offered, which: AtPrice, of: OfPrice) -> Result<Option<Step>, OfferError> {
    let menu = match which {
        AtPrice::Asked => offered.priced.asked.map(|it| it.menu),
        AtPrice::Suggested => suggestion(offered).map(|it| it.menu),
        AtPrice::Point(menu) => Some(menu),
    };
    let Some(menu) = menu else { return Ok(None) };
    let (cost, terms) = (&offered.priced.cost, &offered.priced.terms);
    let asked = asked(cost, terms, menu)?;
    let ceiling = ceiling(offered.book, offered.drink, cost, terms, menu)?;
    At { offered, which, asked, ceiling }.step(of).map(Some)
}

/// The menu price asked, as it was typed.
pub fn menu(id: crate::book::OfferId, price: Money) -> Step {
    Step::given(Name::Menu, Figure::Money(price), Key::Offer(id))
}

struct At<'a> {
    offered: &'a Offered<'a>,
    which: AtPrice,
    asked: Asked,
    ceiling: Ceiling,
}

impl At<'_> {
    fn menu(&self) -> Step {
        match self.which {
            AtPrice::Asked => menu(self.offered.id, self.asked.menu),
            AtPrice::Suggested => {
                let shown = self.offered.shown(OfOffer::Suggested);
                Step::opens(Name::Suggested, Figure::Money(self.asked.menu), shown)
            }
            AtPrice::Point(menu) => Step::named_fact(Name::Menu, Figure::Money(menu), Fact::OnTheSpot),
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
            OfPrice::MayCost => (Name::MayCost, Figure::Money(self.ceiling.cost)),
            OfPrice::IngredientsMayCost => (Name::IngredientsMayCost, Figure::Money(self.ceiling.ingredients)),
        }
    }

    fn opens(&self, of: OfPrice) -> Step {
        let (name, figure) = self.figure(of);
        Step::opens(name, figure, self.offered.shown(OfOffer::At(self.which, of)))
    }

    fn step(&self, of: OfPrice) -> Result<Step, OfferError> {
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
                let mut left =
                    asked.without_tax.minus(offered.priced.cost.covered(offered.priced.terms.cost_basis)?)?;
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
            OfPrice::MayCost => {
                let (left, share) = left_share(offered)?;
                let from = vec![self.opens(OfPrice::WithoutTax), left];
                match fixed_fee(offered) {
                    None => (Rule::Product, from),
                    Some(fixed) => {
                        let bears = Figure::Money(asked.without_tax.times(share.fraction())?);
                        (Rule::Difference, vec![Step::new(Name::CanBear, bears, Rule::Product, from), fixed])
                    }
                }
            }
            OfPrice::IngredientsMayCost => (Rule::Difference, self.besides_ingredients()?),
        };
        Ok(Step::new(name, figure, rule, from))
    }

    /// What each drink made may cost, and all parts of that but the ingredients.
    fn besides_ingredients(&self) -> Result<Vec<Step>, Overflow> {
        let mut made = self.opens(OfPrice::MayCost);
        let [unsold, sold] = cost::unsold_and_sold(self.offered)?;
        if let Figure::Share(share) = unsold.figure
            && share.is_positive()
        {
            let figure = Figure::Money(self.ceiling.cost.times(share.rest()?.fraction())?);
            made = Step::new(Name::MadeMayCost, figure, Rule::Product, vec![made, sold]);
        }
        let rest = |part| !matches!(part, Part::Ingredients | Part::Unsold);
        let mut from = vec![made];
        from.extend(cost::parts(self.offered, self.offered.priced.terms.cost_basis, rest)?);
        Ok(from)
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
