//! What is said of the levers that close a gap.

use brimwright::book::{Container, DrinkId, Edit, Goods, OfferId, Packaging, PackagingId, Record};
use brimwright::drink::gap::{Closing, Figure, Lever, Way, WhyNot};
use brimwright::foundation::measure::{Amount, Exact, Money, Share, System, Time, Unit};
use brimwright::words;

use crate::support::speaker;
use crate::{BOTTLE, GINGER, book, ounces};

const DRINK: DrinkId = DrinkId::from_random(2);
const CAP: PackagingId = PackagingId::from_random(4);
const OFFER: OfferId = OfferId { drink: DRINK, container: BOTTLE };

fn money(tenths_of_cents: i64) -> Money {
    Money::from_major(Exact::new(tenths_of_cents, 3))
}

fn per_mille(number: i64) -> Share {
    Share::from_fraction(Exact::new(number, 3))
}

fn tenths(number: i64) -> Figure {
    Figure::Time(Time::from_seconds(Exact::new(number, 2)))
}

fn way(lever: Lever, now: Figure, at: Figure, change: Share) -> Way {
    Way { lever, now, closes: Ok(Closing { at, change, edit: None, moves_too: 0 }) }
}

/// A way by money in tenths of cents.
fn paid(lever: Lever, now: i64, at: i64) -> Way {
    let change = Share::from_fraction(Exact::new(at - now, 0).over(Exact::new(now, 0)).expect("not zero"));
    way(lever, Figure::Money(money(now)), Figure::Money(money(at)), change)
}

/// A way by a share in tenths of a percent.
fn shared(lever: Lever, now: i64, at: i64) -> Way {
    let change = Share::from_fraction(Exact::new(at - now, 0).over(Exact::new(now, 0)).expect("not zero"));
    way(lever, Figure::Share(per_mille(now)), Figure::Share(per_mille(at)), change)
}

fn with(way: Way, edit: Option<Edit>, moves_too: usize) -> Way {
    Way { closes: way.closes.map(|closing| Closing { edit, moves_too, ..closing }), ..way }
}

fn advice(way: &Way) -> String {
    let mut book = book();
    let cap = Packaging::named(CAP, "Cap");
    book.apply(&Edit::Put(Record::Packaging(cap))).expect("packaging holds");
    words::lever_advice(way, &book, &speaker(System::UsCustomary))
}

const PRICE_OF_GINGER: Lever = Lever::PackPrice(Goods::Ingredient(GINGER));

#[test]
fn each_lever_has_a_name() {
    let book = book();
    let said = |lever| words::lever(lever, &book);
    assert_eq!(said(Lever::MenuPrice(OFFER)), "Menu price");
    assert_eq!(said(Lever::Fill(BOTTLE)), "Fill");
    assert_eq!(said(PRICE_OF_GINGER), "Pack price of Ginger");
    assert_eq!(said(Lever::TrimYield(GINGER)), "Trim yield of Ginger");
    assert_eq!(said(Lever::PressYield(GINGER)), "Press yield of Ginger");
    assert_eq!(said(Lever::SoakYield(GINGER)), "Soaking or brewing yield of Ginger");
    assert_eq!(said(Lever::ContainerSet(BOTTLE)), "Container and all that belongs to it");
    assert_eq!(said(Lever::Unsold(DRINK)), "Unsold share");
    assert_eq!(said(Lever::HandsTime(DRINK)), "Hands' time");
}

#[test]
fn what_to_do() {
    let price = Some(money(9_750));
    let ask = with(paid(Lever::MenuPrice(OFFER), 9_000, 9_616), Some(Edit::SetPrice { offer: OFFER, price }), 0);
    assert_eq!(advice(&ask), "Ask $9.75 instead of $9.00.");
    // By three tenths of a cent 33.10 is cheap enough, and 33.11 is not.
    assert_eq!(advice(&paid(PRICE_OF_GINGER, 38_000, 33_108)), "Buy Ginger at $33.10 a pack instead of $38.00.");
    let cap = Lever::PackPrice(Goods::Packaging(CAP));
    assert_eq!(advice(&paid(cap, 38_000, 33_100)), "Buy Cap at $33.10 a pack instead of $38.00.");
    assert_eq!(
        advice(&shared(Lever::TrimYield(GINGER), 900, 923)),
        "Trim Ginger so that 92.3\u{a0}% of it is left instead of 90.0\u{a0}%."
    );
    assert_eq!(
        advice(&shared(Lever::PressYield(GINGER), 650, 681)),
        "Press 68.1\u{a0}% of what goes in out of Ginger instead of 65.0\u{a0}%."
    );
    assert_eq!(
        advice(&shared(Lever::SoakYield(GINGER), 2000, 2100)),
        "Soak or brew Ginger to 210.0\u{a0}% of what goes in instead of 200.0\u{a0}%."
    );
    assert_eq!(
        advice(&paid(Lever::ContainerSet(BOTTLE), 400, 352)),
        "Pay $0.352 for the container and all that belongs to it instead of $0.400."
    );
    let unsold = shared(Lever::Unsold(DRINK), 50, 32);
    assert_eq!(advice(&unsold), "Leave 3.2\u{a0}% unsold instead of 5.0\u{a0}%.");
    let time = way(Lever::HandsTime(DRINK), tenths(4_800), tenths(3_528), per_mille(-265));
    assert_eq!(
        advice(&with(time.clone(), None, 1)),
        "Take 35.2\u{a0}s of hands' time for a drink instead of 48\u{a0}s. 1 other size of this drink moves too."
    );
    assert_eq!(
        advice(&with(unsold, None, 2)),
        "Leave 3.2\u{a0}% unsold instead of 5.0\u{a0}%. 2 other sizes of this drink move too."
    );
}

#[test]
fn a_fill_that_is_less_than_declared_is_said() {
    let pour = |at| way(Lever::Fill(BOTTLE), Figure::Volume(ounces(1_550)), Figure::Volume(ounces(at)), per_mille(-80));
    // 14.28 fl oz are too much by a digit that is not shown; 14.2 are not.
    assert_eq!(advice(&pour(1_428)), "Pour 14.2\u{a0}fl oz instead of 15.5\u{a0}fl oz.");
    assert_eq!(
        advice(&with(pour(1_428), None, 1)),
        "Pour 14.2\u{a0}fl oz instead of 15.5\u{a0}fl oz. 1 other drink in this container moves too."
    );
    let mut book = book();
    let declared = Some(Amount::new(Exact::new(15, 0), Unit::UsFluidOunce));
    let labelled = Container { declared, ..book.container(BOTTLE).expect("it is there").clone() };
    book.apply(&Edit::Put(Record::Container(labelled))).expect("a container holds");
    let said = |way: &Way| words::lever_advice(way, &book, &speaker(System::UsCustomary));
    assert_eq!(said(&pour(1_500)), "Pour 15.0\u{a0}fl oz instead of 15.5\u{a0}fl oz.");
    assert_eq!(
        said(&with(pour(1_428), None, 3)),
        "Pour 14.2\u{a0}fl oz instead of 15.5\u{a0}fl oz. 3 other drinks in this container move too. That is less than the 15.0\u{a0}fl oz that the menu or label says: change what it says first."
    );
}

#[test]
fn how_much_it_changes() {
    let change = |way: &Way| words::lever_change(way, &speaker(System::UsCustomary));
    assert_eq!(change(&paid(PRICE_OF_GINGER, 38_000, 33_108)), "\u{2212}12.9\u{a0}%");
    assert_eq!(change(&paid(Lever::MenuPrice(OFFER), 9_000, 9_616)), "+6.9\u{a0}%");
    assert_eq!(change(&shared(Lever::PressYield(GINGER), 650, 681)), "+4.8\u{a0}%");
}

#[test]
fn what_does_not_close_it() {
    let cannot = Way { closes: Err(WhyNot::CannotCloseAlone), ..paid(PRICE_OF_GINGER, 38_000, 0) };
    assert_eq!(advice(&cannot), "Pack price of Ginger cannot close it alone.");
    assert_eq!(words::lever_change(&cannot, &speaker(System::UsCustomary)), "");
    let uncounted = Way { lever: Lever::HandsTime(DRINK), now: tenths(4_800), closes: Err(WhyNot::DoesNotCount) };
    assert_eq!(advice(&uncounted), "Hands' time does not count in this margin.");
}
