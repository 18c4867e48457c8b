//! The sheet of a batch: what is weighed out of it makes what was planned.

use brimwright::batch::{Station, sheet};
use brimwright::book::{Batch, Edit, Make, OfferId, Record, Settings};
use brimwright::ledger::Ledger;
use brimwright::make::{needs, whole_packs};
use brimwright::measure::{Amount, Exact, Unit};
use proptest::prelude::*;

use crate::menus::menu;
use crate::support::{day, exact, offer, offer_id};

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

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
                let step = match weighed.amount.unit {
                    Unit::Gram => Exact::new(grams, 1),
                    Unit::Millilitre => Exact::new(millilitres, 1),
                    _ => Exact::ONE,
                };
                let over = weighed.amount.measure().unwrap().base().minus(weighed.exact.base()).unwrap();
                prop_assert!(over >= within.negated(), "{weighed:?} is short");
                prop_assert!(over < step, "{weighed:?} is a step too much");
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
}
