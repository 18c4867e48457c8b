//! The density of water, by which a volume at one temperature is converted to another.

use super::{Density, Exact, Overflow};

/// The warmest temperature in the table, in degrees Celsius. The coldest is 0.
pub const WARMEST: Exact = Exact::new(40, 0);

/// The density of air-free water at a pressure of one atmosphere, in g/mL to six decimals. Returns `None`
/// below 0 °C and above 40 °C.
///
/// Tanaka and others, Recommended table for the density of water between 0 °C and 40 °C, Metrologia
/// 38 (2001), 301: 0.99997495 * (1 - (t - 3.983035)² (t + 301.797) / (522528.9 (t + 69.34881))).
/// The formula is second-hand, from libraries that quote it.
///
/// # Errors
/// [`Overflow`] if a number leaves the range of [`Exact`].
pub fn water_density(celsius: Exact) -> Result<Option<Density>, Overflow> {
    if celsius.is_negative() || celsius > WARMEST {
        return Ok(None);
    }
    let off = celsius.minus(Exact::new(3_983_035, 6))?;
    let above = off.times(off)?.times(celsius.plus(Exact::new(301_797, 3))?)?;
    let below = celsius.plus(Exact::new(6_934_881, 5))?.times(Exact::new(5_225_289, 1))?;
    let share = Exact::ONE.minus(above.over(below)?)?;
    let density = share.times(Exact::new(99_997_495, 8))?;
    Ok(Some(Density::from_grams_per_millilitre(density.rounded(6))))
}
