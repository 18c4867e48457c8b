//! At which temperature contents are counted, and what a volume is where the drink was measured.

use crate::book::{FillRule, Filling};
use crate::drink::label::Law;
use crate::foundation::measure::{Density, Exact, Overflow, Scale, Temperature, Volume, water_density};

/// The temperature at which the law counts the contents: in the United States 40 °F where the drink
/// is sold refrigerated and 68 °F where not (21 CFR 101.7(b)(2), text), in Europe and the United
/// Kingdom 20 °C (Directive 76/211/EEC, text), which is 68 °F. Where only the average counts, the law
/// of the book's labels says which.
pub const fn counted_at(rule: FillRule, law: Law, refrigerated: bool) -> Temperature {
    let law = match rule {
        FillRule::UnitedStates => Law::UnitedStates,
        FillRule::EuropeanOrBritish => Law::European,
        FillRule::Average => law,
    };
    match (law, refrigerated) {
        (Law::UnitedStates, true) => Temperature::new(Exact::new(40, 0), Scale::Fahrenheit),
        (Law::UnitedStates, false) => Temperature::new(Exact::new(68, 0), Scale::Fahrenheit),
        (Law::European, _) => Temperature::new(Exact::new(20, 0), Scale::Celsius),
    }
}

/// Water where the law counts, and where the drink was measured. A drink is taken to swell as water
/// does; juice swells a little more (no published figure was found).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Waters {
    /// Its density where the law counts.
    pub by_law: Density,
    /// Its density where the drink was measured.
    pub measured: Density,
}

impl Waters {
    /// The water of a filling. Returns `None` if nobody said at which temperature the drink was
    /// measured.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn of(filling: &Filling, law: Law, refrigerated: bool) -> Result<Option<Waters>, Overflow> {
        let Some(measured) = filling.measured_at else { return Ok(None) };
        let by_law = water_density(counted_at(filling.rule, law, refrigerated).celsius()?)?;
        let measured = water_density(measured.celsius()?)?;
        Ok(by_law.zip(measured).map(|(by_law, measured)| Waters { by_law, measured }))
    }

    /// What a volume at the law's temperature takes up at the temperature at which the drink was
    /// measured, rounded up.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn as_measured(&self, volume: Volume) -> Result<Volume, Overflow> {
        let [by_law, measured] = [self.by_law, self.measured].map(Density::grams_per_millilitre);
        volume.times(by_law)?.over(measured)?.rounded_up()
    }
}
