//! Menu prices end as the owner likes them to.

use crate::book::Settings;
use crate::measure::{Exact, Money, Overflow};

/// The lowest menu price at or above `price` with one of the book's endings, in its currency's
/// digits; any price where the book has no endings. Never zero.
///
/// # Errors
/// [`Overflow`].
pub fn round_up(price: Money, settings: &Settings) -> Result<Money, Overflow> {
    let period = settings.ending_period();
    let smallest = settings.currency.minor_unit();
    let price = price.max(smallest);
    if settings.endings.is_empty() {
        let units = price.ratio_to(smallest)?.ceiling();
        return smallest.times(units);
    }
    let periods = price.ratio_to(period)?.floor();
    let within = |periods: Exact| -> Result<Option<Money>, Overflow> {
        let base = period.times(periods)?;
        let mut best = None;
        for ending in &settings.endings {
            let candidate = base.plus(*ending)?;
            if candidate >= price && best.is_none_or(|lower| candidate < lower) {
                best = Some(candidate);
            }
        }
        Ok(best)
    };
    match within(periods)? {
        Some(found) => Ok(found),
        None => within(periods.plus(Exact::ONE)?)?.ok_or(Overflow::TooLarge),
    }
}
