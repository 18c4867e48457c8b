//! What is tried, as it stands in the fields of its page, and as the text that the page keeps of it.

use serde::{Deserialize, Serialize};

use super::{Bought, WhatIf, WhatIfError};
use crate::book::{Book, ContainerId, Goods, OfferId, Scope};
use crate::foundation::measure::{Amount, Money, Share};
use crate::sizes::side_by_side::SideBySide;

/// What is tried.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Tried {
    /// How much more all ingredients cost.
    pub ingredients: Share,
    /// Goods that are bought in another pack, or at another price.
    pub bought: Vec<(Goods, Bought)>,
    /// Another target margin.
    pub target: Option<Share>,
    /// Another share that is thrown away.
    pub waste: Option<Share>,
    /// Another hourly wage.
    pub wage: Option<Money>,
    /// Another share that the payment provider takes.
    pub card_fee: Option<Share>,
    /// Another commission.
    pub commission: Option<Share>,
    /// The price of one drink; of several drinks by how much each price rises.
    pub prices: Vec<(ContainerId, Money)>,
    /// Containers poured up to another volume.
    pub fills: Vec<(ContainerId, Amount)>,
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
    /// A [`WhatIfError`].
    pub fn what_if(
        &self,
        scope: Scope,
        book: &Book,
        chosen: &[ContainerId],
        now: &SideBySide,
    ) -> Result<WhatIf, WhatIfError> {
        let mut what_if = WhatIf {
            ingredients: self.ingredients,
            bought: self.bought.clone(),
            target: self.target,
            waste: self.waste,
            wage: self.wage,
            card_fee: self.card_fee,
            commission: self.commission,
            mix: self.mix.iter().filter(|(id, _)| chosen.contains(id)).copied().collect(),
            ..WhatIf::default()
        };
        for (container, price) in self.prices.iter().filter(|(id, _)| chosen.contains(id)) {
            match scope {
                Scope::Drink(drink) => what_if.prices.push((OfferId { drink, container: *container }, *price)),
                Scope::Menu | Scope::Kind(_) => what_if.prices.extend(now.raised(book, *container, *price)?),
            }
        }
        for (container, amount) in self.fills.iter().filter(|(id, _)| chosen.contains(id)) {
            what_if.fills.push((*container, amount.volume()?.unwrap_or_default()));
        }
        Ok(what_if)
    }
}
