//! Why a typed text was not taken.

use super::{Example, Speaker};
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Dimension, ReadError, System, Unit};
use crate::say;

/// An amount that could be typed: "12 fl oz", "330 mL".
pub fn example(unit: Unit, system: System) -> String {
    Example::Amount(unit).said(&Speaker::plain_in(system))
}

/// The sentence for a text that was not taken; `example` is one that would be.
pub fn read_error(error: &ReadError, example: &str) -> String {
    match error {
        ReadError::Empty => say!(book::typed_nothing, example = example),
        ReadError::NotANumber { text } => say!(book::not_a_number, text = text, example = example),
        ReadError::Ambiguous { text, as_thousands, as_decimals } => {
            say!(book::two_numbers, text = text, one = as_thousands, other = as_decimals)
        }
        ReadError::UnknownUnit { unit } => say!(book::unknown_unit, unit = unit, example = example),
        ReadError::NotALength { unit } => say!(book::not_a_length, unit = unit, example = example),
        ReadError::NotATime { text } => say!(book::not_a_time, text = text, example = example),
        ReadError::NotATemperature { unit } => say!(book::not_a_temperature, unit = unit, example = example),
        ReadError::WrongKind { unit, wanted } => [is(*unit), type_one(wanted, example)].join(" "),
        ReadError::NotOneAmount { text } => say!(book::not_one_amount, text = text, example = example),
        ReadError::NotAnEnding { text } => say!(book::not_an_ending, text = text, example = example),
        ReadError::Negative => say!(book::no_minus, example = example),
        ReadError::TooLarge => say!(book::too_many_digits).to_string(),
        ReadError::TooFine => say!(book::too_many_decimals).to_string(),
    }
}

/// The question about a text that could mean two things in a field of this kind, each as it would be typed.
pub fn two_meanings(kind: Kind, text: &str, [one, other]: &[String; 2]) -> String {
    match kind {
        Kind::Tax => say!(book::did_you_mean, typed = one, other = other),
        _ => say!(book::two_numbers, text = text, one = one, other = other),
    }
}

/// What a unit measures.
fn is(unit: Unit) -> String {
    match unit.dimension() {
        Dimension::Volume => say!(book::unit_of_volume, unit = unit.symbol()),
        Dimension::Mass => say!(book::unit_of_weight, unit = unit.symbol()),
        Dimension::Count => say!(book::unit_of_count, unit = super::unit(unit, System::Metric)),
    }
}

/// What to type instead.
fn type_one(wanted: &[Dimension], example: &str) -> String {
    match wanted {
        [Dimension::Volume] => say!(book::type_a_volume, example = example),
        [Dimension::Mass] => say!(book::type_a_weight, example = example),
        [Dimension::Count] => say!(book::type_pieces, example = example),
        [Dimension::Volume, Dimension::Mass] | [Dimension::Mass, Dimension::Volume] => {
            say!(book::type_volume_or_weight, example = example)
        }
        _ => say!(book::type_an_amount, example = example),
    }
}
