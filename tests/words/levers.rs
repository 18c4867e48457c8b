//! What is said of the levers that close a gap.

use brimwright::book::{Container, DrinkId, Edit, Goods, Key, OfferId, Packaging, PackagingId, Record};
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
    assert_eq!(said(PRICE_OF_GINGER), "Case price of Ginger");
    assert_eq!(said(Lever::TrimYield(GINGER)), "Trim yield of Ginger");
    assert_eq!(said(Lever::PressYield(GINGER)), "Juice yield of Ginger");
    assert_eq!(said(Lever::SoakYield(GINGER)), "Soaked or brewed weight of Ginger");
    assert_eq!(said(Lever::ContainerSet(BOTTLE)), "Packaging");
    assert_eq!(said(Lever::Unsold(DRINK)), "Waste");
    assert_eq!(said(Lever::HandsTime(DRINK)), "Labor per drink");
}

#[test]
fn what_to_do() {
    let price = Some(money(9_750));
    let ask = with(paid(Lever::MenuPrice(OFFER), 9_000, 9_616), Some(Edit::SetPrice { offer: OFFER, price }), 0);
    assert_eq!(advice(&ask), "Charge $9.75 instead of $9.00.");
    // By three tenths of a cent 33.10 is cheap enough, and 33.11 is not.
    assert_eq!(advice(&paid(PRICE_OF_GINGER, 38_000, 33_108)), "Buy Ginger at $33.10 a case instead of $38.00.");
    let cap = Lever::PackPrice(Goods::Packaging(CAP));
    assert_eq!(advice(&paid(cap, 38_000, 33_100)), "Buy Cap at $33.10 a case instead of $38.00.");
    assert_eq!(
        advice(&shared(Lever::TrimYield(GINGER), 900, 923)),
        "Keep 92.3% of Ginger after trimming instead of 90.0%."
    );
    assert_eq!(advice(&shared(Lever::PressYield(GINGER), 650, 681)), "Press 68.1% juice from Ginger instead of 65.0%.");
    assert_eq!(
        advice(&shared(Lever::SoakYield(GINGER), 2000, 2100)),
        "Soak or brew Ginger to 210.0% of its dry weight instead of 200.0%."
    );
    assert_eq!(advice(&paid(Lever::ContainerSet(BOTTLE), 400, 352)), "Pay $0.352 for packaging instead of $0.400.");
    let unsold = shared(Lever::Unsold(DRINK), 50, 32);
    assert_eq!(advice(&unsold), "Cut waste from 5.0% to 3.2%.");
    let time = way(Lever::HandsTime(DRINK), tenths(4_800), tenths(3_528), per_mille(-265));
    assert_eq!(
        advice(&with(time.clone(), None, 1)),
        "Cut labor per drink from 0:48 to 0:35.2. 1 other size of this drink changes too."
    );
    assert_eq!(advice(&with(unsold, None, 2)), "Cut waste from 5.0% to 3.2%. 2 other sizes of this drink change too.");
}

#[test]
fn a_fill_that_is_less_than_declared_is_said() {
    let pour = |at| way(Lever::Fill(BOTTLE), Figure::Volume(ounces(1_550)), Figure::Volume(ounces(at)), per_mille(-80));
    // 14.28 fl oz are too much by a digit that is not shown; 14.2 are not.
    assert_eq!(advice(&pour(1_428)), "Fill to 14.2\u{a0}fl oz instead of 15.5\u{a0}fl oz.");
    assert_eq!(
        advice(&with(pour(1_428), None, 1)),
        "Fill to 14.2\u{a0}fl oz instead of 15.5\u{a0}fl oz. 1 other drink in this container changes too."
    );
    let mut book = book();
    let declared = Some(Amount::new(Exact::new(15, 0), Unit::UsFluidOunce));
    let labelled = Container { declared, ..book.container(BOTTLE).expect("it is there").clone() };
    book.apply(&Edit::Put(Record::Container(labelled))).expect("a container holds");
    let said = |way: &Way| words::lever_advice(way, &book, &speaker(System::UsCustomary));
    assert_eq!(said(&pour(1_500)), "Fill to 15.0\u{a0}fl oz instead of 15.5\u{a0}fl oz.");
    assert_eq!(
        said(&with(pour(1_428), None, 3)),
        "Fill to 14.2\u{a0}fl oz instead of 15.5\u{a0}fl oz. 3 other drinks in this container change too. That is less than the labeled size, 15.0\u{a0}fl oz. Change the menu or label first."
    );
}

#[test]
fn how_much_it_changes() {
    let change = |way: &Way| words::lever_change(way, &speaker(System::UsCustomary));
    assert_eq!(change(&paid(PRICE_OF_GINGER, 38_000, 33_108)), "\u{2212}12.9%");
    let price = paid(Lever::MenuPrice(OFFER), 9_000, 9_616);
    assert_eq!(change(&price), "+6.9%");
    // That of what is charged, with its ending: 0.75 of 9.00.
    let set = Some(Edit::SetPrice { offer: OFFER, price: Some(money(9_750)) });
    assert_eq!(change(&with(price, set, 0)), "+8.4%");
    assert_eq!(change(&shared(Lever::PressYield(GINGER), 650, 681)), "+4.8%");
}

#[test]
fn what_does_not_close_it() {
    let said = |way: &Way| (words::lever_change(way, &speaker(System::UsCustomary)), advice(way));
    let cannot = Way { closes: Err(WhyNot::CannotCloseAlone), ..paid(PRICE_OF_GINGER, 38_000, 0) };
    assert_eq!(said(&cannot), ("not enough alone".to_string(), String::new()));
    let uncounted = Way { lever: Lever::HandsTime(DRINK), now: tenths(4_800), closes: Err(WhyNot::DoesNotCount) };
    assert_eq!(said(&uncounted), ("not counted in this margin".to_string(), String::new()));
}

#[test]
fn a_button_says_what_it_sets() {
    let said = |way: &Way| words::lever_set(way, &book(), &speaker(System::UsCustomary));
    let edit = |price| Some(Edit::SetPrice { offer: OFFER, price: Some(money(price)) });
    let price = paid(Lever::MenuPrice(OFFER), 9_000, 9_616);
    // At its ending, not where the lever closes.
    assert_eq!(said(&with(price.clone(), edit(9_750), 0)).as_deref(), Some("Set price to $9.75"));
    assert_eq!(said(&price), None);
    // Which edit it is makes no difference.
    let fill = way(Lever::Fill(BOTTLE), Figure::Volume(ounces(1_550)), Figure::Volume(ounces(1_428)), per_mille(-80));
    let put = Some(Edit::Remove(Key::Drink(DRINK)));
    assert_eq!(said(&with(fill, put.clone(), 1)).as_deref(), Some("Set fill to 14.2\u{a0}fl oz"));
    let unsold = shared(Lever::Unsold(DRINK), 50, 32);
    assert_eq!(said(&with(unsold, put.clone(), 2)).as_deref(), Some("Set waste to 3.2%"));
    let time = way(Lever::HandsTime(DRINK), tenths(4_800), tenths(3_528), per_mille(-265));
    assert_eq!(said(&with(time, put.clone(), 1)).as_deref(), Some("Set labor to 0:35.2"));
    assert_eq!(said(&with(paid(PRICE_OF_GINGER, 38_000, 33_108), put, 0)), None);
}
