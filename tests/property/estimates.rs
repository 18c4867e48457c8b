//! Estimates from few numbers: what holds for all of them.

use brimwright::book::Record;
use brimwright::foundation::measure::{Amount, Exact, Unit};
use brimwright::foundation::statistics::{MOST_MORE, Spread, line, more_until_clear, student_t, welch};
use brimwright::sizes::market::market;
use proptest::prelude::*;

use crate::support::{book, day, exact, money, seen_price, settings};
use crate::{near, number};

fn spread() -> impl Strategy<Value = Spread> {
    let signed = (number(1000, 2), any::<bool>()).prop_map(|(it, minus)| if minus { it.negated() } else { it });
    prop::collection::vec(signed, 2..12).prop_map(|numbers| Spread::of(&numbers).unwrap().unwrap())
}

proptest! {
    #[test]
    fn an_interval_turns_round_with_its_groups(before in spread(), after in spread()) {
        let (one, other) = (welch(&before, &after).unwrap(), welch(&after, &before).unwrap());
        prop_assert_eq!(one.difference(), other.difference().negated());
        let ((low, high), (other_low, other_high)) = (one.ends(), other.ends());
        prop_assert!(near(low, other_high.negated(), "0.00000001") && near(high, other_low.negated(), "0.00000001"));
        prop_assert!(low <= one.difference() && one.difference() <= high);
    }

    #[test]
    fn an_interval_moves_with_its_numbers(before in spread(), after in spread(), by in number(1000, 2)) {
        let moved = Spread { mean: after.mean.plus(by).unwrap(), ..after };
        let ((low, high), (moved_low, moved_high)) =
            (welch(&before, &after).unwrap().ends(), welch(&before, &moved).unwrap().ends());
        prop_assert!(near(moved_low, low.plus(by).unwrap(), "0.00000001"));
        prop_assert!(near(moved_high, high.plus(by).unwrap(), "0.00000001"));
    }

    #[test]
    fn the_numbers_still_needed_are_the_fewest(before in spread(), after in spread()) {
        let clear = |more: u32| {
            let longer = Spread { count: after.count + more, ..after };
            !welch(&before, &longer).unwrap().spans_zero()
        };
        let first = (1..=MOST_MORE).find(|more| clear(*more));
        prop_assert_eq!(more_until_clear(&before, &after).unwrap(), first);
    }

    #[test]
    fn quantiles_fall_with_more_degrees(degrees in 1.0_f64..5_000.0, more in 0.01_f64..500.0) {
        let (fewer, more) = (student_t(degrees).unwrap(), student_t(degrees + more).unwrap());
        prop_assert!(fewer > more && more > 1.9599 && fewer < 12.7063, "{} {}", fewer, more);
    }

    /// No line near it is closer to the points.
    #[test]
    fn a_line_has_the_least_squares(
        points in prop::collection::vec((-100.0_f64..100.0, -100.0_f64..100.0), 3..12),
        (up, turn) in (-5.0_f64..5.0, -5.0_f64..5.0),
    ) {
        let found = line(&points).unwrap();
        let squares = |a: f64, b: f64| points.iter().map(|(x, y)| (y - a - b * x).powi(2)).sum::<f64>();
        let least = squares(found.intercept, found.slope);
        prop_assert!(least <= squares(found.intercept + up, found.slope + turn) + 1e-6);
        let explained = found.explained.unwrap();
        prop_assert!((0.0..=1.0).contains(&explained));
    }

    /// Whatever unit the sizes are typed in and whatever the money is called.
    #[test]
    fn a_curve_does_not_hang_on_units(
        seen in prop::collection::vec((number(1000, 0), number(50, 2)), 3..10),
        times in 2_u32..200,
    ) {
        let curve = |unit: Unit, by: Exact| {
            let one = |(id, (size, price)): (u64, &(Exact, Exact))| {
                let millilitres = size.plus(Exact::from(50)).unwrap();
                let number = if unit == Unit::Litre { millilitres.over(exact("1000")).unwrap() } else { millilitres };
                let price = price.plus(Exact::ONE).unwrap().times(by).unwrap();
                let mut seen = seen_price(id, "1 mL", "1");
                (seen.size, seen.price) = (Amount::new(number, unit), money(&price.to_string()));
                Record::SeenPrice(seen)
            };
            market(&book(settings(), (1..).zip(&seen).map(one)), None, day("2026-11-26")).unwrap().curve
        };
        let (one, other) = (curve(Unit::Millilitre, Exact::ONE), curve(Unit::Litre, Exact::from(times)));
        prop_assume!(one.is_ok());
        let (one, other) = (one.unwrap(), other.unwrap());
        prop_assert!(near(one.exponent, other.exponent, "0.00000001"));
        let price = |curve: &brimwright::sizes::market::Curve| curve.price_at(one.largest).unwrap().major();
        let ratio = price(&other).over(price(&one)).unwrap();
        prop_assert!(near(ratio, Exact::from(times), "0.0001"), "{}", ratio);
    }
}
