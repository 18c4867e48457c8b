//! Whose rules a label goes by.

use crate::book::Settings;
use crate::foundation::measure::{Currency, System};

/// Whose rules a label goes by: the two that are known here. Both are shown; this one first.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Law {
    /// The United States: 21 CFR and 21 U.S.C.
    UnitedStates,
    /// The European Union and the United Kingdom: Regulation (EU) No 1169/2011, there and as it
    /// was kept.
    European,
}

/// Money of the European Union, the United Kingdom, and countries with much the same food law (from
/// memory).
const EUROPEAN: &[&str] = &["EUR", "GBP", "SEK", "DKK", "NOK", "ISK", "PLN", "CZK", "HUF", "RON", "CHF"];

impl Law {
    /// The law of a book, told by its money; by its units where the money is of neither.
    pub fn of(settings: &Settings) -> Law {
        Law::by(settings.currency, settings.units)
    }

    /// The law of a book of this money and these units.
    pub fn by(currency: Currency, units: System) -> Law {
        let money = currency.code();
        let of_us_units = units == System::UsCustomary && !EUROPEAN.contains(&money);
        if money == "USD" || of_us_units { Law::UnitedStates } else { Law::European }
    }

    /// The other of the two.
    pub const fn other(self) -> Law {
        match self {
            Law::UnitedStates => Law::European,
            Law::European => Law::UnitedStates,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::settings;

    #[test]
    fn money_tells_before_units_do() {
        let of = |code, units| {
            let currency = Currency::from_code(code).unwrap();
            Law::of(&Settings { currency, units, ..settings() })
        };
        for units in [System::UsCustomary, System::Metric, System::Imperial] {
            assert_eq!(of("USD", units), Law::UnitedStates);
            for code in EUROPEAN {
                assert_eq!(of(code, units), Law::European, "{code}");
            }
        }
        assert_eq!(of("MXN", System::UsCustomary), Law::UnitedStates);
        assert_eq!([of("JPY", System::Metric), of("AUD", System::Imperial)], [Law::European; 2]);
        assert_eq!([Law::European.other(), Law::UnitedStates.other()], [Law::UnitedStates, Law::European]);
    }
}
