//! Stock, weighings, and the buying list.

use serde::{Deserialize, Serialize};

use super::{Goods, PackId};
use crate::foundation::measure::{Amount, Date, Exact, Money};

/// A count of what is on hand.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct OnHand {
    /// How much, as bought, 0 or more.
    pub amount: Amount,
    /// The day.
    pub day: Date,
}

/// One entry of the yield log: what an ingredient weighed at each stage, as far as it was weighed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Weighing {
    /// The day.
    pub day: Date,
    /// Its mass as bought.
    pub bought: Amount,
    /// Its mass after trimming, at most that as bought.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub trimmed: Option<Amount>,
    /// The mass of its juice, at most that of what was pressed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pressed: Option<Amount>,
}

/// The buying list. It stays as it was made, whatever is planned or quoted since.
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
    /// The pack in which it is bought.
    pub pack: PackId,
    /// How many packs, above 0.
    pub packs: Exact,
    /// Whether they are bought.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub bought: bool,
    /// What was paid for one pack, or `None` if it was the quoted price.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub paid: Option<Money>,
}
