//! Whether drinks can be sold below a price.

use crate::book::{Book, DrinkId, Offer, OfferId};
use crate::drink::ledger::{Ledger, OfferError, price_offer};
use crate::drink::price::PriceError;
use crate::foundation::in_order;
use crate::foundation::measure::{Money, Overflow};

/// Which drinks can be sold at a price and be on target.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct BelowPrice {
    /// Each drink in each size, the tightest first.
    pub rows: Vec<UnderRow>,
    /// Those that no price brings to their target.
    pub never: Vec<OfferId>,
    /// Those that cannot be computed, and why.
    pub unknown: Vec<(OfferId, OfferError)>,
}

/// A drink in a size against a price.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct UnderRow {
    /// The drink and the size.
    pub offer: OfferId,
    /// Whether it is on target at the price on the menu.
    pub can: bool,
    /// The lowest menu price that is on target.
    pub needs: Money,
    /// What the price has to spare over what is needed without tax; below zero what it lacks.
    pub before_tax: Money,
    /// The same with the tax on it, as the customer pays it.
    pub after_tax: Money,
}

impl BelowPrice {
    /// How many of them can be sold at it.
    pub fn can(&self) -> usize {
        self.rows.iter().filter(|row| row.can).count()
    }

    /// How many cannot.
    pub fn cannot(&self) -> usize {
        self.rows.len().saturating_sub(self.can()).saturating_add(self.never.len())
    }

    /// The tightest of them.
    pub fn tightest(&self) -> Option<&UnderRow> {
        self.rows.first()
    }

    /// The drinks that cannot be sold at it in any of the sizes.
    pub fn drinks_that_cannot(&self) -> Vec<DrinkId> {
        let can = |drink: DrinkId| self.rows.iter().any(|row| row.can && row.offer.drink == drink);
        let all = self.rows.iter().map(|row| row.offer).chain(self.never.iter().copied());
        let mut cannot = Vec::new();
        for offer in all.filter(|offer| !can(offer.drink)) {
            in_order::insert_once(&mut cannot, offer.drink);
        }
        cannot
    }
}

/// Whether drinks in sizes can be sold at `price` on the menu, above zero, and be on target: on the menu or
/// not. `ledger` has the book computed.
///
/// # Errors
/// [`Overflow`].
pub fn below_price(book: &Book, ledger: &Ledger, offers: &[OfferId], price: Money) -> Result<BelowPrice, Overflow> {
    let mut below = BelowPrice::default();
    for id in offers {
        let fresh;
        let priced = if let Some(priced) = ledger.get(*id) {
            priced
        } else {
            fresh = price_offer(book, &Offer::new(*id));
            &fresh
        };
        let priced = match priced {
            Ok(priced) => priced,
            Err(why) => {
                below.unknown.push((*id, *why));
                continue;
            }
        };
        let suggested = match priced.suggestion {
            Ok(suggested) => suggested,
            Err(PriceError::Arithmetic(overflow)) => return Err(overflow),
            Err(PriceError::NoPriceReaches { .. }) => {
                below.never.push(*id);
                continue;
            }
        };
        let needs = suggested.exact;
        let row = UnderRow {
            offer: *id,
            can: needs <= price,
            needs,
            before_tax: price.minus(suggested.without_tax)?,
            after_tax: priced.terms.customer_pays(price)?.minus(priced.terms.customer_pays(needs)?)?.as_part(),
        };
        in_order::insert(&mut below.rows, row, |other, this| other.before_tax <= this.before_tax);
    }
    Ok(below)
}
