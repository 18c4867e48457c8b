//! Quotes beside each other, how old they are, and what is found by letters.

use brimwright::book::{Book, Edit, Goods, Ingredient, Pack, Record, Settings};
use brimwright::buying::quotes::{Age, age, compared, find, history};
use brimwright::foundation::measure::{Amount, Date, Exact, Money, Share, Unit};
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::select;

use crate::books::complete_ingredient;
use crate::support::{book, day, ingredient, ingredient_id, pack, pack_id, settings};

fn goods() -> Goods {
    Goods::Ingredient(ingredient_id(1))
}

/// What is paid for a pack in cents, delivery apart, and the tenths of a pound or kilogram in it.
fn quoted() -> impl Strategy<Value = (i64, i64, i64, Unit)> {
    let any = (0..100_000_i64, 0..1_000_i64, 1..1_000_i64, select(vec![Unit::Pound, Unit::Kilogram, Unit::Ounce]));
    // Few enough to be alike now and then.
    let few = (0..3_i64, Just(0_i64), 1..3_i64, Just(Unit::Pound));
    prop_oneof![any, few]
}

fn cents(number: i64) -> Money {
    Money::from_major(Exact::new(number, 2))
}

fn packs(quotes: &[(i64, i64, i64, Unit)]) -> Vec<Pack> {
    let one = |(id, (price, surcharge, tenths, unit)): (u64, &(i64, i64, i64, Unit))| Pack {
        price: cents(*price),
        surcharge: cents(*surcharge),
        contents: Amount::new(Exact::new(*tenths, 1), *unit),
        ..pack(id, "1 lb", "0")
    };
    (1..).zip(quotes).map(one).collect()
}

/// Hundredths of a milligram in a unit, after NIST Handbook 44, appendix C: a pound is
/// 453.59237 g and has 16 ounces, taken sixteenfold here so that all are whole.
fn weight(tenths: i64, unit: Unit) -> i128 {
    let of_unit: i128 = match unit {
        Unit::Pound => 45_359_237 * 16,
        Unit::Kilogram => 100_000_000 * 16,
        _ => 45_359_237,
    };
    i128::from(tenths) * of_unit
}

proptest! {
    /// Cheaper means: what is paid for the one times what the other holds is less. Yields are the
    /// same for all packs of an ingredient, so they do not turn the order.
    #[test]
    fn the_order_is_that_of_what_is_paid_for_the_same_weight(
        quotes in vec(quoted(), 1..7),
        trim in 1..=100_i64,
        press in proptest::option::of(1..=100_i64),
    ) {
        let hundredths = |number| Share::from_fraction(Exact::new(number, 2));
        let goods_of = Ingredient {
            trim_yield: hundredths(trim),
            press_yield: press.map(hundredths),
            juice_density: press.map(|_| crate::support::density("1.04")),
            ..ingredient(1, packs(&quotes))
        };
        let book = book(settings(), [Record::Ingredient(goods_of)]);
        let found = compared(&book, goods());
        prop_assert_eq!(found.len(), quotes.len());
        let place = |at: usize| (0..quotes.len()).find(|place| pack_id(*place as u64 + 1) == found[at].pack).unwrap();
        for at in 1..found.len() {
            let ((cheap, cheap_weight), (dear, dear_weight)) = {
                let of = |(price, surcharge, tenths, unit): (i64, i64, i64, Unit)| {
                    (i128::from(price + surcharge), weight(tenths, unit))
                };
                (of(quotes[place(at - 1)]), of(quotes[place(at)]))
            };
            let (left, right) = (cheap * dear_weight, dear * cheap_weight);
            prop_assert!(left <= right, "{:?} before {:?}", quotes[place(at - 1)], quotes[place(at)]);
            // Equals stay in the order of the book.
            prop_assert!(left < right || place(at - 1) < place(at));
        }
    }

    /// Whatever an ingredient has and lacks: every pack is there once, those without a cost last,
    /// and none is dearer than the cheapest by less than nothing.
    #[test]
    fn every_pack_is_there_once(
        complete in complete_ingredient(1),
        lacks in any::<bool>(),
        settings in crate::books::settings(),
    ) {
        let (density, piece_weight) = (complete.density, complete.piece_weight);
        let goods_of = Ingredient {
            density: density.filter(|_| !lacks),
            piece_weight: piece_weight.filter(|_| !lacks),
            ..complete
        };
        let ids: Vec<_> = goods_of.packs.iter().map(|pack| pack.id).collect();
        let mut book = Book::new(settings);
        prop_assume!(book.apply(&Edit::Put(Record::Ingredient(goods_of))).is_ok());
        let found = compared(&book, goods());
        let mut there: Vec<_> = found.iter().map(|one| one.pack).collect();
        there.sort();
        let mut wanted = ids;
        wanted.sort();
        prop_assert_eq!(there, wanted);
        prop_assert!(found.windows(2).all(|pair| pair[0].cost.is_ok() || pair[1].cost.is_err()));
        prop_assert!(found.iter().all(|one| one.above_cheapest.is_none_or(|more| !more.is_negative())));
    }

    /// A price is old from the first day on which more days have passed than the limit, and ever
    /// after.
    #[test]
    fn a_price_grows_old_once(limit in 1..400_u32, heard in 0..2_000_i32, over in -3..4_i32) {
        let days = limit as i32 + over;
        let heard = day("2020-01-01").plus_days(heard);
        let limited = Settings { price_days: Some(Exact::from(limit)), ..settings() };
        let quoted = Pack { day: Some(heard), ..pack(1, "1 lb", "1") };
        let on = |today: Date| age(&quoted, &limited, today);
        let expected = if days > limit as i32 { Age::Old(heard) } else { Age::Fresh(heard) };
        prop_assert_eq!(on(heard.plus_days(days)), expected);
        if on(heard.plus_days(days)) == Age::Old(heard) {
            prop_assert_eq!(on(heard.plus_days(days + 1)), Age::Old(heard));
        }
    }

    /// Whatever was heard when: the line of the history goes forward in time, holds each price
    /// that was heard, and nothing but them.
    #[test]
    fn the_line_of_a_history_holds_what_was_heard(heard in vec((0..60_i32, 0..5_000_i64), 1..12), today in 0..80_i32) {
        let first = day("2026-10-01");
        let mut quoted = pack(1, "1 lb", "1");
        for (on, price) in &heard {
            quoted.quote(cents(*price), first.plus_days(*on));
        }
        let known = history(&quoted).unwrap();
        let steps = known.steps(first.plus_days(today));
        prop_assert!(steps.windows(2).all(|pair| pair[0].day <= pair[1].day));
        prop_assert!(steps.windows(2).all(|pair| pair[0].day == pair[1].day || pair[0].price == pair[1].price));
        prop_assert!(known.heard.iter().all(|one| steps.contains(one)));
        // Each corner lies at the price that held on its day, or that held until it.
        for corner in &steps {
            let (on, before) = (quoted.price_on(corner.day), quoted.price_on(corner.day.plus_days(-1)));
            prop_assert!(on == Some(corner.price) || before == Some(corner.price), "{corner:?}");
        }
        prop_assert!(known.heard.iter().all(|one| known.lowest.price <= one.price && one.price <= known.highest.price));
    }

    /// Letters are found exactly where a name has them, or a supplier's word begins with them.
    #[test]
    fn letters_find_what_has_them(name in "[abé ]{0,6}", supplier in "[abé ]{0,5}", letters in "[abé]{1,2}") {
        let found = find(&name, &supplier, &letters);
        let by_supplier = supplier.split(' ').any(|word| word.starts_with(&letters));
        prop_assert_eq!(found.is_some(), name.contains(&letters) || by_supplier);
        prop_assert_eq!(found.is_some_and(|found| found.is_by_name()), name.contains(&letters));
    }
}
