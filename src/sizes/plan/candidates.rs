//! What each drink of a part of the menu would be in each size that is thought of.

use crate::book::{Book, ContainerId, DrinkId, Offer, OfferId, Scope};
use crate::drink::fill::fill;
use crate::drink::ledger::{Ledger, OfferError, price_offer};
use crate::drink::price::PriceError;
use crate::foundation::in_order;
use crate::foundation::measure::{Exact, Overflow};

/// The sizes thought of, and what each drink would be in each of them: at the price that is
/// asked today, else at the one suggested.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Candidates {
    sizes: Vec<ContainerId>,
    drinks: Vec<Sold>,
    ledger: Ledger,
}

/// A drink and what is sold of it in a week today.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Sold {
    /// The drink.
    pub id: DrinkId,
    /// In each size with a weekly number, a candidate or not.
    pub weekly: Vec<(ContainerId, Exact)>,
    /// What it would be in each candidate.
    offers: Vec<Offer>,
}

/// A drink in a size that a plan cannot have.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LeftOut {
    /// The drink and the size.
    pub offer: OfferId,
    /// Why.
    pub why: Why,
}

/// Why a plan cannot have a drink in a size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// It cannot be computed.
    NotMade(OfferError),
    /// No price is asked, and none can be suggested.
    NoPrice(PriceError),
}

impl Candidates {
    /// The drinks of `scope` in these sizes, which are put in the order of their fills; each size
    /// once.
    pub fn of(book: &Book, scope: Scope, sizes: &[ContainerId]) -> Candidates {
        let sizes = by_fill(book, sizes);
        let mut drinks = Vec::new();
        for drink in book.drinks().filter(|drink| book.belongs(drink.id, scope)) {
            let weekly = book.offers_of(drink.id).filter_map(|offer| Some((offer.container, offer.weekly?)));
            let in_size = |container: &ContainerId| {
                let id = OfferId { drink: drink.id, container: *container };
                priced(book, book.offer(id).cloned().unwrap_or_else(|| Offer::new(id)))
            };
            let offers = sizes.iter().map(in_size).collect();
            drinks.push(Sold { id: drink.id, weekly: weekly.collect(), offers });
        }
        let ledger = Ledger::of_offers(book, &mut drinks.iter().flat_map(|drink| &drink.offers));
        Candidates { sizes, drinks, ledger }
    }

    /// The sizes, the smallest fill first.
    pub fn sizes(&self) -> &[ContainerId] {
        &self.sizes
    }

    /// The drinks of which no weekly number is known in any size.
    pub fn without_number(&self) -> impl Iterator<Item = DrinkId> {
        self.drinks.iter().filter(|drink| drink.weekly.is_empty()).map(|drink| drink.id)
    }

    /// How many drinks there are.
    pub fn count(&self) -> usize {
        self.drinks.len()
    }

    /// What is sold in a week today in each of the sizes, of all drinks together.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn weekly_in(&self, size: ContainerId) -> Result<Exact, Overflow> {
        let of_size = self.drinks.iter().flat_map(|drink| &drink.weekly).filter(|(container, _)| *container == size);
        of_size.map(|(_, weekly)| *weekly).try_fold(Exact::ZERO, Exact::plus)
    }

    pub(super) fn drinks(&self) -> &[Sold] {
        &self.drinks
    }

    /// Every drink in every size, computed at its price asked or suggested.
    pub fn ledger(&self) -> &Ledger {
        &self.ledger
    }

    /// A drink in one of the sizes, with a price.
    pub(super) fn offer<'a>(&self, drink: &'a Sold, container: ContainerId) -> Result<&'a Offer, LeftOut> {
        let id = OfferId { drink: drink.id, container };
        let overflow = Why::NoPrice(PriceError::Arithmetic(Overflow::TooLarge));
        match (drink.offers.iter().find(|offer| offer.container == container), self.ledger.get(id)) {
            (_, Some(Err(error))) => Err(LeftOut { offer: id, why: Why::NotMade(*error) }),
            (Some(offer), Some(Ok(priced))) if priced.asked.is_some() => Ok(offer),
            (_, Some(Ok(priced))) => {
                Err(LeftOut { offer: id, why: priced.suggestion.err().map_or(overflow, Why::NoPrice) })
            }
            (_, None) => Err(LeftOut { offer: id, why: overflow }),
        }
    }
}

/// An offer at its own price, or else at the suggested one if there is one.
fn priced(book: &Book, offer: Offer) -> Offer {
    let suggested = || Some(price_offer(book, &offer).ok()?.suggestion.ok()?.menu);
    let price = offer.price.or_else(suggested);
    Offer { price, ..offer }
}

/// Containers by fill, each once; those without a fill before them.
fn by_fill(book: &Book, sizes: &[ContainerId]) -> Vec<ContainerId> {
    let mut ordered = Vec::new();
    for id in sizes {
        let Some(container) = book.container(*id) else { continue };
        in_order::insert_once(&mut ordered, (fill(container).map(|fill| fill.volume).ok(), *id));
    }
    ordered.into_iter().map(|(_, id)| id).collect()
}
