//! How much is in a package, in both systems.
//!
//! What was read: "the net quantity of contents ... using the most appropriate units of both the
//! customary inch/pound system of measure ... and ... the SI metric system" (15 U.S.C.
//! 1453(a)(2)); "The SI metric quantity declaration should be shown in three digits except where
//! the quantity is below 100 ... milliliters ..., where it can be shown in two figures" (16 CFR
//! 500.19(b), for goods other than food); "In no case shall rounded net contents declarations
//! overstate a quantity; the packer may round converted values down" (NIST, Fact Sheet on Metric
//! Labeling for Consumer Packages, second-hand); "a decimal fraction shall not be carried out to
//! more than 2 places" (American Samoa Administrative Code 27.0632).
//!
//! From memory, 21 CFR 101.7(j) and (m): under a gallon in fluid ounces and, from one pint, then
//! in parentheses in the largest whole units, quarts, quarts and pints or pints, with the rest in
//! fluid ounces: "Net 32 fl. oz. (1 qt.)", "Net 56 fluid oz. (1 qt. 1 pt. 8 oz.)"; from a gallon
//! in the largest whole units alone: "Net contents 2 gal. 2 qt."

use crate::foundation::measure::{Amount, Exact, Overflow, Unit, Volume};

/// Net contents: figures are rounded down, so that none states more than there is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NetContents {
    /// The volume, not rounded.
    pub volume: Volume,
    /// What it was taken from.
    pub source: NetSource,
    /// In US fluid ounces, of at most two decimals.
    pub fluid_ounces: Exact,
    /// The same in gallons, quarts and pints, with the rest in fluid ounces, leaving out those of
    /// which there are none. It is empty below one pint.
    pub largest_units: Vec<Amount>,
    /// In whole millilitres, or from one litre in litres of at most two decimals.
    pub metric: Amount,
}

/// What net contents were taken from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum NetSource {
    /// The container's declared size.
    Declared,
    /// The fill: no size is declared.
    Fill,
}

impl NetContents {
    /// A volume as net contents.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn of(volume: Volume, source: NetSource) -> Result<NetContents, Overflow> {
        // A division may fall short at its 28th digit, which does not count: a pint is 16 ounces,
        // not 15.99.
        let fluid_ounces = hundredths_down(in_units(volume, Unit::UsFluidOunce)?.as_part())?;
        let metric = match in_units(volume, Unit::Litre)?.as_part() {
            litres if litres >= Exact::ONE => Amount::new(hundredths_down(litres)?, Unit::Litre),
            _ => Amount::new(volume.millilitres().as_part().floor(), Unit::Millilitre),
        };
        Ok(NetContents { volume, source, fluid_ounces, largest_units: largest_units(fluid_ounces)?, metric })
    }

    /// Whether it is a gallon or more, and stated without counting ounces.
    pub fn is_a_gallon(&self) -> bool {
        self.largest_units.first().is_some_and(|amount| amount.unit == Unit::UsGallon)
    }
}

fn in_units(volume: Volume, unit: Unit) -> Result<Exact, Overflow> {
    volume.millilitres().over(unit.size())
}

fn hundredths_down(number: Exact) -> Result<Exact, Overflow> {
    let hundred = Exact::from(100);
    number.times(hundred)?.floor().over(hundred)
}

/// So many fluid ounces in the largest whole units.
fn largest_units(fluid_ounces: Exact) -> Result<Vec<Amount>, Overflow> {
    let mut parts = Vec::new();
    let mut rest = fluid_ounces;
    for (unit, ounces) in [(Unit::UsGallon, 128), (Unit::UsQuart, 32), (Unit::UsPint, 16)] {
        let whole = rest.over(Exact::from(ounces))?.floor();
        if whole.is_positive() {
            parts.push(Amount::new(whole, unit));
            rest = rest.minus(whole.times(Exact::from(ounces))?)?;
        }
    }
    if !parts.is_empty() && rest.is_positive() {
        parts.push(Amount::new(rest, Unit::UsFluidOunce));
    }
    Ok(parts)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::amount;

    /// Fluid ounces, largest units and metric figure of an amount.
    fn stated(typed: &str) -> (String, String, String) {
        let volume = amount(typed).volume().unwrap().unwrap();
        let net = NetContents::of(volume, NetSource::Declared).unwrap();
        let parts: Vec<String> = net.largest_units.iter().map(Amount::to_string).collect();
        (net.fluid_ounces.to_string(), parts.join(" "), net.metric.to_string())
    }

    fn is(ounces: &str, parts: &str, metric: &str) -> (String, String, String) {
        (ounces.into(), parts.into(), metric.into())
    }

    #[test]
    fn a_pint_and_more_is_in_the_largest_units_too() {
        assert_eq!(stated("12 fl oz"), is("12", "", "354 mL"));
        assert_eq!(stated("15.99 fl oz"), is("15.99", "", "472 mL"));
        assert_eq!(stated("16 fl oz"), is("16", "1 pt", "473 mL"));
        assert_eq!(stated("20.5 fl oz"), is("20.5", "1 pt 4.5 fl oz", "606 mL"));
        assert_eq!(stated("1.5 gal"), is("192", "1 gal 2 qt", "5.67 L"));
    }

    #[test]
    fn no_figure_is_rounded_up() {
        // 500 mL are 16.9070... fl oz, 330 mL 11.1587...; 2 fl oz are 59.147 mL, 34 fl oz
        // 1005.5 mL.
        assert_eq!(stated("500 mL"), is("16.9", "1 pt 0.9 fl oz", "500 mL"));
        assert_eq!(stated("330 mL"), is("11.15", "", "330 mL"));
        assert_eq!(stated("2 fl oz"), is("2", "", "59 mL"));
        assert_eq!(stated("34 fl oz"), is("34", "1 qt 2 fl oz", "1 L"));
    }

    #[test]
    fn figures_are_at_most_what_there_is_and_hardly_less() {
        for step in 1..12_000_u32 {
            let volume = Volume::from_millilitres(Exact::from(step).times(Exact::new(37, 2)).unwrap());
            let net = NetContents::of(volume, NetSource::Fill).unwrap();
            let lost = |stated: Amount| volume.minus(stated.volume().unwrap().unwrap()).unwrap().millilitres();
            let ounces = lost(Amount::new(net.fluid_ounces, Unit::UsFluidOunce));
            let metric = lost(net.metric);
            assert!(!ounces.is_negative() && ounces < Exact::new(3, 1), "{net:?}");
            let grain = if net.metric.unit == Unit::Litre { 10 } else { 1 };
            assert!(!metric.is_negative() && metric < Exact::from(grain), "{net:?}");
            if !net.largest_units.is_empty() {
                let parts = net.largest_units.iter().map(|part| part.volume().unwrap().unwrap());
                let whole = parts.into_iter().try_fold(Volume::ZERO, Volume::plus).unwrap();
                let counted = Amount::new(net.fluid_ounces, Unit::UsFluidOunce).volume();
                assert_eq!(Ok(Some(whole)), counted, "{net:?}");
            }
        }
    }

    #[test]
    fn a_pint_by_division_is_a_pint() {
        // A quotient is rounded at its 28th digit, here downwards.
        let pint = amount("1 pt").volume().unwrap().unwrap();
        let back = pint.minus(Volume::from_millilitres(Exact::new(1, 25))).unwrap();
        assert!(back < pint);
        let net = NetContents::of(back, NetSource::Fill).unwrap();
        assert_eq!((net.fluid_ounces, net.largest_units), (Exact::from(16), vec![amount("1 pt")]));
    }

    #[test]
    fn only_a_gallon_is_one() {
        let gallon = |typed| NetContents::of(amount(typed).volume().unwrap().unwrap(), NetSource::Fill).unwrap();
        assert!(gallon("1 gal").is_a_gallon());
        assert!(!gallon("127.99 fl oz").is_a_gallon());
        assert!(!gallon("1 fl oz").is_a_gallon());
    }
}
