//! Figures that US books count per gallon or per cup, and others per liter or milliliter.
//!
//! They are stored in seconds per liter and grams per milliliter. What is typed in the US unit is stored
//! to eight decimals, and shown as the shortest number that is stored so: as it was typed. What was
//! typed in the other unit is rounded for the eye, to 0.1 s or 0.01 oz: whatever is stored with at most three
//! decimals and is no number of hundredths in the US unit.

use super::read::digits;
use super::{Density, Dimension, Exact, NumberStyle, Overflow, ReadError, System, TYPED_PLACES, Time, Unit, Wanted};
use super::{read_amount, read_number};

/// The most decimals that people type in the unit that is stored.
const KEPT_PLACES: u32 = 3;
/// The most decimals that what looks so is shown with, if it is exact with them.
const FEW_PLACES: u32 = 2;

impl System {
    /// The volume of drink that labor is counted for: a US gallon, or a liter.
    pub const fn labor_volume(self) -> Unit {
        match self {
            System::UsCustomary => Unit::UsGallon,
            System::Metric | System::Imperial => Unit::Litre,
        }
    }

    /// Whether a density is said as the weight of one cup, in ounces.
    pub const fn weighs_cups(self) -> bool {
        matches!(self, System::UsCustomary)
    }
}

impl Time {
    /// A time per liter, as people of `system` count it: per gallon, or per liter.
    ///
    /// # Errors
    /// [`Overflow`] if a number leaves the range of [`Exact`].
    pub fn of_labor_volume(self, system: System) -> Result<Time, Overflow> {
        Ok(Time::from_seconds(as_typed(self.seconds(), litres(system)?, 1)?))
    }

    /// The time per liter of what is counted per gallon or per liter, as it is stored.
    ///
    /// # Errors
    /// [`Overflow`] if a number leaves the range of [`Exact`].
    pub fn per_litre(self, system: System) -> Result<Time, Overflow> {
        Ok(Time::from_seconds(self.seconds().over(litres(system)?)?.kept()))
    }
}

impl Density {
    /// The weight of one US cup in ounces.
    ///
    /// # Errors
    /// [`Overflow`] if a number leaves the range of [`Exact`].
    pub fn ounces_per_cup(self) -> Result<Exact, Overflow> {
        as_typed(self.grams_per_millilitre(), ounces_per_cup()?, 2)
    }

    /// The density of what weighs so many ounces a US cup, as it is stored.
    ///
    /// # Errors
    /// [`Overflow`] if a number leaves the range of [`Exact`].
    pub fn of_ounces_per_cup(ounces: Exact) -> Result<Density, Overflow> {
        Ok(Density::from_grams_per_millilitre(ounces.over(ounces_per_cup()?)?.kept()))
    }
}

/// Reads a density: in a US book the weight of one cup ("8.7 oz", "246 g"), a bare number being ounces; "1.04
/// g/mL" everywhere.
///
/// # Errors
/// A [`ReadError`] if the text is anything else.
pub fn read_density(text: &str, system: System, style: &NumberStyle) -> Result<Density, ReadError> {
    let tidy = digits::tidy(text);
    if let Some(number) = before_grams_per_millilitre(&tidy) {
        let number = digits::number(number, style).map_err(|problem| problem.said_of(text, &tidy, number));
        return number.map(Density::from_grams_per_millilitre);
    }
    if !system.weighs_cups() {
        return read_number(text, style).map(Density::from_grams_per_millilitre);
    }
    let wanted = Wanted { dimensions: &[Dimension::Mass], unit: Unit::Ounce };
    let typed = read_amount(text, wanted, system, style)?;
    let ounces = if typed.unit == Unit::Ounce {
        Ok(typed.number)
    } else {
        typed.unit.size().times(typed.number).and_then(|grams| grams.over(Unit::Ounce.size()))
    };
    let density = ounces.and_then(Density::of_ounces_per_cup).map_err(|_| ReadError::TooLarge)?;
    if density.grams_per_millilitre().keeps() { Ok(density) } else { Err(ReadError::TooLarge) }
}

/// What stands before "g/mL", or `None` if the text does not end so.
fn before_grams_per_millilitre(text: &str) -> Option<&str> {
    let text = text.trim_end();
    let at = text.len().checked_sub("g/mL".len())?;
    let (before, unit) = text.split_at_checked(at)?;
    unit.eq_ignore_ascii_case("g/mL").then(|| before.trim_end())
}

/// A stored number in the unit of which `factor` is one of the stored: as it was typed, or else
/// rounded to `places` decimals.
fn as_typed(kept: Exact, factor: Exact, places: u32) -> Result<Exact, Overflow> {
    if factor.is_one() {
        return Ok(kept);
    }
    let number = kept.times(factor)?;
    let most = if kept.places() > KEPT_PLACES { TYPED_PLACES as u32 } else { FEW_PLACES };
    for places in 0..=most {
        let shorter = number.rounded(places);
        if shorter.over(factor)?.kept() == kept {
            return Ok(shorter);
        }
    }
    Ok(number.rounded(places))
}

/// How many liters labor is counted for.
fn litres(system: System) -> Result<Exact, Overflow> {
    system.labor_volume().size().over(Unit::Litre.size())
}

/// How many ounces a cup of water of 1 g/mL weighs.
fn ounces_per_cup() -> Result<Exact, Overflow> {
    Unit::UsCup.size().over(Unit::Ounce.size())
}
