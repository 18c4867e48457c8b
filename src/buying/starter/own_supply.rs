//! What a shop makes itself or takes from the tap: nobody sells it a case.

use crate::book::{Book, Edit, IngredientId, Line, Pack, PackId, Record};
use crate::foundation::measure::{Amount, Date, Exact, Money};

/// What comes from the shop itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OwnSupply {
    /// From an ice machine.
    Ice,
    /// From the tap.
    Water,
}

/// What an ingredient without a pack is, if a shop usually has it for nothing: ice or water of the list, and what a
/// recipe uses as ice. Returns `None` for all else, and once there is a pack.
pub fn own_supply(book: &Book, id: IngredientId) -> Option<OwnSupply> {
    let ingredient = book.ingredient(id).filter(|it| it.packs.is_empty())?;
    let used_as_ice = |line: &Line| line.ingredient == id && line.ice.is_some();
    match ingredient.starting.as_ref().map(|it| it.key.as_str()) {
        Some("ice") => Some(OwnSupply::Ice),
        Some("water") => Some(OwnSupply::Water),
        _ => book.drinks().any(|drink| drink.lines.iter().any(used_as_ice)).then_some(OwnSupply::Ice),
    }
}

/// The edit that gives an ingredient a pack that costs nothing. Returns `None` if the ingredient is gone.
pub fn free_pack(book: &Book, id: IngredientId, pack: PackId, today: Date) -> Option<Edit> {
    let mut ingredient = book.ingredient(id)?.clone();
    // Of what costs nothing, any contents do.
    let contents = Amount::new(Exact::ONE, book.settings().units.buying_weight_unit());
    ingredient.packs.push(Pack { day: Some(today), ..Pack::new(pack, contents, Money::ZERO) });
    Some(Edit::Put(Record::Ingredient(ingredient)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Goods, Ice, IcePlace, Ingredient};
    use crate::buying::starter::List;
    use crate::support::{book, day, drink, line, pack_id, settings};

    const ID: IngredientId = IngredientId::from_random(1);

    /// A book with an ingredient of this row of the list.
    fn with(key: &str) -> Book {
        let list = List::read(include_str!("../../../public/starter/ingredients.txt")).unwrap();
        book(settings(), [Record::Ingredient(list.row(key).unwrap().ingredient(ID, "en-US"))])
    }

    #[test]
    fn ice_and_water_of_the_list_may_cost_nothing() {
        for (key, expected) in [("ice", Some(OwnSupply::Ice)), ("water", Some(OwnSupply::Water)), ("apple", None)] {
            assert_eq!(own_supply(&with(key), ID), expected, "{key}");
        }
    }

    #[test]
    fn what_a_recipe_uses_as_ice_is_ice() {
        let cubes = Record::Ingredient(Ingredient::named(ID, "Cubes"));
        let mut book = book(settings(), [cubes]);
        assert_eq!(own_supply(&book, ID), None);
        let ice = Line { ice: Some(Ice::in_a_scoop(IcePlace::BlendedIn)), ..line(1, 1, "4 oz") };
        book.apply(&Edit::Put(Record::Drink(drink(1, "12 fl oz", [ice])))).unwrap();
        assert_eq!(own_supply(&book, ID), Some(OwnSupply::Ice));
    }

    #[test]
    fn once_it_has_a_pack_nothing_is_offered() {
        let mut book = with("ice");
        let edit = free_pack(&book, ID, pack_id(1), day("2026-11-28")).unwrap();
        book.apply(&edit).unwrap();
        assert_eq!(book.packs(Goods::Ingredient(ID)).first().map(|pack| pack.price), Some(Money::ZERO));
        assert_eq!(own_supply(&book, ID), None);
    }
}
