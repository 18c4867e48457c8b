//! What is made on a day.

use serde::{Deserialize, Serialize};

use super::{ContainerId, DrinkId, IngredientId, OfferId, Stage};
use crate::foundation::measure::{Date, Exact, Overflow};

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

impl Batch {
    /// Whether something is planned, or nothing was so far: a plan that was deleted has nothing
    /// left but what came off the shelf.
    pub fn is_planned(&self) -> bool {
        self.makes.is_empty() || self.planned().next().is_some()
    }

    /// What is planned, without drinks that are kept for what came off the shelf alone.
    pub fn planned(&self) -> impl Iterator<Item = &Make> {
        self.makes.iter().filter(|make| !make.is_only_off_shelf())
    }
}

impl Make {
    /// Whether it is out of the plan, and kept so that what it took comes off the shelf once.
    pub fn is_only_off_shelf(&self) -> bool {
        self.units.is_zero() && self.off_shelf.is_positive()
    }

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
