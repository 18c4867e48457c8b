//! Amounts in whole steps of a scale or jug.

use brimwright::foundation::measure::{Amount, Exact, Unit, nearest_step, next_step};
use proptest::prelude::*;
use proptest::sample::select;

use crate::number;

/// A step of up to 100 in a unit of mass, and an amount of up to 10,000 in another.
fn weighed() -> impl Strategy<Value = (Amount, Amount)> {
    let unit = || select(vec![Unit::Gram, Unit::Kilogram, Unit::Ounce, Unit::Pound]);
    (number(100, 3), unit(), number(10_000, 4), unit())
        .prop_filter("a step is above zero", |(step, ..)| step.is_positive())
        .prop_map(|(step, of, number, unit)| (Amount::new(step, of), Amount::new(number, unit)))
}

/// How many of `step` an amount in its unit is.
fn steps(amount: Amount, step: Amount) -> Exact {
    assert_eq!(amount.unit, step.unit);
    amount.number.over(step.number).unwrap()
}

/// What counting steps to nine decimals may add or leave out.
fn close(off: Exact, allowed: Exact) -> bool {
    off <= allowed.plus(Exact::new(1, 9)).unwrap()
}

proptest! {
    #[test]
    fn the_nearest_step_is_at_most_half_a_step_off((step, amount) in weighed()) {
        let measure = amount.measure().unwrap();
        let exact = measure.base().over(step.measure().unwrap().base()).unwrap();
        match nearest_step(measure, step).unwrap() {
            Some(taken) => {
                let whole = steps(taken, step);
                prop_assert_eq!(whole.rounded(0), whole);
                prop_assert!(whole >= Exact::ONE, "never nothing");
                prop_assert!(close(whole.minus(exact).unwrap().abs(), Exact::new(5, 1)));
            }
            None => prop_assert!(exact < Exact::new(5, 1), "less than half a step"),
        }
    }

    #[test]
    fn half_a_step_goes_upwards(step in number(100, 3), whole in 0..100_000_u32, unit in select(Unit::ALL)) {
        prop_assume!(step.is_positive());
        let half = Exact::from(whole).plus(Exact::new(5, 1)).unwrap();
        let measure = unit.measure(step.times(half).unwrap()).unwrap();
        let upper = step.times(Exact::from(whole + 1)).unwrap();
        prop_assert_eq!(nearest_step(measure, Amount::new(step, unit)), Ok(Some(Amount::new(upper, unit))));
    }

    #[test]
    fn whole_steps_stay((step, amount) in weighed(), whole in 1..100_000_u32) {
        let number = step.number.times(Exact::from(whole)).unwrap();
        let taken = Amount::new(number, step.unit);
        prop_assert_eq!(nearest_step(taken.measure().unwrap(), step), Ok(Some(taken)));
        prop_assert_eq!(next_step(taken.measure().unwrap(), step), Ok(Some(taken)));
        let jug = Amount::new(amount.number, Unit::Litre);
        prop_assert_eq!(nearest_step(jug.measure().unwrap(), step), Ok(None), "a scale shows no litres");
    }

    #[test]
    fn the_next_step_is_never_short_and_never_a_step_too_much((step, amount) in weighed()) {
        let measure = amount.measure().unwrap();
        let exact = measure.base().over(step.measure().unwrap().base()).unwrap();
        let whole = next_step(measure, step).unwrap().map_or(Exact::ZERO, |taken| steps(taken, step));
        prop_assert_eq!(whole.rounded(0), whole);
        prop_assert!(close(exact, whole), "not short");
        prop_assert!(close(whole, exact.plus(Exact::ONE).unwrap()), "less than a step more");
    }
}
