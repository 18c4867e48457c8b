//! The one way to change a book.

#[cfg(test)]
mod tests;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use super::{Book, Goods, Key, Offer, OfferId, PackId, Record, Refusal, check};
use crate::foundation::measure::{Date, Money};

/// Up to this many removals in a row are done one by one.
const FEW: usize = 8;

/// Something that a person does to a book.
#[allow(
    clippy::large_enum_variant,
    reason = "edits are few at a time, and a box would stand in the way of each record"
)]
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Edit {
    /// Adds a record, or replaces the one with its key.
    Put(Record),
    /// Removes a record.
    Remove(Key),
    /// Sets a supplier's price.
    SetPackPrice {
        /// What is bought.
        goods: Goods,
        /// The pack.
        pack: PackId,
        /// The new price of the pack.
        price: Money,
        /// The day on which it was heard, for the history of the pack, or `None` if it is only tried out.
        day: Option<Date>,
    },
    /// Sets or removes the menu price of an offer.
    SetPrice {
        /// The offer.
        offer: OfferId,
        /// The price, if any.
        price: Option<Money>,
    },
    /// Several edits as one: all of them or none.
    Together(Vec<Edit>),
}

/// What an edit did.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Applied {
    /// The edit that undoes it.
    pub inverse: Edit,
    /// The records that it wrote or removed.
    pub touched: BTreeSet<Key>,
}

impl Applied {
    /// The result of an edit that does nothing.
    pub fn nothing() -> Applied {
        Applied { inverse: Edit::Together(Vec::new()), touched: BTreeSet::new() }
    }
}

impl Edit {
    /// The edit that removes the record at `key` together with what belongs to it. Of a drink or a container,
    /// these are its offers, also those in scenarios, weeks and batches; of a drink, also its trials.
    pub fn remove_with_offers(book: &Book, key: Key) -> Edit {
        let stays = |offer: OfferId| Key::Drink(offer.drink) != key && Key::Container(offer.container) != key;
        let without = |user: Key| match book.record(user)? {
            Record::Offer(_) | Record::Trial(_) => Some(Edit::Remove(user)),
            Record::Week(mut week) => {
                week.sold.retain(|sold| stays(sold.offer()));
                Some(Edit::Put(Record::Week(week)))
            }
            Record::Scenario(mut scenario) => {
                scenario.offers.retain(|offer| stays(offer.id()));
                Some(Edit::Put(Record::Scenario(scenario)))
            }
            Record::Batch(mut batch) => {
                batch.makes.retain(|make| stays(make.offer()));
                Some(Edit::Put(Record::Batch(batch)))
            }
            Record::Settings(_)
            | Record::Ingredient(_)
            | Record::Packaging(_)
            | Record::PackagingSet(_)
            | Record::Container(_)
            | Record::Drink(_)
            | Record::SeenPrice(_)
            | Record::BuyingList(_) => None,
        };
        let mut edits: Vec<Edit> = book.needed_by(key).into_iter().filter_map(without).collect();
        edits.push(Edit::Remove(key));
        Edit::Together(edits)
    }

    /// The edit that turns the book `from` into the book `to`.
    pub fn replace(from: &Book, to: &Book) -> Edit {
        let mut edits = Vec::new();
        let gone: Vec<Key> = from.keys().filter(|key| !to.contains(*key)).collect();
        let new: Vec<Record> =
            to.keys().filter(|key| !from.agrees(to, *key)).filter_map(|key| to.record(key)).collect();
        let users_first = gone.iter().rev().copied();
        let offers_gone = users_first.clone().filter(|key| matches!(key, Key::Offer(_)));
        edits.extend(offers_gone.map(Edit::Remove));
        edits.extend(new.into_iter().map(Edit::Put));
        edits.extend(users_first.filter(|key| !matches!(key, Key::Offer(_))).map(Edit::Remove));
        Edit::Together(edits)
    }

    /// The edit that puts these records into `book`, and removes those at the keys that have `None`.
    pub fn records(book: &Book, records: &BTreeMap<Key, Option<Record>>) -> Edit {
        let puts = records.values().filter_map(Option::clone).map(Edit::Put);
        // A record needs only records with lower keys: from the last on, each goes before what it needs.
        let gone = records.iter().rev().filter(|(key, record)| record.is_none() && book.contains(**key));
        Edit::Together(puts.chain(gone.map(|(key, _)| Edit::Remove(*key))).collect())
    }

    /// The keys of the records that it writes or removes.
    pub fn keys(&self) -> BTreeSet<Key> {
        let mut keys = BTreeSet::new();
        match self {
            Edit::Put(record) => drop(keys.insert(record.key())),
            Edit::Remove(key) => drop(keys.insert(*key)),
            Edit::SetPackPrice { goods, .. } => drop(keys.insert(Key::from(*goods))),
            Edit::SetPrice { offer, .. } => drop(keys.insert(Key::Offer(*offer))),
            Edit::Together(edits) => edits.iter().for_each(|edit| keys.extend(edit.keys())),
        }
        keys
    }
}

impl Book {
    /// The records at these keys, with `None` for a key that has no record.
    pub fn at(&self, keys: &BTreeSet<Key>) -> BTreeMap<Key, Option<Record>> {
        let mut records = BTreeMap::new();
        records.extend(keys.iter().map(|key| (*key, self.record(*key))));
        records
    }

    /// Applies an edit. It checks first and changes after.
    ///
    /// # Errors
    /// A [`Refusal`] if a value is not valid, if a record that is needed is missing, or if a record to be
    /// removed is in use. The book is then as it was.
    pub fn apply(&mut self, edit: &Edit) -> Result<Applied, Refusal> {
        match edit {
            Edit::Put(record) => self.put(record.clone()),
            Edit::Remove(key) => self.remove(*key),
            Edit::SetPackPrice { goods, pack, price, day } => self.set_pack_price(*goods, *pack, *price, *day),
            Edit::SetPrice { offer, price } => {
                let key = Key::Offer(*offer);
                let old = self.offer(*offer).ok_or(Refusal::Missing { key, needed_by: None })?;
                let was = old.price;
                let new = Record::Offer(Offer { price: *price, ..old.clone() });
                check::record(&new)?;
                // What it needs, the old one needed.
                self.records.insert(key, Arc::new(new));
                Ok(Applied { inverse: Edit::SetPrice { offer: *offer, price: was }, touched: only(key) })
            }
            Edit::Together(edits) => self.apply_all(edits),
        }
    }

    fn apply_all(&mut self, edits: &[Edit]) -> Result<Applied, Refusal> {
        let mut inverses = Vec::with_capacity(edits.len());
        let mut touched = BTreeSet::new();
        let mut rest = edits;
        while let Some((edit, others)) = rest.split_first() {
            let row: Vec<Key> =
                rest.iter().map_while(|edit| if let Edit::Remove(key) = edit { Some(*key) } else { None }).collect();
            let (applied, after) = match self.remove_row(&row) {
                Some(applied) => (Ok(applied), rest.get(row.len()..).unwrap_or_default()),
                None => (self.apply(edit), others),
            };
            match applied {
                Ok(applied) => {
                    inverses.push(applied.inverse);
                    touched.extend(applied.touched);
                }
                Err(refusal) => {
                    for inverse in inverses.iter().rev() {
                        self.apply(inverse)?;
                    }
                    return Err(refusal);
                }
            }
            rest = after;
        }
        inverses.reverse();
        Ok(Applied { inverse: Edit::Together(inverses), touched })
    }

    /// Removes many records at once, so that the records that stay are searched only once for what they need.
    /// Returns `None`, with nothing changed, if there are few, if one that stays needs one of them, or if one
    /// goes after what it needs.
    fn remove_row(&mut self, row: &[Key]) -> Option<Applied> {
        if row.len() <= FEW {
            return None;
        }
        let mut gone = BTreeSet::new();
        gone.extend(row.iter().copied());
        let stays = self.records.iter().filter(|(key, _)| !gone.contains(key));
        if gone.len() != row.len()
            || stays.into_iter().any(|(_, record)| record.needs().iter().any(|it| gone.contains(it)))
        {
            return None;
        }
        let mut waiting = gone.clone();
        for key in row {
            waiting.remove(key);
            let needs = self.records.get(key)?.needs();
            if needs.iter().any(|needed| gone.contains(needed) && !waiting.contains(needed)) {
                return None;
            }
        }
        let puts = row.iter().rev().filter_map(|key| self.records.remove(key)).map(put_back);
        Some(Applied { inverse: Edit::Together(puts.collect()), touched: gone })
    }

    fn put(&mut self, record: Record) -> Result<Applied, Refusal> {
        let key = record.key();
        check::record(&record)?;
        for needed in record.needs() {
            if !self.contains(needed) {
                return Err(Refusal::Missing { key: needed, needed_by: Some(key) });
            }
        }
        let was = match record {
            Record::Settings(record) => {
                Some(Record::Settings(Box::new(std::mem::replace(&mut self.settings, *record))))
            }
            record => self.records.insert(key, Arc::new(record)).map(Arc::unwrap_or_clone),
        };
        let inverse = was.map_or(Edit::Remove(key), Edit::Put);
        Ok(Applied { inverse, touched: only(key) })
    }

    fn remove(&mut self, key: Key) -> Result<Applied, Refusal> {
        let by = self.needed_by(key);
        if !by.is_empty() {
            return Err(Refusal::InUse { key, by });
        }
        let was = self.records.remove(&key).ok_or(Refusal::Missing { key, needed_by: None })?;
        Ok(Applied { inverse: put_back(was), touched: only(key) })
    }

    fn set_pack_price(
        &mut self,
        goods: Goods,
        pack: PackId,
        price: Money,
        day: Option<Date>,
    ) -> Result<Applied, Refusal> {
        let missing = || Refusal::Missing { key: goods.into(), needed_by: None };
        let mut record = self.record(goods.into()).ok_or_else(missing)?;
        let packs = record.packs_mut().ok_or_else(missing)?;
        let quoted = packs.iter_mut().find(|quoted| quoted.id == pack).ok_or_else(missing)?;
        match day {
            Some(day) => quoted.quote(price, day),
            None => *quoted.price_now_mut() = price,
        }
        if self.record(goods.into()).as_ref() == Some(&record) {
            let inverse = Edit::SetPackPrice { goods, pack, price, day };
            return Ok(Applied { inverse, touched: only(goods.into()) });
        }
        self.put(record)
    }
}

/// The edit that puts a record where it was.
pub(super) fn put_back(record: Arc<Record>) -> Edit {
    Edit::Put(Arc::unwrap_or_clone(record))
}

fn only(key: Key) -> BTreeSet<Key> {
    let mut touched = BTreeSet::new();
    touched.insert(key);
    touched
}
