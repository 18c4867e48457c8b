//! What stands on printed sheets.

use super::Speaker;
use crate::book::{Tax, TaxPlace};
use crate::drink::label::{Law, UnitPrice};
use crate::foundation::measure::System;
use crate::say;

/// What the prices of a menu have in them.
pub fn tax(tax: Tax, speaker: &Speaker) -> String {
    let (rate, european) = (speaker.percent(tax.rate), speaker.law() == Law::European);
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
