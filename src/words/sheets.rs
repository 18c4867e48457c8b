//! What stands on printed sheets.

use super::Speaker;
use crate::book::{Tax, TaxPlace};
use crate::drink::label::{Law, UnitPrice};
use crate::foundation::measure::{Share, System};
use crate::say;

/// The decimals of a percentage at which rates of tax are set, at most: a city adds thousandths of one.
const MOST_OF_A_RATE: u32 = 3;

/// What the prices of a menu have in them, by the taxes of its drinks.
pub fn tax(taxes: &[Tax], speaker: &Speaker) -> String {
    match taxes {
        [] => String::new(),
        [tax] => one_tax(*tax, speaker),
        [tax, ..] => {
            let european = speaker.law() == Law::European;
            let said = match tax.place {
                TaxPlace::InThePrice if european => say!(counter::several_tax_rates_included_european),
                TaxPlace::InThePrice => say!(counter::several_tax_rates_included),
                TaxPlace::AddedAtTheTill if european => say!(counter::several_tax_rates_added_european),
                TaxPlace::AddedAtTheTill => say!(counter::several_tax_rates_added),
            };
            said.to_string()
        }
    }
}

/// A rate of tax with the digits that it is set in: "8.25%", "19%".
pub fn tax_rate(rate: Share, speaker: &Speaker) -> String {
    speaker.short_percent(rate, MOST_OF_A_RATE)
}

fn one_tax(tax: Tax, speaker: &Speaker) -> String {
    let (rate, european) = (tax_rate(tax.rate, speaker), speaker.law() == Law::European);
    match tax.place {
        _ if tax.rate.is_zero() && european => say!(counter::no_tax_european).to_string(),
        _ if tax.rate.is_zero() => say!(counter::no_sales_tax).to_string(),
        TaxPlace::InThePrice if european => say!(counter::tax_included_european, rate = rate),
        TaxPlace::InThePrice => say!(counter::tax_included, rate = rate),
        TaxPlace::AddedAtTheTill if european => say!(counter::tax_added_european, rate = rate),
        TaxPlace::AddedAtTheTill => say!(counter::tax_added, rate = rate),
    }
}

/// What a unit price is asked for: "per fl oz", "per L".
pub fn per_volume(units: System) -> String {
    say!(counter::per_unit, unit = UnitPrice::unit(units).name_in(units))
}

/// What a unit price divides.
pub fn per_volume_means(units: System) -> &'static str {
    match units {
        System::UsCustomary => say!(counter::unit_price_of_menu_price),
        System::Metric | System::Imperial => say!(counter::unit_price_of_customer_price),
    }
}
