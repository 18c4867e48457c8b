//! The figures of a menu, or of a part of it: what it earns in a week and what it takes to keep.

use super::stock::{Stock, opening_stock};
use crate::book::{Book, ContainerId, Offer, PackagingId, PackagingPart};
use crate::drink::ledger::{Ledger, OfferStatus};
use crate::foundation::measure::{Exact, Money, Overflow};

/// The figures of some offers together.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Totals {
    /// Different sizes.
    pub sizes: usize,
    /// Recipe cards to train: each drink in each size.
    pub cards: usize,
    /// Drinks sold in a week, of those with a weekly number.
    pub units: Exact,
    /// Offers without a weekly number; they count as none sold.
    pub without_number: usize,
    /// Offers without a price; they bring nothing.
    pub without_price: usize,
    /// Offers that cannot be computed; they count for nothing.
    pub stuck: usize,
    /// Offers under their target.
    pub under_target: usize,
    /// What is left in a week after everything.
    pub contribution: Money,
    /// The opening stock, by packaging.
    pub stock: Vec<Stock>,
    /// What it costs together.
    pub cash: Money,
    /// Weeks until the first kind of it runs out. It is `None` if none is used.
    pub weeks: Option<Exact>,
}

impl Totals {
    /// The figures of these offers, as computed in `ledger`, with opening stock for `cover` weeks.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn of(book: &Book, ledger: &Ledger, offers: &[Offer], cover: Exact) -> Result<Totals, Overflow> {
        let mut totals = Totals { cards: offers.len(), ..Totals::default() };
        let mut sizes: Vec<ContainerId> = Vec::new();
        let mut made: Vec<&Offer> = Vec::with_capacity(offers.len());
        for offer in offers {
            if !sizes.contains(&offer.container) {
                sizes.push(offer.container);
            }
            let count = |it: &mut usize| *it = it.saturating_add(1);
            match ledger.get(offer.id()).map_or(OfferStatus::CannotCompute, OfferStatus::from) {
                OfferStatus::CannotCompute => count(&mut totals.stuck),
                OfferStatus::WithoutPrice => count(&mut totals.without_price),
                OfferStatus::UnderTarget => count(&mut totals.under_target),
                OfferStatus::OnTarget => {}
            }
            match offer.weekly {
                Some(weekly) => totals.units = totals.units.plus(weekly)?,
                None => count(&mut totals.without_number),
            }
            totals.contribution = totals.contribution.plus(contribution(ledger, offer)?.unwrap_or(Money::ZERO))?;
            if matches!(ledger.get(offer.id()), Some(Ok(_))) {
                made.push(offer);
            }
        }
        totals.sizes = sizes.len();
        totals.stock = opening_stock(book, &mut made.into_iter(), cover)?;
        totals.cash = totals.stock.iter().map(|stock| stock.cash).try_fold(Money::ZERO, Money::plus)?;
        totals.weeks = totals.stock.iter().filter_map(|stock| stock.weeks).min();
        Ok(totals)
    }

    /// How many different kinds of packaging of one part there are to keep.
    pub fn kinds(&self, part: PackagingPart) -> usize {
        self.stock.iter().filter(|stock| stock.part == part).count()
    }

    /// The packaging that runs out first.
    pub fn first_out(&self) -> Option<PackagingId> {
        let first = self.stock.iter().find(|stock| stock.weeks.is_some() && stock.weeks == self.weeks);
        first.map(|stock| stock.packaging)
    }
}

/// What is left in a week of one offer, as computed in `ledger`. Returns `None` if it has no price
/// or cannot be computed, and zero if no weekly number is known.
///
/// # Errors
/// [`Overflow`].
pub fn contribution(ledger: &Ledger, offer: &Offer) -> Result<Option<Money>, Overflow> {
    let asked = ledger.get(offer.id()).and_then(|result| result.as_ref().ok()).and_then(|priced| priced.asked);
    let Some(asked) = asked else { return Ok(None) };
    Ok(Some(asked.contribution.times(offer.weekly.unwrap_or(Exact::ZERO))?.as_part()))
}
