//! What was sold, week by week, and trials of a change judged by it.

use serde::{Deserialize, Serialize};

use super::{ContainerId, DrinkId, DrinkKind, OfferId, TrialId};
use crate::foundation::measure::{Date, Exact, Money};

/// What was sold in one week. It stays as it was when prices or recipes change later.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Week {
    /// The Monday that it begins on: its id.
    pub monday: Date,
    /// What was sold, each drink and size once.
    pub sold: Vec<Sold>,
}

/// How many of a drink were sold in a size. The size may no longer be on the menu.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Sold {
    /// The drink.
    pub drink: DrinkId,
    /// What it was sold in.
    pub container: ContainerId,
    /// How many, 0 or more.
    pub units: Exact,
    /// What one of them contributed when this was written down.
    pub contribution: Money,
}

impl Sold {
    /// The drink and the container as the id of an offer, which may no longer be there.
    pub fn offer(&self) -> OfferId {
        OfferId { drink: self.drink, container: self.container }
    }
}

/// A part of the menu.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Scope {
    /// All of it.
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
    /// Whose sales it is judged by.
    pub scope: Scope,
    /// The Monday of the first week that counts as before.
    pub first: Date,
    /// The Monday of the first week with the change, after `first`.
    pub start: Date,
    /// The Monday of the last week of the trial, not before `start`; none while it runs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub last: Option<Date>,
}
