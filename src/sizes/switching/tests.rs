use super::*;
use crate::book::{Accepted, DrinkKind, FillRule};
use crate::book::{Container, Edit, Filling, Key, PackagingSet, PackagingSetId, Record, Scope, Settings, Tier};
use crate::foundation::measure::{Scale, Share, Temperature};
use crate::support::{
    amount, book, container, container_id, drink, drink_id, exact, ingredient, line, money, offer, offer_id, pack,
    packaging_id, settings, share, use_of, vessel,
};

/// Drinks 1 and 2 of a juice at 4.00 and one at 8.00 a litre, in 500 mL (1) at 6.00 and 9.00, 60
/// and 40 of them a week, to be sold in 250 mL (2): 1.00 and 2.00 of juice there.
fn bar() -> Book {
    let sold =
        |drink, price, weekly| Record::Offer(Offer { weekly: Some(exact(weekly)), ..offer(drink, 1, Some(price)) });
    book(
        Settings { target: share("0.5"), ..settings() },
        [
            Record::Ingredient(ingredient(1, [pack(1, "1 L", "4")])),
            Record::Ingredient(ingredient(2, [pack(1, "1 L", "8")])),
            Record::Container(container(1, "500 mL")),
            Record::Container(container(2, "250 mL")),
            Record::Drink(drink(1, "1 L", [line(1, 1, "1 L")])),
            Record::Drink(drink(2, "1 L", [line(1, 2, "1 L")])),
            sold(1, "6", "60"),
            sold(2, "9", "40"),
        ],
    )
}

const BLENDED: Scope = Scope::Kind(DrinkKind::Blended);

fn question(scope: Scope) -> Question {
    Question { scope, from: container_id(1), to: container_id(2) }
}

fn with(mut book: Book, records: impl IntoIterator<Item = Record>) -> Book {
    for record in records {
        book.apply(&Edit::Put(record)).unwrap();
    }
    book
}

fn prices(first: &str, second: &str) -> [(DrinkId, Money); 2] {
    [(drink_id(1), money(first)), (drink_id(2), money(second))]
}

#[test]
fn one_drink_by_hand() {
    // 6.00 less 2.00 against 4.20 less 1.00: 4.00 / 3.20 = 1.25. ln 1.25 / ln 0.7 = -0.6256.
    let switch = switch(&bar(), question(Scope::Drink(drink_id(1))), &prices("4.2", "6")).unwrap();
    let [one] = switch.drinks.as_slice() else { panic!("one drink: {switch:?}") };
    let earnings = |price, contribution| Earnings { price: money(price), contribution: money(contribution) };
    assert_eq!((one.now, one.then), (Ok(earnings("6", "4")), Ok(earnings("4.2", "3.2"))));
    let answer = one.answer.unwrap().unwrap();
    assert_eq!((answer.ratio, answer.change()), (exact("1.25"), Ok(share("0.25"))));
    assert_eq!(answer.units(exact("60")), Ok(exact("75")));
    assert_eq!(answer.price_change, share("-0.3"));
    assert_eq!(answer.elasticity.map(|number| number.rounded(4)), Some(exact("-0.6256")));
    assert_eq!((one.price_from, switch.sales), (PriceFrom::Typed, Sales::Entered { without: 0 }));
}

#[test]
fn a_kind_by_its_mix() {
    // Now 60 * 4.00 + 40 * 5.00 = 440; then 60 * 3.00 + 40 * 4.00 = 340 at 4.00 and 6.00: 440 /
    // 3.40 a unit is 129.4 of them. On average 7.20 become 4.80: ln(440/340) / ln(480/720).
    let switch = switch(&bar(), question(BLENDED), &prices("4", "6")).unwrap();
    let together = switch.together.unwrap();
    assert_eq!(together.units, exact("100"));
    assert_eq!((together.now.contribution, together.then.contribution), (money("440"), money("340")));
    let answer = together.answer.unwrap();
    assert_eq!(answer.units(together.units).unwrap().rounded(2), exact("129.41"));
    assert_eq!(answer.elasticity.map(|number| number.rounded(4)), Some(exact("-0.6359")));
    // Of 120 % kept, 408; of 130 %, 442.
    assert_eq!((together.with_kept(share("1.2")), together.gain(share("1.3"))), (Ok(money("408")), Ok(money("2"))));
    let curve = together.curve().unwrap();
    assert_eq!((curve.len(), curve[0], curve[10]), (11, (share("0.5"), money("170")), (share("1.5"), money("510"))));
    // 100 and 2.00 a week more; never where it is less, at once where nothing is to pay.
    assert_eq!(together.payback(share("1.3"), money("100")), Ok(Payback::Weeks(exact("50"))));
    assert_eq!(together.payback(share("1.2"), money("100")), Ok(Payback::Never));
    assert_eq!(together.payback(share("1.3"), money("0")), Ok(Payback::AtOnce));
    assert_eq!(together.payback(share("1.2"), money("0")), Ok(Payback::Never));
}

#[test]
fn the_price_in_the_new_size_is_typed_asked_or_suggested() {
    // Half of the price is to be left: 2.00 and 4.00 are suggested.
    let asked = with(bar(), [Record::Offer(offer(1, 2, Some("3.5")))]);
    let switch = switch(&asked, question(BLENDED), &[]).unwrap();
    let price = |at: usize| (switch.drinks[at].then.unwrap().price, switch.drinks[at].price_from);
    assert_eq!(price(0), (money("3.5"), PriceFrom::Asked));
    assert_eq!(price(1), (money("4"), PriceFrom::Suggested));
}

#[test]
fn what_loses_money_has_no_break_even() {
    let losing = |now: &str, then: &str| {
        let book = with(bar(), [Record::Offer(offer(1, 1, Some(now)))]);
        let switch = switch(&book, question(Scope::Drink(drink_id(1))), &prices(then, "1")).unwrap();
        (switch.drinks[0].answer.unwrap().map(|_| ()), switch.together.unwrap().answer.map(|_| ()))
    };
    // 2.00 of juice now, 1.00 then.
    assert_eq!(losing("3", "1.5"), (Ok(()), Ok(())));
    assert_eq!(losing("1.9", "1.5"), (Err(Losing::Now), Err(Losing::Now)));
    assert_eq!(losing("3", "1"), (Err(Losing::Then), Err(Losing::Then)));
    assert_eq!(losing("2", "0.5"), (Err(Losing::Both), Err(Losing::Both)));
}

#[test]
fn equal_prices_have_no_elasticity() {
    let switch = switch(&bar(), question(Scope::Drink(drink_id(1))), &prices("6", "6")).unwrap();
    let answer = switch.drinks[0].answer.unwrap().unwrap();
    assert_eq!((answer.ratio, answer.elasticity), (exact("0.8"), None));
}

#[test]
fn sales_may_be_unknown_or_none() {
    let without =
        |drink, weekly: Option<&str>| Record::Offer(Offer { weekly: weekly.map(exact), ..offer(drink, 1, Some("6")) });
    let sales = |records: [Record; 2]| {
        let switch = switch(&with(bar(), records), question(BLENDED), &prices("4", "6")).unwrap();
        (switch.sales, switch.together.unwrap().units)
    };
    let unknown = sales([without(1, None), without(2, None)]);
    assert_eq!(unknown, (Sales::NotEntered, exact("200")));
    let nothing = sales([without(1, Some("0")), without(2, None)]);
    assert_eq!(nothing, (Sales::NothingSold, exact("200")));
    let some = sales([without(1, Some("30")), without(2, None)]);
    assert_eq!(some, (Sales::Entered { without: 1 }, exact("30")));
}

#[test]
fn what_stands_in_the_way_is_named() {
    let same = Question { to: container_id(1), ..question(BLENDED) };
    assert_eq!(switch(&bar(), same, &[]), Err(SwitchError::SameContainer(container_id(1))));
    let other = Question { from: container_id(2), to: container_id(1), ..question(BLENDED) };
    assert_eq!(switch(&bar(), other, &[]), Err(SwitchError::NotSold(container_id(2))));
    // 300 mL of a fixed line do not fit 250; the other drink goes on.
    let fixed = crate::book::Line { scaling: crate::book::Scaling::Fixed, ..line(2, 2, "300 mL") };
    let large = with(bar(), [Record::Drink(drink(1, "500 mL", [line(1, 1, "200 mL"), fixed]))]);
    let found = switch(&large, question(BLENDED), &prices("4", "6")).unwrap();
    let then = found.drinks[0].then.unwrap_err();
    assert!(matches!(
        then,
        NoEarnings::Offer(OfferError::Scale(crate::drink::fill::ScaleError::FixedLinesOverflow { .. }))
    ));
    assert_eq!((found.drinks[0].answer, found.together.unwrap().units), (None, exact("40")));
    // No price now; none that reaches a target of 100 % less.
    let unpriced = with(bar(), [Record::Offer(offer(1, 1, None))]);
    let found = switch(&unpriced, question(Scope::Drink(drink_id(1))), &[]).unwrap();
    assert_eq!((found.drinks[0].now, found.together), (Err(NoEarnings::NoPrice), None));
    let everything = Settings {
        target: share("0.99"),
        commission: share("0.5"),
        cost_basis: crate::book::CostBasis::Everything,
        ..settings()
    };
    let dear = with(bar(), [Record::Settings(Box::new(everything))]);
    let found = switch(&dear, question(Scope::Drink(drink_id(1))), &[]).unwrap();
    assert!(matches!(found.drinks[0].then, Err(NoEarnings::NoPriceReaches(_))), "{found:?}");
}

/// The new size takes a cup (1) by 3 packs at a time, two straws (2) of a set, and a lid (3) that
/// the old size takes too; a third size on no drink takes the cup as well.
fn with_packaging(third_is_sold: bool) -> Book {
    let case = crate::book::Pack {
        surcharge: money("5"),
        at_a_time: exact("3"),
        tiers: vec![Tier { from: exact("2"), price: money("40") }],
        ..pack(1, "500 ea", "45")
    };
    let straws =
        PackagingSet { id: PackagingSetId::from_random(1), name: "Invented".into(), uses: vec![use_of(2, "2")] };
    let shared = vec![straws.id];
    let sold = third_is_sold.then(|| Record::Offer(offer(2, 3, None)));
    let cup_and_lid = vec![use_of(1, "1"), use_of(3, "1")];
    let records = [
        Record::Packaging(vessel(1, [case])),
        Record::Packaging(vessel(2, [pack(1, "1000 ea", "12")])),
        Record::Packaging(vessel(3, [pack(1, "1000 ea", "30")])),
        Record::PackagingSet(straws),
        Record::Container(Container { set: vec![use_of(3, "1")], ..container(1, "500 mL") }),
        Record::Container(Container { set: cup_and_lid, shared, ..container(2, "250 mL") }),
        Record::Container(Container { set: vec![use_of(1, "1")], ..container(3, "1 L") }),
    ];
    with(bar(), records.into_iter().chain(sold))
}

#[test]
fn first_orders_are_of_what_is_new() {
    // Three cases at 40 and 5 of delivery each; a box of straws; lids there are.
    let orders = first_orders(&with_packaging(false), question(BLENDED)).unwrap();
    let order = |packaging, packs, cost, in_use| FirstOrder {
        packaging: packaging_id(packaging),
        packs: exact(packs),
        cost: Some(money(cost)),
        in_use,
    };
    assert_eq!(orders, [order(1, "3", "135", false), order(2, "1", "12", false)]);
    assert_eq!(to_pay(&orders), Ok(money("147")));
    // A size on the menu takes the cup already.
    let orders = first_orders(&with_packaging(true), question(BLENDED)).unwrap();
    assert_eq!(orders, [order(1, "3", "135", true), order(2, "1", "12", false)]);
    assert_eq!(to_pay(&orders), Ok(money("12")));
    let none = with(with_packaging(false), [Record::Packaging(vessel(2, []))]);
    assert_eq!(first_orders(&none, question(BLENDED)).unwrap()[1].cost, None);
}

#[test]
fn a_switch_is_one_edit_and_can_be_taken_back() {
    let filling = Filling {
        least_headspace: Some(amount("5 mL")),
        batch: Some(exact("24")),
        measured_at: Some(Temperature::new(exact("20"), Scale::Celsius)),
        nets: vec![amount("498 mL")],
        ..Filling::new(FillRule::EuropeanOrBritish, Accepted::TwoPercent)
    };
    let packaged = Offer { filling: Some(filling.clone()), ..bar().offer(offer_id(2, 1)).unwrap().clone() };
    let there = Offer { weekly: Some(exact("10")), ..offer(1, 2, Some("5")) };
    let mut book = with(bar(), [Record::Offer(packaged), Record::Offer(there)]);
    let before = book.clone();
    let found = switch(&book, question(BLENDED), &prices("4.2", "6")).unwrap();
    let edit = sell_in_the_new_size(&book, question(BLENDED), &found, share("1.13")).unwrap();
    let applied = book.apply(&edit).unwrap();
    assert!(!book.contains(Key::Offer(offer_id(1, 1))) && !book.contains(Key::Offer(offer_id(2, 1))));
    // 60 * 1.13 = 67.8 and the 10 that are sold there; 40 * 1.13 = 45.2.
    let offer = |drink| book.offer(offer_id(drink, 2)).unwrap();
    assert_eq!((offer(1).price, offer(1).weekly), (Some(money("4.2")), Some(exact("78"))));
    assert_eq!((offer(2).price, offer(2).weekly), (Some(money("6")), Some(exact("45"))));
    let rule = Filling { least_headspace: None, measured_at: None, nets: Vec::new(), ..filling };
    assert_eq!(offer(2).filling, Some(rule), "the rule goes on, the weighings were of another container");
    book.apply(&applied.inverse).unwrap();
    assert_eq!(book, before);
}

#[test]
fn what_has_no_price_stays() {
    let fixed = crate::book::Line { scaling: crate::book::Scaling::Fixed, ..line(2, 2, "300 mL") };
    let mut book = with(bar(), [Record::Drink(drink(1, "500 mL", [line(1, 1, "200 mL"), fixed]))]);
    let found = switch(&book, question(BLENDED), &[]).unwrap();
    let edit = sell_in_the_new_size(&book, question(BLENDED), &found, Share::WHOLE).unwrap();
    book.apply(&edit).unwrap();
    assert!(book.contains(Key::Offer(offer_id(1, 1))) && !book.contains(Key::Offer(offer_id(1, 2))));
    assert!(!book.contains(Key::Offer(offer_id(2, 1))) && book.contains(Key::Offer(offer_id(2, 2))));
}
