//! What is said beside a value that may not be meant.

use brimwright::foundation::jump::{Doubt, Kind};
use brimwright::foundation::measure::System;
use brimwright::words;

use crate::support::speaker;

#[test]
fn what_was_and_what_is_now() {
    let said = |kind, doubt, was, now| words::jump(kind, doubt, was, now, &speaker(System::Metric));
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
        (Kind::Wage, Doubt::Far, Some("$18.00"), "$1,800.00", "Was $18.00, now $1,800.00."),
        (
            Kind::Wage,
            Doubt::Unusual,
            None,
            "$99,999,999.00",
            "Now $99,999,999.00. An hour rarely costs that much. Check the digits.",
        ),
        (
            Kind::Labor,
            Doubt::Unusual,
            Some("1:30"),
            "16666:39",
            "Was 1:30, now 16666:39. More than 480:00 is rare. Type minutes:seconds.",
        ),
        (Kind::Sold, Doubt::Unusual, None, "99,999", "Now 99,999. More than 10,000 a week is rare."),
        (
            Kind::SoldInWeek,
            Doubt::Unusual,
            None,
            "1.5",
            "Now 1.5. A week usually has whole drinks, up to 10,000 of one size.",
        ),
    ] {
        assert_eq!(said(kind, doubt, was, now), sentence);
    }
}

/// 0.2 and 3 g/mL are 1.669 and 25.036 oz a cup, by the factors of NIST Handbook 44, Appendix C.
#[test]
fn a_us_book_asks_about_the_weight_of_one_cup() {
    let said = words::jump(Kind::Density, Doubt::Unusual, None, "86.79 oz per cup", &speaker(System::UsCustomary));
    assert_eq!(said, "Now 86.79 oz per cup. One cup of most foods and drinks weighs 1.7 to 25 oz.");
    let far =
        words::jump(Kind::Density, Doubt::Far, Some("8.75 oz per cup"), "2 oz per cup", &speaker(System::UsCustomary));
    assert_eq!(far, "Was 8.75 oz per cup, now 2 oz per cup.");
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
