//! The edits that change one thing that is bought or poured into.

use crate::book::{
    Book, Container, ContainerId, Edit, Goods, Ingredient, IngredientId, Key, Offer, OfferId, Pack, PackId, Record,
};
use crate::foundation::measure::{Amount, Date, Dimension, Measure, Money, Unit, Wanted};

/// The edit that changes one container. Returns `None` if it is gone.
pub fn changed(book: &Book, id: ContainerId, change: impl FnOnce(&mut Container)) -> Option<Edit> {
    let mut container = book.container(id)?.clone();
    change(&mut container);
    Some(Edit::Put(Record::Container(container)))
}

/// The edit that puts a new container, with the size of the drink that it is for: `sold_for` is its key.
pub fn container_added(book: &Book, container: Container, sold_for: &str) -> Edit {
    let offer = match Key::from_text(sold_for) {
        Some(Key::Drink(drink)) if book.drink(drink).is_some() => Some(OfferId { drink, container: container.id }),
        _ => None,
    };
    let mut edits = vec![Edit::Put(Record::Container(container))];
    edits.extend(offer.map(|offer| Edit::Put(Record::Offer(Offer::new(offer)))));
    Edit::Together(edits)
}

/// The edit that changes one ingredient. Returns `None` if it is gone.
pub fn ingredient_changed(book: &Book, id: IngredientId, change: impl FnOnce(&mut Ingredient)) -> Option<Edit> {
    let mut ingredient = book.ingredient(id)?.clone();
    change(&mut ingredient);
    Some(Edit::Put(Record::Ingredient(ingredient)))
}

/// The edit that changes the packs of goods. Returns `None` if they are gone.
pub fn packs_changed(book: &Book, goods: Goods, change: impl FnOnce(&mut Vec<Pack>)) -> Option<Edit> {
    let mut record = book.record(Key::from(goods))?;
    change(record.packs_mut()?);
    Some(Edit::Put(record))
}

/// The edit that changes one pack of goods. Returns `None` if they are gone.
pub fn pack_changed(book: &Book, goods: Goods, id: PackId, change: impl FnOnce(&mut Pack)) -> Option<Edit> {
    packs_changed(book, goods, |packs| {
        if let Some(pack) = packs.iter_mut().find(|pack| pack.id == id) {
            change(pack);
        }
    })
}

/// The edit that writes the price at which a pack is bought, as heard on a day.
pub const fn price_set(goods: Goods, pack: PackId, price: Money, day: Date) -> Edit {
    Edit::SetPackPrice { goods, pack, price, day: Some(day) }
}

/// What a container holds to the rim: a volume, or the weight of as much water.
pub fn capacity(book: &Book) -> Wanted {
    Wanted { dimensions: &[Dimension::Volume, Dimension::Mass], ..size(book) }
}

/// What was typed as a capacity, by volume: one gram of water is one milliliter, to a tenth.
pub fn of_water(capacity: Amount) -> Amount {
    match capacity.measure() {
        Ok(Measure::Mass(mass)) => Amount::new(mass.grams().rounded(1), Unit::Millilitre),
        _ => capacity,
    }
}

/// The volume of a container, in the unit that drinks are poured in.
pub fn size(book: &Book) -> Wanted {
    Wanted { dimensions: &[Dimension::Volume], unit: book.settings().units.drink_unit() }
}
