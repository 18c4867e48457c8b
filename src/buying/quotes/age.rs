//! How old a price is.

use crate::book::{Pack, Settings};
use crate::foundation::measure::{Date, Exact};

/// How old a price is, against the days after which the owner calls one old.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Age {
    /// Heard on this day, not too long ago.
    Fresh(Date),
    /// Heard on this day, longer ago than the owner's limit.
    Old(Date),
    /// Nobody noted when it was heard.
    Undated,
}

/// How old the price of a pack is. No price is old if the owner gives no limit, or if the clock was
/// put back before its day.
pub fn age(pack: &Pack, settings: &Settings, today: Date) -> Age {
    let Some(day) = pack.day else { return Age::Undated };
    let days = u32::try_from(today.days_since(day)).unwrap_or(0);
    match settings.price_days {
        Some(limit) if Exact::from(days) > limit => Age::Old(day),
        _ => Age::Fresh(day),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::{day, exact, pack, settings};

    #[test]
    fn a_price_is_old_on_the_day_after_the_limit() {
        let limited = Settings { price_days: Some(exact("28")), ..settings() };
        let heard = |text: &str| Pack { day: Some(day(text)), ..pack(1, "1 lb", "1") };
        // Four weeks before a Thursday is a Thursday.
        let today = day("2026-11-26");
        assert_eq!(age(&heard("2026-10-29"), &limited, today), Age::Fresh(day("2026-10-29")));
        assert_eq!(age(&heard("2026-10-28"), &limited, today), Age::Old(day("2026-10-28")));
        assert_eq!(age(&heard("2026-12-01"), &limited, today), Age::Fresh(day("2026-12-01")), "a clock put back");
        assert_eq!(age(&heard("1999-01-01"), &settings(), today), Age::Fresh(day("1999-01-01")), "no limit");
        assert_eq!(age(&pack(1, "1 lb", "1"), &limited, today), Age::Undated);
    }
}
