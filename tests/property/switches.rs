//! One size in place of another.

use brimwright::foundation::measure::{Exact, Money, Share};
use brimwright::sizes::switching::{BreakEven, Earnings, Losing};
use proptest::prelude::*;

use crate::cases::cases;
use crate::near;
use crate::support::exact;

/// A side with a price from 0.01, and what is left of it, which may be less than nothing.
fn earnings() -> impl Strategy<Value = Earnings> {
    (1..10_000_i64, -3_000..10_000_i64).prop_map(|(price, left)| Earnings {
        price: Money::from_major(Exact::new(price, 2)),
        contribution: Money::from_major(Exact::new(left, 3)),
    })
}

proptest! {
    /// A quotient is rounded at its 28th digit: what it leaves of a week is far under the
    /// thousand-millionth allowed.
    #[test]
    fn what_is_to_be_sold_earns_the_same(now in earnings(), then in earnings(), units in crate::number(2000, 1)) {
        match BreakEven::of(now, then).unwrap() {
            Ok(answer) => {
                let earned = now.contribution.times(units).unwrap();
                let again = then.contribution.times(answer.units(units).unwrap()).unwrap();
                prop_assert!(near(earned.major(), again.major(), "0.000000001"), "{:?} and {:?}", earned, again);
                let whole = answer.whole_units(units).unwrap();
                let exactly = answer.units(units).unwrap();
                prop_assert!(whole.plus(exact("0.000000000001")).unwrap() >= exactly);
                prop_assert!(whole.minus(Exact::ONE).unwrap() < exactly);
                prop_assert_eq!(whole, whole.rounded(0));
            }
            Err(losing) => {
                let positive = (now.contribution.is_positive(), then.contribution.is_positive());
                let expected = match losing {
                    Losing::Now => (false, true),
                    Losing::Then => (true, false),
                    Losing::Both => (false, false),
                };
                prop_assert_eq!(positive, expected);
            }
        }
    }

    /// Below zero where the price and the drinks to sell move apart, above it where they move
    /// together, none where the price stays.
    #[test]
    fn elasticity_has_the_sign_of_both_changes(now in earnings(), then in earnings()) {
        let Ok(answer) = BreakEven::of(now, then).unwrap() else { return Ok(()) };
        let more_units = answer.change().unwrap().fraction();
        let more_price = then.price.minus(now.price).unwrap().major();
        match answer.elasticity {
            None => prop_assert!(more_price.is_zero()),
            Some(elasticity) => {
                prop_assert!(!more_price.is_zero());
                let sign = more_units.times(more_price).unwrap();
                prop_assert_eq!(elasticity.is_positive(), sign.is_positive());
                prop_assert_eq!(elasticity.is_negative(), sign.is_negative());
            }
        }
    }

    /// Turned round, the switch needs the reverse, at the same elasticity.
    #[test]
    fn a_switch_back_undoes_it(now in earnings(), then in earnings()) {
        let (Ok(there), Ok(back)) = (BreakEven::of(now, then).unwrap(), BreakEven::of(then, now).unwrap()) else {
            return Ok(());
        };
        prop_assert!(near(there.ratio.times(back.ratio).unwrap(), Exact::ONE, "0.000000001"));
        // Logarithms are held to twelve decimals; prices a cent apart have one of a ten-thousandth.
        if let (Some(one), Some(other)) = (there.elasticity, back.elasticity) {
            prop_assert!(near(one, other, "0.0001"), "{one} and {other}");
        }
    }
}

proptest! {
    #![proptest_config(cases(64))]

    /// The curve at the break-even share is today's, and the gain there is nothing.
    #[test]
    fn the_curve_crosses_today_at_the_break_even(
        now in crate::number(9, 2), then in crate::number(9, 2), weekly in 1..900_i64, cost in crate::number(2, 2),
    ) {
        use brimwright::book::{Edit, Offer, Record, Scope};
        use brimwright::sizes::switching::{Question, switch};
        use crate::support::{book_of_one_drink, container, container_id, drink_id, offer, settings};

        let price = |above: Exact| Money::from_major(above.plus(Exact::new(1, 2)).unwrap());
        let mut book = book_of_one_drink(settings(), &cost.to_string(), None);
        let sold = Offer { weekly: Some(Exact::new(weekly, 0)), price: Some(price(now)), ..offer(1, 1, None) };
        for record in [Record::Container(container(2, "200 mL")), Record::Offer(sold)] {
            book.apply(&Edit::Put(record)).unwrap();
        }
        let question = Question { scope: Scope::Drink(drink_id(1)), from: container_id(1), to: container_id(2) };
        let together = switch(&book, question, &[(drink_id(1), price(then))]).unwrap().together.unwrap();
        let curve = together.curve().unwrap();
        for (kept, left) in &curve {
            prop_assert_eq!(together.with_kept(*kept).unwrap(), *left);
        }
        let Ok(answer) = together.answer else { return Ok(()) };
        let at = Share::from_fraction(answer.ratio);
        let there = together.with_kept(at).unwrap();
        prop_assert!(near(there.major(), together.now.contribution.major(), "0.000000001"));
        prop_assert!(near(together.gain(at).unwrap().major(), Exact::ZERO, "0.000000001"));
        // Above it the new size brings more, below it less.
        for (kept, left) in curve {
            let above = kept.fraction().minus(answer.ratio).unwrap();
            if !near(above, Exact::ZERO, "0.000001") {
                prop_assert_eq!(left > together.now.contribution, above.is_positive());
            }
        }
    }
}
