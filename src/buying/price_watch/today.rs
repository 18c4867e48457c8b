//! The prices that changed on a day: what each was before, and what it costs a usual week.

use super::{Changed, WatchError, risen_by, turned};
use crate::book::{Book, Edit, Goods, Key, Pack, PackId, Record};
use crate::drink::ledger::{Ledger, OfferChange, Tried};
use crate::foundation::measure::{Date, Money};

/// A pack whose price changed on a day.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ChangedOn {
    /// The pack.
    pub pack: PackId,
    /// What is bought in it, and its price before and now.
    pub changed: Changed,
    /// The day on which the price before was heard last. It is `None` if nobody noted it.
    pub heard: Option<Date>,
}

/// What a changed price costs a usual week.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct WeeklyCost {
    /// How much more the drinks cost that a usual week sells; below zero, how much less.
    pub more: Money,
    /// How many sizes that cost another price are counted.
    pub counted: usize,
    /// How many of them are left out because nobody knows how many a usual week sells.
    pub unknown: usize,
    /// How many of them are left out because they could not be computed before or after the change.
    pub without_cost: usize,
}

/// The packs whose price changed on a day, in the order of goods. `undated` knows the price before
/// of packs whose price nobody had dated: the book keeps none.
///
/// # Errors
/// A [`WatchError`] where the numbers leave the range that can be computed.
pub fn changed_on(
    book: &Book,
    day: Date,
    undated: &dyn Fn(Goods, PackId) -> Option<Money>,
) -> Result<Vec<ChangedOn>, WatchError> {
    let mut all = Vec::new();
    for (goods, pack) in quoted(book).filter(|(_, pack)| pack.day == Some(day)) {
        let before = before(goods, pack, day, undated);
        let Some((before, heard)) = before.filter(|(before, _)| *before != pack.price_now()) else { continue };
        let after = pack.price_now();
        let changed = Changed { goods, before, after, share: risen_by(before, after)? };
        all.push(ChangedOn { pack: pack.id, changed, heard });
    }
    Ok(all)
}

/// How many packs have a price of this day while nobody knows the price before: new packs, and
/// packs whose price was not dated until then and whose steps are not here.
pub fn new_on(book: &Book, day: Date, undated: &dyn Fn(Goods, PackId) -> Option<Money>) -> usize {
    let of_the_day = quoted(book).filter(|(_, pack)| pack.day == Some(day));
    of_the_day.filter(|(goods, pack)| before(*goods, pack, day, undated).is_none()).count()
}

/// The price before a day, and when it was heard last.
fn before(
    goods: Goods,
    pack: &Pack,
    day: Date,
    undated: &dyn Fn(Goods, PackId) -> Option<Money>,
) -> Option<(Money, Option<Date>)> {
    match pack.earlier.last().filter(|quoted| quoted.day < day) {
        Some(quoted) => Some((quoted.price, Some(quoted.day))),
        None => undated(goods, pack.id).map(|price| (price, None)),
    }
}

/// The edit that puts a pack back to the price before. Returns `None` if it changed again since.
pub fn put_back(book: &Book, change: &ChangedOn) -> Option<Edit> {
    let mut record = book.record(change.changed.goods.into())?;
    let pack = record.packs_mut()?.iter_mut().find(|pack| pack.id == change.pack)?;
    if pack.price_now() != change.changed.after {
        return None;
    }
    unquote(pack, change);
    Some(Edit::Put(record))
}

/// Every pack of all goods.
fn quoted(book: &Book) -> impl Iterator<Item = (Goods, &Pack)> {
    let ingredients = book.ingredients().map(|it| (Goods::Ingredient(it.id), &it.packs));
    let packaging = book.packagings().map(|it| (Goods::Packaging(it.id), &it.packs));
    ingredients.chain(packaging).flat_map(|(goods, packs)| packs.iter().map(move |pack| (goods, pack)))
}

fn unquote(pack: &mut Pack, change: &ChangedOn) {
    if change.heard.is_some() {
        pack.earlier.pop();
    }
    *pack.price_now_mut() = change.changed.before;
    pack.day = change.heard;
}

/// The sizes that stand under their target as these changes left them, and would not if all of
/// them were put back; the lowest margin first.
///
/// # Errors
/// A [`WatchError`].
pub fn fallen(book: &Book, ledger: &Ledger, changes: &[ChangedOn]) -> Result<Vec<OfferChange>, WatchError> {
    let mut before: Vec<(Key, Record)> = Vec::new();
    for change in changes {
        let key = Key::from(change.changed.goods);
        if before.iter().all(|(of, _)| *of != key) {
            before.extend(book.record(key).map(|record| (key, record)));
        }
        let packs = before.iter_mut().find(|(of, _)| *of == key).and_then(|(_, record)| record.packs_mut());
        let pack = packs.and_then(|packs| packs.iter_mut().find(|pack| pack.id == change.pack));
        if let Some(pack) = pack.filter(|pack| pack.price_now() == change.changed.after) {
            unquote(pack, change);
        }
    }
    let back = Edit::Together(before.into_iter().map(|(_, record)| Edit::Put(record)).collect());
    let moves = Tried::of(book, ledger, &back)?.moves.iter().map(turned).filter(OfferChange::fell).collect();
    Ok(OfferChange::worst_first(moves))
}

/// What a changed price costs a usual week: of each size that it moves, the change of its full
/// cost times the number usually sold.
///
/// # Errors
/// A [`WatchError`].
pub fn weekly_cost(book: &Book, ledger: &Ledger, change: &ChangedOn) -> Result<WeeklyCost, WatchError> {
    let mut cost = WeeklyCost { more: Money::ZERO, counted: 0, unknown: 0, without_cost: 0 };
    let Some(back) = put_back(book, change) else { return Ok(cost) };
    for moved in Tried::of(book, ledger, &back)?.moves {
        let costs = moved.before.and_then(|now| now.cost).zip(moved.after.and_then(|then| then.cost));
        let weekly = book.offer(moved.offer).and_then(|offer| offer.weekly);
        match (costs, weekly) {
            (Some((now, then)), Some(units)) => {
                cost.more = cost.more.plus(now.minus(then)?.times(units)?)?;
                cost.counted = cost.counted.saturating_add(1);
            }
            (None, _) => cost.without_cost = cost.without_cost.saturating_add(1),
            (Some(_), None) => cost.unknown = cost.unknown.saturating_add(1),
        }
    }
    Ok(cost)
}
