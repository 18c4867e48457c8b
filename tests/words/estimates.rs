//! What is said of local prices and of trials.

use brimwright::book::{Book, Record, Scope, Settings, Trial, TrialId, Week};
use brimwright::drink::ledger::Ledger;
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

/// A text as it is seen: blanks that do not break are blanks, and none stands before a percent sign.
fn as_seen(text: String) -> String {
    text.replace('\u{a0}', " ").replace(" %", "%")
}

fn market_said(seen: &[(&str, &str)], ours: Option<&str>) -> String {
    let bar = bar(seen, ours);
    as_seen(words::market(&market(&bar, None, day("2026-11-26")).unwrap(), &bar, &speaker(System::Metric)))
}

// On 3.00 times the root of the size in hundreds of mL: twice the size is 1.4142 times the price.
const ROOT: [(&str, &str); 3] = [("100 mL", "3"), ("225 mL", "4.50"), ("900 mL", "9")];

#[test]
fn what_a_market_shows() {
    let seen = "3 local prices, from 100 mL to 900 mL. Twice the size costs 41.4% more.";
    assert_eq!(market_said(&ROOT, None), seen);
    let name = "Invented drink 1, Invented 400 mL 1";
    // The curve asks 6.00 for 400 mL.
    let with = |price| market_said(&ROOT, Some(price));
    assert_eq!(with("6.24"), format!("{seen} Your {name}: 4.0% above the curve."));
    assert_eq!(with("5.40"), format!("{seen} Your {name}: 10.0% below the curve."));
    assert_eq!(with("6"), format!("{seen} Your {name}: on the curve."));
    let mut two = bar(&ROOT, Some("6.24"));
    for record in [Record::Container(container(2, "200 mL")), Record::Offer(offer(1, 2, Some("5")))] {
        two.apply(&brimwright::book::Edit::Put(record)).unwrap();
    }
    let of_two = words::market(&market(&two, None, day("2026-11-26")).unwrap(), &two, &speaker(System::Metric));
    // The curve asks 4.2426 for 200 mL.
    let farthest = "Farthest from the curve is your Invented drink 1, Invented 200 mL 2: 17.9% above the curve.";
    assert_eq!(as_seen(of_two), format!("{seen} {farthest}"));
    let flat = market_said(&[("200 mL", "5"), ("400 mL", "5"), ("300 mL", "5")], None);
    assert_eq!(flat, "3 local prices, from 200 mL to 400 mL. Twice the size costs the same.");
    let falling = market_said(&[("100 mL", "6"), ("200 mL", "3"), ("400 mL", "1.50")], None);
    assert_eq!(falling, "3 local prices, from 100 mL to 400 mL. Twice the size costs 50.0% less.");
}

#[test]
fn where_a_size_stands() {
    let said = |seen: &[(&str, &str)], price| {
        let bar = bar(seen, Some(price));
        let market = market(&bar, None, day("2026-11-26")).unwrap();
        as_seen(words::against_curve(&market.ours[0].against.unwrap(), &speaker(System::Metric)))
    };
    assert_eq!(said(&ROOT, "6.60"), "10.0% above the curve");
    assert_eq!(said(&ROOT, "5.40"), "10.0% below the curve");
    assert_eq!(said(&ROOT, "6"), "on the curve");
    let small = [("100 mL", "3"), ("225 mL", "4.50"), ("306.25 mL", "5.25")];
    assert_eq!(said(&small, "6.60"), "10.0% above the curve, outside the sizes seen");
    assert_eq!(said(&small, "5.40"), "10.0% below the curve, outside the sizes seen");
    assert_eq!(said(&small, "6"), "on the curve, outside the sizes seen");
    let shots = [("60 mL", "3"), ("90 mL", "4"), ("120 mL", "5")];
    assert_eq!(said(&shots, "6.60"), "too far outside the sizes seen");
}

#[test]
fn how_the_curve_came_about() {
    let bar = bar(&ROOT, None);
    let curve = market(&bar, None, day("2026-11-26")).unwrap().curve.unwrap();
    assert_eq!(
        words::curve(&curve, &bar, &speaker(System::Metric)),
        "Price = $3.00 × (size in hundreds of mL) to the power of 0.50. This is a least-squares line through the logs of sizes and prices. R² is 1.00: 1 is a perfect fit, 0 is no fit."
    );
}

#[test]
fn a_curve_of_equal_prices_says_so() {
    let bar = bar(&[("200 mL", "5"), ("400 mL", "5"), ("300 mL", "5")], None);
    let curve = market(&bar, None, day("2026-11-26")).unwrap().curve.unwrap();
    assert_eq!(
        words::curve(&curve, &bar, &speaker(System::Metric)),
        "Price = $5.00 × (size in hundreds of mL) to the power of 0.00. This is a least-squares line through the logs of sizes and prices. Every price is the same."
    );
}

#[test]
fn a_curve_in_ounces_names_them() {
    let mut bar = bar(&ROOT, None);
    let settings = Settings { units: System::UsCustomary, ..bar.settings().clone() };
    bar.apply(&brimwright::book::Edit::Put(Record::Settings(Box::new(settings)))).unwrap();
    let curve = market(&bar, None, day("2026-11-26")).unwrap().curve.unwrap();
    // 3.00 times the root of 0.295735.
    assert!(
        words::curve(&curve, &bar, &speaker(System::UsCustomary))
            .starts_with("Price = $1.63 × (size in fl oz) to the power of 0.50. This is")
    );
}

#[test]
fn why_there_is_no_curve() {
    assert_eq!(
        words::no_curve(NoCurve::TooFew(0)),
        "No local prices yet. Add three or more in different sizes to see where yours stand."
    );
    assert_eq!(
        market_said(&[("100 mL", "3")], None),
        "One price so far. A curve needs three or more in different sizes."
    );
    assert_eq!(
        market_said(&ROOT[..2], None),
        "Two prices so far. A curve needs three or more to show how prices vary."
    );
    assert_eq!(
        market_said(&[("100 mL", "3"), ("100 mL", "4"), ("100 mL", "5")], None),
        "These prices are all for about one size. Add a smaller or larger size."
    );
    // What stands in the field while 2026 is typed.
    for typed in ["0002-12-01", "0020-12-01", "0202-12-01", "1899-12-31"] {
        assert_eq!(words::day_too_early(day(typed)).as_deref(), Some("Type the year with four digits, such as 2026."));
    }
    assert_eq!(["1900-01-01", "2026-12-01"].map(day).map(words::day_too_early), [None, None]);
    let ahead = day("2026-12-01");
    assert_eq!(words::day_ahead(ahead), format!("{} is in the future. Keep this date?", words::day(ahead)));
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
    let judged = judge(&bar, &Ledger::of(&bar), &trial, day(today)).unwrap();
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
        "The weeks since the change earned more than the weeks before. Chance alone would rarely do that.",
        "+$47.77 +$20.99 to +$74.55",
        "Average before: $812.27 a week over 5 weeks. Average with the change: $860.04 a week over 4 weeks. Difference: $47.77 more a week. Weeks differ from their average by about $17.70 before and $16.04 with the change (standard deviation). Welch’s t-test with 6.8 degrees of freedom gives a range from $20.99 to $74.55. In 95 of 100 cases, such a range includes the true difference.",
        "",
    ];
    assert_eq!(said, expected);
    let [verdict, means, figures, how, _] = trial_said(&after, &before, "2026-11-02");
    assert_eq!(verdict, "Worse");
    assert!(means.starts_with("The weeks since the change earned less than the weeks before."));
    assert_eq!(figures, "−$47.77 −$74.55 to −$20.99");
    assert!(how.contains("over 5 weeks. Difference: $47.77 less a week."), "{how}");
}

#[test]
fn what_is_not_clear() {
    let said = |before: &[&str], after: &[&str]| trial_said(before, after, "2026-11-23");
    let [verdict, means, ..] = said(&["50", "60", "40", "50"], &["50", "60", "40", "51"]);
    assert_eq!(verdict, "Too close to tell", "two years more would not settle it");
    assert_eq!(
        means,
        "The difference may be chance. Normal ups and downs are bigger, and you have few weeks before the change. Even 104 more weeks, two years, would likely not settle the question. Earlier weeks may, if you have them."
    );
    let [verdict, means, ..] = said(&["11", "13", "12", "12"], &["12", "16", "13"]);
    assert_eq!(verdict, "Not clear yet");
    assert!(
        means.starts_with("The difference may still be chance. If sales go on like this, ")
            && means.ends_with(" more weeks would likely settle the question."),
        "{means}"
    );
    let [_, means, ..] = said(&["5", "6"], &["5", "6"]);
    assert_eq!(means, "The weeks before and since earned the same on average.");
    let [_, means, ..] = said(&["0", "0"], &["0", "0"]);
    assert_eq!(means, "No sales in any of these weeks, so you have nothing to compare.");
    let [verdict, means, figures, how, _] = said(&["5", "5"], &["6", "6"]);
    assert_eq!((verdict.as_str(), figures.as_str()), ("Better", "+$1.00 Not known: weeks alike"));
    assert_eq!(
        means,
        "The weeks since the change earned more than the weeks before. But all weeks on each side are the same, and real weeks never are. Check your entries."
    );
    assert!(how.ends_with("$1.00 more a week. All weeks on each side are the same, so a range cannot be figured."));
}

#[test]
fn what_is_missing() {
    let [verdict, means, figures, how, left_out] = trial_said(&["5", "", "6"], &["", "7", "9"], "2026-10-14");
    assert_eq!(verdict, "Needs more weeks");
    assert_eq!(
        means,
        "A trial needs two weeks on each side, to see how weeks go up and down. Add 1 more week with the change."
    );
    assert_eq!((figures.trim(), how.as_str()), ("", ""));
    assert_eq!(
        left_out,
        "No entries, so left out: the weeks of Sep 14, 2026, Sep 28, 2026. The week of Oct 12, 2026 is not over, so not counted yet."
    );
    let [_, means, _, _, left_out] = trial_said(&[], &[], "2026-12-07");
    assert_eq!(
        means,
        "A trial needs two weeks on each side, to see how weeks go up and down. Add 2 more weeks before the change. Add 2 more weeks with the change."
    );
    assert_eq!(
        left_out,
        "No entries, so left out: the weeks of Sep 21, 2026, Sep 28, 2026, Oct 5, 2026, Oct 12, 2026 and 7 more."
    );
}
