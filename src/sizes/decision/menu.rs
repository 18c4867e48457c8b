//! A part of the menu as it sells today.

use super::told::Told;
use super::weekly::{WeeklySales, Written};
use crate::book::{Book, ContainerId, DrinkId, Offer, OfferId, Scope};
use crate::drink::ledger::{Ledger, OfferError, Priced, price_offer};
use crate::drink::price::{Asked, asked};
use crate::drink::sales::Unknown;
use crate::foundation::in_order;
use crate::foundation::measure::{Date, Exact, Money, Overflow, Volume};
use crate::sizes::market::menu_size;

/// What one drink in a size brings.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Earns {
    /// The drink and the size.
    pub offer: OfferId,
    /// The menu price.
    pub price: Money,
    /// Where it comes from.
    pub from: PriceFrom,
    /// The profit that changes.
    pub profit: Money,
    /// The size that the menu says, or else what is poured.
    pub size: Volume,
    /// What is poured.
    pub poured: Volume,
}

/// A buyer who would turn to more than so many times as much, or to a price so many times as high, or to as little,
/// is not believed to turn. Our own choice, no source.
pub(super) const FAR: Exact = Exact::new(2, 0);

impl Earns {
    /// Whether another size or its price is so far from this one that hardly a buyer would turn to it.
    ///
    /// # Errors
    /// [`Overflow`].
    pub(super) fn is_far_from(&self, other: &Earns) -> Result<bool, Overflow> {
        let volume = self.size.max(other.size).ratio_to(self.size.min(other.size))?;
        let price = self.price.max(other.price).ratio_to(self.price.min(other.price))?;
        Ok(volume > FAR || price > FAR)
    }
}

/// Where a price comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PriceFrom {
    /// It was typed for the question.
    Typed,
    /// It is asked.
    Asked,
    /// None is asked: it is what the target margin suggests.
    Suggested,
}

/// A drink in a size, as it sells today.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SoldToday {
    /// What one brings at the price asked.
    pub earns: Earns,
    /// How many are sold in a week.
    pub weekly: WeeklySales,
    /// What one brings at the price typed for the question, if there is one.
    pub(super) then: Earns,
}

/// Sales that are expected of a drink in a size in which it is not sold today.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Arrival {
    /// What one will bring.
    pub earns: Earns,
    /// How many are expected in a week.
    pub expected: Exact,
    /// The offer of today that some of them would have bought, the nearest.
    pub from: Option<OfferId>,
    /// How many of them would have; at most as many as it sells.
    pub taken: Exact,
}

impl SoldToday {
    /// The drink and the size.
    pub const fn offer(&self) -> OfferId {
        self.earns.offer
    }

    /// What is brought in a week; zero where nobody knows how many are sold.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn profit(&self) -> Result<Money, Overflow> {
        times(self.earns.profit, self.weekly.count())
    }

    /// What its buyers of today bring more in a week at the price typed for the question; below zero where it is less.
    ///
    /// # Errors
    /// [`Overflow`].
    pub(super) fn more(&self) -> Result<Money, Overflow> {
        times(self.then.profit.minus(self.earns.profit)?, self.weekly.count())
    }
}

/// A part of the menu as it sells today, and what its owner says for a question.
#[derive(Clone, Debug)]
pub struct MenuToday<'a> {
    pub(super) book: &'a Book,
    pub(super) scope: Scope,
    pub(super) told: Told,
    pub(super) day: Date,
    sold: Vec<SoldToday>,
    arrivals: Vec<Arrival>,
    sizes: Vec<ContainerId>,
    unknown: Vec<(OfferId, Unknown)>,
}

impl<'a> MenuToday<'a> {
    /// A part of the menu of `book`, as `ledger` has it computed, on `day`.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn of(
        book: &'a Book,
        ledger: &Ledger,
        scope: Scope,
        told: &Told,
        day: Date,
    ) -> Result<MenuToday<'a>, Overflow> {
        let written = Written::of(book, day, &|offer| book.belongs(offer.drink, scope))?;
        let (sold, arrivals, sizes, unknown) = (Vec::new(), Vec::new(), Vec::new(), Vec::new());
        let mut menu = MenuToday { book, scope, told: told.clone(), day, sold, arrivals, sizes, unknown };
        let mut sizes: Vec<(Volume, ContainerId)> = Vec::new();
        for offer in book.offers().filter(|offer| book.belongs(offer.drink, scope)) {
            let id = offer.id();
            match menu.asked_for(ledger, id)? {
                Err(why) => menu.unknown.push((id, why)),
                Ok(earns) => {
                    in_order::insert_once(&mut sizes, (earns.poured, id.container));
                    let weekly = match told.weekly(id) {
                        Some(number) => WeeklySales::told(number),
                        None => written.weekly(book, id)?,
                    };
                    let then = if told.price(id).is_some() { menu.priced(id)?.unwrap_or(earns) } else { earns };
                    menu.sold.push(SoldToday { earns, weekly, then });
                }
            }
        }
        menu.sizes = sizes.into_iter().map(|(_, size)| size).collect();
        menu.arrive()?;
        Ok(menu)
    }

    /// What an offer brings at the price asked.
    fn asked_for(&self, ledger: &Ledger, offer: OfferId) -> Result<Result<Earns, Unknown>, Overflow> {
        let priced = match ledger.get(offer) {
            None => return Ok(Err(Unknown::NotOffered)),
            Some(Err(error)) => return Ok(Err(Unknown::Stuck(*error))),
            Some(Ok(priced)) => priced,
        };
        let Some(asked) = priced.asked else { return Ok(Err(Unknown::NoPrice)) };
        self.earns(offer, priced, &asked, PriceFrom::Asked).map(Ok)
    }

    /// Notes the sales that are expected in sizes in which a drink is not sold today.
    fn arrive(&mut self) -> Result<(), Overflow> {
        for (offer, expected) in self.told.weekly.clone() {
            if self.sold_as(offer).is_some() || !self.book.belongs(offer.drink, self.scope) {
                continue;
            }
            let earns = match self.priced(offer)? {
                Ok(earns) => earns,
                Err(why) => {
                    self.unknown.push((offer, why));
                    continue;
                }
            };
            let near = nearest(earns.poured, self.sold_of(offer.drink).iter().map(|sold| &sold.earns))?;
            let near = near.and_then(|near| self.sold_as(near.offer));
            let most = near.map_or(Exact::ZERO, |near| near.weekly.count());
            let taken = expected.times(self.told.taken(offer).fraction())?.min(most);
            let from = near.map(SoldToday::offer);
            self.arrivals.push(Arrival { earns, expected, from, taken });
        }
        Ok(())
    }

    /// The sizes in which something of it is sold, the smallest poured first.
    pub fn sizes(&self) -> &[ContainerId] {
        &self.sizes
    }

    /// Each drink in each size that has a price.
    pub fn sold(&self) -> &[SoldToday] {
        &self.sold
    }

    /// The offers of it that are not counted, and why.
    pub fn unknown(&self) -> &[(OfferId, Unknown)] {
        &self.unknown
    }

    /// How many drinks are sold in a week.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn buyers(&self) -> Result<Exact, Overflow> {
        self.sold.iter().try_fold(Exact::ZERO, |sum, sold| sum.plus(sold.weekly.count()))
    }

    /// What they bring: the profit that changes.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn profit(&self) -> Result<Money, Overflow> {
        self.sold.iter().try_fold(Money::ZERO, |sum, sold| sum.plus(sold.profit()?))
    }

    /// What is sold of a drink, by drink and container.
    pub(super) fn sold_of(&self, drink: DrinkId) -> &[SoldToday] {
        let from = self.sold.partition_point(|sold| sold.offer().drink < drink);
        let to = self.sold.partition_point(|sold| sold.offer().drink <= drink);
        self.sold.get(from..to).unwrap_or_default()
    }

    pub(super) fn sold_as(&self, offer: OfferId) -> Option<&SoldToday> {
        self.sold_of(offer.drink).iter().find(|sold| sold.offer() == offer)
    }

    pub(super) fn arrivals(&self) -> &[Arrival] {
        &self.arrivals
    }

    /// What an offer brings after a change: at the price typed for the question, else at the one asked, else
    /// at the one suggested.
    pub(super) fn then(&self, offer: OfferId) -> Result<Result<Earns, Unknown>, Overflow> {
        let arrival = || self.arrivals.iter().find(|arrival| arrival.earns.offer == offer);
        match self.sold_as(offer).map(|sold| sold.then).or_else(|| arrival().map(|arrival| arrival.earns)) {
            Some(known) => Ok(Ok(known)),
            None => self.priced(offer),
        }
    }

    /// The price that an offer is counted at after a change. Returns `None` where it has none.
    pub fn price_then(&self, offer: OfferId) -> Option<Money> {
        self.then(offer).ok()?.ok().map(|earns| earns.price)
    }

    fn priced(&self, offer: OfferId) -> Result<Result<Earns, Unknown>, Overflow> {
        let typed = self.told.price(offer);
        let there = self.book.offer(offer).cloned().unwrap_or(Offer::new(offer));
        let from = match (typed, there.price) {
            (Some(_), _) => PriceFrom::Typed,
            (None, Some(_)) => PriceFrom::Asked,
            (None, None) => PriceFrom::Suggested,
        };
        let priced = match price_offer(self.book, &Offer { price: typed.or(there.price), ..there }) {
            Err(OfferError::Arithmetic(overflow)) => return Err(overflow),
            Err(error) => return Ok(Err(Unknown::Stuck(error))),
            Ok(priced) => priced,
        };
        let at_price = match (priced.asked, priced.suggestion) {
            (Some(at_price), _) => at_price,
            (None, Ok(suggested)) => asked(&priced.cost, &priced.terms, suggested.menu)?,
            (None, Err(_)) => return Ok(Err(Unknown::NoPrice)),
        };
        self.earns(offer, &priced, &at_price, from).map(Ok)
    }

    fn earns(&self, offer: OfferId, priced: &Priced, at_price: &Asked, from: PriceFrom) -> Result<Earns, Overflow> {
        let poured = priced.fill.volume;
        let size = self.book.container(offer.container).map(menu_size).transpose()?.flatten().unwrap_or(poured);
        let profit = at_price.profit_that_changes(&priced.cost, self.told.hands)?;
        Ok(Earns { offer, price: at_price.menu, from, profit, size, poured })
    }
}

/// Of these offers of a drink the one nearest in what is poured, by the ratio of the larger to the smaller; of
/// equal ones the smaller.
pub(super) fn nearest<'a>(
    poured: Volume,
    among: impl Iterator<Item = &'a Earns>,
) -> Result<Option<&'a Earns>, Overflow> {
    let mut nearest: Option<((Exact, Volume), &Earns)> = None;
    for earns in among {
        let other = earns.poured;
        let distance = (poured.max(other).ratio_to(poured.min(other))?, other);
        if nearest.is_none_or(|(before, _)| distance < before) {
            nearest = Some((distance, earns));
        }
    }
    Ok(nearest.map(|(_, earns)| earns))
}

/// Money so many times, rounded as every computed part is.
pub(super) fn times(money: Money, count: Exact) -> Result<Money, Overflow> {
    Ok(money.times(count)?.as_part())
}
