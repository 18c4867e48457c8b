//! A temperature as a person typed it, such as that of a drink when it was measured.

use std::fmt;

use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

use super::exact::STORED_PLACES;
use super::{Exact, Overflow, System};

/// A scale of temperature.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scale {
    /// Water freezes at 32 and boils at 212.
    Fahrenheit,
    /// Water freezes at 0 and boils at 100.
    Celsius,
}

impl Scale {
    /// How it is written in a book.
    pub const fn symbol(self) -> &'static str {
        match self {
            Scale::Fahrenheit => "F",
            Scale::Celsius => "C",
        }
    }

    /// How people write it.
    pub const fn name(self) -> &'static str {
        match self {
            Scale::Fahrenheit => "°F",
            Scale::Celsius => "°C",
        }
    }

    /// The scale written with exactly this symbol in a book.
    fn from_symbol(symbol: &str) -> Option<Scale> {
        [Scale::Fahrenheit, Scale::Celsius].into_iter().find(|scale| scale.symbol() == symbol)
    }

    /// The scale of a bare temperature in `system`.
    pub const fn of(system: System) -> Scale {
        match system {
            System::UsCustomary => Scale::Fahrenheit,
            System::Metric | System::Imperial => Scale::Celsius,
        }
    }
}

/// Degrees of a scale, such as 40 °F. It is stored as it was typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Temperature {
    /// How many degrees.
    pub degrees: Exact,
    /// The scale.
    pub scale: Scale,
}

impl Temperature {
    /// `degrees` of `scale`.
    pub const fn new(degrees: Exact, scale: Scale) -> Temperature {
        Temperature { degrees, scale }
    }

    /// Degrees Celsius: degrees Fahrenheit less 32, times 5/9.
    ///
    /// # Errors
    /// [`Overflow`] if a number leaves the range of [`Exact`].
    pub fn celsius(self) -> Result<Exact, Overflow> {
        match self.scale {
            Scale::Celsius => Ok(self.degrees),
            Scale::Fahrenheit => self.degrees.minus(Exact::new(32, 0))?.times(Exact::new(5, 0))?.over(Exact::new(9, 0)),
        }
    }
}

/// `40 F`: the plain number, a blank, and the scale's symbol.
impl fmt::Display for Temperature {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}", self.degrees, self.scale.symbol())
    }
}

impl Serialize for Temperature {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Temperature {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Temperature, D::Error> {
        let text = std::borrow::Cow::<'de, str>::deserialize(deserializer)?;
        let read = text.split_once(' ').and_then(|(degrees, scale)| {
            let degrees = Exact::from_plain(degrees, STORED_PLACES)?;
            Some(Temperature { degrees, scale: Scale::from_symbol(scale)? })
        });
        read.ok_or_else(|| de::Error::custom(format_args!("{text:?} is not a temperature such as \"40 F\" or \"4 C\"")))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::exact;

    #[test]
    fn fahrenheit_is_counted_from_32_in_ninths_of_5() {
        let celsius = |degrees, scale| Temperature::new(exact(degrees), scale).celsius().unwrap();
        assert_eq!(celsius("32", Scale::Fahrenheit), Exact::ZERO);
        assert_eq!(celsius("68", Scale::Fahrenheit), exact("20"));
        assert_eq!(celsius("104", Scale::Fahrenheit), exact("40"));
        // 40 °F are 4.4 °C, repeating.
        assert_eq!(celsius("40", Scale::Fahrenheit).rounded(6), exact("4.444444"));
        assert_eq!(celsius("4.4", Scale::Celsius), exact("4.4"));
    }

    #[test]
    fn it_is_stored_as_it_was_typed() {
        for text in ["\"40 F\"", "\"4.4 C\""] {
            let read: Temperature = serde_json::from_str(text).unwrap();
            assert_eq!(serde_json::to_string(&read).unwrap(), text);
        }
        for text in ["\"40\"", "\"40 K\"", "\"F\"", "\"40F\"", "40"] {
            assert!(serde_json::from_str::<Temperature>(text).is_err(), "{text}");
        }
    }
}
