//! The batch of a day: what is made, and what of the work is done.

use serde::{Deserialize, Serialize};

use super::{ContainerId, DrinkId, IngredientId, OfferId, Stage};
use crate::foundation::measure::{Date, Exact, Overflow};

/// The batch of a day: the drinks to be made, and what of the work is done.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Batch {
    /// The day: its id.
    pub day: Date,
    /// What is made: each drink in a size once. It may no longer be on the menu.
    pub makes: Vec<Make>,
    /// The ingredients that are ready, each at a stage once. An entry for an ingredient that is no longer
    /// needed, or no longer in the book, has no effect.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub ready: Vec<Ready>,
}

/// A drink in a size, and how many are made of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Make {
    /// The drink.
    pub drink: DrinkId,
    /// The container.
    pub container: ContainerId,
    /// How many: a whole number, 0 or more.
    pub units: Exact,
    /// Whether they are filled.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub filled: bool,
    /// For how many of them the ingredients were deducted from stock: a whole number, 0 or more.
    #[serde(default, skip_serializing_if = "Exact::is_zero")]
    pub off_shelf: Exact,
}

impl Batch {
    /// Whether it is shown as a batch: drinks are planned, or it is new and empty. A batch that was deleted
    /// has only drinks that were deducted from stock.
    pub fn is_planned(&self) -> bool {
        self.makes.is_empty() || self.planned().next().is_some()
    }

    /// The drinks that are planned, without those that are only kept since they were deducted from stock.
    pub fn planned(&self) -> impl Iterator<Item = &Make> {
        self.makes.iter().filter(|make| !make.is_only_off_shelf())
    }
}

impl Make {
    /// Whether it is no longer planned, and only kept so that it is not deducted from stock twice.
    pub fn is_only_off_shelf(&self) -> bool {
        self.units.is_zero() && self.off_shelf.is_positive()
    }

    /// How many of them are not deducted from stock yet.
    ///
    /// # Errors
    /// [`Overflow`] if a number leaves the range that can be computed.
    pub fn on_shelf(&self) -> Result<Exact, Overflow> {
        Ok(self.units.minus(self.off_shelf)?.max(Exact::ZERO))
    }

    /// The id of the offer of this drink and container. The book may no longer have that offer.
    pub fn offer(&self) -> OfferId {
        OfferId { drink: self.drink, container: self.container }
    }
}

/// An ingredient that was brought to a stage.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Ready {
    /// The ingredient.
    pub ingredient: IngredientId,
    /// The stage at which it goes into drinks.
    pub stage: Stage,
}
