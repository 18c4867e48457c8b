//! What using it changes in the book, line by line, and what it leaves as it is.

use super::{WhatIf, target_of, waste_of};
use crate::book::{Book, Bought, Conditions, ContainerId, Goods, OfferId, PackId, Scope};
use crate::drink::fill::fill;
use crate::foundation::measure::{Exact, Money, Share, Volume};

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

/// Prices of several drinks in a size that change by the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rise {
    /// The size.
    pub container: ContainerId,
    /// By how much; below zero where they fall.
    pub by: Money,
    /// How many drinks.
    pub drinks: usize,
}

impl Uses {
    /// The prices of several drinks in a size that change by the same, and all other changes.
    pub fn by_size(&self) -> (Vec<Rise>, Vec<Change>) {
        let mut rises: Vec<Rise> = Vec::new();
        let step = |change: &Change| match *change {
            Change::Price { offer, from, to } => Some((offer.container, to.minus(from?).ok()?)),
            _ => None,
        };
        for (container, by) in self.changes.iter().filter_map(step) {
            match rises.iter_mut().find(|rise| (rise.container, rise.by) == (container, by)) {
                Some(rise) => rise.drinks = rise.drinks.saturating_add(1),
                None => rises.push(Rise { container, by, drinks: 1 }),
            }
        }
        rises.retain(|rise| rise.drinks > 1);
        let together = |change: &&Change| {
            let step = step(change);
            !rises.iter().any(|rise| step == Some((rise.container, rise.by)))
        };
        let others = self.changes.iter().filter(together).cloned().collect();
        (rises, others)
    }
}

/// Two fills that differ by no more are the same: a book keeps headspace to eight decimals of its unit.
const SAME_FILL: Exact = Exact::new(1, 4);

fn differs(one: Volume, other: Volume) -> bool {
    one.minus(other).is_ok_and(|more| more.millilitres().abs() > SAME_FILL)
}

impl Change {
    /// Whether it is a change: not where the book already is so.
    fn is_one(&self) -> bool {
        match self {
            Change::Price { from, to, .. } => *from != Some(*to),
            Change::Fill { from, to, .. } => from.is_none_or(|from| differs(from, *to)),
            Change::Pack { from, to, .. } => *from != Some(*to),
            Change::Target(from, to, _) | Change::Waste(from, to, _) => from != to,
            Change::CardFee(from, to) | Change::Commission(from, to) => from != to,
            Change::Wage(from, to) => from != to,
        }
    }
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
        let bought = self.conditions.bought.iter().map(|bought| Bought { price: None, ..*bought }).collect();
        let conditions = Conditions { ingredients: Share::ZERO, bought, ..self.conditions.clone() };
        WhatIf { conditions, prices: self.prices.clone(), mix: Vec::new() }
    }

    /// What using it changes in the book, and what it leaves out.
    pub fn uses(&self, book: &Book) -> Uses {
        Uses { changes: self.changes(book), not_ours: self.not_ours() }
    }

    fn changes(&self, book: &Book) -> Vec<Change> {
        let settings = book.settings();
        let Conditions { part, target, waste, wage, card_fee, commission, .. } = self.conditions;
        let drinks = match part {
            Scope::Menu => 0,
            Scope::Kind(_) | Scope::Drink(_) => book.drinks().filter(|drink| book.belongs(drink.id, part)).count(),
        };
        let prices = self.prices.iter().map(|(offer, to)| Change::Price {
            offer: *offer,
            from: book.offer(*offer).and_then(|offer| offer.price),
            to: *to,
        });
        let fills = self.conditions.fills.iter().map(|filled| Change::Fill {
            container: filled.container,
            from: book.container(filled.container).and_then(|it| fill(it).ok()).map(|fill| fill.volume),
            to: filled.fill.volume().ok().flatten().unwrap_or_default(),
            drinks: book.offers().filter(|offer| offer.container == filled.container).count(),
        });
        let packs = self.conditions.bought.iter().map(|bought| {
            let from = book.packs(bought.goods).first().map(|pack| pack.id);
            Change::Pack { goods: bought.goods, from, to: bought.pack }
        });
        let shares = [
            target.map(|to| Change::Target(target_of(book, part), to, drinks)),
            waste.map(|to| Change::Waste(waste_of(book, part), to, drinks)),
            wage.map(|to| Change::Wage(settings.wage, to)),
            card_fee.map(|to| Change::CardFee(settings.payment_fee.share, to)),
            commission.map(|to| Change::Commission(settings.commission, to)),
        ];
        let all = prices.chain(fills).chain(packs).chain(shares.into_iter().flatten());
        all.filter(Change::is_one).collect()
    }

    fn not_ours(&self) -> Vec<NotOurs> {
        let Conditions { ingredients, bought, .. } = &self.conditions;
        let all = (!ingredients.is_zero()).then_some(NotOurs::Ingredients(*ingredients));
        let packs = bought.iter().filter_map(|bought| {
            Some(NotOurs::PackPrice { goods: bought.goods, pack: bought.pack, to: bought.price? })
        });
        let mix = self.mix.iter().map(|(container, share)| NotOurs::Mix(*container, *share));
        all.into_iter().chain(packs).chain(mix).collect()
    }
}
