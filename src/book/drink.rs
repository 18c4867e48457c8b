//! Drinks and their recipes.

use serde::{Deserialize, Serialize};

use super::{DrinkId, IngredientId, LineId, OfferId, Stage};
use crate::measure::{Amount, Exact, Money, Share, Time};

/// A drink: a recipe written once at a reference size, for every size it is sold in.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Drink {
    /// Its id.
    pub id: DrinkId,
    /// Its name on the menu.
    pub name: String,
    /// How it is made.
    pub kind: DrinkKind,
    /// The size that the recipe is written at.
    pub reference: Amount,
    /// What goes in, in the order of adding.
    pub lines: Vec<Line>,
    /// What stays in the press or jug, as a share of what is made, in [0, 1).
    #[serde(default)]
    pub process_loss: Share,
    /// Hands' time.
    #[serde(default)]
    pub labour: Labour,
    /// Paid per drink for treatment, such as a pressure toll.
    #[serde(default)]
    pub toll: Money,
    /// Share of what is made and thrown away, in [0, 1); the book's where none is given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unsold: Option<Share>,
    /// Target margin, in [0, 1); the book's where none is given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub target: Option<Share>,
}

/// How a drink is made.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum DrinkKind {
    /// Pressed juice.
    Pressed,
    /// Blended, such as a smoothie.
    Blended,
    /// Poured over ice.
    OverIce,
    /// A shot.
    Shot,
}

impl DrinkKind {
    /// Every kind.
    pub const ALL: &[DrinkKind] = &[DrinkKind::Pressed, DrinkKind::Blended, DrinkKind::OverIce, DrinkKind::Shot];
}

/// One ingredient of a recipe.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Line {
    /// Its id within the drink.
    pub id: LineId,
    /// Of what.
    pub ingredient: IngredientId,
    /// At which stage the amount is meant.
    pub stage: Stage,
    /// How much, at the reference size. A number of pieces counts pieces as bought.
    pub amount: Amount,
    /// How it follows the size.
    pub scaling: Scaling,
}

/// How a line follows the size of the drink.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Scaling {
    /// In proportion to the drink.
    InProportion,
    /// The same in every size.
    Fixed,
}

/// Hands' time for a drink.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Labour {
    /// Per drink, whatever its size.
    #[serde(default)]
    pub per_drink: Time,
    /// Per litre of drink.
    #[serde(default)]
    pub per_litre: Time,
    /// For a whole batch, shared by its drinks.
    #[serde(default)]
    pub per_batch: Time,
    /// Drinks in a batch, at least 1.
    #[serde(default = "one", skip_serializing_if = "is_one")]
    pub batch: Exact,
}

/// No time at all, drink by drink.
impl Default for Labour {
    fn default() -> Labour {
        Labour { per_drink: Time::ZERO, per_litre: Time::ZERO, per_batch: Time::ZERO, batch: one() }
    }
}

fn one() -> Exact {
    Exact::ONE
}

fn is_one(number: &Exact) -> bool {
    *number == Exact::ONE
}

/// A drink sold in a container, and the price asked for it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Offer {
    /// The drink.
    pub drink: DrinkId,
    /// The container.
    pub container: super::ContainerId,
    /// The menu price, or none yet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub price: Option<Money>,
}

impl Offer {
    /// Its id: the pair of drink and container.
    pub fn id(&self) -> OfferId {
        OfferId { drink: self.drink, container: self.container }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Book, Record};
    use crate::support::settings;

    #[test]
    fn a_stored_drink_may_leave_out_what_is_nothing() {
        let stored = r#"{"id": "1", "name": "Water", "kind": "shot", "reference": "2 fl oz", "lines": []}"#;
        let drink: Drink = serde_json::from_str(stored).unwrap();
        assert_eq!(drink.labour.batch, Exact::ONE);
        let records = [Record::Settings(Box::new(settings())), Record::Drink(drink)];
        assert_eq!(Book::from_records(records).map(|_| ()), Ok(()));
    }
}
