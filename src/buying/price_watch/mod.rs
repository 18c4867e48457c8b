//! Price watch: what changed prices move, and which goods the menu's contribution depends on most.
//!
//! Only the pack that is bought now counts: what else is quoted moves no drink.
//!
//! ```text
//! rise           = price after / price before - 1
//! cost of a week = sum of (weekly number * cost in one drink / (1 - unsold))
//! drop           = cost of a week * 0.1 * price / (price + surcharge)
//! ```
//!
//! The cost of a week is that of one of the goods, in the drinks that have a price and a weekly number
//! ([`exposure()`]). `drop` is how much less a usual week contributes if its price rises by a tenth; the
//! surcharge does not rise. What a changed price costs a usual week is the change of the full cost of each
//! offer that it moves, times its weekly number ([`weekly_cost`]).
//!
//! By hand: ten drinks a week with half a litre of juice at 2.00 a litre, a fifth unsold, take 10 * 1.00 / 0.8
//! = 12.50. If 1.50 of the 2.00 are the price and 0.50 is delivery, a tenth more costs 0.9375 a week.
//! `src/buying/price_watch/tests.rs` has this case.

mod exposure;
mod today;

#[cfg(test)]
mod tests;

use crate::book::{Book, Edit, Goods, Offer, Pack, PackagingSetId, PackagingUse, Refusal, Scope};
use crate::drink::ledger::{Ledger, OfferChange, Tried};
use crate::drink::sales::{Weekly, weekly_contribution};
use crate::foundation::in_order;
use crate::foundation::measure::{Date, Exact, Money, Overflow, Share};

pub use exposure::{Exposed, Exposure, exposure};
pub use today::{ChangedOn, WeeklyCost, changed_on, fallen, new_on, put_back, weekly_cost};

/// The least and the most that a price can be tried to change by, in percent.
pub const TRIED: (i32, i32) = (-100, 1000);

/// Why changed prices cannot be followed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WatchError {
    /// The change lies beyond what can be tried.
    BeyondTried,
    /// The book would refuse a price.
    Refused(Refusal),
    /// The numbers leave the range that can be computed.
    Arithmetic(Overflow),
}

impl From<Refusal> for WatchError {
    fn from(refusal: Refusal) -> WatchError {
        WatchError::Refused(refusal)
    }
}

impl From<Overflow> for WatchError {
    fn from(overflow: Overflow) -> WatchError {
        WatchError::Arithmetic(overflow)
    }
}

/// Goods whose price differs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Changed {
    /// What is bought.
    pub goods: Goods,
    /// The price of the pack before.
    pub before: Money,
    /// The price after.
    pub after: Money,
    /// How much more it is, as a share of the price before; below zero, how much less. It is `None`
    /// if it was free.
    pub share: Option<Share>,
}

/// What changed prices move.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Watched {
    /// The goods whose price differs, the largest rise first.
    pub changed: Vec<Changed>,
    /// The offers that moved, those that fell under target first.
    pub moves: Vec<OfferChange>,
    /// What a usual week contributes at the prices before.
    pub before: Weekly,
    /// What it contributes at those after.
    pub after: Weekly,
}

impl Watched {
    fn of(before: (&Book, &Ledger), after: (&Book, &Ledger), moves: Vec<OfferChange>) -> Result<Watched, Overflow> {
        let mut changed: Vec<Changed> = Vec::new();
        for (goods, pack) in bought(before.0) {
            let Some(now) = after.0.packs(goods).first() else { continue };
            let (before, after) = (pack.price_now(), now.price_now());
            if before == after {
                continue;
            }
            let this = Changed { goods, before, after, share: risen_by(before, after)? };
            in_order::insert(&mut changed, this, |other, this| {
                other.share.is_none_or(|other| this.share.is_some_and(|share| other >= share))
            });
        }
        Ok(Watched {
            changed,
            moves,
            before: weekly_contribution(before.0, before.1, Scope::Menu)?,
            after: weekly_contribution(after.0, after.1, Scope::Menu)?,
        })
    }
}

impl Watched {
    /// How many sizes fell under their target.
    pub fn fallen(&self) -> usize {
        self.moves.iter().filter(|moved| moved.fell()).count()
    }

    /// The goods whose price rose and that are in a size which fell under its target, the largest rise
    /// first.
    pub fn risen_in_fallen(&self, book: &Book) -> Vec<Goods> {
        let fallen = || self.moves.iter().filter(|moved| moved.fell()).filter_map(|moved| book.offer(moved.offer));
        let rose = |changed: &&Changed| changed.after > changed.before;
        let is_in = |goods: &Goods| fallen().any(|offer| takes(book, offer, *goods));
        self.changed.iter().filter(rose).map(|changed| changed.goods).filter(is_in).collect()
    }
}

/// Whether a drink as it is sold takes of these goods.
fn takes(book: &Book, offer: &Offer, goods: Goods) -> bool {
    match goods {
        Goods::Ingredient(id) => {
            book.drink(offer.id().drink).is_some_and(|drink| drink.lines.iter().any(|line| line.ingredient == id))
        }
        Goods::Packaging(id) => {
            let of = |uses: &[PackagingUse]| uses.iter().any(|used| used.packaging == id);
            let in_a_set = |set: &PackagingSetId| book.packaging_set(*set).is_some_and(|set| of(&set.uses));
            let container = book.container(offer.id().container);
            container.is_some_and(|container| of(&container.set) || container.shared.iter().any(in_a_set))
        }
    }
}

/// How much more a price is than before, as a share of it. Returns `None` if it was free.
fn risen_by(before: Money, after: Money) -> Result<Option<Share>, Overflow> {
    if before.is_zero() {
        return Ok(None);
    }
    Ok(Some(Share::from_fraction(after.minus(before)?.ratio_to(before)?)))
}

/// What the prices since a day moved.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Since {
    /// The prices of that day before, today's after.
    pub watched: Watched,
    /// Goods of which no price is known from then: they count at today's on both sides.
    pub unknown: Vec<Goods>,
}

/// Everything that is bought, with the pack that it is bought in now.
pub fn bought(book: &Book) -> impl Iterator<Item = (Goods, &Pack)> {
    let ingredients = book.ingredients().map(|it| (Goods::Ingredient(it.id), it.packs.first()));
    let packaging = book.packagings().map(|it| (Goods::Packaging(it.id), it.packs.first()));
    ingredients.chain(packaging).filter_map(|(goods, pack)| Some((goods, pack?)))
}

/// The edit that puts what is bought back to the prices of a day, as far as they are known.
pub fn rewind(book: &Book, day: Date) -> Edit {
    let then = |(goods, pack): (Goods, &Pack)| {
        let price = pack.price_on(day).filter(|price| *price != pack.price_now())?;
        Some(Edit::SetPackPrice { goods, pack: pack.id, price, day: None })
    };
    Edit::Together(bought(book).filter_map(then).collect())
}

/// The edit that makes goods dearer by a share of their price, or cheaper below zero: the price of
/// the pack as it is bought now, to the digits that a book keeps. What is paid besides stays.
///
/// # Errors
/// A [`WatchError`] where the share cannot be tried.
pub fn raised(book: &Book, goods: &[Goods], by: Share) -> Result<Edit, WatchError> {
    let (least, most) = TRIED;
    let percent = by.percent()?;
    if percent < Exact::new(i64::from(least), 0) || percent > Exact::new(i64::from(most), 0) {
        return Err(WatchError::BeyondTried);
    }
    let factor = Exact::ONE.plus(by.fraction())?;
    let mut edits = Vec::new();
    for goods in goods.iter().copied() {
        let Some(pack) = book.packs(goods).first() else { continue };
        let price = Money::from_major(pack.price_now().times(factor)?.major().kept());
        edits.push(Edit::SetPackPrice { goods, pack: pack.id, price, day: None });
    }
    Ok(Edit::Together(edits))
}

/// What the prices that were heard since `day` moved. The pack that is bought now is taken to be
/// the one that was bought then.
///
/// # Errors
/// A [`WatchError`].
pub fn since(book: &Book, ledger: &Ledger, day: Date) -> Result<Since, WatchError> {
    let then = Tried::of(book, ledger, &rewind(book, day))?;
    let moves = OfferChange::worst_first(then.moves.iter().map(turned).collect());
    let watched = Watched::of((&then.book, &then.ledger), (book, ledger), moves)?;
    let unknown = bought(book).filter(|(_, pack)| pack.price_on(day).is_none()).map(|(goods, _)| goods).collect();
    Ok(Since { watched, unknown })
}

/// What moves if these goods cost more by a share of their price; the book stays as it is.
///
/// # Errors
/// A [`WatchError`].
pub fn what_if(book: &Book, ledger: &Ledger, goods: &[Goods], by: Share) -> Result<Watched, WatchError> {
    let then = Tried::of(book, ledger, &raised(book, goods, by)?)?;
    Ok(Watched::of((book, ledger), (&then.book, &then.ledger), then.moves)?)
}

fn turned(moved: &OfferChange) -> OfferChange {
    OfferChange { before: moved.after, after: moved.before, ..*moved }
}
