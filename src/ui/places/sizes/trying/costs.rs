//! Costs, fees and the target that are tried.

use leptos::prelude::*;

use super::Trying;
use super::tried::{found, put};
use crate::book::{Goods, Pack, PackId};
use crate::foundation::measure::{Exact, Money, Share};
use crate::sizes::side_by_side::{Bought, target_of, waste_of};

impl Trying {
    /// The change in the cost of ingredients that is tried.
    pub fn ingredients(self) -> Share {
        self.tried.with(|tried| tried.ingredients)
    }

    /// Tries a change in the cost of ingredients.
    pub fn set_ingredients(self, change: Share) {
        self.tried.update(|tried| tried.ingredients = change);
    }

    /// The pack in which goods are bought, tried or today's.
    pub fn pack(self, goods: Goods) -> Option<Pack> {
        let tried = self.tried.with(|tried| found(&tried.bought, goods)).map(|bought| bought.pack);
        self.state.book.with(|book| {
            let packs = book.packs(goods);
            packs.iter().find(|pack| Some(pack.id) == tried).or(packs.first()).cloned()
        })
    }

    /// Tries another of their packs, at the price that its supplier quotes.
    pub fn set_pack(self, goods: Goods, pack: PackId) {
        let first = self.state.book.with_untracked(|book| book.packs(goods).first().map(|pack| pack.id));
        let other = (first != Some(pack)).then_some(Bought { pack, price: None });
        self.tried.update(|tried| put(&mut tried.bought, goods, other));
    }

    /// The price of that pack, tried or quoted.
    pub fn pack_price(self, goods: Goods) -> Option<Money> {
        let tried = self.tried.with(|tried| found(&tried.bought, goods)).and_then(|bought| bought.price);
        tried.or_else(|| self.pack(goods).map(|pack| pack.price_now()))
    }

    /// Tries another price of the pack in which goods are bought.
    pub fn set_pack_price(self, goods: Goods, number: Option<Exact>) {
        let Some(pack) = untrack(|| self.pack(goods)) else { return };
        let price = number.map(Money::from_major).filter(|price| *price != pack.price_now());
        let first = self.state.book.with_untracked(|book| book.packs(goods).first().map(|pack| pack.id));
        let bought = (price.is_some() || first != Some(pack.id)).then_some(Bought { pack: pack.id, price });
        self.tried.update(|tried| put(&mut tried.bought, goods, bought));
    }

    /// The target tried, or the one that holds.
    pub fn target(self) -> Share {
        let today = self.state.book.with(|book| target_of(book, self.scope));
        self.tried.with(|tried| tried.target).unwrap_or(today)
    }

    /// Tries a target.
    pub fn set_target(self, target: Option<Share>) {
        let today = self.state.book.with_untracked(|book| target_of(book, self.scope));
        let target = target.filter(|target| *target != today);
        self.tried.update(|tried| tried.target = target);
    }

    /// The waste tried, or the one that holds.
    pub fn waste(self) -> Share {
        let today = self.state.book.with(|book| waste_of(book, self.scope));
        self.tried.with(|tried| tried.waste).unwrap_or(today)
    }

    /// Tries another waste.
    pub fn set_waste(self, waste: Option<Share>) {
        let today = self.state.book.with_untracked(|book| waste_of(book, self.scope));
        self.tried.update(|tried| tried.waste = waste.filter(|waste| *waste != today));
    }

    /// The wage tried, or the book's.
    pub fn wage(self) -> Money {
        let today = self.state.book.with(|book| book.settings().wage);
        self.tried.with(|tried| tried.wage).unwrap_or(today)
    }

    /// Tries another wage.
    pub fn set_wage(self, number: Option<Exact>) {
        let today = self.state.book.with_untracked(|book| book.settings().wage);
        let wage = number.map(Money::from_major).filter(|wage| *wage != today);
        self.tried.update(|tried| tried.wage = wage);
    }

    /// The card fee tried, or the book's.
    pub fn card_fee(self) -> Share {
        let today = self.state.book.with(|book| book.settings().payment_fee.share);
        self.tried.with(|tried| tried.card_fee).unwrap_or(today)
    }

    /// Tries another card fee.
    pub fn set_card_fee(self, share: Option<Share>) {
        let today = self.state.book.with_untracked(|book| book.settings().payment_fee.share);
        self.tried.update(|tried| tried.card_fee = share.filter(|share| *share != today));
    }

    /// The commission tried, or the book's.
    pub fn commission(self) -> Share {
        let today = self.state.book.with(|book| book.settings().commission);
        self.tried.with(|tried| tried.commission).unwrap_or(today)
    }

    /// Tries another commission.
    pub fn set_commission(self, share: Option<Share>) {
        let today = self.state.book.with_untracked(|book| book.settings().commission);
        self.tried.update(|tried| tried.commission = share.filter(|share| *share != today));
    }

    /// How many costs and fees are tried.
    pub fn costs_tried(self) -> usize {
        self.tried.with(|tried| {
            let shares = [tried.waste, tried.card_fee, tried.commission, tried.target];
            let shares = shares.into_iter().flatten().count();
            shares + usize::from(tried.wage.is_some()) + usize::from(!tried.ingredients.is_zero())
        })
    }
}
