//! What is tried, as it stands in the fields of its page, and as the text that the page keeps of it.

use serde::{Deserialize, Serialize};

use super::WhatIf;
use crate::book::{Book, Conditions, ContainerId, Filled, OfferId, Scope};
use crate::foundation::measure::{Money, Overflow, Share};
use crate::sizes::side_by_side::SideBySide;

/// What is tried.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Tried {
    /// Other costs, fees and fills.
    pub conditions: Conditions,
    /// The price of one drink; of several drinks by how much each price rises.
    pub prices: Vec<(ContainerId, Money)>,
    /// The shares of all buyers that take these sizes.
    pub mix: Vec<(ContainerId, Share)>,
}

impl Tried {
    /// As a text.
    pub fn text(&self) -> String {
        serde_json::to_string(self).unwrap_or_default()
    }

    /// Reads what [`Tried::text`] writes; nothing is tried where it does not read.
    pub fn read(text: &str) -> Tried {
        serde_json::from_str(text).unwrap_or_default()
    }

    /// The same in the sizes that are compared, drink by drink.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn what_if(
        &self,
        scope: Scope,
        book: &Book,
        chosen: &[ContainerId],
        now: &SideBySide,
    ) -> Result<WhatIf, Overflow> {
        let fills: Vec<Filled> =
            self.conditions.fills.iter().filter(|filled| chosen.contains(&filled.container)).copied().collect();
        let mut what_if = WhatIf {
            conditions: Conditions { part: scope, fills, ..self.conditions.clone() },
            prices: Vec::new(),
            mix: self.mix.iter().filter(|(id, _)| chosen.contains(id)).copied().collect(),
        };
        for (container, price) in self.prices.iter().filter(|(id, _)| chosen.contains(id)) {
            match scope {
                Scope::Drink(drink) => what_if.prices.push((OfferId { drink, container: *container }, *price)),
                Scope::Menu | Scope::Kind(_) => what_if.prices.extend(now.raised(book, *container, *price)?),
            }
        }
        Ok(what_if)
    }
}
