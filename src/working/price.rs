//! From the cost to a price, and what a price brings.

use super::shown::Offered;
use super::{AtPrice, Fact, Figure, Name, OfOffer, OfPrice, Rule, Step, cost};
use crate::book::{CommissionBase, Key, Part, TaxPlace};
use crate::drink::cost::is_made;
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
    let key = offered.drink.tax_rate.map_or(Key::Settings, |_| Key::Drink(offered.drink.id));
    let from = vec![Step::fact(Fact::Whole), Step::given(Name::Tax, Figure::Share(rate), key)];
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
    let (fixed, fees) = fixed_fees(offered)?;
    if !fixed.is_empty() {
        let sum = offered.priced.cost.covered(terms.cost_basis).plus(fees)?;
        let all = std::iter::once(bear).chain(fixed).collect();
        bear = Step::new(Name::MustBear, Figure::Money(sum), Rule::Sum, all);
    }
    let from = [bear, left_share(offered)?.0].into_iter().chain(paid_of_price(offered)?).collect();
    let figure = Figure::Money(suggestion.without_tax);
    Ok(Some(Step::new(Name::TargetWithoutTax, figure, Rule::Quotient, from)))
}

/// What the fees take at any price, where the target covers them, and its sum.
fn fixed_fees(offered: &Offered) -> Result<(Vec<Step>, Money), Overflow> {
    let (mut steps, mut sum) = (Vec::new(), Money::ZERO);
    if covers_fees(offered) {
        let terms = &offered.priced.terms;
        steps.extend(fixed_fee(offered)?);
        sum = terms.fee_of_drink()?.plus(terms.fee_of_deposit()?)?;
        if let Some(deposit) = deposit(offered)?.filter(|_| terms.fee.share.is_positive()) {
            let from = vec![deposit, setting(Name::FeeShare, Figure::Share(terms.fee.share))];
            steps.push(Step::new(Name::DepositFee, Figure::Money(terms.fee_of_deposit()?), Rule::Product, from));
        }
    }
    Ok((steps, sum))
}

/// The fixed part of the payment fee for one drink, if there is one.
fn fixed_fee(offered: &Offered) -> Result<Option<Step>, Overflow> {
    let terms = &offered.priced.terms;
    if terms.fee.fixed.is_zero() {
        return Ok(None);
    }
    let fixed = setting(Name::FixedFee, Figure::Money(terms.fee.fixed));
    if terms.fee.drinks.is_one() {
        return Ok(Some(fixed));
    }
    let from = vec![fixed, setting(Name::DrinksPerPayment, Figure::Number(terms.fee.drinks))];
    Ok(Some(Step::new(Name::FixedFeeOfDrink, Figure::Money(terms.fee_of_drink()?), Rule::Quotient, from)))
}

/// What the customer pays for the deposit, if there is one.
fn deposit(offered: &Offered) -> Result<Option<Step>, Overflow> {
    let terms = &offered.priced.terms;
    if terms.deposit.is_zero() {
        return Ok(None);
    }
    let deposit = Step::given(Name::Deposit, Figure::Money(terms.deposit), Key::Container(offered.container.id));
    if !terms.deposit_taxed || terms.tax.rate.is_zero() {
        return Ok(Some(deposit));
    }
    let from = vec![deposit, with_tax(offered)?];
    Ok(Some(Step::new(Name::DepositWithTax, Figure::Money(terms.deposit_paid()?), Rule::Product, from)))
}

/// What is paid on average as a share of the menu price, where it is less.
fn paid_of_price(offered: &Offered) -> Result<Option<Step>, Overflow> {
    let reductions = offered.priced.terms.reductions;
    let share = |name, share, from| Step::new(name, Figure::Share(share), Rule::Difference, from);
    let typed = |name, share| setting(name, Figure::Share(share));
    let mut left = Vec::new();
    if reductions.discounts.is_positive() {
        let from = vec![Step::fact(Fact::Whole), typed(Name::Discounts, reductions.discounts)];
        left.push(share(Name::AfterDiscounts, reductions.discounts.rest()?, from));
    }
    let lost = reductions.lost_to_markdowns()?;
    if lost.is_positive() {
        let by = vec![Step::fact(Fact::Whole), typed(Name::MarkedDownTo, reductions.marked_down_to)];
        let by = share(Name::Markdown, reductions.marked_down_to.rest()?, by);
        let of = vec![typed(Name::MarkedDown, reductions.marked_down), by];
        let step = Step::new(Name::LostToMarkdowns, Figure::Share(lost), Rule::Product, of);
        left.push(share(Name::AfterMarkdowns, lost.rest()?, vec![Step::fact(Fact::Whole), step]));
    }
    if left.len() < 2 {
        return Ok(left.pop().map(|only| Step { name: Name::PaidOfPrice, ..only }));
    }
    Ok(Some(Step::new(Name::PaidOfPrice, Figure::Share(reductions.paid()?), Rule::Product, left)))
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
            let commission = Share::from_fraction(terms.commission_share()?);
            share = share.minus(commission)?;
            let typed = setting(Name::CommissionShare, Figure::Share(terms.commission));
            taken.push(match terms.commission_on {
                CommissionBase::WithoutTax => typed,
                CommissionBase::WithTax => {
                    let from = vec![typed, with_tax(offered)?];
                    Step::new(Name::CommissionOfPrice, Figure::Share(commission), Rule::Product, from)
                }
            });
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
            OfPrice::Revenue => (Name::Revenue, Figure::Money(asked.revenue)),
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
            OfPrice::Revenue => match paid_of_price(offered)? {
                None => return Ok(Step { name, ..self.opens(OfPrice::WithoutTax) }),
                Some(paid) => (Rule::Product, vec![self.opens(OfPrice::WithoutTax), paid]),
            },
            OfPrice::Fees => (Rule::Sum, self.fees()?),
            OfPrice::Margin => {
                let mut left = asked.revenue.minus(offered.priced.cost.covered(offered.priced.terms.cost_basis))?;
                let mut from = vec![self.revenue(), cost::opens_covered(offered)?];
                if covers_fees(offered) && asked.fees.is_positive() {
                    left = left.minus(asked.fees)?;
                    from.push(self.opens(OfPrice::Fees));
                }
                let left = Step::new(Name::LeftAfterCovered, Figure::Money(left), Rule::Difference, from);
                (Rule::Quotient, vec![left, self.revenue()])
            }
            OfPrice::Contribution => {
                let mut from = vec![self.revenue(), cost::opens_total(offered)?];
                if asked.fees.is_positive() {
                    from.push(self.opens(OfPrice::Fees));
                }
                (Rule::Difference, from)
            }
            OfPrice::MayCost => {
                let (left, share) = left_share(offered)?;
                let from = vec![self.revenue(), left];
                let (fixed, _) = fixed_fees(offered)?;
                if fixed.is_empty() {
                    (Rule::Product, from)
                } else {
                    let bears = Figure::Money(asked.revenue.times(share.fraction())?);
                    let bears = Step::new(Name::CanBear, bears, Rule::Product, from);
                    (Rule::Difference, std::iter::once(bears).chain(fixed).collect())
                }
            }
            OfPrice::IngredientsMayCost => (Rule::Difference, self.besides_ingredients()?),
        };
        Ok(Step::new(name, figure, rule, from))
    }

    /// What each drink made may cost, and all parts of that but the ingredients.
    fn besides_ingredients(&self) -> Result<Vec<Step>, Overflow> {
        let offered = self.offered;
        let (basis, settings) = (offered.priced.terms.cost_basis, offered.book.settings());
        let mut made = self.opens(OfPrice::MayCost);
        let mut may_cost = self.ceiling.cost;
        let is_sold = |part| !is_made(part, settings) && !matches!(part, Part::Unsold | Part::Free);
        let sold = cost::parts(offered, basis, &is_sold)?;
        if !sold.is_empty() {
            may_cost = may_cost.minus(offered.priced.cost.covered_of(basis, &is_sold)?)?;
            let from = std::iter::once(made).chain(sold).collect();
            made = Step::new(Name::BeforeOverhead, Figure::Money(may_cost), Rule::Difference, from);
        }
        let mut from = vec![made];
        for [share, rest] in [cost::free_and_paid(offered)?, cost::unsold_and_sold(offered)?] {
            if let (Figure::Share(share), Figure::Share(kept)) = (share.figure, rest.figure)
                && share.is_positive()
            {
                may_cost = may_cost.times(kept.fraction())?;
                from.push(rest);
            }
        }
        if from.len() > 1 {
            from = vec![Step::new(Name::MadeMayCost, Figure::Money(may_cost), Rule::Product, from)];
        }
        let rest = |part| is_made(part, settings) && part != Part::Ingredients;
        from.extend(cost::parts(offered, basis, &rest)?);
        Ok(from)
    }

    /// What is paid of the price without tax on average.
    fn revenue(&self) -> Step {
        if self.asked.revenue == self.asked.without_tax {
            return self.opens(OfPrice::WithoutTax);
        }
        self.opens(OfPrice::Revenue)
    }

    /// The same with its tax: what the customer pays at the menu price where there is nothing off it.
    fn revenue_with_tax(&self) -> Result<(Step, Money), Overflow> {
        let terms = &self.offered.priced.terms;
        if self.asked.revenue == self.asked.without_tax {
            return Ok((self.opens(OfPrice::CustomerPays), self.asked.customer_pays));
        }
        let pays = terms.revenue(self.asked.customer_pays)?;
        let from = vec![self.revenue(), with_tax(self.offered)?];
        Ok((Step::new(Name::RevenueWithTax, Figure::Money(pays), Rule::Product, from), pays))
    }

    /// What is paid for a drink on average, tax and deposit included.
    fn payment(&self) -> Result<(Step, Money), Overflow> {
        let (with_tax, pays) = self.revenue_with_tax()?;
        let Some(deposit) = deposit(self.offered)? else { return Ok((with_tax, pays)) };
        let pays = pays.plus(self.offered.priced.terms.deposit_paid()?)?;
        Ok((Step::new(Name::Payment, Figure::Money(pays), Rule::Sum, vec![with_tax, deposit]), pays))
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
            let (step, pays) = self.payment()?;
            fees.push(share(Name::Fee, pays, step, Name::FeeShare, terms.fee.share)?);
        }
        fees.extend(fixed_fee(self.offered)?);
        if terms.commission.is_positive() {
            let (step, price) = match terms.commission_on {
                CommissionBase::WithoutTax => (self.revenue(), self.asked.revenue),
                CommissionBase::WithTax => self.revenue_with_tax()?,
            };
            fees.push(share(Name::Commission, price, step, Name::CommissionShare, terms.commission)?);
        }
        Ok(fees)
    }
}
