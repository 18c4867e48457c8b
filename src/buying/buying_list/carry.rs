//! From the list back into the book: the prices paid, and what was bought.

use super::in_dimension;
use crate::book::{Book, BuyingList, Edit, Goods, Key, OnHand, Pack, PackId, Record, ToBuy};
use crate::drink::yields::YieldError;
use crate::foundation::measure::{Amount, Date, Exact, Money, Overflow};

/// What carrying the prices paid into the quotes does.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Carried {
    /// The edit.
    pub edit: Edit,
    /// The quotes that it changes.
    pub prices: Vec<PricePaid>,
    /// Lines with a price paid whose pack is not quoted any more: there is nothing to carry it to.
    pub not_quoted: Vec<Goods>,
}

/// A quote and the price paid.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PricePaid {
    /// What was bought.
    pub goods: Goods,
    /// In which of its packs.
    pub pack: PackId,
    /// The price of one pack that stood in the quote, for as many as were bought.
    pub was: Money,
    /// What was paid for one.
    pub now: Money,
}

/// What finishing the list does.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Finished {
    /// The edit: prices carried, what is ticked added to what is here, the list gone.
    pub edit: Edit,
    /// Lines added to what is here.
    pub added: usize,
    /// Lines that were not ticked and go with the list.
    pub not_bought: usize,
    /// The quotes that it changes.
    pub prices: Vec<PricePaid>,
    /// Goods whose count cannot be turned into the units of the pack: a new count starts with
    /// what was bought.
    pub started_anew: Vec<(Goods, YieldError)>,
    /// Ticked goods whose pack is not quoted any more: nobody knows how much was bought.
    pub not_quoted: Vec<Goods>,
}

/// The prices paid, carried into the quotes on a day.
///
/// What was paid for as many as are bought at a time becomes the price now, and the one before
/// goes into the history. What was paid at the price of another tier becomes the price of that
/// tier, and moves no drink.
///
/// # Errors
/// [`Overflow`].
pub fn carry(book: &Book, list: &BuyingList, today: Date) -> Result<Carried, Overflow> {
    let mut draft = Draft { book, records: Vec::new() };
    let (prices, not_quoted) = draft.carry(list, today);
    Ok(Carried { edit: draft.edit(), prices, not_quoted })
}

/// The list is done: the prices paid are carried, what is ticked is added to what is here, and
/// the list is gone; all of it one edit.
///
/// The count that is here stays in its own unit and of its own day: buying is no counting. Where
/// nobody had counted, what was bought is the count of this day. Sums are rounded up in their
/// last stored decimal.
///
/// # Errors
/// [`Overflow`].
pub fn finish(book: &Book, list: &BuyingList, today: Date) -> Result<Finished, Overflow> {
    let mut draft = Draft { book, records: Vec::new() };
    let (prices, _) = draft.carry(list, today);
    let (mut started_anew, mut not_quoted, mut added) = (Vec::new(), Vec::new(), 0_usize);
    for line in list.lines.iter().filter(|line| line.bought) {
        match draft.add(line, today)? {
            Added::NotQuoted => not_quoted.push(line.goods),
            Added::ToTheCount => added = added.saturating_add(1),
            Added::Anew(lacks) => {
                added = added.saturating_add(1);
                started_anew.push((line.goods, lacks));
            }
        }
    }
    let not_bought = list.lines.iter().filter(|line| !line.bought).count();
    let mut edit = vec![draft.edit()];
    if book.contains(Key::BuyingList) {
        edit.push(Edit::Remove(Key::BuyingList));
    }
    Ok(Finished { edit: Edit::Together(edit), added, not_bought, prices, started_anew, not_quoted })
}

/// Where a purchase went.
enum Added {
    /// To what was here.
    ToTheCount,
    /// Into a new count, since the one before cannot be added to.
    Anew(YieldError),
    /// Nowhere.
    NotQuoted,
}

/// The goods that change, each written once.
struct Draft<'a> {
    book: &'a Book,
    records: Vec<Record>,
}

impl Draft<'_> {
    fn edit(self) -> Edit {
        let changed = |record: &Record| self.book.record(record.key()).as_ref() != Some(record);
        Edit::Together(self.records.iter().filter(|record| changed(record)).cloned().map(Edit::Put).collect())
    }

    /// The goods as they are drafted.
    fn record(&mut self, goods: Goods) -> Option<&mut Record> {
        let key = Key::from(goods);
        let place = if let Some(place) = self.records.iter().position(|record| record.key() == key) {
            place
        } else {
            self.records.push(self.book.record(key)?);
            self.records.len().saturating_sub(1)
        };
        self.records.get_mut(place)
    }

    fn pack(&mut self, goods: Goods, pack: PackId) -> Option<&mut Pack> {
        self.record(goods)?.packs_mut()?.iter_mut().find(|quoted| quoted.id == pack)
    }

    fn carry(&mut self, list: &BuyingList, today: Date) -> (Vec<PricePaid>, Vec<Goods>) {
        let (mut prices, mut not_quoted) = (Vec::new(), Vec::new());
        for line in &list.lines {
            let Some(now) = line.paid else { continue };
            let Some(pack) = self.pack(line.goods, line.pack) else {
                not_quoted.push(line.goods);
                continue;
            };
            let was = pack.price_at(line.packs);
            paid(pack, line.packs, now, today);
            if was != now {
                prices.push(PricePaid { goods: line.goods, pack: line.pack, was, now });
            }
        }
        (prices, not_quoted)
    }

    fn add(&mut self, line: &ToBuy, today: Date) -> Result<Added, Overflow> {
        let Some(pack) = self.pack(line.goods, line.pack) else { return Ok(Added::NotQuoted) };
        let unit = pack.contents.unit;
        let number = pack.contents.number.times(line.packs)?;
        let anew = OnHand { amount: Amount::new(number.kept_up()?, unit), day: today };
        let bought = unit.measure(number)?;
        let book = self.book;
        let Some(place) = self.record(line.goods).and_then(on_hand_mut) else { return Ok(Added::NotQuoted) };
        let Some(here) = place else {
            *place = Some(anew);
            return Ok(Added::ToTheCount);
        };
        let kept_in = here.amount.unit;
        let more = match in_dimension(book, line.goods, bought, kept_in.dimension()) {
            Ok(_) if kept_in == unit => number,
            Ok(base) => base.over(kept_in.size())?,
            Err(YieldError::Arithmetic(overflow)) => return Err(overflow),
            Err(lacks) => {
                *place = Some(anew);
                return Ok(Added::Anew(lacks));
            }
        };
        here.amount.number = here.amount.number.plus(more)?.kept_up()?;
        Ok(Added::ToTheCount)
    }
}

/// Writes what was paid for one of so many packs to the price that it belongs to.
fn paid(pack: &mut Pack, packs: Exact, price: Money, today: Date) {
    let from = |packs: Exact| pack.tiers.iter().map(|tier| tier.from).filter(|from| *from <= packs).max();
    let (bought, now) = (from(packs), from(pack.at_a_time));
    if bought == now {
        return pack.quote(price, today);
    }
    match pack.tiers.iter_mut().find(|tier| Some(tier.from) == bought) {
        Some(tier) => tier.price = price,
        None => pack.price = price,
    }
}

/// The place of what is here of goods.
fn on_hand_mut(record: &mut Record) -> Option<&mut Option<OnHand>> {
    match record {
        Record::Ingredient(record) => Some(&mut record.on_hand),
        Record::Packaging(record) => Some(&mut record.on_hand),
        _ => None,
    }
}
