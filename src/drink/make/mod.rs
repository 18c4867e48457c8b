//! What is made: from numbers of drinks to what must be pressed, trimmed and bought
//! (calculations, 8); and what to take for a drink at the counter.

mod card;
mod needs;

pub use card::{Card, MOST_DRINKS, Taken, card, is_a_number_of_drinks};
pub use needs::{Needed, Needs, Unmade, Use, needs};

use crate::book::{Book, Offer, Pack};
use crate::drink::cost::unsold_share;
use crate::foundation::measure::{Exact, Overflow, whole_steps};

/// Whole packs that hold at least `bought`, which is in the base unit of the pack's dimension.
///
/// # Errors
/// [`Overflow`].
pub fn whole_packs(pack: &Pack, bought: Exact) -> Result<Exact, Overflow> {
    whole_steps(bought, pack.contents.measure()?.base())
}

/// How many of an offer are made in a usual week: what is sold and what is thrown away. Returns
/// `None` if nobody knows how many are sold, or the drink is gone.
///
/// # Errors
/// [`Overflow`].
pub fn made_a_week(book: &Book, offer: &Offer) -> Result<Option<Exact>, Overflow> {
    let Some((weekly, drink)) = offer.weekly.zip(book.drink(offer.drink)) else { return Ok(None) };
    Ok(Some(weekly.over(unsold_share(book, drink).rest()?.fraction())?))
}
