//! What is named by the units of a book: per gallon or per liter, the weight of one cup or a density.

use crate::foundation::measure::{LengthUnit, System, Unit};
use crate::say;

/// A unit as the person writes it.
pub fn unit(unit: Unit, units: System) -> &'static str {
    match unit {
        Unit::Piece => say!(common::unit_piece),
        unit => unit.name_in(units),
    }
}

/// A unit of length as the person writes it.
pub fn length_unit(unit: LengthUnit) -> &'static str {
    match unit {
        LengthUnit::Inch => say!(common::unit_inch),
        LengthUnit::Millimetre | LengthUnit::Centimetre => unit.symbol(),
    }
}

/// Labor for each gallon or liter of drink.
pub fn labor_per_volume(units: System) -> &'static str {
    match units {
        System::UsCustomary => say!(drinks::labor_per_gallon),
        System::Metric | System::Imperial => say!(drinks::labor_per_liter),
    }
}

/// The density of an ingredient in drinks.
pub fn drink_density(units: System) -> &'static str {
    if units.weighs_cups() { say!(goods::drink_cup_weight) } else { say!(goods::drink_density) }
}

/// The density of the juice of an ingredient.
pub fn juice_density(units: System) -> &'static str {
    if units.weighs_cups() { say!(goods::juice_cup_weight) } else { say!(goods::juice_density) }
}
