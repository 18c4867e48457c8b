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
//! of the measuring cup; half a step rounds up. What that would move by more than a tenth is rounded to a finer
//! step: grams and their parts, parts of a teaspoon, parts of a milliliter. What is written in spoons is taken
//! by quarters of that spoon. Pieces are rounded to the step of their line.
//!
//! Rounded lines can miss the fill line together. Then single lines take a step more or less, each time the
//! one whose share changes least, until the sum is within half of the largest step and below the brim
//! (`balance`). Doses and pieces stay; where a line tops up, it is rounded last and takes the difference. A card says
//! how near to the line the amounts come, and warns where they miss it by more than a fiftieth of the drink. Both
//! limits are our own choice, no source.

mod balance;
mod card;
mod lacking;
mod needs;
mod peel;
mod steps;

pub use card::{Card, MOST_DRINKS, Taken, card, is_a_number_of_drinks};
pub use lacking::lacking;
pub use needs::{Needed, Needs, Unmade, Use, needs};
pub use peel::{asks_about_peel, without_peel};
pub use steps::{measured_up, steps_of};

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

/// How many of an offer are made in a usual week: what is sold, handed out free and thrown away. Returns
/// `None` if nobody knows how many are sold, or the drink is gone.
///
/// # Errors
/// [`Overflow`].
pub fn made_a_week(book: &Book, offer: &Offer) -> Result<Option<Exact>, Overflow> {
    let Some((weekly, drink)) = offer.weekly.zip(book.drink(offer.drink)) else { return Ok(None) };
    let handed_out = weekly.over(book.settings().reductions.free.rest()?.fraction())?;
    Ok(Some(handed_out.over(unsold_share(book, drink).rest()?.fraction())?))
}
