//! What is named by the units of a book: per gallon or per liter, the weight of one cup or a density.

use crate::foundation::measure::System;
use crate::say;

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
