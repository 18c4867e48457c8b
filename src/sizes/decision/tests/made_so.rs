//! What a decision takes to keep and to make.

use super::*;
use crate::book::{Offer, OnHand, Packaging, ScenarioId, Service};
use crate::foundation::measure::Share;
use crate::sizes::decision::{FirstOrder, LeftOver, Question};
use crate::sizes::scenario::{Menu, WeeklyToday, drafted};
use crate::support::{amount, packaging_id};

fn offers(book: &Book) -> Vec<(crate::book::OfferId, Option<crate::foundation::measure::Exact>)> {
    book.offers().map(|offer| (offer.id(), offer.weekly)).collect()
}

#[test]
fn cards_kinds_stock_and_weeks_of_what_is_offered() {
    // Fifty bottles at a time at nothing: a bottle each for 40, 30 and 10 drinks a week.
    let mut book = bar(&three_sizes());
    book.apply(&Edit::Put(Record::Offer(Offer::new(offer_id(2, 3))))).unwrap();
    let bottles = Packaging { packs: vec![pack(1, "50 ea", "4")], ..book.packaging(packaging_id(2)).unwrap().clone() };
    book.apply(&Edit::Put(Record::Packaging(bottles))).unwrap();
    let menu = menu(&book, &Told::default());
    let now = menu.keeping_now(exact("2")).unwrap();
    // An offer without a price is a card all the same. 60 middle bottles in two weeks: two packs, for 3.33 weeks.
    assert_eq!((now.cards, now.vessels, now.closures, now.cash), (4, 3, 0, money("8")));
    assert_eq!(now.weeks, Some(exact("2.5")), "100 small ones");
    let decision = menu.answer(&Question::Drop { size: container_id(1) }).unwrap();
    // 70 a week of the middle one: 140, three packs.
    let then = menu.keeping_then(&decision, Share::WHOLE, exact("2")).unwrap();
    assert_eq!((then.cards, then.vessels, then.cash), (3, 2, money("12")));
    assert_eq!(then.first_out, Some(packaging_id(2)));
    let few = menu.keeping_then(&decision, share("0.25"), exact("2")).unwrap();
    assert_eq!(few.cash, money("8"), "40 a week");
}

#[test]
fn the_stock_of_a_decision_is_that_of_the_scenario_kept_of_it() {
    let mut book = bar(&three_sizes());
    book.apply(&Edit::Put(Record::Offer(Offer::new(offer_id(2, 3))))).unwrap();
    for id in 1..=3 {
        let bottles =
            Packaging { packs: vec![pack(1, "50 ea", "4")], ..book.packaging(packaging_id(id)).unwrap().clone() };
        book.apply(&Edit::Put(Record::Packaging(bottles))).unwrap();
    }
    // Of the large one nothing but an offer without a price is left, and nothing is bought for that.
    let menu = menu(&book, &Told::default());
    let decision = menu.answer(&Question::Switch { from: container_id(3), to: container_id(2) }).unwrap();
    let kept = menu.keeping_then(&decision, Share::WHOLE, exact("2")).unwrap();
    let scenario = menu.scenario(&decision, Share::WHOLE, ScenarioId::from_random(1), "No large").unwrap();
    let weekly = WeeklyToday::of(&book, &Ledger::of(&book), today()).unwrap();
    let draft = drafted(&book, &scenario).unwrap();
    let then = Menu::of(&draft.book, &draft.ledger, &scenario.offers_in(&book), &weekly, exact("2")).unwrap();
    assert_eq!((then.cash, then.weeks), (kept.cash, kept.weeks));
    // 80 of each in two weeks: two packs each, 16.00.
    assert_eq!(kept.cash, money("16"));
}

#[test]
fn one_edit_drops_a_size_and_moves_its_buyers() {
    let mut book = bar(&three_sizes());
    let before = book.clone();
    let menu = menu(&before, &Told::default());
    let decision = menu.answer(&Question::Drop { size: container_id(1) }).unwrap();
    let inverse = book.apply(&menu.edit(&decision, share("0.7")).unwrap()).unwrap().inverse;
    assert_eq!(offers(&book), [(offer_id(1, 2), Some(exact("58"))), (offer_id(1, 3), Some(exact("10")))]);
    book.apply(&inverse).unwrap();
    assert_eq!(book, before);
    let scenario = menu.scenario(&decision, share("0.7"), ScenarioId::from_random(1), "No small").unwrap();
    assert_eq!(scenario.offers.len(), 2);
}

#[test]
fn one_edit_sells_a_new_size_at_its_price_and_as_the_old_one_was_served() {
    let mut book = bar(&[(1, 1, Some("3.6"), Some("40")), (2, 1, Some("3.6"), Some("8"))]);
    let glass = Offer { service: Some(Service::ByTheGlass), ..book.offer(offer_id(1, 1)).unwrap().clone() };
    book.apply(&Edit::Put(Record::Offer(glass))).unwrap();
    let before = book.clone();
    let told = Told { prices: vec![(offer_id(1, 2), money("5"))], ..Told::default() };
    let scope = Scope::Drink(crate::support::drink_id(1));
    let menu = MenuToday::of(&before, &Ledger::of(&before), scope, &told, today()).unwrap();
    let decision = menu.answer(&Question::Switch { from: container_id(1), to: container_id(2) }).unwrap();
    book.apply(&menu.edit(&decision, share("0.9")).unwrap()).unwrap();
    assert_eq!(offers(&book), [(offer_id(1, 2), Some(exact("36"))), (offer_id(2, 1), Some(exact("8")))]);
    let new = book.offer(offer_id(1, 2)).unwrap();
    assert_eq!((new.price, new.service), (Some(money("5")), Some(Service::ByTheGlass)));
}

#[test]
fn one_edit_adds_a_size_and_takes_its_buyers_from_the_other() {
    let mut book = bar(&[(1, 1, Some("3.6"), Some("40"))]);
    let before = book.clone();
    let further = offer_id(1, 2);
    let told = Told {
        prices: vec![(further, money("4.2"))],
        weekly: vec![(further, exact("20"))],
        taken: vec![(further, share("0.5"))],
        ..Told::default()
    };
    let menu = menu(&before, &told);
    let decision = menu.answer(&Question::Add { size: container_id(2), taken_from: None }).unwrap();
    book.apply(&menu.edit(&decision, share("0.25")).unwrap()).unwrap();
    assert_eq!(offers(&book), [(offer_id(1, 1), Some(exact("35"))), (further, Some(exact("20")))]);
    // A plan takes as many as were typed.
    let both = Question::Keep { sizes: vec![container_id(2)] };
    let kept = menu.answer(&both).unwrap();
    let then = menu.offers_then(&kept, share("0.5")).unwrap();
    assert_eq!((then.len(), then[0].weekly), (1, Some(exact("35"))), "20, and half of the other 30");
}

#[test]
fn what_is_paid_once_is_the_first_order_and_what_is_left_over() {
    let mut book = bar(&[(1, 1, Some("3.6"), Some("40"))]);
    let mut put = |id: u64, price: &str, on_hand: Option<&str>| {
        let on_hand = on_hand.map(|text| OnHand { amount: amount(text), day: today() });
        let at_a_time = crate::book::Pack { at_a_time: exact("3"), ..pack(1, "50 ea", price) };
        let bottle = book.packaging(packaging_id(id)).unwrap().clone();
        book.apply(&Edit::Put(Record::Packaging(Packaging { packs: vec![at_a_time], on_hand, ..bottle }))).unwrap();
    };
    put(1, "10", Some("120 ea"));
    put(2, "12", None);
    let menu = menu(&book, &Told::default());
    let decision = menu.answer(&Question::Switch { from: container_id(1), to: container_id(2) }).unwrap();
    // Three packs of the middle bottle, and 120 small ones at 0.20.
    let once = menu.one_time(&decision).unwrap();
    let order = FirstOrder { packaging: packaging_id(2), packs: exact("3"), cost: Some(money("36")), in_use: false };
    assert_eq!(once.orders, [order]);
    let left = LeftOver { packaging: packaging_id(1), pieces: exact("120"), cost: Some(money("24")) };
    assert_eq!((once.left_over, once.proposed), (vec![left], money("60")));
}
