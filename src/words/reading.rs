//! Why a typed text was not taken.

use crate::foundation::measure::{Dimension, ReadError, System, Unit};

/// An amount that could be typed: "12 fl oz", "330 mL".
pub fn example(unit: Unit, system: System) -> String {
    let number = if unit == Unit::Millilitre { 330 } else { 12 };
    format!("{number} {}", unit.name_in(system))
}

/// The sentence for a text that was not taken; `example` is one that would be.
pub fn read_error(error: &ReadError, example: &str) -> String {
    match error {
        ReadError::Empty => format!("This is empty. Type a number, such as {example}."),
        ReadError::NotANumber { text } => format!("“{text}” is not a number. Type digits, such as {example}."),
        ReadError::Ambiguous { text, as_thousands, as_decimals } => {
            format!("“{text}” could mean two numbers. Type {as_thousands} or {as_decimals}.")
        }
        ReadError::UnknownUnit { unit } => {
            format!("“{unit}” is not a unit known here. Use one such as fl oz, mL, cup, lb, oz, g or ea: {example}.")
        }
        ReadError::NotALength { unit } => {
            format!("“{unit}” is not a unit of length known here. Use mm, cm or in, such as {example}.")
        }
        ReadError::NotATemperature { unit } => {
            format!("“{unit}” is not a scale of temperature known here. Use °F or °C, such as {example}.")
        }
        ReadError::WrongKind { unit, wanted } => {
            let wanted: Vec<&str> = wanted.iter().map(|dimension| kind(*dimension)).collect();
            format!(
                "“{unit}” measures {}; here {} is needed, such as {example}.",
                kind(unit.dimension()),
                wanted.join(" or ")
            )
        }
        ReadError::NotOneAmount { text } => {
            format!("“{text}” is not one amount. Type a number and its unit, such as {example}.")
        }
        ReadError::NotAnEnding { text } => {
            format!("“{text}” is not an ending. Type endings with blanks between them, such as .00 .50 .95.")
        }
        ReadError::Negative => format!("This cannot be below zero. Type it without the minus sign: {example}."),
        ReadError::TooLarge => "That is more than nine digits. Check for a digit too many.".to_string(),
        ReadError::TooFine => "That is finer than six digits after the decimal sign. Round it to six.".to_string(),
    }
}

const fn kind(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Volume => "a volume",
        Dimension::Mass => "a weight",
        Dimension::Count => "a number of pieces",
    }
}
