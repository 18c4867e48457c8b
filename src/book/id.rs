//! Ids of records. Whoever makes a record draws its id at random; the book does not.

use std::fmt;

use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

fn parse(text: &str) -> Option<u64> {
    let canonical = !text.starts_with('0')
        && (1..=16).contains(&text.len())
        && text.bytes().all(|byte| matches!(byte, b'0'..=b'9' | b'a'..=b'f'));
    canonical.then(|| u64::from_str_radix(text, 16).ok()).flatten()
}

macro_rules! id {
    ($(#[$about:meta])* $name:ident) => {
        $(#[$about])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub struct $name(u64);

        impl $name {
            /// The lowest id: before every record.
            pub const FIRST: $name = $name(0);
            /// The highest id: after every record.
            pub const LAST: $name = $name(u64::MAX);

            /// The id of a random number. Zero, which no record has, becomes one.
            pub const fn from_random(number: u64) -> $name {
                $name(if number == 0 { 1 } else { number })
            }

            /// Its number.
            pub const fn number(self) -> u64 {
                self.0
            }

            /// Reads 1 to 16 lower-case hexadecimal digits without leading zeros. Returns `None` for
            /// anything else.
            pub fn from_text(text: &str) -> Option<$name> {
                parse(text).map($name)
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write!(f, "{:x}", self.0)
            }
        }

        impl Serialize for $name {
            fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.collect_str(self)
            }
        }

        impl<'de> Deserialize<'de> for $name {
            fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<$name, D::Error> {
                let text = std::borrow::Cow::<'de, str>::deserialize(deserializer)?;
                $name::from_text(&text).ok_or_else(|| {
                    de::Error::custom(format_args!("{text:?} is not an id of 1 to 16 hexadecimal digits"))
                })
            }
        }
    };
}

id! {
    /// A book's id.
    BookId
}
id! {
    /// An ingredient's id.
    IngredientId
}
id! {
    /// The id of a piece of packaging.
    PackagingId
}
id! {
    /// The id of a set of packaging that containers share.
    PackagingSetId
}
id! {
    /// A pack's id.
    PackId
}
id! {
    /// A container's id.
    ContainerId
}
id! {
    /// A drink's id.
    DrinkId
}
id! {
    /// The id of a line within its drink.
    LineId
}

id! {
    /// The id of a price seen elsewhere.
    SeenPriceId
}
id! {
    /// A trial's id.
    TrialId
}
id! {
    /// A scenario's id.
    ScenarioId
}

/// An offer's id: the pair of its drink and its container, written `DRINK-CONTAINER`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct OfferId {
    /// The drink.
    pub drink: DrinkId,
    /// The container.
    pub container: ContainerId,
}

impl OfferId {
    /// Reads `DRINK-CONTAINER`. Returns `None` for anything else.
    pub fn from_text(text: &str) -> Option<OfferId> {
        let (drink, container) = text.split_once('-')?;
        Some(OfferId { drink: DrinkId::from_text(drink)?, container: ContainerId::from_text(container)? })
    }
}

impl fmt::Display for OfferId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}-{}", self.drink, self.container)
    }
}
