use super::*;
use crate::book::{Container, CostBasis, Drink, DrinkKind, Labour, Offer, PaymentFee, Record, Settings, Tax, TaxPlace};
use crate::foundation::measure::System;
use crate::support::{
    book, container, container_id, drink, drink_id, exact, ingredient, line, millilitres, money, offer, offer_id, pack,
    seconds, settings, share, use_of, vessel,
};

/// 4.00 a litre; a bottle at 0.50; 30 s at 36.00 an hour, or none. In 500, 250 and 350 mL
/// (ids 1, 2, 3), at these prices.
fn priced(settings: Settings, time: &str, prices: [Option<&str>; 3]) -> (Book, Ledger) {
    let labour = Labour { per_drink: seconds(time), ..Labour::default() };
    let bottle = |id, brimful| Record::Container(Container { set: vec![use_of(1, "1")], ..container(id, brimful) });
    let records = [
        Record::Ingredient(ingredient(1, [pack(1, "1 L", "4")])),
        Record::Packaging(vessel(1, [pack(1, "1 ea", "0.50")])),
        bottle(1, "500 mL"),
        bottle(2, "250 mL"),
        bottle(3, "350 mL"),
        Record::Drink(Drink { labour, ..drink(1, "1 L", [line(1, 1, "1 L")]) }),
    ];
    let offers = (1..).zip(prices).map(|(container, price)| Record::Offer(offer(1, container, price)));
    let settings = Settings { units: System::Metric, wage: money("36"), ..settings };
    let book = book(settings, records.into_iter().chain(offers));
    let ledger = Ledger::of(&book);
    (book, ledger)
}

const DRINK: Scope = Scope::Drink(DrinkId::from_random(1));

fn sizes(book: &Book, ledger: &Ledger) -> SideBySide {
    side_by_side(book, ledger, DRINK, &sold_in(book, DRINK)).unwrap()
}

/// The sizes in a book without tax.
fn rows(time: &str, prices: [Option<&str>; 3]) -> Vec<SizeRow> {
    let (book, ledger) = priced(settings(), time, prices);
    sizes(&book, &ledger).sizes
}

#[test]
fn sizes_by_hand() {
    let rows = rows("30", [Some("6"), Some("4"), None]);
    let [small, middle, large] = rows.as_slice() else { panic!("three sizes, smallest first: {rows:?}") };

    // 1.00 of juice, 0.50, 0.30: 1.80; per 100 mL of 250 that is 0.72. At 4.00, 2.20 are left.
    let sold = SoldSize {
        price: money("4"),
        without_tax: money("4"),
        price_per_volume: money("1.6"),
        fees: money("0"),
        reductions: money("0"),
        contribution: money("2.2"),
        contribution_per_volume: money("0.88"),
        contribution_per_minute: Some(money("4.4")),
        margin: share("0.625"),
        against_smallest: share("1"),
        on_target: 0,
    };
    let expected = SizeRow {
        container: container_id(2),
        fill: millilitres("250"),
        parts: ["1", "0.5", "0.3", "0", "0", "0", "0"].map(money),
        cost: money("1.8"),
        cost_per_volume: money("0.72"),
        // Goods at a margin of 65 %: 1.50 / 0.35 = 4.2857..., to the next cent.
        suggested: Some((money("4.29"), money("4.29"))),
        sold: Some(sold),
        step: None,
    };
    assert_eq!(*small, expected);

    // No price asked: 1.40 + 0.80, and no step to it.
    assert_eq!((middle.container, middle.cost), (container_id(3), money("2.2")));
    assert_eq!((middle.sold, middle.step), (None, None));

    // 2.00 + 0.80 at 6.00: 3.20 are left. From 250 mL it is 2.00 more, 1.00 of it cost.
    let sold = SoldSize {
        price: money("6"),
        without_tax: money("6"),
        price_per_volume: money("1.2"),
        fees: money("0"),
        reductions: money("0"),
        contribution: money("3.2"),
        contribution_per_volume: money("0.64"),
        contribution_per_minute: Some(money("6.4")),
        margin: share("0.583333333333"),
        against_smallest: share("0.75"),
        on_target: 0,
    };
    let step = steps("2", "1", "1", "0.5");
    assert_eq!((large.sold, large.step), (Some(sold), Some(step)));
}

#[test]
fn a_share_is_kept_of_the_price_without_tax() {
    // 2.20 more on the menu are 2.00 without 10 % tax; 1.00 of it cost.
    let ten_percent = Tax { rate: share("0.1"), place: TaxPlace::InThePrice };
    let (book, ledger) = priced(Settings { tax: ten_percent, ..settings() }, "30", [Some("6.60"), Some("4.40"), None]);
    let rows = sizes(&book, &ledger).sizes;
    let step = Step { extra_tax: money("0.2"), ..steps("2.2", "1", "1", "0.5") };
    assert_eq!(rows[2].step, Some(step));
}

#[test]
fn price_without_tax_fees_and_cost_leave_the_profit() {
    // Of 6.00 and 4.00, 5 % and 0.10 a payment are fees: 0.40 and 0.30. The costs are 2.80 and 1.80: 2.80 and 1.90
    // are left. Of 2.00 more, 1.00 is cost, 0.10 fees, and 0.90 is left.
    let fee = PaymentFee { share: share("0.05"), fixed: money("0.1"), ..settings().payment_fee };
    let (book, ledger) = priced(Settings { payment_fee: fee, ..settings() }, "30", [Some("6"), Some("4"), None]);
    let rows = sizes(&book, &ledger).sizes;
    let sold = |row: &SizeRow| row.sold.unwrap();
    assert_eq!((sold(&rows[0]).fees, sold(&rows[2]).fees), (money("0.3"), money("0.4")));
    assert_eq!((sold(&rows[0]).contribution, sold(&rows[2]).contribution), (money("1.9"), money("2.8")));
    assert_eq!((sold(&rows[0]).reductions, sold(&rows[2]).reductions), (Money::ZERO, Money::ZERO));
    let step = Step { extra_fees: money("0.1"), ..steps("2", "1", "0.9", "0.45") };
    assert_eq!(rows[2].step, Some(step));
}

/// A step without fees.
fn steps(price: &str, cost: &str, left: &str, kept: &str) -> Step {
    Step {
        extra_price: money(price),
        extra_tax: Money::ZERO,
        extra_cost: money(cost),
        extra_fees: Money::ZERO,
        extra_reductions: Money::ZERO,
        extra_left: money(left),
        kept: Some(share(kept)),
    }
}

#[test]
fn nothing_is_kept_of_a_price_that_does_not_rise() {
    let rows = rows("0", [Some("4"), Some("4"), None]);
    let step = Step { kept: None, ..steps("0", "1", "-1", "0") };
    assert_eq!(rows[2].step, Some(step));
    assert_eq!(rows[2].sold.unwrap().contribution_per_minute, None, "it takes no time");
}

#[test]
fn the_smallest_priced_size_is_the_measure() {
    let rows = rows("0", [Some("6"), None, Some("4.90")]);
    // 4.90 for 350 mL is 1.40 per 100 mL; 6.00 for 500 mL is 1.20.
    let against = |row: &SizeRow| row.sold.map(|sold| sold.against_smallest);
    assert_eq!(rows.iter().map(against).collect::<Vec<_>>()[..2], [None, Some(share("1"))]);
    assert_eq!(against(&rows[2]), Some(share("0.857142857143")));
}

/// Litres of four drinks at 4.00, 8.00, 2.00 and 1.00, in 250 mL (container 1) and 500 mL (2)
/// and, of the first, in 1 L (3). Nothing else is paid for; the second takes 60 s, unpaid. The
/// fourth is a shot. Prices and weekly sales in the two sizes.
fn menu(offers: [[(Option<&str>, Option<&str>); 2]; 4]) -> (Book, Ledger) {
    let records = ["4", "8", "2", "1"].iter().zip(1..).flat_map(|(price, id)| {
        let timed = Labour { per_drink: seconds(if id == 2 { "60" } else { "0" }), ..Labour::default() };
        let kind = if id == 4 { DrinkKind::Shot } else { DrinkKind::Pressed };
        [
            Record::Ingredient(ingredient(id, [pack(1, "1 L", price)])),
            Record::Drink(Drink { labour: timed, kind, ..drink(id, "1 L", [line(1, id, "1 L")]) }),
        ]
    });
    let containers =
        [(1, "250 mL"), (2, "500 mL"), (3, "1 L")].map(|(id, size)| Record::Container(container(id, size)));
    let sold = (1..).zip(offers).flat_map(|(drink, sizes)| {
        (1..).zip(sizes).map(move |(container, (price, weekly))| {
            Record::Offer(Offer { weekly: weekly.map(exact), ..offer(drink, container, price) })
        })
    });
    let large = Record::Offer(offer(1, 3, Some("12")));
    let settings = Settings { units: System::Metric, cost_basis: CostBasis::Goods, target: share("0.5"), ..settings() };
    let book = book(settings, records.chain(containers).chain(sold).chain([large]));
    let ledger = Ledger::of(&book);
    (book, ledger)
}

const TWO: [ContainerId; 2] = [ContainerId::from_random(1), ContainerId::from_random(2)];

#[test]
fn several_drinks_are_weighed_by_what_is_sold_of_them() {
    let (book, ledger) = menu([
        [(Some("3"), Some("30")), (Some("5"), Some("30"))],
        [(Some("5"), Some("20")), (Some("7"), None)],
        [(Some("9"), None), (Some("9"), None)],
        [(Some("9"), Some("5")), (None, None)],
    ]);
    let found = side_by_side(&book, &ledger, Scope::Menu, &TWO).unwrap();
    // 60 and 20 a week: three quarters and one quarter.
    assert_eq!(found.drinks, [(drink_id(1), exact("60")), (drink_id(2), exact("20"))]);
    assert_eq!(found.weights, Weights::WeeklySales);
    let left_out = [(drink_id(4), LeftOut::WithoutPrice(container_id(2))), (drink_id(3), LeftOut::WithoutSales)];
    assert_eq!(found.left_out, left_out);
    let [small, large] = found.sizes.as_slice() else { panic!("{found:?}") };
    // 0.75 * 1.00 + 0.25 * 2.00; 0.75 * 3.00 + 0.25 * 5.00; one is on target, one is not.
    assert_eq!((small.cost, small.parts[0]), (money("1.25"), money("1.25")));
    let sold = small.sold.unwrap();
    assert_eq!((sold.price, sold.contribution, sold.on_target), (money("3.5"), money("2.25"), 2));
    // Of 3.50 asked 2.25 are left; a quarter takes a minute: 15 s on average.
    assert_eq!(sold.margin, share("0.642857142857"));
    assert_eq!(sold.contribution_per_minute, Some(money("9")));
    // 0.75 * 2.00 + 0.25 * 4.00 of 0.75 * 5.00 + 0.25 * 7.00.
    let sold = large.sold.unwrap();
    assert_eq!((large.cost, sold.price, sold.contribution), (money("2.5"), money("5.5"), money("3")));
    assert_eq!((sold.price_per_volume, sold.on_target), (money("1.1"), 1));
    let step = steps("2", "1.25", "0.75", "0.375");
    assert_eq!(large.step, Some(step));
    assert_eq!(found.whole_step(), Ok(Some((container_id(1), container_id(2), step))));
    // Suggested at 50 %: 2.00 and 4.00.
    assert_eq!(small.suggested, Some((money("2"), money("4"))));
    let raised = found.raised(&book, container_id(1), money("0.25")).unwrap();
    assert_eq!(raised, [(offer_id(1, 1), money("3.25")), (offer_id(2, 1), money("5.25"))]);
}

#[test]
fn without_sales_all_drinks_count_alike() {
    let (book, ledger) = menu([[(Some("3"), None), (Some("5"), None)]; 4]);
    let found = side_by_side(&book, &ledger, Scope::Menu, &TWO).unwrap();
    assert_eq!((found.weights, found.drinks.len(), found.left_out.len()), (Weights::Equal, 4, 0));
    // (1.00 + 2.00 + 0.50 + 0.25) / 4.
    assert_eq!(found.sizes[0].cost, money("0.9375"));
    let pressed = side_by_side(&book, &ledger, Scope::Kind(DrinkKind::Pressed), &TWO).unwrap();
    assert_eq!((pressed.drinks.len(), pressed.sizes[0].cost), (3, money("1.166666666667")));
}

#[test]
fn where_no_drink_is_in_all_sizes_there_is_no_row() {
    let (book, ledger) = menu([[(Some("3"), None), (None, None)]; 4]);
    let three = [1, 2, 3].map(container_id);
    let found = side_by_side(&book, &ledger, Scope::Menu, &three).unwrap();
    assert_eq!((found.sizes.len(), found.drinks.len(), found.left_out.len()), (0, 0, 4));
    assert_eq!(found.left_out[0].1, LeftOut::WithoutPrice(container_id(2)));
    assert_eq!(found.whole_step(), Ok(None));
    // The second is not sold by the litre; that it has no price in 500 mL is found first.
    let found = side_by_side(&book, &ledger, Scope::Menu, &[container_id(3)]).unwrap();
    assert_eq!(found.left_out[0], (drink_id(2), LeftOut::NotSoldIn(container_id(3))));
    assert_eq!(found.sizes.len(), 1);
}

#[test]
fn a_drink_that_cannot_be_computed_is_left_out() {
    let (mut book, _) = menu([[(Some("3"), None), (Some("5"), None)]; 4]);
    let empty = Record::Drink(Drink { kind: DrinkKind::Pressed, ..drink(2, "1 L", []) });
    book.apply(&crate::book::Edit::Put(empty)).unwrap();
    let found = side_by_side(&book, &Ledger::of(&book), Scope::Menu, &TWO).unwrap();
    assert_eq!(found.left_out, [(drink_id(2), LeftOut::CannotCompute(container_id(1)))]);
}

#[test]
fn one_starts_with_the_sizes_that_most_drinks_share() {
    let full = (Some("3"), None);
    let (book, ledger) = menu([[full, full], [full, full], [full, full], [full, (None, None)]]);
    // Three drinks in two sizes are three steps; one drink in three sizes would be two.
    assert_eq!(sold_together(&book, &ledger, Scope::Menu), TWO);
    assert_eq!(sold_together(&book, &ledger, Scope::Kind(DrinkKind::Shot)), TWO[..1]);
    assert_eq!(sold_together(&book, &ledger, Scope::Kind(DrinkKind::Blended)), []);
    assert_eq!(sold_in(&book, Scope::Menu), [1, 2, 3].map(container_id));
    assert_eq!(sold_together(&book, &ledger, DRINK), [1, 2, 3].map(container_id));
}

#[test]
fn an_average_of_one_drink_is_that_drink() {
    let (book, ledger) = menu([[(Some("3"), None), (Some("5.55"), None)]; 4]);
    let shots = side_by_side(&book, &ledger, Scope::Kind(DrinkKind::Shot), &TWO).unwrap();
    let alone = side_by_side(&book, &ledger, Scope::Drink(drink_id(4)), &TWO).unwrap();
    assert_eq!(shots.sizes, alone.sizes);
}
