//! Prices, fills and shares that are tried, size by size.

use leptos::prelude::*;

use super::Trying;
use super::tried::{found, put};
use crate::book::{ContainerId, Filled, Scope};
use crate::foundation::measure::{Amount, Exact, Money, Share, Volume};

impl Trying {
    /// The price tried in a size, as a field shows it; of several drinks the rise.
    pub fn price(self, container: ContainerId) -> String {
        self.price_now(container).map(|price| self.state.plain_money(price)).unwrap_or_default()
    }

    /// The price tried in a size, or today's; of several drinks the rise.
    pub fn price_now(self, container: ContainerId) -> Option<Money> {
        let tried = self.tried.with(|tried| found(&tried.prices, container));
        match self.scope {
            Scope::Drink(_) => tried.or_else(|| Some(self.today(container)?.sold?.price)),
            Scope::Menu | Scope::Kind(_) => tried.or(Some(Money::ZERO)),
        }
    }

    /// How far the price of a size can be slid: half of today's up and down, or as far up from
    /// nothing where none is asked; of several drinks as far as half of their mean.
    pub fn price_ends(self, container: ContainerId) -> (Exact, Exact) {
        let asked = self.today(container).and_then(|row| row.sold).map(|sold| sold.price);
        let asked = asked.unwrap_or(Money::from_major(Exact::new(20, 0))).major();
        let half = asked.times(Exact::new(5, 1)).unwrap_or_default().rounded(0).max(Exact::ONE);
        let middle = match self.scope {
            Scope::Drink(_) => asked.rounded(0).max(half),
            Scope::Menu | Scope::Kind(_) => Exact::ZERO,
        };
        (middle.minus(half).unwrap_or_default(), middle.plus(half).unwrap_or(middle))
    }

    /// Tries a price, or a rise of all prices.
    pub fn set_price(self, container: ContainerId, number: Option<Exact>) {
        let today = match self.scope {
            Scope::Drink(_) => self.today(container).and_then(|row| row.sold).map(|sold| sold.price),
            Scope::Menu | Scope::Kind(_) => Some(Money::ZERO),
        };
        let money = number.map(Money::from_major).filter(|money| Some(*money) != today);
        self.tried.update(|tried| put(&mut tried.prices, container, money));
    }

    /// The fill tried in a size, as a field shows it.
    pub fn fill(self, container: ContainerId) -> String {
        match self.filled(container) {
            Some(amount) => self.state.amount(amount),
            None => self.today(container).map(|row| self.state.fine_volume(row.fill)).unwrap_or_default(),
        }
    }

    /// What is poured, tried or today's, in the book's unit for drinks.
    pub fn fill_now(self, container: ContainerId) -> Exact {
        let tried = self.filled(container).and_then(|amount| amount.volume().ok().flatten());
        let volume = tried.or_else(|| self.today(container).map(|row| row.fill)).unwrap_or_default();
        self.in_drink_unit(volume)
    }

    /// How far the fill of a size can be slid: from a quarter of the container to its rim.
    pub fn fill_ends(self, container: ContainerId, step: Exact) -> (Exact, Exact) {
        let brimful = self.state.book.with_untracked(|book| book.container(container)?.brimful.volume().ok()?);
        let most = self.in_drink_unit(brimful.unwrap_or_default()).over(step).unwrap_or_default().floor();
        let least = most.times(Exact::new(25, 2)).unwrap_or_default().floor();
        (least.times(step).unwrap_or_default(), most.times(step).unwrap_or_default())
    }

    fn in_drink_unit(self, volume: Volume) -> Exact {
        volume.millilitres().over(self.state.units().drink_unit().size()).unwrap_or_default()
    }

    /// Tries a fill.
    pub fn set_fill(self, container: ContainerId, amount: Option<Amount>) {
        self.tried.update(|tried| {
            tried.conditions.fills.retain(|filled| filled.container != container);
            tried.conditions.fills.extend(amount.map(|fill| Filled { container, fill }));
        });
    }

    fn filled(self, container: ContainerId) -> Option<Amount> {
        self.tried.with(|tried| {
            tried.conditions.fills.iter().find(|filled| filled.container == container).map(|filled| filled.fill)
        })
    }

    /// The share of buyers tried in a size.
    pub fn share(self, container: ContainerId) -> Option<Share> {
        self.tried.with(|tried| found(&tried.mix, container))
    }

    /// The share of buyers that takes a size today. Returns `None` where no sales are known.
    pub fn share_today(self, container: ContainerId) -> Option<Share> {
        self.sales.with(|sales| {
            let sum = |of: &dyn Fn(ContainerId) -> bool| {
                let units = sales.iter().filter(|(offer, _)| of(offer.container)).map(|(_, units)| *units);
                units.into_iter().try_fold(Exact::ZERO, Exact::plus).ok()
            };
            sum(&|id| id == container)?.over(sum(&|_| true)?).ok().map(Share::from_fraction)
        })
    }

    /// Tries a share of buyers.
    pub fn set_share(self, container: ContainerId, share: Option<Share>) {
        self.tried.update(|tried| put(&mut tried.mix, container, share));
    }

    /// How many sizes have a share of their own.
    pub fn shares_tried(self) -> usize {
        self.tried.with(|tried| tried.mix.len())
    }
}
