//! The steps in which an ingredient is weighed or measured out: those of the book's scale and
//! measuring cup, and finer ones for what those would round too far.

use crate::book::Settings;
use crate::foundation::measure::{Amount, Dimension, Exact, Measure, Overflow, System, Unit, nearest_step, next_step};

/// A tenth of an amount: what the nearest step may move it by before a finer one is taken. Our own
/// choice, no source.
const MOVED_AT_MOST: Exact = Exact::new(1, 1);
/// A quarter of an amount: what may be added where there must never be too little. Our own choice, no
/// source.
const ADDED_AT_MOST: Exact = Exact::new(25, 2);

/// An amount in whole steps, and the step.
type InSteps = Option<(Amount, Amount)>;

/// The steps of a dimension, the one that people reach for first: a quarter of the spoon that the
/// recipe is `written` in, else the step of the book's scale or cup, else `usual`. Finer ones
/// follow: a scale shows grams too, and a teaspoon is the smallest cup.
pub fn steps_of(settings: &Settings, dimension: Dimension, written: Option<Unit>, usual: Amount) -> Vec<Amount> {
    let us = settings.units == System::UsCustomary;
    let thousandths = |unit: Unit, numbers: &[i64]| -> Vec<Amount> {
        numbers.iter().map(|number| Amount::new(Exact::new(*number, 3), unit)).collect()
    };
    let spoon = written.filter(|unit| unit.is_a_spoon());
    let (first, finer) = match dimension {
        Dimension::Count => return Vec::new(),
        Dimension::Mass => {
            let ounces = if settings.units == System::Metric { Vec::new() } else { thousandths(Unit::Ounce, &[100]) };
            (settings.scale_step, [ounces, thousandths(Unit::Gram, &[1000, 100, 10, 1])].concat())
        }
        Dimension::Volume => {
            let cups = if us {
                [thousandths(Unit::UsFluidOunce, &[250]), thousandths(Unit::UsTeaspoon, &[250, 125])].concat()
            } else {
                thousandths(Unit::Millilitre, &[5000, 1000])
            };
            let first = match spoon {
                Some(spoon) => Some(Amount::new(Exact::new(25, 2), spoon)),
                None => settings.jug_step,
            };
            (first, [cups, thousandths(Unit::Millilitre, &[100, 10])].concat())
        }
    };
    [vec![first.unwrap_or(usual)], finer].concat()
}

/// The whole number of steps nearest to an amount, in the first step that moves it by no more than
/// a tenth, else in the finest; with its step. Returns `None` if even that is too much.
///
/// # Errors
/// [`Overflow`].
pub fn measured(whole: Measure, steps: &[Amount]) -> Result<InSteps, Overflow> {
    first(whole, steps, MOVED_AT_MOST, nearest_step)
}

/// The smallest whole number of steps that is at least an amount, in the first step that adds no more
/// than a quarter, else in the finest; with its step.
///
/// # Errors
/// [`Overflow`].
pub fn measured_up(whole: Measure, steps: &[Amount]) -> Result<InSteps, Overflow> {
    first(whole, steps, ADDED_AT_MOST, next_step)
}

fn first(
    whole: Measure,
    steps: &[Amount],
    most: Exact,
    round: fn(Measure, Amount) -> Result<Option<Amount>, Overflow>,
) -> Result<InSteps, Overflow> {
    let mut found = None;
    if !whole.base().is_positive() {
        return Ok(found);
    }
    for step in steps {
        let Some(amount) = round(whole, *step)? else { continue };
        found = Some((*step, amount));
        if moved_by(whole, amount)? <= most {
            break;
        }
    }
    Ok(found)
}

/// The share of `whole` by which it is more or less than `amount`.
///
/// # Errors
/// [`Overflow`], and if `whole` is zero.
pub fn moved_by(whole: Measure, amount: Amount) -> Result<Exact, Overflow> {
    Ok(amount.measure()?.base().over(whole.base())?.minus(Exact::ONE)?.abs())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::{amount, measure, settings};

    fn steps(units: System, of: Dimension, written: Option<Unit>) -> Vec<Amount> {
        let (scale_step, jug_step) = match units {
            System::UsCustomary => (Some(amount("0.1 oz")), Some(amount("0.25 fl oz"))),
            System::Metric | System::Imperial => (Some(amount("5 g")), None),
        };
        steps_of(&Settings { units, scale_step, jug_step, ..settings() }, of, written, amount("0.01 mL"))
    }

    #[test]
    fn small_amounts_are_not_rounded_to_a_multiple() {
        // By hand: 0.025 oz are 0.7087 g, 0.003 oz 0.085 g, 0.3 fl oz are 1.8 tsp, 0.04 0.24 tsp,
        // 0.05 0.3 tsp or 1.4787 mL: no eighth of a teaspoon is within a tenth of that, three are a quarter more.
        for (taken, nearest_is, next_is) in [
            ("2.04 oz", "2 oz", "2.1 oz"),
            ("0.025 oz", "0.7 g", "0.8 g"),
            ("0.003 oz", "0.09 g", "0.1 g"),
            ("1.04 fl oz", "1 fl oz", "1.25 fl oz"),
            ("0.3 fl oz", "1.75 tsp", "2 tsp"),
            ("0.04 fl oz", "0.25 tsp", "0.25 tsp"),
            ("0.05 fl oz", "1.5 mL", "0.375 tsp"),
        ] {
            let whole = measure(taken);
            let steps = steps(System::UsCustomary, whole.dimension(), None);
            assert_eq!(measured(whole, &steps).unwrap().unwrap().1, amount(nearest_is), "{taken}");
            assert_eq!(measured_up(whole, &steps).unwrap().unwrap().1, amount(next_is), "{taken}");
        }
    }

    #[test]
    fn spoons_are_filled_by_quarters() {
        for (taken, shown) in [("1.04 tsp", "1 tsp"), ("0.4 tsp", "0.375 tsp"), ("1.6 tsp", "1.5 tsp")] {
            let steps = steps(System::UsCustomary, Dimension::Volume, Some(Unit::UsTeaspoon));
            assert_eq!(measured(measure(taken), &steps).unwrap().unwrap().1, amount(shown), "{taken}");
        }
        let metric = steps(System::Metric, Dimension::Volume, None);
        assert_eq!(measured(measure("93.754 mL"), &metric).unwrap().unwrap().1, amount("93.75 mL"));
        let scale = steps(System::Metric, Dimension::Mass, None);
        assert_eq!(measured(measure("12 g"), &scale).unwrap().unwrap().1, amount("12 g"));
        assert_eq!(measured(measure("0 g"), &scale).unwrap(), None);
    }
}
