//! Where a shop is: what follows from its country, and common figures for those who do not know their own.

use crate::book::Settings;
use crate::foundation::measure::{Currency, Exact, Money, Share};

/// Common figures of shops in a country. They are assumptions, all from memory of the trade: the rate of tax
/// on drinks to go, what an hour of work costs the employer in the country's money, and the share that
/// payments by card cost. The person is asked to check them, and nothing takes them unasked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Common {
    /// The rate of tax on a drink.
    pub tax: Share,
    /// The hourly wage with all that it costs the employer.
    pub wage: Money,
    /// The share of a payment that its provider keeps.
    pub card_fee: Share,
}

/// The countries with common figures: tax in tenths of a percent, wage, card fee in tenths of a percent. In the
/// United States and Canada the tax differs by place: a middling rate stands here.
const COMMON: [(&str, [i64; 3]); 14] = [
    ("US", [80, 18, 29]),
    ("CA", [130, 20, 27]),
    ("GB", [200, 15, 18]),
    ("DE", [190, 17, 15]),
    ("AT", [200, 17, 15]),
    ("CH", [26, 30, 15]),
    ("FR", [100, 17, 15]),
    ("ES", [100, 13, 12]),
    ("IT", [100, 14, 15]),
    ("NL", [90, 18, 10]),
    ("DK", [250, 180, 12]),
    ("AU", [100, 32, 16]),
    ("NZ", [150, 28, 20]),
    ("MX", [160, 70, 32]),
];

/// The common figures of a country, by its two letters (ISO 3166-1). Returns `None` if there are none here.
pub fn common(country: &str) -> Option<Common> {
    let share = |tenths: i64| Share::from_fraction(Exact::new(tenths, 3));
    let (_, [tax, wage, card_fee]) = COMMON.into_iter().find(|(letters, _)| *letters == country)?;
    Some(Common { tax: share(tax), wage: Money::from_major(Exact::new(wage, 0)), card_fee: share(card_fee) })
}

/// Settings as they become in a country: its money, units, place of the tax and price endings. What else was
/// said stays.
pub fn moved(settings: &Settings, country: &str) -> Settings {
    let there = Settings::in_country(&settings.name, country);
    let mut moved = settings.clone();
    (moved.currency, moved.units, moved.endings) = (there.currency, there.units, there.endings);
    moved.tax.place = there.tax.place;
    moved
}

/// The country that settings are of, as far as they tell: `here`, the person's own, where they fit it, else the
/// only one that they fit. Returns `None` if several would do.
pub fn country_of<'a>(settings: &Settings, here: &'a str) -> Option<&'a str> {
    let fits = |country: &str| {
        let there = Settings::in_country("", country);
        there.currency == settings.currency
            && there.units == settings.units
            && there.tax.place == settings.tax.place
            && Currency::of_country(country).is_some()
    };
    if fits(here) {
        return Some(here);
    }
    let mut fitting = Currency::countries().filter(|country| fits(country));
    let first = fitting.next();
    first.filter(|_| fitting.next().is_none())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::TaxPlace;
    use crate::foundation::measure::System;

    #[test]
    fn a_country_decides_money_units_and_the_place_of_the_tax() {
        let mut settings = Settings::new("My bar");
        settings.wage = Money::from_major(Exact::from(21));
        let german = moved(&settings, "DE");
        assert_eq!((german.currency.code(), german.units), ("EUR", System::Metric));
        assert_eq!(german.tax.place, TaxPlace::InThePrice);
        assert_eq!((german.name, german.wage), (settings.name.clone(), settings.wage), "what else was said stays");
        // Yen have no decimals, so no price ends in any.
        assert_eq!(moved(&settings, "JP").endings, []);
        assert_eq!(moved(&moved(&settings, "DE"), "US"), settings, "and back");
    }

    #[test]
    fn settings_tell_their_country_where_only_one_fits() {
        let of = |country: &str, here: &str| {
            let settings = moved(&Settings::new(""), country);
            country_of(&settings, here).map(str::to_string)
        };
        assert_eq!(of("US", "US").as_deref(), Some("US"));
        assert_eq!(of("CH", "US").as_deref(), Some("CH"));
        assert_eq!(of("DE", "DE").as_deref(), Some("DE"));
        assert_eq!(of("DE", "US"), None, "the euro is money of many");
        assert_eq!(of("PR", "PR").as_deref(), Some("US"), "as the United States");
    }

    #[test]
    fn common_figures_are_those_of_the_country() {
        // By hand: 26 tenths of a percent are 0.026.
        let swiss = common("CH").unwrap();
        assert_eq!(swiss.tax.fraction(), Exact::new(26, 3));
        assert_eq!(swiss.wage, Money::from_major(Exact::from(30)));
        assert_eq!(common("JP"), None);
        for (country, _) in COMMON {
            assert!(Currency::of_country(country).is_some(), "{country} has money that is known here");
            let found = common(country).unwrap();
            assert!(found.tax < Share::from_fraction(Exact::new(3, 1)), "{country}");
            assert!(found.card_fee < Share::from_fraction(Exact::new(5, 2)), "{country}");
        }
    }
}
