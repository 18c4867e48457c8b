//! What an owner says for a question, beside what the book has.

use crate::book::{ContainerId, OfferId};
use crate::drink::price::Hands;
use crate::foundation::measure::{Exact, Money, Share};

/// What an owner says for a question. Nothing of it is in the book.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Told {
    /// Menu prices then, above zero: of a drink in a new size, or in one in which it is sold already.
    pub prices: Vec<(OfferId, Money)>,
    /// Weekly numbers, 0 or more: in place of those of the book, or what to expect of a drink in a new size.
    pub weekly: Vec<(OfferId, Exact)>,
    /// Where the buyers of an offer that goes turn, in place of the nearest size. With `None` they leave.
    pub turns: Vec<(OfferId, Option<ContainerId>)>,
    /// Of those expected in a new size, the share that would have bought the nearest size of today anyway.
    /// Without one, all of them would have.
    pub taken: Vec<(OfferId, Share)>,
    /// What keeping one size costs in a week, 0 or more: storage, training, waste.
    pub keeping: Money,
    /// Whether hands' time counts.
    pub hands: Hands,
}

impl Told {
    /// The price typed for an offer.
    pub fn price(&self, offer: OfferId) -> Option<Money> {
        said(&self.prices, offer)
    }

    /// The weekly number typed for an offer.
    pub fn weekly(&self, offer: OfferId) -> Option<Exact> {
        said(&self.weekly, offer)
    }

    pub(super) fn turn(&self, offer: OfferId) -> Option<Option<ContainerId>> {
        said(&self.turns, offer)
    }

    pub(super) fn taken(&self, offer: OfferId) -> Share {
        said(&self.taken, offer).unwrap_or(Share::WHOLE)
    }
}

fn said<T: Copy>(all: &[(OfferId, T)], offer: OfferId) -> Option<T> {
    all.iter().find(|(of, _)| *of == offer).map(|(_, said)| *said)
}
