//! A further size.

use super::*;
use crate::foundation::measure::{Money, Share};
use crate::sizes::decision::{NoAnswer, Question, Verdict};

/// Juice 1 in the small bottle, 40 at 3.60; the middle one expected, at 4.20, which leaves 1.80.
fn asked(expected: Option<&str>, keeping: &str) -> Result<super::super::Decision, NoAnswer> {
    let book = bar(&[(1, 1, Some("3.6"), Some("40"))]);
    let further = offer_id(1, 2);
    let weekly = expected.map(|number| (further, exact(number))).into_iter().collect();
    let told = Told { prices: vec![(further, money("4.2"))], weekly, keeping: money(keeping), ..Told::default() };
    menu(&book, &told).answer(&Question::Add { size: container_id(2), taken_from: None })
}

#[test]
fn so_many_may_have_bought_the_other() {
    // 20 * 1.80 = 36.00 come, and each taken costs 2.00: with 6.00 to keep it, (36 - 6) / (20 * 2).
    let decision = asked(Some("20"), "6").unwrap();
    assert_eq!(decision.verdict, Verdict::AtMost { at: share("0.75") });
    assert_eq!((decision.now, decision.buyers, decision.movers), (money("80"), exact("20"), exact("20")));
    assert_eq!(decision.gain(Share::ZERO), Ok(money("30")));
    assert_eq!(decision.gain(Share::WHOLE), Ok(money("-10")));
    // If 12 trade down, (12 * (2.00 - 1.80) + 6) / 1.80 new ones are needed.
    assert_eq!(decision.new_buyers_needed(exact("12")).unwrap().unwrap().rounded(4), exact("4.6667"));
    assert_eq!((decision.tipping(), decision.rows[0].break_even), (None, Some(share("0.9"))));
}

#[test]
fn what_costs_more_to_keep_than_it_brings_cannot_pay() {
    let decision = asked(Some("20"), "40").unwrap();
    assert_eq!(decision.verdict, Verdict::CannotPayNew { loss_if_none_taken: money("4") });
}

#[test]
fn a_size_nobody_bought_has_no_sales_until_they_are_typed() {
    // The other juice has no size at all; the size is thought of for it too.
    let offers = vec![offer_id(1, 2), offer_id(2, 2)];
    assert_eq!(asked(None, "0"), Err(NoAnswer::NoSales(offers)));
    assert_eq!(asked(Some("0"), "0"), Err(NoAnswer::NoSales(vec![offer_id(1, 2)])));
}

#[test]
fn a_drink_of_which_none_is_expected_is_not_sold_in_it() {
    // Juice 2 in the small bottle too: with none of it expected in the middle one, all is as if it were not asked.
    let book = bar(&[(1, 1, Some("3.6"), Some("40")), (2, 1, Some("3.6"), Some("10"))]);
    let (expected, none) = ((offer_id(1, 2), exact("20")), (offer_id(2, 2), exact("0")));
    let answered = |weekly: Vec<_>| {
        let told = Told { weekly, ..Told::default() };
        let menu = menu(&book, &told);
        let decision = menu.answer(&Question::Add { size: container_id(2), taken_from: None }).unwrap();
        let cards = menu.keeping_then(&decision, Share::ZERO, exact("4")).unwrap().cards;
        (decision.now, decision.rows.len(), decision.line, cards)
    };
    // 40 at 2.00; two cards and a third.
    let (now, rows, _, cards) = answered(vec![expected, none]);
    assert_eq!((now, rows, cards), (money("80"), 1, 3));
    assert_eq!(answered(vec![expected, none]), answered(vec![expected]));
}

#[test]
fn a_drink_that_is_in_no_other_size_takes_from_nothing() {
    let book = bar(&[(1, 1, Some("3.6"), Some("40"))]);
    let further = offer_id(2, 2);
    let told = Told { prices: vec![(further, money("4.2"))], weekly: vec![(further, exact("20"))], ..Told::default() };
    let decision = menu(&book, &told).answer(&Question::Add { size: container_id(2), taken_from: None }).unwrap();
    assert_eq!((decision.verdict, decision.now), (Verdict::EvenIfAllTaken, Money::ZERO));
    assert_eq!(decision.new_buyers_needed(exact("1")), Ok(None));
}

#[test]
fn nothing_left_of_it_names_its_price() {
    let book = bar(&[(1, 1, Some("3.6"), Some("40"))]);
    let further = offer_id(1, 2);
    let told = Told { prices: vec![(further, money("2"))], weekly: vec![(further, exact("20"))], ..Told::default() };
    let found = menu(&book, &told).answer(&Question::Add { size: container_id(2), taken_from: None });
    assert_eq!(found, Err(NoAnswer::NothingLeft(vec![further])));
}
