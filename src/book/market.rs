//! Prices seen at other places.

use serde::{Deserialize, Serialize};

use super::{DrinkKind, SeenPriceId};
use crate::foundation::measure::{Amount, Date, Money};

/// A price seen at another place.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct SeenPrice {
    /// Its id.
    pub id: SeenPriceId,
    /// The place, in the person's own words.
    pub place: String,
    /// The kind of drink.
    pub kind: DrinkKind,
    /// Its size, a volume.
    pub size: Amount,
    /// The price on the menu there.
    pub price: Money,
    /// The day on which it was seen.
    pub day: Date,
}
