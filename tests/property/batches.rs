//! The sheet of a batch: what is weighed out of it makes what was planned. The plan of a day: what a
//! drink took comes off the shelf once.

use std::collections::BTreeMap;

use brimwright::book::{Batch, Edit, Make, OfferId, Record, Settings};
use brimwright::counter::batch::{
    Station, begun, deleted, filled, on_shelf, planned, sheet, taken_off, takes_up, to_take_off, without,
};
use brimwright::drink::ledger::Ledger;
use brimwright::drink::make::{needs, whole_packs};
use brimwright::foundation::measure::{Amount, Dimension, Exact, Unit};
use proptest::collection::{btree_map, vec};
use proptest::prelude::*;

use crate::cases::cases;
use crate::menus::menu;
use crate::support::{batch, container, day, drink, exact, offer, offer_id};

/// What is done to the plan of a day.
#[derive(Clone, Debug)]
enum Done {
    Begin(BTreeMap<u64, u32>),
    Number(u64, u32),
    Fill(u64, bool),
    TakeOff,
    TakeOut(u64),
    Delete,
}

fn done() -> impl Strategy<Value = Done> {
    let (drink, units) = (1..4_u64, 0..9_u32);
    prop_oneof![
        1 => btree_map(drink.clone(), units.clone(), 0..3).prop_map(Done::Begin),
        3 => (drink.clone(), units).prop_map(|(drink, units)| Done::Number(drink, units)),
        4 => (drink.clone(), any::<bool>()).prop_map(|(drink, done)| Done::Fill(drink, done)),
        3 => Just(Done::TakeOff),
        2 => drink.prop_map(Done::TakeOut),
        1 => Just(Done::Delete),
    ]
}

proptest! {
    #![proptest_config(cases(300))]

    #[test]
    fn what_is_weighed_out_and_bought_is_never_short(
        menu in menu(),
        units in 0..40_u32,
        (grams, millilitres) in (1..500_i64, 1..500_i64),
    ) {
        let mut book = menu.book.clone();
        let steps = Settings {
            scale_step: Some(Amount::new(Exact::new(grams, 1), Unit::Gram)),
            jug_step: Some(Amount::new(Exact::new(millilitres, 1), Unit::Millilitre)),
            ..book.settings().clone()
        };
        book.apply(&Edit::Put(Record::Settings(Box::new(steps)))).unwrap();
        book.apply(&Edit::Put(Record::Offer(offer(1, 1, None)))).unwrap();
        let ledger = Ledger::of(&book);
        let units = Exact::from(units);
        let OfferId { drink, container } = offer_id(1, 1);
        let makes = vec![Make { drink, container, units, filled: false, off_shelf: Exact::ZERO }];
        let found = sheet(&book, &ledger, &Batch { day: day("2026-11-26"), makes, ready: Vec::new() }).unwrap();
        let takes = needs(&book, &ledger, &mut [(offer_id(1, 1), units)].into_iter()).unwrap();
        prop_assert_eq!(found.portions.is_empty(), units.is_zero());
        let within = exact("0.000001");
        for portion in &found.portions {
            for weighed in portion.weighed.as_ref().expect("a complete ingredient") {
                let step = match weighed.exact.dimension() {
                    Dimension::Mass => Exact::new(grams, 1),
                    Dimension::Volume => Exact::new(millilitres, 1),
                    Dimension::Count => Exact::ONE,
                };
                let exact = weighed.exact.base();
                let over = weighed.amount.measure().unwrap().base().minus(exact).unwrap();
                prop_assert!(over >= within.negated(), "{weighed:?} is short");
                prop_assert!(over < step, "{weighed:?} is a step too much");
                // Small amounts are not raised to a multiple: a quarter more at most, but for a hundredth of a gram.
                let quarter = exact.over(Exact::from(4)).unwrap().max(Exact::new(1, 2));
                let is_a_count = weighed.exact.dimension() == Dimension::Count;
                prop_assert!(is_a_count || over <= quarter.plus(within).unwrap(), "{weighed:?} is raised far");
            }
        }
        for needed in &takes.ingredients {
            let ingredient = book.ingredient(needed.ingredient).unwrap();
            let pack = &ingredient.packs[0];
            let bought = needed.bought(ingredient, pack.contents.unit.dimension()).unwrap();
            // What is taken of it at all its stages is what must be bought.
            let portions = found.portions.iter().filter(|it| it.ingredient == ingredient.id);
            let out = portions.map(|it| {
                let first = it.weighed.as_ref().unwrap()[0];
                assert_eq!(first.station, Station::Out);
                first.exact.base()
            });
            let out = out.fold(Exact::ZERO, |sum, part| sum.plus(part).unwrap());
            prop_assert!(crate::near(out, bought, "0.000001"));
            // Whole packs hold it, and less than one is left over.
            let packs = whole_packs(pack, bought).unwrap();
            let over = packs.times(pack.contents.measure().unwrap().base()).unwrap().minus(bought).unwrap();
            prop_assert!(over >= within.negated() && over <= pack.contents.measure().unwrap().base());
        }
    }

    #[test]
    fn what_a_drink_took_comes_off_once_whatever_is_done_to_the_plan(all in vec(done(), 1..40)) {
        let on = day("2026-11-26");
        let drinks = (1..4).map(|id| Record::Drink(drink(id, "500 mL", [])));
        let records = drinks.chain([Record::Container(container(1, "500 mL"))]);
        let mut book = crate::support::book(crate::support::settings(), records);
        let mut off: BTreeMap<OfferId, Exact> = BTreeMap::new();
        for it in all {
            let edit = match it {
                Done::Begin(numbers) => {
                    let numbers = numbers.iter().map(|(drink, units)| (drink, units.to_string()));
                    let numbers: Vec<_> = numbers.collect();
                    let makes: Vec<_> = numbers.iter().map(|(drink, units)| (**drink, 1, units.as_str())).collect();
                    Some(begun(&book, batch("2026-11-26", &makes)))
                }
                Done::Number(drink, units) => {
                    takes_up(&book, on, &mut [(offer_id(drink, 1), Exact::from(units))].into_iter())
                }
                Done::Fill(drink, done) => filled(&book, on, offer_id(drink, 1), done),
                Done::TakeOff => {
                    let taken = book.batch(on).map(|batch| to_take_off(batch).unwrap()).unwrap_or_default();
                    for (offer, units) in taken {
                        let sum = off.entry(offer).or_insert(Exact::ZERO);
                        *sum = sum.plus(units).unwrap();
                        let make = book.batch(on).unwrap().makes.iter().find(|make| make.offer() == offer).unwrap();
                        prop_assert_eq!(*sum, make.units, "as many came off as were made");
                    }
                    taken_off(&book, on)
                }
                Done::TakeOut(drink) => without(&book, on, offer_id(drink, 1)),
                Done::Delete => deleted(&book, on),
            };
            if let Some(edit) = edit {
                book.apply(&edit).unwrap();
            }
            for (offer, units) in &off {
                let makes = book.batch(on).map(|batch| batch.makes.as_slice()).unwrap_or_default();
                let kept = makes.iter().find(|make| make.offer() == *offer).map(|make| make.off_shelf);
                prop_assert_eq!(kept, Some(*units), "what came off is kept with the day");
            }
            // What is out of the plan asks for nothing.
            if let Some(batch) = book.batch(on) {
                let plan: Vec<OfferId> = planned(batch).map(|(offer, _)| offer).collect();
                prop_assert!(on_shelf(batch).unwrap().iter().all(|(offer, _)| plan.contains(offer)));
            }
        }
    }
}
