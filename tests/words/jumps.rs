//! What is said beside a value that may not be meant.

use brimwright::foundation::jump::{Doubt, Kind};
use brimwright::words;

#[test]
fn what_was_and_what_is_now() {
    let said = |kind, doubt, was, now| words::jump(kind, doubt, was, now);
    for (kind, doubt, was, now, sentence) in [
        (Kind::Price, Doubt::Far, Some("$87.00"), "$8,917.00", "Was $87.00, now $8,917.00."),
        (Kind::Pack, Doubt::Far, Some("10 lb"), "60 lb", "Was 10 lb, now 60 lb."),
        (Kind::Size, Doubt::Far, Some("12 fl oz"), "120 fl oz", "Was 12 fl oz, now 120 fl oz."),
        (Kind::Yield, Doubt::Far, Some("65%"), "6%", "Was 65%, now 6%."),
        (Kind::Tax, Doubt::Unusual, Some("6.5%"), "65%", "Was 6.5%, now 65%. A tax over 50% is rare."),
        (
            Kind::Density,
            Doubt::Unusual,
            None,
            "10.4 g/mL",
            "Now 10.4 g/mL. Most foods and drinks weigh 0.2 to 3 g per mL.",
        ),
        (Kind::TrimYield, Doubt::Unusual, Some("90%"), "4%", "Was 90%, now 4%. A trim yield under 5% is rare."),
    ] {
        assert_eq!(said(kind, doubt, was, now), sentence);
    }
}

#[test]
fn what_is_left_doubtful_is_named() {
    assert_eq!(words::left_doubtful(&[]), "");
    assert_eq!(words::left_doubtful(&["Price of Apples"]), "Check “Price of Apples”. Is that what you meant?");
    let several = |names: &[&str]| words::left_doubtful(names);
    assert_eq!(
        several(&["Price of Apples", "Pack size"]),
        "Check “Price of Apples” and 1 more entry. Are they what you meant?"
    );
    assert_eq!(
        several(&["Price of Apples", "Pack size", "Density"]),
        "Check “Price of Apples” and 2 more entries. Are they what you meant?"
    );
}
