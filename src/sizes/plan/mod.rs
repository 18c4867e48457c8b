//! How many sizes: plans of one to three sizes for a part of the menu, out of six at most, and any others
//! that are asked for; what each earns in a week and what it takes to keep.
//!
//! A plan has each drink in each of its sizes, at the price that is asked or else at the one suggested.
//! What is sold of a drink today, times the share of it that stays, is shared out among the sizes by
//! weights, in hundredths of a drink: by the shares that were typed, or by the drink's own sales today
//! ([`Guess`]).
//!
//! ```text
//! contribution  = sum of (weekly number * contribution of one)
//! made          = weekly number / (1 - unsold)
//! pieces a week = sum of (made * pieces for one)
//! packs         = weeks of cover * pieces a week / contents, rounded up, at least those bought at a time
//! cash          = packs * (price for so many + surcharge)
//! weeks         = packs * contents / pieces a week
//! ```
//!
//! The last four are for each kind of packaging; a plan has the sum of the cash, and the fewest weeks. From
//! one plan to another ([`change()`])
//!
//! ```text
//! gain in a week      = more contribution - cost of keeping a size * further sizes
//! weeks to pay back   = more cash / gain in a week
//! extra weekly sales  = what is lost in a week / contribution of one in the further size
//! ```
//!
//! By hand: 50 small drinks that leave 1.68 each bring 84.00. With half of them in a further size that
//! leaves 1.38, it is 42.00 + 34.50, 7.50 less. If the size costs 2.70 a week to keep, 10.20 are lost; it
//! pays for itself from 10.20 / 1.38 = 7.39 extra drinks a week on. `src/sizes/plan/tests.rs` has this case.

mod candidates;
mod change;
mod mix;
mod scenario;
mod stock;
#[cfg(test)]
mod tests;
mod totals;

pub use candidates::{Candidates, LeftOut, Why};
pub use change::{Change, Further, PaidBack, PaysFrom, change};
pub use mix::Guess;
pub use scenario::{keep, scenario_ledger};
pub use stock::{Stock, opening_stock};
pub use totals::{Totals, contribution};

use crate::book::{Book, ContainerId, Offer};
use crate::foundation::in_order;
use crate::foundation::measure::Overflow;

/// Most candidates of which every plan is made.
pub const MOST_CANDIDATES: usize = 6;
/// Most sizes of the plans that are made of the candidates.
pub const MOST_SIZES: usize = 3;

/// A set of sizes for a part of the menu: each of its drinks in each of them.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plan {
    /// The sizes, in the order of the candidates.
    pub sizes: Vec<ContainerId>,
    /// What would be offered, with the price and the weekly number counted with.
    pub offers: Vec<Offer>,
    /// What cannot be made or priced, and counts for nothing.
    pub left_out: Vec<LeftOut>,
    /// Its figures.
    pub totals: Totals,
}

/// The plan of these sizes, which are taken from the candidates.
///
/// # Errors
/// [`Overflow`].
pub fn plan(book: &Book, candidates: &Candidates, guess: &Guess, sizes: &[ContainerId]) -> Result<Plan, Overflow> {
    let sizes: Vec<ContainerId> = candidates.sizes().iter().copied().filter(|size| sizes.contains(size)).collect();
    let kept = guess.kept_by(&sizes);
    let mut offers = Vec::new();
    let mut left_out = Vec::new();
    for drink in candidates.drinks() {
        let mut made: Vec<Offer> = Vec::with_capacity(sizes.len());
        for size in &sizes {
            match candidates.offer(drink, *size) {
                Ok(offer) => made.push(offer.clone()),
                Err(reason) => left_out.push(reason),
            }
        }
        guess.share_out(candidates, drink, kept, &mut made)?;
        offers.extend(made);
    }
    let totals = Totals::of(book, candidates.ledger(), &offers, guess.cover)?;
    Ok(Plan { sizes, offers, left_out, totals })
}

/// Every plan of one to [`MOST_SIZES`] sizes, and those of `also` that are not among them and
/// have candidates only: the one that earns most first, of equals the one of fewer sizes.
///
/// # Errors
/// [`Overflow`].
pub fn plans(
    book: &Book,
    candidates: &Candidates,
    guess: &Guess,
    also: &[Vec<ContainerId>],
) -> Result<Vec<Plan>, Overflow> {
    let mut sets: Vec<Vec<ContainerId>> = vec![Vec::new()];
    for size in candidates.sizes().iter().take(MOST_CANDIDATES) {
        let with_it = |set: &Vec<ContainerId>| set.iter().copied().chain([*size]).collect();
        let grown: Vec<_> = sets.iter().filter(|set| set.len() < MOST_SIZES).map(with_it).collect();
        sets.extend(grown);
    }
    for wanted in also {
        let set: Vec<_> = candidates.sizes().iter().copied().filter(|size| wanted.contains(size)).collect();
        if set.len() == wanted.len() && !sets.contains(&set) {
            sets.push(set);
        }
    }
    let mut ranked: Vec<Plan> = Vec::with_capacity(sets.len());
    for set in sets.iter().filter(|set| !set.is_empty()) {
        in_order::insert(&mut ranked, plan(book, candidates, guess, set)?, |other, this| {
            let (less, more) = (this.totals.contribution, other.totals.contribution);
            more > less || (more == less && other.sizes.len() <= this.sizes.len())
        });
    }
    Ok(ranked)
}
