//! What is made on a day.

use serde::{Deserialize, Serialize};

use super::{ContainerId, DrinkId, IngredientId, OfferId, Stage};
use crate::measure::{Date, Exact, Overflow};

/// The drinks to be made on one day, and what of the work is done.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Batch {
    /// The day: its id.
    pub day: Date,
    /// What is made, each drink and size once. It need not be on the menu any more.
    pub makes: Vec<Make>,
    /// What is ready of the ingredients, each once. A tick of what is no longer needed means
    /// nothing, also where the ingredient is gone.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub ready: Vec<Ready>,
}

/// So many of a drink in a size.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Make {
    /// The drink.
    pub drink: DrinkId,
    /// What it is filled into.
    pub container: ContainerId,
    /// How many: a whole number, 0 or more.
    pub units: Exact,
    /// Whether they are filled.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub filled: bool,
    /// For how many of them what they took is off the shelf: a whole number, 0 or more.
    #[serde(default, skip_serializing_if = "Exact::is_zero")]
    pub off_shelf: Exact,
}

impl Make {
    /// How many of them must still be made of what is on the shelf, or were and are not taken off.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn on_shelf(&self) -> Result<Exact, Overflow> {
        Ok(self.units.minus(self.off_shelf)?.max(Exact::ZERO))
    }

    /// The drink and the container as the id of an offer, which may no longer be there.
    pub fn offer(&self) -> OfferId {
        OfferId { drink: self.drink, container: self.container }
    }
}

/// An ingredient that is brought to a stage.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Ready {
    /// The ingredient.
    pub ingredient: IngredientId,
    /// At which stage it goes into drinks.
    pub stage: Stage,
}
