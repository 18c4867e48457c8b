//! What the cost of a drink is made of, and which of it a margin covers.

use super::{Drink, Settings};
use crate::foundation::measure::{Money, stored_by_name};

/// The cost basis of a margin: what a price must pay for before anything is left. Each basis has
/// all that the one before it has.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum CostBasis {
    /// What the customer takes away: ingredients, container set and treatment fee.
    Goods,
    /// Labour too.
    GoodsAndLabour,
    /// Also overhead, payment fee and commission.
    Everything,
}

stored_by_name! {
    CostBasis {
        Goods = "goods",
        GoodsAndLabour = "goods-and-labour",
        Everything = "everything",
    }
}

impl CostBasis {
    /// Whether it has the payment fee and the commission.
    pub fn has_fees(self) -> bool {
        self == CostBasis::Everything
    }
}

/// A part of the cost of a drink.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Part {
    /// Ingredients.
    Ingredients,
    /// The container set: vessel, closure, label and so on.
    ContainerSet,
    /// Hands' time at the loaded wage.
    Labour,
    /// So much per drink, as it was entered.
    Flat(FlatCost),
    /// What is made and thrown away.
    Unsold,
    /// What is handed out free.
    Free,
}

impl Part {
    /// Every part, in the order in which they are shown. What is thrown away and what is handed out
    /// free are the last: they follow from the others.
    pub const ALL: [Part; 5 + FlatCost::ALL.len()] = [
        Part::Ingredients,
        Part::ContainerSet,
        Part::Labour,
        Part::Flat(FlatCost::TreatmentFee),
        Part::Flat(FlatCost::Overhead),
        Part::Unsold,
        Part::Free,
    ];

    /// The narrowest cost basis that has it. Returns `None` for what is thrown away or handed out free:
    /// each basis has that of its own parts.
    pub const fn basis(self) -> Option<CostBasis> {
        match self {
            Part::Ingredients | Part::ContainerSet | Part::Flat(FlatCost::TreatmentFee) => Some(CostBasis::Goods),
            Part::Labour => Some(CostBasis::GoodsAndLabour),
            Part::Flat(FlatCost::Overhead) => Some(CostBasis::Everything),
            Part::Unsold | Part::Free => None,
        }
    }
}

/// A cost that is entered as so much per drink, whatever the size.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum FlatCost {
    /// What is paid for treatment, such as a toll for treating it under pressure.
    TreatmentFee,
    /// Rent, power and the like.
    Overhead,
}

// The names of their fields in a drink or in the settings.
stored_by_name! {
    FlatCost {
        TreatmentFee = "toll",
        Overhead = "overhead",
    }
}

/// Where a flat cost is entered, and how it is read there.
#[derive(Clone, Copy, Debug)]
pub enum Entered {
    /// At each drink.
    AtDrink(fn(&Drink) -> Money),
    /// Once for the whole book.
    InSettings(fn(&Settings) -> Money),
}

impl FlatCost {
    /// Where it is entered.
    pub fn entered(self) -> Entered {
        match self {
            FlatCost::TreatmentFee => Entered::AtDrink(|drink| drink.treatment_fee),
            FlatCost::Overhead => Entered::InSettings(|settings| settings.overhead),
        }
    }

    /// What it is for a drink, in the major unit of the book's currency.
    pub fn of(self, drink: &Drink, settings: &Settings) -> Money {
        match self.entered() {
            Entered::AtDrink(read) => read(drink),
            Entered::InSettings(read) => read(settings),
        }
    }
}

#[cfg(test)]
mod tests {
    use serde_json::Value;

    use super::*;
    use crate::support::{drink, money, settings};

    #[test]
    fn every_part_is_listed_once_in_its_place() {
        // Exhaustive: a new part needs a place before what is unsold, which moves up by one with what
        // is free, and then the list lacks one.
        let place = |part| match part {
            Part::Ingredients => 0,
            Part::ContainerSet => 1,
            Part::Labour => 2,
            Part::Flat(cost) => 3 + FlatCost::ALL.iter().position(|it| *it == cost).unwrap(),
            Part::Unsold => 3 + FlatCost::ALL.len(),
            Part::Free => 4 + FlatCost::ALL.len(),
        };
        assert_eq!(Part::ALL.map(place), std::array::from_fn(|place| place));
        assert_eq!(place(Part::Free) + 1, Part::ALL.len());
    }

    #[test]
    fn a_flat_cost_is_read_from_the_field_of_its_name() {
        let (plain, bar) = (drink(1, "1 L", []), settings());
        for cost in FlatCost::ALL {
            let with = |record: Value| {
                let Value::Object(mut fields) = record else { panic!("a record has fields") };
                fields.insert(cost.stored_name().to_string(), Value::from("1.25"));
                Value::Object(fields)
            };
            let read = match cost.entered() {
                Entered::AtDrink(_) => {
                    let drink = serde_json::from_value(with(serde_json::to_value(&plain).unwrap()));
                    cost.of(&drink.unwrap(), &bar)
                }
                Entered::InSettings(_) => {
                    let settings = serde_json::from_value(with(serde_json::to_value(&bar).unwrap()));
                    cost.of(&plain, &settings.unwrap())
                }
            };
            assert_eq!(read, money("1.25"), "{cost:?}");
        }
    }
}
