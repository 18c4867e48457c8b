//! Closing the gap: where an offer is under its target, how far each single lever would have to
//! go to bring it there, all others as they are.
//!
//! No formula is solved for a lever. A value is put into a small copy of the book, the offer is
//! computed anew, and the value at which it reaches its target is found by bisection. So a lever
//! follows whatever the book's costs follow. The search goes from where the lever stands to its
//! limit:
//!
//! | lever | limit | decimals |
//! |---|---|---|
//! | menu price | the price suggested | 8 |
//! | fill | what the fixed lines take | 6 of the headspace, in the book's unit of drinks |
//! | pack price, container set, unsold share | 0 | 8 |
//! | trim and press yield | 1 | 8 |
//! | soak yield | the highest number that a book keeps | 8 |
//! | hands' time for a drink | 0 s | 6 |
//!
//! The change is `value / value now - 1`. By hand: a drink costs 6.25, a fifth of it
//! unsold; at its price it may cost 5.50. So `5.50 * 0.8 = 4.40` may be spent on what costs 5.00. So a pack of
//! which 3.00 goes into the drink may cost four fifths of its price, or its yield must be five quarters of
//! what it is. The unsold share may be `1 - 5.00 / 5.50 = 1/11`. These and all other levers are checked in
//! `src/drink/gap/tests.rs`.

mod lever;
mod nearest;
mod practical;
#[cfg(test)]
mod tests;

pub use lever::{Figure, Lever};
pub use practical::{Ways, practical_ways};

use crate::book::{Book, Edit, Key, Offer, OfferId};
use crate::drink::ledger::{OfferError, OfferStatus, Priced, price_offer};
use crate::foundation::in_order;
use crate::foundation::measure::{Exact, Share, Volume};
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

impl Way {
    /// The change that is to be made, over where the lever stands now: that of a menu price with its
    /// ending. Returns `None` where the lever does not close the gap.
    pub fn change(&self) -> Option<Share> {
        let closing = self.closes.as_ref().ok()?;
        let (Some(Edit::SetPrice { price: Some(price), .. }), Figure::Money(now)) = (&closing.edit, self.now) else {
            return Some(closing.change);
        };
        let change = price.minus(now).ok()?.ratio_to(now).ok()?;
        Some(Share::from_fraction(change.as_part()))
    }

    /// The labeled size, where a fill would close the gap only under it: then the menu or the label is
    /// to change first.
    pub fn under_declared(&self, book: &Book) -> Option<Volume> {
        let (Lever::Fill(id), Figure::Volume(at)) = (self.lever, self.closes.as_ref().ok()?.at) else { return None };
        book.container(id)?.declared?.volume().ok()?.filter(|declared| *declared > at)
    }

    /// Its place: those that close the gap before those that do not, the smallest change ahead.
    fn order(&self) -> (Option<WhyNot>, Exact) {
        match &self.closes {
            Ok(closing) => (None, closing.change.fraction().abs()),
            Err(why) => (Some(*why), Exact::ZERO),
        }
    }
}

/// How a lever closes the gap.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Closing {
    /// Where the lever must stand: the nearest value at which the margin is not under the target,
    /// in the digits that a book keeps.
    pub at: Figure,
    /// The change over where it stands now, below zero where it falls.
    pub change: Share,
    /// The edit that sets it, if it is the owner's to set and breaks no labeled size. A menu price is
    /// set with its ending.
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
/// The [`OfferError`] of an offer that cannot be computed, or is not there.
pub fn ways(book: &Book, offer: OfferId) -> Result<Vec<Way>, OfferError> {
    let cut = &book.only(Key::Offer(offer));
    let mut ways: Vec<Way> = Vec::new();
    let Some((offer, priced)) = under_target(cut, offer)? else { return Ok(ways) };
    for lever in Lever::all(cut, offer) {
        let Some(way) = of_lever(book, cut, offer, &priced, lever) else { continue };
        // Levers that change alike stay in their order.
        in_order::insert(&mut ways, way, |other, way| other.order() <= way.order());
    }
    Ok(ways)
}

/// One lever of an offer under its target. Returns `None` for an offer on target or without a
/// price, and where nothing could be gained from it.
///
/// # Errors
/// The [`OfferError`] of an offer that cannot be computed, or is not there.
pub fn way(book: &Book, offer: OfferId, lever: Lever) -> Result<Option<Way>, OfferError> {
    let cut = &book.only(Key::Offer(offer));
    let found = under_target(cut, offer)?;
    Ok(found.and_then(|(offer, priced)| of_lever(book, cut, offer, &priced, lever)))
}

/// An offer that is under its target, computed.
fn under_target(cut: &Book, offer: OfferId) -> Result<Option<(&Offer, Priced)>, OfferError> {
    let offer = cut.offer(offer).ok_or(OfferError::Missing(Key::Offer(offer)))?;
    let priced = price_offer(cut, offer)?;
    Ok((priced.status() == OfferStatus::UnderTarget).then_some((offer, priced)))
}

fn of_lever(book: &Book, cut: &Book, offer: &Offer, priced: &Priced, lever: Lever) -> Option<Way> {
    let now = lever.reading(cut, priced).filter(|now| !lever.is_spent(*now))?;
    let closes = if lever.counts(priced.terms.cost_basis) {
        let closing = Trial { cut, trial: cut.clone(), offer, lever }.closing(priced, now);
        let counted = closing.map(|closing| Closing { moves_too: moves_too(book, lever), ..closing });
        counted.ok_or(WhyNot::CannotCloseAlone)
    } else {
        Err(WhyNot::DoesNotCount)
    };
    let mut way = Way { lever, now, closes };
    if way.under_declared(cut).is_some()
        && let Ok(closing) = &mut way.closes
    {
        closing.edit = None;
    }
    Some(way)
}

/// How many other offers move with the lever where it is set.
fn moves_too(book: &Book, lever: Lever) -> usize {
    let all = match lever {
        Lever::Fill(id) => book.repriced_by(Key::Container(id)).len(),
        Lever::Unsold(id) | Lever::HandsTime(id) => book.repriced_by(Key::Drink(id)).len(),
        _ => 1,
    };
    all.saturating_sub(1)
}

/// A lever tried out on a copy of what the offer needs of the book.
struct Trial<'a> {
    cut: &'a Book,
    trial: Book,
    offer: &'a Offer,
    lever: Lever,
}

impl Trial<'_> {
    fn closing(&mut self, priced: &Priced, now: Figure) -> Option<Closing> {
        let range = self.lever.range(self.cut, priced)?;
        let number = nearest(range, |number| match self.priced_at(number) {
            None => Outcome::Impossible,
            Some(priced) if priced.status() == OfferStatus::OnTarget => Outcome::Closes,
            Some(_) => Outcome::Misses,
        });
        let number = number.ok()??;
        let priced = self.priced_at(number)?;
        let at = self.lever.reading(&self.trial, &priced)?;
        let change = at.number().minus(now.number()).ok()?.over(now.number()).ok()?;
        let set_to = if matches!(self.lever, Lever::MenuPrice(_)) { range.to } else { number };
        let edit = if self.lever.is_ours() { self.lever.edit(self.cut, set_to) } else { None };
        Some(Closing { at, change: Share::from_fraction(change.as_part()), edit, moves_too: 0 })
    }

    /// The offer with the lever at `number`. Returns `None` if the book refuses it or the offer
    /// cannot be computed.
    fn priced_at(&mut self, number: Exact) -> Option<Priced> {
        let edit = self.lever.edit(self.cut, number)?;
        self.trial.apply(&edit).ok()?;
        price_offer(&self.trial, self.trial.offer(self.offer.id())?).ok()
    }
}
