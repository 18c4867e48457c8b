//! The brimful volume of a container, and how the owner knows it.

use std::fmt;

use serde::de::{self, MapAccess, Unexpected, Visitor};
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use crate::foundation::measure::{Amount, Length, Overflow, TypedLength, Volume};
use crate::foundation::shape::Frustum;

/// The brimful volume of a container, and how the owner knows it.
///
/// A weighed one is stored as the amount alone, any other as an object that names the way.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Brimful {
    /// A container that was filled with water and weighed, or for which the maker states the volume. No
    /// heights are known.
    Weighed(Amount),
    /// A cup of which base, rim and height were measured.
    Tapered(Tapered),
    /// A bottle into which known amounts were poured. The last reading is at the rim.
    Poured(Vec<Reading>),
}

/// The inside of a round cup with straight sides.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Tapered {
    /// Diameter at the base.
    pub base: TypedLength,
    /// Diameter at the rim.
    pub rim: TypedLength,
    /// Height from the base to the rim.
    pub height: TypedLength,
}

/// A known volume, and how high it stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Reading {
    /// Height above the base.
    pub height: TypedLength,
    /// Volume up to there.
    pub volume: Amount,
}

impl Tapered {
    /// The cup as a frustum.
    ///
    /// # Errors
    /// [`Overflow`] if a number leaves the range that can be computed.
    pub fn frustum(&self) -> Result<Frustum, Overflow> {
        Ok(Frustum { base: self.base.length()?, rim: self.rim.length()?, height: self.height.length()? })
    }
}

impl Brimful {
    /// The volume to the rim. Returns `None` if it is given in another dimension, or if there are no readings.
    ///
    /// # Errors
    /// [`Overflow`] if a number leaves the range that can be computed.
    pub fn volume(&self) -> Result<Option<Volume>, Overflow> {
        match self {
            Brimful::Weighed(amount) => amount.volume(),
            Brimful::Tapered(tapered) => Ok(Some(tapered.frustum()?.volume()?.as_part())),
            Brimful::Poured(readings) => readings.last().map_or(Ok(None), |last| last.volume.volume()),
        }
    }

    /// The height of the rim above the base. Returns `None` if no heights are known.
    ///
    /// # Errors
    /// [`Overflow`] if a number leaves the range that can be computed.
    pub fn height(&self) -> Result<Option<Length>, Overflow> {
        match self {
            Brimful::Weighed(_) => Ok(None),
            Brimful::Tapered(tapered) => tapered.height.length().map(Some),
            Brimful::Poured(readings) => readings.last().map(|last| last.height.length()).transpose(),
        }
    }
}

/// The ways that are stored by name.
#[derive(Deserialize)]
#[serde(rename_all = "kebab-case")]
enum Way {
    Tapered,
    Poured,
}

impl Serialize for Brimful {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Brimful::Weighed(amount) => amount.serialize(serializer),
            Brimful::Tapered(tapered) => serializer.serialize_newtype_variant("Brimful", 1, "tapered", tapered),
            Brimful::Poured(readings) => serializer.serialize_newtype_variant("Brimful", 2, "poured", readings),
        }
    }
}

impl<'de> Deserialize<'de> for Brimful {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Brimful, D::Error> {
        deserializer.deserialize_any(TextOrObject)
    }
}

struct TextOrObject;

impl<'de> Visitor<'de> for TextOrObject {
    type Value = Brimful;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a volume such as \"16 fl oz\", or the measures of a cup or bottle")
    }

    fn visit_str<E: de::Error>(self, text: &str) -> Result<Brimful, E> {
        Amount::deserialize(de::value::StrDeserializer::new(text)).map(Brimful::Weighed)
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Brimful, A::Error> {
        match map.next_key()? {
            Some(Way::Tapered) => map.next_value().map(Brimful::Tapered),
            Some(Way::Poured) => map.next_value().map(Brimful::Poured),
            None => Err(de::Error::invalid_type(Unexpected::Map, &"enum")),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::{amount, length};

    #[test]
    fn the_last_reading_is_the_rim() {
        let reading = |height, volume| Reading { height: length(height), volume: amount(volume) };
        let bottle = Brimful::Poured(vec![reading("40 mm", "100 mL"), reading("9 cm", "250 mL")]);
        assert_eq!(bottle.volume(), amount("250 mL").volume());
        assert_eq!(bottle.height(), length("90 mm").length().map(Some));
        assert_eq!(Brimful::Weighed(amount("1 L")).height(), Ok(None));
    }

    #[test]
    fn each_way_is_stored_and_read_again() {
        let cup = Tapered { base: length("2.5 in"), rim: length("3.5 in"), height: length("4.75 in") };
        let reading = |height, volume| Reading { height: length(height), volume: amount(volume) };
        for (brimful, stored) in [
            (Brimful::Weighed(amount("16.5 fl oz")), r#""16.5 fl oz""#),
            (Brimful::Tapered(cup), r#"{"tapered":{"base":"2.5 in","rim":"3.5 in","height":"4.75 in"}}"#),
            (
                Brimful::Poured(vec![reading("40 mm", "100 mL"), reading("9 cm", "250 mL")]),
                r#"{"poured":[{"height":"40 mm","volume":"100 mL"},{"height":"9 cm","volume":"250 mL"}]}"#,
            ),
        ] {
            assert_eq!(serde_json::to_string(&brimful).unwrap(), stored);
            assert_eq!(serde_json::from_str::<Brimful>(stored).unwrap(), brimful);
        }
        for spoilt in ["12", "null", "{}", r#"{"round":1}"#, r#""16 stone""#, r#"{"tapered":{"base":"1 in"}}"#] {
            assert!(serde_json::from_str::<Brimful>(spoilt).is_err(), "{spoilt}");
        }
    }
}
