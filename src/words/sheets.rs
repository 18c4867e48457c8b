//! What stands on printed sheets.

use super::Speaker;
use crate::book::{Tax, TaxPlace};
use crate::drink::label::UnitPrice;
use crate::foundation::measure::System;

/// Stands on a sheet that shows what drinks cost.
pub const FOR_THE_OWNER: &str = "For the owner: it shows what drinks cost. Not for guests.";

/// Stands beside unit prices where some drinks have ice in the glass.
pub const SIZES_INCLUDE_ICE: &str = "Sizes of drinks over ice include the ice.";

/// What the prices of a menu have in them.
pub fn tax(tax: Tax, speaker: &Speaker) -> String {
    let rate = speaker.percent(tax.rate);
    match tax.place {
        _ if tax.rate.is_zero() => "The book has no tax; local rules decide whether there is one.".to_string(),
        TaxPlace::InThePrice => format!("Prices have {rate} tax in them."),
        TaxPlace::AddedAtTheTill => format!("Tax of {rate} is added at the till."),
    }
}

/// What a unit price is asked for: "per fl oz", "per L".
pub fn per_volume(units: System) -> String {
    format!("per {}", UnitPrice::unit(units).name_in(units))
}

/// What a unit price divides.
pub fn per_volume_means(units: System) -> String {
    let price = match units {
        System::UsCustomary => "the menu price",
        System::Metric | System::Imperial => "what the guest pays, tax and all,",
    };
    let per = per_volume(units);
    format!("The price {per} is {price} over the size declared; where none is declared, over the fill.")
}
