//! An amount as a person typed it: a number and its unit. It is stored as it was typed.

use std::fmt;

use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

use super::exact::STORED_PLACES;
use super::{Exact, Mass, Measure, Overflow, System, TYPED_PLACES, Unit, Volume};

/// The most decimals that people weigh to.
const FEW_PLACES: u32 = 3;

/// A number and its unit, such as 40 lb.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Amount {
    /// The number.
    pub number: Exact,
    /// The unit.
    pub unit: Unit,
}

impl Amount {
    /// `number` of `unit`.
    pub const fn new(number: Exact, unit: Unit) -> Amount {
        Amount { number, unit }
    }

    /// A mass that is stored in grams to six decimals, in the unit in which it was most likely typed: the
    /// first that needs at most three decimals for it, the system's own units first.
    pub fn of_kept_mass(mass: Mass, system: System) -> Amount {
        let (small, large) = (system.weight_unit(), system.buying_weight_unit());
        let (first, second) = if mass.grams() < large.size() { (small, large) } else { (large, small) };
        let units = [first, second, Unit::Gram, Unit::Ounce, Unit::Kilogram, Unit::Pound];
        let typed = |unit: Unit| {
            let number = mass.grams().over(unit.size()).ok()?.rounded(TYPED_PLACES as u32);
            let amount = Amount::new(number, unit);
            (amount.kept_mass() == Some(mass)).then_some(amount)
        };
        let plain = |amount: &Amount| amount.number.places() <= FEW_PLACES;
        let mut typed = units.into_iter().filter_map(typed);
        typed.find(plain).unwrap_or(Amount::new(mass.grams(), Unit::Gram))
    }

    /// The mass as it is stored, to six decimals of a gram. Returns `None` if the amount is not a mass, or
    /// leaves the range of [`Exact`].
    pub fn kept_mass(self) -> Option<Mass> {
        match self.measure() {
            Ok(Measure::Mass(mass)) => Some(Mass::from_grams(mass.grams().rounded(TYPED_PLACES as u32))),
            _ => None,
        }
    }

    /// The amount in its base unit.
    ///
    /// # Errors
    /// [`Overflow`] if it leaves the range of [`Exact`].
    pub fn measure(self) -> Result<Measure, Overflow> {
        self.unit.measure(self.number)
    }

    /// The volume, or `None` if the amount is of another dimension.
    ///
    /// # Errors
    /// [`Overflow`] if it leaves the range of [`Exact`].
    pub fn volume(self) -> Result<Option<Volume>, Overflow> {
        Ok(match self.measure()? {
            Measure::Volume(volume) => Some(volume),
            Measure::Mass(_) | Measure::Count(_) => None,
        })
    }
}

/// `40 lb`: the plain number, a blank, and the unit's symbol.
impl fmt::Display for Amount {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}", self.number, self.unit)
    }
}

impl Serialize for Amount {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Amount {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Amount, D::Error> {
        let text = std::borrow::Cow::<'de, str>::deserialize(deserializer)?;
        let read = text.split_once(' ').and_then(|(number, unit)| {
            let number = Exact::from_plain(number, STORED_PLACES)?;
            Some(Amount { number, unit: Unit::from_symbol(unit)? })
        });
        read.ok_or_else(|| {
            de::Error::custom(format_args!("{text:?} is not an amount such as \"40 lb\" or \"16 fl oz\""))
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::amount;

    #[test]
    fn what_was_weighed_in_ounces_is_shown_in_ounces() {
        let shown = |typed: &str, system| Amount::of_kept_mass(amount(typed).kept_mass().unwrap(), system).to_string();
        let here = System::UsCustomary;
        assert_eq!(amount("6 oz").kept_mass().unwrap().grams().to_string(), "170.097139", "in grams to six decimals");
        assert_eq!(shown("6 oz", here), "6 oz");
        assert_eq!(shown("0.25 oz", here), "0.25 oz");
        assert_eq!(shown("1.5 lb", here), "1.5 lb");
        assert_eq!(shown("110 g", here), "110 g", "not 3.880136 oz");
        assert_eq!(shown("6 oz", System::Metric), "6 oz", "not 170.097139 g");
        assert_eq!(shown("150 g", System::Metric), "150 g");
        assert_eq!(shown("1.25 kg", System::Metric), "1.25 kg");
        assert_eq!(shown("123.456789 g", here), "123.456789 g");
        assert_eq!(amount("3 ea").kept_mass(), None);
    }
}
