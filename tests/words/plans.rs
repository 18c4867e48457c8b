//! What is said of plans of sizes.

use brimwright::book::{Container, ContainerId, DrinkId, Edit, Offer, OfferId, Packaging, PackagingId, Record, Scope};
use brimwright::drink::ledger::{Ledger, OfferError};
use brimwright::drink::price::PriceError;
use brimwright::foundation::measure::{Exact, Money, Overflow, Share, System};
use brimwright::sizes::plan::{Candidates, Change, Further, LeftOut, PaidBack, PaysFrom, Plan, Stock, Totals, Why};
use brimwright::words::{self, Plans};

use crate::support::{
    book as of_records, container, drink, ingredient, line, money, offer, pack, settings, speaker, use_of, vessel,
};
use crate::{BOTTLE, book};

const JAR: ContainerId = ContainerId::from_random(4);
const LID: PackagingId = PackagingId::from_random(5);

/// Sentences in a book with a bottle and a jar.
fn said(say: impl FnOnce(&Plans) -> String) -> String {
    let mut book = book();
    let jar = Container { id: JAR, name: "Jar".into(), ..book.container(BOTTLE).unwrap().clone() };
    book.apply(&Edit::Put(Record::Container(jar))).unwrap();
    book.apply(&Edit::Put(Record::Packaging(Packaging::named(LID, "Lid")))).unwrap();
    say(&Plans { book: &book, speaker: &speaker(System::UsCustomary) })
}

fn plan(sizes: &[ContainerId]) -> Plan {
    Plan { sizes: sizes.to_vec(), offers: Vec::new(), left_out: Vec::new(), totals: Totals::default() }
}

/// No change at all.
const NONE: Change = Change {
    more: Money::ZERO,
    keeping: Money::ZERO,
    gain: Money::ZERO,
    stock: Money::ZERO,
    paid_back: PaidBack::Nothing,
    further: None,
};

fn changed(from: &[ContainerId], to: &[ContainerId], change: &Change) -> String {
    said(|plans| plans.change(&plan(from), &plan(to), change))
}

fn further(lost: &str, each: Option<&str>, pays: PaysFrom) -> Option<Further> {
    Some(Further { size: JAR, lost: money(lost), each: each.map(money), pays })
}

#[test]
fn one_size_more() {
    let gains = Change {
        more: money("41.20"),
        gain: money("41.20"),
        stock: money("380"),
        paid_back: PaidBack::After(Exact::new(9223, 3)),
        further: further("-41.20", Some("2"), PaysFrom::Already),
        ..NONE
    };
    assert_eq!(
        changed(&[BOTTLE], &[BOTTLE, JAR], &gains),
        "Bottle + Jar earns $41.20 more per week than Bottle. You need $380.00 more opening stock. The extra stock pays back in 9.2 weeks. Jar needs no extra sales to pay for itself."
    );
    let loses = Change {
        more: money("-25"),
        keeping: money("5"),
        gain: money("-30"),
        stock: money("40"),
        paid_back: PaidBack::Never,
        further: further("30", Some("2.25"), PaysFrom::Drinks(Exact::new(133_333, 4))),
    };
    assert_eq!(
        changed(&[BOTTLE], &[BOTTLE, JAR], &loses),
        "Bottle + Jar earns $25.00 less per week than Bottle. After $5.00 per week for more sizes, you earn $30.00 less. You need $40.00 more opening stock. No extra profit pays this back. Jar pays for itself with 14 extra drinks sold per week. Adding the size costs $30.00 per week, and profit per drink is $2.25."
    );
    let gains_all_the_same = Change { gain: money("20"), ..loses };
    assert!(changed(&[BOTTLE], &[BOTTLE, JAR], &gains_all_the_same).starts_with(
        "Bottle + Jar earns $25.00 less per week than Bottle. After $5.00 per week for more sizes, you earn $20.00 more."
    ));
    let one = Change { further: further("2", Some("2.25"), PaysFrom::Drinks(Exact::new(9, 1))), ..NONE };
    assert!(changed(&[BOTTLE], &[BOTTLE, JAR], &one).ends_with(
        "Jar pays for itself with 1 extra drink sold per week. Adding the size costs $2.00 per week, and profit per drink is $2.25."
    ));
    let never = Change { further: further("1", Some("-0.10"), PaysFrom::Never), ..NONE };
    assert_eq!(
        changed(&[BOTTLE], &[BOTTLE, JAR], &never),
        "Bottle + Jar earns as much per week as Bottle. Opening stock stays the same. More sales cannot pay for Jar. Profit per drink is \u{2212}$0.10."
    );
    let nothing = Change { further: further("0", None, PaysFrom::Already), ..NONE };
    assert!(
        changed(&[BOTTLE], &[BOTTLE, JAR], &nothing)
            .ends_with("stays the same. No drink has a price in Jar, so nothing sells in this size.")
    );
}

#[test]
fn one_size_less_or_another() {
    let fewer = Change { more: money("-2"), keeping: money("-5"), gain: money("3"), stock: money("-40"), ..NONE };
    assert_eq!(
        changed(&[BOTTLE, JAR], &[JAR], &fewer),
        "Jar earns $2.00 less per week than Bottle + Jar. Fewer sizes also save $5.00 per week, so you earn $3.00 more. You need $40.00 less opening stock."
    );
    let still_less = Change { gain: money("-1"), ..fewer };
    assert!(changed(&[BOTTLE, JAR], &[JAR], &still_less).starts_with(
        "Jar earns $2.00 less per week than Bottle + Jar. Fewer sizes also save $5.00 per week, so you earn $1.00 less."
    ));
    let other = Change { more: money("2"), gain: money("2"), ..NONE };
    assert_eq!(
        changed(&[BOTTLE], &[JAR], &other),
        "Jar earns $2.00 more per week than Bottle. Opening stock stays the same."
    );
    let four = [BOTTLE, JAR, ContainerId::from_random(7), ContainerId::from_random(8)];
    assert_eq!([1, 2, 3, 4].map(words::sizes), ["One size", "Two sizes", "Three sizes", "4 sizes"]);
    assert_eq!(said(|plans| words::plan_name(&four[..2], plans.book)), "Bottle + Jar");
}

#[test]
fn the_plan_that_earns_most() {
    let earning = |sizes: &[ContainerId], a_week: &str| Plan {
        totals: Totals { contribution: money(a_week), ..Totals::default() },
        ..plan(sizes)
    };
    let ranked = [earning(&[BOTTLE, JAR], "90"), earning(&[BOTTLE], "84"), earning(&[JAR], "-3")];
    let best = |today: &[ContainerId]| said(|plans| plans.best(&ranked, today));
    assert_eq!(best(&[BOTTLE, JAR]), "Bottle + Jar earns the most: $90.00 per week. You sell these sizes today.");
    assert_eq!(
        best(&[JAR]),
        "Bottle + Jar earns the most: $90.00 per week. Today’s sizes earn \u{2212}$3.00 with every drink in each size."
    );
    assert_eq!(best(&[]), "Bottle + Jar earns the most: $90.00 per week.");
    assert_eq!(said(|plans| plans.best(&[], &[])), "");
}

#[test]
fn opening_stock() {
    let number = |tenths| Exact::new(tenths, 1);
    let lids = Stock {
        packaging: LID,
        part: brimwright::book::PackagingPart::Closure,
        a_week: number(2400),
        packs: number(30),
        pieces: number(30_000),
        cash: money("120"),
        weeks: Some(number(125)),
    };
    assert_eq!(
        said(|plans| plans.stock(&lids)),
        "Lid: 3 packs (3,000 pieces) for $120.00. At 240 per week, this lasts 12.5 weeks."
    );
    let unused = Stock { packs: number(10), weeks: None, ..lids };
    assert_eq!(said(|plans| plans.stock(&unused)), "Lid: 1 pack (3,000 pieces) for $120.00. No sales use any yet.");
    assert_eq!(said(|plans| plans.cover(None)), "no sales yet");
    assert_eq!(said(|plans| plans.cover(Some(number(10)))), "1 week");
}

#[test]
fn what_one_offer_leaves() {
    let records = [
        Record::Ingredient(ingredient(1, [pack(1, "1 L", "4")])),
        Record::Packaging(vessel(1, [pack(1, "100 ea", "10")])),
        Record::Container(Container { set: vec![use_of(1, "1")], name: "Jar".into(), ..container(1, "500 mL") }),
        Record::Drink(brimwright::book::Drink { name: "Pear".into(), ..drink(1, "1 L", [line(1, 1, "1 L")]) }),
        Record::Offer(Offer { weekly: Some(Exact::new(30, 0)), ..offer(1, 1, Some("5")) }),
    ];
    let book = of_records(settings(), records);
    let jar = ContainerId::from_random(1);
    let candidates = Candidates::of(&book, Scope::Menu, &[jar]);
    let plans = Plans { book: &book, speaker: &speaker(System::UsCustomary) };
    let id = OfferId { drink: DrinkId::from_random(1), container: jar };
    let today = book.offer(id).unwrap().clone();
    let said = |offer: &Offer| plans.offer(candidates.ledger(), offer);
    assert_eq!(said(&today), "Pear, Jar: 30 per week × $2.90 profit per drink = $87.00, at $5.00.");
    let unknown = Offer { weekly: None, ..today.clone() };
    assert_eq!(said(&unknown), "Pear, Jar: no weekly sales. Profit per drink is $2.90 at $5.00.");
    let dearer = Offer { price: Some(money("6")), ..today.clone() };
    let then = Ledger::of_offers(&book, &mut [dearer.clone()].iter());
    let now = Ledger::of(&book);
    let mut unpriced = book.clone();
    unpriced.apply(&Edit::Put(Record::Offer(Offer { price: None, ..today.clone() }))).unwrap();
    let suggested = Plans { book: &unpriced, speaker: plans.speaker };
    assert_eq!(
        suggested.offer(&then, &dearer),
        "Pear, Jar: 30 per week × $3.90 profit per drink = $117.00, at $6.00 (suggested price)."
    );
    let beside = |was: Option<&Offer>, is: Option<&Offer>| plans.offer_beside(id, (&now, was), (&then, is));
    assert_eq!(
        beside(Some(&today), Some(&dearer)),
        "Jar: $6.00, 30 per week, $117.00 profit. Today: $5.00, 30 per week, $87.00 profit."
    );
    assert_eq!(beside(None, Some(&dearer)), "Jar: $6.00, 30 per week, $117.00 profit. Not sold today.");
    assert_eq!(beside(Some(&unknown), None), "Jar: not sold in this scenario. Today: $5.00, no weekly sales.");
    assert_eq!(beside(None, None), "Jar: not sold.");
    assert_eq!(
        plans.offer_beside(id, (&now, Some(&today)), (&now, Some(&today))),
        "Jar: $5.00, 30 per week, $87.00 profit, same as today."
    );
    let bare = Offer { price: None, ..today };
    let without = Ledger::of_offers(&book, &mut [bare.clone()].iter());
    assert_eq!(plans.offer(&without, &bare), "Pear, Jar: no price.");
}

#[test]
fn a_scenario_against_today() {
    let against = |today: &str, then: &str| {
        let of = |a_week: &str| Totals { contribution: money(a_week), ..Totals::default() };
        said(|plans| plans.against_today(&of(today), &of(then)))
    };
    assert_eq!(against("85", "129"), "$44.00 more per week than today.");
    assert_eq!(against("85", "-1"), "$86.00 less per week than today.");
    assert_eq!(against("85", "85"), "As much per week as today.");
}

#[test]
fn what_does_not_count() {
    let offer = OfferId { drink: DrinkId::from_random(9), container: JAR };
    let why = Why::NotMade(OfferError::Arithmetic(Overflow::DivisionByZero));
    let expected = format!(", Jar: {}", words::overflow(Overflow::DivisionByZero));
    assert_eq!(said(|plans| plans.left_out(&LeftOut { offer, why })), expected);
    let (target, highest) = (Share::from_fraction(Exact::new(9, 1)), Share::from_fraction(Exact::new(8, 1)));
    let why = Why::NoPrice(PriceError::NoPriceReaches { target, highest });
    let expected = format!(", Jar: {}", words::price_error(&PriceError::NoPriceReaches { target, highest }));
    assert_eq!(said(|plans| plans.left_out(&LeftOut { offer, why })), expected);
    assert_eq!(
        said(|plans| plans.left_out_count(&[BOTTLE, JAR], 1)),
        "Bottle + Jar: 1 drink size is left out. Show the math to see why."
    );
    assert_eq!(
        said(|plans| plans.left_out_count(&[JAR], 3)),
        "Jar: 3 drink sizes are left out. Show the math to see why."
    );
    let totals = Totals { cards: 6, without_number: 2, stuck: 1, ..Totals::default() };
    assert_eq!(
        said(|plans| plans.uncounted(&totals)),
        "2 drink sizes have no weekly sales and are not counted. 1 drink size needs details and is not counted."
    );
    assert_eq!(said(|plans| plans.uncounted(&Totals { cards: 6, ..Totals::default() })), "");
    let unpriced = Totals { cards: 6, without_price: 2, ..Totals::default() };
    assert_eq!(said(|plans| plans.uncounted(&unpriced)), "2 drink sizes have no price and are not counted.");
}

#[test]
fn shares_that_do_not_add_up() {
    let shares = |shares: &[i64]| {
        let shares: Vec<Share> = shares.iter().map(|it| Share::from_fraction(Exact::new(*it, 3))).collect();
        said(|plans| plans.shares(&shares).unwrap())
    };
    assert_eq!(shares(&[400, 600]), "");
    assert_eq!(
        shares(&[400, 505]),
        format!(
            "The shares add up to {}, not 100%. Each plan scales its own shares to 100%.",
            speaker(System::UsCustomary).percent(Share::from_fraction(Exact::new(905, 3)))
        )
    );
}
