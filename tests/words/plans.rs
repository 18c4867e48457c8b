//! What is said of plans of sizes.

use brimwright::book::{Container, ContainerId, DrinkId, Edit, Offer, OfferId, Packaging, PackagingId, Record, Scope};
use brimwright::drink::ledger::{Ledger, OfferError};
use brimwright::drink::price::PriceError;
use brimwright::foundation::measure::{Exact, Money, Share, System};
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
        "Two sizes earn $41.20 a week more than one and tie up $380.00 more in opening stock: paid back in 9.2\u{a0}weeks. Jar needs no extra sales to pay for itself: nothing is lost by having it."
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
        "Two sizes earn $25.00 a week less than one ($30.00 less after $5.00 a week for keeping more sizes) and tie up $40.00 more in opening stock. Nothing is gained to pay that back. Jar pays for itself from 14 extra sold in it a week: $30.00 is lost by it, and $2.25 is left of each."
    );
    let never = Change { further: further("1", Some("-0.10"), PaysFrom::Never), ..NONE };
    assert_eq!(
        changed(&[BOTTLE], &[BOTTLE, JAR], &never),
        "Two sizes earn as much a week as one and need no more opening stock. Jar cannot pay for itself by more sales: \u{2212}$0.10 is left of each sold in it."
    );
    let nothing = Change { further: further("0", None, PaysFrom::Already), ..NONE };
    assert!(
        changed(&[BOTTLE], &[BOTTLE, JAR], &nothing)
            .ends_with("Nothing can be sold in Jar: no drink has a price there.")
    );
}

#[test]
fn one_size_less_or_another() {
    let fewer = Change { more: money("-2"), keeping: money("-5"), gain: money("3"), stock: money("-40"), ..NONE };
    assert_eq!(
        changed(&[BOTTLE, JAR], &[JAR], &fewer),
        "One size earns $2.00 a week less than two ($3.00 more after $5.00 a week saved by keeping fewer) and frees $40.00 of opening stock."
    );
    let other = Change { more: money("2"), gain: money("2"), ..NONE };
    assert_eq!(
        changed(&[BOTTLE], &[JAR], &other),
        "Jar earns $2.00 a week more than Bottle and needs no more opening stock."
    );
    let four = [BOTTLE, JAR, ContainerId::from_random(7), ContainerId::from_random(8)];
    assert!(changed(&four, &four[..3], &NONE).starts_with("Three sizes earn as much a week as 4"));
    assert!(changed(&four[..3], &four, &NONE).starts_with("4 sizes earn as much a week as three"));
    assert_eq!((words::sizes_within(1), words::sizes_within(5)), ("one size".to_string(), "5 sizes".to_string()));
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
    assert_eq!(best(&[BOTTLE, JAR]), "Bottle + Jar brings the most: $90.00 a week. These are today's sizes.");
    assert_eq!(
        best(&[JAR]),
        "Bottle + Jar brings the most: $90.00 a week; today's sizes, with every drink in each of them, \u{2212}$3.00."
    );
    assert_eq!(best(&[]), "Bottle + Jar brings the most: $90.00 a week.");
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
        "Lid: 3 packs of 3,000 pieces in all, $120.00; 240 used a week, so 12.5\u{a0}weeks."
    );
    let unused = Stock { packs: number(10), weeks: None, ..lids };
    assert_eq!(said(|plans| plans.stock(&unused)), "Lid: 1 pack of 3,000 pieces in all, $120.00; none used as yet.");
    assert_eq!(said(|plans| plans.cover(None)), "no sales yet");
    assert_eq!(said(|plans| plans.cover(Some(number(10)))), "1\u{a0}week");
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
    assert_eq!(said(&today), "Pear, Jar: 30 a week at $5.00, $2.90 left of each: $87.00.");
    let unknown = Offer { weekly: None, ..today.clone() };
    assert_eq!(said(&unknown), "Pear, Jar: no weekly number; $2.90 left of each at $5.00.");
    let dearer = Offer { price: Some(money("6")), ..today.clone() };
    let then = Ledger::of_offers(&book, &mut [dearer.clone()].iter());
    let now = Ledger::of(&book);
    let mut unpriced = book.clone();
    unpriced.apply(&Edit::Put(Record::Offer(Offer { price: None, ..today.clone() }))).unwrap();
    let suggested = Plans { book: &unpriced, speaker: plans.speaker };
    assert_eq!(
        suggested.offer(&then, &dearer),
        "Pear, Jar: 30 a week at $6.00 (suggested), $3.90 left of each: $117.00."
    );
    let beside = |was: Option<&Offer>, is: Option<&Offer>| plans.offer_beside(id, (&now, was), (&then, is));
    assert_eq!(
        beside(Some(&today), Some(&dearer)),
        "Jar: $6.00, 30 a week, $117.00 left; today $5.00, 30 a week, $87.00 left."
    );
    assert_eq!(beside(None, Some(&dearer)), "Jar: $6.00, 30 a week, $117.00 left; not sold today.");
    assert_eq!(beside(Some(&unknown), None), "Jar: not sold here; today $5.00, no weekly number.");
    assert_eq!(beside(None, None), "Jar: not sold.");
    assert_eq!(
        plans.offer_beside(id, (&now, Some(&today)), (&now, Some(&today))),
        "Jar: $5.00, 30 a week, $87.00 left, as today."
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
    assert_eq!(against("85", "129"), "$44.00 a week more than today.");
    assert_eq!(against("85", "-1"), "$86.00 a week less than today.");
    assert_eq!(against("85", "85"), "As much a week as today.");
}

#[test]
fn what_does_not_count() {
    let offer = OfferId { drink: DrinkId::from_random(9), container: JAR };
    let why = Why::NotMade(OfferError::Arithmetic(brimwright::foundation::measure::Overflow::DivisionByZero));
    assert_eq!(
        said(|plans| plans.left_out(&LeftOut { offer, why })),
        ", Jar: Something here is zero that must not be. Check contents, yields and fills."
    );
    let (target, highest) = (Share::from_fraction(Exact::new(9, 1)), Share::from_fraction(Exact::new(8, 1)));
    let why = Why::NoPrice(PriceError::NoPriceReaches { target, highest });
    let expected = format!(", Jar: {}", words::price_error(&PriceError::NoPriceReaches { target, highest }));
    assert_eq!(said(|plans| plans.left_out(&LeftOut { offer, why })), expected);
    assert_eq!(
        said(|plans| plans.left_out_count(&[BOTTLE, JAR], 1)),
        "Of Bottle + Jar, 1 drink in a size is left out; open how it came about to see why."
    );
    assert_eq!(
        said(|plans| plans.left_out_count(&[JAR], 3)),
        "Of Jar, 3 drinks in their sizes are left out; open how it came about to see why."
    );
    let totals = Totals { cards: 6, without_number: 2, stuck: 1, ..Totals::default() };
    assert_eq!(
        said(|plans| plans.uncounted(&totals)),
        "of 6 drinks in their sizes, 2 have no weekly number, 1 cannot be computed; they count for nothing."
    );
    assert_eq!(said(|plans| plans.uncounted(&Totals { cards: 6, ..Totals::default() })), "");
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
        "The shares add up to 90.5\u{a0}%, not 100\u{a0}%. In each plan what its sizes have of them is taken as the whole."
    );
}
