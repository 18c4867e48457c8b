//! Where a price would stand among those seen nearby.

use super::menu::MenuToday;
use crate::book::{ContainerId, DrinkKind, Scope};
use crate::foundation::measure::{Money, Overflow, Volume};
use crate::sizes::market::{APART, Against, NoCurve, market, menu_size};

/// Where a price would stand among those seen nearby. What others ask is not what they sell: it forecasts
/// nothing.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Position {
    /// The size that the menu says, or else what is poured.
    pub size: Volume,
    /// How many prices of the kind were seen.
    pub seen: usize,
    /// How many of them at this size, and the lowest and highest of these.
    pub at_size: Option<(usize, Money, Money)>,
    /// What the curve through them says of the price at this size, or why there is none.
    pub against: Result<Against, NoCurve>,
}

impl MenuToday<'_> {
    /// Where a price would stand in a container. Returns `None` for a container without a size.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn position(&self, size: ContainerId, price: Money) -> Result<Option<Position>, Overflow> {
        let container = self.book.container(size);
        let Some(size) = container.map(menu_size).transpose()?.flatten() else { return Ok(None) };
        let market = market(self.book, self.kind(), self.day)?;
        let mut at_size: Option<(usize, Money, Money)> = None;
        for seen in &market.seen {
            let (small, large) = (seen.size.min(size), seen.size.max(size));
            if small.times(APART)? <= large {
                continue;
            }
            let (count, low, high) = at_size.unwrap_or((0, seen.price, seen.price));
            at_size = Some((count.saturating_add(1), low.min(seen.price), high.max(seen.price)));
        }
        let against = match &market.curve {
            Ok(curve) => Ok(curve.against(size, price)?),
            Err(why) => Err(*why),
        };
        Ok(Some(Position { size, seen: market.seen.len(), at_size, against }))
    }

    /// The kind of drink that this part of the menu has, if it is one.
    fn kind(&self) -> Option<DrinkKind> {
        match self.scope {
            Scope::Menu => None,
            Scope::Kind(kind) => Some(kind),
            Scope::Drink(id) => self.book.drink(id).map(|drink| drink.kind),
        }
    }
}
