//! What a book file says it is, read before anything else so that newer and foreign files are
//! told apart from broken ones.

use std::fmt;

use serde::de::{Deserialize, Deserializer, Error, IgnoredAny, MapAccess, SeqAccess, Visitor};

/// Format and version; all else is passed over, yet must be JSON.
#[derive(Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct Header {
    pub(super) format: Said,
    pub(super) version: Said,
}

/// A value where text or a whole number is expected and anything may stand.
#[derive(Default)]
pub(super) enum Said {
    /// It is not there.
    #[default]
    Nothing,
    /// Text.
    Text(String),
    /// A whole number, 0 or more.
    Number(u64),
    /// Something else.
    Other,
}

impl<'de> Deserialize<'de> for Said {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Said, D::Error> {
        deserializer.deserialize_any(AnyValue)
    }
}

struct AnyValue;

impl<'de> Visitor<'de> for AnyValue {
    type Value = Said;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("any value")
    }

    fn visit_str<E: Error>(self, text: &str) -> Result<Said, E> {
        Ok(Said::Text(text.to_string()))
    }

    fn visit_u64<E: Error>(self, number: u64) -> Result<Said, E> {
        Ok(Said::Number(number))
    }

    fn visit_i64<E: Error>(self, _: i64) -> Result<Said, E> {
        Ok(Said::Other)
    }

    fn visit_f64<E: Error>(self, _: f64) -> Result<Said, E> {
        Ok(Said::Other)
    }

    fn visit_bool<E: Error>(self, _: bool) -> Result<Said, E> {
        Ok(Said::Other)
    }

    fn visit_unit<E: Error>(self) -> Result<Said, E> {
        Ok(Said::Other)
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<Said, A::Error> {
        while list.next_element::<IgnoredAny>()?.is_some() {}
        Ok(Said::Other)
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Said, A::Error> {
        while map.next_entry::<IgnoredAny, IgnoredAny>()?.is_some() {}
        Ok(Said::Other)
    }
}
