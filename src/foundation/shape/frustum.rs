//! The inside of a tapered cup: a frustum of a cone.

use super::Inside;
use crate::foundation::measure::{Exact, Length, Overflow, Volume};

/// The inside of a tapered cup. The base may be smaller than the rim, equal to it or larger.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Frustum {
    /// Inner diameter at the base.
    pub base: Length,
    /// Inner diameter at the rim.
    pub rim: Length,
    /// Inner height from the base straight up to the rim; above zero.
    pub height: Length,
}

impl Frustum {
    /// The brimful volume.
    ///
    /// # Errors
    /// [`Overflow`] if a number leaves the range of [`Exact`].
    pub fn volume(&self) -> Result<Volume, Overflow> {
        self.volume_at(self.height)
    }

    /// The inner diameter at a height above the base, by a straight line from base to rim. A height
    /// below the base counts as the base, one above the rim as the rim.
    ///
    /// # Errors
    /// [`Overflow`] if a number leaves the range of [`Exact`]. A cup without height divides by zero.
    pub fn diameter_at(&self, height: Length) -> Result<Length, Overflow> {
        let widening = self.rim.minus(self.base)?.times(self.within(height).millimetres())?;
        self.base.plus(widening.over(self.height.millimetres())?)
    }

    fn within(&self, height: Length) -> Length {
        height.min(self.height).max(Length::ZERO)
    }
}

impl Inside for Frustum {
    fn height(&self) -> Length {
        self.height
    }

    /// pi * h / 12 * (d0^2 + d0 * d + d^2), with d0 across the base and d across the drink at h.
    fn volume_at(&self, height: Length) -> Result<Volume, Overflow> {
        let (base, top) = (self.base.millimetres(), self.diameter_at(height)?.millimetres());
        let squares = base.times(base)?.plus(base.times(top)?)?.plus(top.times(top)?)?;
        let cubic_millimetres = squares.times(self.within(height).millimetres())?.times(Exact::PI)?;
        cubic_millimetres.over(Exact::new(12_000, 0)).map(Volume::from_millilitres)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::{exact, millimetres};

    fn cup(base: &str, rim: &str, height: &str) -> Frustum {
        Frustum { base: millimetres(base), rim: millimetres(rim), height: millimetres(height) }
    }

    /// The brimful volume in pi cubic centimetres.
    fn over_pi(cup: Frustum) -> Exact {
        cup.volume().unwrap().millilitres().over(Exact::PI).unwrap().as_part()
    }

    #[test]
    fn a_straight_cup_is_a_cylinder_and_a_pointed_one_a_cone() {
        // Euclid, Elements XII.10: a cone is a third of the cylinder on its base.
        assert_eq!(over_pi(cup("60", "60", "100")), exact("90"));
        assert_eq!(over_pi(cup("0", "60", "100")), exact("30"));
    }

    #[test]
    fn a_cup_turned_over_holds_as_much() {
        let upright = cup("60", "90", "120");
        assert_eq!(upright.volume(), cup("90", "60", "120").volume());
        // Its lower half is the smaller one: d = 75 in the middle.
        let middle = upright.volume_at(millimetres("60")).unwrap();
        assert_eq!(middle, cup("60", "75", "60").volume().unwrap());
        assert!(middle.times(exact("2")).unwrap() < upright.volume().unwrap());
    }

    #[test]
    fn diameters_run_straight_from_base_to_rim() {
        let cup = cup("60", "90", "120");
        for (height, across) in [("-1", "60"), ("0", "60"), ("40", "70"), ("120", "90"), ("121", "90")] {
            assert_eq!(cup.diameter_at(millimetres(height)), Ok(millimetres(across)), "{height}");
        }
        assert_eq!(cup.volume_at(millimetres("-1")), Ok(Volume::ZERO));
        assert_eq!(cup.volume_at(millimetres("121")), cup.volume());
    }

    #[test]
    fn what_cannot_be_computed_is_said() {
        assert_eq!(cup("60", "90", "0").volume(), Err(Overflow::DivisionByZero));
        let vast = millimetres("999999999").times(exact("999999999")).unwrap();
        assert_eq!(Frustum { rim: vast, ..cup("60", "90", "120") }.volume(), Err(Overflow::TooLarge));
    }
}
