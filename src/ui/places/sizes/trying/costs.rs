//! Costs, fees and the target that are tried.

use leptos::prelude::*;

use super::Trying;
use crate::book::{Bought, Conditions, Goods, Pack, PackId};
use crate::foundation::measure::{Exact, Money, Share};
use crate::sizes::side_by_side::{target_of, waste_of};

impl Trying {
    /// The change in the cost of ingredients that is tried.
    pub fn ingredients(self) -> Share {
        self.tried.with(|tried| tried.conditions.ingredients)
    }

    /// Tries a change in the cost of ingredients.
    pub fn set_ingredients(self, change: Share) {
        self.tried.update(|tried| tried.conditions.ingredients = change);
    }

    /// The pack in which goods are bought, tried or today's.
    pub fn pack(self, goods: Goods) -> Option<Pack> {
        let tried = self.bought(goods).map(|bought| bought.pack);
        self.state.book.with(|book| {
            let packs = book.packs(goods);
            packs.iter().find(|pack| Some(pack.id) == tried).or(packs.first()).cloned()
        })
    }

    /// Tries another of their packs, at the price that its supplier quotes.
    pub fn set_pack(self, goods: Goods, pack: PackId) {
        let first = self.state.book.with_untracked(|book| book.packs(goods).first().map(|pack| pack.id));
        let other = (first != Some(pack)).then_some(Bought { goods, pack, price: None });
        self.buy(goods, other);
    }

    /// The price of that pack, tried or quoted.
    pub fn pack_price(self, goods: Goods) -> Option<Money> {
        let tried = self.bought(goods).and_then(|bought| bought.price);
        tried.or_else(|| self.pack(goods).map(|pack| pack.price_now()))
    }

    /// Tries another price of the pack in which goods are bought.
    pub fn set_pack_price(self, goods: Goods, number: Option<Exact>) {
        let Some(pack) = untrack(|| self.pack(goods)) else { return };
        let price = number.map(Money::from_major).filter(|price| *price != pack.price_now());
        let first = self.state.book.with_untracked(|book| book.packs(goods).first().map(|pack| pack.id));
        let bought = (price.is_some() || first != Some(pack.id)).then_some(Bought { goods, pack: pack.id, price });
        self.buy(goods, bought);
    }

    fn bought(self, goods: Goods) -> Option<Bought> {
        self.tried.with(|tried| tried.conditions.bought.iter().find(|bought| bought.goods == goods).copied())
    }

    fn buy(self, goods: Goods, other: Option<Bought>) {
        self.tried.update(|tried| {
            tried.conditions.bought.retain(|bought| bought.goods != goods);
            tried.conditions.bought.extend(other);
        });
    }

    /// The target tried, or the one that holds.
    pub fn target(self) -> Share {
        let today = self.state.book.with(|book| target_of(book, self.scope));
        self.tried.with(|tried| tried.conditions.target).unwrap_or(today)
    }

    /// Tries a target.
    pub fn set_target(self, target: Option<Share>) {
        let today = self.state.book.with_untracked(|book| target_of(book, self.scope));
        let target = target.filter(|target| *target != today);
        self.tried.update(|tried| tried.conditions.target = target);
    }

    /// The waste tried, or the one that holds.
    pub fn waste(self) -> Share {
        let today = self.state.book.with(|book| waste_of(book, self.scope));
        self.tried.with(|tried| tried.conditions.waste).unwrap_or(today)
    }

    /// Tries another waste.
    pub fn set_waste(self, waste: Option<Share>) {
        let today = self.state.book.with_untracked(|book| waste_of(book, self.scope));
        self.tried.update(|tried| tried.conditions.waste = waste.filter(|waste| *waste != today));
    }

    /// The wage tried, or the book's.
    pub fn wage(self) -> Money {
        let today = self.state.book.with(|book| book.settings().wage);
        self.tried.with(|tried| tried.conditions.wage).unwrap_or(today)
    }

    /// Tries another wage.
    pub fn set_wage(self, number: Option<Exact>) {
        let today = self.state.book.with_untracked(|book| book.settings().wage);
        let wage = number.map(Money::from_major).filter(|wage| *wage != today);
        self.tried.update(|tried| tried.conditions.wage = wage);
    }

    /// The card fee tried, or the book's.
    pub fn card_fee(self) -> Share {
        let today = self.state.book.with(|book| book.settings().payment_fee.share);
        self.tried.with(|tried| tried.conditions.card_fee).unwrap_or(today)
    }

    /// Tries another card fee.
    pub fn set_card_fee(self, share: Option<Share>) {
        let today = self.state.book.with_untracked(|book| book.settings().payment_fee.share);
        self.tried.update(|tried| tried.conditions.card_fee = share.filter(|share| *share != today));
    }

    /// The commission tried, or the book's.
    pub fn commission(self) -> Share {
        let today = self.state.book.with(|book| book.settings().commission);
        self.tried.with(|tried| tried.conditions.commission).unwrap_or(today)
    }

    /// Tries another commission.
    pub fn set_commission(self, share: Option<Share>) {
        let today = self.state.book.with_untracked(|book| book.settings().commission);
        self.tried.update(|tried| tried.conditions.commission = share.filter(|share| *share != today));
    }

    /// How many costs and fees are tried.
    pub fn costs_tried(self) -> usize {
        self.tried.with(|tried| {
            let Conditions { waste, card_fee, commission, target, wage, ingredients, .. } = &tried.conditions;
            let shares = [waste, card_fee, commission, target].into_iter().flatten().count();
            shares + usize::from(wage.is_some()) + usize::from(!ingredients.is_zero())
        })
    }
}
