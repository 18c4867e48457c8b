//! What is made: from numbers of drinks to what must be pressed, trimmed and bought; and what to take
//! for a drink at the counter.
//!
//! # Needs
//!
//! ```text
//! made in a week = sold in a week / (1 - unsold)
//! needed         = sum over drinks of (number * amount to use)
//! packs          = needed as bought / contents, rounded up
//! ```
//!
//! `unsold` is the share that is thrown away, 0 or more and below 1. What must be bought follows from what
//! is needed by the yields ([`crate::drink::yields`]). Packs are counted to a billionth of one before they
//! are rounded up, so that what a division leaves costs no pack. By hand: 90 sold in a week with a tenth
//! unsold are 100 made; 100 drinks of 250 mL take 25 L, and three packs of 10 L.
//!
//! # A recipe card
//!
//! Each amount to use is multiplied by the number of drinks and rounded to the nearest step of the scale or
//! of the jugs; half a step rounds up. Pieces are rounded to the step of their line. Spoons, and amounts under
//! half a step, are not rounded. A card also says the exact amount where rounding moves it by more than a tenth, and
//! by how much a drink misses its fill where that is more than a fiftieth of it and nothing tops it up. Both
//! limits are our own choice, no source.

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
