//! Plans by hand: juice at 4.00 a litre in 300 and 500 mL bottles, and a 400 mL one that is new.

use super::*;
use crate::book::{Container, ContainerId, DrinkKind, Edit, Offer, PackagingPart, Record, ScenarioId, Scope, Tier};
use crate::book::{Drink, Pack, Packaging};
use crate::drink::ledger::{Ledger, OfferError};
use crate::foundation::measure::{Exact, Money, Share};
use crate::sizes::side_by_side::sold_in;
use crate::support::{
    book, container, container_id, drink, drink_id, exact, ingredient, line, money, offer, offer_id, pack,
    packaging_id, settings, share, use_of, vessel,
};

const SMALL: ContainerId = ContainerId::from_random(1);
const LARGE: ContainerId = ContainerId::from_random(2);
const NEW: ContainerId = ContainerId::from_random(3);

/// Two blended drinks of 4.00 a litre; bottles at 0.10 in packs of 100 and one lid for all at
/// 0.02 in packs of 500. Today the first sells 30 small at 3.00 and 20 large at 4.50 a week, the
/// second has small at 2.80 and no weekly number. A pressed drink besides, in a large bottle.
fn bar() -> Book {
    let bottle = |id: u64| Packaging { ..vessel(id, [pack(1, "100 ea", "10")]) };
    let lid = Packaging { part: PackagingPart::Closure, ..vessel(9, [pack(1, "500 ea", "10")]) };
    let sold = |id: u64, brimful: &str| {
        Record::Container(Container { set: vec![use_of(id, "1"), use_of(9, "1")], ..container(id, brimful) })
    };
    let a_week = |offer: Offer, weekly: &str| Record::Offer(Offer { weekly: Some(exact(weekly)), ..offer });
    book(
        settings(),
        [
            Record::Ingredient(ingredient(1, [pack(1, "1 L", "4")])),
            Record::Packaging(bottle(1)),
            Record::Packaging(bottle(2)),
            Record::Packaging(bottle(3)),
            Record::Packaging(lid),
            sold(1, "300 mL"),
            sold(2, "500 mL"),
            sold(3, "400 mL"),
            Record::Drink(drink(1, "500 mL", [line(1, 1, "500 mL")])),
            Record::Drink(drink(2, "500 mL", [line(1, 1, "500 mL")])),
            Record::Drink(Drink { kind: DrinkKind::Pressed, ..drink(3, "500 mL", [line(1, 1, "500 mL")]) }),
            a_week(offer(1, 1, Some("3")), "30"),
            a_week(offer(1, 2, Some("4.50")), "20"),
            Record::Offer(offer(2, 1, Some("2.80"))),
            a_week(offer(3, 2, Some("5")), "10"),
        ],
    )
}

const BLENDED: Scope = Scope::Kind(DrinkKind::Blended);

fn made(guess: &Guess, sizes: &[ContainerId]) -> Plan {
    let book = bar();
    plan(&book, &Candidates::of(&book, BLENDED, &[LARGE, SMALL, NEW]), guess, sizes).unwrap()
}

fn weekly(plan: &Plan) -> Vec<(u64, ContainerId, Option<Exact>)> {
    let drink = |offer: &Offer| (1..4).find(|id| drink_id(*id) == offer.drink).unwrap();
    plan.offers.iter().map(|offer| (drink(offer), offer.container, offer.weekly)).collect()
}

fn cover(weeks: &str) -> Guess {
    Guess { cover: exact(weeks), ..Guess::default() }
}

fn share_of(size: ContainerId, of: &str) -> (ContainerId, Share) {
    (size, share(of))
}

#[test]
fn todays_sizes_earn_what_they_earn_today() {
    // Small: 3.00 - 1.20 - 0.10 - 0.02 = 1.68; large: 4.50 - 2.00 - 0.12 = 2.38.
    let plan = made(&cover("4"), &[SMALL, LARGE]);
    let expected = [(1, SMALL, Some(exact("30"))), (1, LARGE, Some(exact("20"))), (2, SMALL, None), (2, LARGE, None)];
    assert_eq!(weekly(&plan), expected);
    let totals = &plan.totals;
    assert_eq!(totals.contribution, money("98"), "30 * 1.68 + 20 * 2.38");
    assert_eq!((totals.sizes, totals.cards, totals.units, totals.without_number), (2, 4, exact("50"), 2));
    assert_eq!((totals.kinds(PackagingPart::Vessel), totals.kinds(PackagingPart::Closure)), (2, 1));
    // Four weeks: 120 and 80 bottles, two packs and one; 200 lids of 500.
    assert_eq!((totals.cash, totals.weeks), (money("40"), Some(exact("5"))));
    assert_eq!(totals.first_out(), Some(packaging_id(2)), "100 large bottles at 20 a week");
}

#[test]
fn one_size_takes_over_all_sales_at_the_price_asked_or_suggested() {
    let plan = made(&cover("4"), &[NEW]);
    // 1.60 + 0.12 of goods at a target of 65 %: 4.914..., rounded up to 4.92. 3.20 are left.
    assert_eq!(plan.offers[0].price, Some(money("4.92")));
    assert_eq!((plan.offers[0].weekly, plan.totals.contribution), (Some(exact("50")), money("160")));
    let small = made(&cover("4"), &[SMALL]);
    assert_eq!((small.offers[0].price, small.totals.contribution), (Some(money("3")), money("84")));
}

#[test]
fn a_share_that_is_typed_holds_for_every_drink() {
    let shares = vec![share_of(SMALL, "0.2"), share_of(NEW, "0.2")];
    let guess = Guess { shares, unknown: Some(exact("12")), ..cover("4") };
    let plan = made(&guess, &[SMALL, NEW]);
    let half = [(1, SMALL, "25"), (1, NEW, "25"), (2, SMALL, "6"), (2, NEW, "6")];
    assert_eq!(weekly(&plan), half.map(|(drink, size, weekly)| (drink, size, Some(exact(weekly)))));
    // Large has no share of its own: 20 of today's 50, 0.4, against 0.2 for small.
    let plan = made(&guess, &[SMALL, LARGE]);
    assert_eq!(plan.offers[0].weekly, Some(exact("16.67")));
    assert_eq!(plan.offers[1].weekly, Some(exact("33.33")));
}

#[test]
fn sales_lost_with_a_plan_are_lost_from_each_drink() {
    let guess = Guess { kept: vec![(vec![SMALL], share("0.9"))], ..cover("4") };
    assert_eq!(made(&guess, &[SMALL]).totals.contribution, money("75.6"), "45 * 1.68");
    assert_eq!(made(&guess, &[LARGE]).totals.units, exact("50"), "the other plans keep theirs");
}

#[test]
fn sizes_stand_in_the_order_of_their_fill_and_once() {
    let book = bar();
    let candidates = Candidates::of(&book, Scope::Menu, &[LARGE, SMALL, NEW, LARGE]);
    assert_eq!(candidates.sizes(), [SMALL, NEW, LARGE]);
    assert_eq!(sold_in(&book, Scope::Menu), [SMALL, LARGE]);
    assert_eq!(sold_in(&book, Scope::Kind(DrinkKind::Pressed)), [LARGE]);
    assert_eq!(candidates.share_today(LARGE).unwrap(), share("0.5"), "30 of 60 on the whole menu");
    assert_eq!(candidates.without_number().collect::<Vec<_>>(), [drink_id(2)]);
}

#[test]
fn every_plan_of_up_to_three_sizes_is_there_and_the_best_first() {
    let book = bar();
    let candidates = Candidates::of(&book, BLENDED, &[SMALL, LARGE, NEW]);
    let plans = plans(&book, &candidates, &cover("4"), &[]).unwrap();
    let earned: Vec<Money> = plans.iter().map(|plan| plan.totals.contribution).collect();
    assert_eq!(plans.len(), 7);
    assert_eq!(plans[0].sizes, [NEW], "160 a week");
    assert!(earned.is_sorted_by(|one, next| one >= next), "{earned:?}");
    // Nothing is sold in the new one beside another today, so it adds nothing: 84 either way.
    let place = |sizes: &[ContainerId]| plans.iter().position(|plan| plan.sizes == sizes).unwrap();
    assert_eq!(plans[place(&[SMALL])].totals.contribution, plans[place(&[SMALL, NEW])].totals.contribution);
    assert!(place(&[SMALL]) < place(&[SMALL, NEW]), "of equals the one of fewer sizes");
}

#[test]
fn an_own_plan_of_more_sizes_is_ranked_with_them() {
    let mut book = bar();
    book.apply(&Edit::Put(Record::Container(container(4, "700 mL")))).unwrap();
    let all = [SMALL, LARGE, NEW, container_id(4)];
    let candidates = Candidates::of(&book, BLENDED, &all);
    let own = |sizes: &[ContainerId]| plans(&book, &candidates, &cover("4"), &[sizes.to_vec()]).unwrap();
    let unknown = [SMALL, LARGE, NEW, container_id(4), container_id(9)];
    assert_eq!(own(&unknown).len(), 14, "what is no candidate makes no plan");
    assert_eq!((own(&[]).len(), own(&all).len(), own(&[SMALL]).len()), (14, 15, 14));
    assert!(own(&all).iter().any(|plan| plan.sizes.len() == 4));
}

#[test]
fn what_cannot_be_made_is_named_and_its_sales_go_to_the_other_sizes() {
    let mut book = bar();
    let bare = Container { set: vec![use_of(8, "1")], ..container(4, "200 mL") };
    book.apply(&Edit::Put(Record::Packaging(vessel(8, [])))).unwrap();
    book.apply(&Edit::Put(Record::Container(bare))).unwrap();
    let candidates = Candidates::of(&book, Scope::Drink(drink_id(1)), &[SMALL, container_id(4)]);
    let guess = Guess { shares: vec![share_of(container_id(4), "1")], ..cover("4") };
    let both = plan(&book, &candidates, &guess, &[SMALL, container_id(4)]).unwrap();
    assert_eq!(both.left_out.iter().map(|left| left.offer).collect::<Vec<_>>(), [offer_id(1, 4)]);
    assert!(matches!(both.left_out[0].why, Why::NotMade(OfferError::Cost(_))));
    assert_eq!(weekly(&both), [(1, SMALL, Some(exact("50")))]);
    let none = plan(&book, &candidates, &guess, &[container_id(4)]).unwrap();
    assert_eq!((none.offers.len(), none.totals.contribution, none.totals.weeks), (0, Money::ZERO, None));
}

/// What changes from one of the plans to the other, with half of what is sold in the new size
/// where it is in the plan.
fn changed(from: &[ContainerId], to: &[ContainerId], keeping: &str, price: &str) -> Change {
    let mut book = bar();
    book.apply(&Edit::Put(Record::Offer(offer(1, 3, Some(price))))).unwrap();
    let candidates = Candidates::of(&book, Scope::Drink(drink_id(1)), &[SMALL, LARGE, NEW]);
    let guess = Guess { shares: vec![share_of(SMALL, "0.5"), share_of(NEW, "0.5")], ..cover("4") };
    let plan = |sizes| plan(&book, &candidates, &guess, sizes).unwrap();
    change(candidates.ledger(), &plan(from), &plan(to), money(keeping)).unwrap()
}

#[test]
fn a_further_size_pays_itself_from_some_sales_on() {
    // 50 small leave 84.00. With half of them in the new one at 3.10, 3.10 - 1.72 = 1.38 each:
    // 42 + 34.5, 7.50 less; 2.70 more to keep it, 10.20 in all, over 1.38. A pack more of bottles
    // in its own kind, one less of the small.
    let change = changed(&[SMALL], &[SMALL, NEW], "2.70", "3.10");
    let further = Further {
        size: NEW,
        lost: money("10.2"),
        each: Some(money("1.38")),
        pays: PaysFrom::Drinks(exact("7.391304347826")),
    };
    let expected = Change {
        more: money("-7.5"),
        keeping: money("2.7"),
        gain: money("-10.2"),
        stock: Money::ZERO,
        paid_back: PaidBack::Nothing,
        further: Some(further),
    };
    assert_eq!(change, expected);
}

#[test]
fn a_further_size_that_gains_is_paid_back_in_weeks() {
    // At 4.00 it leaves 2.28: 42 + 57, 15 more a week, 14 after keeping it. The large one takes
    // over from neither.
    let change = changed(&[SMALL], &[SMALL, NEW], "1", "4");
    assert_eq!((change.gain, change.further.unwrap().pays), (money("14"), PaysFrom::Already));
    // From one size of which 200 bottles are bought in two packs to one of 400 more is no one more.
    let other = changed(&[SMALL], &[NEW], "1", "4");
    assert_eq!((other.keeping, other.further), (Money::ZERO, None));
    let fewer = changed(&[SMALL, NEW], &[SMALL], "1", "4");
    assert_eq!((fewer.keeping, fewer.gain, fewer.further), (money("-1"), money("-14"), None));
}

#[test]
fn more_stock_is_paid_back_by_what_is_gained() {
    // Half of what is sold in small, the other half in the new one: with a least order of 5 packs
    // of the new bottles, 50.00 against two packs of small ones less.
    let mut book = bar();
    let least = Pack { at_a_time: exact("5"), ..pack(1, "100 ea", "10") };
    book.apply(&Edit::Put(Record::Packaging(vessel(3, [least])))).unwrap();
    book.apply(&Edit::Put(Record::Offer(offer(1, 3, Some("4"))))).unwrap();
    let candidates = Candidates::of(&book, Scope::Drink(drink_id(1)), &[SMALL, NEW]);
    let guess = Guess { shares: vec![share_of(SMALL, "0.5"), share_of(NEW, "0.5")], ..cover("4") };
    let plan = |sizes: &[ContainerId]| plan(&book, &candidates, &guess, sizes).unwrap();
    let change = change(candidates.ledger(), &plan(&[SMALL]), &plan(&[SMALL, NEW]), Money::ZERO).unwrap();
    assert_eq!((change.stock, change.more), (money("40"), money("15")));
    assert_eq!(change.paid_back, PaidBack::After(exact("2.666666666667")));
}

#[test]
fn what_is_left_of_a_further_size_is_weighed_by_what_is_sold() {
    // In the new size drink 1 leaves 2.28 of 4.00, drink 2 1.28 of 3.00; 10 and 5 of them a week:
    // 29.20 over 15. Where nothing is sold the plain mean, 1.78.
    let mut book = bar();
    for (drink, price) in [(1, "4"), (2, "3")] {
        book.apply(&Edit::Put(Record::Offer(offer(drink, 3, Some(price))))).unwrap();
    }
    let candidates = Candidates::of(&book, BLENDED, &[SMALL, NEW]);
    let shares = vec![share_of(SMALL, "0.8"), share_of(NEW, "0.2")];
    let each = |guess: Guess| {
        let plan = |sizes: &[ContainerId]| plan(&book, &candidates, &guess, sizes).unwrap();
        let change = change(candidates.ledger(), &plan(&[SMALL]), &plan(&[SMALL, NEW]), Money::ZERO).unwrap();
        change.further.unwrap().each
    };
    let sold = Guess { shares, unknown: Some(exact("25")), ..cover("4") };
    assert_eq!(each(sold), Some(money("1.946666666667")));
    assert_eq!(each(cover("4")), Some(money("1.78")));
}

#[test]
fn a_size_that_loses_on_each_drink_never_pays() {
    // 1.00 for what costs 1.72.
    let change = changed(&[SMALL], &[SMALL, NEW], "0", "1");
    let further = change.further.unwrap();
    assert_eq!((further.each, further.pays), (Some(money("-0.72")), PaysFrom::Never));
}

#[test]
fn a_plan_kept_is_the_menu_with_its_part_replaced() {
    let book = bar();
    let candidates = Candidates::of(&book, BLENDED, &[SMALL, LARGE, NEW]);
    let plan = plan(&book, &candidates, &cover("4"), &[NEW]).unwrap();
    let scenario = keep(&book, BLENDED, &plan, ScenarioId::from_random(5), "One size");
    let ids: Vec<_> = scenario.offers.iter().map(Offer::id).collect();
    assert_eq!(ids, [offer_id(1, 3), offer_id(2, 3), offer_id(3, 2)]);
    assert_eq!(scenario.offers[2].weekly, Some(exact("10")), "the pressed drink stays as it is");
    let ledger = scenario_ledger(&book, &scenario);
    let totals = Totals::of(&book, &ledger, &scenario.offers, exact("4")).unwrap();
    // 160 of the plan, and 10 at 5.00 less 2.12.
    assert_eq!(totals.contribution, money("188.8"));
}

#[test]
fn a_scenarios_figures_are_those_of_the_book_once_it_is_adopted_and_undo_restores() {
    let mut book = bar();
    let before = book.clone();
    let candidates = Candidates::of(&book, BLENDED, &[SMALL, LARGE, NEW]);
    let plan = plan(&book, &candidates, &cover("4"), &[NEW, SMALL]).unwrap();
    let scenario = keep(&book, BLENDED, &plan, ScenarioId::from_random(5), "Two sizes");
    book.apply(&Edit::Put(Record::Scenario(scenario.clone()))).unwrap();
    let kept = book.clone();
    assert_eq!(Ledger::of(&book), Ledger::of(&before), "a scenario changes nothing of today");
    let ledger = scenario_ledger(&book, &scenario);
    let applied = book.apply(&scenario.adopted(&book)).unwrap();
    assert_eq!(Ledger::of(&book), ledger);
    assert_eq!(book.offers().count(), 5);
    assert_eq!(book.scenario(scenario.id), None);
    book.apply(&applied.inverse).unwrap();
    assert_eq!(book, kept);
}

#[test]
fn what_a_price_break_gives_is_taken() {
    let mut book = bar();
    let tiers = vec![Tier { from: exact("2"), price: money("8") }];
    book.apply(&Edit::Put(Record::Packaging(vessel(1, [Pack { tiers, ..pack(1, "100 ea", "10") }])))).unwrap();
    let candidates = Candidates::of(&book, BLENDED, &[SMALL]);
    let plan = plan(&book, &candidates, &cover("4"), &[SMALL]).unwrap();
    // 200 bottles: two packs at 8.00 each; a pack of lids.
    assert_eq!(plan.totals.cash, money("26"));
}
