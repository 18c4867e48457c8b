//! What stands on printed sheets.

use brimwright::book::{Tax, TaxPlace};
use brimwright::foundation::measure::{Exact, Share, System};
use brimwright::say;
use brimwright::words;

use crate::support::speaker;

#[test]
fn a_price_sheet_says_where_the_tax_is() {
    let said = |thousandths, place| {
        let tax = Tax { rate: Share::from_fraction(Exact::new(thousandths, 3)), place };
        words::tax(tax, &speaker(System::UsCustomary))
    };
    assert_eq!(said(190, TaxPlace::InThePrice), "Prices include 19.0% sales tax.");
    assert_eq!(said(65, TaxPlace::AddedAtTheTill), "Sales tax of 6.5% is added at the register.");
    let none = "Your book has no sales tax. Check your local rules.";
    assert_eq!(said(0, TaxPlace::InThePrice), none);
    assert_eq!(said(0, TaxPlace::AddedAtTheTill), none);
}

#[test]
fn a_price_per_volume_says_what_it_divides() {
    assert_eq!(say!(counter::iced_sizes_include_ice), "Sizes of iced drinks include the ice.");
    let per = words::per_volume;
    assert_eq!(per(System::UsCustomary), "per fl oz");
    assert_eq!([per(System::Metric), per(System::Imperial)], ["per L", "per L"]);
    assert_eq!(
        words::per_volume_means(System::UsCustomary),
        "Unit price is menu price divided by labeled size. Where no size is labeled, the fill counts."
    );
    assert_eq!(
        words::per_volume_means(System::Metric),
        "Unit price is what the customer pays, divided by labeled size. Where no size is labeled, the fill counts."
    );
}
