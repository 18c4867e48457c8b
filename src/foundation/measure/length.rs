//! A length as a person typed it, such as the inner height of a cup or bottle.

use std::fmt;

use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

use super::exact::STORED_PLACES;
use super::{Exact, Length, Overflow, System};

/// A unit of length, with its exact size (the inch: NIST Handbook 44 Appendix C).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum LengthUnit {
    /// 1 mm.
    Millimetre,
    /// 10 mm.
    Centimetre,
    /// 25.4 mm.
    Inch,
}

impl LengthUnit {
    /// Every unit.
    pub const ALL: &[LengthUnit] = &[LengthUnit::Millimetre, LengthUnit::Centimetre, LengthUnit::Inch];

    /// How it is written in a book and on the screen.
    pub const fn symbol(self) -> &'static str {
        match self {
            LengthUnit::Millimetre => "mm",
            LengthUnit::Centimetre => "cm",
            LengthUnit::Inch => "in",
        }
    }

    /// Its exact size in millimetres.
    pub const fn size(self) -> Exact {
        match self {
            LengthUnit::Millimetre => Exact::new(1, 0),
            LengthUnit::Centimetre => Exact::new(10, 0),
            LengthUnit::Inch => Exact::new(254, 1),
        }
    }

    /// The unit written with exactly this symbol in a book.
    pub fn from_symbol(symbol: &str) -> Option<LengthUnit> {
        LengthUnit::ALL.iter().copied().find(|unit| unit.symbol() == symbol)
    }

    /// The unit of a bare length in `system`.
    pub const fn of(system: System) -> LengthUnit {
        match system {
            System::UsCustomary => LengthUnit::Inch,
            System::Metric | System::Imperial => LengthUnit::Millimetre,
        }
    }
}

/// A number and its unit of length, such as 3.5 in. It is stored as it was typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TypedLength {
    /// The number.
    pub number: Exact,
    /// The unit.
    pub unit: LengthUnit,
}

impl TypedLength {
    /// `number` of `unit`.
    pub const fn new(number: Exact, unit: LengthUnit) -> TypedLength {
        TypedLength { number, unit }
    }

    /// The length in millimetres.
    ///
    /// # Errors
    /// [`Overflow`] if a number leaves the range of [`Exact`].
    pub fn length(self) -> Result<Length, Overflow> {
        self.number.times(self.unit.size()).map(Length::from_millimetres)
    }
}

/// `3.5 in`: the plain number, a blank, and the unit's symbol.
impl fmt::Display for TypedLength {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}", self.number, self.unit.symbol())
    }
}

impl Serialize for TypedLength {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for TypedLength {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<TypedLength, D::Error> {
        let text = std::borrow::Cow::<'de, str>::deserialize(deserializer)?;
        let read = text.split_once(' ').and_then(|(number, unit)| {
            let number = Exact::from_plain(number, STORED_PLACES)?;
            Some(TypedLength { number, unit: LengthUnit::from_symbol(unit)? })
        });
        read.ok_or_else(|| de::Error::custom(format_args!("{text:?} is not a length such as \"90 mm\" or \"3.5 in\"")))
    }
}
