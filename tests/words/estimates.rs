//! What is said of prices seen elsewhere and of trials.

use brimwright::book::{Book, Record, Scope, Settings, Trial, TrialId, Week};
use brimwright::foundation::measure::System;
use brimwright::sizes::market::{NoCurve, market};
use brimwright::sizes::trial::judge;
use brimwright::words::{self, Speaker};

use crate::support::{
    book, container, day, drink, drink_id, ingredient, line, offer, pack, seen_price, settings, sold, speaker,
};

/// A drink of ours in 400 mL, at this price, beside these prices seen.
fn bar(seen: &[(&str, &str)], ours: Option<&str>) -> Book {
    let records = [
        Record::Ingredient(ingredient(1, [pack(1, "1 L", "4")])),
        Record::Container(container(1, "400 mL")),
        Record::Drink(drink(1, "1 L", [line(1, 1, "1 L")])),
        Record::Offer(offer(1, 1, ours)),
    ];
    let seen = (1..).zip(seen).map(|(id, (size, price))| Record::SeenPrice(seen_price(id, size, price)));
    book(Settings { units: System::Metric, ..settings() }, records.into_iter().chain(seen))
}

fn market_said(seen: &[(&str, &str)], ours: Option<&str>) -> String {
    let bar = bar(seen, ours);
    words::market(&market(&bar, None, day("2026-11-26")).unwrap(), &bar, &speaker(System::Metric))
}

// On 3.00 times the root of the size in hundreds of mL: twice the size is 1.4142 times the price.
const ROOT: [(&str, &str); 3] = [("100 mL", "3"), ("225 mL", "4.50"), ("900 mL", "9")];

#[test]
fn what_a_market_shows() {
    let seen = "Of 3 prices seen, from 100 mL to 900 mL: doubling the size raises the price by 41.4 % (R² 1.00).";
    let seen = seen.replace(" %", "\u{a0}%").replace(" mL", "\u{a0}mL");
    assert_eq!(market_said(&ROOT, None), seen);
    let name = "Invented drink 1, Invented 400 mL 1";
    // The curve asks 6.00 for 400 mL.
    let with = |price| market_said(&ROOT, Some(price));
    assert_eq!(with("6.24"), format!("{seen} Your {name} asks 4.0\u{a0}% more than the curve."));
    assert_eq!(with("5.40"), format!("{seen} Your {name} asks 10.0\u{a0}% less than the curve."));
    assert_eq!(with("6"), format!("{seen} Your {name} asks what the curve does."));
    let flat = market_said(&[("200 mL", "5"), ("400 mL", "5"), ("300 mL", "5")], None);
    assert!(flat.ends_with("doubling the size leaves the price as it is (every price is the same)."), "{flat}");
    let falling = market_said(&[("100 mL", "6"), ("200 mL", "3"), ("400 mL", "1.50")], None);
    assert!(falling.ends_with("doubling the size lowers the price by 50.0\u{a0}% (R² 1.00)."), "{falling}");
}

#[test]
fn where_a_size_stands() {
    let said = |seen: &[(&str, &str)], price| {
        let bar = bar(seen, Some(price));
        let market = market(&bar, None, day("2026-11-26")).unwrap();
        words::against_curve(&market.ours[0].against.unwrap(), &speaker(System::Metric))
    };
    assert_eq!(said(&ROOT, "6.60"), "10.0\u{a0}% above");
    assert_eq!(said(&ROOT, "5.40"), "10.0\u{a0}% below");
    assert_eq!(said(&ROOT, "6"), "on the curve");
    let small = [("100 mL", "3"), ("225 mL", "4.50"), ("306.25 mL", "5.25")];
    assert_eq!(said(&small, "6.60"), "10.0\u{a0}% above, beyond the sizes seen");
    let shots = [("60 mL", "3"), ("90 mL", "4"), ("120 mL", "5")];
    assert_eq!(said(&shots, "6.60"), "too far beyond the sizes seen");
}

#[test]
fn how_the_curve_came_about() {
    let bar = bar(&ROOT, None);
    let curve = market(&bar, None, day("2026-11-26")).unwrap().curve.unwrap();
    assert_eq!(
        words::curve(&curve, &bar, &speaker(System::Metric)),
        "The curve is price = $3.00 × (size in hundreds of mL) to the power of 0.50: a straight line through the logarithms of sizes and prices, by least squares. R² says how closely the prices follow it: 1 is exactly, 0 not at all."
    );
}

#[test]
fn why_there_is_no_curve() {
    assert!(words::no_curve(NoCurve::TooFew(0)).starts_with("No price is written down here yet."));
    assert_eq!(market_said(&[("100 mL", "3")], None), words::no_curve(NoCurve::TooFew(1)));
    assert_eq!(
        market_said(&ROOT[..2], None),
        "Two prices are seen so far. A curve needs three or more: through two it always runs exactly, and hides how prices scatter."
    );
    assert_eq!(
        market_said(&[("100 mL", "3"), ("100 mL", "4"), ("100 mL", "5")], None),
        "All these prices are of one size, or nearly, so they cannot say how a price grows with the size. Write down a smaller or a larger one too."
    );
    // What stands in the field while 2026 is typed.
    for typed in ["0002-12-01", "0020-12-01", "0202-12-01", "1899-12-31"] {
        assert_eq!(
            words::day_too_early(day(typed)).as_deref(),
            Some("The year is before 1900. Type all four digits, such as 2026.")
        );
    }
    assert_eq!(["1900-01-01", "2026-12-01"].map(day).map(words::day_too_early), [None, None]);
    assert_eq!(words::day_ahead(day("2026-12-01")), "1 Dec 2026 is in the future. Keep it, or go back?");
}

/// What is said of a trial of drink 1: weeks before 2026-09-28 and since, each of so many sold that
/// leave 1.00; none where the week was not written down.
fn trial_said(before: &[&str], after: &[&str], today: &str) -> [String; 5] {
    let mut bar = bar(&[], Some("6"));
    let count = i32::try_from(before.len()).unwrap();
    let start = day("2026-09-28");
    let mondays = (-count..).map(|weeks| start.plus_weeks(weeks));
    for (monday, units) in mondays.zip(before.iter().chain(after)).filter(|(_, units)| !units.is_empty()) {
        let week = Week { monday, sold: vec![sold(1, 1, units, "1")] };
        bar.apply(&brimwright::book::Edit::Put(Record::Week(week))).unwrap();
    }
    let trial = Trial {
        id: TrialId::from_random(1),
        name: "Invented change".into(),
        scope: Scope::Drink(drink_id(1)),
        first: start.plus_weeks(-count.max(1)),
        start,
        last: None,
    };
    let judged = judge(&bar, &trial, day(today)).unwrap();
    let shown = |say: fn(&_, &Speaker) -> String| {
        judged.interval.map(|interval| say(&interval, &speaker(System::Metric))).unwrap_or_default()
    };
    [
        words::verdict(judged.verdict).to_string(),
        words::verdict_means(&judged),
        [shown(words::trial_difference), shown(words::trial_interval)].join(" "),
        words::trial_how(&judged, &speaker(System::Metric)),
        words::trial_left_out(&judged),
    ]
}

#[test]
fn what_a_trial_shows() {
    // tests/reference/data/welch.csv, its first row by scipy: 47.767500, 6.831042 degrees, from
    // 20.989791 to 74.545209; the deviations by Python's statistics.stdev: 17.701186, 16.036384.
    let (before, after) = (["812.4", "790.1", "835.25", "801", "822.6"], ["861.3", "840.75", "879.9", "858.2"]);
    let said = trial_said(&before, &after, "2026-10-26");
    let expected = [
        "Better",
        "The weeks since the change brought more than those before. Chance alone would rarely make such a difference.",
        "+$47.77 from +$20.99 to +$74.55",
        "Mean before $812.27 over 5 weeks, with the change $860.04 over 4 weeks: $47.77 more a week. Single weeks lie about $17.70 from their mean before and $16.04 with the change (standard deviation). From these, by Welch's t with 6.8 degrees of freedom, the interval from $20.99 to $74.55: 95 times of 100 such an interval holds the true difference.",
        "",
    ];
    assert_eq!(said, expected);
    let [verdict, means, figures, how, _] = trial_said(&after, &before, "2026-11-02");
    assert_eq!(verdict, "Worse");
    assert!(means.starts_with("The weeks since the change brought less than those before."));
    assert_eq!(figures, "−$47.77 from −$74.55 to −$20.99");
    assert!(how.contains("over 5 weeks: $47.77 less a week."), "{how}");
}

#[test]
fn what_is_not_clear() {
    let said = |before: &[&str], after: &[&str]| trial_said(before, after, "2026-11-23");
    let [verdict, means, ..] = said(&["50", "60", "40", "50"], &["50", "60", "40", "51"]);
    assert_eq!(verdict, "Not yet clear");
    assert_eq!(
        means,
        "The difference may be chance: beside how weeks scatter, and how few there are before the change, it is so small that even 104 weeks more, two years, would likely not make it clear. Weeks from longer before, if you have them, may."
    );
    let [_, means, ..] = said(&["11", "13", "12", "12"], &["12", "16", "13"]);
    assert!(
        means.starts_with("The difference may still be chance. If the weeks go on as they did, it would likely take ")
    );
    let [_, means, ..] = said(&["5", "6"], &["5", "6"]);
    assert_eq!(
        means,
        "The weeks before and since brought the same on average: there is no difference to become clear."
    );
    let [_, means, ..] = said(&["0", "0"], &["0", "0"]);
    assert_eq!(means, "Nothing of it was sold in any of these weeks, so there is nothing to compare.");
    let [verdict, means, figures, how, _] = said(&["5", "5"], &["6", "6"]);
    assert_eq!((verdict.as_str(), figures.as_str()), ("Better", "+$1.00 no scatter to judge by"));
    assert_eq!(
        means,
        "The weeks since the change brought more than those before. But the weeks on each side are all alike, which real weeks never are: check what was written down."
    );
    assert!(how.ends_with("$1.00 more a week. No week differs from the others on its side, so there is no interval."));
}

#[test]
fn what_is_missing() {
    let [verdict, means, figures, how, left_out] = trial_said(&["5", "", "6"], &["", "7", "9"], "2026-10-14");
    assert_eq!(verdict, "Not enough weeks");
    assert_eq!(means, "A comparison needs two weeks on each side, to see how weeks scatter: 1 week more with it.");
    assert_eq!((figures.trim(), how.as_str()), ("", ""));
    assert_eq!(
        left_out,
        "Not written down, so left out: the weeks of 14 Sep 2026, 28 Sep 2026. The week of 12 Oct 2026 is not over yet and not counted."
    );
    let [_, means, _, _, left_out] = trial_said(&[], &[], "2026-12-07");
    assert_eq!(
        means,
        "A comparison needs two weeks on each side, to see how weeks scatter: 2 weeks more before the change and 2 weeks more with it."
    );
    assert_eq!(
        left_out,
        "Not written down, so left out: the weeks of 21 Sep 2026, 28 Sep 2026, 5 Oct 2026, 12 Oct 2026 and 7 more."
    );
}
