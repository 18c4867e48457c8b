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
    /// Where, in the person's own words.
    pub place: String,
    /// What kind of drink.
    pub kind: DrinkKind,
    /// Its size, a volume.
    pub size: Amount,
    /// What the menu there asked.
    pub price: Money,
    /// When.
    pub day: Date,
}
