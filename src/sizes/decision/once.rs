//! What a change costs once: what must be bought before the first drink, and what is left over.

use super::answer::{Decision, Question};
use super::menu::MenuToday;
use crate::book::{Book, ContainerId, Goods, PackagingId};
use crate::drink::cost::{paid, piece_cost};
use crate::foundation::measure::{Exact, Money, Overflow};

/// What a change costs once, proposed: the owner types what it is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OneTime {
    /// First orders of packaging for sizes that are not on the menu yet.
    pub orders: Vec<FirstOrder>,
    /// Packaging on hand that nothing on the menu uses any more.
    pub left_over: Vec<LeftOver>,
    /// What all of it comes to.
    pub proposed: Money,
}

/// Packaging of a size that is not on the menu yet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct FirstOrder {
    /// The packaging.
    pub packaging: PackagingId,
    /// How many packs are bought at a time.
    pub packs: Exact,
    /// What they cost. It is `None` if the packaging has no pack yet.
    pub cost: Option<Money>,
    /// Whether some size on the menu uses it, so that it is bought already.
    pub in_use: bool,
}

/// Packaging on hand that nothing on the menu uses any more.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LeftOver {
    /// The packaging.
    pub packaging: PackagingId,
    /// How many pieces, as counted last.
    pub pieces: Exact,
    /// What they cost. It is `None` if the packaging has no pack.
    pub cost: Option<Money>,
}

impl MenuToday<'_> {
    /// What a change costs once.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn one_time(&self, decision: &Decision) -> Result<OneTime, Overflow> {
        let book = self.book;
        let before: Vec<ContainerId> = book.offers().map(|offer| offer.container).collect();
        let rest = book.offers().filter(|offer| !book.belongs(offer.drink, self.scope)).map(|offer| offer.container);
        let then = self.offers_then(decision, crate::foundation::measure::Share::WHOLE)?;
        let after: Vec<ContainerId> = rest.chain(then.iter().map(|offer| offer.container)).collect();
        let (used_before, used_after) = (packagings(book, &before), packagings(book, &after));
        let new: Vec<ContainerId> = after.iter().copied().filter(|container| !before.contains(container)).collect();
        let mut orders = Vec::new();
        for id in packagings(book, &new) {
            let pack = book.packaging(id).and_then(|packaging| packaging.packs.first());
            let packs = pack.map_or(Exact::ONE, |pack| pack.at_a_time);
            let cost = pack.map(|pack| Ok(paid(pack)?.times(packs)?.as_part())).transpose()?;
            orders.push(FirstOrder { packaging: id, packs, cost, in_use: used_before.contains(&id) });
        }
        let mut left_over = Vec::new();
        for id in used_before.into_iter().filter(|id| !used_after.contains(id)) {
            let Some(on_hand) = book.on_hand(Goods::Packaging(id)) else { continue };
            let pieces = on_hand.amount.measure()?.base();
            let packaging = book.packaging(id).filter(|_| pieces.is_positive());
            let Some(packaging) = packaging else { continue };
            left_over.push(LeftOver { packaging: id, pieces, cost: piece_cost(packaging, pieces).ok() });
        }
        let to_buy = orders.iter().filter(|order| !order.in_use).filter_map(|order| order.cost);
        let mut costs = to_buy.chain(left_over.iter().filter_map(|left| left.cost));
        let proposed = costs.try_fold(Money::ZERO, Money::plus)?;
        Ok(OneTime { orders, left_over, proposed })
    }
}

impl Decision {
    /// The size that comes, where one does.
    pub const fn comes(&self) -> Option<ContainerId> {
        match self.question {
            Question::Switch { to, .. } => Some(to),
            Question::Add { size, .. } => Some(size),
            Question::Drop { .. } | Question::Keep { .. } => None,
        }
    }
}

/// The packaging of these containers, each once.
fn packagings(book: &Book, containers: &[ContainerId]) -> Vec<PackagingId> {
    let mut found = Vec::new();
    for container in book.containers().filter(|container| containers.contains(&container.id)) {
        for used in book.set_of(container) {
            if !found.contains(&used.packaging) {
                found.push(used.packaging);
            }
        }
    }
    found
}
