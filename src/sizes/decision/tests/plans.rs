//! How many sizes.

use super::*;
use crate::foundation::measure::Share;
use crate::sizes::decision::{Answered, NoAnswer, Question, Verdict};

fn ids(sizes: &[u64]) -> Vec<crate::book::ContainerId> {
    sizes.iter().map(|id| container_id(*id)).collect()
}

#[test]
fn plans_are_in_the_order_of_their_evidence_and_today_is_none_of_them() {
    // 80 * 2 = 80, 30 * 3 = 90 and 10 * 4 = 40: 210.00 today, from 80 buyers.
    let book = bar(&three_sizes());
    let plans = menu(&book, &Told::default()).plans().unwrap();
    assert_eq!((plans.today.profit, plans.today.buyers, plans.today.cards), (money("210"), exact("80"), 3));
    let listed = |list: &[super::super::Plan]| list.iter().map(|plan| plan.sizes.clone()).collect::<Vec<_>>();
    // Middle and large have 40 of 80, the middle alone 30, the large alone 10.
    assert_eq!(listed(&plans.pays), [ids(&[2, 3]), ids(&[2]), ids(&[3])]);
    // Small and middle have 70, small and large 50, the small 40.
    assert_eq!(listed(&plans.cannot_pay), [ids(&[1, 2]), ids(&[1, 3]), ids(&[1])]);
    let middle = &plans.pays[1];
    // 90 stay of 210; the 50 others bring 150: 120 / 150.
    assert_eq!((middle.break_even, middle.verdict), (Some(share("0.8")), Verdict::AtLeast { at: share("0.8") }));
    assert_eq!((middle.evidence, middle.others, middle.cards), (share("0.375"), exact("50"), 1));
    assert_eq!(middle.line.at(share("0.5")), Ok(money("165")));
    assert!(!middle.hardly_tried());
    assert_eq!(plans.cannot_pay[2].break_even, Some(share("1.625")));
}

#[test]
fn a_plan_is_the_decision_to_keep_its_sizes() {
    let book = bar(&three_sizes());
    let told = Told { keeping: money("11"), ..Told::default() };
    let menu = menu(&book, &told);
    let plans = menu.plans().unwrap();
    for plan in plans.pays.iter().chain(&plans.cannot_pay) {
        let decision = menu.answer(&Question::Keep { sizes: plan.sizes.clone() }).unwrap();
        assert_eq!((decision.break_even(), decision.verdict), (Ok(plan.break_even), plan.verdict));
        assert_eq!(decision.tipping(), plan.tipping());
        let gain = plan.line.at(share("0.6")).unwrap().minus(plans.today.profit);
        assert_eq!(decision.gain(share("0.6")), gain);
    }
    // Both bear what keeping their sizes costs: 80 + 90 + 40 less 33, and 80 less 11 where only the small is left.
    let small = plans.pays.iter().chain(&plans.cannot_pay).find(|plan| plan.sizes == ids(&[1])).unwrap();
    assert_eq!((plans.today.profit, small.line.at(Share::ZERO)), (money("177"), Ok(money("69"))));
}

#[test]
fn a_size_that_sells_none_goes_without_asking_anything_of_buyers() {
    let book = bar(&[(1, 1, Some("3.6"), Some("40")), (1, 3, Some("8.8"), Some("0"))]);
    let plans = menu(&book, &Told::default()).plans().unwrap();
    let small = plans.pays.iter().find(|plan| plan.sizes == ids(&[1])).unwrap();
    assert_eq!((small.break_even, small.verdict), (None, Verdict::EvenIfAllLeave));
    assert_eq!((small.evidence, small.others, small.line.at(Share::ZERO)), (Share::WHOLE, exact("0"), Ok(money("80"))));
}

#[test]
fn fewer_than_a_tenth_of_the_buyers_are_hardly_a_try() {
    let sold = |large| [(1, 1, Some("3.6"), Some("90")), (1, 3, Some("8.8"), Some(large))];
    let hardly = |large| {
        let book = bar(&sold(large));
        menu(&book, &Told::default()).plans().unwrap().pays[0].hardly_tried()
    };
    assert!(hardly("9"));
    assert!(!hardly("10"));
}

#[test]
fn a_size_nobody_bought_is_in_no_plan_until_its_sales_are_typed() {
    let book = bar(&[(1, 1, Some("3.6"), Some("40")), (1, 3, Some("8.8"), Some("10"))]);
    let further = offer_id(1, 2);
    let plans = menu(&book, &Told::default()).plans().unwrap();
    assert!(plans.pays.iter().chain(&plans.cannot_pay).all(|plan| !plan.sizes.contains(&container_id(2))));
    // 12 expected at 5.40, of whom a half would have bought the small one: all three sizes bring
    // 34 * 2.00 + 12 * 3.00 + 40.00 = 144.00 against 120.00, and nobody has to turn.
    let told = Told {
        prices: vec![(further, money("5.4"))],
        weekly: vec![(further, exact("12"))],
        taken: vec![(further, share("0.5"))],
        ..Told::default()
    };
    let menu = menu(&book, &told);
    let plans = menu.plans().unwrap();
    let of = |sizes: &[u64]| plans.pays.iter().find(|plan| plan.sizes == ids(sizes)).unwrap();
    let all = of(&[1, 2, 3]);
    assert_eq!((all.line.at(Share::ZERO), all.verdict), (Ok(money("144")), Verdict::EvenIfAllLeave));
    assert_eq!((all.break_even, all.evidence, all.cards), (None, Share::WHOLE, 3));
    // Without the small one: 36.00 + 40.00, and its 34 others bring 102.00 in the middle.
    let two = of(&[2, 3]);
    assert_eq!((two.line.intercept, two.line.slope), (money("76"), money("102")));
    let kept = menu.answer(&Question::Keep { sizes: ids(&[2, 3]) }).unwrap();
    assert_eq!((kept.break_even(), kept.now), (Ok(two.break_even), money("80")));
    // Untyped, each of the 12 would have bought the small one: 24.00 fewer, less what stays of it.
    let told = Told { taken: Vec::new(), ..told };
    let plans = super::menu(&book, &told).plans().unwrap();
    let all = plans.pays.iter().find(|plan| plan.sizes.len() == 3).unwrap();
    assert_eq!(all.line.intercept, money("132"));
}

#[test]
fn an_owners_answer_puts_plans_in_the_order_of_profit() {
    let book = bar(&three_sizes());
    let plans = menu(&book, &Told::default()).plans().unwrap();
    // All ten stay: as at 100 %.
    let loyal = Answered::of_ten(exact("10")).unwrap();
    let ordered = plans.by_owner(&loyal);
    assert_eq!(ordered[0].0.sizes, ids(&[3]));
    for (plan, profit) in &ordered {
        assert!(profit.minus(plan.line.at(Share::WHOLE).unwrap()).unwrap().major().abs() < exact("0.000001"));
    }
    // Seven of ten stay: the large one loses nearly all whom it has not.
    let ordered = plans.by_owner(&Answered::of_ten(exact("7")).unwrap());
    assert_eq!(ordered.last().unwrap().0.sizes, ids(&[3]));
    assert_eq!((Answered::of_ten(exact("0")), Answered::of_ten(exact("10.5"))), (None, None));
    assert_eq!(Answered::of_ten(exact("8.6")).unwrap().loses().unwrap().fraction().rounded(9), exact("0.14"));
}

#[test]
fn an_owners_answer_decides_which_plans_pay() {
    let book = bar(&three_sizes());
    let plans = menu(&book, &Told::default()).plans().unwrap();
    let of = |sizes: &[u64]| {
        plans.pays.iter().chain(&plans.cannot_pay).find(|plan| plan.sizes == ids(sizes)).unwrap().clone()
    };
    let guess =
        |plan: &super::super::Plan, stay| plan.against(&plans.today, &Answered::of_ten(exact(stay)).unwrap()).unwrap();
    // Middle and large pay if two of three stay. A price half higher for half more keeps (1.5 ^ 0.75) ^ e of them.
    // If nine of ten stay at 10 % more, e is -1.105 and 71.5 % stay; if eight, e is -2.341 and 49.1 %.
    let up = of(&[2, 3]);
    let (nine, eight) = (guess(&up, "9"), guess(&up, "8"));
    assert_eq!((nine.pays(), eight.pays()), (true, false));
    assert_eq!(nine.stay.unwrap().fraction().rounded(3), exact("0.715"));
    assert_eq!(eight.stay.unwrap().fraction().rounded(3), exact("0.491"));
    assert_eq!(nine.gain, nine.profit.minus(plans.today.profit).unwrap());
    // Down, a lower price draws more than there are: what cannot pay with the buyers of today may pay so.
    let down = of(&[1]);
    let (nine, seven) = (guess(&down, "9"), guess(&down, "7"));
    assert!(nine.stay.unwrap() > Share::WHOLE && seven.stay.unwrap() > nine.stay.unwrap());
    assert!(!down.verdict.can_pay() && !nine.pays() && seven.pays(), "{nine:?} {seven:?}");
    for guess in [nine, seven] {
        let at = down.line.at(guess.stay.unwrap()).unwrap();
        assert!(at.minus(guess.profit).unwrap().major().abs() < exact("0.000001"));
    }
}

#[test]
fn one_size_or_no_sales_make_no_plan() {
    let of = |offers: &[Sold]| menu(&bar(offers), &Told::default()).plans();
    assert_eq!(of(&[(1, 1, Some("3.6"), Some("40"))]), Err(NoAnswer::OneSize(container_id(1))));
    let unsold = [(1, 1, Some("3.6"), None), (1, 2, Some("5.4"), None)];
    assert_eq!(of(&unsold), Err(NoAnswer::NoSales(vec![offer_id(1, 1), offer_id(1, 2)])));
}
