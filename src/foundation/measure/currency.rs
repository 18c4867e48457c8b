//! Currencies and their digits. Source: ISO 4217 list one (2026-01-01).

use std::fmt;

use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

use super::{Exact, Money};

/// A currency of ISO 4217.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Currency {
    code: &'static str,
    digits: u32,
}

const TWO_DIGITS: &[&str] = &[
    "USD", "EUR", "GBP", "CAD", "AUD", "NZD", "CHF", "SEK", "NOK", "DKK", "PLN", "CZK", "HUF", "RON", "CNY", "HKD",
    "TWD", "SGD", "MYR", "THB", "IDR", "PHP", "INR", "PKR", "LKR", "AED", "SAR", "ILS", "TRY", "ZAR", "NGN", "KES",
    "EGP", "MAD", "BRL", "ARS", "MXN", "COP", "PEN", "UYU",
];
const NO_DIGITS: &[&str] = &["ISK", "JPY", "KRW", "VND", "CLP", "PYG", "UGX", "RWF", "XOF", "XAF"];
const THREE_DIGITS: &[&str] = &["KWD", "BHD", "OMR", "JOD", "TND", "IQD"];

/// The countries whose money is the euro in 2026 (from memory; Bulgaria joined in that year).
const EURO_AREA: &[&str] = &[
    "AT", "BE", "BG", "CY", "DE", "EE", "ES", "FI", "FR", "GR", "HR", "IE", "IT", "LT", "LU", "LV", "MT", "NL", "PT",
    "SI", "SK",
];

impl Currency {
    /// The US dollar.
    pub const USD: Currency = Currency { code: "USD", digits: 2 };

    /// Every currency known here.
    pub fn all() -> impl Iterator<Item = Currency> {
        let with = |codes: &'static [&'static str], digits| codes.iter().map(move |code| Currency { code, digits });
        with(TWO_DIGITS, 2).chain(with(NO_DIGITS, 0)).chain(with(THREE_DIGITS, 3))
    }

    /// The currency with this three-letter code, if it is known here.
    pub fn from_code(code: &str) -> Option<Currency> {
        Currency::all().find(|currency| currency.code == code)
    }

    /// The currency of a country, by its two letters (ISO 3166-1): the euro where it is the money,
    /// else the one whose code begins with them, as the codes of ISO 4217 do. Returns `None` if
    /// none known here does.
    pub fn of_country(country: &str) -> Option<Currency> {
        let own = || Currency::all().find(|currency| country.len() == 2 && currency.code.starts_with(country));
        if EURO_AREA.contains(&country) { Currency::from_code("EUR") } else { own() }
    }

    /// The countries whose money is known here, by their two letters.
    pub fn countries() -> impl Iterator<Item = &'static str> {
        // Codes that begin with an X, and that of the euro, are of no one country.
        let of_one = |currency: Currency| currency.code.get(..2).filter(|letters| !letters.starts_with('X'));
        Currency::all().filter_map(of_one).filter(|letters| *letters != "EU").chain(EURO_AREA.iter().copied())
    }

    /// Its three-letter code.
    pub const fn code(self) -> &'static str {
        self.code
    }

    /// Digits after the decimal sign.
    pub const fn digits(self) -> u32 {
        self.digits
    }

    /// The smallest amount of money with this currency's digits: 0.01, 1, or 0.001.
    pub const fn minor_unit(self) -> Money {
        Money::from_major(Exact::new(1, self.digits))
    }

    /// Rounded to the currency's digits, half away from zero.
    pub fn rounded(self, money: Money) -> Money {
        Money::from_major(money.major().rounded(self.digits))
    }
}

impl fmt::Display for Currency {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.code)
    }
}

impl Serialize for Currency {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.code)
    }
}

impl<'de> Deserialize<'de> for Currency {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Currency, D::Error> {
        let code = std::borrow::Cow::<'de, str>::deserialize(deserializer)?;
        Currency::from_code(&code)
            .ok_or_else(|| de::Error::custom(format_args!("{code:?} is not a currency code of ISO 4217 known here")))
    }
}
