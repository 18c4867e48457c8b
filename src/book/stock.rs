//! What is here, what was weighed, what is to be bought.

use serde::{Deserialize, Serialize};

use super::{Goods, PackId};
use crate::foundation::measure::{Amount, Date, Exact, Money};

/// What was counted or weighed on the shelf.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct OnHand {
    /// How much, as bought, 0 or more.
    pub amount: Amount,
    /// The day.
    pub day: Date,
}

/// One weighing on the way to the drink. What was not weighed is left out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Weighing {
    /// The day.
    pub day: Date,
    /// What was weighed in as bought: a mass.
    pub bought: Amount,
    /// What was left of it after trimming: a mass, at most what was bought.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub trimmed: Option<Amount>,
    /// The juice pressed from what was left: a mass, at most what went into the press.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pressed: Option<Amount>,
}

/// What is to be bought. It stays as it was made, whatever is planned or quoted since.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct BuyingList {
    /// The day on which it was made.
    pub day: Date,
    /// What is to be bought, each pack once.
    pub lines: Vec<ToBuy>,
}

/// Packs to be bought. The pack may no longer be quoted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct ToBuy {
    /// What is bought.
    pub goods: Goods,
    /// In which of its packs.
    pub pack: PackId,
    /// How many of them, above 0.
    pub packs: Exact,
    /// Whether they are bought.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub bought: bool,
    /// What was paid for one pack, where it was not the price quoted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub paid: Option<Money>,
}
