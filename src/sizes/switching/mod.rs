//! One size in place of another: how many must be sold in the new one to earn the same, at which price
//! elasticity that breaks even, what the change costs once, and the one edit that makes it.
//!
//! In size `a` a drink has the menu price `P_a` and leaves the contribution `c_a`; in size `b` it has `P_b`
//! and leaves `c_b`. Both contributions must be above zero ([`Losing`] tells which is not).
//!
//! ```text
//! ratio      = q_b / q_a = c_a / c_b
//! elasticity = ln(q_b / q_a) / ln(P_b / P_a)
//! ```
//!
//! `q_a` is how many are sold now, `q_b` how many must be sold to earn the same. The elasticity is an
//! estimate in binary fractions, and there is none if both prices are equal.
//!
//! Several drinks together are figured with the sums of `P * q_a` and of `c * q_a` ([`Together`]). `q_a` is the
//! weekly number of each drink, where one without a number counts as none sold; or 100 of each if no number is
//! above zero. With the share `r` of the sales kept,
//!
//! ```text
//! gain in a week    = r * sum of c_b * q_a - sum of c_a * q_a
//! weeks to pay back = what is paid once / gain in a week
//! ```
//!
//! What is paid once is typed by the owner. [`first_orders`] proposes it: packaging that the old size does
//! not use, as many packs as are bought at a time.
//!
//! ```
//! use brimwright::foundation::measure::{Exact, Money};
//! use brimwright::sizes::switching::{BreakEven, Earnings};
//!
//! let money = |cents| Money::from_major(Exact::new(cents, 2));
//! let now = Earnings { price: money(600), contribution: money(240) };
//! let then = Earnings { price: money(750), contribution: money(300) };
//! let answer = BreakEven::of(now, then)?.unwrap();
//! // By hand: 2.40 / 3.00 = 0.8, so that 80 in place of 100 earn the same. 7.50 / 6.00 = 1.25, and
//! // ln 0.8 / ln 1.25 = -1, since 0.8 is 1 / 1.25.
//! assert_eq!(answer.units(Exact::from(100)), Ok(Exact::from(80)));
//! assert_eq!(answer.elasticity.map(|number| number.rounded(9)), Some(Exact::new(-1, 0)));
//! # Ok::<(), brimwright::foundation::measure::Overflow>(())
//! ```

mod break_even;
mod first_order;
mod sell;
mod together;

#[cfg(test)]
mod tests;

pub use break_even::{BreakEven, Earnings, Losing};
pub use first_order::{FirstOrder, first_orders, to_pay};
pub use sell::sell_in_the_new_size;
pub use together::{Payback, Together};

use crate::book::{Book, ContainerId, DrinkId, Offer, OfferId, Scope};
use crate::drink::ledger::{OfferError, price_offer};
use crate::drink::price::{self, PriceError};
use crate::foundation::measure::{Exact, Money, Overflow};

/// Which size in place of which, and for what.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Question {
    /// The part of the menu that changes its size.
    pub scope: Scope,
    /// The size it is sold in.
    pub from: ContainerId,
    /// The size it is to be sold in.
    pub to: ContainerId,
}

impl Question {
    /// A drink in the size it is sold in.
    pub const fn now(self, drink: DrinkId) -> OfferId {
        OfferId { drink, container: self.from }
    }

    /// A drink in the size it is to be sold in.
    pub const fn then(self, drink: DrinkId) -> OfferId {
        OfferId { drink, container: self.to }
    }
}

/// Why there is no answer at all.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SwitchError {
    /// Both sizes are the same container.
    SameContainer(ContainerId),
    /// Nothing of this part of the menu is sold in the size.
    NotSold(ContainerId),
    /// The numbers leave the range that can be computed.
    Arithmetic(Overflow),
}

impl From<Overflow> for SwitchError {
    fn from(overflow: Overflow) -> SwitchError {
        SwitchError::Arithmetic(overflow)
    }
}

/// Why it cannot be computed what a drink earns in a size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoEarnings {
    /// It cannot be made or costed at this size.
    Offer(OfferError),
    /// No price is asked.
    NoPrice,
    /// No price is asked, and none reaches the target.
    NoPriceReaches(PriceError),
}

/// Where the price in the new size comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PriceFrom {
    /// It was typed here.
    Typed,
    /// It is asked there already.
    Asked,
    /// It is what the target margin suggests there.
    Suggested,
}

/// How many are sold of the drinks that change.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sales {
    /// Their numbers are entered; drinks without one are left out of the sums.
    Entered {
        /// How many drinks have none.
        without: usize,
    },
    /// None is entered: a hundred of each are counted with.
    NotEntered,
    /// What is entered says that nothing is sold: a hundred of each are counted with.
    NothingSold,
}

/// One drink that changes its size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct DrinkSwitch {
    /// The drink.
    pub drink: DrinkId,
    /// How many are sold a week in the size it is sold in, where that is entered.
    pub weekly: Option<Exact>,
    /// What one brings now.
    pub now: Result<Earnings, NoEarnings>,
    /// What one would bring in the new size.
    pub then: Result<Earnings, NoEarnings>,
    /// Where the price in the new size comes from.
    pub price_from: PriceFrom,
    /// How many to sell for each one sold now. It is `None` if either size has no earnings.
    pub answer: Option<Result<BreakEven, Losing>>,
}

/// A switch, drink by drink and together.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Switch {
    /// The drinks of this part of the menu that are sold in the old size.
    pub drinks: Vec<DrinkSwitch>,
    /// How many are sold of them.
    pub sales: Sales,
    /// All of them with their mix. It is `None` if no drink has earnings in both sizes.
    pub together: Option<Together>,
}

/// Works out a switch. `prices` are menu prices in the new size typed for it, above zero; a drink
/// without one takes the price asked there already, else the one suggested.
///
/// # Errors
/// A [`SwitchError`].
pub fn switch(book: &Book, question: Question, prices: &[(DrinkId, Money)]) -> Result<Switch, SwitchError> {
    if question.from == question.to {
        return Err(SwitchError::SameContainer(question.from));
    }
    let mut drinks = Vec::new();
    for drink in book.drinks().filter(|drink| book.belongs(drink.id, question.scope)) {
        let Some(offer) = book.offer(question.now(drink.id)) else { continue };
        let typed = prices.iter().find(|(id, _)| *id == drink.id).map(|(_, price)| *price);
        let now = earnings(book, offer, false);
        let there = book.offer(question.then(drink.id)).cloned().unwrap_or(Offer::new(question.then(drink.id)));
        let price = typed.or(there.price);
        let then = earnings(book, &Offer { price, ..there }, true);
        let price_from = match (typed, price) {
            (Some(_), _) => PriceFrom::Typed,
            (None, Some(_)) => PriceFrom::Asked,
            (None, None) => PriceFrom::Suggested,
        };
        let answer = match (now, then) {
            (Ok(now), Ok(then)) => Some(BreakEven::of(now, then)?),
            _ => None,
        };
        drinks.push(DrinkSwitch { drink: drink.id, weekly: offer.weekly, now, then, price_from, answer });
    }
    if drinks.is_empty() {
        return Err(SwitchError::NotSold(question.from));
    }
    let sales = sales(&drinks);
    let together = Together::of(&drinks, sales)?;
    Ok(Switch { drinks, sales, together })
}

/// What an offer earns at the price asked. If none is asked and `or_suggested` is true, at the
/// suggested price.
fn earnings(book: &Book, offer: &Offer, or_suggested: bool) -> Result<Earnings, NoEarnings> {
    let priced = price_offer(book, offer).map_err(NoEarnings::Offer)?;
    let asked = match (priced.asked, or_suggested) {
        (Some(asked), _) => asked,
        (None, false) => return Err(NoEarnings::NoPrice),
        (None, true) => {
            let suggested = priced.suggestion.map_err(NoEarnings::NoPriceReaches)?;
            let asked = price::asked(&priced.cost, &priced.terms, suggested.menu);
            asked.map_err(|overflow| NoEarnings::Offer(OfferError::Arithmetic(overflow)))?
        }
    };
    Ok(Earnings { price: asked.menu, contribution: asked.contribution })
}

fn sales(drinks: &[DrinkSwitch]) -> Sales {
    let counted = || drinks.iter().filter(|drink| drink.answer.is_some());
    let entered = || counted().filter_map(|drink| drink.weekly);
    if entered().any(|weekly| weekly.is_positive()) {
        Sales::Entered { without: counted().filter(|drink| drink.weekly.is_none()).count() }
    } else if entered().next().is_some() {
        Sales::NothingSold
    } else {
        Sales::NotEntered
    }
}
