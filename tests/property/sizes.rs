//! Sizes side by side and what-ifs, over generated menus: means against sums made here, and drafts
//! against whole books edited by hand.

use brimwright::book::{Book, Conditions, Drink, Edit, Filled, Headspace, Offer, Record, Scope, Settings};
use brimwright::drink::ledger::{Ledger, Priced};
use brimwright::foundation::measure::{Amount, Exact, Money, Share, Unit};
use brimwright::sizes::side_by_side::{Draft, WhatIf, side_by_side, sold_in};
use proptest::option;
use proptest::prelude::*;

use crate::menus::menu;
use crate::number;
use crate::support::{container_id, drink_id, exact, offer_id};

/// A price, if any, and weekly sales, if any, of one offer.
type Sold = (Option<i64>, Option<i64>);

fn sold() -> impl Strategy<Value = Sold> {
    (option::weighted(0.9, 1..3000_i64), option::weighted(0.5, 0..200_i64))
}

/// A generated drink twice, the second with a fifth more of its first line, each in the generated
/// container and in another of the same set that is half as large again.
fn bar() -> impl Strategy<Value = Book> {
    (menu(), [sold(), sold(), sold(), sold()]).prop_map(|(menu, sold)| {
        let mut book = menu.book.clone();
        let mut put = |record| drop(book.apply(&Edit::Put(record)).expect("it holds"));
        let mut other = Drink { id: drink_id(2), ..menu.drink().clone() };
        let more = other.lines[0].amount.number.times(exact("1.2")).unwrap().rounded(6);
        other.lines[0].amount = Amount::new(more, other.lines[0].amount.unit);
        put(Record::Drink(other));
        let fill = menu.priced().fill.volume.millilitres().times(exact("1.5")).unwrap().rounded(3);
        let brimful = brimwright::book::Brimful::Weighed(Amount::new(fill, Unit::Millilitre));
        let headspace = Headspace::Share(Share::ZERO);
        let large = brimwright::book::Container {
            id: container_id(2),
            brimful,
            headspace,
            declared: None,
            ..menu.container().clone()
        };
        put(Record::Container(large));
        for (place, (cents, weekly)) in (0..).zip(sold) {
            let price = cents.map(|cents| Money::from_major(Exact::new(cents, 2)));
            let weekly = weekly.map(|weekly| Exact::new(weekly, 0));
            let id = offer_id(1 + place / 2, 1 + place % 2);
            put(Record::Offer(Offer { price, weekly, ..Offer::new(id) }));
        }
        book
    })
}

fn within(one: Exact, other: Exact) -> bool {
    let size = one.abs().max(other.abs()).max(Exact::ONE);
    one.minus(other).unwrap().abs() <= size.times(exact("0.0000000001")).unwrap()
}

proptest! {
    #[test]
    fn means_are_sums_over_weights(book in bar()) {
        let ledger = Ledger::of(&book);
        let sizes = sold_in(&book, Scope::Menu);
        let side = side_by_side(&book, &ledger, Scope::Menu, &sizes).unwrap();
        prop_assert_eq!(side.drinks.len() + side.left_out.len(), 2);
        prop_assert_eq!(side.sizes.len(), if side.drinks.is_empty() { 0 } else { 2 });
        prop_assert!(side.sizes.is_sorted_by_key(|row| row.fill));
        for row in &side.sizes {
            let parts = row.parts.iter().try_fold(Money::ZERO, |sum, part| sum.plus(*part)).unwrap();
            prop_assert_eq!(parts, row.cost);
            let mean = |of: &dyn Fn(&Priced) -> Exact| {
                let (mut sum, mut weights) = (Exact::ZERO, Exact::ZERO);
                for (drink, weight) in &side.drinks {
                    let offer = brimwright::book::OfferId { drink: *drink, container: row.container };
                    let priced = ledger.get(offer).unwrap().as_ref().unwrap();
                    sum = sum.plus(of(priced).times(*weight).unwrap()).unwrap();
                    weights = weights.plus(*weight).unwrap();
                }
                sum.over(weights).unwrap()
            };
            let sold = row.sold.unwrap();
            prop_assert!(within(sold.price.major(), mean(&|it| it.asked.unwrap().menu.major())));
            prop_assert!(within(row.cost.major(), mean(&|it| it.cost.total().major())));
            prop_assert!(within(sold.contribution.major(), mean(&|it| it.asked.unwrap().contribution.major())));
            // Fees, cost, what discounts take and what is left make up the price without tax.
            let fees = mean(&|it| it.asked.unwrap().fees.major());
            let taken = mean(&|it| it.asked.unwrap().without_tax.minus(it.asked.unwrap().revenue).unwrap().major());
            prop_assert!(within(sold.reductions.major(), taken));
            let fees = fees.plus(taken).unwrap();
            let all = fees.plus(row.cost.major()).unwrap().plus(sold.contribution.major()).unwrap();
            prop_assert!(within(all, sold.without_tax.major()));
            // The margin is what the covered terms leave of the revenue, over it.
            let revenue = mean(&|it| it.asked.unwrap().revenue.major());
            let left = mean(&|it| {
                let asked = it.asked.unwrap();
                asked.revenue.major().times(asked.margin.fraction()).unwrap()
            });
            prop_assert!(within(sold.margin.fraction(), left.over(revenue).unwrap()));
        }
    }

    #[test]
    fn a_draft_is_the_book_with_it_in(
        book in bar(),
        percent in -50..=100_i64,
        target in option::of(0..95_i64),
        cents in option::of(1..3000_i64),
        fill in option::of(number(900, 3)),
        alone in any::<bool>(),
    ) {
        let scope = if alone { Scope::Drink(drink_id(1)) } else { Scope::Menu };
        let target = target.map(|percent| Share::from_fraction(Exact::new(percent, 2)));
        let price = cents.map(|cents| Money::from_major(Exact::new(cents, 2)));
        let filled = |fill| Filled { container: container_id(2), fill: Amount::new(fill, Unit::Millilitre) };
        let conditions = Conditions {
            part: scope,
            ingredients: Share::from_fraction(Exact::new(percent, 2)),
            target,
            fills: fill.map(filled).into_iter().collect(),
            ..Conditions::default()
        };
        let prices = price.map(|price| (offer_id(1, 1), price)).into_iter().collect();
        let what_if = WhatIf { conditions, prices, mix: Vec::new() };
        let sizes = sold_in(&book, scope);
        let before = book.clone();
        let brimful = book.container(container_id(2)).unwrap().brimful.volume().unwrap().unwrap();
        let fits = fill.is_none_or(|fill| fill.is_positive() && fill <= brimful.millilitres());
        let draft = Draft::of(&book, &Ledger::of(&book), scope, &sizes);
        let drafted = draft.with(&what_if);
        prop_assert_eq!(&book, &before);
        prop_assert_eq!(drafted.is_ok(), fits);
        let Ok(drafted) = drafted else { return Ok(()) };

        // By hand, record by record, in the whole book.
        let mut hand = book.clone();
        let mut put = |record| drop(hand.apply(&Edit::Put(record)).expect("it holds"));
        let factor = Exact::new(100 + percent, 2);
        let dearer = |money: Money| Money::from_major(money.major().times(factor).unwrap().rounded(8));
        for mut ingredient in book.ingredients().cloned() {
            for pack in &mut ingredient.packs {
                pack.price = dearer(pack.price);
                pack.surcharge = dearer(pack.surcharge);
                for tier in &mut pack.tiers {
                    tier.price = dearer(tier.price);
                }
            }
            put(Record::Ingredient(ingredient));
        }
        match (target, scope) {
            (Some(target), Scope::Menu) => {
                put(Record::Settings(Box::new(Settings { target, ..book.settings().clone() })));
            }
            (Some(_), _) => put(Record::Drink(Drink { target, ..book.drink(drink_id(1)).unwrap().clone() })),
            (None, _) => {}
        }
        if price.is_some() {
            put(Record::Offer(Offer { price, ..book.offer(offer_id(1, 1)).unwrap().clone() }));
        }
        // The draft's own container: how a fill becomes a headspace is `packaged`'s to prove.
        put(Record::Container(drafted.book.container(container_id(2)).unwrap().clone()));
        let by_hand = Ledger::of(&hand);
        prop_assert_eq!(drafted.ledger.offers().count(), if alone { 2 } else { 4 });
        for (offer, result) in drafted.ledger.offers() {
            prop_assert_eq!(Some(result), by_hand.get(offer));
        }
        if let Some(fill) = fill {
            let is = brimwright::drink::fill::fill(drafted.book.container(container_id(2)).unwrap()).unwrap().volume;
            let unit = book.settings().units.drink_unit().size();
            let over = is.millilitres().minus(fill).unwrap();
            prop_assert!(!over.is_negative() && over <= unit.times(exact("0.000001")).unwrap(), "{:?}", over);
        }
    }
}
