//! Closing the gap: where an offer is under its target, how far each single lever would have to
//! go to bring it there, all others as they are (calculations, 6).
//!
//! No formula is turned round here: a value is put into a small copy of the book, the offer is
//! computed anew, and the value at which it reaches its target is found by halving. So a lever
//! follows whatever the book's costs follow.

mod lever;
mod nearest;

pub use lever::{Figure, Lever};

use crate::book::{Book, Edit, Key, Offer, OfferId};
use crate::ledger::{Priced, Standing, Trouble, price_offer};
use crate::measure::{Exact, Share};
use nearest::{Outcome, nearest};

/// A lever, and what it would do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Way {
    /// The lever.
    pub lever: Lever,
    /// Where it stands.
    pub now: Figure,
    /// Where it closes the gap, or why it does not.
    pub closes: Result<Closing, WhyNot>,
}

/// How a lever closes the gap.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Closing {
    /// Where the lever must stand: the nearest value that a book keeps at which the margin is not
    /// under the target.
    pub at: Figure,
    /// The change over where it stands now, below zero where it falls.
    pub change: Share,
    /// What does it, where it is the owner's to set. A menu price is set with its ending.
    pub edit: Option<Edit>,
    /// How many other offers that edit moves too.
    pub moves_too: usize,
}

/// Why a lever does not close the gap.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum WhyNot {
    /// As far as it goes, it is not enough.
    CannotCloseAlone,
    /// The target margin does not cover it.
    DoesNotCount,
}

/// Every lever of an offer under its target: those that close the gap first, the smallest change
/// ahead, then those that do not. A lever that nothing could be gained from (nothing cut away,
/// nothing unsold, nothing paid) is left out. Empty for an offer on target or without a price.
///
/// # Errors
/// The [`Trouble`] of an offer that cannot be computed, or is not there.
pub fn ways(book: &Book, offer: OfferId) -> Result<Vec<Way>, Trouble> {
    let book_of_all = book;
    let book = &book_of_all.only(Key::Offer(offer));
    let offer = book.offer(offer).ok_or(Trouble::Missing(Key::Offer(offer)))?;
    let priced = price_offer(book, offer)?;
    if priced.standing() != Standing::UnderTarget {
        return Ok(Vec::new());
    }
    let mut ways = Vec::new();
    for lever in Lever::all(book, offer) {
        let Some(now) = lever.reading(book, &priced).filter(|now| !lever.is_spent(*now)) else { continue };
        let closes = if lever.counts(priced.terms.covers) {
            let closing = Trial { book, trial: book.clone(), offer, lever }.closing(&priced, now);
            let moves_too = |closing| Closing { moves_too: moves_too(book_of_all, lever), ..closing };
            closing.map(moves_too).ok_or(WhyNot::CannotCloseAlone)
        } else {
            Err(WhyNot::DoesNotCount)
        };
        ways.push(Way { lever, now, closes });
    }
    // A stable sort: levers that change alike stay in their order.
    ways.sort_by_key(|way| match &way.closes {
        Ok(closing) => (None, closing.change.fraction().abs()),
        Err(why) => (Some(*why), Exact::ZERO),
    });
    Ok(ways)
}

/// How many other offers move with the lever where it is set.
fn moves_too(book: &Book, lever: Lever) -> usize {
    let all = match lever {
        Lever::Fill(id) => book.users(Key::Container(id)).len(),
        Lever::Unsold(id) | Lever::HandsTime(id) => book.users(Key::Drink(id)).len(),
        _ => 1,
    };
    all.saturating_sub(1)
}

/// A lever tried out on a copy of the book.
struct Trial<'a> {
    book: &'a Book,
    trial: Book,
    offer: &'a Offer,
    lever: Lever,
}

impl Trial<'_> {
    fn closing(&mut self, priced: &Priced, now: Figure) -> Option<Closing> {
        let range = self.lever.range(self.book, priced)?;
        let number = nearest(range, |number| match self.priced_at(number) {
            None => Outcome::Impossible,
            Some(priced) if priced.standing() == Standing::OnTarget => Outcome::Closes,
            Some(_) => Outcome::Misses,
        });
        let number = number.ok()??;
        let priced = self.priced_at(number)?;
        let at = self.lever.reading(&self.trial, &priced)?;
        let change = at.number().minus(now.number()).ok()?.over(now.number()).ok()?;
        let set_to = if matches!(self.lever, Lever::MenuPrice(_)) { range.to } else { number };
        let edit = if self.lever.is_ours() { self.lever.edit(self.book, set_to) } else { None };
        Some(Closing { at, change: Share::from_fraction(change.as_part()), edit, moves_too: 0 })
    }

    /// The offer with the lever at `number`; none where the book refuses it or the offer cannot
    /// be computed.
    fn priced_at(&mut self, number: Exact) -> Option<Priced> {
        let edit = self.lever.edit(self.book, number)?;
        self.trial.apply(&edit).ok()?;
        price_offer(&self.trial, self.trial.offer(self.offer.id())?).ok()
    }
}
