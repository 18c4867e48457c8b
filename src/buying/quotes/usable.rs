//! The usable amount that packs of goods are compared by.

use super::cost_of;
use crate::book::{Book, Goods, Ingredient, Stage};
use crate::foundation::measure::{Amount, Dimension, Exact, Share, Unit};

/// An amount of goods as they are used.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Usable {
    /// What is done to them before.
    pub stage: Stage,
    /// How much: one of a unit, or a hundred where the unit is small.
    pub amount: Amount,
}

impl Usable {
    fn one(stage: Stage, unit: Unit) -> Usable {
        let number = if unit == Unit::Millilitre { Exact::new(100, 0) } else { Exact::ONE };
        Usable { stage, amount: Amount::new(number, unit) }
    }
}

/// What the packs of `goods` are compared by: the last stage that the ingredient has a yield for
/// and the unit of it that the most packs have a cost in; packaging by the piece.
pub fn usable(book: &Book, goods: Goods) -> Usable {
    let Goods::Ingredient(id) = goods else { return Usable::one(Stage::AsBought, Unit::Piece) };
    let packs = book.packs(goods);
    let first = packs.first().map(|pack| pack.contents.unit.dimension());
    let ways = book.ingredient_now(id).map(|ingredient| ways(book, &ingredient, first)).unwrap_or_default();
    let mut found: Option<(usize, Usable)> = None;
    for way in ways {
        let known = packs.iter().filter(|pack| cost_of(book, goods, pack, way).is_ok()).count();
        if found.is_none_or(|(most, _)| known > most) {
            found = Some((known, way));
        }
    }
    found.map_or(Usable::one(Stage::AsBought, book.settings().units.buying_weight_unit()), |(_, way)| way)
}

/// The ways in which an ingredient whose first pack is of a dimension may be compared, the most
/// telling first.
fn ways(book: &Book, ingredient: &Ingredient, first: Option<Dimension>) -> Vec<Usable> {
    let units = book.settings().units;
    let (weight, volume) = (units.buying_weight_unit(), units.drink_unit());
    let mut ways = Vec::new();
    if ingredient.press_yield.is_some() {
        ways.push(Usable::one(Stage::Pressed, volume));
    }
    if ingredient.soak_yield.is_some() {
        ways.push(Usable::one(Stage::SoakedOrBrewed, volume));
    }
    let stage = if ingredient.trim_yield < Share::WHOLE { Stage::Trimmed } else { Stage::AsBought };
    let by_dimension = match first {
        Some(Dimension::Volume) => [volume, weight, Unit::Piece],
        _ => [weight, volume, Unit::Piece],
    };
    ways.extend(by_dimension.map(|unit| Usable::one(stage, unit)));
    ways
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Pack, Record, Settings};
    use crate::foundation::measure::System;
    use crate::support::{amount, book, density, ingredient, ingredient_id, pack, settings, share};

    fn of(ingredient: Ingredient, units: System) -> (Stage, Amount) {
        let book = book(Settings { units, ..settings() }, [Record::Ingredient(ingredient)]);
        let usable = usable(&book, Goods::Ingredient(ingredient_id(1)));
        (usable.stage, usable.amount)
    }

    fn here(ingredient: Ingredient) -> (Stage, Amount) {
        of(ingredient, System::UsCustomary)
    }

    fn bare(packs: impl IntoIterator<Item = Pack>) -> Ingredient {
        Ingredient { density: None, ..ingredient(1, packs) }
    }

    #[test]
    fn the_last_stage_with_a_yield_is_what_is_used() {
        let pressed = Ingredient {
            trim_yield: share("0.9"),
            press_yield: Some(share("0.6")),
            juice_density: Some(density("1.05")),
            ..bare([pack(1, "40 lb", "38")])
        };
        assert_eq!(here(pressed.clone()), (Stage::Pressed, amount("1 fl oz")));
        assert_eq!(of(pressed.clone(), System::Metric), (Stage::Pressed, amount("100 mL")));
        // Without a density of its juice it can be compared by weight only.
        assert_eq!(here(Ingredient { juice_density: None, ..pressed }), (Stage::Trimmed, amount("1 lb")));
        let soaked = Ingredient { soak_yield: Some(share("2")), ..ingredient(1, [pack(1, "1 lb", "3")]) };
        assert_eq!(here(soaked), (Stage::SoakedOrBrewed, amount("1 fl oz")));
    }

    #[test]
    fn the_unit_is_that_of_most_packs() {
        assert_eq!(here(bare([pack(1, "1 gal", "3")])), (Stage::AsBought, amount("1 fl oz")));
        assert_eq!(here(ingredient(1, [pack(1, "1 gal", "3")])), (Stage::AsBought, amount("1 fl oz")));
        assert_eq!(here(bare([pack(1, "48 ea", "3")])), (Stage::AsBought, amount("1 ea")));
        let two_to_one = [pack(1, "1 gal", "3"), pack(2, "1 lb", "3"), pack(3, "2 lb", "5")];
        assert_eq!(here(bare(two_to_one)), (Stage::AsBought, amount("1 lb")));
        assert_eq!(of(bare([]), System::Metric), (Stage::AsBought, amount("1 kg")));
    }
}
