//! The height of the fill line of a volume.

use crate::foundation::bisection::{Next, Until, bisect};
use crate::foundation::measure::{Exact, Length, Overflow, Volume};

/// The inside of a container.
pub trait Inside {
    /// The height of the rim above the inner base.
    fn height(&self) -> Length;

    /// The volume up to a height above the inner base. It rises with the height. A height below the base
    /// counts as the base, one above the rim as the rim.
    ///
    /// # Errors
    /// [`Overflow`] if a number leaves the range of [`Exact`].
    fn volume_at(&self, height: Length) -> Result<Volume, Overflow>;
}

/// Why a volume has no fill line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LevelError {
    /// It is more than fits under the rim.
    OverTheRim {
        /// By how much.
        over: Volume,
    },
    /// It is below zero.
    Negative,
    /// The numbers leave the range that can be computed.
    Arithmetic(Overflow),
}

impl From<Overflow> for LevelError {
    fn from(overflow: Overflow) -> LevelError {
        LevelError::Arithmetic(overflow)
    }
}

/// Decimals of a millimetre to which a fill line is rounded.
const PLACES: u32 = 6;

/// The bisection ends when the fill line is known within this many millimetres.
const WITHIN: Exact = Exact::new(1, 7);

/// The height above the inner base to which `volume` fills `inside`, by bisection between base and rim,
/// within a millionth of a millimetre.
///
/// # Errors
/// A [`LevelError`] if the volume is below zero or more than fits, or on overflow.
pub fn level(inside: &dyn Inside, volume: Volume) -> Result<Length, LevelError> {
    if volume.is_negative() {
        return Err(LevelError::Negative);
    }
    let rim = inside.height();
    let over = volume.minus(inside.volume_at(rim)?)?;
    if over.is_positive() {
        return Err(LevelError::OverTheRim { over });
    }
    let (_, high) = bisect(Exact::ZERO, rim.millimetres(), Until::Within(WITHIN), &mut |_, middle| {
        let is_under = inside.volume_at(Length::from_millimetres(middle))? < volume;
        Ok(if is_under { Next::Near(middle) } else { Next::Far(middle) })
    })?;
    Ok(Length::from_millimetres(high.rounded(PLACES)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::foundation::shape::{Frustum, Pouring, Pourings};
    use crate::support::{exact, millilitres, millimetres};

    fn cup() -> Frustum {
        Frustum { base: millimetres("60"), rim: millimetres("90"), height: millimetres("120") }
    }

    #[test]
    fn the_level_of_what_a_height_holds_is_that_height() {
        let bottle = Pourings::new(&[
            Pouring { height: millimetres("80"), volume: millilitres("400") },
            Pouring { height: millimetres("120"), volume: millilitres("500") },
        ]);
        let (cup, bottle) = (cup(), bottle.unwrap());
        let shapes: [&dyn Inside; 2] = [&cup, &bottle];
        for inside in shapes {
            for height in ["0", "0.000001", "1", "33.3", "79.999999", "80", "119.999999", "120"] {
                let held = inside.volume_at(millimetres(height)).unwrap();
                assert_eq!(level(inside, held), Ok(millimetres(height)));
            }
        }
    }

    #[test]
    fn the_level_of_a_cone_is_a_cube_root() {
        // Similar cones: an eighth of the volume stands half as high, a 27th a third.
        let cone = Frustum { base: Length::ZERO, ..cup() };
        for (part, height) in [("8", "60"), ("27", "40"), ("64", "30")] {
            let volume = cone.volume().unwrap().over(exact(part)).unwrap();
            assert_eq!(level(&cone, volume), Ok(millimetres(height)));
        }
    }

    #[test]
    fn what_is_no_level_is_said() {
        let brimful = cup().volume().unwrap();
        assert_eq!(level(&cup(), brimful), Ok(millimetres("120")));
        let over = millilitres("0.5");
        assert_eq!(level(&cup(), brimful.plus(over).unwrap()), Err(LevelError::OverTheRim { over }));
        assert_eq!(level(&cup(), millilitres("-0.5")), Err(LevelError::Negative));
        let flat = Frustum { height: Length::ZERO, ..cup() };
        assert_eq!(level(&flat, over), Err(LevelError::Arithmetic(Overflow::DivisionByZero)));
    }
}
