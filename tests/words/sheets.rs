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
        words::tax(&[tax], &speaker(System::UsCustomary))
    };
    assert_eq!(said(190, TaxPlace::InThePrice), "Prices include 19% sales tax.");
    assert_eq!(said(65, TaxPlace::AddedAtTheTill), "Sales tax of 6.5% is added at the register.");
    let rate = |hundred_thousandths| {
        words::tax_rate(Share::from_fraction(Exact::new(hundred_thousandths, 5)), &speaker(System::UsCustomary))
    };
    assert_eq!([8250, 8875, 19_000].map(rate), ["8.25%", "8.875%", "19%"]);
    let none = "Your book has no sales tax. Check your local rules.";
    assert_eq!(said(0, TaxPlace::InThePrice), none);
    assert_eq!(said(0, TaxPlace::AddedAtTheTill), none);
}

#[test]
fn a_sheet_of_several_rates_names_none_of_them() {
    use brimwright::foundation::measure::NumberStyle;
    let euros = brimwright::foundation::measure::Currency::from_code("EUR").expect("a currency");
    let said = |place, speaker: &words::Speaker| {
        let [low, high] =
            [70, 190].map(|thousandths| Tax { rate: Share::from_fraction(Exact::new(thousandths, 3)), place });
        words::tax(&[low, high], speaker)
    };
    let (us, european) =
        (speaker(System::UsCustomary), words::Speaker::new(euros, System::Metric, NumberStyle::english("")));
    for (place, speaker, expected) in [
        (TaxPlace::InThePrice, &us, "Prices include sales tax, at the rate of each drink."),
        (TaxPlace::AddedAtTheTill, &us, "Sales tax is added at the register, at the rate of each drink."),
        (TaxPlace::InThePrice, &european, "Prices include VAT or tax, at the rate of each drink."),
        (TaxPlace::AddedAtTheTill, &european, "VAT or tax is added at the register, at the rate of each drink."),
    ] {
        assert_eq!(said(place, speaker), expected);
    }
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
