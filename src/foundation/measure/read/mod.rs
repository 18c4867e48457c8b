//! Reading what people type: "12,5", "1 1/2", "3 lb 4 oz". It is read by the person's locale. If that
//! leaves two readings, the person is asked; nothing is guessed.

pub(super) mod digits;
mod endings;
mod names;
mod temperature;
#[cfg(test)]
mod tests;

pub use endings::read_endings;
pub use temperature::read_temperature;

use super::{Amount, Dimension, Exact, LengthUnit, NumberStyle, System, TYPED_PLACES, TypedLength, Unit};

/// Why a typed text does not read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ReadError {
    /// Nothing was typed.
    Empty,
    /// It has something in it that is not a number.
    NotANumber {
        /// What was typed.
        text: String,
    },
    /// Its sign could mean thousands or decimals where this person lives.
    Ambiguous {
        /// What was typed.
        text: String,
        /// The text as it reads if the sign groups thousands.
        as_thousands: String,
        /// The text as it reads if the sign is a decimal sign, in the locale's own writing.
        as_decimals: String,
    },
    /// The unit is not known.
    UnknownUnit {
        /// The unit as typed.
        unit: String,
    },
    /// The unit is not a known unit of length.
    NotALength {
        /// The unit as typed.
        unit: String,
    },
    /// It is not minutes and seconds.
    NotATime {
        /// What was typed.
        text: String,
    },
    /// The scale is not a known scale of temperature.
    NotATemperature {
        /// The scale as typed.
        unit: String,
    },
    /// The unit has the wrong dimension, such as pounds for a container.
    WrongKind {
        /// The unit.
        unit: Unit,
        /// The dimensions that the field takes.
        wanted: &'static [Dimension],
    },
    /// Several amounts that do not add up to one: "10 lb50", "10 lb 50 lb".
    NotOneAmount {
        /// What was typed.
        text: String,
    },
    /// It is not an ending of prices.
    NotAnEnding {
        /// The ending as typed.
        text: String,
    },
    /// It is below zero.
    Negative,
    /// It has more than nine digits before the decimal sign.
    TooLarge,
    /// It has more than six digits after the decimal sign.
    TooFine,
}

/// The amounts that a field takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wanted {
    /// Their dimensions.
    pub dimensions: &'static [Dimension],
    /// The unit of a bare number. Its dimension also decides whether a plain "oz" is fluid or by weight.
    pub unit: Unit,
}

/// Reads a number: decimals, grouped thousands, fractions ("1 1/2", "½"), with or without a
/// currency or percent sign.
///
/// # Errors
/// A [`ReadError`] if the text is anything else, if the number is negative or has too many digits, or if
/// its sign has two readings.
pub fn read_number(text: &str, style: &NumberStyle) -> Result<Exact, ReadError> {
    let tidy = digits::tidy(text);
    let bare = digits::without_signs(&tidy, style);
    if bare.is_empty() {
        return Err(if tidy.is_empty() { ReadError::Empty } else { not_a_number(text) });
    }
    digits::number(bare, style).map_err(|problem| problem.said_of(text, &tidy, bare))
}

/// Reads a change: a number, with or without a plus or minus before it.
///
/// # Errors
/// Those of [`read_number`] for what follows the sign.
pub fn read_change(text: &str, style: &NumberStyle) -> Result<Exact, ReadError> {
    let text = text.trim_start();
    match text.strip_prefix(['-', '\u{2212}']) {
        Some(fall) => read_number(fall, style).map(Exact::negated),
        None => read_number(text.strip_prefix('+').unwrap_or(text), style),
    }
}

/// The two readings of a text whose sign could mean thousands or decimals: where blanks group thousands,
/// "1.234 kg" is "1234 kg" or "1,234 kg". Returns `None` if it has only one reading.
pub fn both_readings(text: &str, style: &NumberStyle) -> Option<[String; 2]> {
    let all = &[Dimension::Volume, Dimension::Mass, Dimension::Count];
    let wanted = Wanted { dimensions: all, unit: Unit::Piece };
    let errors = [
        read_number(text, style).err(),
        read_amount(text, wanted, System::Metric, style).err(),
        read_length(text, System::Metric, style).err(),
    ];
    errors.into_iter().flatten().find_map(|error| match error {
        ReadError::Ambiguous { as_thousands, as_decimals, .. } => Some([as_thousands, as_decimals]),
        _ => None,
    })
}

/// The two readings of a text whose one sign groups thousands where the person lives and begins the decimals
/// elsewhere: in Germany "1.043" is "1043", and "1,043" if a foreign hand typed it. Returns `None` for any
/// other text.
pub fn grouped_or_decimal(text: &str, style: &NumberStyle) -> Option<[String; 2]> {
    let tidy = digits::tidy(text);
    let of_a_number = |sign: char| sign.is_ascii_digit() || sign == style.group || sign == style.decimal;
    let number = tidy.split(|sign| !of_a_number(sign)).find(|piece| !piece.is_empty())?;
    let with = |sign: &str| tidy.replacen(number, &number.replace(style.group, sign), 1);
    digits::grouped_once(number, style.group).then(|| [with(""), with(&style.decimal.to_string())])
}

/// Reads an amount: a number with a unit, or several of them that are added up ("3 lb 4 oz"), each less
/// than one of the unit before it. A bare number takes the wanted unit.
///
/// # Errors
/// A [`ReadError`] if the text is anything else, if the unit is unknown or of another dimension, if a number
/// is negative or has too many digits, or if its sign has two readings.
pub fn read_amount(text: &str, wanted: Wanted, system: System, style: &NumberStyle) -> Result<Amount, ReadError> {
    let tidy = digits::tidy(text);
    if tidy.is_empty() {
        return Err(ReadError::Empty);
    }
    let mut parts = Vec::new();
    let mut rest = tidy.as_str();
    while !rest.is_empty() {
        let names_unit = |sign: char| sign.is_ascii_alphabetic() || sign == '#' || !sign.is_ascii();
        let (number, tail) = rest.split_at(rest.find(names_unit).unwrap_or(rest.len()));
        let (unit, next) = tail.split_at(end_of_unit(tail));
        let number = number.trim();
        let number = digits::number(number, style).map_err(|problem| problem.said_of(text, &tidy, number))?;
        // Of several amounts, each must have its own unit.
        if unit.trim().is_empty() && !parts.is_empty() {
            return Err(ReadError::NotOneAmount { text: text.trim().to_string() });
        }
        // After a pound an ounce is by weight, after a pint it is fluid.
        let like = parts.last().map_or(wanted.unit, |before: &Amount| before.unit).dimension();
        parts.push(Amount::new(number, unit_named(unit, wanted, like, system)?));
        rest = next;
    }
    sum(&parts, text)
}

/// Where the name of a unit ends and another number begins. A decimal sign after a blank belongs to the
/// number, as in "3 lb .5 oz".
fn end_of_unit(text: &str) -> usize {
    let Some(digit) = text.find(|sign: char| sign.is_ascii_digit() || sign == '-') else { return text.len() };
    let (before, _) = text.split_at(digit);
    let without = before.trim_end_matches(['.', ',']);
    if without.ends_with(' ') { without.len() } else { digit }
}

/// Reads a length: "90 mm", "3 1/2 in", "3 1/2\"". A bare number takes the system's unit.
///
/// # Errors
/// A [`ReadError`] if the text is anything else, if the unit is unknown, if the number is negative or has
/// too many digits, or if its sign has two readings.
pub fn read_length(text: &str, system: System, style: &NumberStyle) -> Result<TypedLength, ReadError> {
    let tidy = digits::tidy(text);
    if tidy.is_empty() {
        return Err(ReadError::Empty);
    }
    let number_ends =
        tidy.find(|sign: char| sign.is_ascii_alphabetic() || sign == '"' || !sign.is_ascii()).unwrap_or(tidy.len());
    let (number, name) = tidy.split_at(number_ends);
    let number = number.trim();
    let number = digits::number(number, style).map_err(|problem| problem.said_of(text, &tidy, number))?;
    let name = name.trim().trim_end_matches('.');
    let unit = match name.to_ascii_lowercase().as_str() {
        "" => Ok(LengthUnit::of(system)),
        "mm" | "millimetre" | "millimetres" | "millimeter" | "millimeters" => Ok(LengthUnit::Millimetre),
        "cm" | "centimetre" | "centimetres" | "centimeter" | "centimeters" => Ok(LengthUnit::Centimetre),
        "in" | "inch" | "inches" | "pulg" | "pulgada" | "pulgadas" | "\"" | "\u{201d}" | "\u{2033}" => {
            Ok(LengthUnit::Inch)
        }
        _ => Err(ReadError::NotALength { unit: name.to_string() }),
    };
    unit.map(|unit| TypedLength::new(number, unit))
}

fn unit_named(name: &str, wanted: Wanted, like: Dimension, system: System) -> Result<Unit, ReadError> {
    let name = name.trim().trim_end_matches('.').trim();
    if name.is_empty() {
        return Ok(wanted.unit);
    }
    let unit = names::unit(name, like, system).ok_or_else(|| ReadError::UnknownUnit { unit: name.to_string() })?;
    if wanted.dimensions.contains(&unit.dimension()) {
        Ok(unit)
    } else {
        Err(ReadError::WrongKind { unit, wanted: wanted.dimensions })
    }
}

/// Adds the parts up, in the first of their units that holds the sum in six decimals. A part that is not in
/// a smaller unit than the one before, or is not less than one of that, was not meant to be added:
/// "10 lb50 lb".
fn sum(parts: &[Amount], text: &str) -> Result<Amount, ReadError> {
    let first = match parts {
        [only] => return Ok(*only),
        [first, ..] => first.unit.dimension(),
        [] => return Err(ReadError::Empty),
    };
    let mut base = Exact::ZERO;
    let mut least = None;
    for part in parts {
        if part.unit.dimension() != first {
            return Err(ReadError::WrongKind { unit: part.unit, wanted: only(first) });
        }
        let measure = part.measure().map_err(|_| ReadError::TooLarge)?.base();
        if least.is_some_and(|least| measure >= least || part.unit.size() >= least) {
            return Err(ReadError::NotOneAmount { text: text.trim().to_string() });
        }
        least = Some(part.unit.size());
        base = base.plus(measure).map_err(|_| ReadError::TooLarge)?;
    }
    let in_unit = |part: &Amount| {
        let number = base.over(part.unit.size()).ok()?;
        let typed = number.rounded(TYPED_PLACES as u32);
        (typed == number).then(|| Amount::new(typed, part.unit))
    };
    let sum = parts.iter().find_map(in_unit).ok_or(ReadError::TooFine)?;
    if sum.number.keeps() { Ok(sum) } else { Err(ReadError::TooLarge) }
}

const fn only(dimension: Dimension) -> &'static [Dimension] {
    match dimension {
        Dimension::Volume => &[Dimension::Volume],
        Dimension::Mass => &[Dimension::Mass],
        Dimension::Count => &[Dimension::Count],
    }
}

fn not_a_number(text: &str) -> ReadError {
    ReadError::NotANumber { text: text.trim().to_string() }
}
