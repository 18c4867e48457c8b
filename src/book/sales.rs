//! What was sold, week by week, and trials of a change judged by it.

use serde::{Deserialize, Serialize};

use super::{ContainerId, DrinkId, DrinkKind, OfferId, TrialId};
use crate::foundation::measure::{Date, Exact, Money};

/// The sales of one week. They stay as they are when prices or recipes change later.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Week {
    /// The Monday on which it begins: its id.
    pub monday: Date,
    /// What was sold: each drink in a size once.
    pub sold: Vec<Sold>,
}

/// How many of a drink were sold in a size. It may no longer be on the menu.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Sold {
    /// The drink.
    pub drink: DrinkId,
    /// The container.
    pub container: ContainerId,
    /// How many, 0 or more.
    pub units: Exact,
    /// The contribution of one of them when this was written down.
    pub contribution: Money,
    /// The overhead that this contribution bears, or `None` where it was written down before that was kept.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub overhead: Option<Money>,
}

impl Sold {
    /// The id of the offer of this drink and container. The book may no longer have that offer.
    pub fn offer(&self) -> OfferId {
        OfferId { drink: self.drink, container: self.container }
    }
}

/// A part of the menu.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Scope {
    /// All of it.
    #[default]
    Menu,
    /// The drinks of one kind.
    Kind(DrinkKind),
    /// One drink.
    Drink(DrinkId),
}

/// A change under trial: the weeks before it against the weeks since.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Trial {
    /// Its id.
    pub id: TrialId,
    /// What was changed.
    pub name: String,
    /// The part of the menu by whose sales it is judged.
    pub scope: Scope,
    /// The Monday of the first week that counts as before.
    pub first: Date,
    /// The Monday of the first week with the change, after `first`.
    pub start: Date,
    /// The Monday of the last week of the trial, not before `start`, or `None` while it runs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub last: Option<Date>,
}
