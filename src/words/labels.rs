//! What a label says, its cautions, and why there is none.

use super::troubles::{trouble, volume, yield_error};
use crate::book::{Allergen, Book, Key};
use crate::label::{Caution, LabelError, NetContents, NetSource};
use crate::measure::{Amount, NumberStyle, System, Unit, show_number};
use crate::yields::YieldError;

/// Net contents in both systems: "Net 16 fl oz (1 pt) 473 mL" where people measure in US
/// customary units, "473 mL (16 fl oz)" elsewhere.
pub fn net_contents(net: &NetContents, units: System, style: &NumberStyle) -> String {
    let shown =
        |amount: Amount| format!("{}\u{a0}{}", show_number(amount.number, 0, style), amount.unit.name_in(units));
    let ounces = shown(Amount::new(net.fluid_ounces, Unit::UsFluidOunce));
    let metric = shown(net.metric);
    let largest: Vec<String> = net.largest_units.iter().map(|amount| shown(*amount)).collect();
    let largest = largest.join(" ");
    match units {
        System::Metric | System::Imperial => format!("{metric} ({ounces})"),
        System::UsCustomary if net.is_a_gallon() => format!("Net {largest} ({metric})"),
        System::UsCustomary if largest.is_empty() => format!("Net {ounces} ({metric})"),
        System::UsCustomary => format!("Net {ounces} ({largest}) {metric}"),
    }
}

/// What net contents were taken from.
pub const fn net_source(source: NetSource) -> &'static str {
    match source {
        NetSource::Declared => "declared size",
        NetSource::Fill => "fill, as no size is declared",
    }
}

/// What to be careful of.
pub fn caution(caution: Caution, book: &Book) -> String {
    match caution {
        Caution::UntreatedJuice => format!(
            "Juice that was not treated against germs may need a warning on its label, in the United States (21 CFR 101.17(g)): “{UNTREATED_JUICE}” It may also need a treatment plan (21 CFR part 120). Ask what applies to you."
        ),
        Caution::FillShortOfDeclared(short) => format!(
            "The fill is {} less than the declared size. Fill more or declare less: a label may not state more than is there.",
            volume(short, book)
        ),
        Caution::NameTheKind(allergen) => name_the_kind(allergen).to_string(),
        Caution::AllergensAsInTheBook => {
            "Allergens are only as right as what was entered for each ingredient. Check every label, and what shares the blender or press.".to_string()
        }
        Caution::NoLegalAdvice => {
            "These numbers are no legal advice: local codes and licensed practice decide.".to_string()
        }
    }
}

/// The warning of 21 CFR 101.17(g), word by word.
pub const UNTREATED_JUICE: &str = "WARNING: This product has not been pasteurized and, therefore, may contain harmful bacteria that can cause serious illness in children, the elderly, and persons with weakened immune systems.";

const fn name_the_kind(allergen: Allergen) -> &'static str {
    match allergen {
        Allergen::TreeNuts => "Name the kind of nut, such as almonds or cashews.",
        Allergen::Fish => "Name the kind of fish, such as cod.",
        Allergen::Crustaceans => "Name the kind of crustacean, such as shrimp.",
        Allergen::OtherGluten => "Name the cereal with gluten, such as rye, barley or oats.",
        _ => "Name the food that it comes from.",
    }
}

/// Why there are no facts for a label, and what would mend it.
pub fn label_error(error: &LabelError, book: &Book) -> String {
    let name = |id| book.name(Key::Ingredient(id));
    match error {
        LabelError::Offer(reason) => trouble(reason, book),
        LabelError::Mass(YieldError::NoDensity(id)) => format!(
            "A label lists ingredients by weight, and {} is poured by volume. Enter its grams per mL as it is in the drink.",
            name(*id)
        ),
        LabelError::Mass(YieldError::NoJuiceDensity(id)) => format!(
            "A label lists ingredients by weight, and the juice of {} is poured by volume. Enter grams per mL of the juice.",
            name(*id)
        ),
        LabelError::Mass(error) => yield_error(error, book),
    }
}
