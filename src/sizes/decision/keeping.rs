//! What a menu takes to keep: recipe cards, kinds of containers and lids, opening stock. Containers and lids are shared:
//! their kinds and their stock are those of the whole menu, of which a part changes.

use super::adopt::OfferThen;
use super::answer::Decision;
use super::menu::MenuToday;
use super::weekly::Written;
use crate::book::{Offer, OfferId, PackagingId, PackagingPart};
use crate::foundation::measure::{Exact, Money, Overflow, Share};
use crate::sizes::opening_stock::{Stock, opening_stock};

/// What a part of the menu takes to keep.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Keeping {
    /// Recipe cards to train: each drink in each size, with a price or without.
    pub cards: usize,
    /// Kinds of vessels of what the whole menu sells.
    pub vessels: usize,
    /// Kinds of lids and caps of what it sells.
    pub closures: usize,
    /// What the opening stock of the whole menu's packaging costs.
    pub cash: Money,
    /// Weeks until the first kind of it runs out. It is `None` if none is used.
    pub weeks: Option<Exact>,
    /// The kind that runs out first.
    pub first_out: Option<PackagingId>,
}

impl MenuToday<'_> {
    /// What it takes to keep today, with opening stock for `cover` weeks.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn keeping_now(&self, cover: Exact) -> Result<Keeping, Overflow> {
        let offers = self.book.offers().filter(|offer| self.book.belongs(offer.drink, self.scope));
        self.keeping(offers.map(|offer| self.counted(offer)).collect(), cover)
    }

    /// What it takes to keep then, if a share stays.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn keeping_then(&self, decision: &Decision, share: Share, cover: Exact) -> Result<Keeping, Overflow> {
        let then = self.menu_then(decision, share)?.into_iter();
        let counted = |then: OfferThen| if then.has_moved() { then.offer } else { self.counted(&then.offer) };
        self.keeping(then.map(counted).collect(), cover)
    }

    fn keeping(&self, offers: Vec<Offer>, cover: Exact) -> Result<Keeping, Overflow> {
        let others = self.others_counted()?;
        let sold: Vec<&Offer> = offers.iter().chain(&others).filter(|offer| offer.price.is_some()).collect();
        let stock = opening_stock(self.book, &mut sold.into_iter(), cover)?;
        let kinds = |part| stock.iter().filter(|stock: &&Stock| stock.part == part).count();
        let weeks = stock.iter().filter_map(|stock| stock.weeks).min();
        let first_out = stock.iter().find(|stock| stock.weeks.is_some() && stock.weeks == weeks);
        Ok(Keeping {
            cards: offers.len(),
            vessels: kinds(PackagingPart::Vessel),
            closures: kinds(PackagingPart::Closure),
            cash: stock.iter().map(|stock| stock.cash).try_fold(Money::ZERO, Money::plus)?,
            weeks,
            first_out: first_out.map(|stock| stock.packaging),
        })
    }

    /// The offers of the rest of the menu, with the numbers that are counted with.
    fn others_counted(&self) -> Result<Vec<Offer>, Overflow> {
        let other = |offer: OfferId| !self.book.belongs(offer.drink, self.scope);
        let written = Written::of(self.book, self.day, &other)?;
        let others = self.book.offers().filter(|offer| other(offer.id()));
        let counted =
            |offer: &Offer| Ok(Offer { weekly: written.weekly(self.book, offer.id())?.number, ..offer.clone() });
        others.map(counted).collect()
    }

    /// An offer with the number that is counted with.
    fn counted(&self, offer: &Offer) -> Offer {
        let number = self.sold_as(offer.id()).and_then(|sold| sold.weekly.number);
        Offer { weekly: number.or(offer.weekly), ..offer.clone() }
    }
}
