//! Sales of today from written weeks, how far weeks swing, and trials.

use super::*;
use crate::book::{Drink, Scope, Trial, TrialId};
use crate::sizes::decision::{Basis, NoAnswer, WeeklySales, trial_of, weekly};
use crate::support::drink_id;

#[test]
fn the_last_eight_weeks_that_are_over_go_before_what_was_typed() {
    let mut book = bar(&three_sizes());
    let number = |book: &Book, container| weekly(book, offer_id(1, container), today()).unwrap();
    assert_eq!(number(&book, 1), WeeklySales { number: Some(exact("40")), basis: Basis::Typed });
    // Nine weeks: 100 in the first, which no longer counts, then 10 to 80. The middle one comes in the last three,
    // and is missing in one of them.
    let weeks = ["09-21", "09-28", "10-05", "10-12", "10-19", "10-26", "11-02", "11-09", "11-16"];
    let small = ["100", "10", "20", "30", "40", "50", "60", "70", "80"];
    for (at, (week, small)) in weeks.into_iter().zip(small).enumerate() {
        let mut lines = vec![(1, small)];
        if at == 6 || at == 8 {
            lines.push((2, "9"));
        }
        write(&mut book, &format!("2026-{week}"), &lines);
    }
    assert_eq!(number(&book, 1), WeeklySales { number: Some(exact("45")), basis: Basis::Weeks(8) });
    assert_eq!(number(&book, 2), WeeklySales { number: Some(exact("6")), basis: Basis::Weeks(3) });
    assert_eq!(number(&book, 3).basis, Basis::Typed, "it is in none of them");
    assert_eq!(number(&bar(&[(1, 1, Some("1"), None)]), 1).basis, Basis::Unknown);
    // The running week is not over.
    write(&mut book, "2026-11-23", &[(1, "1000")]);
    assert_eq!(number(&book, 1).number, Some(exact("45")));
    // One that was on the menu before the eight is missing in them as any other.
    write(&mut book, "2026-09-14", &[(1, "5"), (2, "5")]);
    assert_eq!(number(&book, 2), WeeklySales { number: Some(exact("2.25")), basis: Basis::Weeks(8) });
    // What is typed for a question goes before all of them.
    let told = Told { weekly: vec![(offer_id(1, 1), exact("7"))], ..Told::default() };
    assert_eq!(menu(&book, &told).sold()[0].weekly, WeeklySales::told(exact("7")));
}

/// 20 and 40 in two weeks, and a third in which only shots were written down.
#[test]
fn a_week_without_its_kind_says_nothing_of_a_drink() {
    let mut book = bar(&three_sizes());
    let shot = Drink { kind: DrinkKind::Shot, ..drink(2, "1 L", [line(1, 1, "1 L")]) };
    book.apply(&Edit::Put(Record::Drink(shot))).unwrap();
    for (week, small) in [("11-02", "20"), ("11-09", "40")] {
        write(&mut book, &format!("2026-{week}"), &[(1, small)]);
    }
    let shots = sold(2, 1, "9", "1");
    book.apply(&Edit::Put(Record::Week(Week { monday: day("2026-11-16"), sold: vec![shots] }))).unwrap();
    let number = |book: &Book| weekly(book, offer_id(1, 1), today()).unwrap();
    assert_eq!(number(&book), WeeklySales { number: Some(exact("30")), basis: Basis::Weeks(2) });
    // With a drink of its kind in it, it counts: none of this one was sold.
    write(&mut book, "2026-11-16", &[(2, "3")]);
    assert_eq!(number(&book), WeeklySales { number: Some(exact("20")), basis: Basis::Weeks(3) });
}

/// 60 and 80 before the menu changed, 30 and 50 since: 40.
#[test]
fn weeks_of_another_menu_do_not_count() {
    let mut book = bar(&three_sizes());
    for (week, small) in [("10-19", "60"), ("10-26", "80")] {
        write(&mut book, &format!("2026-{week}"), &[(1, small), (2, "8")]);
    }
    let other = Offer { weekly_from: Some(day("2026-11-02")), ..book.offer(offer_id(1, 1)).unwrap().clone() };
    book.apply(&Edit::Put(Record::Offer(other))).unwrap();
    let number = |book: &Book, container| weekly(book, offer_id(1, container), today()).unwrap();
    assert_eq!(
        number(&book, 1),
        WeeklySales { number: Some(exact("40")), basis: Basis::Typed },
        "until one is written"
    );
    for (week, small) in [("11-09", "30"), ("11-16", "50")] {
        write(&mut book, &format!("2026-{week}"), &[(1, small)]);
    }
    assert_eq!(number(&book, 1), WeeklySales { number: Some(exact("40")), basis: Basis::Weeks(2) });
    assert_eq!(number(&book, 2), WeeklySales { number: Some(exact("4")), basis: Basis::Weeks(4) });
}

/// 10 and 20 before, 90 since a trial began that still runs.
#[test]
fn weeks_of_a_trial_that_runs_do_not_count() {
    let mut book = bar(&three_sizes());
    for (week, small) in [("11-02", "10"), ("11-09", "20"), ("11-16", "90")] {
        write(&mut book, &format!("2026-{week}"), &[(1, small)]);
    }
    let mut mean = |scope, last: Option<&str>| {
        let (id, name, last) = (TrialId::from_random(1), "Invented change".to_string(), last.map(day));
        let trial = Trial { id, name, scope, first: day("2026-11-02"), start: day("2026-11-16"), last };
        book.apply(&Edit::Put(Record::Trial(trial))).unwrap();
        weekly(&book, offer_id(1, 1), today()).unwrap().number
    };
    let (all, before) = (Some(exact("40")), Some(exact("15")));
    assert_eq!(mean(Scope::Menu, Some("2026-11-23")), before, "the running week is its last");
    assert_eq!(mean(Scope::Menu, Some("2026-11-16")), all, "it is over");
    assert_eq!(mean(Scope::Menu, None), all, "nobody says that it ends: it is the menu");
    assert_eq!(mean(Scope::Drink(drink_id(2)), Some("2026-11-23")), all, "it is about another drink");
    assert_eq!(mean(Scope::Drink(drink_id(1)), Some("2026-11-23")), before);
}

#[test]
fn weeks_swing_by_what_was_sold_at_the_profit_of_today() {
    let mut book = bar(&three_sizes());
    let swing = |book: &Book| menu(book, &Told::default()).swing();
    assert_eq!(swing(&book), Err(NoAnswer::NoWeeks));
    write(&mut book, "2026-11-02", &[(1, "40"), (2, "10")]);
    assert_eq!(swing(&book), Err(NoAnswer::OneWeek));
    // 40 * 2.00 + 10 * 3.00 = 110, and 60 * 2.00 = 120: 115 on average, and 7.07 about it.
    write(&mut book, "2026-11-09", &[(1, "60")]);
    let found = swing(&book).unwrap();
    assert_eq!((found.weeks, found.mean, found.is_well_known()), (2, money("115"), false));
    assert_eq!(found.deviation.major().rounded(4), exact("7.0711"));
    // A gain of as much takes 16 weeks a side, one of four times as much two.
    assert_eq!(found.weeks_to_tell(found.deviation), Ok(Some(16)));
    assert_eq!(found.weeks_to_tell(money("28.3")), Ok(Some(2)));
    assert_eq!(found.weeks_to_tell(money("0.1")), Ok(None));
}

#[test]
fn a_trial_begins_on_the_next_monday() {
    let mut book = bar(&three_sizes());
    let trial = |book: &Book| trial_of(book, Scope::Menu, TrialId::from_random(1), "No small", 6, today()).unwrap();
    let set = trial(&book);
    assert_eq!((set.start, set.last, set.first), (day("2026-11-30"), Some(day("2027-01-04")), day("2026-10-05")));
    write(&mut book, "2026-11-02", &[(1, "40")]);
    write(&mut book, "2026-11-23", &[(1, "40")]);
    assert_eq!(trial(&book).first, day("2026-11-02"));
    book.apply(&Edit::Put(Record::Trial(trial(&book)))).unwrap();
}
