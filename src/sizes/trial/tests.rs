use super::*;
use crate::book::{Drink, DrinkKind, Edit, Offer, Record, Settings, Sold, TrialId};
use crate::support::{
    book, container, day, drink, drink_id, exact, ingredient, line, money, offer_id, pack, settings, sold,
};

/// A book of two drinks, of which so much was sold in these weeks.
fn bar(weeks: &[(&str, &[Sold])]) -> Book {
    let shot = Drink { kind: DrinkKind::Shot, ..drink(2, "1 L", [line(1, 1, "1 L")]) };
    let records = [
        Record::Ingredient(ingredient(1, [pack(1, "1 L", "4")])),
        Record::Container(container(1, "250 mL")),
        Record::Drink(drink(1, "1 L", [line(1, 1, "1 L")])),
        Record::Drink(shot),
    ];
    let week = |(monday, sold): &(&str, &[Sold])| Record::Week(Week { monday: day(monday), sold: sold.to_vec() });
    book(settings(), records.into_iter().chain(weeks.iter().map(week)))
}

/// A bar that sold so many of drink 1, each of which contributed 2, week by week from 2026-09-07.
/// A week that was not written down is `None`.
fn sold_so(units: &[Option<&str>]) -> Book {
    let mondays = (0..).map(|week| day("2026-09-07").plus_weeks(week).to_string());
    let sold: Vec<_> =
        mondays.zip(units).filter_map(|(monday, units)| Some((monday, [sold(1, 1, (*units)?, "2")]))).collect();
    let weeks: Vec<(&str, &[Sold])> = sold.iter().map(|(monday, sold)| (monday.as_str(), sold.as_slice())).collect();
    bar(&weeks)
}

/// Four weeks before, and the change from 2026-10-05 on.
fn trial() -> Trial {
    Trial {
        id: TrialId::from_random(1),
        name: "Invented change".into(),
        scope: Scope::Menu,
        first: day("2026-09-07"),
        start: day("2026-10-05"),
        last: None,
    }
}

fn judged(book: &Book, today: &str) -> Judged {
    judge(book, &Ledger::of(book), &trial(), day(today)).unwrap()
}

fn mondays(weeks: &Weeks) -> Vec<String> {
    weeks.counted.iter().map(|week| week.monday.to_string()).collect()
}

#[test]
fn a_week_is_what_the_scope_contributed() {
    let book = bar(&[
        ("2026-09-07", &[sold(1, 1, "10", "2.5"), sold(2, 1, "4", "-0.25")]),
        ("2026-09-14", &[sold(2, 1, "6", "1")]),
    ]);
    let sums = |scope| {
        let judged = judge(&book, &Ledger::of(&book), &Trial { scope, ..trial() }, day("2026-11-26")).unwrap();
        judged.before.counted.iter().map(|week| (week.units, week.profit)).collect::<Vec<_>>()
    };
    assert_eq!(sums(Scope::Menu), [(exact("14"), money("24")), (exact("6"), money("6"))]);
    assert_eq!(sums(Scope::Kind(DrinkKind::Shot)), [(exact("4"), money("-1")), (exact("6"), money("6"))]);
    // A week in which none of it was sold counts as nothing sold.
    assert_eq!(sums(Scope::Drink(drink_id(1))), [(exact("10"), money("25")), (Exact::ZERO, Money::ZERO)]);
}

/// 10 that contribute 2.00 after 0.30 of overhead, and 10 without a note of it: they bear the 0.40 of now.
#[test]
fn a_week_counts_what_changes_with_the_number() {
    let noted = Sold { overhead: Some(money("0.30")), ..sold(1, 1, "10", "2") };
    let mut book = bar(&[("2026-09-07", &[noted]), ("2026-09-14", &[sold(1, 1, "10", "2")])]);
    let overhead = Settings { overhead: money("0.40"), ..settings() };
    let priced = Offer { price: Some(money("5")), ..Offer::new(offer_id(1, 1)) };
    for record in [Record::Settings(Box::new(overhead)), Record::Offer(priced)] {
        book.apply(&Edit::Put(record)).unwrap();
    }
    let judged = judged(&book, "2026-11-26");
    let profits: Vec<Money> = judged.before.counted.iter().map(|week| week.profit).collect();
    assert_eq!(profits, [money("23"), money("24")]);
}

#[test]
fn weeks_that_were_not_written_down_are_named() {
    let book = sold_so(&[Some("5"), None, Some("6"), None, None, Some("9"), Some("9")]);
    let judged = judged(&book, "2026-11-02");
    assert_eq!(mondays(&judged.before), ["2026-09-07", "2026-09-21"]);
    assert_eq!(judged.before.missing, ["2026-09-14", "2026-09-28"].map(day));
    assert_eq!(mondays(&judged.after), ["2026-10-12", "2026-10-19"]);
    assert_eq!(judged.after.missing, ["2026-10-05", "2026-10-26"].map(day));
}

#[test]
fn the_week_of_today_is_not_over() {
    let book = sold_so(&[Some("5"), Some("6"), Some("5"), Some("6"), Some("9"), Some("8"), Some("1")]);
    let wednesday = judged(&book, "2026-10-21");
    assert_eq!(mondays(&wednesday.after), ["2026-10-05", "2026-10-12"]);
    assert_eq!((wednesday.running, wednesday.after.missing.as_slice()), (Some(day("2026-10-19")), [].as_slice()));
    let monday_after = judged(&book, "2026-10-26");
    assert_eq!((monday_after.running, monday_after.after.counted.len()), (None, 3));
    // Before the change has begun, the running week is one of those before.
    let early = judged(&book, "2026-09-23");
    assert_eq!((early.running, early.before.counted.len()), (Some(day("2026-09-21")), 2));
    assert_eq!((early.after.counted.len(), early.after.missing.len()), (0, 0));
}

#[test]
fn a_trial_ends_with_its_last_week() {
    let book = sold_so(&[Some("5"), Some("6"), Some("5"), Some("6"), Some("9"), Some("8"), Some("1")]);
    let ended = Trial { last: Some(day("2026-10-12")), ..trial() };
    let judged = judge(&book, &Ledger::of(&book), &ended, day("2026-10-21")).unwrap();
    assert_eq!((mondays(&judged.after).len(), judged.running), (2, None));
    assert_eq!(judged.verdict, Verdict::Better);
}

#[test]
fn verdicts() {
    let verdict = |units: [&str; 8]| judged(&sold_so(&units.map(Some)), "2026-11-26").verdict;
    assert_eq!(verdict(["50", "52", "48", "50", "70", "71", "69", "70"]), Verdict::Better);
    assert_eq!(verdict(["70", "71", "69", "70", "50", "52", "48", "50"]), Verdict::Worse);
    assert_eq!(verdict(["50", "60", "40", "50", "55", "45", "40", "60"]), Verdict::NotYetClear(More::NoDifference));
    assert_eq!(verdict(["0"; 8]), Verdict::NotYetClear(More::NoDifference));
    assert_eq!(verdict(["50", "60", "40", "50", "50", "60", "40", "51"]), Verdict::NotYetClear(More::TooMany));
    assert_eq!(verdict(["5"; 8]), Verdict::NotYetClear(More::NoDifference));
    // No scatter on either side, and a difference.
    assert_eq!(verdict(["5", "5", "5", "5", "6", "6", "6", "6"]), Verdict::Better);
}

#[test]
fn two_weeks_on_each_side_are_needed() {
    let verdict = |units: &[Option<&str>]| judged(&sold_so(units), "2026-11-26").verdict;
    assert_eq!(verdict(&[]), Verdict::NotEnough { before: 2, after: 2 });
    assert_eq!(verdict(&[Some("5")]), Verdict::NotEnough { before: 1, after: 2 });
    let one_after = [Some("5"), Some("6"), None, None, Some("9")];
    assert_eq!(verdict(&one_after), Verdict::NotEnough { before: 0, after: 1 });
    assert_eq!(judged(&sold_so(&one_after), "2026-11-26").interval, None);
}

#[test]
fn nothing_sold_is_told_from_nothing_written_down() {
    let judged = judged(&sold_so(&["0"; 8].map(Some)), "2026-11-02");
    assert!(judged.before.nothing_sold() && judged.after.nothing_sold());
    assert_eq!((judged.before.counted.len(), judged.before.missing.len()), (4, 0));
}

/// The latest of the same part of the menu and the same name; one that was renamed is another.
#[test]
fn the_trial_of_a_question_is_found_by_its_part_of_the_menu_and_its_name() {
    let mut book = bar(&[]);
    let put = |book: &mut Book, id, scope, name: &str, start| {
        let trial = Trial { id: TrialId::from_random(id), name: name.into(), scope, start: day(start), ..trial() };
        book.apply(&Edit::Put(Record::Trial(trial))).unwrap();
    };
    let shots = Scope::Kind(DrinkKind::Shot);
    put(&mut book, 1, shots, "Drop the small", "2026-10-05");
    put(&mut book, 2, shots, "Drop the small", "2026-11-02");
    put(&mut book, 3, Scope::Menu, "Drop the small", "2026-11-09");
    put(&mut book, 4, shots, "Drop the small, again", "2026-11-16");
    let found = |scope, name| trial_for(&book, scope, name).map(|trial| trial.id);
    assert_eq!(found(shots, "Drop the small"), Some(TrialId::from_random(2)));
    assert_eq!(found(Scope::Menu, "Drop the small"), Some(TrialId::from_random(3)));
    assert_eq!(found(shots, "Drop the large"), None);
}
