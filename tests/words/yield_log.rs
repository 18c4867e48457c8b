//! What is said of weighings.

use brimwright::book::{Ingredient, Weighing};
use brimwright::buying::yield_log::{Step, Summary, YieldLogError, summary};
use brimwright::drink::ledger::OfferChange;
use brimwright::foundation::measure::{Overflow, System};
use brimwright::words::yield_log as words;

use crate::support::{amount, day, ingredient, ingredient_id, offer_id, share, speaker};

fn spaced(text: &str) -> String {
    text.replace(" %", "\u{a0}%")
}

/// Of 100 g each so many were left after trimming, from 2 November on.
fn trimmed(grams: &[&str]) -> Summary {
    let weighing = |(days, grams): (i32, &&str)| Weighing {
        day: day("2026-11-02").plus_days(days),
        bought: amount("100 g"),
        trimmed: Some(amount(&format!("{grams} g"))),
        pressed: None,
    };
    let log = Ingredient { weighings: (0..).zip(grams).map(weighing).collect(), ..ingredient(1, []) };
    summary(&log, Step::Trim).unwrap().unwrap()
}

#[test]
fn a_mean_and_its_interval() {
    let said = |grams: &[&str]| {
        let summary = trimmed(grams);
        (words::mean(&summary, &speaker(System::UsCustomary)), words::interval(&summary, &speaker(System::UsCustomary)))
    };
    let expected = |mean: &str, interval: &str| (spaced(mean), spaced(interval));
    assert_eq!(said(&["90"]), expected("90.0% from 1 weighing", "unknown until you weigh again"));
    let alike = expected("90.0% from 2 weighings", "none: all weighings match");
    assert_eq!(said(&["90", "90"]), alike);
    // scipy.stats.t.interval(0.95, 2, 0.9, 0.02 / sqrt(3)): 0.850317 to 0.949683.
    assert_eq!(said(&["88", "90", "92"]), expected("90.0% from 3 weighings", "85.0% to 95.0%"));
    // 0.27 to 1.53 and -0.11 to 0.19: no yield is beyond all and nothing.
    assert_eq!(said(&["85", "95"]), expected("90.0% from 2 weighings", "26.5% to 100.0%"));
    assert_eq!(said(&["3", "5"]), expected("4.0% from 2 weighings", "0.0% to 16.7%"));
}

#[test]
fn how_a_mean_came_about() {
    let said = |grams: &[&str]| words::how(&trimmed(grams), &speaker(System::UsCustomary));
    let mean = "Average: 88.0% + 90.0% + 92.0%, divided by 3, is 90.0%. As one batch, where large batches count for more, the yield is 90.0%.";
    let spread = "Weighings lie about 2.0% from the average (standard deviation). Student’s t with 2 degrees of freedom, times that over the square root of 3, is 5.0%. The likely range goes that far to each side. In 95 of 100 cases, such a range includes the true average.";
    assert_eq!(said(&["88", "90", "92"]), spaced(&format!("{mean} {spread}")));
    let more = said(&["88", "90", "92", "90", "90"]);
    assert!(more.starts_with(&spaced("Average: 88.0% + 90.0% + 92.0% and 2 more, divided by 5, is")), "{more}");
    let wide = said(&["85", "95"]);
    let beyond = "Student’s t with 1 degree of freedom, times that over the square root of 2, is 63.5%. The likely range goes that far to each side. In 95 of 100 cases, such a range includes the true average. No yield is under 0% or over 100%, so the range ends there. Weigh more often.";
    assert!(wide.ends_with(&spaced(beyond)), "{wide}");
    let alike = said(&["90", "90"]);
    assert!(alike.ends_with(&spaced("where large batches count for more, the yield is 90.0%.")), "{alike}");
    let one = "One weighing shows no spread. Weigh again.";
    assert_eq!(said(&["90"]), one);
}

#[test]
fn what_stands_apart() {
    let said = |grams: &[&str]| words::outlier(&trimmed(grams), &speaker(System::UsCustomary));
    // G 2.041 by scipy.stats, limit 1.887 (tests/reference/data/yield_log.csv).
    let apart = "The weighing of Nov 7, 2026 looks unusual. Its yield of 30.0% is 2.04 standard deviations from the average. For 6 weighings, the limit is 1.89 in 95 of 100 cases (Grubbs’ test). Check for a typing slip, another press or other fruit. Weigh again, then correct the entry if needed. It counts until you change it.";
    assert_eq!(said(&["90", "91", "89", "90", "90", "30"]), spaced(apart));
    assert_eq!(said(&["90", "91", "89", "90", "90", "88"]), "");
    assert_eq!(said(&["90", "30"]), "");
}

#[test]
fn what_a_weighing_does_not_tell() {
    let weighing = |trimmed: Option<&str>, pressed: Option<&str>| Weighing {
        day: day("2026-11-02"),
        bought: amount("100 g"),
        trimmed: trimmed.map(amount),
        pressed: pressed.map(amount),
    };
    let weights = |trimmed, pressed| words::weights(&weighing(trimmed, pressed), &speaker(System::UsCustomary));
    assert_eq!(weights(None, None), "100 g as purchased");
    assert_eq!(weights(Some("90 g"), Some("50 g")), "100 g as purchased, 90 g trimmed, 50 g of juice");
    let cut = Ingredient { trim_yield: share("0.9"), ..ingredient(1, []) };
    let said = |trimmed, pressed| words::not_told(&cut, &weighing(trimmed, pressed));
    assert_eq!(said(None, None), "weighed as purchased only");
    assert_eq!(said(None, Some("50 g")), "trimmed weight missing");
    assert_eq!(said(Some("90 g"), None), "");
    assert_eq!(words::not_told(&ingredient(1, []), &weighing(None, Some("50 g"))), "", "nothing is cut away");
}

#[test]
fn what_can_be_adopted() {
    let said =
        |step, now: Option<&str>| words::proposal(step, share("0.891"), now.map(share), &speaker(System::UsCustomary));
    assert_eq!(said(Step::Trim, Some("0.89")), spaced("Trim yield: 89.1%, before 89.0%"));
    assert_eq!(said(Step::Trim, None), spaced("Trim yield: 89.1%, none before"));
    assert_eq!(said(Step::Press, Some("0.89")), spaced("Juice yield: 89.1%, before 89.0%"));
    assert_eq!(said(Step::Press, None), spaced("Juice yield: 89.1%, none before"));
    let moved = OfferChange { offer: offer_id(1, 1), before: None, after: None };
    assert_eq!(words::would_move(&[moved, moved]), "2 sizes would be affected, none would drop below target.");
    assert_eq!(words::would_move(&[]), "No sizes would be affected.");
    assert_eq!([Step::Trim, Step::Press].map(words::step), ["Trim yield", "Juice yield"]);
}

#[test]
fn what_a_log_cannot_do() {
    let id = ingredient_id(1);
    let error = |why| words::error(why, System::Metric);
    let cup = "Type the juice by weight, or first type its weight per cup on the ingredient’s page.";
    assert_eq!(words::error(YieldLogError::NoJuiceDensity(id), System::UsCustomary), cup);
    let gone = "This is no longer in your book. Undo the removal, or go back.";
    assert_eq!(error(YieldLogError::Missing(id)), gone);
    let density = "Type the juice by weight, or first type its density on the ingredient’s page.";
    assert_eq!(error(YieldLogError::NoJuiceDensity(id)), density);
    let pieces = "Type juice by weight or volume, such as 5 lb or 2 L.";
    assert_eq!(error(YieldLogError::Pieces), pieces);
    let large = "These numbers are too large. Check for an extra digit.";
    assert_eq!(error(YieldLogError::Arithmetic(Overflow::TooLarge)), large);
    let taken = words::taken_as(amount("8.7627 lb"), &speaker(System::UsCustomary));
    assert_eq!(taken, "Counts as 8.7627 lb of juice, by density.");
}
