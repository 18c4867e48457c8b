//! The names by which people type units, in English and in Spanish.

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
        ["ml" | "millilitre" | "millilitres" | "milliliter" | "milliliters" | "mililitro" | "mililitros"] => {
            Some(Unit::Millilitre)
        }
        ["cl" | "centilitre" | "centilitres" | "centiliter" | "centiliters"] => Some(Unit::Centilitre),
        ["l" | "litre" | "litres" | "liter" | "liters" | "litro" | "litros"] => Some(Unit::Litre),
        ["floz"] | ["fl" | "fluid", "oz" | "ounce" | "ounces"] => of(Unit::UsFluidOunce, Unit::ImperialFluidOunce),
        ["oz" | "ounce" | "ounces", "wt"] | ["oz" | "ounce" | "ounces", "by", "weight"] => Some(Unit::Ounce),
        ["onza" | "onzas", "liquida" | "líquida" | "liquidas" | "líquidas"] => {
            of(Unit::UsFluidOunce, Unit::ImperialFluidOunce)
        }
        ["oz" | "ounce" | "ounces" | "onza" | "onzas"] => match bare {
            Dimension::Volume => of(Unit::UsFluidOunce, Unit::ImperialFluidOunce),
            Dimension::Mass | Dimension::Count => Some(Unit::Ounce),
        },
        ["tsp" | "teaspoon" | "teaspoons" | "cdta" | "cdtas" | "cucharadita" | "cucharaditas"] => {
            spoon(Unit::UsTeaspoon, Unit::MetricTeaspoon)
        }
        ["tbsp" | "tablespoon" | "tablespoons" | "cda" | "cdas" | "cucharada" | "cucharadas"] => {
            spoon(Unit::UsTablespoon, Unit::MetricTablespoon)
        }
        ["cup" | "cups" | "taza" | "tazas"] => spoon(Unit::UsCup, Unit::MetricCup),
        ["metric", "tsp" | "teaspoon" | "teaspoons"] => Some(Unit::MetricTeaspoon),
        ["metric", "tbsp" | "tablespoon" | "tablespoons"] => Some(Unit::MetricTablespoon),
        ["metric", "cup" | "cups"] => Some(Unit::MetricCup),
        ["pt" | "pint" | "pints" | "pinta" | "pintas"] => of(Unit::UsPint, Unit::ImperialPint),
        ["qt" | "quart" | "quarts"] if whose != System::Imperial => Some(Unit::UsQuart),
        ["gal" | "gallon" | "gallons" | "galón" | "galon" | "galones"] => of(Unit::UsGallon, Unit::ImperialGallon),
        ["g" | "gram" | "grams" | "gr" | "gramo" | "gramos"] => Some(Unit::Gram),
        ["kg" | "kilo" | "kilos" | "kilogram" | "kilograms" | "kilogramo" | "kilogramos"] => Some(Unit::Kilogram),
        ["lb" | "lbs" | "#" | "pound" | "pounds" | "libra" | "libras"] => Some(Unit::Pound),
        [
            "ea" | "each" | "pc" | "pcs" | "piece" | "pieces" | "x" | "ct" | "count" | "pza" | "pzas" | "pieza"
            | "piezas",
        ] => Some(Unit::Piece),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The words of a kitchen that speaks Spanish (from memory).
    #[test]
    fn spanish_names_mean_the_same_units() {
        let read = |name: &str, system| unit(name, Dimension::Mass, system);
        for (names, of_us, metric) in [
            (&["libra", "libras", "Libras"][..], Unit::Pound, Unit::Pound),
            (&["onza", "onzas"], Unit::Ounce, Unit::Ounce),
            (&["onzas líquidas", "onza liquida"], Unit::UsFluidOunce, Unit::UsFluidOunce),
            (&["taza", "tazas"], Unit::UsCup, Unit::MetricCup),
            (&["cda", "cdas", "cda.", "cucharada", "cucharadas"], Unit::UsTablespoon, Unit::MetricTablespoon),
            (&["cdta", "cdtas", "cucharadita", "cucharaditas"], Unit::UsTeaspoon, Unit::MetricTeaspoon),
            (&["galón", "galon", "galones"], Unit::UsGallon, Unit::UsGallon),
            (&["litro", "litros"], Unit::Litre, Unit::Litre),
            (&["gramo", "gramos"], Unit::Gram, Unit::Gram),
            (&["pza", "pzas", "pieza", "piezas"], Unit::Piece, Unit::Piece),
        ] {
            for name in names {
                assert_eq!(read(name, System::UsCustomary), Some(of_us), "{name}");
                assert_eq!(read(name, System::Metric), Some(metric), "{name}");
            }
        }
        assert_eq!(unit("onzas", Dimension::Volume, System::UsCustomary), Some(Unit::UsFluidOunce));
        assert_eq!(unit("tarro", Dimension::Mass, System::Metric), None);
    }
}
