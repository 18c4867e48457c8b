//! Dropping, switching, keeping: by hand, and what stands in the way.

use super::*;
use crate::foundation::measure::{Exact, Money, Share};
use crate::sizes::decision::{Field, Hands, NoAnswer, Payback, Question, Verdict};

fn drop(size: u64) -> Question {
    Question::Drop { size: container_id(size) }
}

#[test]
fn a_size_that_goes_needs_so_many_to_stay() {
    // 40 * 2.00 = 80.00 are lost, 40 * 3.00 = 120.00 are brought if all take the middle one: two of three.
    let book = bar(&three_sizes());
    let menu = menu(&book, &Told::default());
    let decision = menu.answer(&drop(1)).unwrap();
    assert_eq!((decision.now, decision.line.intercept, decision.line.slope), (money("80"), money("0"), money("120")));
    let at = decision.break_even().unwrap().unwrap();
    assert_eq!(at.fraction().rounded(9), exact("0.666666667"));
    assert_eq!(decision.verdict, Verdict::AtLeast { at });
    assert_eq!(decision.may_lose(), Ok(Some(exact("13"))), "13.33 may leave");
    assert_eq!(decision.break_even_buyers().unwrap().unwrap().rounded(2), exact("26.67"));
    assert_eq!(decision.gain(share("0.75")), Ok(money("10")));
    assert_eq!(decision.payback(share("0.75"), money("25")), Ok(Payback::Weeks(exact("2.5"))));
    assert_eq!(decision.payback(share("0.75"), Money::ZERO), Ok(Payback::AtOnce));
    assert_eq!(decision.payback(share("0.5"), money("25")), Ok(Payback::Never));
    // 3.60 for 200 mL and 5.40 for 300 mL: 1.80 per 100 mL either way.
    let customer = decision.customer().unwrap();
    assert_eq!((customer.change, customer.more), (share("0.5"), money("1.8")));
    assert_eq!(customer.more_volume.millilitres(), exact("100"));
    assert_eq!(customer.per_volume_change, Share::ZERO);
}

#[test]
fn a_size_whose_buyers_bring_less_elsewhere_cannot_go() {
    // The nearest of the middle one is the small one, a third less against twice as much.
    let book = bar(&three_sizes());
    let decision = menu(&book, &Told::default()).answer(&drop(2)).unwrap();
    let at = Some(share("1.5"));
    assert_eq!(decision.verdict, Verdict::CannotPay { at, loss_if_all_stay: money("30") });
    assert_eq!((decision.may_lose(), decision.rows[0].then.unwrap().offer), (Ok(None), offer_id(1, 1)));
}

#[test]
fn keeping_a_size_costs_and_an_owner_may_choose_where_buyers_turn() {
    // Of 80.00, 50.00 are saved: 30 of 120 must stay. With 90 saved none must.
    let book = bar(&three_sizes());
    let asked = |told: Told| menu(&book, &told).answer(&drop(1)).unwrap();
    let keeping = |cost: &str| asked(Told { keeping: money(cost), ..Told::default() });
    assert_eq!(keeping("50").verdict, Verdict::AtLeast { at: share("0.25") });
    assert_eq!(keeping("90").verdict, Verdict::EvenIfAllLeave);
    assert_eq!(keeping("90").may_lose(), Ok(Some(exact("40"))));
    // In the large one each leaves 4.00: half must stay.
    let large = asked(Told { turns: vec![(offer_id(1, 1), Some(container_id(3)))], ..Told::default() });
    assert_eq!(large.verdict, Verdict::AtLeast { at: share("0.5") });
    assert!(large.rows[0].chosen);
    // Two sizes go: what they turn to must stay.
    let told = Told { turns: vec![(offer_id(1, 1), Some(container_id(3)))], ..Told::default() };
    let only = menu(&book, &told).answer(&Question::Keep { sizes: vec![container_id(2)] }).unwrap();
    assert!(only.rows[0].then.is_none() && only.rows[1].then.is_some());
}

#[test]
fn a_price_typed_for_the_size_that_stays_is_paid_by_its_own_buyers_too() {
    // 0.50 more on the middle one: 40 * 3.50 = 140, and 30 * 0.50 = 15 from those who buy it already.
    let book = bar(&three_sizes());
    let told = Told { prices: vec![(offer_id(1, 2), money("5.9"))], ..Told::default() };
    let decision = menu(&book, &told).answer(&drop(1)).unwrap();
    assert_eq!((decision.line.intercept, decision.line.slope), (money("15"), money("140")));
    let switch = Question::Switch { from: container_id(1), to: container_id(2) };
    assert_eq!(menu(&book, &told).answer(&switch).unwrap().line, decision.line);
}

#[test]
fn hands_that_are_paid_anyway_are_left_out() {
    // At 36.00 an hour, 30 seconds a drink are 0.30: of 2.00 and 3.00, 1.70 and 2.70 are left.
    let mut book = bar(&three_sizes());
    let paid = crate::book::Settings { wage: money("36"), ..book.settings().clone() };
    book.apply(&Edit::Put(Record::Settings(Box::new(paid)))).unwrap();
    let slow = crate::book::Labour { per_drink: crate::support::seconds("30"), ..crate::book::Labour::default() };
    let drink = crate::book::Drink { labour: slow, ..book.drink(crate::support::drink_id(1)).unwrap().clone() };
    book.apply(&Edit::Put(Record::Drink(drink))).unwrap();
    let now = |hands| menu(&book, &Told { hands, ..Told::default() }).answer(&drop(1)).unwrap().now;
    assert_eq!((now(Hands::Counted), now(Hands::LeftOut)), (money("68"), money("80")));
}

#[test]
fn a_switch_that_loses_says_how_many_must_come() {
    // 30 middle that leave 3.00 against the small that leaves 2.00: 45 for 30.
    let book = bar(&three_sizes());
    let switch = Question::Switch { from: container_id(2), to: container_id(1) };
    let decision = menu(&book, &Told::default()).answer(&switch).unwrap();
    let expected = Verdict::NeedsNew { at: share("1.5"), buyers: exact("15"), loss_if_all_stay: money("30") };
    assert_eq!((decision.verdict, decision.needs_new()), (expected, Some(exact("15"))));
    assert_eq!(decision.change_at_break_even(), Ok(Some(share("0.5"))));
    assert_eq!(decision.comes(), Some(container_id(1)));
}

#[test]
fn who_buys_the_size_that_comes_already_pays_its_new_price_too() {
    // 40 small bring 80.00. The middle at 6.00 leaves 3.60, and its 30 buyers bring 18.00 more: 62 of 144.
    let book = bar(&three_sizes());
    let switch = Question::Switch { from: container_id(1), to: container_id(2) };
    let at = |price: &str| {
        let told = Told { prices: vec![(offer_id(1, 2), money(price))], ..Told::default() };
        let decision = menu(&book, &told).answer(&switch).unwrap();
        (decision.others, decision.break_even().unwrap(), decision.rows[0].break_even)
    };
    let even = |of: &str, all: &str| Some(Share::from_fraction(exact(of).over(exact(all)).unwrap()));
    assert_eq!(at("6"), (money("18"), even("62", "144"), even("62", "144")));
    assert_eq!(at("5.4"), (money("0"), even("80", "120"), even("80", "120")));
    // At 5.00 they bring 12.00 less, at 9.00 so much more that no buyer of the small need stay.
    assert_eq!(at("5"), (money("-12"), even("92", "104"), even("92", "104")));
    let (others, together, alone) = at("9");
    assert_eq!((others, alone), (money("108"), Some(Share::ZERO)));
    assert!(together.unwrap() < Share::ZERO);
}

#[test]
fn a_size_that_is_new_has_the_price_suggested_and_one_typed_goes_first() {
    // Costs 2.40 at a target of 65 %: 6.857 and so 6.86.
    let book = bar(&[(1, 1, Some("3.6"), Some("40"))]);
    let switch = Question::Switch { from: container_id(1), to: container_id(2) };
    let then = |told: &Told| menu(&book, told).answer(&switch).unwrap().rows[0].then.unwrap();
    let suggested = then(&Told::default());
    assert_eq!((suggested.price, suggested.from), (money("6.86"), super::super::PriceFrom::Suggested));
    let typed = then(&Told { prices: vec![(offer_id(1, 2), money("5"))], ..Told::default() });
    assert_eq!((typed.profit, typed.from), (money("2.6"), super::super::PriceFrom::Typed));
}

#[test]
fn what_stands_in_the_way_names_the_field_to_fill() {
    let no_answer = |offers: &[Sold], question: &Question| {
        let book = bar(offers);
        let found = menu(&book, &Told::default()).answer(question).unwrap_err();
        (found.field(), found)
    };
    // No sales known.
    let unsold = [(1, 1, Some("3.6"), None), (1, 2, Some("5.4"), Some("30"))];
    let weekly = Some(Field::Weekly(offer_id(1, 1)));
    assert_eq!(no_answer(&unsold, &drop(1)), (weekly, NoAnswer::NoSales(vec![offer_id(1, 1)])));
    // One size only.
    let one = [(1, 1, Some("3.6"), Some("40"))];
    assert_eq!(no_answer(&one, &drop(1)), (Some(Field::Size), NoAnswer::OneSize(container_id(1))));
    assert_eq!(no_answer(&one, &drop(2)), (Some(Field::Size), NoAnswer::NotSold(container_id(2))));
    let same = Question::Switch { from: container_id(1), to: container_id(1) };
    assert_eq!(no_answer(&one, &same), (Some(Field::Size), NoAnswer::SameSize(container_id(1))));
    // Nothing is left at the price of the size that stays.
    let losing = [(1, 1, Some("3.6"), Some("40")), (1, 2, Some("2.4"), Some("30"))];
    let price = Some(Field::Price(offer_id(1, 2)));
    assert_eq!(no_answer(&losing, &drop(1)), (price, NoAnswer::NothingLeft(vec![offer_id(1, 2)])));
    // Nobody can stay: the other juice is in the other size.
    let apart = [(1, 1, Some("3.6"), Some("40")), (2, 2, Some("5.4"), Some("30"))];
    let nobody = NoAnswer::NobodyCanStay { offers: vec![offer_id(1, 1)], lost: money("80") };
    assert_eq!(no_answer(&apart, &drop(1)), (Some(Field::Size), nobody));
    // No price.
    let unpriced = [(1, 1, Some("3.6"), Some("40")), (1, 2, None, None)];
    let price = Some(Field::Price(offer_id(1, 2)));
    assert_eq!(no_answer(&unpriced, &drop(2)), (price, NoAnswer::NoPrice(vec![offer_id(1, 2)])));
}

#[test]
fn what_loses_today_goes_even_if_all_leave() {
    let book = bar(&[(1, 1, Some("1.5"), Some("40")), (1, 2, Some("5.4"), Some("30"))]);
    let decision = menu(&book, &Told::default()).answer(&drop(1)).unwrap();
    assert_eq!((decision.now, decision.verdict), (money("-4"), Verdict::EvenIfAllLeave));
}

#[test]
fn those_who_can_turn_to_nothing_leave_and_a_size_without_a_price_is_no_size() {
    // Juice 2 is in the small one only, and has no price in the middle: its 10 buyers leave with 20.00.
    let mut offers = three_sizes();
    offers.extend([(2, 1, Some("3.6"), Some("10")), (2, 2, None, Some("5"))]);
    let book = bar(&offers);
    let decision = menu(&book, &Told::default()).answer(&drop(1)).unwrap();
    assert_eq!((decision.buyers, decision.movers, decision.now), (exact("50"), exact("40"), money("100")));
    let at = Exact::from(100).over(exact("120")).map(Share::from_fraction).unwrap();
    assert_eq!(decision.verdict, Verdict::AtLeast { at });
    assert!(!decision.customers_alike() || decision.rows.iter().filter(|row| row.customer.is_some()).count() == 1);
}
