//! What is tried, as it stands in the fields.

use crate::book::{Book, ContainerId, Goods, OfferId, Scope};
use crate::foundation::measure::{Amount, Money, Share};
use crate::sizes::side_by_side::{Bought, SideBySide, WhatIf, WhatIfError};

/// What is tried.
#[derive(Clone, Default, PartialEq)]
pub struct Tried {
    pub ingredients: Share,
    pub bought: Vec<(Goods, Bought)>,
    pub target: Option<Share>,
    pub waste: Option<Share>,
    pub wage: Option<Money>,
    pub card_fee: Option<Share>,
    pub commission: Option<Share>,
    /// The price of one drink; of several drinks by how much each price rises.
    pub prices: Vec<(ContainerId, Money)>,
    pub fills: Vec<(ContainerId, Amount)>,
    pub mix: Vec<(ContainerId, Share)>,
}

impl Tried {
    /// The same in the sizes that are compared, drink by drink.
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

/// What is tried of one thing.
pub fn found<I: PartialEq, T: Copy>(list: &[(I, T)], id: I) -> Option<T> {
    list.iter().find(|(of, _)| *of == id).map(|(_, value)| *value)
}

/// Tries something of one thing, or nothing any more.
pub fn put<I: PartialEq + Copy, T>(list: &mut Vec<(I, T)>, id: I, value: Option<T>) {
    list.retain(|(of, _)| *of != id);
    list.extend(value.map(|value| (id, value)));
}
