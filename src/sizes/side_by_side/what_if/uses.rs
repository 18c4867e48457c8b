//! What using it changes in the book, line by line, and what it leaves as it is.

use super::{Bought, WhatIf, target_of, waste_of};
use crate::book::{Book, ContainerId, Goods, OfferId, PackId, Scope};
use crate::drink::fill::fill;
use crate::foundation::measure::{Money, Share, Volume};

/// What using a what-if changes, and what it cannot.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Uses {
    /// What the book takes over.
    pub changes: Vec<Change>,
    /// What is not the owner's to set.
    pub not_ours: Vec<NotOurs>,
}

/// One change of the book.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Change {
    /// A menu price.
    Price {
        /// The offer.
        offer: OfferId,
        /// What is asked now, if anything.
        from: Option<Money>,
        /// What would be asked.
        to: Money,
    },
    /// What is poured, in every drink that is sold in the container.
    Fill {
        /// The container.
        container: ContainerId,
        /// What is poured now, where that is known.
        from: Option<Volume>,
        /// What would be poured.
        to: Volume,
        /// Drinks that are sold in it.
        drinks: usize,
    },
    /// The pack that goods are bought in.
    Pack {
        /// The goods.
        goods: Goods,
        /// The pack bought now.
        from: Option<PackId>,
        /// The other.
        to: PackId,
    },
    /// The target margin of so many drinks; of the book where it is the whole menu.
    Target(Share, Share, usize),
    /// What is thrown away, likewise.
    Waste(Share, Share, usize),
    /// The hourly wage.
    Wage(Money, Money),
    /// The share that the payment provider takes.
    CardFee(Share, Share),
    /// The commission.
    Commission(Share, Share),
}

/// What is tried and not the owner's to set.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NotOurs {
    /// All ingredients cost so much more, or less.
    Ingredients(Share),
    /// A supplier asks another price.
    PackPrice {
        /// The goods.
        goods: Goods,
        /// The pack.
        pack: PackId,
        /// What it would cost.
        to: Money,
    },
    /// This share of buyers takes a size.
    Mix(ContainerId, Share),
}

impl WhatIf {
    /// The part of it that the owner decides: without what suppliers ask and what customers choose.
    pub fn ours(&self) -> WhatIf {
        let bought = self.bought.iter().map(|(goods, bought)| (*goods, Bought { price: None, ..*bought }));
        WhatIf { ingredients: Share::ZERO, bought: bought.collect(), mix: Vec::new(), ..self.clone() }
    }

    /// The part of it that a scenario keeps: prices, and the weekly numbers that follow from the shares of buyers.
    pub fn kept(&self) -> WhatIf {
        WhatIf { prices: self.prices.clone(), mix: self.mix.clone(), ..WhatIf::default() }
    }

    /// The part of it that a scenario cannot keep.
    pub fn not_kept(&self) -> WhatIf {
        WhatIf { prices: Vec::new(), mix: Vec::new(), ..self.clone() }
    }

    /// What using it changes in the book, and what it leaves out.
    pub fn uses(&self, book: &Book, scope: Scope) -> Uses {
        Uses { changes: self.changes(book, scope), not_ours: self.not_ours() }
    }

    fn changes(&self, book: &Book, scope: Scope) -> Vec<Change> {
        let settings = book.settings();
        let drinks = match scope {
            Scope::Menu => 0,
            Scope::Kind(_) | Scope::Drink(_) => book.drinks().filter(|drink| book.belongs(drink.id, scope)).count(),
        };
        let prices = self.prices.iter().map(|(offer, to)| Change::Price {
            offer: *offer,
            from: book.offer(*offer).and_then(|offer| offer.price),
            to: *to,
        });
        let fills = self.fills.iter().map(|(container, to)| Change::Fill {
            container: *container,
            from: book.container(*container).and_then(|it| fill(it).ok()).map(|fill| fill.volume),
            to: *to,
            drinks: book.offers().filter(|offer| offer.container == *container).count(),
        });
        let packs = self.bought.iter().filter_map(|(goods, bought)| {
            let from = book.packs(*goods).first().map(|pack| pack.id);
            let other = from != Some(bought.pack);
            other.then_some(Change::Pack { goods: *goods, from, to: bought.pack })
        });
        let shares = [
            self.target.map(|to| Change::Target(target_of(book, scope), to, drinks)),
            self.waste.map(|to| Change::Waste(waste_of(book, scope), to, drinks)),
            self.wage.map(|to| Change::Wage(settings.wage, to)),
            self.card_fee.map(|to| Change::CardFee(settings.payment_fee.share, to)),
            self.commission.map(|to| Change::Commission(settings.commission, to)),
        ];
        prices.chain(fills).chain(packs).chain(shares.into_iter().flatten()).collect()
    }

    fn not_ours(&self) -> Vec<NotOurs> {
        let all = (!self.ingredients.is_zero()).then_some(NotOurs::Ingredients(self.ingredients));
        let packs = self.bought.iter().filter_map(|(goods, bought)| {
            Some(NotOurs::PackPrice { goods: *goods, pack: bought.pack, to: bought.price? })
        });
        let mix = self.mix.iter().map(|(container, share)| NotOurs::Mix(*container, *share));
        all.into_iter().chain(packs).chain(mix).collect()
    }
}
