//! An amount as a person typed it: a number and its unit. What is stored is what was typed.

use std::fmt;

use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

use super::exact::STORED_PLACES;
use super::{Exact, Measure, Overflow, Unit, Volume};

/// A number of a unit, such as 40 lb.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Amount {
    /// How many.
    pub number: Exact,
    /// Of what.
    pub unit: Unit,
}

impl Amount {
    /// `number` of `unit`.
    pub const fn new(number: Exact, unit: Unit) -> Amount {
        Amount { number, unit }
    }

    /// The amount in its base unit.
    pub fn measure(self) -> Result<Measure, Overflow> {
        self.unit.measure(self.number)
    }

    /// The volume, where it is one.
    pub fn volume(self) -> Result<Option<Volume>, Overflow> {
        Ok(match self.measure()? {
            Measure::Volume(volume) => Some(volume),
            Measure::Mass(_) | Measure::Count(_) => None,
        })
    }
}

/// `40 lb`: the number plain, then the unit's symbol.
impl fmt::Display for Amount {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}", self.number, self.unit)
    }
}

impl Serialize for Amount {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Amount {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Amount, D::Error> {
        let text = std::borrow::Cow::<'de, str>::deserialize(deserializer)?;
        let read = text.split_once(' ').and_then(|(number, unit)| {
            let number = Exact::from_plain(number, STORED_PLACES)?;
            Some(Amount { number, unit: Unit::from_symbol(unit)? })
        });
        read.ok_or_else(|| {
            de::Error::custom(format_args!("{text:?} is not an amount such as \"40 lb\" or \"16 fl oz\""))
        })
    }
}
