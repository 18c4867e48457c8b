//! The outline of a container, for drawing it to scale.

use super::Inside;
use crate::foundation::measure::{Exact, Length, Overflow};

/// The inner diameters of this many bands of equal height, from the base up: each is that of a disc
/// with the band's height and volume.
///
/// # Errors
/// [`Overflow`] if a number leaves the range of [`Exact`]. No bands divide by zero.
pub fn outline(inside: &dyn Inside, bands: u32) -> Result<Vec<Length>, Overflow> {
    let band = inside.height().over(Exact::from(bands))?;
    let mut below = inside.volume_at(Length::ZERO)?;
    let mut diameters = Vec::new();
    for number in 1..=bands {
        let up_to = inside.volume_at(band.times(Exact::from(number))?)?;
        let cubic_millimetres = up_to.minus(below)?.millilitres().times(Exact::new(1000, 0))?;
        let disc = cubic_millimetres.over(band.millimetres())?;
        let square = disc.times(Exact::new(4, 0))?.over(Exact::PI)?;
        diameters.push(Length::from_millimetres(square.square_root()?));
        below = up_to;
    }
    Ok(diameters)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::foundation::shape::Frustum;
    use crate::support::{exact, millimetres};

    #[test]
    fn a_cup_is_as_wide_as_it_is() {
        // In the middle of ten bands of a cup that widens from 60 to 80 mm: 61, 63, 65, ... A
        // thin band's volume is that of its middle but for the square of its widening over 12.
        let cup = Frustum { base: millimetres("60"), rim: millimetres("80"), height: millimetres("100") };
        let widths = outline(&cup, 10).unwrap();
        assert_eq!(widths.len(), 10);
        for (width, expected) in widths.iter().zip((61_u32..).step_by(2)) {
            let off = width.millimetres().minus(Exact::from(expected)).unwrap();
            assert!(off.abs() < exact("0.01"), "{} beside {expected}", width.millimetres());
        }
    }
}
