//! The names by which people type units.

use crate::foundation::measure::{Dimension, System, Unit};

/// The unit that `name` means, or `None` if it is not known. `bare` decides whether a plain "oz" is fluid or
/// by weight; `system` decides between US and imperial ounces, pints and gallons. Spoons and cups are the
/// US ones in a US book, and the metric ones elsewhere; the field shows which were taken.
pub(super) fn unit(name: &str, bare: Dimension, system: System) -> Option<Unit> {
    let name = name.to_ascii_lowercase().replace('.', " ");
    let words: Vec<&str> = name.split_whitespace().collect();
    let (said, words) = match words.as_slice() {
        ["us", rest @ ..] | ["u", "s", rest @ ..] => (Some(System::UsCustomary), rest),
        ["imp" | "imperial" | "uk", rest @ ..] => (Some(System::Imperial), rest),
        all => (None, all),
    };
    let whose = said.unwrap_or(system);
    let of = |us: Unit, uk: Unit| Some(if whose == System::Imperial { uk } else { us });
    let spoon = |us: Unit, metric: Unit| match (said, whose) {
        (Some(System::Imperial), _) => None,
        (_, System::UsCustomary) => Some(us),
        (_, System::Metric | System::Imperial) => Some(metric),
    };
    match words {
        ["ml" | "millilitre" | "millilitres" | "milliliter" | "milliliters"] => Some(Unit::Millilitre),
        ["cl" | "centilitre" | "centilitres" | "centiliter" | "centiliters"] => Some(Unit::Centilitre),
        ["l" | "litre" | "litres" | "liter" | "liters"] => Some(Unit::Litre),
        ["floz"] | ["fl" | "fluid", "oz" | "ounce" | "ounces"] => of(Unit::UsFluidOunce, Unit::ImperialFluidOunce),
        ["oz" | "ounce" | "ounces", "wt"] | ["oz" | "ounce" | "ounces", "by", "weight"] => Some(Unit::Ounce),
        ["oz" | "ounce" | "ounces"] => match bare {
            Dimension::Volume => of(Unit::UsFluidOunce, Unit::ImperialFluidOunce),
            Dimension::Mass | Dimension::Count => Some(Unit::Ounce),
        },
        ["tsp" | "teaspoon" | "teaspoons"] => spoon(Unit::UsTeaspoon, Unit::MetricTeaspoon),
        ["tbsp" | "tablespoon" | "tablespoons"] => spoon(Unit::UsTablespoon, Unit::MetricTablespoon),
        ["cup" | "cups"] => spoon(Unit::UsCup, Unit::MetricCup),
        ["metric", "tsp" | "teaspoon" | "teaspoons"] => Some(Unit::MetricTeaspoon),
        ["metric", "tbsp" | "tablespoon" | "tablespoons"] => Some(Unit::MetricTablespoon),
        ["metric", "cup" | "cups"] => Some(Unit::MetricCup),
        ["pt" | "pint" | "pints"] => of(Unit::UsPint, Unit::ImperialPint),
        ["qt" | "quart" | "quarts"] if whose != System::Imperial => Some(Unit::UsQuart),
        ["gal" | "gallon" | "gallons"] => of(Unit::UsGallon, Unit::ImperialGallon),
        ["g" | "gram" | "grams" | "gr"] => Some(Unit::Gram),
        ["kg" | "kilo" | "kilos" | "kilogram" | "kilograms"] => Some(Unit::Kilogram),
        ["lb" | "lbs" | "#" | "pound" | "pounds"] => Some(Unit::Pound),
        [
            "ea" | "each" | "pc" | "pcs" | "piece" | "pieces" | "x" | "ct" | "count" | "pza" | "pzas" | "pieza"
            | "piezas",
        ] => Some(Unit::Piece),
        _ => None,
    }
}
