//! Packs: what a supplier asks for how much.

use serde::{Deserialize, Serialize};

use super::{IngredientId, PackId, PackagingId};
use crate::measure::{Amount, Exact, Money};

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
    #[serde(default, skip_serializing_if = "Money::is_zero")]
    pub surcharge: Money,
    /// How many are bought at a time.
    #[serde(default = "Exact::one", skip_serializing_if = "Exact::is_one")]
    pub at_a_time: Exact,
    /// Lower prices for more at a time.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub tiers: Vec<Tier>,
}

/// The price of a pack from so many at a time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Tier {
    /// From how many packs at a time, above 1.
    pub from: Exact,
    /// The price of one pack.
    pub price: Money,
}

impl Pack {
    /// The price of one pack when `packs` are bought at a time.
    pub fn price_at(&self, packs: Exact) -> Money {
        let reached = self.tiers.iter().filter(|tier| tier.from <= packs);
        reached.max_by_key(|tier| tier.from).map_or(self.price, |tier| tier.price)
    }

    /// The price of one pack as it is bought.
    pub fn price_now(&self) -> Money {
        self.price_at(self.at_a_time)
    }

    /// The place of that price, to write a new one to.
    pub fn price_now_mut(&mut self) -> &mut Money {
        let at_a_time = self.at_a_time;
        let reached = self.tiers.iter_mut().filter(|tier| tier.from <= at_a_time);
        reached.max_by_key(|tier| tier.from).map_or(&mut self.price, |tier| &mut tier.price)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::{exact, money, pack};

    #[test]
    fn the_price_is_that_of_the_highest_tier_reached() {
        let tier = |from: &str, price: &str| Tier { from: exact(from), price: money(price) };
        let mut case = Pack { tiers: vec![tier("10", "33"), tier("5", "36")], ..pack(1, "250 ea", "40") };
        let at = |packs: &str| case.price_at(exact(packs));
        assert_eq!(["1", "4.99", "5", "9", "10", "100"].map(at), ["40", "40", "36", "36", "33", "33"].map(money));
        case.at_a_time = exact("5");
        assert_eq!(case.price_now(), money("36"));
        *case.price_now_mut() = money("35");
        assert_eq!((case.price, case.tiers[1].price), (money("40"), money("35")));
    }
}
