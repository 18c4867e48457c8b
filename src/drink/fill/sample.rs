//! What an inspector's sample is likely to find.

use crate::foundation::measure::{Exact, Overflow, Share};

/// The share of a normal distribution that lies more than three standard deviations under its
/// mean, as scipy.stats.norm.sf(3) 1.17.1 gives it.
pub const UNDER_THREE_SPREADS: Share = Share::from_fraction(Exact::new(1_349_898, 9));

/// How likely a sample is to hold a package of a kind, where so large a share of all packages is of
/// that kind: 1 - (1 - share) ^ sample.
///
/// # Errors
/// [`Overflow`].
pub fn sample_risk(share: Share, sample: u32) -> Result<Share, Overflow> {
    let other = share.rest()?.fraction();
    let none = (0..sample).try_fold(Exact::ONE, |none, _| none.times(other))?;
    Ok(Share::from_fraction(Exact::ONE.minus(none)?))
}
