//! What is made: from numbers of drinks to what must be pressed, trimmed and bought
//! (calculations, 8).

mod needs;

pub use needs::{Needed, Needs, Unmade, Use, needs};

use crate::book::Pack;
use crate::measure::{Exact, Overflow};

/// Decimals to which packs and steps are counted before they are rounded up: thirds on the way
/// would else ask for one more.
const WHOLE_PLACES: u32 = 9;

/// Whole packs that hold at least `bought`, which is in the base unit of the pack's dimension.
///
/// # Errors
/// [`Overflow`].
pub fn whole_packs(pack: &Pack, bought: Exact) -> Result<Exact, Overflow> {
    whole_steps(bought, pack.contents.measure()?.base())
}

/// How many whole steps are at least `amount`.
///
/// # Errors
/// [`Overflow`], also for a step of nothing.
pub fn whole_steps(amount: Exact, step: Exact) -> Result<Exact, Overflow> {
    Ok(amount.over(step)?.rounded(WHOLE_PLACES).ceiling())
}
