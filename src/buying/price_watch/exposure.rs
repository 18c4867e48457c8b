//! What the menu hangs on: how much of a week's cost each of the goods is.

use std::collections::BTreeMap;

use super::bought;
use crate::book::{Book, Goods, Scope};
use crate::drink::cost::{not_paid, paid, unsold_share};
use crate::drink::ledger::Ledger;
use crate::drink::sales::{Weekly, weekly_contribution};
use crate::foundation::in_order;
use crate::foundation::measure::{Exact, Money, Overflow, Share};

/// By how much goods are taken to cost more: a tenth of their price.
const TENTH: Exact = Exact::new(1, 1);

/// Goods, and how much of the menu hangs on their price.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Exposed {
    /// What is bought.
    pub goods: Goods,
    /// What a usual week takes of it, with what is made and not sold.
    pub cost: Money,
    /// Its share of all that a usual week takes.
    pub share: Share,
    /// How much less a usual week contributes if its price rises by a tenth. What is paid besides
    /// the price does not rise.
    pub less: Money,
}

/// What the menu hangs on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Exposure {
    /// The goods that a usual week takes, the costliest first.
    pub goods: Vec<Exposed>,
    /// What they cost together.
    pub cost: Money,
    /// What the usual week sells and contributes, and which offers are not counted.
    pub weekly: Weekly,
    /// Goods that no counted drink takes.
    pub idle: Vec<Goods>,
}

/// What the usual week takes of each of the goods, and what a tenth more of its price would cost.
/// Computed from what each drink costs now, part by part, without pricing any drink anew.
///
/// # Errors
/// [`Overflow`].
pub fn exposure(book: &Book, ledger: &Ledger) -> Result<Exposure, Overflow> {
    let mut costs: BTreeMap<Goods, Money> = BTreeMap::new();
    for offer in book.offers() {
        let Some(units) = offer.weekly.filter(|units| units.is_positive()) else { continue };
        let Some(Ok(priced)) = ledger.get(offer.id()) else { continue };
        let Some(drink) = book.drink(offer.drink).filter(|_| priced.asked.is_some()) else { continue };
        let unsold = unsold_share(book, drink);
        let lines = priced.cost.lines.iter().map(|line| (Goods::Ingredient(line.ingredient), line.cost));
        let packaging = priced.cost.packaging.iter().map(|it| (Goods::Packaging(it.packaging), it.cost));
        for (goods, cost) in lines.chain(packaging) {
            let made = cost.plus(not_paid(cost, unsold)?)?;
            let made = made.plus(not_paid(made, book.settings().reductions.free)?)?;
            let sum = costs.entry(goods).or_default();
            *sum = sum.plus(made.times(units)?.as_part())?;
        }
    }
    let cost = costs.values().try_fold(Money::ZERO, |sum, cost| sum.plus(*cost))?;
    let mut goods: Vec<Exposed> = Vec::with_capacity(costs.len());
    let mut idle = Vec::new();
    for (id, pack) in bought(book) {
        let Some(of_it) = costs.get(&id).copied() else {
            idle.push(id);
            continue;
        };
        let paid = paid(pack)?;
        let less = if paid.is_zero() {
            Money::ZERO
        } else {
            of_it.times(pack.price_now().times(TENTH)?.major())?.over(paid.major())?.as_part()
        };
        let share = if cost.is_zero() { Exact::ZERO } else { of_it.ratio_to(cost)? };
        let exposed = Exposed { goods: id, cost: of_it, share: Share::from_fraction(share), less };
        in_order::insert(&mut goods, exposed, |other, exposed| other.cost >= exposed.cost);
    }
    Ok(Exposure { goods, cost, weekly: weekly_contribution(book, ledger, Scope::Menu)?, idle })
}
