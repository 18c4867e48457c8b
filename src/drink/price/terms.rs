//! The terms that a price must bear, the price for a margin, and the margin of a price.
//!
//! R is the price without tax, p the share of it that is paid on average, t the tax rate, f and k the payment
//! fee for one drink, c the commission, D the deposit.

#[cfg(test)]
mod tests;

use super::round_up;
use crate::book::{CommissionBase, Container, CostBasis, Drink, PaymentFee, Reductions, Settings, Tax, TaxPlace};
use crate::drink::cost::Cost;
use crate::foundation::measure::{Exact, Money, Overflow, PART_PLACES, Share};

/// What a price must bear.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Terms {
    /// Tax, at the drink's rate.
    pub tax: Tax,
    /// Payment fee.
    pub fee: PaymentFee,
    /// Commission.
    pub commission: Share,
    /// The price of which it is a share.
    pub commission_on: CommissionBase,
    /// What of the sales brings less than the menu price.
    pub reductions: Reductions,
    /// The deposit for the container, beside the price.
    pub deposit: Money,
    /// Whether tax is owed on it.
    pub deposit_taxed: bool,
    /// What the target margin must cover.
    pub cost_basis: CostBasis,
    /// Target margin.
    pub target: Share,
    /// What they come to at every price.
    rates: Rates,
}

/// What terms come to, whatever the price.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Rates {
    /// 1 + t.
    with_tax: Exact,
    /// p.
    paid: Exact,
    /// c + f * (1 + t): the share of the revenue that fee and commission take.
    fees: Exact,
    /// k / drinks per payment, and the share of the fee that the deposit takes.
    fixed_fee: Money,
}

/// Why there is no price.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PriceError {
    /// Fees and commission leave less than the target, whatever the price.
    NoPriceReaches {
        /// The target margin.
        target: Share,
        /// The margin that one could approach, never reach.
        highest: Share,
    },
    /// The numbers leave the range that can be computed.
    Arithmetic(Overflow),
}

impl From<Overflow> for PriceError {
    fn from(overflow: Overflow) -> PriceError {
        PriceError::Arithmetic(overflow)
    }
}

/// A price for a target margin.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Suggestion {
    /// Price without tax that gives the target margin.
    pub without_tax: Money,
    /// Menu price that gives the target margin, before its ending.
    pub exact: Money,
    /// Menu price with one of the owner's endings: suggested.
    pub menu: Money,
    /// Margin at the suggested price.
    pub margin: Share,
}

/// What a menu price brings.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Asked {
    /// The menu price.
    pub menu: Money,
    /// The price without tax.
    pub without_tax: Money,
    /// What is paid of it on average: the revenue of one drink sold.
    pub revenue: Money,
    /// What the customer pays at the menu price, tax included, without the deposit.
    pub customer_pays: Money,
    /// Payment fee and commission.
    pub fees: Money,
    /// What is left after the covered terms, over the revenue.
    pub margin: Share,
    /// What is left after everything.
    pub contribution: Money,
}

/// Whether hands' time counts in what changes with the number of drinks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Hands {
    /// It does: fewer drinks take fewer hours that are paid.
    #[default]
    Counted,
    /// It does not: the same hours are paid, however many drinks are sold.
    LeftOut,
}

impl Asked {
    /// What one drink more or less changes: the contribution without overhead, with what is thrown away of it,
    /// and without hands' time where that is left out. `cost` is that of the drink.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn profit_that_changes(&self, cost: &Cost, hands: Hands) -> Result<Money, Overflow> {
        let changes = match hands {
            Hands::Counted => CostBasis::GoodsAndLabour,
            Hands::LeftOut => CostBasis::Goods,
        };
        self.contribution.plus(cost.total())?.minus(cost.covered(changes))
    }
}

impl Terms {
    /// Whether a margin, rounded as every computed part is, reaches the target. Whoever compares
    /// the two asks this.
    pub fn reached_by(&self, margin: Share) -> bool {
        margin >= self.target
    }

    /// The terms of a drink in a container.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn of(settings: &Settings, drink: &Drink, container: &Container) -> Result<Terms, Overflow> {
        let tax = settings.tax_of(drink);
        let with_tax = Exact::ONE.plus(tax.rate.fraction())?;
        let mut terms = Terms {
            tax,
            fee: settings.payment_fee,
            commission: settings.commission,
            commission_on: settings.commission_on,
            reductions: settings.reductions,
            deposit: container.deposit,
            deposit_taxed: settings.deposit_taxed,
            cost_basis: settings.cost_basis,
            target: drink.target.unwrap_or(settings.target),
            rates: Rates {
                with_tax,
                paid: settings.reductions.paid()?.fraction(),
                fees: Exact::ZERO,
                fixed_fee: Money::ZERO,
            },
        };
        terms.rates.fees = terms.commission_share()?.plus(terms.fee.share.fraction().times(with_tax)?)?;
        terms.rates.fixed_fee = terms.fee_of_drink()?.plus(terms.fee_of_deposit()?)?;
        Ok(terms)
    }

    /// The share of the revenue that fee and commission take, if the margin covers them.
    pub(super) fn covered_fee_share(&self) -> Exact {
        if self.cost_basis.has_fees() { self.rates.fees } else { Exact::ZERO }
    }

    /// What the fees take of a drink at any price, if the margin covers it.
    pub(super) fn covered_fixed_fee(&self) -> Money {
        if self.cost_basis.has_fees() { self.rates.fixed_fee } else { Money::ZERO }
    }

    /// The commission as a share of the revenue: c, or c * (1 + t) where it is one of the price with tax.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn commission_share(&self) -> Result<Exact, Overflow> {
        match self.commission_on {
            CommissionBase::WithoutTax => Ok(self.commission.fraction()),
            CommissionBase::WithTax => self.commission.fraction().times(self.rates.with_tax),
        }
    }

    /// The fixed part of the payment fee for one drink.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn fee_of_drink(&self) -> Result<Money, Overflow> {
        self.fee.fixed.over(self.fee.drinks)
    }

    /// The payment fee on the deposit.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn fee_of_deposit(&self) -> Result<Money, Overflow> {
        self.deposit_paid()?.times(self.fee.share.fraction())
    }

    /// What the customer pays for the deposit: with tax where it is owed on it.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn deposit_paid(&self) -> Result<Money, Overflow> {
        if self.deposit_taxed { self.deposit.times(self.rates.with_tax) } else { Ok(self.deposit) }
    }

    /// What is paid on average of a price without tax.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn revenue(&self, without_tax: Money) -> Result<Money, Overflow> {
        without_tax.times(self.rates.paid)
    }

    /// The price without tax of a menu price.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn without_tax(&self, menu: Money) -> Result<Money, Overflow> {
        match self.tax.place {
            TaxPlace::InThePrice => menu.over(self.rates.with_tax),
            TaxPlace::AddedAtTheTill => Ok(menu),
        }
    }

    /// What the customer pays of a menu price, tax included.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn customer_pays(&self, menu: Money) -> Result<Money, Overflow> {
        match self.tax.place {
            TaxPlace::InThePrice => Ok(menu),
            TaxPlace::AddedAtTheTill => menu.times(self.rates.with_tax),
        }
    }

    /// The menu price of a price without tax.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn menu(&self, without_tax: Money) -> Result<Money, Overflow> {
        match self.tax.place {
            TaxPlace::InThePrice => without_tax.times(self.rates.with_tax),
            TaxPlace::AddedAtTheTill => Ok(without_tax),
        }
    }
}

/// The price for the target margin: R = (cost + k) / (1 - m - c - f * (1 + t)) / p, then rounded up
/// to the owner's endings: the lowest of them whose margin is on target by [`Terms::reached_by`].
///
/// # Errors
/// [`PriceError::NoPriceReaches`] where the denominator is zero or less.
pub fn suggest(cost: &Cost, terms: &Terms, settings: &Settings) -> Result<Suggestion, PriceError> {
    let covered = Covered::of(cost, terms);
    let highest = Exact::ONE.minus(covered.fee_share)?;
    let denominator = highest.minus(terms.target.fraction())?;
    if !denominator.is_positive() {
        let highest = Share::from_fraction(highest);
        return Err(PriceError::NoPriceReaches { target: terms.target, highest });
    }
    let must_bear = covered.cost.plus(covered.fixed_fee)?;
    let of_menu = denominator.times(terms.rates.paid)?;
    // Multiplied before it is divided, and rounded up before it is rounded: a price that comes
    // out even stays even, and no digit is dropped that would put the margin under the target.
    let exact = terms.menu(must_bear)?.over(of_menu)?;
    let margin_at = |menu| covered.margin(terms.revenue(terms.without_tax(menu)?)?);
    let mut menu = round_up(exact, settings)?;
    // The parts of the cost are rounded, and so is the margin: an ending just below may reach the
    // target too. One further below cannot: it would move the margin by more than its last decimal.
    let off = exact.times(Exact::new(1, PART_PLACES))?.over(denominator)?;
    let nearly = round_up(exact.minus(off)?, settings)?;
    if nearly < menu && terms.reached_by(margin_at(nearly)?) {
        menu = nearly;
    }
    let margin = margin_at(menu)?;
    Ok(Suggestion { without_tax: must_bear.over(of_menu)?.as_part(), exact: exact.as_part(), menu, margin })
}

/// What a menu price brings: with the revenue R * p, the contribution that is left of it after fees and full
/// cost, and the margin on the covered terms.
///
/// # Errors
/// [`Overflow`], also for a price of zero.
pub fn asked(cost: &Cost, terms: &Terms, menu: Money) -> Result<Asked, Overflow> {
    let without_tax = terms.without_tax(menu)?;
    let revenue = terms.revenue(without_tax)?;
    let fees = revenue.times(terms.rates.fees)?.plus(terms.rates.fixed_fee)?;
    let contribution = revenue.minus(fees)?.minus(cost.total())?;
    Ok(Asked {
        menu,
        without_tax: without_tax.as_part(),
        revenue: revenue.as_part(),
        customer_pays: terms.customer_pays(menu)?.as_part(),
        fees: fees.as_part(),
        margin: Covered::of(cost, terms).margin(revenue)?,
        contribution: contribution.as_part(),
    })
}

/// What a margin must cover of a drink, whatever its price.
struct Covered {
    cost: Money,
    /// The share of the revenue that fee and commission take.
    fee_share: Exact,
    /// What the fees take at any price.
    fixed_fee: Money,
}

impl Covered {
    fn of(cost: &Cost, terms: &Terms) -> Covered {
        Covered {
            cost: cost.covered(terms.cost_basis),
            fee_share: terms.covered_fee_share(),
            fixed_fee: terms.covered_fixed_fee(),
        }
    }

    /// What is left of the revenue after it, over the revenue.
    fn margin(&self, revenue: Money) -> Result<Share, Overflow> {
        let fees = revenue.times(self.fee_share)?.plus(self.fixed_fee)?;
        let left = revenue.minus(fees)?.minus(self.cost)?;
        Ok(Share::from_fraction(left.ratio_to(revenue)?.as_part()))
    }
}
