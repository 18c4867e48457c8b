//! How far contents and measures may lie from a declared size: legal metrology's tables.
//!
//! The tables are a help beside the work. Which of them binds, and whether one does, is for the
//! local inspector of weights and measures to say.

use crate::foundation::measure::{Exact, Overflow, Volume};

/// A published rule for one kind of package or measure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Rule {
    /// The tolerable negative error of a package filled out of the customer's sight, 5 mL to 10 L:
    /// Directive 76/211/EEC, Annex I, 2.4. A percentage is rounded up to 0.1 mL.
    Package,
    /// A measuring container bottle, its nominal or its brimful capacity, 50 mL to 5 L: Directive
    /// 75/107/EEC, Annex I; OIML R 138:2007, 5.1.2.
    Bottle,
    /// A measure to pour from, up to its line: OIML R 138:2007, 5.1.1.
    TransferMeasureToLine,
    /// A measure to pour from, up to its brim: the same.
    TransferMeasureToBrim,
    /// A glass or cup to drink from, up to its line: the same.
    DrinkingMeasureToLine,
    /// A glass or cup to drink from, up to its brim: the same.
    DrinkingMeasureToBrim,
}

impl Rule {
    /// Every rule.
    pub const ALL: &[Rule] = &[
        Rule::Package,
        Rule::Bottle,
        Rule::TransferMeasureToLine,
        Rule::TransferMeasureToBrim,
        Rule::DrinkingMeasureToLine,
        Rule::DrinkingMeasureToBrim,
    ];
}

/// How far a volume may lie from the declared one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Tolerance {
    /// How far it may lie below the declared size; zero if it must hold at least that.
    pub below: Volume,
    /// How far it may lie above the declared size; zero if the rule limits only what is missing.
    pub above: Volume,
}

/// From this size on: a fixed part in tenths of a millilitre, and thousandths of the size.
struct Row {
    from: u32,
    tenths: u32,
    thousandths: u32,
}

const fn row(from: u32, tenths: u32, thousandths: u32) -> Row {
    Row { from, tenths, thousandths }
}

const PACKAGE: &[Row] = &[
    row(5, 0, 90),
    row(50, 45, 0),
    row(100, 0, 45),
    row(200, 90, 0),
    row(300, 0, 30),
    row(500, 150, 0),
    row(1000, 0, 15),
];
const BOTTLE: &[Row] =
    &[row(50, 30, 0), row(100, 0, 30), row(200, 60, 0), row(300, 0, 20), row(500, 100, 0), row(1000, 0, 10)];
const TRANSFER_LINE: &[Row] = &[row(0, 20, 0), row(100, 0, 30)];
const TRANSFER_BRIM: &[Row] = &[row(0, 40, 0), row(100, 0, 60)];
const DRINKING_LINE: &[Row] = &[row(0, 0, 50), row(200, 50, 25)];
const DRINKING_BRIM: &[Row] = &[row(0, 0, 100), row(200, 100, 50)];

impl Rule {
    /// Its table, and the largest size of which it speaks.
    const fn table(self) -> (&'static [Row], Option<u32>) {
        match self {
            Rule::Package => (PACKAGE, Some(10_000)),
            Rule::Bottle => (BOTTLE, Some(5000)),
            Rule::TransferMeasureToLine => (TRANSFER_LINE, None),
            Rule::TransferMeasureToBrim => (TRANSFER_BRIM, None),
            Rule::DrinkingMeasureToLine => (DRINKING_LINE, None),
            Rule::DrinkingMeasureToBrim => (DRINKING_BRIM, None),
        }
    }
}

/// The tolerance of `rule` for a declared size. Returns `None` for a size of which the rule says
/// nothing.
///
/// # Errors
/// [`Overflow`].
pub fn tolerance(rule: Rule, nominal: Volume) -> Result<Option<Tolerance>, Overflow> {
    let size = nominal.millilitres();
    let (rows, largest) = rule.table();
    let row = rows.iter().rev().find(|row| Exact::from(row.from) <= size);
    let Some(row) = row.filter(|_| size.is_positive() && largest.is_none_or(|largest| size <= Exact::from(largest)))
    else {
        return Ok(None);
    };
    let fixed = Exact::from(row.tenths).over(Exact::from(10))?;
    let error = fixed.plus(size.times(Exact::from(row.thousandths))?.over(Exact::from(1000))?)?;
    let both = Volume::from_millilitres(error);
    Ok(Some(match rule {
        Rule::Package => Tolerance { below: Volume::from_millilitres(up_to_a_tenth(error)?), above: Volume::ZERO },
        Rule::Bottle | Rule::TransferMeasureToLine | Rule::DrinkingMeasureToLine => {
            Tolerance { below: both, above: both }
        }
        Rule::TransferMeasureToBrim | Rule::DrinkingMeasureToBrim => Tolerance { below: Volume::ZERO, above: both },
    }))
}

/// The next tenth at or above.
fn up_to_a_tenth(number: Exact) -> Result<Exact, Overflow> {
    number.times(Exact::from(10))?.ceiling().over(Exact::from(10))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::millilitres;

    fn of(rule: Rule, nominal: &str) -> Option<Tolerance> {
        tolerance(rule, millilitres(nominal)).unwrap()
    }

    #[test]
    fn a_rule_says_nothing_outside_its_sizes() {
        for (rule, outside, inside) in [
            (Rule::Package, ["4.999999", "10000.000001"], ["5", "10000"]),
            (Rule::Bottle, ["49.999999", "5000.000001"], ["50", "5000"]),
            (Rule::TransferMeasureToLine, ["0", "-25"], ["0.000001", "100000"]),
            (Rule::TransferMeasureToBrim, ["0", "-25"], ["0.000001", "100000"]),
            (Rule::DrinkingMeasureToLine, ["0", "-25"], ["0.000001", "100000"]),
            (Rule::DrinkingMeasureToBrim, ["0", "-25"], ["0.000001", "100000"]),
        ] {
            assert!(outside.iter().all(|nominal| of(rule, nominal).is_none()), "{rule:?}");
            assert!(inside.iter().all(|nominal| of(rule, nominal).is_some()), "{rule:?}");
        }
    }

    #[test]
    fn what_cannot_be_computed_is_said() {
        let vast = millilitres("999999999").times(Exact::new(i64::MAX, 0)).unwrap();
        assert_eq!(tolerance(Rule::DrinkingMeasureToLine, vast), Err(Overflow::TooLarge));
    }
}
