//! What stands on printed sheets.

use brimwright::book::{Tax, TaxPlace};
use brimwright::foundation::measure::{Exact, Share, System};
use brimwright::words;

use crate::support::speaker;

#[test]
fn a_price_sheet_says_where_the_tax_is() {
    let said = |thousandths, place| {
        let tax = Tax { rate: Share::from_fraction(Exact::new(thousandths, 3)), place };
        words::tax(tax, &speaker(System::UsCustomary))
    };
    assert_eq!(said(190, TaxPlace::InThePrice), "Prices have 19.0\u{a0}% tax in them.");
    assert_eq!(said(65, TaxPlace::AddedAtTheTill), "Tax of 6.5\u{a0}% is added at the till.");
    let none = "The book has no tax; local rules decide whether there is one.";
    assert_eq!(said(0, TaxPlace::InThePrice), none);
    assert_eq!(said(0, TaxPlace::AddedAtTheTill), none);
}

#[test]
fn a_price_per_volume_says_what_it_divides() {
    assert_eq!(words::SIZES_INCLUDE_ICE, "Sizes of drinks over ice include the ice.");
    let per = words::per_volume;
    assert_eq!(per(System::UsCustomary), "per fl oz");
    assert_eq!([per(System::Metric), per(System::Imperial)], ["per L", "per L"]);
    assert_eq!(
        words::per_volume_means(System::UsCustomary),
        "The price per fl oz is the menu price over the size declared; where none is declared, over the fill."
    );
    assert_eq!(
        words::per_volume_means(System::Metric),
        "The price per L is what the guest pays, tax and all, over the size declared; where none is declared, over the fill."
    );
}
