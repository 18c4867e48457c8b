//! Scenarios: another menu, computed, and set beside today's on the same terms.
//!
//! Profit a week is profit that changes with the number of drinks, so without overhead: a menu that sells
//! more drinks does not pay more rent. An offer whose weekly number is as today's counts as decisions count
//! today's: the mean of the last written weeks, or else as typed. One with another number counts with that.
//!
//! By hand: one drink leaves 2.00 and is sold 14 times a week, 28.00; in a scenario at 3.50 instead of 3.00
//! it leaves 2.50, and with the same 14 sold it brings 35.00, 7.00 more.
//!
//! Costs, fees and fills that a scenario takes to be other than in the book are put into a copy of the book,
//! and its offers are computed there.

#[cfg(test)]
mod tests;

use std::collections::BTreeMap;

use crate::book::{Book, ContainerId, Edit, KeptConditions, Offer, OfferId, Scenario, Scope};
use crate::drink::ledger::{Ledger, OfferStatus, Priced};
use crate::drink::price::Hands;
use crate::foundation::measure::{Date, Exact, Money, Overflow};
use crate::sizes::decision::{MenuToday, Told, tells_from};
use crate::sizes::opening_stock::opening_stock;
use crate::sizes::side_by_side::{Draft, Uses, WhatIf, WhatIfError};

/// The book under a scenario's conditions, and the scenario's offers computed in it. The offers of the book itself
/// stay as they are.
///
/// # Errors
/// A [`WhatIfError`] where its conditions cannot be, such as a fill that is over the rim by now.
pub fn drafted(book: &Book, scenario: &Scenario) -> Result<Draft, WhatIfError> {
    let (book, _) = tried(book, scenario).put_into(book)?;
    let ledger = Ledger::of_offers(&book, &mut scenario.offers_in(&book).iter());
    Ok(Draft { book, ledger })
}

/// Whether an offer of a scenario is other than today's: its price, its weekly number, or what one brings. Either of
/// them may not be there.
pub fn is_other((today, was): (&Ledger, Option<&Offer>), (then, is): (&Ledger, Option<&Offer>)) -> bool {
    let said = |ledger: &Ledger, offer: Option<&Offer>| {
        offer.map(|offer| {
            let each = |priced: &Priced| priced.profit_that_changes(Hands::Counted).ok().flatten();
            let each = ledger.get(offer.id()).map(|result| result.as_ref().map(each).map_err(|error| *error));
            (offer.price, offer.weekly, each)
        })
    };
    said(today, was) != said(then, is)
}

/// What making a scenario the menu changes beside its offers, and what of it is not the owner's to set.
pub fn uses(book: &Book, scenario: &Scenario) -> Uses {
    tried(book, scenario).uses(book)
}

/// The edit of `day` that puts a scenario's offers, and what the owner decides of its conditions, in place of the
/// book's own. The scenario stays.
///
/// # Errors
/// A [`WhatIfError`].
pub fn adopted(book: &Book, scenario: &Scenario, day: Date) -> Result<Edit, WhatIfError> {
    Ok(Edit::Together(vec![tried(book, scenario).edit(book)?, scenario.adopted(book, tells_from(day))]))
}

/// The scenario without what adopting it would leave out.
pub fn ours(scenario: &Scenario) -> Scenario {
    let all = WhatIf { conditions: scenario.conditions(), ..WhatIf::default() };
    Scenario { conditions: KeptConditions::of(&all.ours().conditions), ..scenario.clone() }
}

/// A scenario's conditions, without those of goods, packs and containers that are not there any more.
fn tried(book: &Book, scenario: &Scenario) -> WhatIf {
    let mut conditions = scenario.conditions();
    conditions.bought.retain(|bought| book.packs(bought.goods).iter().any(|pack| pack.id == bought.pack));
    conditions.fills.retain(|filled| book.container(filled.container).is_some());
    WhatIf { conditions, ..WhatIf::default() }
}

/// Today's weekly numbers, as decisions count them.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct WeeklyToday(BTreeMap<OfferId, Exact>);

impl WeeklyToday {
    /// Those of the whole menu.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn of(book: &Book, ledger: &Ledger, day: Date) -> Result<WeeklyToday, Overflow> {
        let menu = MenuToday::of(book, ledger, Scope::Menu, &Told::default(), day)?;
        let known = menu.sold().iter().filter_map(|sold| Some((sold.offer(), sold.weekly.number?)));
        Ok(WeeklyToday(known.collect()))
    }

    /// How many of an offer count: of one with today's number those of today.
    fn counted(&self, book: &Book, offer: &Offer) -> Option<Exact> {
        let today = book.offer(offer.id()).filter(|today| today.weekly == offer.weekly);
        today.and_then(|today| self.0.get(&today.id()).copied()).or(offer.weekly)
    }
}

/// The figures of a menu: what it earns in a week, and what it takes to keep.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Menu {
    /// Different sizes.
    pub sizes: usize,
    /// Recipe cards to train: each drink in each size.
    pub cards: usize,
    /// Drinks sold in a week.
    pub units: Exact,
    /// What they bring: profit that changes with the number of drinks.
    pub profit: Money,
    /// Offers of which nobody knows how many are sold; they count as none sold.
    pub without_number: usize,
    /// Offers without a price; they bring nothing.
    pub without_price: usize,
    /// Offers that cannot be computed; they count for nothing.
    pub stuck: usize,
    /// Offers under their target.
    pub under_target: usize,
    /// What the opening stock of packaging costs.
    pub cash: Money,
    /// Weeks until the first kind of it runs out. It is `None` if none is used.
    pub weeks: Option<Exact>,
}

impl Menu {
    /// The figures of these offers, as computed in `ledger`, with opening stock for `cover` weeks.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn of(
        book: &Book,
        ledger: &Ledger,
        offers: &[Offer],
        weekly: &WeeklyToday,
        cover: Exact,
    ) -> Result<Menu, Overflow> {
        let mut menu = Menu { cards: offers.len(), ..Menu::default() };
        let mut sizes: Vec<ContainerId> = Vec::new();
        let mut made: Vec<Offer> = Vec::with_capacity(offers.len());
        let count = |it: &mut usize| *it = it.saturating_add(1);
        for offer in offers {
            if !sizes.contains(&offer.container) {
                sizes.push(offer.container);
            }
            match ledger.get(offer.id()).map_or(OfferStatus::CannotCompute, OfferStatus::from) {
                OfferStatus::CannotCompute => count(&mut menu.stuck),
                OfferStatus::WithoutPrice => count(&mut menu.without_price),
                OfferStatus::UnderTarget => count(&mut menu.under_target),
                OfferStatus::OnTarget => {}
            }
            let number = weekly.counted(book, offer);
            match number {
                Some(number) => menu.units = menu.units.plus(number)?,
                None => count(&mut menu.without_number),
            }
            let Some(Ok(priced)) = ledger.get(offer.id()) else { continue };
            if let (Some(each), Some(number)) = (priced.profit_that_changes(Hands::Counted)?, number) {
                menu.profit = menu.profit.plus(each.times(number)?.as_part())?;
            }
            // What has no price is not sold yet: nothing is bought for it.
            if offer.price.is_some() {
                made.push(Offer { weekly: number, ..offer.clone() });
            }
        }
        menu.sizes = sizes.len();
        let stock = opening_stock(book, &mut made.iter(), cover)?;
        menu.cash = stock.iter().map(|stock| stock.cash).try_fold(Money::ZERO, Money::plus)?;
        menu.weeks = stock.iter().filter_map(|stock| stock.weeks).min();
        Ok(menu)
    }
}

/// What making a scenario the menu changes: each offer that is another then, as it was and as it is. It is
/// `None` where there is none.
pub fn changes(book: &Book, scenario: &Scenario) -> Vec<(Option<Offer>, Option<Offer>)> {
    let offers = scenario.offers_in(book);
    let then = |id: OfferId| offers.iter().find(|offer| offer.id() == id);
    let today = book.offers().map(|was| (Some(was.clone()), then(was.id()).cloned()));
    let new = offers.iter().filter(|offer| book.offer(offer.id()).is_none());
    let new = new.map(|offer| (None, Some(offer.clone())));
    today.chain(new).filter(|(was, is)| was != is).collect()
}
