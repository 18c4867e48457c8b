//! What if prices, fills, suppliers, wages, waste, fees or the target were others: tried on a draft
//! beside the book.
//!
//! Some of it the owner decides, and the book can take it over ([`WhatIf::edit`]). What suppliers ask
//! and what customers choose is not the owner's to set: it is tried, and stays out of the book.

mod draft;
mod tried;
mod uses;
mod week;

#[cfg(test)]
mod tests;

use std::collections::BTreeMap;

use crate::book::{
    Book, Conditions, ContainerId, Drink, DrinkId, Edit, Filled, Goods, Key, OfferId, PackId, Record, Refusal, Scope,
    Settings,
};
use crate::drink::packaged::pour;
use crate::foundation::measure::{Money, Overflow, Share, Volume};

pub use draft::Draft;
pub use tried::Tried;
pub use uses::{Change, NotOurs, Rise, Uses};
pub use week::{MixError, Week, mixed, week};

/// What is tried.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct WhatIf {
    /// Other costs, fees and fills.
    pub conditions: Conditions,
    /// Other menu prices.
    pub prices: Vec<(OfferId, Money)>,
    /// The shares of all buyers that take these sizes; the other sizes share the rest as today.
    pub mix: Vec<(ContainerId, Share)>,
}

/// Why something cannot be tried.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WhatIfError {
    /// The book would refuse it.
    Refused(Refusal),
    /// The container holds only so much to the rim; zero if that is not known.
    OverTheRim(Volume),
    /// Nothing would be poured.
    NothingPoured,
    /// The sizes cannot be sold in these shares.
    Mix(MixError),
    /// The numbers leave the range that can be computed.
    Arithmetic(Overflow),
}

impl From<Refusal> for WhatIfError {
    fn from(refusal: Refusal) -> WhatIfError {
        WhatIfError::Refused(refusal)
    }
}

impl From<Overflow> for WhatIfError {
    fn from(overflow: Overflow) -> WhatIfError {
        WhatIfError::Arithmetic(overflow)
    }
}

impl WhatIf {
    /// The edit that puts in force what the owner decides: prices, fills, target, waste, wage, fees, and which
    /// pack is bought. Target and waste are set at the drink, at each drink of a kind, or in the book for the
    /// whole menu.
    ///
    /// # Errors
    /// A [`WhatIfError`] where a fill cannot be.
    pub fn edit(&self, book: &Book) -> Result<Edit, WhatIfError> {
        let mut edits = self.of_menu(book);
        edits.extend(self.conditions.bought.iter().filter_map(|bought| other_pack(book, bought.goods, bought.pack)));
        for (offer, price) in &self.prices {
            edits.push(Edit::SetPrice { offer: *offer, price: Some(*price) });
        }
        for filled in &self.conditions.fills {
            edits.push(poured(book, filled)?);
        }
        Ok(Edit::Together(edits))
    }

    /// What changes of the settings, and of drinks.
    fn of_menu(&self, book: &Book) -> Vec<Edit> {
        let Conditions { part, target, waste, wage, card_fee, commission, .. } = self.conditions;
        let mut settings: Settings = book.settings().clone();
        let mut drinks: BTreeMap<DrinkId, Drink> = BTreeMap::new();
        if let Some(wage) = wage {
            settings.wage = wage;
        }
        if let Some(share) = card_fee {
            settings.payment_fee.share = share;
        }
        if let Some(share) = commission {
            settings.commission = share;
        }
        if part == Scope::Menu {
            settings.target = target.unwrap_or(settings.target);
            settings.unsold = waste.unwrap_or(settings.unsold);
        } else if target.is_some() || waste.is_some() {
            for drink in book.drinks().filter(|drink| book.belongs(drink.id, part)) {
                let (target, unsold) = (target.or(drink.target), waste.or(drink.unsold));
                drinks.insert(drink.id, Drink { target, unsold, ..drink.clone() });
            }
        }
        let settings = (settings != *book.settings()).then(|| Edit::Put(Record::Settings(Box::new(settings))));
        settings.into_iter().chain(drinks.into_values().map(|drink| Edit::Put(Record::Drink(drink)))).collect()
    }
}

/// Goods bought in another of their packs, or nothing where it is bought already.
fn other_pack(book: &Book, goods: Goods, pack: PackId) -> Option<Edit> {
    let mut record = book.record(Key::from(goods))?;
    let packs = record.packs_mut()?;
    let place = packs.iter().position(|it| it.id == pack).filter(|place| *place > 0)?;
    let bought = packs.remove(place);
    packs.insert(0, bought);
    Some(Edit::Put(record))
}

fn poured(book: &Book, filled: &Filled) -> Result<Edit, WhatIfError> {
    let (id, volume) = (filled.container, filled.fill.volume()?.unwrap_or_default());
    if !volume.is_positive() {
        return Err(WhatIfError::NothingPoured);
    }
    let missing = Refusal::Missing { key: Key::Container(id), needed_by: None };
    let container = book.container(id).ok_or(missing)?;
    let edit = pour(container, volume, book.settings().units.drink_unit());
    let brimful = container.brimful.volume()?.unwrap_or_default();
    edit.ok_or(WhatIfError::OverTheRim(brimful))
}

/// The target that holds for a part of the menu: that of its drinks if all have the same, else the
/// book's.
pub fn target_of(book: &Book, scope: Scope) -> Share {
    of_drinks(book, scope, book.settings().target, |drink| drink.target)
}

/// The share thrown away of a part of the menu: that of its drinks if all have the same, else the book's.
pub fn waste_of(book: &Book, scope: Scope) -> Share {
    of_drinks(book, scope, book.settings().unsold, |drink| drink.unsold)
}

fn of_drinks(book: &Book, scope: Scope, of_book: Share, own: fn(&Drink) -> Option<Share>) -> Share {
    if scope == Scope::Menu {
        return of_book;
    }
    let mut shares = book.drinks().filter(|drink| book.belongs(drink.id, scope));
    let first = shares.next().and_then(own).unwrap_or(of_book);
    if shares.all(|drink| own(drink).unwrap_or(of_book) == first) { first } else { of_book }
}
