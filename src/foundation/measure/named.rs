//! Enums whose values are stored by name.

use std::borrow::Cow;

use serde::{Deserialize, Deserializer, de};

/// Stores each value of an enum by its name. What serde derives for an enum also reads an object with
/// that name, which was never part of the format, and costs 0.3 kB to load for each enum.
macro_rules! stored_by_name {
    ($type:ident { $($value:ident = $name:literal,)* }) => {
        impl $type {
            /// Every value, in order.
            pub const ALL: &[$type] = &[$($type::$value),*];

            /// The name it is stored by.
            pub const fn stored_name(self) -> &'static str {
                match self {
                    $($type::$value => $name,)*
                }
            }
        }

        impl serde::Serialize for $type {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.serialize_str(self.stored_name())
            }
        }

        impl<'de> serde::Deserialize<'de> for $type {
            fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<$type, D::Error> {
                $crate::foundation::measure::read_by_name(deserializer, &[$($name),*], $type::ALL)
            }
        }
    };
}
pub(crate) use stored_by_name;

/// Reads a name, and returns the value of that name.
pub(crate) fn read_by_name<'de, D: Deserializer<'de>, T: Copy>(
    deserializer: D,
    names: &'static [&'static str],
    values: &[T],
) -> Result<T, D::Error> {
    let name = Cow::<'de, str>::deserialize(deserializer)?;
    let found = names.iter().zip(values).find(|(known, _)| **known == name);
    found.map(|(_, value)| *value).ok_or_else(|| de::Error::unknown_variant(&name, names))
}
