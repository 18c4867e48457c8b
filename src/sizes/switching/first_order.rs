//! What must be bought before the first drink is sold in a new size.

use super::Question;
use crate::book::{Book, Container, ContainerId, PackagingId};
use crate::drink::cost::paid;
use crate::foundation::measure::{Exact, Money, Overflow};

/// Packaging of the new size that the old one does not use.
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

/// The first orders that the new size takes: for each packaging that the old size does not use, as
/// many of the pack bought now as are bought at a time, at the price of that tier.
///
/// # Errors
/// [`Overflow`].
pub fn first_orders(book: &Book, question: Question) -> Result<Vec<FirstOrder>, Overflow> {
    let Some(to) = book.container(question.to) else { return Ok(Vec::new()) };
    let uses = |container: Option<&Container>, packaging: PackagingId| {
        container.is_some_and(|container| book.set_of(container).any(|used| used.packaging == packaging))
    };
    let on_the_menu = |container: ContainerId| book.offers().any(|offer| offer.container == container);
    let mut orders: Vec<FirstOrder> = Vec::new();
    for used in book.set_of(to) {
        let packaging = used.packaging;
        let listed = orders.iter().any(|order| order.packaging == packaging);
        if listed || uses(book.container(question.from), packaging) {
            continue;
        }
        let pack = book.packaging(packaging).and_then(|packaging| packaging.packs.first());
        let packs = pack.map_or(Exact::ONE, |pack| pack.at_a_time);
        let cost = pack.map(|pack| Ok(paid(pack)?.times(packs)?.as_part())).transpose()?;
        let in_use = book.containers().any(|other| uses(Some(other), packaging) && on_the_menu(other.id));
        orders.push(FirstOrder { packaging, packs, cost, in_use });
    }
    Ok(orders)
}

/// What the first orders cost: of packaging that nothing on the menu uses yet.
///
/// # Errors
/// [`Overflow`].
pub fn to_pay(orders: &[FirstOrder]) -> Result<Money, Overflow> {
    let new = orders.iter().filter(|order| !order.in_use);
    new.filter_map(|order| order.cost).try_fold(Money::ZERO, Money::plus)
}
