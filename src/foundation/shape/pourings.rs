//! The inside of a shouldered bottle, from readings of height and volume as its owner poured water into
//! it, and a smooth rising curve through them.

use super::Inside;
use crate::foundation::measure::{Exact, Length, Overflow, Volume};

/// A reading: how much water was poured in, and how high it then stood.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pouring {
    /// The height above the inner base.
    pub height: Length,
    /// All that was poured in up to there.
    pub volume: Volume,
}

/// Why readings do not tell the shape of a bottle. Readings are counted from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PouringError {
    /// There are fewer than [`Pourings::FEWEST`].
    TooFew,
    /// A reading is not above the one before it, or not above the base.
    HeightDoesNotRise {
        /// Which.
        reading: usize,
    },
    /// The volume of a reading is not more than that of the one before it, or not above zero.
    VolumeDoesNotRise {
        /// Which.
        reading: usize,
    },
    /// The numbers leave the range that can be computed.
    Arithmetic(Overflow),
}

impl From<Overflow> for PouringError {
    fn from(overflow: Overflow) -> PouringError {
        PouringError::Arithmetic(overflow)
    }
}

/// The inside of a bottle from its empty base to the last reading, which is brimful.
///
/// Between two readings the volume is a cubic of the height. Its slopes at the readings are weighted
/// harmonic means of the slopes on both sides (F. N. Fritsch, J. Butland, SIAM J. Sci. Stat. Comput. 5,
/// 300, 1984; "PCHIP"). So it passes through every reading, and always rises.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Pourings {
    height: Length,
    volume: Volume,
    stretches: Vec<Stretch>,
}

/// The curve between two readings.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Stretch {
    from: Pouring,
    to: Pouring,
    /// Slope at its lower end, in millilitres per millimetre.
    starts: Exact,
    /// Slope at its upper end, in millilitres per millimetre.
    ends: Exact,
}

impl Pourings {
    /// The fewest readings that tell a shape: with one, every bottle would be a cylinder.
    pub const FEWEST: usize = 2;

    /// The inside of a bottle from readings in the order of pouring. The empty base is not one of them.
    ///
    /// # Errors
    /// A [`PouringError`] if there are too few readings, at the first that does not rise, or on overflow.
    pub fn new(readings: &[Pouring]) -> Result<Pourings, PouringError> {
        let mut last = Pouring { height: Length::ZERO, volume: Volume::ZERO };
        let mut stretches = Vec::with_capacity(readings.len());
        for (reading, pouring) in readings.iter().enumerate() {
            if pouring.height <= last.height {
                return Err(PouringError::HeightDoesNotRise { reading });
            }
            if pouring.volume <= last.volume {
                return Err(PouringError::VolumeDoesNotRise { reading });
            }
            stretches.push(Stretch { from: last, to: *pouring, starts: Exact::ZERO, ends: Exact::ZERO });
            last = *pouring;
        }
        if readings.len() < Pourings::FEWEST {
            return Err(PouringError::TooFew);
        }
        join(&mut stretches)?;
        Ok(Pourings { height: last.height, volume: last.volume, stretches })
    }

    /// The brimful volume: the last reading.
    pub fn volume(&self) -> Volume {
        self.volume
    }
}

impl Inside for Pourings {
    fn height(&self) -> Length {
        self.height
    }

    fn volume_at(&self, height: Length) -> Result<Volume, Overflow> {
        if !height.is_positive() {
            return Ok(Volume::ZERO);
        }
        match self.stretches.iter().find(|stretch| height < stretch.to.height) {
            Some(stretch) => stretch.volume_at(height),
            None => Ok(self.volume),
        }
    }
}

impl Stretch {
    /// How high it is, in millimetres.
    fn rise(&self) -> Result<Exact, Overflow> {
        Ok(self.to.height.minus(self.from.height)?.millimetres())
    }

    /// The straight slope from end to end, in millilitres per millimetre.
    fn slope(&self) -> Result<Exact, Overflow> {
        self.to.volume.minus(self.from.volume)?.millilitres().over(self.rise()?)
    }

    /// The cubic with the volumes and slopes of both ends.
    fn volume_at(&self, height: Length) -> Result<Volume, Overflow> {
        let climbed = height.minus(self.from.height)?.millimetres();
        let part = climbed.over(self.rise()?)?;
        let slope = self.slope()?;
        let (twice, thrice) = (slope.times(Exact::new(2, 0))?, slope.times(Exact::new(3, 0))?);
        let square = thrice.minus(self.starts)?.minus(self.starts)?.minus(self.ends)?;
        let cube = self.starts.plus(self.ends)?.minus(twice)?;
        let mean_slope = self.starts.plus(part.times(square.plus(part.times(cube)?)?)?)?;
        self.from.volume.plus(Volume::from_millilitres(climbed.times(mean_slope)?))
    }
}

/// Gives every stretch the slopes at its ends.
fn join(stretches: &mut [Stretch]) -> Result<(), Overflow> {
    let mut below: Option<&mut Stretch> = None;
    if let [first, second, ..] = stretches {
        first.starts = outer_slope(first, second)?;
    }
    if let [.., before, last] = stretches {
        last.ends = outer_slope(last, before)?;
    }
    for above in stretches {
        if let Some(below) = below {
            let slope = inner_slope(below, above)?;
            (below.ends, above.starts) = (slope, slope);
        }
        below = Some(above);
    }
    Ok(())
}

/// The slope where two stretches meet: the harmonic mean of theirs, in which the shorter one weighs
/// more.
fn inner_slope(below: &Stretch, above: &Stretch) -> Result<Exact, Overflow> {
    let both = below.rise()?.plus(above.rise()?)?;
    let (weight_below, weight_above) = (both.plus(above.rise()?)?, both.plus(below.rise()?)?);
    let mean = weight_below.over(below.slope()?)?.plus(weight_above.over(above.slope()?)?)?;
    weight_below.plus(weight_above)?.over(mean)
}

/// The slope at the base or the rim, by a parabola over the `outer` stretch and the `next` one. It is
/// never below zero.
fn outer_slope(outer: &Stretch, next: &Stretch) -> Result<Exact, Overflow> {
    let (near, far) = (outer.rise()?, next.rise()?);
    let rising = near.plus(near)?.plus(far)?.times(outer.slope()?)?;
    let slope = rising.minus(near.times(next.slope()?)?)?.over(near.plus(far)?)?;
    Ok(slope.max(Exact::ZERO))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::{exact, millilitres, millimetres};

    fn readings(of: &[(&str, &str)]) -> Vec<Pouring> {
        let reading =
            |(height, volume): &(&str, &str)| Pouring { height: millimetres(height), volume: millilitres(volume) };
        of.iter().map(reading).collect()
    }

    #[test]
    fn the_curve_passes_through_every_reading() {
        let readings = readings(&[("60", "240"), ("90", "330"), ("120", "360"), ("150", "375.5")]);
        let bottle = Pourings::new(&readings).unwrap();
        for reading in &readings {
            assert_eq!(bottle.volume_at(reading.height), Ok(reading.volume));
        }
        assert_eq!((bottle.height(), bottle.volume()), (millimetres("150"), millilitres("375.5")));
        assert_eq!(bottle.volume_at(Length::ZERO), Ok(Volume::ZERO));
        assert_eq!(bottle.volume_at(millimetres("-1")), Ok(Volume::ZERO));
        assert_eq!(bottle.volume_at(millimetres("151")), Ok(millilitres("375.5")));
    }

    #[test]
    fn a_straight_bottle_is_straight_between_readings() {
        let bottle = Pourings::new(&readings(&[("10", "40"), ("35", "140"), ("100", "400")])).unwrap();
        for height in ["1", "10", "22.5", "99.75"] {
            let four_a_millimetre = exact(height).times(exact("4")).map(Volume::from_millilitres);
            assert_eq!(bottle.volume_at(millimetres(height)).map(Volume::as_part), four_a_millimetre);
        }
    }

    #[test]
    fn readings_that_fall_or_stay_are_refused() {
        let refused = |of| Pourings::new(&readings(of)).unwrap_err();
        assert_eq!(refused(&[("0", "10"), ("20", "20")]), PouringError::HeightDoesNotRise { reading: 0 });
        assert_eq!(refused(&[("10", "0"), ("20", "20")]), PouringError::VolumeDoesNotRise { reading: 0 });
        let (same_height, lower) = ([("10", "10"), ("10", "20")], [("10", "10"), ("20", "20"), ("19", "30")]);
        assert_eq!(refused(&same_height), PouringError::HeightDoesNotRise { reading: 1 });
        assert_eq!(refused(&lower), PouringError::HeightDoesNotRise { reading: 2 });
        let (same_volume, less) = ([("10", "10"), ("20", "10")], [("10", "10"), ("20", "20"), ("30", "19.9")]);
        assert_eq!(refused(&same_volume), PouringError::VolumeDoesNotRise { reading: 1 });
        assert_eq!(refused(&less), PouringError::VolumeDoesNotRise { reading: 2 });
    }

    #[test]
    fn one_reading_tells_no_shape() {
        assert_eq!(Pourings::new(&[]), Err(PouringError::TooFew));
        assert_eq!(Pourings::new(&readings(&[("10", "10")])), Err(PouringError::TooFew));
        // A reading that is wrong is said first.
        assert_eq!(Pourings::new(&readings(&[("0", "1")])), Err(PouringError::HeightDoesNotRise { reading: 0 }));
    }
}
