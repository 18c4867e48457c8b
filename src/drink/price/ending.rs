//! Menu prices end as the owner likes them to.

use crate::book::Settings;
use crate::foundation::measure::{Exact, Money, Overflow};

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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::foundation::measure::Currency;
    use crate::support::{money, settings};

    /// Endings of a currency, and what prices are rounded up to.
    fn check(currency: &str, endings: &[&str], cases: &[(&str, &str)]) {
        let currency = Currency::from_code(currency).unwrap();
        let endings = endings.iter().map(|ending| money(ending)).collect();
        let settings = Settings { currency, endings, ..settings() };
        for (price, menu) in cases {
            assert_eq!(round_up(money(price), &settings), Ok(money(menu)), "{price} with {:?}", settings.endings);
        }
    }

    #[test]
    fn a_price_ends_as_wanted() {
        let quarters = ["0", "0.25", "0.50", "0.75"];
        check("USD", &quarters, &[("5", "5"), ("5.000000000001", "5.25"), ("5.25", "5.25"), ("5.76", "6")]);
        check("USD", &["0.95"], &[("0.10", "0.95"), ("5.95", "5.95"), ("5.96", "6.95")]);
        check("USD", &["0.99", "0.49"], &[("5.30", "5.49"), ("5.50", "5.99"), ("5.995", "6.49")]);
    }

    #[test]
    fn without_endings_the_currency_decides() {
        check("USD", &[], &[("5.001", "5.01"), ("5.01", "5.01")]);
        check("JPY", &[], &[("300.1", "301"), ("301", "301")]);
        check("KWD", &[], &[("0.2501", "0.251"), ("0.251", "0.251")]);
    }

    #[test]
    fn endings_repeat_by_the_hundred_where_there_are_no_cents() {
        check("JPY", &["80", "50"], &[("351", "380"), ("380", "380"), ("380.5", "450"), ("20", "50")]);
        check("JPY", &["0"], &[("301", "400"), ("400", "400")]);
        check("KWD", &["0.250", "0.500"], &[("0.251", "0.5"), ("0.501", "1.25")]);
    }

    #[test]
    fn nothing_is_given_away() {
        check("USD", &["0", "0.50"], &[("0", "0.50")]);
        check("USD", &["0"], &[("0", "1")]);
        check("USD", &[], &[("0", "0.01")]);
        check("JPY", &[], &[("0", "1")]);
    }
}
