//! What an edit moved: each offer before and after.

use super::{Priced, Standing, Trouble};
use crate::book::OfferId;
use crate::measure::{Exact, Money, Share};

/// An offer on one side of an edit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Side {
    /// Where it stands.
    pub standing: Standing,
    /// Its full cost.
    pub cost: Option<Money>,
    /// Its margin at the price asked.
    pub margin: Option<Share>,
    /// The menu price suggested.
    pub suggested: Option<Money>,
    /// The menu price asked.
    pub price: Option<Money>,
}

/// An offer that an edit moved.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Move {
    /// The offer.
    pub offer: OfferId,
    /// Before; none where there was no offer.
    pub before: Option<Side>,
    /// After; none where there is no offer any more.
    pub after: Option<Side>,
}

impl Side {
    fn of(result: &Result<Priced, Trouble>) -> Side {
        let priced = result.as_ref().ok();
        Side {
            standing: Standing::from(result),
            cost: priced.and_then(|priced| priced.cost.total().ok()),
            margin: priced.and_then(Priced::margin),
            suggested: priced.and_then(|priced| priced.suggestion.ok()).map(|suggestion| suggestion.menu),
            price: priced.and_then(|priced| priced.asked).map(|asked| asked.menu),
        }
    }
}

impl Move {
    pub(super) fn new(
        offer: OfferId,
        before: Option<&Result<Priced, Trouble>>,
        after: Option<&Result<Priced, Trouble>>,
    ) -> Move {
        Move { offer, before: before.map(Side::of), after: after.map(Side::of) }
    }

    /// Whether it fell under target with this edit.
    pub fn fell(&self) -> bool {
        let under = |side: &Option<Side>| side.is_some_and(|side| side.standing == Standing::UnderTarget);
        under(&self.after) && !under(&self.before)
    }

    /// Those that fell under target first, then those under target before and after, then the
    /// rest; within each the lowest margin first.
    pub fn worst_first(mut moves: Vec<Move>) -> Vec<Move> {
        moves.sort_unstable_by_key(|moved| {
            let after = moved.after;
            let under = after.is_some_and(|side| side.standing == Standing::UnderTarget);
            let margin = after.and_then(|side| side.margin).map_or(Exact::ONE, Share::fraction);
            (!moved.fell(), !under, margin, moved.offer)
        });
        moves
    }
}
