//! The money ladder of a price: what each thing takes of it, and what is left on the way down to
//! the profit per drink.
//!
//! What the margin covers stands above the margin, the rest below it, so that cost and margin are on
//! the same terms. Overhead stands last: what is left above it changes with the number of drinks.
//!
//! | margin on | takes | leaves | takes | leaves | takes | leaves |
//! |---|---|---|---|---|---|---|
//! | goods | discounts, tax, goods | margin | labor, fees | profit that changes | overhead | profit |
//! | goods and labor | discounts, tax, goods, labor | margin | fees | profit that changes | overhead | profit |
//! | everything | discounts, tax, fees, goods, labor | profit that changes | overhead | profit, the margin | | |
//!
//! Each has what is thrown away and what is handed out free of its own parts. Every rung is exact to twelve decimals, and the
//! price less the rungs that take is exactly each that is left.

#[cfg(test)]
mod tests;

use super::{Terms, asked};
use crate::book::{Book, CostBasis, Offer, OverheadPer, Part, TaxPlace};
use crate::drink::cost::{Cost, unsold_share};
use crate::drink::ledger::Priced;
use crate::foundation::measure::{Money, Overflow, Share};

/// What takes something of a price.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Takes {
    /// Discounts and marked-down prices.
    Discounts,
    /// The sales tax inside the price.
    SalesTax,
    /// The fee for a payment by card.
    CardFee,
    /// The commission of a delivery app.
    Commission,
    /// A part of the cost, without what is thrown away or handed out free.
    Part(Part),
    /// What is thrown away of the parts from one cost basis to another.
    Waste(CostBasis, CostBasis),
    /// What is handed out free of them.
    Free(CostBasis, CostBasis),
}

/// What is left of a price on the way down.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Leaves {
    /// The margin, where it does not cover everything.
    Margin,
    /// What changes with the number of drinks sold: all but overhead is paid.
    ProfitThatChanges,
    /// Profit per drink. It is the margin too where that covers everything.
    Profit,
}

/// A rung of the ladder.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rung {
    /// Something that is taken, above zero.
    Takes(Takes, Money),
    /// What is left, below zero where the price does not pay for what stands above.
    Leaves(Leaves, Money),
}

/// The money ladder of a menu price.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Ladder {
    /// The menu price.
    pub menu: Money,
    /// What the margin covers.
    pub basis: CostBasis,
    /// The margin.
    pub margin: Share,
    /// What the customer pays, tax included.
    pub customer_pays: Money,
    /// From the price down to the profit.
    pub rungs: Vec<Rung>,
}

impl Ladder {
    /// Whether the margin stands at this rung.
    pub fn margin_stands_at(&self, leaves: Leaves) -> bool {
        leaves == if self.basis == CostBasis::Everything { Leaves::Profit } else { Leaves::Margin }
    }

    /// What stands above the margin without discounts and tax: the cost on the margin's own terms.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn covered(&self) -> Result<Money, Overflow> {
        let mut covered = Money::ZERO;
        for rung in &self.rungs {
            match rung {
                Rung::Takes(Takes::Discounts | Takes::SalesTax, _) => {}
                Rung::Takes(_, money) => covered = covered.plus(*money)?,
                Rung::Leaves(leaves, _) if self.margin_stands_at(*leaves) => break,
                Rung::Leaves(..) => {}
            }
        }
        Ok(covered)
    }

    /// Whether the rungs as they are shown, each rounded by `round`, do not add up to what is shown
    /// to be left.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn is_rounded_apart(&self, round: &dyn Fn(Money) -> Money) -> Result<bool, Overflow> {
        let mut left = round(self.menu);
        for rung in &self.rungs {
            match rung {
                Rung::Takes(_, money) => left = left.minus(round(*money))?,
                Rung::Leaves(_, money) if left != round(*money) => return Ok(true),
                Rung::Leaves(..) => {}
            }
        }
        Ok(false)
    }
}

/// What is taken between two that are left: parts of the cost with their waste, then fees.
struct Flight {
    parts: Option<(CostBasis, CostBasis)>,
    fees: bool,
    leaves: Option<Leaves>,
}

/// The flights of a ladder whose margin covers this basis.
fn flights(basis: CostBasis) -> [Flight; 3] {
    use CostBasis::{Everything, Goods, GoodsAndLabour};
    use Leaves::{Margin, Profit, ProfitThatChanges};
    let flight = |parts, fees, leaves| Flight { parts, fees, leaves };
    let (margin, changes) = (Some(Margin), Some(ProfitThatChanges));
    let overhead = flight(Some((Everything, Everything)), false, Some(Profit));
    match basis {
        Goods => [
            flight(Some((Goods, Goods)), false, margin),
            flight(Some((GoodsAndLabour, GoodsAndLabour)), true, changes),
            overhead,
        ],
        GoodsAndLabour => [flight(Some((Goods, GoodsAndLabour)), false, margin), flight(None, true, changes), overhead],
        Everything => [flight(None, true, None), flight(Some((Goods, GoodsAndLabour)), false, changes), overhead],
    }
}

/// The way down: what is left so far, and the rungs.
struct Descent {
    left: Money,
    rungs: Vec<Rung>,
}

impl Descent {
    fn take(&mut self, takes: Takes, money: Money) -> Result<(), Overflow> {
        if !money.is_zero() {
            self.left = self.left.minus(money)?;
            self.rungs.push(Rung::Takes(takes, money));
        }
        Ok(())
    }
}

/// The ladder of a menu price.
///
/// # Errors
/// [`Overflow`], also for a price of zero.
pub fn ladder(cost: &Cost, terms: &Terms, menu: Money) -> Result<Ladder, Overflow> {
    let brings = asked(cost, terms, menu)?;
    let commission = terms.revenue(terms.without_tax(menu)?)?.times(terms.commission_share()?)?.as_part();
    let mut descent = Descent { left: menu, rungs: Vec::new() };
    // The last above the revenue takes what pays for nothing else, so that no rounded digit is lost.
    let revenue = brings.contribution.plus(brings.fees)?.plus(cost.total())?;
    match terms.tax.place {
        TaxPlace::InThePrice => {
            descent.take(Takes::Discounts, menu.minus(terms.revenue(menu)?)?.as_part())?;
            descent.take(Takes::SalesTax, descent.left.minus(revenue)?)?;
        }
        TaxPlace::AddedAtTheTill => descent.take(Takes::Discounts, menu.minus(revenue)?)?,
    }
    let (mut wasted, mut free) = (Money::ZERO, Money::ZERO);
    for flight in flights(terms.cost_basis) {
        if let Some((from, to)) = flight.parts {
            for basis in CostBasis::ALL.iter().filter(|basis| from <= **basis && **basis <= to) {
                for part in Part::ALL.into_iter().filter(|part| part.basis() == Some(*basis)) {
                    descent.take(Takes::Part(part), cost.part(part)?)?;
                }
            }
            let waste = cost.covered_part(to, Part::Unsold)?;
            descent.take(Takes::Waste(from, to), waste.minus(wasted)?)?;
            let given = cost.covered_part(to, Part::Free)?;
            descent.take(Takes::Free(from, to), given.minus(free)?)?;
            (wasted, free) = (waste, given);
        }
        if flight.fees {
            descent.take(Takes::CardFee, brings.fees.minus(commission)?)?;
            descent.take(Takes::Commission, commission)?;
        }
        if let Some(leaves) = flight.leaves {
            descent.rungs.push(Rung::Leaves(leaves, descent.left));
        }
    }
    let Descent { rungs, .. } = descent;
    Ok(Ladder { menu, basis: terms.cost_basis, margin: brings.margin, customer_pays: brings.customer_pays, rungs })
}

/// What a profit does not count because the book does not say it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotCounted {
    /// Labor: there is no wage.
    Wage,
    /// Labor: the drink takes no time.
    Time,
    /// Packaging: the container has none.
    Packaging,
    /// Waste: nothing is said to be thrown away.
    Waste,
    /// Overhead: none is entered.
    NoOverhead,
    /// Overhead of a week: it is not known how many drinks are sold in one.
    Overhead,
    /// The card fee: none is entered.
    CardFee,
    /// Tax inside the price: there is no rate.
    Tax,
}

/// What the profit of an offer does not count yet.
pub fn not_counted(book: &Book, offer: &Offer, priced: &Priced) -> Vec<NotCounted> {
    let mut not_counted = Vec::new();
    if book.settings().wage.is_zero() {
        not_counted.push(NotCounted::Wage);
    } else if priced.cost.time.is_zero() {
        not_counted.push(NotCounted::Time);
    }
    if priced.cost.packaging.is_empty() {
        not_counted.push(NotCounted::Packaging);
    }
    if book.drink(offer.drink).is_some_and(|drink| unsold_share(book, drink).is_zero()) {
        not_counted.push(NotCounted::Waste);
    }
    let settings = book.settings();
    if settings.overhead.is_zero() {
        not_counted.push(NotCounted::NoOverhead);
    } else if settings.overhead_per == OverheadPer::Week && book.sold_weekly().is_zero() {
        not_counted.push(NotCounted::Overhead);
    }
    if settings.payment_fee.share.is_zero() && settings.payment_fee.fixed.is_zero() {
        not_counted.push(NotCounted::CardFee);
    }
    if priced.terms.tax.place == TaxPlace::InThePrice && priced.terms.tax.rate.is_zero() {
        not_counted.push(NotCounted::Tax);
    }
    not_counted
}
