//! Packs: what a supplier asks for how much.

use serde::{Deserialize, Serialize};

use super::{IngredientId, PackId, PackagingId};
use crate::measure::{Amount, Money};

/// What is bought in packs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Goods {
    /// An ingredient.
    Ingredient(IngredientId),
    /// Packaging, by the piece.
    Packaging(PackagingId),
}

/// A supplier's quote for a pack. Price and contents are kept as a pair: a stored unit price
/// would lose thirds.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Pack {
    /// Its id.
    pub id: PackId,
    /// Who sells it, in the owner's words; may be empty.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub supplier: String,
    /// How much it holds, as bought.
    pub contents: Amount,
    /// What is paid for it.
    pub price: Money,
    /// Delivery or a deposit that is not paid back, per pack.
    #[serde(default, skip_serializing_if = "is_nothing")]
    pub surcharge: Money,
}

fn is_nothing(money: &Money) -> bool {
    *money == Money::ZERO
}
