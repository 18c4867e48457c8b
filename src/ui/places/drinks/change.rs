//! Changing one drink.

use crate::book::{Book, Drink, DrinkId, Edit, Record};

/// The edit that changes one drink. Returns `None` if it is gone.
pub fn changed(book: &Book, id: DrinkId, change: impl FnOnce(&mut Drink)) -> Option<Edit> {
    let mut drink = book.drink(id)?.clone();
    change(&mut drink);
    Some(Edit::Put(Record::Drink(drink)))
}
